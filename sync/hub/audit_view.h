// The audit trail for whoever may look: by person, account and time, newest first, with the names that its
// ids have now; and whether the chain holds. The trail itself is audit_trail.h.
#pragma once

#include <absl/status/statusor.h>

#include "sync/hub/hub_context.h"
#include "sync/protocol/desk_service.pb.h"

namespace newel {

// Thread-safe.
class AuditView {
 public:
  explicit AuditView(const HubContext* hub) : m_hub(hub) {}

  // Looks at no more than 5,000 lines of the trail a call, so that no call takes long: the answer says where
  // to go on. kInvalidArgument: limit, or a time that is none.
  absl::StatusOr<v1::ListAuditReply> list(const v1::ListAuditRequest& request);
  // Every line. What is wrong with the chain is in the answer, not an error.
  absl::StatusOr<v1::CheckAuditReply> check();

 private:
  const HubContext* m_hub;
};

}  // namespace newel
