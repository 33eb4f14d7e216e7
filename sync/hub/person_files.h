// Persons and what came from them, as the desk reads and writes it: record, identity, caseload, messages,
// practices, receipts, devices.
#pragma once

#include <absl/status/statusor.h>

#include <string>

#include "sync/hub/hub_context.h"
#include "sync/protocol/desk_service.pb.h"

namespace newel {

// Thread-safe. Every call: kNotFound when nobody has the person id; kInvalidArgument names the field.
class PersonFiles {
 public:
  explicit PersonFiles(const HubContext* hub) : m_hub(hub) {}

  // The persons that `caller` may see.
  absl::StatusOr<v1::ListCaseloadReply> caseload(const DeskCaller& caller,
                                                 const v1::ListCaseloadRequest& request);
  absl::StatusOr<v1::GetPersonReply> get(const std::string& person_id);
  // A new person is assigned to who adds them. kAborted: base_revision is not the latest. kAlreadyExists:
  // base 0 and the id is known. kFailedPrecondition: the id was erased.
  absl::StatusOr<v1::PutPersonReply> put(const DeskCaller& caller, const v1::PutPersonRequest& request);

  // kAlreadyExists: the id was sent with other words. kFailedPrecondition: a photo or clip that is not there.
  absl::StatusOr<v1::SendMessageReply> sendMessage(const DeskCaller& caller,
                                                   const v1::SendMessageRequest& request);
  absl::StatusOr<v1::ListMessagesReply> messages(const v1::ListMessagesRequest& request);
  absl::StatusOr<v1::ListPracticesReply> practices(const v1::ListPracticesRequest& request);
  absl::StatusOr<v1::ListReceiptsReply> receipts(const std::string& person_id);
  // The line in the audit trail without which no file leaves the desk. kInvalidArgument: format.
  absl::StatusOr<v1::NoteExportReply> noteExport(const DeskCaller& caller,
                                                 const v1::NoteExportRequest& request);
  absl::StatusOr<v1::ListDevicesReply> devices(const std::string& person_id);
  // Whose phone it is; empty for none.
  absl::StatusOr<std::string> ownerOf(const std::string& device_id);
  // Ends its access and its open stream. Again is not an error. kNotFound: no such device.
  absl::Status revokeDevice(const DeskCaller& caller, const std::string& device_id);

 private:
  const HubContext* m_hub;
};

}  // namespace newel
