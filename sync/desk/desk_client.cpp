#include "sync/desk/desk_client.h"

#include <grpcpp/client_context.h>

#include <charconv>
#include <string_view>
#include <utility>

#include "sync/common/content_hash.h"
#include "sync/common/limits.h"
#include "sync/common/pinned_channel.h"
#include "sync/common/real_random.h"
#include "sync/desk/hub_watch.h"
#include "sync/protocol/desk_service.grpc.pb.h"

namespace newel {
namespace {

constexpr std::uint32_t kPage = 500;  // desk_service.proto: 1 to 500
constexpr std::size_t kPinBytes = 32;

template <typename Record>
absl::StatusOr<Record> parsed(const std::string& bytes, const std::string& what) {
  Record record;
  if (!record.ParseFromString(bytes)) return absl::DataLossError(what + ": not to be read");
  return record;
}

}  // namespace

class DeskClient::Impl {
 public:
  Impl(const std::shared_ptr<grpc::Channel>& channel, Random* random)
      : m_channel(channel),
        m_stub(v1::DeskService::NewStub(channel)),
        m_random(random != nullptr ? random : &m_own_random),
        m_watch(channel, m_stub.get(), m_random) {}

  template <typename Reply, typename Request>
  absl::StatusOr<Reply> call(grpc::Status (v1::DeskService::Stub::*method)(grpc::ClientContext*,
                                                                           const Request&, Reply*),
                             const Request& request) {
    awaitConnection(*m_channel, kCallDeadline / 4, [] { return false; });
    grpc::ClientContext context;
    const std::string session = m_watch.session();
    if (!session.empty()) context.AddMetadata("authorization", "Bearer " + session);
    setDeadline(context, kCallDeadline);
    Reply reply;
    const absl::Status status = fromCall((m_stub.get()->*method)(&context, request, &reply));
    if (!status.ok()) return status;
    return reply;
  }

  RealRandom m_own_random;
  std::shared_ptr<grpc::Channel> m_channel;
  std::unique_ptr<v1::DeskService::Stub> m_stub;
  Random* m_random;
  HubWatch m_watch;
  std::vector<std::string> m_pins;
};

DeskClient::DeskClient(std::unique_ptr<Impl> impl) : m_impl(std::move(impl)) {}
DeskClient::~DeskClient() = default;

absl::StatusOr<std::unique_ptr<DeskClient>> DeskClient::connect(const Options& options) {
  if (options.certificate_sha256.size() != 32) {
    return absl::InvalidArgumentError("certificate_sha256: the hub's fingerprint is needed");
  }
  const std::vector<std::string> pins =
      options.pins.empty() ? std::vector<std::string>{options.certificate_sha256} : options.pins;
  auto pinned = connectPinned(options.address, pins, kCallDeadline / 2);
  if (!pinned.ok()) return pinned.status();
  return std::unique_ptr<DeskClient>(new DeskClient(std::make_unique<Impl>(pinned->channel, options.random)));
}

absl::StatusOr<v1::SignInReply> DeskClient::signIn(const std::string& user_name, const std::string& password,
                                                   const std::string& code) {
  v1::SignInRequest request;
  request.set_user_name(user_name);
  request.set_password(password);
  request.set_code(code);
  auto reply = m_impl->call(&v1::DeskService::Stub::SignIn, request);
  if (!reply.ok()) return reply;
  m_impl->m_watch.setSession(reply->session());
  v1::HubPins pins;
  if (pins.ParseFromString(reply->pins().content())) {
    m_impl->m_pins.assign(pins.certificate_sha256().begin(), pins.certificate_sha256().end());
    std::erase_if(m_impl->m_pins, [](const std::string& pin) { return pin.size() != kPinBytes; });
  }
  return reply;
}

std::vector<std::string> DeskClient::pins() const { return m_impl->m_pins; }

absl::Status DeskClient::signOut() {
  absl::Status status = m_impl->call(&v1::DeskService::Stub::SignOut, v1::SignOutRequest()).status();
  m_impl->m_watch.setSession("");
  return status;
}

absl::StatusOr<v1::BeginSecondFactorReply> DeskClient::beginSecondFactor(const std::string& password) {
  v1::BeginSecondFactorRequest request;
  request.set_password(password);
  return m_impl->call(&v1::DeskService::Stub::BeginSecondFactor, request);
}

absl::Status DeskClient::confirmSecondFactor(const std::string& code) {
  v1::ConfirmSecondFactorRequest request;
  request.set_code(code);
  return m_impl->call(&v1::DeskService::Stub::ConfirmSecondFactor, request).status();
}

absl::Status DeskClient::changePassword(const std::string& old_password, const std::string& new_password) {
  v1::ChangePasswordRequest request;
  request.set_old_password(old_password);
  request.set_new_password(new_password);
  return m_impl->call(&v1::DeskService::Stub::ChangePassword, request).status();
}

absl::StatusOr<std::vector<v1::CaseRow>> DeskClient::caseload(
    const std::function<bool(std::size_t)>& goes_on) {
  std::vector<v1::CaseRow> rows;
  v1::ListCaseloadRequest request;
  request.set_limit(kPage);
  while (true) {
    auto reply = m_impl->call(&v1::DeskService::Stub::ListCaseload, request);
    if (!reply.ok()) return reply.status();
    for (auto& row : *reply->mutable_rows()) rows.push_back(std::move(row));
    if (!reply->more() || reply->rows().empty()) return rows;
    if (goes_on && !goes_on(rows.size())) return absl::CancelledError("nobody waits for the rest");
    request.set_after_person_id(rows.back().person().id());
  }
}

absl::StatusOr<v1::CaseRow> DeskClient::caseRow(const std::string& person_id) {
  v1::ListCaseloadRequest request;
  request.set_limit(1);
  request.set_person_id(person_id);
  auto reply = m_impl->call(&v1::DeskService::Stub::ListCaseload, request);
  if (!reply.ok()) return reply.status();
  if (reply->rows().empty()) return absl::NotFoundError("person_id: nobody has it");
  return std::move(*reply->mutable_rows(0));
}

absl::StatusOr<v1::Snooze> DeskClient::snooze(const std::string& person_id, const std::string& reason,
                                              const std::string& until_day) {
  v1::PutSnoozeRequest request;
  request.set_person_id(person_id);
  request.set_reason(reason);
  request.set_until_day(until_day);
  auto reply = m_impl->call(&v1::DeskService::Stub::PutSnooze, request);
  if (!reply.ok()) return reply.status();
  return std::move(*reply->mutable_snooze());
}

absl::StatusOr<v1::GetPersonReply> DeskClient::person(const std::string& person_id) {
  v1::GetPersonRequest request;
  request.set_person_id(person_id);
  return m_impl->call(&v1::DeskService::Stub::GetPerson, request);
}

absl::StatusOr<std::uint64_t> DeskClient::putPerson(const v1::PutPersonRequest& request) {
  auto reply = m_impl->call(&v1::DeskService::Stub::PutPerson, request);
  if (!reply.ok()) return reply.status();
  return reply->revision();
}

absl::StatusOr<std::vector<v1::Assignment>> DeskClient::assignments(const std::string& person_id) {
  v1::ListAssignmentsRequest request;
  request.set_person_id(person_id);
  const auto reply = m_impl->call(&v1::DeskService::Stub::ListAssignments, request);
  if (!reply.ok()) return reply.status();
  return std::vector<v1::Assignment>(reply->assignments().begin(), reply->assignments().end());
}

absl::Status DeskClient::assign(const std::string& person_id, const std::string& therapist_id,
                                bool assigned) {
  v1::PutAssignmentRequest request;
  request.set_person_id(person_id);
  request.set_therapist_id(therapist_id);
  request.set_assigned(assigned);
  return m_impl->call(&v1::DeskService::Stub::PutAssignment, request).status();
}

absl::StatusOr<std::vector<v1::FoundPerson>> DeskClient::findPersons(const std::string& family_name) {
  v1::FindPersonsRequest request;
  request.set_family_name(family_name);
  const auto reply = m_impl->call(&v1::DeskService::Stub::FindPersons, request);
  if (!reply.ok()) return reply.status();
  return std::vector<v1::FoundPerson>(reply->persons().begin(), reply->persons().end());
}

absl::StatusOr<v1::BreakGlassReply> DeskClient::breakGlass(const std::string& person_id,
                                                           const std::string& reason) {
  v1::BreakGlassRequest request;
  request.set_person_id(person_id);
  request.set_reason(reason);
  return m_impl->call(&v1::DeskService::Stub::BreakGlass, request);
}

absl::StatusOr<v1::SignProgrammeReply> DeskClient::signProgramme(const v1::SignProgrammeRequest& request) {
  return m_impl->call(&v1::DeskService::Stub::SignProgramme, request);
}

absl::StatusOr<std::vector<v1::Programme>> DeskClient::programmes(const std::string& person_id) {
  v1::ListProgrammesRequest request;
  request.set_person_id(person_id);
  const auto reply = m_impl->call(&v1::DeskService::Stub::ListProgrammes, request);
  if (!reply.ok()) return reply.status();
  std::vector<v1::Programme> programmes;
  for (const auto& signed_programme : reply->programmes()) {
    auto programme = parsed<v1::Programme>(signed_programme.content(), "programme");
    if (!programme.ok()) return programme.status();
    programmes.push_back(*std::move(programme));
  }
  return programmes;
}

absl::StatusOr<v1::HoldOrder> DeskClient::issueHold(const v1::IssueHoldRequest& request) {
  auto reply = m_impl->call(&v1::DeskService::Stub::IssueHold, request);
  if (!reply.ok()) return reply.status();
  return std::move(*reply->mutable_order());
}

absl::StatusOr<std::vector<v1::HoldOrder>> DeskClient::holds(const std::string& person_id) {
  v1::ListHoldsRequest request;
  request.set_person_id(person_id);
  const auto reply = m_impl->call(&v1::DeskService::Stub::ListHolds, request);
  if (!reply.ok()) return reply.status();
  return std::vector<v1::HoldOrder>(reply->orders().begin(), reply->orders().end());
}

absl::StatusOr<v1::Message> DeskClient::sendMessage(const v1::SendMessageRequest& request) {
  auto reply = m_impl->call(&v1::DeskService::Stub::SendMessage, request);
  if (!reply.ok()) return reply.status();
  return std::move(*reply->mutable_message());
}

absl::StatusOr<std::vector<v1::Message>> DeskClient::messages(const std::string& person_id, bool mark_read) {
  v1::ListMessagesRequest request;
  request.set_person_id(person_id);
  request.set_mark_read(mark_read);
  const auto reply = m_impl->call(&v1::DeskService::Stub::ListMessages, request);
  if (!reply.ok()) return reply.status();
  return std::vector<v1::Message>(reply->messages().begin(), reply->messages().end());
}

absl::StatusOr<std::vector<v1::Practice>> DeskClient::practices(const std::string& person_id) {
  std::vector<v1::Practice> practices;
  v1::ListPracticesRequest request;
  request.set_person_id(person_id);
  request.set_limit(kPage);
  while (true) {
    const auto reply = m_impl->call(&v1::DeskService::Stub::ListPractices, request);
    if (!reply.ok()) return reply.status();
    for (const auto& envelope : reply->practices()) {
      auto practice = parsed<v1::Practice>(envelope.content(), "practice");
      if (!practice.ok()) return practice.status();
      practices.push_back(*std::move(practice));
      request.set_after_sequence(envelope.sequence());
    }
    if (!reply->more() || reply->practices().empty()) return practices;
  }
}

absl::StatusOr<std::vector<v1::WearBlock>> DeskClient::wearBlocks(const std::string& person_id) {
  std::vector<v1::WearBlock> blocks;
  v1::ListWearBlocksRequest request;
  request.set_person_id(person_id);
  request.set_limit(kPage);
  while (true) {
    const auto reply = m_impl->call(&v1::DeskService::Stub::ListWearBlocks, request);
    if (!reply.ok()) return reply.status();
    for (const auto& envelope : reply->blocks()) {
      auto block = parsed<v1::WearBlock>(envelope.content(), "wear block");
      if (!block.ok()) return block.status();
      blocks.push_back(*std::move(block));
      request.set_after_sequence(envelope.sequence());
    }
    if (!reply->more() || reply->blocks().empty()) return blocks;
  }
}

absl::StatusOr<v1::Measure> DeskClient::putMeasure(const v1::PutMeasureRequest& request) {
  const auto reply = m_impl->call(&v1::DeskService::Stub::PutMeasure, request);
  if (!reply.ok()) return reply.status();
  return reply->measure();
}

absl::StatusOr<std::vector<v1::Measure>> DeskClient::measures(const std::string& person_id) {
  v1::ListMeasuresRequest request;
  request.set_person_id(person_id);
  const auto reply = m_impl->call(&v1::DeskService::Stub::ListMeasures, request);
  if (!reply.ok()) return reply.status();
  return std::vector<v1::Measure>(reply->measures().begin(), reply->measures().end());
}

absl::StatusOr<v1::Remark> DeskClient::putRemark(const v1::PutRemarkRequest& request) {
  const auto reply = m_impl->call(&v1::DeskService::Stub::PutRemark, request);
  if (!reply.ok()) return reply.status();
  return reply->remark();
}

absl::StatusOr<std::vector<v1::Remark>> DeskClient::remarks(const std::string& person_id) {
  v1::ListRemarksRequest request;
  request.set_person_id(person_id);
  const auto reply = m_impl->call(&v1::DeskService::Stub::ListRemarks, request);
  if (!reply.ok()) return reply.status();
  return std::vector<v1::Remark>(reply->remarks().begin(), reply->remarks().end());
}

absl::StatusOr<std::vector<v1::Receipt>> DeskClient::receipts(const std::string& person_id) {
  v1::ListReceiptsRequest request;
  request.set_person_id(person_id);
  const auto reply = m_impl->call(&v1::DeskService::Stub::ListReceipts, request);
  if (!reply.ok()) return reply.status();
  return std::vector<v1::Receipt>(reply->receipts().begin(), reply->receipts().end());
}

absl::Status DeskClient::noteExport(const std::string& person_id, const std::string& format) {
  v1::NoteExportRequest request;
  request.set_person_id(person_id);
  request.set_format(format);
  return m_impl->call(&v1::DeskService::Stub::NoteExport, request).status();
}

absl::StatusOr<v1::CreatePairingReply> DeskClient::createPairing(const std::string& person_id) {
  v1::CreatePairingRequest request;
  request.set_person_id(person_id);
  return m_impl->call(&v1::DeskService::Stub::CreatePairing, request);
}

absl::StatusOr<std::vector<v1::Device>> DeskClient::devices(const std::string& person_id) {
  v1::ListDevicesRequest request;
  request.set_person_id(person_id);
  const auto reply = m_impl->call(&v1::DeskService::Stub::ListDevices, request);
  if (!reply.ok()) return reply.status();
  return std::vector<v1::Device>(reply->devices().begin(), reply->devices().end());
}

absl::Status DeskClient::revokeDevice(const std::string& device_id) {
  v1::RevokeDeviceRequest request;
  request.set_device_id(device_id);
  return m_impl->call(&v1::DeskService::Stub::RevokeDevice, request).status();
}

absl::StatusOr<std::vector<v1::OwnExercise>> DeskClient::ownExercises() {
  const auto reply = m_impl->call(&v1::DeskService::Stub::ListOwnExercises, v1::ListOwnExercisesRequest());
  if (!reply.ok()) return reply.status();
  return std::vector<v1::OwnExercise>(reply->exercises().begin(), reply->exercises().end());
}

absl::StatusOr<v1::OwnExercise> DeskClient::putOwnExercise(const v1::PutOwnExerciseRequest& request) {
  auto reply = m_impl->call(&v1::DeskService::Stub::PutOwnExercise, request);
  if (!reply.ok()) return reply.status();
  return std::move(*reply->mutable_exercise());
}

absl::StatusOr<std::vector<v1::ProgrammeTemplate>> DeskClient::templates() {
  const auto reply = m_impl->call(&v1::DeskService::Stub::ListTemplates, v1::ListTemplatesRequest());
  if (!reply.ok()) return reply.status();
  return std::vector<v1::ProgrammeTemplate>(reply->templates().begin(), reply->templates().end());
}

absl::StatusOr<v1::ProgrammeTemplate> DeskClient::putTemplate(const v1::PutTemplateRequest& request) {
  auto reply = m_impl->call(&v1::DeskService::Stub::PutTemplate, request);
  if (!reply.ok()) return reply.status();
  return std::move(*reply->mutable_programme_template());
}

absl::Status DeskClient::withdrawTemplate(const std::string& template_id, std::uint32_t base_revision) {
  v1::WithdrawTemplateRequest request;
  request.set_template_id(template_id);
  request.set_base_revision(base_revision);
  return m_impl->call(&v1::DeskService::Stub::WithdrawTemplate, request).status();
}

absl::StatusOr<v1::GetSettingsReply> DeskClient::clinicState() {
  return m_impl->call(&v1::DeskService::Stub::GetSettings, v1::GetSettingsRequest());
}

absl::StatusOr<v1::ClinicCard> DeskClient::clinic() {
  auto reply = clinicState();
  if (!reply.ok()) return reply.status();
  return std::move(*reply->mutable_clinic());
}

absl::StatusOr<v1::ClinicCard> DeskClient::putSettings(const v1::PutSettingsRequest& request) {
  auto reply = m_impl->call(&v1::DeskService::Stub::PutSettings, request);
  if (!reply.ok()) return reply.status();
  return std::move(*reply->mutable_clinic());
}

absl::StatusOr<v1::PutMediaReply> DeskClient::putMediaPart(const v1::PutMediaRequest& request) {
  return m_impl->call(&v1::DeskService::Stub::PutMedia, request);
}

absl::Status DeskClient::putMedia(const std::string& person_id, const std::string& content) {
  const std::string hash = sha256(content);
  v1::PutMediaRequest request = mediaPartOf(person_id, content, hash, 0);
  request.clear_content();  // how much is there?
  while (true) {
    const auto reply = putMediaPart(request);
    if (!reply.ok()) return reply.status();
    if (reply->whole()) return absl::OkStatus();
    const bool went_on = request.content().empty() || reply->offset() > request.offset();
    if (!went_on || reply->offset() > content.size())
      return absl::InternalError("media: the hub does not take the next part");
    request = mediaPartOf(person_id, content, hash, reply->offset());
  }
}

absl::StatusOr<std::string> DeskClient::media(const std::string& person_id, const v1::MediaRef& ref) {
  v1::GetMediaRequest request;
  request.set_person_id(person_id);
  request.set_sha256(ref.sha256());
  request.set_most_bytes(kMostMediaPartBytes);
  std::string content;
  while (content.size() < ref.size_bytes()) {
    request.set_offset(content.size());
    const auto part = m_impl->call(&v1::DeskService::Stub::GetMedia, request);
    if (!part.ok()) return part.status();
    if (part->content().empty()) break;
    content += part->content();
  }
  if (content.size() != ref.size_bytes() || sha256(content) != ref.sha256())
    return absl::DataLossError("media: the hub's content is not it");
  return content;
}

absl::StatusOr<std::vector<v1::Account>> DeskClient::accounts() {
  const auto reply = m_impl->call(&v1::DeskService::Stub::ListAccounts, v1::ListAccountsRequest());
  if (!reply.ok()) return reply.status();
  return std::vector<v1::Account>(reply->accounts().begin(), reply->accounts().end());
}

absl::StatusOr<v1::AddAccountReply> DeskClient::addAccount(const v1::AddAccountRequest& request) {
  return m_impl->call(&v1::DeskService::Stub::AddAccount, request);
}

absl::StatusOr<v1::Account> DeskClient::changeAccount(const v1::ChangeAccountRequest& request) {
  auto reply = m_impl->call(&v1::DeskService::Stub::ChangeAccount, request);
  if (!reply.ok()) return reply.status();
  return std::move(*reply->mutable_account());
}

absl::StatusOr<v1::NewFirstPasswordReply> DeskClient::newFirstPassword(const std::string& account_id) {
  v1::NewFirstPasswordRequest request;
  request.set_account_id(account_id);
  return m_impl->call(&v1::DeskService::Stub::NewFirstPassword, request);
}

absl::Status DeskClient::takeSecondFactor(const std::string& account_id) {
  v1::TakeSecondFactorRequest request;
  request.set_account_id(account_id);
  return m_impl->call(&v1::DeskService::Stub::TakeSecondFactor, request).status();
}

absl::StatusOr<v1::ListAuditReply> DeskClient::audit(const v1::ListAuditRequest& request) {
  return m_impl->call(&v1::DeskService::Stub::ListAudit, request);
}

absl::StatusOr<v1::CheckAuditReply> DeskClient::checkAudit() {
  return m_impl->call(&v1::DeskService::Stub::CheckAudit, v1::CheckAuditRequest());
}

void DeskClient::watch(std::function<void(const std::string& person_id)> changed) {
  m_impl->m_watch.start(std::move(changed));
}

void DeskClient::stopWatching() { m_impl->m_watch.stop(); }

v1::PutMediaRequest mediaPartOf(const std::string& person_id, const std::string& content,
                                const std::string& sha256, std::uint64_t offset) {
  v1::PutMediaRequest request;
  request.set_person_id(person_id);
  request.set_sha256(sha256);
  request.set_size_bytes(content.size());
  request.set_offset(offset);
  request.set_content(content.substr(offset, kMostMediaPartBytes));
  return request;
}

// What these answers mean is said at SignIn in desk_service.proto.
bool needsCode(const absl::Status& status) { return absl::IsPermissionDenied(status); }
bool isWrongCode(const absl::Status& status) {
  return absl::IsUnauthenticated(status) && status.message().substr(0, 5) == "code:";
}

// "tried too often; wait 12 seconds" (Accounts::mayTry).
absl::Duration waitAsked(const absl::Status& status) {
  if (!absl::IsResourceExhausted(status)) return absl::ZeroDuration();
  constexpr std::string_view kBefore = "wait ";
  const std::string_view text(status.message().data(), status.message().size());
  const std::size_t at = text.find(kBefore);
  if (at == std::string_view::npos) return absl::ZeroDuration();
  int seconds = 0;
  const char* const begin = text.data() + at + kBefore.size();
  const auto read = std::from_chars(begin, text.data() + text.size(), seconds);
  return read.ec == std::errc() && seconds > 0 ? absl::Seconds(seconds) : absl::ZeroDuration();
}

}  // namespace newel
