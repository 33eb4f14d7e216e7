// Who may call what: every call of both services, by everybody who might try, about a person of their own and
// about somebody else's, over TLS. The table below is the rule; a call without a row fails.
#include <absl/time/clock.h>
#include <grpcpp/client_context.h>
#include <gtest/gtest.h>

#include <array>
#include <functional>
#include <memory>
#include <set>
#include <string>
#include <vector>

#include "core/records/record_text.h"
#include "core/time/local_day.h"
#include "sync/common/content_hash.h"
#include "sync/common/pinned_channel.h"
#include "sync/common/record_id.h"
#include "sync/common/text_codes.h"
#include "sync/hub/password.h"
#include "sync/protocol/desk_service.grpc.pb.h"
#include "sync/protocol/home_service.grpc.pb.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"
#include "tests/sync/common/test_media.h"

namespace newel {
namespace {

enum Caller {
  Nobody,
  WrongToken,
  EndedSession,
  RevokedPhone,
  Phone,
  Therapist,
  Lead,
  Administrator,
  Auditor
};
constexpr std::array<const char*, 9> kCallers = {"nobody",        "wrong token",   "ended session",
                                                 "revoked phone", "phone",         "therapist",
                                                 "lead",          "administrator", "auditor"};

// What came of a call, one letter each.
constexpr char kOk = 'O';
constexpr char kUnauthenticated = 'U';
constexpr char kDenied = 'D';
constexpr char kHidden = 'H';   // allowed, and nothing of this person in the answer
constexpr char kRefused = 'R';  // an Offer's outcome
constexpr char kInvalid = 'I';  // through the door; the check refuses what the test sent
constexpr char kNotFound = 'N';
constexpr char kPrecondition = 'F';

char letterOf(const grpc::Status& status) {
  switch (status.error_code()) {
    case grpc::StatusCode::OK:
      return kOk;
    case grpc::StatusCode::UNAUTHENTICATED:
      return kUnauthenticated;
    case grpc::StatusCode::PERMISSION_DENIED:
      return kDenied;
    case grpc::StatusCode::INVALID_ARGUMENT:
      return kInvalid;
    case grpc::StatusCode::NOT_FOUND:
      return kNotFound;
    case grpc::StatusCode::FAILED_PRECONDITION:
      return kPrecondition;
    default:
      return '?';
  }
}

// One cell: fresh persons, a fresh session or device, so that no cell changes the next.
struct Cell {
  v1::DeskService::Stub* desk = nullptr;
  v1::HomeService::Stub* home = nullptr;
  test::TestClinic* clinic = nullptr;
  std::string token;       // empty: none is sent
  std::string account_id;  // of the caller, when there is one
  std::string person_id;   // whom the call is about
  std::string device_id;   // a phone of that person
  bool own = false;
};

void prepare(const Cell& cell, grpc::ClientContext& context) {
  if (!cell.token.empty()) context.AddMetadata("authorization", "Bearer " + cell.token);
  setDeadline(context, absl::Seconds(60));
}

template <typename Stub, typename Request, typename Reply>
char unary(const Cell& cell, Stub* stub,
           grpc::Status (Stub::*method)(grpc::ClientContext*, const Request&, Reply*), const Request& request,
           const std::function<char(const Reply&)>& judge = nullptr) {
  grpc::ClientContext context;
  prepare(cell, context);
  Reply reply;
  const grpc::Status status = (stub->*method)(&context, request, &reply);
  return status.ok() && judge ? judge(reply) : letterOf(status);
}

using Desk = v1::DeskService::Stub;
using Home = v1::HomeService::Stub;

template <typename Request, typename Reply>
std::function<char(const Cell&)> byPerson(grpc::Status (Desk::*method)(grpc::ClientContext*, const Request&,
                                                                       Reply*)) {
  return [method](const Cell& cell) {
    Request request;
    request.set_person_id(cell.person_id);
    return unary(cell, cell.desk, method, request);
  };
}

template <typename Request, typename Reply>
std::function<char(const Cell&)> plain(grpc::Status (Desk::*method)(grpc::ClientContext*, const Request&,
                                                                    Reply*)) {
  return [method](const Cell& cell) { return unary(cell, cell.desk, method, Request()); };
}

char signIn(const Cell& cell) {
  v1::SignInRequest request;
  request.set_user_name(test::kUser);
  request.set_password(test::kPassword);
  return unary(cell, cell.desk, &Desk::SignIn, request);
}

char beginFactor(const Cell& cell) {
  v1::BeginSecondFactorRequest request;
  request.set_password(test::kPassword);
  return unary(cell, cell.desk, &Desk::BeginSecondFactor, request);
}

char confirmFactor(const Cell& cell) {
  v1::ConfirmSecondFactorRequest request;
  request.set_code("12345");  // never six digits
  EXPECT_EQ(cell.clinic->store().write([&](HubTransaction& transaction) {
    transaction.dropSecondFactor(cell.account_id);
    return absl::OkStatus();
  }),
            absl::OkStatus());
  return unary(cell, cell.desk, &Desk::ConfirmSecondFactor, request);
}

char changePassword(const Cell& cell) {
  v1::ChangePasswordRequest request;
  request.set_old_password(test::kPassword);
  request.set_new_password("short");  // never good, so that the next cells' password stays
  return unary(cell, cell.desk, &Desk::ChangePassword, request);
}

char addAccount(const Cell& cell) {
  v1::AddAccountRequest request;
  request.set_user_name("new." + std::to_string(absl::ToUnixMicros(absl::Now())));
  request.set_display_name("New (invented)");
  request.set_role(v1::ROLE_THERAPIST);
  return unary(cell, cell.desk, &Desk::AddAccount, request);
}

// An account of the cell's own colleague, who does not sign in.
std::string colleague(const Cell& cell) {
  const std::string id = newRecordId(cell.clinic->clock(), cell.clinic->random());
  EXPECT_EQ(cell.clinic->store().write([&](HubTransaction& transaction) {
    transaction.addAccount({id, "c." + id, "Colleague (invented)", v1::ROLE_THERAPIST, "$hash"});
    transaction.putSecondFactor(id, {std::string(20, 's'), true, 0});
    return absl::OkStatus();
  }),
            absl::OkStatus());
  return id;
}

// "Own" is the caller's own account here, and a colleague's the other.
template <typename Request, typename Reply>
std::function<char(const Cell&)> onAccount(grpc::Status (Desk::*method)(grpc::ClientContext*, const Request&,
                                                                        Reply*)) {
  return [method](const Cell& cell) {
    Request request;
    request.set_account_id(cell.own ? cell.account_id : colleague(cell));
    return unary(cell, cell.desk, method, request);
  };
}

char changeAccount(const Cell& cell) {
  v1::ChangeAccountRequest request;
  request.set_account_id(cell.own ? cell.account_id : colleague(cell));
  request.set_display_name("Changed (invented)");
  request.set_role(v1::ROLE_LEAD);
  return unary(cell, cell.desk, &Desk::ChangeAccount, request);
}

char audit(const Cell& cell) {
  v1::ListAuditRequest request;
  request.set_limit(1);
  request.set_person_id(cell.person_id);
  return unary(cell, cell.desk, &Desk::ListAudit, request);
}

char caseload(const Cell& cell) {
  v1::ListCaseloadRequest request;
  request.set_limit(500);
  while (true) {
    std::string last;
    bool more = false;
    bool there = false;
    const char letter = unary<Desk, v1::ListCaseloadRequest, v1::ListCaseloadReply>(
        cell, cell.desk, &Desk::ListCaseload, request, [&](const v1::ListCaseloadReply& reply) {
          for (const auto& row : reply.rows()) {
            last = row.person().id();
            there = there || last == cell.person_id;
          }
          more = reply.more();
          return there ? kOk : kHidden;
        });
    if (letter != kHidden || !more) return letter;
    request.set_after_person_id(last);
  }
}

// By one id it is refused as any other call about that person, not left out.
char caseloadOfOne(const Cell& cell) {
  v1::ListCaseloadRequest request;
  request.set_limit(1);
  request.set_person_id(cell.person_id);
  return unary<Desk, v1::ListCaseloadRequest, v1::ListCaseloadReply>(
      cell, cell.desk, &Desk::ListCaseload, request, [&](const v1::ListCaseloadReply& reply) {
        return reply.rows_size() == 1 && reply.rows(0).person().id() == cell.person_id ? kOk : kHidden;
      });
}

// A person without a phone and a programme: the row says so, and that can wait.
char snooze(const Cell& cell) {
  v1::PutSnoozeRequest request;
  request.set_person_id(cell.person_id);
  request.set_reason("Their first visit is on Monday.");
  request.set_until_day(formatLocalDay(localDayAt(cell.clinic->clock().wall(), absl::UTCTimeZone()) + 2));
  return unary(cell, cell.desk, &Desk::PutSnooze, request);
}

v1::Person personWithId(const std::string& id) {
  v1::Person person = test::transfemoralLeft();
  person.set_id(id);
  person.set_revision(1);
  return person;
}

v1::Identity identityOf(const std::string& person_id) {
  v1::Identity identity;
  identity.set_person_id(person_id);
  identity.set_given_name("Sample");
  identity.set_family_name("Invented");
  identity.set_revision(1);
  return identity;
}

char putPerson(const Cell& cell) {
  v1::PutPersonRequest request;
  *request.mutable_person() = personWithId(cell.person_id);
  *request.mutable_identity() = identityOf(cell.person_id);
  request.set_base_revision(1);
  return unary(cell, cell.desk, &Desk::PutPerson, request);
}

char assign(const Cell& cell) {
  v1::PutAssignmentRequest request;
  request.set_person_id(cell.person_id);
  request.set_therapist_id(cell.account_id);
  request.set_assigned(true);
  return unary(cell, cell.desk, &Desk::PutAssignment, request);
}

char find(const Cell& cell) {
  v1::FindPersonsRequest request;
  request.set_family_name("invented");
  return unary(cell, cell.desk, &Desk::FindPersons, request);
}

char breakGlass(const Cell& cell) {
  v1::BreakGlassRequest request;
  request.set_person_id(cell.person_id);
  request.set_reason("Their therapist is ill today.");
  return unary(cell, cell.desk, &Desk::BreakGlass, request);
}

char sign(const Cell& cell) {
  v1::SignProgrammeRequest request;
  *request.mutable_draft() = cell.clinic->draft(personWithId(cell.person_id));
  return unary(cell, cell.desk, &Desk::SignProgramme, request);
}

char hold(const Cell& cell) {
  v1::IssueHoldRequest request;
  request.set_person_id(cell.person_id);
  request.set_reason("Wait for my call.");
  return unary(cell, cell.desk, &Desk::IssueHold, request);
}

char sendMessage(const Cell& cell) {
  v1::SendMessageRequest request;
  request.set_person_id(cell.person_id);
  request.set_text("See you on Monday.");
  request.set_id(newRecordId(cell.clinic->clock(), cell.clinic->random()));
  return unary(cell, cell.desk, &Desk::SendMessage, request);
}

char noteExport(const Cell& cell) {
  v1::NoteExportRequest request;
  request.set_person_id(cell.person_id);
  request.set_format("fhir");
  return unary(cell, cell.desk, &Desk::NoteExport, request);
}

char markRead(const Cell& cell) {
  v1::ListMessagesRequest request;
  request.set_person_id(cell.person_id);
  request.set_mark_read(true);
  return unary(cell, cell.desk, &Desk::ListMessages, request);
}

char practices(const Cell& cell) {
  v1::ListPracticesRequest request;
  request.set_person_id(cell.person_id);
  request.set_limit(10);
  return unary(cell, cell.desk, &Desk::ListPractices, request);
}

char wearBlocks(const Cell& cell) {
  v1::ListWearBlocksRequest request;
  request.set_person_id(cell.person_id);
  request.set_limit(10);
  return unary(cell, cell.desk, &Desk::ListWearBlocks, request);
}

char putMeasure(const Cell& cell) {
  v1::PutMeasureRequest request;
  *request.mutable_measure() =
      test::timedWalk(newRecordId(cell.clinic->clock(), cell.clinic->random()), cell.person_id, 12.5);
  return unary(cell, cell.desk, &Desk::PutMeasure, request);
}

char putRemark(const Cell& cell) {
  v1::PutRemarkRequest request;
  *request.mutable_remark() =
      test::sampleRemark(newRecordId(cell.clinic->clock(), cell.clinic->random()), cell.person_id);
  return unary(cell, cell.desk, &Desk::PutRemark, request);
}

char revokeDevice(const Cell& cell) {
  v1::RevokeDeviceRequest request;
  request.set_device_id(cell.device_id);
  return unary(cell, cell.desk, &Desk::RevokeDevice, request);
}

// Their photo, named by a signed programme. The content is the test's own business: no two persons share one.
v1::MediaRef photoOf(const Cell& cell) {
  const std::string content =
      test::photoOfColour(static_cast<std::uint32_t>(std::hash<std::string>()(cell.person_id)));
  const v1::MediaRef ref = test::refTo(content, "A photo");
  const std::string id = newRecordId(cell.clinic->clock(), cell.clinic->random());
  EXPECT_EQ(cell.clinic->store().write([&](HubTransaction& transaction) {
    const MediaUploadRow upload{id, cell.person_id, ref.sha256(), content.size(), 0};
    transaction.addMediaUpload(upload, cell.clinic->clock().wall());
    transaction.addMediaPart(upload, content, cell.clinic->clock().wall());
    transaction.addMedia({id, ref.sha256(), ref.type(), content.size(), false}, cell.clinic->clock().wall());
    transaction.dropMediaUpload(id);
    transaction.addMediaLink(cell.person_id, id, cell.clinic->clock().wall());
    transaction.markMediaNamed(cell.person_id, id);
    return absl::OkStatus();
  }),
            absl::OkStatus());
  return ref;
}

char putMedia(const Cell& cell) {
  const std::string content = test::photoOfColour(7);
  return unary(cell, cell.desk, &Desk::PutMedia, mediaPartOf(cell.person_id, content, sha256(content), 0));
}

char getMedia(const Cell& cell) {
  v1::GetMediaRequest request;
  request.set_person_id(cell.person_id);
  request.set_sha256(photoOf(cell).sha256());
  request.set_most_bytes(100);
  return unary(cell, cell.desk, &Desk::GetMedia, request);
}

// Somebody else's is not there, as if nobody had it.
char fetchMedia(const Cell& cell) {
  v1::FetchMediaRequest request;
  request.set_sha256(photoOf(cell).sha256());
  request.set_most_bytes(100);
  return unary(cell, cell.home, &Home::FetchMedia, request);
}

char putSettings(const Cell& cell) {
  v1::PutSettingsRequest request;
  request.set_base_revision(cell.clinic->desk().clinic()->settings().revision());
  return unary(cell, cell.desk, &Desk::PutSettings, request);
}

// What a stream says first and whether it then hears of this person.
char watch(const Cell& cell) {
  grpc::ClientContext context;
  prepare(cell, context);
  const auto stream = cell.desk->Watch(&context, v1::WatchRequest());
  v1::DeskNudge nudge;
  if (!stream->Read(&nudge)) return letterOf(stream->Finish());
  cell.clinic->hub().board().nudgeDesks(cell.person_id);
  cell.clinic->hub().board().nudgeDesks("");
  const bool read = stream->Read(&nudge);
  context.TryCancel();
  stream->Finish();
  if (!read) return '?';
  return nudge.person_id() == cell.person_id ? kOk : kHidden;
}

char pair(const Cell& cell) {
  // The code in the picture, of the person; or one that nobody was given.
  v1::PairRequest request;
  request.set_code(cell.own ? cell.clinic->ticketFor(cell.person_id).code : std::string(26, 'A'));
  return unary(cell, cell.home, &Home::Pair, request);
}

char offer(const Cell& cell) {
  v1::OfferRequest request;
  const std::string id = newRecordId(cell.clinic->clock(), cell.clinic->random());
  *request.add_records() =
      makeEnvelope(v1::RECORD_KIND_PRACTICE, id, 1, toBytes(test::samplePractice(id, cell.person_id)));
  request.mutable_records(0)->set_sequence(1);
  return unary<Home, v1::OfferRequest, v1::OfferReply>(
      cell, cell.home, &Home::Offer, request, [](const v1::OfferReply& reply) {
        if (reply.outcomes_size() != 1) return '?';
        return reply.outcomes(0).outcome() == v1::OUTCOME_KEPT ? kOk : kRefused;
      });
}

char fetch(const Cell& cell) {
  v1::FetchRequest request;
  request.set_limit(200);
  return unary<Home, v1::FetchRequest, v1::FetchReply>(
      cell, cell.home, &Home::Fetch, request, [&](const v1::FetchReply& reply) {
        for (const auto& record : reply.records()) {
          if (record.kind() == v1::RECORD_KIND_PERSON && record.id() == cell.person_id) return kOk;
        }
        return kHidden;
      });
}

char listen(const Cell& cell) {
  grpc::ClientContext context;
  prepare(cell, context);
  const auto stream = cell.home->Listen(&context, v1::ListenRequest());
  v1::Nudge nudge;
  if (!stream->Read(&nudge)) return letterOf(stream->Finish());
  v1::SignedHoldOrder order;
  order.set_key_id(cell.person_id);
  cell.clinic->hub().board().pushHold(cell.person_id, order);
  cell.clinic->hub().board().nudgePerson("");
  const bool read = stream->Read(&nudge);
  context.TryCancel();
  stream->Finish();
  if (!read) return '?';
  return nudge.has_hold_order() ? kOk : kHidden;
}

struct Row {
  const char* method;
  // For each caller in order: about a person of their own, then about somebody else's.
  const char* cells;
  std::function<char(const Cell&)> call;
};

const std::vector<Row>& table() {
  // clang-format off
  static const std::vector<Row> kTable = {
      //                             nobody wrong ended revok phone thera lead  admin audit
      {"DeskService.SignIn",            "OO OO OO OO OO OO OO OO OO", signIn},
      {"DeskService.SignOut",           "UU UU UU UU UU OO OO OO OO", plain(&Desk::SignOut)},
      {"DeskService.BeginSecondFactor", "UU UU UU UU UU OO OO OO OO", beginFactor},
      {"DeskService.ConfirmSecondFactor", "UU UU UU UU UU FF FF FF FF", confirmFactor},
      {"DeskService.ChangePassword",    "UU UU UU UU UU II II II II", changePassword},
      {"DeskService.ListAccounts",      "UU UU UU UU UU DD OO OO OO", plain(&Desk::ListAccounts)},
      {"DeskService.AddAccount",        "UU UU UU UU UU DD OO OO DD", addAccount},
      {"DeskService.ChangeAccount",     "UU UU UU UU UU DD FO FO DD", changeAccount},
      {"DeskService.NewFirstPassword",  "UU UU UU UU UU DD FO FO DD", onAccount(&Desk::NewFirstPassword)},
      {"DeskService.TakeSecondFactor",  "UU UU UU UU UU DD FO FO DD", onAccount(&Desk::TakeSecondFactor)},
      {"DeskService.ListAudit",         "UU UU UU UU UU DD OO DD OO", audit},
      {"DeskService.CheckAudit",        "UU UU UU UU UU DD OO DD OO", plain(&Desk::CheckAudit)},
      {"DeskService.ListCaseload",      "UU UU UU UU UU OH OO DD OO", caseload},
      {"DeskService.ListCaseload",      "UU UU UU UU UU OD OO DD OO", caseloadOfOne},
      {"DeskService.PutSnooze",         "UU UU UU UU UU OD OO DD DD", snooze},
      {"DeskService.GetPerson",         "UU UU UU UU UU OD OO DD OO", byPerson(&Desk::GetPerson)},
      {"DeskService.PutPerson",         "UU UU UU UU UU OD OO DD DD", putPerson},
      {"DeskService.ListAssignments",   "UU UU UU UU UU DD OO OO DD", byPerson(&Desk::ListAssignments)},
      {"DeskService.PutAssignment",     "UU UU UU UU UU DD OO OO DD", assign},
      {"DeskService.FindPersons",       "UU UU UU UU UU OO OO OO DD", find},
      {"DeskService.BreakGlass",        "UU UU UU UU UU FO FF DD DD", breakGlass},
      {"DeskService.SignProgramme",     "UU UU UU UU UU OD OO DD DD", sign},
      {"DeskService.ListProgrammes",    "UU UU UU UU UU OD OO DD OO", byPerson(&Desk::ListProgrammes)},
      {"DeskService.IssueHold",         "UU UU UU UU UU OD OO DD DD", hold},
      {"DeskService.ListHolds",         "UU UU UU UU UU OD OO DD OO", byPerson(&Desk::ListHolds)},
      {"DeskService.SendMessage",       "UU UU UU UU UU OD OO DD DD", sendMessage},
      {"DeskService.ListMessages",      "UU UU UU UU UU OD OO DD OO", byPerson(&Desk::ListMessages)},
      {"DeskService.ListMessages",      "UU UU UU UU UU OD OO DD DD", markRead},
      {"DeskService.ListPractices",     "UU UU UU UU UU OD OO DD OO", practices},
      {"DeskService.ListWearBlocks",    "UU UU UU UU UU OD OO DD OO", wearBlocks},
      {"DeskService.PutMeasure",        "UU UU UU UU UU OD OO DD DD", putMeasure},
      {"DeskService.ListMeasures",      "UU UU UU UU UU OD OO DD OO", byPerson(&Desk::ListMeasures)},
      {"DeskService.PutRemark",         "UU UU UU UU UU OD OO DD DD", putRemark},
      {"DeskService.ListRemarks",       "UU UU UU UU UU OD OO DD OO", byPerson(&Desk::ListRemarks)},
      {"DeskService.ListReceipts",      "UU UU UU UU UU OD OO DD OO", byPerson(&Desk::ListReceipts)},
      {"DeskService.NoteExport",        "UU UU UU UU UU OD OO DD OO", noteExport},
      {"DeskService.CreatePairing",     "UU UU UU UU UU OD OO OO DD", byPerson(&Desk::CreatePairing)},
      {"DeskService.ListDevices",       "UU UU UU UU UU OD OO OO OO", byPerson(&Desk::ListDevices)},
      {"DeskService.RevokeDevice",      "UU UU UU UU UU OD OO OO DD", revokeDevice},
      {"DeskService.ListOwnExercises",  "UU UU UU UU UU OO OO DD OO", plain(&Desk::ListOwnExercises)},
      {"DeskService.PutOwnExercise",    "UU UU UU UU UU II II DD DD", plain(&Desk::PutOwnExercise)},
      {"DeskService.ListTemplates",     "UU UU UU UU UU OO OO DD OO", plain(&Desk::ListTemplates)},
      {"DeskService.PutTemplate",       "UU UU UU UU UU II II DD DD", plain(&Desk::PutTemplate)},
      {"DeskService.WithdrawTemplate",  "UU UU UU UU UU NN NN DD DD", plain(&Desk::WithdrawTemplate)},
      {"DeskService.GetSettings",       "UU UU UU UU UU OO OO OO OO", plain(&Desk::GetSettings)},
      {"DeskService.PutSettings",       "UU UU UU UU UU DD OO OO DD", putSettings},
      {"DeskService.PutMedia",          "UU UU UU UU UU OD OO DD DD", putMedia},
      {"DeskService.GetMedia",          "UU UU UU UU UU OD OO DD OO", getMedia},
      {"DeskService.Watch",             "UU UU UU UU UU OH OO DD OO", watch},
      {"HomeService.Pair",              "ON ON ON ON ON ON ON ON ON", pair},
      {"HomeService.Offer",             "UU UU UU DD OR UU UU UU UU", offer},
      {"HomeService.Fetch",             "UU UU UU DD OH UU UU UU UU", fetch},
      {"HomeService.FetchMedia",        "UU UU UU DD ON UU UU UU UU", fetchMedia},
      {"HomeService.Listen",            "UU UU UU DD OH UU UU UU UU", listen},
  };
  // clang-format on
  return kTable;
}

class AccessMatrix : public testing::Test {
 protected:
  AccessMatrix() {
    const auto pinned =
        connectPinned(m_clinic.address(), {m_clinic.hub().clinic().certificate_sha256}, absl::Seconds(10));
    EXPECT_TRUE(pinned.ok()) << pinned.status();
    m_channel = pinned->channel;
    m_desk = v1::DeskService::NewStub(m_channel);
    m_home = v1::HomeService::NewStub(m_channel);
    // The fixture's own desk may do all, to prepare what a cell needs.
    EXPECT_TRUE(
        m_clinic.hub().accounts().add("l.setup", "Setup (invented)", v1::ROLE_LEAD, test::kPassword).ok());
    EXPECT_TRUE(m_clinic.desk().signIn("l.setup", test::kPassword).ok());
    const auto hash = hashPassword(test::kPassword);
    EXPECT_TRUE(hash.ok());
    const std::array<v1::Role, 4> roles = {v1::ROLE_THERAPIST, v1::ROLE_LEAD, v1::ROLE_ADMINISTRATOR,
                                           v1::ROLE_AUDITOR};
    write([&](HubTransaction& transaction) {
      for (std::size_t i = 0; i < roles.size(); ++i) {
        m_accounts.at(i) = newRecordId(m_clinic.clock(), m_clinic.random());
        transaction.addAccount(
            {m_accounts.at(i), "role." + std::to_string(i), "Role (invented)", roles.at(i), *hash});
      }
    });
  }

  void write(const std::function<void(HubTransaction&)>& body) {
    EXPECT_EQ(m_clinic.store().write([&](HubTransaction& transaction) {
      body(transaction);
      return absl::OkStatus();
    }),
              absl::OkStatus());
  }

  std::string newToken() { return toBase64Url(randomBytes(m_clinic.random(), 32)); }

  // A person as PutPerson would keep one, and a phone of theirs.
  void addPerson(HubTransaction& transaction, const std::string& id, const std::string& device_id,
                 const std::string& device_token) {
    const std::string bytes = toBytes(personWithId(id));
    transaction.putPerson(id, {1, bytes});
    transaction.putIdentity(id, {1, toBytes(identityOf(id))});
    v1::Envelope envelope = makeEnvelope(v1::RECORD_KIND_PERSON, id, 1, bytes);
    envelope.set_sequence(transaction.takeSequence());
    transaction.addToFeed(id, envelope, true);
    DeviceRow device;
    device.id = device_id;
    device.person_id = id;
    device.token_sha256 = sha256(device_token);
    device.paired_at = m_clinic.clock().wall();
    transaction.addDevice(device);
  }

  Cell cellFor(Caller caller, bool own) {
    Cell cell{m_desk.get(), m_home.get(), &m_clinic, "", "", "", "", own};
    const std::string mine = newRecordId(m_clinic.clock(), m_clinic.random());
    const std::string other = newRecordId(m_clinic.clock(), m_clinic.random());
    const std::string my_device = newRecordId(m_clinic.clock(), m_clinic.random());
    const std::string other_device = newRecordId(m_clinic.clock(), m_clinic.random());
    const std::string device_token = newToken();
    cell.person_id = own ? mine : other;
    cell.device_id = own ? my_device : other_device;
    const absl::Time now = m_clinic.clock().wall();
    write([&](HubTransaction& transaction) {
      addPerson(transaction, mine, my_device, device_token);
      addPerson(transaction, other, other_device, newToken());
      if (caller == RevokedPhone) transaction.revokeDevice(my_device);
      if (caller == EndedSession || caller >= Therapist) {
        const std::size_t account = caller >= Therapist ? caller - Therapist : 0;
        cell.account_id = m_accounts.at(account);
        cell.token = newToken();
        transaction.setAssigned(cell.account_id, mine, true);
        transaction.addSession(sha256(cell.token),
                               {cell.account_id, caller == EndedSession ? now : now + absl::Hours(1), now});
      }
    });
    if (caller == WrongToken) cell.token = newToken();
    if (caller == Phone || caller == RevokedPhone) cell.token = device_token;
    return cell;
  }

  test::TestClinic m_clinic;
  std::shared_ptr<grpc::Channel> m_channel;
  std::unique_ptr<v1::DeskService::Stub> m_desk;
  std::unique_ptr<v1::HomeService::Stub> m_home;
  std::array<std::string, 4> m_accounts;
};

TEST_F(AccessMatrix, everyCallByEveryCallerIsAsTheTableSays) {
  std::size_t cells = 0;
  for (const auto& row : table()) {
    const std::string expected = row.cells;
    ASSERT_EQ(expected.size(), kCallers.size() * 3 - 1) << row.method;
    for (std::size_t caller = 0; caller < kCallers.size(); ++caller) {
      for (const bool own : {true, false}) {
        const char answer = row.call(cellFor(static_cast<Caller>(caller), own));
        EXPECT_EQ(answer, expected.at(caller * 3 + (own ? 0 : 1)))
            << row.method << " by " << kCallers.at(caller) << (own ? ", own" : ", somebody else's");
        ++cells;
      }
    }
  }
  EXPECT_EQ(cells, table().size() * kCallers.size() * 2);
}

TEST(AccessTable, everyCallOfBothServicesHasARow) {
  std::set<std::string> rows;
  for (const auto& row : table()) rows.insert(row.method);
  std::set<std::string> methods;
  for (const char* name : {"newel.v1.DeskService", "newel.v1.HomeService"}) {
    const auto* service = google::protobuf::DescriptorPool::generated_pool()->FindServiceByName(name);
    ASSERT_NE(service, nullptr) << name;
    for (int i = 0; i < service->method_count(); ++i) {
      methods.insert(service->name() + "." + service->method(i)->name());
    }
  }
  EXPECT_EQ(rows, methods);
}

}  // namespace
}  // namespace newel
