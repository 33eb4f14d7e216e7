// Two hubs, each with its own connections, on one database: what is done through one reaches who listens at
// the other.
#include <gtest/gtest.h>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <mutex>
#include <thread>

#include "sync/common/everybody.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/ears.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

// A desk that listens at the other hub.
class DeskEars : public DeskStream {
 public:
  void push(const v1::DeskNudge& nudge) override {
    const std::lock_guard lock(m_mutex);
    m_heard.push_back(nudge.person_id());
  }
  void close(const absl::Status&) override {
    const std::lock_guard lock(m_mutex);
    m_closed = true;
  }
  bool heardOf(const std::string& person) const {
    const std::lock_guard lock(m_mutex);
    return std::find(m_heard.begin(), m_heard.end(), person) != m_heard.end();
  }
  bool closed() const {
    const std::lock_guard lock(m_mutex);
    return m_closed;
  }

 private:
  mutable std::mutex m_mutex;
  std::vector<std::string> m_heard;
  bool m_closed = false;
};

class TwoHubs : public testing::Test {
 protected:
  void SetUp() override {
    auto store = m_clinic.place().open();
    ASSERT_TRUE(store.ok()) << store.status();
    m_store = *std::move(store);
    auto hub = Hub::open(m_store.get(), &m_clinic.clock(), &m_clinic.random());
    ASSERT_TRUE(hub.ok()) << hub.status();
    m_hub = *std::move(hub);
    auto server = HubServer::start(m_hub.get(), {"127.0.0.1:0", "127.0.0.1"});
    ASSERT_TRUE(server.ok()) << server.status();
    m_server = *std::move(server);
  }
  // Of the clinic's person, paired at the second hub and listening there.
  std::unique_ptr<HomeEngine> phoneAtTheOther() {
    auto ticket = m_clinic.ticketFor(m_person);
    ticket.port = m_server->port();
    auto phone = m_clinic.newPhone("phone");
    EXPECT_EQ(phone->pair(ticket), absl::OkStatus()) << "the invitation was made at the first hub";
    phone->setListener(&m_ears);
    phone->start();
    EXPECT_TRUE(soon([&] { return m_hub->board().openStreams() == 1; }));
    return phone;
  }
  template <typename Test>
  static bool soon(Test test) {
    for (int i = 0; i < 1000 && !test(); ++i) std::this_thread::sleep_for(std::chrono::milliseconds(5));
    return test();
  }

  test::TestClinic m_clinic;
  std::string m_person = m_clinic.addPerson(test::transfemoralLeft());
  std::unique_ptr<HubStore> m_store;
  std::unique_ptr<Hub> m_hub;
  std::unique_ptr<HubServer> m_server;
  test::Ears m_ears;
};

TEST_F(TwoHubs, areOneClinic) {
  EXPECT_EQ(m_hub->clinic().generation, m_clinic.hub().clinic().generation);
  EXPECT_EQ(m_hub->clinic().certificate_sha256, m_clinic.hub().clinic().certificate_sha256);
}

TEST_F(TwoHubs, aHoldOrderReachesAPhoneAtTheOtherInUnderASecond) {
  const auto phone = phoneAtTheOther();
  EXPECT_EQ(m_clinic.hub().board().openStreams(), 0U);
  for (int i = 1; i <= 5; ++i) {
    v1::IssueHoldRequest request;
    request.set_person_id(m_person);
    request.set_reason("Please stop and call us.");
    const auto begun = std::chrono::steady_clock::now();
    ASSERT_TRUE(m_clinic.desk().issueHold(request).ok());
    ASSERT_TRUE(m_ears.holds(i));
    const auto took = std::chrono::steady_clock::now() - begun;
    const auto ms = std::chrono::duration_cast<std::chrono::milliseconds>(took).count();
    RecordProperty("ms_" + std::to_string(i), static_cast<int>(ms));
    std::printf("hold order through two hubs: %d ms\n", static_cast<int>(ms));
    EXPECT_LT(took, std::chrono::seconds(1));
  }
}

TEST_F(TwoHubs, programmesAreFetchedAtTheOtherAtOnce) {
  const auto phone = phoneAtTheOther();
  m_clinic.sign(test::transfemoralLeft());
  EXPECT_TRUE(m_ears.programmes(1));
}

TEST_F(TwoHubs, endingADevicesAccessClosesItsStreamAtTheOther) {
  const auto phone = phoneAtTheOther();
  ASSERT_EQ(m_clinic.desk().revokeDevice(m_clinic.desk().devices(m_person)->at(0).id()), absl::OkStatus());
  EXPECT_TRUE(soon([&] { return m_hub->board().openStreams() == 0; }));
}

TEST_F(TwoHubs, desksAtTheOtherHearOfPracticesAndSigningOutEndsTheirStreams) {
  const auto desk = std::make_shared<DeskEars>();
  v1::SignInRequest sign_in;
  sign_in.set_user_name(test::kUser);
  sign_in.set_password(test::kPassword);
  const auto session = m_clinic.hub().accounts().signIn(sign_in, "a");
  ASSERT_TRUE(session.ok());
  const auto caller = m_hub->accounts().authenticate(session->session(), CallKind::Own);
  ASSERT_TRUE(caller.ok()) << "signed in at one, known at the other";
  m_hub->board().joinDesk(caller->session_sha256, desk, [](const std::string&) { return true; });
  const auto phone = m_clinic.pairedPhone("at-the-first", m_person);
  ASSERT_TRUE(phone->closePractice(test::samplePractice(phone->newId(), m_person)).ok());
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  EXPECT_TRUE(soon([&] { return desk->heardOf(m_person); }));
  ASSERT_EQ(m_clinic.hub().accounts().signOut(*caller), absl::OkStatus());
  EXPECT_TRUE(soon([&] { return desk->closed(); }));
}

// What one hub decides about an account counts for the streams at the other.
TEST_F(TwoHubs, anAccountSwitchedOffAtOneIsCutOffAtTheOther) {
  const auto lead =
      m_clinic.hub().accounts().add("l.lead", "Lead (invented)", v1::ROLE_LEAD, test::kPassword);
  ASSERT_TRUE(lead.ok());
  v1::SignInRequest sign_in;
  sign_in.set_user_name(test::kUser);
  sign_in.set_password(test::kPassword);
  const auto session = m_hub->accounts().signIn(sign_in, "a");
  ASSERT_TRUE(session.ok());
  const auto caller = m_hub->accounts().authenticate(session->session(), CallKind::Own);
  ASSERT_TRUE(caller.ok());
  const auto desk = std::make_shared<DeskEars>();
  m_hub->board().joinDesk(caller->session_sha256, desk, [](const std::string&) { return true; });
  DeskCaller by;
  by.therapist = *lead;
  v1::ChangeAccountRequest request;
  request.set_account_id(caller->therapist.id());
  request.set_display_name(caller->therapist.display_name());
  request.set_role(v1::ROLE_THERAPIST);
  request.set_disabled(true);
  ASSERT_TRUE(m_clinic.hub().accountBook().change(by, request).ok());
  EXPECT_TRUE(soon([&] { return desk->closed(); }));
  EXPECT_FALSE(m_hub->accounts().authenticate(session->session(), CallKind::Own).ok());
}

TEST_F(TwoHubs, desksAtTheOtherHearThatAPersonWasAssignedOrOpened) {
  const auto desk = std::make_shared<DeskEars>();
  m_hub->board().joinDesk("session", desk, [](const std::string&) { return true; });
  const auto other =
      m_clinic.hub().accounts().add("o.other", "Other (invented)", v1::ROLE_THERAPIST, test::kPassword);
  ASSERT_TRUE(other.ok());
  DeskCaller caller;
  caller.therapist = *other;
  v1::BreakGlassRequest open;
  open.set_person_id(m_person);
  open.set_reason("Their therapist is ill today.");
  ASSERT_TRUE(m_clinic.hub().access().breakGlass(caller, open).ok());
  EXPECT_TRUE(soon([&] { return desk->heardOf(m_person); }));
  v1::PutAssignmentRequest assign;
  assign.set_person_id(m_person);
  assign.set_therapist_id(other->id());
  assign.set_assigned(true);
  ASSERT_TRUE(m_clinic.hub().access().assign(caller, assign).ok());
  EXPECT_TRUE(soon([&] { return desk->heardOf(kEverybody); }));
}

// Both sign at the same moment: one number each, and the second is told that its base is old.
TEST_F(TwoHubs, neverGiveOneNumberTwice) {
  std::vector<std::thread> desks;
  std::atomic<int> signed_ones{0};
  std::atomic<int> aborted{0};
  DeskCaller caller;
  caller.therapist.set_id(test::idOf(60));
  caller.therapist.set_display_name("Terry Sample (invented)");
  for (Hub* hub : {&m_clinic.hub(), m_hub.get()}) {
    desks.emplace_back([&, hub] {
      v1::SignProgrammeRequest request;
      *request.mutable_draft() = m_clinic.draft(test::transfemoralLeft());
      const auto reply = hub->prescriptions().sign(caller, request);
      signed_ones += reply.ok() ? 1 : 0;
      aborted += absl::IsAborted(reply.status()) ? 1 : 0;
    });
  }
  for (auto& desk : desks) desk.join();
  EXPECT_EQ(signed_ones, 1);
  EXPECT_EQ(aborted, 1);
  EXPECT_EQ(m_hub->prescriptions().programmes(m_person)->programmes_size(), 1);
}

}  // namespace
}  // namespace newel
