// The end of a person's records, and who is due for it. An erased person leaves an id in the audit trail and
// a mark for their phones, nothing else. Backups made before still hold them: that is for whoever keeps
// those.
#pragma once

#include <absl/status/statusor.h>

#include <string>
#include <vector>

#include "sync/hub/hub_context.h"

namespace newel {

// Why, as a closed list, so that nobody writes about somebody's health where it stays.
//   wish     the person asked for it
//   term     the time for which the records have to be kept is over
//   mistake  the person was added by mistake
bool isErasureReason(const std::string& reason);

// kNotFound: nobody has the id. kInvalidArgument: reason.
absl::Status erasePerson(const HubContext& hub, const std::string& person_id, const std::string& reason);

// The ids of everybody of whom nothing was heard, written or planned in the last `age`: added, last contact,
// last practice and the latest programme's end all lie further back. Nobody is erased by this: a person
// decides, because health records may have to be kept longer (standards: retention terms differ by country).
absl::StatusOr<std::vector<std::string>> personsDue(HubStore& store, absl::Time now, absl::Duration age);

}  // namespace newel
