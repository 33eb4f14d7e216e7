// The desk service's requests as bytes, through everything the hub does with them but the network and the
// password hashing.
#include <functional>
#include <vector>

#include "core/records/check.h"
#include "sync/hub/first_password.h"
#include "sync/hub/password.h"
#include "tests/fuzz/fuzz_hub.h"
#include "tests/fuzz/target.h"

namespace newel::fuzz {
namespace {

using Call = std::function<void(FuzzHub&, const std::string&)>;

// Parses and calls; what the hub answers is its own business, that it answers is ours.
template <typename Request, typename Body>
Call with(Body body) {
  return [body](FuzzHub& hub, const std::string& bytes) {
    Request request;
    if (request.ParseFromString(bytes)) body(hub, request);
  };
}

// Only add at the end, so that the kept corpus keeps its meaning.
const std::vector<Call>& calls() {
  static const std::vector<Call> kCalls = {
      with<v1::PutPersonRequest>(
          [](FuzzHub& f, const v1::PutPersonRequest& r) { (void)f.hub().files().put(f.desk(), r); }),
      with<v1::SignProgrammeRequest>([](FuzzHub& f, const v1::SignProgrammeRequest& r) {
        (void)f.hub().prescriptions().sign(f.desk(), r);
      }),
      with<v1::IssueHoldRequest>([](FuzzHub& f, const v1::IssueHoldRequest& r) {
        (void)f.hub().prescriptions().issueHold(f.desk(), r);
      }),
      with<v1::SendMessageRequest>([](FuzzHub& f, const v1::SendMessageRequest& r) {
        (void)f.hub().files().sendMessage(f.desk(), r);
      }),
      with<v1::ListMessagesRequest>(
          [](FuzzHub& f, const v1::ListMessagesRequest& r) { (void)f.hub().files().messages(r); }),
      with<v1::ListPracticesRequest>(
          [](FuzzHub& f, const v1::ListPracticesRequest& r) { (void)f.hub().files().practices(r); }),
      with<v1::ListCaseloadRequest>(
          [](FuzzHub& f, const v1::ListCaseloadRequest& r) { (void)f.hub().files().caseload(f.desk(), r); }),
      with<v1::PutOwnExerciseRequest>([](FuzzHub& f, const v1::PutOwnExerciseRequest& r) {
        (void)f.hub().library().putOwnExercise(f.desk(), r);
      }),
      with<v1::PutSettingsRequest>([](FuzzHub& f, const v1::PutSettingsRequest& r) {
        (void)f.hub().library().putSettings(f.desk(), r);
      }),
      with<v1::PutAssignmentRequest>(
          [](FuzzHub& f, const v1::PutAssignmentRequest& r) { (void)f.hub().access().assign(f.desk(), r); }),
      with<v1::FindPersonsRequest>(
          [](FuzzHub& f, const v1::FindPersonsRequest& r) { (void)f.hub().access().find(f.desk(), r); }),
      with<v1::BreakGlassRequest>(
          [](FuzzHub& f, const v1::BreakGlassRequest& r) { (void)f.hub().access().breakGlass(f.desk(), r); }),
      with<v1::ConfirmSecondFactorRequest>([](FuzzHub& f, const v1::ConfirmSecondFactorRequest& r) {
        require(!f.hub().accounts().confirmFactor(f.desk(), r).ok(),
                "no secret was made, so no code is right");
      }),
      [](FuzzHub& f, const std::string& bytes) {
        require(!f.hub().accounts().authenticate(bytes, CallKind::Own).ok(),
                "no session was given, so none is good");
      },
      with<v1::ChangeAccountRequest>([](FuzzHub& f, const v1::ChangeAccountRequest& r) {
        (void)f.hub().accountBook().change(f.desk(), r);
      }),
      with<v1::TakeSecondFactorRequest>([](FuzzHub& f, const v1::TakeSecondFactorRequest& r) {
        (void)f.hub().accountBook().takeFactor(f.desk(), r);
      }),
      with<v1::ListAuditRequest>(
          [](FuzzHub& f, const v1::ListAuditRequest& r) { (void)f.hub().auditView().list(r); }),
      // The checks that stand before a password is hashed, which would take a tenth of a second.
      with<v1::AddAccountRequest>([](FuzzHub&, const v1::AddAccountRequest& r) {
        (void)checkAccount(r.user_name(), r.display_name(), r.role());
      }),
      with<v1::ChangePasswordRequest>([](FuzzHub&, const v1::ChangePasswordRequest& r) {
        require(canonicalFirstPassword(r.old_password()).size() <= r.old_password().size(),
                "tidying makes nothing longer");
        const bool good = checkPassword(r.new_password(), r.old_password()).ok();
        require(!good || (r.new_password().size() >= 8 && r.new_password().size() <= 256), "8 to 256");
      }),
      with<v1::PutMediaRequest>([](FuzzHub& f, const v1::PutMediaRequest& r) {
        const auto reply = f.hub().media().put(f.desk(), r);
        if (reply.ok()) require(reply->offset() <= r.size_bytes(), "no more than there is");
      }),
      with<v1::GetMediaRequest>(
          [](FuzzHub& f, const v1::GetMediaRequest& r) { (void)f.hub().media().get(r); }),
      with<v1::PutMeasureRequest>([](FuzzHub& f, const v1::PutMeasureRequest& r) {
        const auto reply = f.hub().measures().put(f.desk(), r);
        if (reply.ok()) require(reply->measure().revision() == r.base_revision() + 1, "the next revision");
      }),
      with<v1::ListWearBlocksRequest>(
          [](FuzzHub& f, const v1::ListWearBlocksRequest& r) { (void)f.hub().measures().wearBlocks(r); }),
      with<v1::PutSnoozeRequest>([](FuzzHub& f, const v1::PutSnoozeRequest& r) {
        const auto reply = f.hub().snoozes().put(f.desk(), r);
        if (reply.ok() && !r.until_day().empty()) require(!r.reason().empty(), "somebody says why");
      }),
      with<v1::PutTemplateRequest>([](FuzzHub& f, const v1::PutTemplateRequest& r) {
        const auto reply = f.hub().library().putTemplate(f.desk(), r);
        if (!reply.ok()) return;
        require(newel::check(reply->programme_template()).ok(), "what is kept passes the door");
        v1::WithdrawTemplateRequest back;  // so that the hub of a long run does not fill
        back.set_template_id(reply->programme_template().id());
        back.set_base_revision(reply->programme_template().revision());
        require(f.hub().library().withdrawTemplate(f.desk(), back).ok(), "what was kept can be taken back");
      }),
      with<v1::WithdrawTemplateRequest>([](FuzzHub& f, const v1::WithdrawTemplateRequest& r) {
        require(!f.hub().library().withdrawTemplate(f.desk(), r).ok(), "there is none to take back");
      }),
      with<v1::NoteExportRequest>([](FuzzHub& f, const v1::NoteExportRequest& r) {
        if (f.hub().files().noteExport(f.desk(), r).ok())
          require(r.format().size() >= 3 && r.format().size() <= 7, "one of six words");
      }),
      with<v1::PutRemarkRequest>([](FuzzHub& f, const v1::PutRemarkRequest& r) {
        const auto reply = f.hub().remarks().put(f.desk(), r);
        if (reply.ok()) require(reply->remark().revision() == r.base_revision() + 1, "the next revision");
      })};
  return kCalls;
}

}  // namespace
}  // namespace newel::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace newel::fuzz;
  static FuzzHub hub;
  const Input input = split(data, size);
  calls().at(input.choice % calls().size())(hub, input.rest);
  return 0;
}
