// One person's record as it leaves the hub in an open format: gathered from the store in one consistent view,
// and written down in the audit trail before the file exists. For whoever may run newel-hub on the clinic's
// store.
#pragma once

#include <absl/status/status.h>
#include <absl/status/statusor.h>

#include <string>

#include "sync/export/export_files.h"
#include "sync/hub/hub_store.h"

namespace newel {

// All that `transaction` sees of the person. kNotFound: nobody has the id. kDataLoss: a record cannot be
// read; it is named, and nothing is left out in silence. kCancelled when `progress` ends it.
absl::StatusOr<PersonHistory> gatherHistory(HubTransaction& transaction, const std::string& person_id,
                                            absl::Time as_of, const ExportProgress& progress = {});

}  // namespace newel
