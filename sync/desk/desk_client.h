// The desk's client of the hub: blocking calls with deadlines; the UI makes them off its own thread.
// One call at a time per client, except watch(). Errors are gRPC's codes with the hub's words.
#pragma once

#include <absl/status/statusor.h>
#include <absl/time/time.h>

#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "core/records/media.pb.h"
#include "core/records/practice.pb.h"
#include "core/records/random.h"
#include "core/records/wear.pb.h"
#include "sync/protocol/desk_service.pb.h"

namespace newel {

class DeskClient {
 public:
  struct Options {
    std::string address;             // host:port
    std::string certificate_sha256;  // 32 bytes: the hub's pin, given by whoever runs the hub
    Random* random = nullptr;        // for back-off; outlives the client; nullptr: libsodium's
    // What pins() said at an earlier sign-in: where there are any, they count and `certificate_sha256` does
    // not.
    std::vector<std::string> pins{};
  };
  // kUnavailable no hub there; kUnauthenticated the certificate is another one; kInvalidArgument no pin.
  // Blocks up to 10 s.
  static absl::StatusOr<std::unique_ptr<DeskClient>> connect(const Options& options);
  ~DeskClient();

  // kUnauthenticated: name or password is wrong. needsCode(): both are right and the account has a second
  // factor; ask for its code and sign in again with all three. isWrongCode(): that code is not right.
  absl::StatusOr<v1::SignInReply> signIn(const std::string& user_name, const std::string& password,
                                         const std::string& code = "");
  // The signed-in account's own second factor: the secret, shown once; then in use from a first code on.
  // Errors: desk_service.proto.
  absl::StatusOr<v1::BeginSecondFactorReply> beginSecondFactor(const std::string& password);
  absl::Status confirmSecondFactor(const std::string& code);
  absl::Status changePassword(const std::string& old_password, const std::string& new_password);
  // The certificates that the hub may show from now on, as it said at signIn(); to be kept for the next
  // connect(). Empty: it said nothing.
  std::vector<std::string> pins() const;
  absl::Status signOut();
  // `goes_on`, asked after each page with how many are read: false ends it with kCancelled.
  absl::StatusOr<std::vector<v1::CaseRow>> caseload(
      const std::function<bool(std::size_t)>& goes_on = nullptr);
  absl::StatusOr<v1::CaseRow> caseRow(
      const std::string& person_id);  // of one person; kNotFound: nobody has it
  // This row can wait until that day (YYYY-MM-DD); an empty day ends it. Errors: desk_service.proto.
  absl::StatusOr<v1::Snooze> snooze(const std::string& person_id, const std::string& reason,
                                    const std::string& until_day);
  absl::StatusOr<v1::GetPersonReply> person(const std::string& person_id);
  absl::StatusOr<std::uint64_t> putPerson(const v1::PutPersonRequest& request);
  // Whose persons are whose, and somebody else's person in an emergency; errors: desk_service.proto.
  absl::StatusOr<std::vector<v1::Assignment>> assignments(const std::string& person_id);
  absl::Status assign(const std::string& person_id, const std::string& therapist_id, bool assigned);
  absl::StatusOr<std::vector<v1::FoundPerson>> findPersons(const std::string& family_name);
  absl::StatusOr<v1::BreakGlassReply> breakGlass(const std::string& person_id, const std::string& reason);
  absl::StatusOr<v1::SignProgrammeReply> signProgramme(const v1::SignProgrammeRequest& request);
  absl::StatusOr<std::vector<v1::Programme>> programmes(const std::string& person_id);  // oldest first
  absl::StatusOr<v1::HoldOrder> issueHold(const v1::IssueHoldRequest& request);
  absl::StatusOr<std::vector<v1::HoldOrder>> holds(const std::string& person_id);
  absl::StatusOr<v1::Message> sendMessage(const v1::SendMessageRequest& request);
  absl::StatusOr<std::vector<v1::Message>> messages(const std::string& person_id, bool mark_read);
  absl::StatusOr<std::vector<v1::Practice>> practices(const std::string& person_id);
  absl::StatusOr<std::vector<v1::WearBlock>> wearBlocks(const std::string& person_id);
  absl::StatusOr<v1::Measure> putMeasure(const v1::PutMeasureRequest& request);
  absl::StatusOr<std::vector<v1::Measure>> measures(const std::string& person_id);  // withdrawn ones too
  absl::StatusOr<v1::Remark> putRemark(const v1::PutRemarkRequest& request);
  absl::StatusOr<std::vector<v1::Remark>> remarks(const std::string& person_id);  // withdrawn ones too
  absl::StatusOr<std::vector<v1::Receipt>> receipts(const std::string& person_id);
  // Before a file of this person's record exists: "fhir", "ical", "csv", "handout", "report" or "card".
  absl::Status noteExport(const std::string& person_id, const std::string& format);
  absl::StatusOr<v1::CreatePairingReply> createPairing(const std::string& person_id);
  absl::StatusOr<std::vector<v1::Device>> devices(const std::string& person_id);
  absl::Status revokeDevice(const std::string& device_id);
  absl::StatusOr<std::vector<v1::OwnExercise>> ownExercises();  // every revision of each
  absl::StatusOr<v1::OwnExercise> putOwnExercise(const v1::PutOwnExerciseRequest& request);
  absl::StatusOr<std::vector<v1::ProgrammeTemplate>> templates();  // the clinic's own
  absl::StatusOr<v1::ProgrammeTemplate> putTemplate(const v1::PutTemplateRequest& request);
  absl::Status withdrawTemplate(const std::string& template_id, std::uint32_t base_revision);
  absl::StatusOr<v1::ClinicCard> clinic();             // with its settings
  absl::StatusOr<v1::GetSettingsReply> clinicState();  // the same, and when the store was last copied
  absl::StatusOr<v1::ClinicCard> putSettings(const v1::PutSettingsRequest& request);
  // The clinic's accounts and its audit trail; errors: desk_service.proto.
  absl::StatusOr<std::vector<v1::Account>> accounts();
  absl::StatusOr<v1::AddAccountReply> addAccount(const v1::AddAccountRequest& request);
  absl::StatusOr<v1::Account> changeAccount(const v1::ChangeAccountRequest& request);
  absl::StatusOr<v1::NewFirstPasswordReply> newFirstPassword(const std::string& account_id);
  absl::Status takeSecondFactor(const std::string& account_id);
  absl::StatusOr<v1::ListAuditReply> audit(const v1::ListAuditRequest& request);
  absl::StatusOr<v1::CheckAuditReply> checkAudit();

  // A photo or clip of this person (cleaned: sync/common/media_clean.h). One part; the reply says where to go
  // on.
  absl::StatusOr<v1::PutMediaReply> putMediaPart(const v1::PutMediaRequest& request);
  // All of it, from where an earlier try was cut. kInvalidArgument says what is wrong with it.
  absl::Status putMedia(const std::string& person_id, const std::string& content);
  // The whole content, its hash checked. kNotFound: the hub has none of this person; kDataLoss: another
  // content.
  absl::StatusOr<std::string> media(const std::string& person_id, const v1::MediaRef& ref);

  // Calls `changed` with a person id on the client's own thread until stopWatching() or an error, then
  // again after a back-off. Empty id: everything may have changed.
  void watch(std::function<void(const std::string& person_id)> changed);
  // `changed` is not called any more when it returns; not from within it.
  void stopWatching();

 private:
  class Impl;
  explicit DeskClient(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> m_impl;
};

// The part of `content` from `offset` on, as putMediaPart() takes it; `sha256` is the whole's.
v1::PutMediaRequest mediaPartOf(const std::string& person_id, const std::string& content,
                                const std::string& sha256, std::uint64_t offset);

// Of what signIn() returned.
bool needsCode(const absl::Status& status);
bool isWrongCode(const absl::Status& status);
// How long the hub asks to wait before the next try, of any call that was tried too often; zero otherwise.
absl::Duration waitAsked(const absl::Status& status);

}  // namespace newel
