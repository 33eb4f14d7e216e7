// The therapist's service over gRPC: who calls and whether the role may, then the hub's parts.
#pragma once

#include "sync/hub/hub.h"
#include "sync/protocol/desk_service.grpc.pb.h"

namespace newel {

class DeskGrpcService : public v1::DeskService::WithCallbackMethod_Watch<v1::DeskService::Service> {
 public:
  explicit DeskGrpcService(Hub* hub) : m_hub(hub) {}

  grpc::Status SignIn(grpc::ServerContext* context, const v1::SignInRequest* request,
                      v1::SignInReply* reply) override;
  grpc::Status SignOut(grpc::ServerContext* context, const v1::SignOutRequest* request,
                       v1::SignOutReply* reply) override;
  grpc::Status BeginSecondFactor(grpc::ServerContext* context, const v1::BeginSecondFactorRequest* request,
                                 v1::BeginSecondFactorReply* reply) override;
  grpc::Status ConfirmSecondFactor(grpc::ServerContext* context,
                                   const v1::ConfirmSecondFactorRequest* request,
                                   v1::ConfirmSecondFactorReply* reply) override;
  grpc::Status ChangePassword(grpc::ServerContext* context, const v1::ChangePasswordRequest* request,
                              v1::ChangePasswordReply* reply) override;
  grpc::Status ListAccounts(grpc::ServerContext* context, const v1::ListAccountsRequest* request,
                            v1::ListAccountsReply* reply) override;
  grpc::Status AddAccount(grpc::ServerContext* context, const v1::AddAccountRequest* request,
                          v1::AddAccountReply* reply) override;
  grpc::Status ChangeAccount(grpc::ServerContext* context, const v1::ChangeAccountRequest* request,
                             v1::ChangeAccountReply* reply) override;
  grpc::Status NewFirstPassword(grpc::ServerContext* context, const v1::NewFirstPasswordRequest* request,
                                v1::NewFirstPasswordReply* reply) override;
  grpc::Status TakeSecondFactor(grpc::ServerContext* context, const v1::TakeSecondFactorRequest* request,
                                v1::TakeSecondFactorReply* reply) override;
  grpc::Status ListAudit(grpc::ServerContext* context, const v1::ListAuditRequest* request,
                         v1::ListAuditReply* reply) override;
  grpc::Status CheckAudit(grpc::ServerContext* context, const v1::CheckAuditRequest* request,
                          v1::CheckAuditReply* reply) override;
  grpc::Status ListCaseload(grpc::ServerContext* context, const v1::ListCaseloadRequest* request,
                            v1::ListCaseloadReply* reply) override;
  grpc::Status PutSnooze(grpc::ServerContext* context, const v1::PutSnoozeRequest* request,
                         v1::PutSnoozeReply* reply) override;
  grpc::Status GetPerson(grpc::ServerContext* context, const v1::GetPersonRequest* request,
                         v1::GetPersonReply* reply) override;
  grpc::Status PutPerson(grpc::ServerContext* context, const v1::PutPersonRequest* request,
                         v1::PutPersonReply* reply) override;
  grpc::Status ListAssignments(grpc::ServerContext* context, const v1::ListAssignmentsRequest* request,
                               v1::ListAssignmentsReply* reply) override;
  grpc::Status PutAssignment(grpc::ServerContext* context, const v1::PutAssignmentRequest* request,
                             v1::PutAssignmentReply* reply) override;
  grpc::Status FindPersons(grpc::ServerContext* context, const v1::FindPersonsRequest* request,
                           v1::FindPersonsReply* reply) override;
  grpc::Status BreakGlass(grpc::ServerContext* context, const v1::BreakGlassRequest* request,
                          v1::BreakGlassReply* reply) override;
  grpc::Status SignProgramme(grpc::ServerContext* context, const v1::SignProgrammeRequest* request,
                             v1::SignProgrammeReply* reply) override;
  grpc::Status ListProgrammes(grpc::ServerContext* context, const v1::ListProgrammesRequest* request,
                              v1::ListProgrammesReply* reply) override;
  grpc::Status IssueHold(grpc::ServerContext* context, const v1::IssueHoldRequest* request,
                         v1::IssueHoldReply* reply) override;
  grpc::Status ListHolds(grpc::ServerContext* context, const v1::ListHoldsRequest* request,
                         v1::ListHoldsReply* reply) override;
  grpc::Status SendMessage(grpc::ServerContext* context, const v1::SendMessageRequest* request,
                           v1::SendMessageReply* reply) override;
  grpc::Status ListMessages(grpc::ServerContext* context, const v1::ListMessagesRequest* request,
                            v1::ListMessagesReply* reply) override;
  grpc::Status ListPractices(grpc::ServerContext* context, const v1::ListPracticesRequest* request,
                             v1::ListPracticesReply* reply) override;
  grpc::Status ListWearBlocks(grpc::ServerContext* context, const v1::ListWearBlocksRequest* request,
                              v1::ListWearBlocksReply* reply) override;
  grpc::Status PutMeasure(grpc::ServerContext* context, const v1::PutMeasureRequest* request,
                          v1::PutMeasureReply* reply) override;
  grpc::Status ListMeasures(grpc::ServerContext* context, const v1::ListMeasuresRequest* request,
                            v1::ListMeasuresReply* reply) override;
  grpc::Status PutRemark(grpc::ServerContext* context, const v1::PutRemarkRequest* request,
                         v1::PutRemarkReply* reply) override;
  grpc::Status ListRemarks(grpc::ServerContext* context, const v1::ListRemarksRequest* request,
                           v1::ListRemarksReply* reply) override;
  grpc::Status ListReceipts(grpc::ServerContext* context, const v1::ListReceiptsRequest* request,
                            v1::ListReceiptsReply* reply) override;
  grpc::Status NoteExport(grpc::ServerContext* context, const v1::NoteExportRequest* request,
                          v1::NoteExportReply* reply) override;
  grpc::Status CreatePairing(grpc::ServerContext* context, const v1::CreatePairingRequest* request,
                             v1::CreatePairingReply* reply) override;
  grpc::Status ListDevices(grpc::ServerContext* context, const v1::ListDevicesRequest* request,
                           v1::ListDevicesReply* reply) override;
  grpc::Status RevokeDevice(grpc::ServerContext* context, const v1::RevokeDeviceRequest* request,
                            v1::RevokeDeviceReply* reply) override;
  grpc::Status ListOwnExercises(grpc::ServerContext* context, const v1::ListOwnExercisesRequest* request,
                                v1::ListOwnExercisesReply* reply) override;
  grpc::Status PutOwnExercise(grpc::ServerContext* context, const v1::PutOwnExerciseRequest* request,
                              v1::PutOwnExerciseReply* reply) override;
  grpc::Status ListTemplates(grpc::ServerContext* context, const v1::ListTemplatesRequest* request,
                             v1::ListTemplatesReply* reply) override;
  grpc::Status PutTemplate(grpc::ServerContext* context, const v1::PutTemplateRequest* request,
                           v1::PutTemplateReply* reply) override;
  grpc::Status WithdrawTemplate(grpc::ServerContext* context, const v1::WithdrawTemplateRequest* request,
                                v1::WithdrawTemplateReply* reply) override;
  grpc::Status GetSettings(grpc::ServerContext* context, const v1::GetSettingsRequest* request,
                           v1::GetSettingsReply* reply) override;
  grpc::Status PutSettings(grpc::ServerContext* context, const v1::PutSettingsRequest* request,
                           v1::PutSettingsReply* reply) override;
  grpc::Status PutMedia(grpc::ServerContext* context, const v1::PutMediaRequest* request,
                        v1::PutMediaReply* reply) override;
  grpc::Status GetMedia(grpc::ServerContext* context, const v1::GetMediaRequest* request,
                        v1::MediaPart* reply) override;
  grpc::ServerWriteReactor<v1::DeskNudge>* Watch(grpc::CallbackServerContext* context,
                                                 const v1::WatchRequest* request) override;

 private:
  // Authenticates, looks whether the caller may open `person_id` (empty: nobody's record), runs
  // `body(caller)` and notes what was looked at (`seen` not null).
  template <typename Reply, typename Body>
  grpc::Status call(grpc::ServerContext* context, CallKind kind, const char* seen,
                    const std::string& person_id, Reply* reply, Body&& body);

  Hub* m_hub;
};

}  // namespace newel
