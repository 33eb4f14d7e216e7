// The hub, its store and the phone's engine with many threads at them and no gRPC in between, which the
// thread sanitizer cannot look into: in the nightly command this runs under it (preset tsan), on either
// store. What is lost or doubled fails anywhere.
#include <gtest/gtest.h>

#include <atomic>
#include <mutex>
#include <thread>

#include "core/records/record_text.h"
#include "sync/common/certificate.h"
#include "sync/common/content_hash.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

constexpr int kPhones = 3;
constexpr int kPractices = 40;  // of each phone

// A phone's way to the hub without a network: the hub's own calls, on the caller's thread.
class StraightLink : public HubLink {
 public:
  StraightLink(Hub* hub, std::string token) : m_hub(hub), m_token(std::move(token)) {}
  ~StraightLink() override { endListening(); }

  absl::StatusOr<v1::OfferReply> offer(const v1::OfferRequest& request) override {
    const auto caller = m_hub->phones().recognise(m_token, saysOf(request));
    if (!caller.ok()) return caller.status();
    return m_hub->phones().offer(*caller, request);
  }
  absl::StatusOr<v1::FetchReply> fetch(const v1::FetchRequest& request) override {
    const auto caller = m_hub->phones().authenticate(m_token, {});
    if (!caller.ok()) return caller.status();
    return m_hub->phones().fetch(*caller, request);
  }
  absl::StatusOr<v1::MediaPart> fetchMedia(const v1::FetchMediaRequest&) override {
    return absl::NotFoundError("media: none here");
  }
  void listen(const v1::ListenRequest&, NudgeSink* sink) override {
    endListening();
    const auto caller = m_hub->phones().authenticate(m_token, {});
    if (!caller.ok()) return sink->listenEnded(caller.status());
    m_stream = std::make_shared<Stream>(sink);
    const auto number = m_hub->phones().listen(*caller, m_stream);
    if (number.ok()) m_number = *number;
  }
  void cancel() override {}

 private:
  class Stream : public PhoneStream {
   public:
    explicit Stream(NudgeSink* sink) : m_sink(sink) {}
    void push(const v1::Nudge& nudge) override {
      const std::lock_guard lock(m_mutex);
      if (m_sink != nullptr) m_sink->nudge(nudge);
    }
    void close(const absl::Status& why) override {
      const std::lock_guard lock(m_mutex);
      if (m_sink != nullptr) m_sink->listenEnded(why);
    }
    void end() {
      const std::lock_guard lock(m_mutex);
      m_sink = nullptr;
    }

   private:
    std::mutex m_mutex;
    NudgeSink* m_sink;
  };

  void endListening() {
    if (m_stream == nullptr) return;
    m_hub->board().leave(m_number);
    m_stream->end();
    m_stream.reset();
  }

  Hub* m_hub;
  const std::string m_token;
  std::shared_ptr<Stream> m_stream;
  int m_number = 0;
};

class StraightNetwork : public HubNetwork {
 public:
  explicit StraightNetwork(Hub* hub) : m_hub(hub) {}
  absl::StatusOr<PairedHub> pair(const PairingTicket&, const v1::PairRequest& request) override {
    auto reply = m_hub->phones().pair(request, "straight");
    if (!reply.ok()) return reply.status();
    PairedHub paired;
    paired.hub.token = reply->token();
    paired.hub.address = "straight";
    paired.hub.certificate_pem = m_hub->clinic().certificate.certificate_pem;
    paired.hub.certificate_sha256 = *fingerprintOf(paired.hub.certificate_pem);
    paired.reply = *std::move(reply);
    return paired;
  }
  std::unique_ptr<HubLink> connect(const HubAddress& hub) override {
    return std::make_unique<StraightLink>(m_hub, hub.token);
  }
  absl::StatusOr<HubAddress> findAgain(const HubAddress& hub) override { return hub; }

 private:
  Hub* m_hub;
};

// Counts what its engine tells, as the program's bridge does.
class Ears : public HomeEngine::Listener {
 public:
  void stateChanged() override { ++states; }
  void programmeChanged() override { ++programmes; }
  void holdOrderArrived(const v1::HoldOrder&) override { ++holds; }
  void messageArrived(const v1::Message&) override { ++messages; }
  std::atomic<int> states{0};
  std::atomic<int> programmes{0};
  std::atomic<int> holds{0};
  std::atomic<int> messages{0};
};

class ManyThreads : public testing::Test {
 protected:
  struct Phone {
    v1::Person person;
    Ears ears;
    std::unique_ptr<HomeEngine> engine;
  };

  ManyThreads() {
    m_caller.therapist.set_id(test::idOf(5));
    m_caller.therapist.set_display_name("Terry Sample (invented)");
    m_caller.therapist.set_role(v1::ROLE_LEAD);
    for (int i = 0; i < kPhones; ++i) {
      auto phone = std::make_unique<Phone>();
      phone->person = test::transtibialRight();
      phone->person.set_id(test::idOf(500 + static_cast<std::uint64_t>(i)));
      m_clinic.addPerson(phone->person);
      m_clinic.sign(phone->person);
      HomeEngine::Options options = m_clinic.phoneOptions("phone" + std::to_string(i));
      options.network = &m_network;
      phone->engine = *HomeEngine::open(options);
      phone->engine->setListener(&phone->ears);
      EXPECT_EQ(phone->engine->pair(m_clinic.ticketFor(phone->person.id())), absl::OkStatus());
      m_phones.push_back(std::move(phone));
    }
  }
  // The engine goes before the ears that it tells.
  ~ManyThreads() override {
    for (auto& phone : m_phones) phone->engine.reset();
  }

  // As the window of a phone does: reads whatever the pages show.
  static void lookAt(const HomeEngine& engine) {
    static_cast<void>(engine.state());
    static_cast<void>(engine.programme());
    static_cast<void>(engine.activeHolds());
    static_cast<void>(engine.messages());
    static_cast<void>(engine.practices());
  }
  static bool soon(const std::function<bool()>& what) {
    for (int i = 0; i < 2000; ++i) {
      if (what()) return true;
      std::this_thread::sleep_for(std::chrono::milliseconds(10));
    }
    return false;
  }

  test::TestClinic m_clinic;
  StraightNetwork m_network{&m_clinic.hub()};
  DeskCaller m_caller;
  std::vector<std::unique_ptr<Phone>> m_phones;
};

TEST_F(ManyThreads, phonesAndDesksAtOnceLoseNothing) {
  std::atomic<bool> stop{false};
  std::vector<std::thread> threads;
  const auto repeat = [&](std::function<void()> body) {
    threads.emplace_back([&stop, body = std::move(body)] {
      while (!stop) {
        body();
        std::this_thread::sleep_for(std::chrono::milliseconds(3));  // a window draws no more often
      }
    });
  };
  Hub& hub = m_clinic.hub();
  for (auto& phone : m_phones) {
    phone->engine->start();
    repeat([&] { lookAt(*phone->engine); });
  }
  repeat([&] {
    v1::ListCaseloadRequest request;
    request.set_limit(50);
    EXPECT_TRUE(hub.files().caseload(m_caller, request).ok());
  });
  repeat([&] {
    for (auto& phone : m_phones) EXPECT_TRUE(hub.prescriptions().programmes(phone->person.id()).ok());
  });
  repeat([&] {
    hub.stillHere();
    m_clinic.clock().advance(absl::Milliseconds(200));
  });
  std::vector<std::thread> writers;
  for (std::size_t i = 0; i < m_phones.size(); ++i) {
    writers.emplace_back([&, i] {
      Phone& phone = *m_phones[i];
      for (std::uint64_t n = 0; n < kPractices; ++n) {
        const std::string id = test::idOf(90000 + i * 1000 + n);
        EXPECT_EQ(phone.engine->closePractice(test::samplePractice(id, phone.person.id())), absl::OkStatus());
        phone.engine->syncSoon();
      }
    });
  }
  // Beside them the clinic says stop to everybody.
  for (auto& phone : m_phones) {
    v1::IssueHoldRequest request;
    request.set_person_id(phone->person.id());
    request.set_reason("Please rest today.");
    EXPECT_TRUE(hub.prescriptions().issueHold(m_caller, request).ok());
  }
  for (auto& writer : writers) writer.join();
  for (auto& phone : m_phones) {
    EXPECT_TRUE(soon([&] { return phone->engine->state().queued == 0; }))
        << phone->engine->state().queued << " still queued: " << phone->engine->state().last_problem;
    EXPECT_TRUE(soon([&] { return phone->ears.holds > 0; })) << "the hold order was not heard";
  }
  stop = true;
  for (auto& thread : threads) thread.join();
  for (auto& phone : m_phones) {
    v1::ListPracticesRequest request;
    request.set_person_id(phone->person.id());
    request.set_limit(500);
    const auto listed = hub.files().practices(request);
    ASSERT_TRUE(listed.ok()) << listed.status();
    EXPECT_EQ(listed->practices_size(), kPractices);
    phone->engine.reset();  // its thread ends while the hub still speaks
  }
}

}  // namespace
}  // namespace newel
