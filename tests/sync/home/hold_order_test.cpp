// A hold order's way to a phone: pushed at once, kept for one that is away, told to one that comes back.
#include <SQLiteCpp/SQLiteCpp.h>
#include <gtest/gtest.h>

#include <atomic>
#include <chrono>
#include <thread>

#include "sync/common/pinned_channel.h"
#include "sync/protocol/home_service.grpc.pb.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/ears.h"
#include "tests/sync/common/test_clinic.h"
#include "tests/sync/home/lossy_network.h"

namespace newel {
namespace {

class HoldOrderWay : public testing::Test {
 protected:
  v1::HoldOrder issue(const std::string& lifts = "") {
    v1::IssueHoldRequest request;
    request.set_person_id(m_person);
    request.set_reason("Please stop and call us.");
    request.set_lifts_id(lifts);
    const auto order = m_clinic.desk().issueHold(request);
    EXPECT_TRUE(order.ok()) << order.status();
    return *order;
  }
  bool listening(std::size_t streams = 1) {
    for (int i = 0; i < 500 && m_clinic.hub().board().openStreams() != streams; ++i) {
      std::this_thread::sleep_for(std::chrono::milliseconds(10));
    }
    return m_clinic.hub().board().openStreams() == streams;
  }
  template <typename Test>
  static bool soon(Test test) {
    for (int i = 0; i < 500 && !test(); ++i) std::this_thread::sleep_for(std::chrono::milliseconds(10));
    return test();
  }

  test::TestClinic m_clinic;
  std::string m_person = m_clinic.addPerson(test::transfemoralLeft());
  test::Ears m_ears;
};

TEST_F(HoldOrderWay, onAnOpenStreamItArrivesWellUnderASecond) {
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  phone->setListener(&m_ears);
  phone->start();
  ASSERT_TRUE(listening());
  for (int i = 1; i <= 5; ++i) {
    const auto begun = std::chrono::steady_clock::now();
    issue();
    ASSERT_TRUE(m_ears.holds(i));
    const auto took = std::chrono::steady_clock::now() - begun;
    RecordProperty("ms",
                   static_cast<int>(std::chrono::duration_cast<std::chrono::milliseconds>(took).count()));
    EXPECT_LT(took, std::chrono::milliseconds(700));
    EXPECT_EQ(phone->activeHolds().size(), static_cast<std::size_t>(i)) << "durable when it is told";
  }
  EXPECT_TRUE(soon([&] { return m_clinic.desk().caseload()->at(0).hold_arrived(); })) << "and the desk knows";
}

TEST_F(HoldOrderWay, itComesWhileASlowOfferIsUnderWay) {
  test::LossyNetwork network;
  std::atomic<bool> slow{false};
  std::atomic<bool> waiting{false};
  network.losses.spoil_offer = [&](v1::OfferReply&) {
    waiting = true;
    while (slow) std::this_thread::sleep_for(std::chrono::milliseconds(5));
  };
  auto options = m_clinic.phoneOptions("phone");
  options.network = &network;
  const auto phone = *HomeEngine::open(options);
  ASSERT_TRUE(phone->pair(m_clinic.ticketFor(m_person)).ok());
  phone->setListener(&m_ears);
  phone->start();
  ASSERT_TRUE(listening());
  slow = true;
  ASSERT_TRUE(phone->closePractice(test::samplePractice(phone->newId(), m_person)).ok());
  ASSERT_TRUE(soon([&] { return waiting.load(); }));
  issue();
  EXPECT_TRUE(m_ears.holds(1)) << "it waited behind an upload";
  slow = false;
}

TEST_F(HoldOrderWay, aPhoneThatWasAwayHasItAtItsNextContact) {
  test::LossyNetwork network;
  auto options = m_clinic.phoneOptions("phone");
  options.network = &network;
  const auto phone = *HomeEngine::open(options);
  ASSERT_TRUE(phone->pair(m_clinic.ticketFor(m_person)).ok());
  network.losses.down = true;
  const auto order = issue();
  EXPECT_FALSE(phone->syncOnce().ok());
  EXPECT_TRUE(phone->activeHolds().empty());
  EXPECT_TRUE(m_clinic.desk().caseload()->at(0).hold_active());
  EXPECT_FALSE(m_clinic.desk().caseload()->at(0).hold_arrived()) << "the desk must not think it did";
  network.losses.down = false;
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  ASSERT_EQ(phone->activeHolds().size(), 1U);
  EXPECT_EQ(phone->activeHolds()[0].id(), order.id());
  EXPECT_TRUE(m_clinic.desk().caseload()->at(0).hold_arrived());
  issue(order.id());
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  EXPECT_TRUE(phone->activeHolds().empty());
}

TEST_F(HoldOrderWay, aHoldSurvivesTheRestartOfPhoneAndHub) {
  auto phone = m_clinic.pairedPhone("phone", m_person);
  issue();
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  phone.reset();
  const int port = std::stoi(m_clinic.address().substr(m_clinic.address().rfind(':') + 1));
  m_clinic.stopHub();
  phone = m_clinic.newPhone("phone");
  EXPECT_EQ(phone->activeHolds().size(), 1U);
  m_clinic.startHub(port);
  EXPECT_EQ(phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(phone->activeHolds().size(), 1U);
}

TEST_F(HoldOrderWay, theStreamComesBackAfterTheHubWasAway) {
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  phone->setListener(&m_ears);
  phone->start();
  ASSERT_TRUE(listening());
  const int port = std::stoi(m_clinic.address().substr(m_clinic.address().rfind(':') + 1));
  m_clinic.stopHub();
  m_clinic.startHub(port);
  // Back-off runs on the test's clock.
  ASSERT_TRUE(soon([&] {
    m_clinic.clock().advance(absl::Seconds(30));
    phone->syncSoon();
    return m_clinic.hub().board().openStreams() == 1;
  }));
  v1::IssueHoldRequest request;
  request.set_person_id(m_person);
  request.set_reason("Please stop.");
  DeskCaller caller;
  caller.therapist.set_id(test::idOf(60));
  caller.therapist.set_display_name("Terry Sample (invented)");
  ASSERT_TRUE(m_clinic.hub().prescriptions().issueHold(caller, request).ok());
  EXPECT_TRUE(m_ears.holds(1));
}

TEST_F(HoldOrderWay, programmesAndMessagesAreFetchedAtOnceToo) {
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  phone->setListener(&m_ears);
  phone->start();
  ASSERT_TRUE(listening());
  m_clinic.sign(test::transfemoralLeft());
  EXPECT_TRUE(m_ears.programmes(1));
  EXPECT_EQ(phone->programme()->number(), 1U);
  v1::SendMessageRequest message;
  message.set_id(test::idOf(50));
  message.set_person_id(m_person);
  message.set_text("Well done.");
  ASSERT_TRUE(m_clinic.desk().sendMessage(message).ok());
  EXPECT_TRUE(m_ears.messages(1));
}

TEST_F(HoldOrderWay, revokingClosesTheOpenStream) {
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  phone->start();
  ASSERT_TRUE(listening());
  ASSERT_EQ(m_clinic.desk().revokeDevice(m_clinic.desk().devices(m_person)->at(0).id()), absl::OkStatus());
  EXPECT_TRUE(soon([&] { return phone->state().revoked; }));
  EXPECT_TRUE(listening(0));
}

TEST_F(HoldOrderWay, anotherPersonsPhoneHearsNothing) {
  const std::string other = m_clinic.addPerson(test::transtibialRight());
  test::Ears their_ears;  // outlives the phone
  const auto mine = m_clinic.pairedPhone("mine", m_person);
  const auto theirs = m_clinic.pairedPhone("theirs", other);
  mine->setListener(&m_ears);
  theirs->setListener(&their_ears);
  mine->start();
  theirs->start();
  ASSERT_TRUE(listening(2));
  issue();
  ASSERT_TRUE(m_ears.holds(1));
  EXPECT_EQ(theirs->syncOnce(), absl::OkStatus());
  EXPECT_TRUE(theirs->activeHolds().empty());
  EXPECT_EQ(theirs->exportAll().find(m_person), std::string::npos);
}

// Streams take no thread of the hub while they wait: more of them than it has threads, and calls go on.
TEST_F(HoldOrderWay, manyOpenStreamsLeaveRoomForCalls) {
  const auto phone = m_clinic.pairedPhone("phone", m_person);
  const auto stub = v1::HomeService::NewStub(
      channelTo(m_clinic.address(), m_clinic.hub().clinic().certificate.certificate_pem));
  const std::string authorization = "Bearer " + m_clinic.tokenOf("phone");
  constexpr int kStreams = 90;
  std::vector<std::unique_ptr<grpc::ClientContext>> contexts;
  std::vector<std::unique_ptr<grpc::ClientReader<v1::Nudge>>> readers;
  for (int i = 0; i < kStreams; ++i) {
    contexts.push_back(std::make_unique<grpc::ClientContext>());
    contexts.back()->AddMetadata("authorization", authorization);
    readers.push_back(stub->Listen(contexts.back().get(), v1::ListenRequest()));
  }
  ASSERT_TRUE(listening(kStreams));
  ASSERT_TRUE(phone->closePractice(test::samplePractice(phone->newId(), m_person)).ok());
  EXPECT_EQ(phone->syncOnce(), absl::OkStatus());
  const auto begun = std::chrono::steady_clock::now();
  m_clinic.stopHub();
  EXPECT_LT(std::chrono::steady_clock::now() - begun, std::chrono::seconds(2))
      << "open streams held up the end";
  for (auto& context : contexts) context->TryCancel();
  for (auto& reader : readers) reader->Finish();
}

}  // namespace
}  // namespace newel
