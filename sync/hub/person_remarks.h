// What therapists write down about practices and days of one person, for colleagues. Never on its way to a
// phone, and in no export: it is the clinic's own.
#pragma once

#include <absl/status/statusor.h>

#include <string>

#include "sync/hub/hub_context.h"
#include "sync/protocol/desk_service.pb.h"

namespace newel {

// Thread-safe. Every call: kNotFound when nobody has the person id; kInvalidArgument names the field.
class PersonRemarks {
 public:
  explicit PersonRemarks(const HubContext* hub) : m_hub(hub) {}

  // kAborted: base_revision is not the latest. kPermissionDenied: it is another therapist's. What was put
  // already, said again, is answered as it was.
  absl::StatusOr<v1::PutRemarkReply> put(const DeskCaller& caller, const v1::PutRemarkRequest& request);
  // Last revisions, as they came, withdrawn ones too.
  absl::StatusOr<v1::ListRemarksReply> list(const std::string& person_id);

 private:
  absl::Status keep(HubTransaction& transaction, const DeskCaller& caller, std::uint32_t base_revision,
                    const v1::Remark& remark);

  const HubContext* m_hub;
};

}  // namespace newel
