#include "sync/hub/desk_grpc_service.h"

#include <atomic>
#include <utility>

#include "sync/common/grpc_status.h"
#include "sync/hub/caller_facts.h"
#include "sync/hub/stream_reactor.h"

namespace newel {

template <typename Reply, typename Body>
grpc::Status DeskGrpcService::call(grpc::ServerContext* context, CallKind kind, const char* seen,
                                   const std::string& person_id, Reply* reply, Body&& body) {
  const auto caller = m_hub->accounts().authenticate(bearerOf(*context), kind);
  if (!caller.ok()) {
    noteWho(*context, whoOf(caller.status()));
    return toGrpc(caller.status());
  }
  noteWho(*context, caller->therapist.id());
  const absl::Status may = m_hub->access().check(*caller, person_id);
  if (!may.ok()) return toGrpc(may);
  auto result = body(*caller);
  if (!result.ok()) return toGrpc(result.status());
  if (seen != nullptr) {
    m_hub->audit().sight(m_hub->store(),
                         {.action = seen, .who = caller->therapist.id(), .person = person_id});
  }
  *reply = *std::move(result);
  return grpc::Status::OK;
}

grpc::Status DeskGrpcService::SignIn(grpc::ServerContext* context, const v1::SignInRequest* request,
                                     v1::SignInReply* reply) {
  auto result = m_hub->accounts().signIn(*request, peerOf(*context));
  noteWho(*context, result.ok() ? result->therapist().id() : whoOf(result.status()));
  if (!result.ok()) return toGrpc(result.status());
  *reply = *std::move(result);
  return grpc::Status::OK;
}

grpc::Status DeskGrpcService::SignOut(grpc::ServerContext* context, const v1::SignOutRequest* /*request*/,
                                      v1::SignOutReply* reply) {
  return call(context, CallKind::Own, nullptr, "", reply,
              [&](const DeskCaller& caller) -> absl::StatusOr<v1::SignOutReply> {
                const absl::Status status = m_hub->accounts().signOut(caller);
                if (!status.ok()) return status;
                return v1::SignOutReply();
              });
}

grpc::Status DeskGrpcService::BeginSecondFactor(grpc::ServerContext* context,
                                                const v1::BeginSecondFactorRequest* request,
                                                v1::BeginSecondFactorReply* reply) {
  return call(context, CallKind::Own, nullptr, "", reply, [&](const DeskCaller& caller) {
    return m_hub->accounts().beginFactor(caller, *request, peerOf(*context));
  });
}

grpc::Status DeskGrpcService::ConfirmSecondFactor(grpc::ServerContext* context,
                                                  const v1::ConfirmSecondFactorRequest* request,
                                                  v1::ConfirmSecondFactorReply* reply) {
  return call(context, CallKind::Own, nullptr, "", reply,
              [&](const DeskCaller& caller) { return m_hub->accounts().confirmFactor(caller, *request); });
}

grpc::Status DeskGrpcService::ChangePassword(grpc::ServerContext* context,
                                             const v1::ChangePasswordRequest* request,
                                             v1::ChangePasswordReply* reply) {
  return call(context, CallKind::Own, nullptr, "", reply, [&](const DeskCaller& caller) {
    return m_hub->accounts().changePassword(caller, *request, peerOf(*context));
  });
}

grpc::Status DeskGrpcService::ListAccounts(grpc::ServerContext* context,
                                           const v1::ListAccountsRequest* /*request*/,
                                           v1::ListAccountsReply* reply) {
  return call(context, CallKind::Staff, "accounts.see", "", reply,
              [&](const DeskCaller&) { return m_hub->accountBook().list(); });
}

grpc::Status DeskGrpcService::AddAccount(grpc::ServerContext* context, const v1::AddAccountRequest* request,
                                         v1::AddAccountReply* reply) {
  return call(context, CallKind::Accounts, nullptr, "", reply,
              [&](const DeskCaller& caller) { return m_hub->accountBook().add(caller, *request); });
}

grpc::Status DeskGrpcService::ChangeAccount(grpc::ServerContext* context,
                                            const v1::ChangeAccountRequest* request,
                                            v1::ChangeAccountReply* reply) {
  return call(context, CallKind::Accounts, nullptr, "", reply,
              [&](const DeskCaller& caller) { return m_hub->accountBook().change(caller, *request); });
}

grpc::Status DeskGrpcService::NewFirstPassword(grpc::ServerContext* context,
                                               const v1::NewFirstPasswordRequest* request,
                                               v1::NewFirstPasswordReply* reply) {
  return call(context, CallKind::Accounts, nullptr, "", reply, [&](const DeskCaller& caller) {
    return m_hub->accountBook().newFirstPassword(caller, *request);
  });
}

grpc::Status DeskGrpcService::TakeSecondFactor(grpc::ServerContext* context,
                                               const v1::TakeSecondFactorRequest* request,
                                               v1::TakeSecondFactorReply* reply) {
  return call(context, CallKind::Accounts, nullptr, "", reply,
              [&](const DeskCaller& caller) { return m_hub->accountBook().takeFactor(caller, *request); });
}

grpc::Status DeskGrpcService::ListAudit(grpc::ServerContext* context, const v1::ListAuditRequest* request,
                                        v1::ListAuditReply* reply) {
  return call(context, CallKind::Audit, "audit.see", "", reply,
              [&](const DeskCaller&) { return m_hub->auditView().list(*request); });
}

grpc::Status DeskGrpcService::CheckAudit(grpc::ServerContext* context,
                                         const v1::CheckAuditRequest* /*request*/,
                                         v1::CheckAuditReply* reply) {
  return call(context, CallKind::Audit, nullptr, "", reply,
              [&](const DeskCaller&) { return m_hub->auditView().check(); });
}

grpc::Status DeskGrpcService::ListCaseload(grpc::ServerContext* context,
                                           const v1::ListCaseloadRequest* request,
                                           v1::ListCaseloadReply* reply) {
  return call(context, CallKind::Read, "caseload.see", request->person_id(), reply,
              [&](const DeskCaller& caller) { return m_hub->files().caseload(caller, *request); });
}

grpc::Status DeskGrpcService::PutSnooze(grpc::ServerContext* context, const v1::PutSnoozeRequest* request,
                                        v1::PutSnoozeReply* reply) {
  return call(context, CallKind::Clinical, nullptr, request->person_id(), reply,
              [&](const DeskCaller& caller) { return m_hub->snoozes().put(caller, *request); });
}

grpc::Status DeskGrpcService::GetPerson(grpc::ServerContext* context, const v1::GetPersonRequest* request,
                                        v1::GetPersonReply* reply) {
  return call(context, CallKind::Read, "person.see", request->person_id(), reply,
              [&](const DeskCaller& /*caller*/) { return m_hub->files().get(request->person_id()); });
}

grpc::Status DeskGrpcService::PutPerson(grpc::ServerContext* context, const v1::PutPersonRequest* request,
                                        v1::PutPersonReply* reply) {
  return call(context, CallKind::Clinical, nullptr, request->person().id(), reply,
              [&](const DeskCaller& caller) { return m_hub->files().put(caller, *request); });
}

grpc::Status DeskGrpcService::ListAssignments(grpc::ServerContext* context,
                                              const v1::ListAssignmentsRequest* request,
                                              v1::ListAssignmentsReply* reply) {
  return call(context, CallKind::Assign, nullptr, request->person_id(), reply,
              [&](const DeskCaller&) { return m_hub->access().assignments(request->person_id()); });
}

grpc::Status DeskGrpcService::PutAssignment(grpc::ServerContext* context,
                                            const v1::PutAssignmentRequest* request,
                                            v1::PutAssignmentReply* reply) {
  return call(context, CallKind::Assign, nullptr, request->person_id(), reply,
              [&](const DeskCaller& caller) { return m_hub->access().assign(caller, *request); });
}

grpc::Status DeskGrpcService::FindPersons(grpc::ServerContext* context, const v1::FindPersonsRequest* request,
                                          v1::FindPersonsReply* reply) {
  return call(context, CallKind::Find, nullptr, "", reply,
              [&](const DeskCaller& caller) { return m_hub->access().find(caller, *request); });
}

// No person is checked here: to open somebody else's is what it is for.
grpc::Status DeskGrpcService::BreakGlass(grpc::ServerContext* context, const v1::BreakGlassRequest* request,
                                         v1::BreakGlassReply* reply) {
  return call(context, CallKind::Open, nullptr, "", reply,
              [&](const DeskCaller& caller) { return m_hub->access().breakGlass(caller, *request); });
}

grpc::Status DeskGrpcService::SignProgramme(grpc::ServerContext* context,
                                            const v1::SignProgrammeRequest* request,
                                            v1::SignProgrammeReply* reply) {
  return call(context, CallKind::Clinical, nullptr, request->draft().person_id(), reply,
              [&](const DeskCaller& caller) { return m_hub->prescriptions().sign(caller, *request); });
}

grpc::Status DeskGrpcService::ListProgrammes(grpc::ServerContext* context,
                                             const v1::ListProgrammesRequest* request,
                                             v1::ListProgrammesReply* reply) {
  return call(context, CallKind::Read, "programmes.see", request->person_id(), reply,
              [&](const DeskCaller&) { return m_hub->prescriptions().programmes(request->person_id()); });
}

grpc::Status DeskGrpcService::IssueHold(grpc::ServerContext* context, const v1::IssueHoldRequest* request,
                                        v1::IssueHoldReply* reply) {
  return call(context, CallKind::Clinical, nullptr, request->person_id(), reply,
              [&](const DeskCaller& caller) { return m_hub->prescriptions().issueHold(caller, *request); });
}

grpc::Status DeskGrpcService::ListHolds(grpc::ServerContext* context, const v1::ListHoldsRequest* request,
                                        v1::ListHoldsReply* reply) {
  return call(context, CallKind::Read, "holds.see", request->person_id(), reply,
              [&](const DeskCaller&) { return m_hub->prescriptions().holds(request->person_id()); });
}

grpc::Status DeskGrpcService::SendMessage(grpc::ServerContext* context, const v1::SendMessageRequest* request,
                                          v1::SendMessageReply* reply) {
  return call(context, CallKind::Clinical, nullptr, request->person_id(), reply,
              [&](const DeskCaller& caller) { return m_hub->files().sendMessage(caller, *request); });
}

grpc::Status DeskGrpcService::ListMessages(grpc::ServerContext* context,
                                           const v1::ListMessagesRequest* request,
                                           v1::ListMessagesReply* reply) {
  // To mark as read is to take it over from colleagues, so it needs more than looking.
  const CallKind kind = request->mark_read() ? CallKind::Clinical : CallKind::Read;
  return call(context, kind, "messages.see", request->person_id(), reply,
              [&](const DeskCaller&) { return m_hub->files().messages(*request); });
}

grpc::Status DeskGrpcService::ListPractices(grpc::ServerContext* context,
                                            const v1::ListPracticesRequest* request,
                                            v1::ListPracticesReply* reply) {
  return call(context, CallKind::Read, "practices.see", request->person_id(), reply,
              [&](const DeskCaller&) { return m_hub->files().practices(*request); });
}

grpc::Status DeskGrpcService::ListWearBlocks(grpc::ServerContext* context,
                                             const v1::ListWearBlocksRequest* request,
                                             v1::ListWearBlocksReply* reply) {
  return call(context, CallKind::Read, "wear.see", request->person_id(), reply,
              [&](const DeskCaller&) { return m_hub->measures().wearBlocks(*request); });
}

grpc::Status DeskGrpcService::PutMeasure(grpc::ServerContext* context, const v1::PutMeasureRequest* request,
                                         v1::PutMeasureReply* reply) {
  return call(context, CallKind::Clinical, nullptr, request->measure().person_id(), reply,
              [&](const DeskCaller& caller) { return m_hub->measures().put(caller, *request); });
}

grpc::Status DeskGrpcService::ListMeasures(grpc::ServerContext* context,
                                           const v1::ListMeasuresRequest* request,
                                           v1::ListMeasuresReply* reply) {
  return call(context, CallKind::Read, "measures.see", request->person_id(), reply,
              [&](const DeskCaller&) { return m_hub->measures().list(request->person_id()); });
}

grpc::Status DeskGrpcService::PutRemark(grpc::ServerContext* context, const v1::PutRemarkRequest* request,
                                        v1::PutRemarkReply* reply) {
  return call(context, CallKind::Clinical, nullptr, request->remark().person_id(), reply,
              [&](const DeskCaller& caller) { return m_hub->remarks().put(caller, *request); });
}

grpc::Status DeskGrpcService::ListRemarks(grpc::ServerContext* context, const v1::ListRemarksRequest* request,
                                          v1::ListRemarksReply* reply) {
  return call(context, CallKind::Read, "remarks.see", request->person_id(), reply,
              [&](const DeskCaller&) { return m_hub->remarks().list(request->person_id()); });
}

grpc::Status DeskGrpcService::ListReceipts(grpc::ServerContext* context,
                                           const v1::ListReceiptsRequest* request,
                                           v1::ListReceiptsReply* reply) {
  return call(context, CallKind::Read, "receipts.see", request->person_id(), reply,
              [&](const DeskCaller&) { return m_hub->files().receipts(request->person_id()); });
}

// Who may look may take along what they see; the trail says so.
grpc::Status DeskGrpcService::NoteExport(grpc::ServerContext* context, const v1::NoteExportRequest* request,
                                         v1::NoteExportReply* reply) {
  return call(context, CallKind::Read, nullptr, request->person_id(), reply,
              [&](const DeskCaller& caller) { return m_hub->files().noteExport(caller, *request); });
}

grpc::Status DeskGrpcService::CreatePairing(grpc::ServerContext* context,
                                            const v1::CreatePairingRequest* request,
                                            v1::CreatePairingReply* reply) {
  return call(context, CallKind::Access, nullptr, request->person_id(), reply, [&](const DeskCaller& caller) {
    return m_hub->pairings().invite(caller, request->person_id());
  });
}

grpc::Status DeskGrpcService::ListDevices(grpc::ServerContext* context, const v1::ListDevicesRequest* request,
                                          v1::ListDevicesReply* reply) {
  return call(context, CallKind::Phones, "devices.see", request->person_id(), reply,
              [&](const DeskCaller&) { return m_hub->files().devices(request->person_id()); });
}

grpc::Status DeskGrpcService::RevokeDevice(grpc::ServerContext* context,
                                           const v1::RevokeDeviceRequest* request,
                                           v1::RevokeDeviceReply* reply) {
  return call(context, CallKind::Access, nullptr, "", reply,
              [&](const DeskCaller& caller) -> absl::StatusOr<v1::RevokeDeviceReply> {
                const auto owner = m_hub->files().ownerOf(request->device_id());
                if (!owner.ok()) return owner.status();
                absl::Status status = m_hub->access().check(caller, *owner);
                if (status.ok()) status = m_hub->files().revokeDevice(caller, request->device_id());
                if (!status.ok()) return status;
                return v1::RevokeDeviceReply();
              });
}

grpc::Status DeskGrpcService::ListOwnExercises(grpc::ServerContext* context,
                                               const v1::ListOwnExercisesRequest* /*request*/,
                                               v1::ListOwnExercisesReply* reply) {
  return call(context, CallKind::Read, nullptr, "", reply,
              [&](const DeskCaller&) { return m_hub->library().ownExercises(); });
}

grpc::Status DeskGrpcService::PutOwnExercise(grpc::ServerContext* context,
                                             const v1::PutOwnExerciseRequest* request,
                                             v1::PutOwnExerciseReply* reply) {
  return call(context, CallKind::Clinical, nullptr, "", reply,
              [&](const DeskCaller& caller) { return m_hub->library().putOwnExercise(caller, *request); });
}

grpc::Status DeskGrpcService::ListTemplates(grpc::ServerContext* context,
                                            const v1::ListTemplatesRequest* /*request*/,
                                            v1::ListTemplatesReply* reply) {
  return call(context, CallKind::Read, nullptr, "", reply,
              [&](const DeskCaller&) { return m_hub->library().templates(); });
}

grpc::Status DeskGrpcService::PutTemplate(grpc::ServerContext* context, const v1::PutTemplateRequest* request,
                                          v1::PutTemplateReply* reply) {
  return call(context, CallKind::Clinical, nullptr, "", reply,
              [&](const DeskCaller& caller) { return m_hub->library().putTemplate(caller, *request); });
}

grpc::Status DeskGrpcService::WithdrawTemplate(grpc::ServerContext* context,
                                               const v1::WithdrawTemplateRequest* request,
                                               v1::WithdrawTemplateReply* reply) {
  return call(context, CallKind::Clinical, nullptr, "", reply,
              [&](const DeskCaller& caller) { return m_hub->library().withdrawTemplate(caller, *request); });
}

grpc::Status DeskGrpcService::GetSettings(grpc::ServerContext* context,
                                          const v1::GetSettingsRequest* /*request*/,
                                          v1::GetSettingsReply* reply) {
  return call(context, CallKind::Own, nullptr, "", reply,
              [&](const DeskCaller&) { return m_hub->library().settings(); });
}

grpc::Status DeskGrpcService::PutSettings(grpc::ServerContext* context, const v1::PutSettingsRequest* request,
                                          v1::PutSettingsReply* reply) {
  return call(context, CallKind::Settings, nullptr, "", reply,
              [&](const DeskCaller& caller) { return m_hub->library().putSettings(caller, *request); });
}

grpc::Status DeskGrpcService::PutMedia(grpc::ServerContext* context, const v1::PutMediaRequest* request,
                                       v1::PutMediaReply* reply) {
  return call(context, CallKind::Clinical, nullptr, request->person_id(), reply,
              [&](const DeskCaller& caller) { return m_hub->media().put(caller, *request); });
}

grpc::Status DeskGrpcService::GetMedia(grpc::ServerContext* context, const v1::GetMediaRequest* request,
                                       v1::MediaPart* reply) {
  // One line in the trail for each photo or clip, not for each part.
  const char* const seen = request->offset() == 0 ? "media.see" : nullptr;
  return call(context, CallKind::Read, seen, request->person_id(), reply,
              [&](const DeskCaller&) { return m_hub->media().get(*request); });
}

grpc::ServerWriteReactor<v1::DeskNudge>* DeskGrpcService::Watch(grpc::CallbackServerContext* context,
                                                                const v1::WatchRequest* /*request*/) {
  const auto number = std::make_shared<std::atomic<int>>(0);
  const auto stream =
      StreamReactor<v1::DeskNudge>::make([this, number] { m_hub->board().leave(number->load()); });
  const auto caller = m_hub->accounts().authenticate(bearerOf(*context), CallKind::Read);
  noteWho(*context, caller.ok() ? caller->therapist.id() : whoOf(caller.status()));
  if (!caller.ok()) {
    stream->close(caller.status());
    return stream.get();
  }
  const int joined = m_hub->board().joinDesk(
      caller->session_sha256, stream, [this, therapist = caller->therapist](const std::string& person_id) {
        return m_hub->access().mayHear(therapist, person_id);
      });
  number->store(joined);
  stream->push(v1::DeskNudge());  // open: from here on nothing is missed
  return stream.get();
}

}  // namespace newel
