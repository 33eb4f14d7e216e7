// Rows of the attention list that can wait until a day, with a reason that colleagues see.
// Not here: what ends one (core/progress/attention.h, wherever the row is shown).
#pragma once

#include <absl/status/statusor.h>

#include "sync/hub/hub_context.h"
#include "sync/protocol/desk_service.pb.h"

namespace newel {

// The longest that anybody may wait for; ours, no source.
inline constexpr int kMostSnoozeDays = 60;

// Thread-safe.
class Snoozes {
 public:
  explicit Snoozes(const HubContext* hub) : m_hub(hub) {}

  // An empty day ends it, and is no error when there was none. kNotFound: nobody has the person id.
  // kInvalidArgument names the field. kFailedPrecondition: what the row says now may not wait (maySnooze()),
  // or nobody can tell. The reason stays with the person; the audit trail has the deed.
  absl::StatusOr<v1::PutSnoozeReply> put(const DeskCaller& caller, const v1::PutSnoozeRequest& request);

 private:
  absl::StatusOr<v1::Snooze> snoozeOf(HubTransaction& transaction, const DeskCaller& caller,
                                      const v1::PutSnoozeRequest& request);

  const HubContext* m_hub;
};

}  // namespace newel
