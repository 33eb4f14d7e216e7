// A clinic's morning: two hundred phones at one hub at once, over TLS, on either store.
#include "tests/sync/common/many_phones.h"

#include <gtest/gtest.h>

#include <atomic>
#include <chrono>
#include <map>
#include <memory>
#include <set>
#include <thread>

#include "core/records/record_text.h"
#include "sync/common/content_hash.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

constexpr int kPhones = 200;
constexpr int kCalls = 3;
constexpr int kRecords = 4;  // of a call
constexpr auto kPatience = std::chrono::seconds(60);

class ManyPhones : public testing::Test {
 protected:
  // The store's one writer: at work when this returns, and standing still until `go`.
  std::thread standingWriter(std::atomic<bool>& go) {
    const auto at_work = std::make_shared<std::atomic<bool>>(false);  // the writer outlives this call
    std::thread writer([this, &go, at_work] {
      EXPECT_EQ(m_clinic.store().write([&](HubTransaction&) {
        *at_work = true;
        while (!go) std::this_thread::sleep_for(std::chrono::milliseconds(1));
        return absl::OkStatus();
      }),
                absl::OkStatus());
    });
    while (!*at_work) std::this_thread::yield();
    return writer;
  }

  // Ends the test with a failure when one of them cannot.
  void connectPhones(int count) {
    m_phones = test::manyPhones(m_clinic.hub(), m_clinic.address(), count);
    std::atomic<int> connected{0};
    onEach([&](test::NetPhone& phone, std::size_t) { connected += phone.connect() ? 1 : 0; });
    ASSERT_EQ(connected, count);
  }
  // `body` for every phone at once, each on a thread of its own.
  template <typename Body>
  void onEach(Body body) {
    std::vector<std::thread> threads;
    for (std::size_t i = 0; i < m_phones.size(); ++i) {
      threads.emplace_back([this, body, i] { body(m_phones[i], i); });
    }
    for (auto& thread : threads) thread.join();
  }
  static std::string idOf(std::size_t phone, int call, int record) {
    return test::idOf(1000000 + phone * 1000 + static_cast<std::size_t>(call * kRecords + record));
  }
  static v1::OfferRequest requestOf(const test::NetPhone& phone, std::size_t number, int call) {
    v1::OfferRequest request;
    request.set_app_version("test 1");
    for (int r = 0; r < kRecords; ++r) {
      const auto practice = test::samplePractice(idOf(number, call, r), phone.person_id);
      auto& envelope = *request.add_records();
      envelope = makeEnvelope(v1::RECORD_KIND_PRACTICE, practice.id(), 1, toBytes(practice));
      envelope.set_sequence(static_cast<std::uint64_t>(call * kRecords + r + 1));
    }
    return request;
  }
  static int countOf(const v1::OfferReply& reply, v1::Outcome wanted) {
    int count = 0;
    for (const auto& outcome : reply.outcomes()) count += outcome.outcome() == wanted ? 1 : 0;
    return count;
  }
  template <typename Test>
  static bool soon(Test test) {
    const auto until = std::chrono::steady_clock::now() + kPatience;
    while (std::chrono::steady_clock::now() < until) {
      if (test()) return true;
      std::this_thread::sleep_for(std::chrono::milliseconds(5));
    }
    return test();
  }

  test::TestClinic m_clinic;
  std::vector<test::NetPhone> m_phones;
};

// Every call goes twice, as after a lost reply; some of each call's records go a third time in the next.
TEST_F(ManyPhones, twoHundredAtOnceGetEverythingInExactlyOnce) {
  connectPhones(kPhones);
  std::atomic<int> kept{0};
  std::atomic<int> known{0};
  std::atomic<int> errors{0};
  onEach([&](test::NetPhone& phone, std::size_t number) {
    for (int call = 0; call < kCalls; ++call) {
      auto request = requestOf(phone, number, call);
      if (call > 0) *request.add_records() = requestOf(phone, number, call - 1).records(0);
      for (int twice = 0; twice < 2; ++twice) {
        const auto reply = phone.offer(request);
        if (!reply.ok() || reply->outcomes_size() != request.records_size()) {
          ++errors;
          ADD_FAILURE() << reply.status();
          continue;
        }
        kept += countOf(*reply, v1::OUTCOME_KEPT);
        known += countOf(*reply, v1::OUTCOME_KNOWN);
      }
    }
  });
  constexpr int kAll = kPhones * kCalls * kRecords;
  EXPECT_EQ(errors, 0);
  EXPECT_EQ(kept, kAll);
  EXPECT_EQ(known, kAll + 2 * kPhones * (kCalls - 1));
  std::set<std::uint64_t> sequences;
  EXPECT_EQ(m_clinic.store().read([&](HubTransaction& transaction) {
    for (std::size_t number = 0; number < m_phones.size(); ++number) {
      std::set<std::string> ids;
      for (const auto& envelope : transaction.practicesAfter(m_phones[number].person_id, 0, 1000)) {
        EXPECT_TRUE(ids.insert(envelope.id()).second) << "twice";
        EXPECT_TRUE(sequences.insert(envelope.sequence()).second) << "a number was given twice";
      }
      std::set<std::string> made;
      for (int call = 0; call < kCalls; ++call) {
        for (int r = 0; r < kRecords; ++r) made.insert(idOf(number, call, r));
      }
      EXPECT_EQ(ids, made);
      EXPECT_TRUE(transaction.device(m_phones[number].device_id)->last_contact.has_value());
    }
    return absl::OkStatus();
  }),
            absl::OkStatus());
  ASSERT_EQ(sequences.size(), static_cast<std::size_t>(kAll));
  EXPECT_EQ(*sequences.rbegin() - *sequences.begin(), kAll - 1U) << "no number is lost";
}

// The store's one writer stands still and two hundred uploads wait; the therapist's call, over the same
// server, still finds a thread, and its order is committed before all of them.
TEST_F(ManyPhones, aHoldOrderFromTheDeskPassesTwoHundredUploads) {
  connectPhones(kPhones);
  const std::string person = m_clinic.addPerson(test::transfemoralLeft());
  std::atomic<bool> go{false};
  std::thread writer = standingWriter(go);
  std::thread phones([&] {
    onEach([](test::NetPhone& phone, std::size_t number) {
      const auto reply = phone.offer(requestOf(phone, number, 0));
      ASSERT_TRUE(reply.ok()) << reply.status();
      EXPECT_EQ(countOf(*reply, v1::OUTCOME_KEPT), kRecords);
    });
  });
  EXPECT_TRUE(soon([&] { return m_clinic.store().writersWaiting() >= 32; })) << "as many as upload at once";
  const std::size_t uploads = m_clinic.store().writersWaiting();
  std::thread desk([&] {
    v1::IssueHoldRequest request;
    request.set_person_id(person);
    request.set_reason("Please stop until we have spoken.");
    EXPECT_EQ(m_clinic.desk().issueHold(request).status(), absl::OkStatus());
  });
  EXPECT_TRUE(soon([&] { return m_clinic.store().writersWaiting() > uploads; })) << "the call did not get in";
  go = true;
  for (std::thread* thread : {&writer, &phones, &desk}) thread->join();
  EXPECT_EQ(m_clinic.store().read([&](HubTransaction& transaction) {
    std::uint64_t hold = 0;
    for (const auto& envelope : transaction.feedAfter(person, 0, 100)) {
      if (envelope.kind() == v1::RECORD_KIND_HOLD_ORDER) hold = envelope.sequence();
    }
    EXPECT_GT(hold, 0U);
    for (const auto& phone : m_phones) {
      for (const auto& envelope : transaction.practicesAfter(phone.person_id, 0, 100)) {
        EXPECT_GT(envelope.sequence(), hold) << "an upload that waited came before the hold order";
      }
    }
    return absl::OkStatus();
  }),
            absl::OkStatus());
}

// Phones that hang up while their stream is still being opened leave nothing behind.
TEST_F(ManyPhones, streamsThatEndAtOnceLeaveTheBoard) {
  connectPhones(20);
  onEach([](test::NetPhone& phone, std::size_t) {
    for (int i = 0; i < 10; ++i) {
      grpc::ClientContext context;
      phone.prepare(context);
      v1::ListenRequest request;
      request.set_app_version("test 1");
      const auto stream = phone.stub->Listen(&context, request);
      context.TryCancel();
      v1::Nudge nudge;
      while (stream->Read(&nudge)) {
      }
      EXPECT_EQ(stream->Finish().error_code(), grpc::StatusCode::CANCELLED);
    }
  });
  EXPECT_TRUE(soon([&] { return m_clinic.hub().board().openStreams() == 0; }))
      << m_clinic.hub().board().openStreams();
}

TEST_F(ManyPhones, anUploadUnderWayIsFinishedWhenTheHubStops) {
  connectPhones(40);
  std::atomic<bool> go{false};
  std::thread writer = standingWriter(go);
  std::atomic<int> kept{0};
  std::thread phones([&] {
    onEach([&](test::NetPhone& phone, std::size_t number) {
      const auto reply = phone.offer(requestOf(phone, number, 0));
      if (reply.ok()) kept += countOf(*reply, v1::OUTCOME_KEPT);
    });
  });
  EXPECT_TRUE(soon([&] { return m_clinic.store().writersWaiting() >= 32; }));
  std::thread stopping([&] { m_clinic.stopServer(); });
  std::this_thread::sleep_for(std::chrono::milliseconds(200));
  go = true;
  for (std::thread* thread : {&stopping, &phones, &writer}) thread->join();
  std::size_t there = 0;
  EXPECT_EQ(m_clinic.store().read([&](HubTransaction& transaction) {
    for (const auto& phone : m_phones) there += transaction.practicesAfter(phone.person_id, 0, 100).size();
    return absl::OkStatus();
  }),
            absl::OkStatus());
  EXPECT_GE(kept, 32 * kRecords) << "those who were under way were answered";
  EXPECT_GE(there, static_cast<std::size_t>(kept.load())) << "and nobody was told what is not so";
}

}  // namespace
}  // namespace newel
