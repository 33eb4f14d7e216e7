#include "sync/hub/group_commit.h"

#include <gtest/gtest.h>

#include <atomic>
#include <chrono>
#include <memory>
#include <thread>

#include "sync/common/database.h"
#include "sync/hub/sql_hub_transaction.h"

namespace newel {
namespace {

// Counts what is asked of it. Bodies get an empty store without tables: they must not touch it here.
class FakeEngine : public CommitEngine {
 public:
  FakeEngine() {
    DatabaseOptions options;
    options.path = ":memory:";
    options.vfs = "unix";  // named: no file is made for it
    m_empty = *Database::open(options, {});
  }

  absl::Status begin() override {
    ++begun;
    return begin_says;
  }
  absl::Status run(const WriteBody& body, bool alone) override {
    ++(alone ? ran_alone : ran_joined);
    SqlHubTransaction<Database> untouched(*m_empty);
    absl::Status verdict = body(untouched);
    lost = absl::IsResourceExhausted(verdict);
    clashed = clashes > 0;
    if (!clashed) return verdict;
    --clashes;
    return absl::UnavailableError("clash");
  }
  bool isLost() override { return lost || clashed; }
  absl::Status commit() override {
    ++committed;
    return commit_says;
  }
  void rollBack() override { lost = false; }
  bool mayRunAgain() override { return std::exchange(clashed, false); }

  absl::Status begin_says;
  absl::Status commit_says;
  int clashes = 0;
  int begun = 0;
  int ran_alone = 0;
  int ran_joined = 0;
  int committed = 0;
  bool lost = false;
  bool clashed = false;

 private:
  std::unique_ptr<Database> m_empty;
};

class GroupCommitRule : public testing::Test {
 protected:
  // Each of `bodies` in a thread of its own, all of them waiting behind one that is at work.
  std::vector<absl::Status> together(const std::vector<WriteBody>& bodies) {
    std::atomic<bool> at_work{false};
    std::atomic<bool> go{false};
    std::thread first([&] {
      m_group
          .write([&](HubTransaction&) {
            at_work = true;
            while (!go) std::this_thread::yield();
            return absl::OkStatus();
          })
          .IgnoreError();
    });
    while (!at_work) std::this_thread::yield();
    std::vector<absl::Status> verdicts(bodies.size());
    std::vector<std::thread> threads;
    for (std::size_t i = 0; i < bodies.size(); ++i) {
      threads.emplace_back([&, i] { verdicts[i] = m_group.write(bodies[i]); });
    }
    std::this_thread::sleep_for(std::chrono::milliseconds(200));
    go = true;
    first.join();
    for (auto& thread : threads) thread.join();
    return verdicts;
  }
  static absl::Status fine(HubTransaction&) { return absl::OkStatus(); }
  void waitUntilWaiting(std::size_t count) {
    while (m_group.waiting() < count) std::this_thread::yield();
  }
  // A body that writes its name down.
  WriteBody named(const std::string& name) {
    return [this, name](HubTransaction&) {
      m_order.push_back(name);
      return absl::OkStatus();
    };
  }
  // Stands still in the middle of its work until `go`, once `at_work` says so.
  WriteBody blocked(const std::string& name, std::atomic<bool>& at_work, const std::atomic<bool>& go) {
    return [this, name, &at_work, &go](HubTransaction&) {
      at_work = true;
      while (!go) std::this_thread::yield();
      m_order.push_back(name);
      return absl::OkStatus();
    };
  }

  std::vector<std::string> m_order;  // one body runs at a time

  FakeEngine m_engine;
  GroupCommit m_group{&m_engine};
};

TEST_F(GroupCommitRule, whoeverWaitsSharesOneCommit) {
  for (const auto& verdict : together({fine, fine, fine, fine, fine})) EXPECT_EQ(verdict, absl::OkStatus());
  EXPECT_EQ(m_engine.committed, 2) << "one for the first, one for the five";
  EXPECT_EQ(m_engine.ran_alone, 1);
  EXPECT_EQ(m_engine.ran_joined, 5);
}

TEST_F(GroupCommitRule, aCommitThatFailsFailsAllThatCountedOnIt) {
  m_engine.commit_says = absl::ResourceExhaustedError("disk full");
  const auto verdicts = together({fine, [](HubTransaction&) { return absl::AbortedError("mine"); }, fine});
  EXPECT_TRUE(absl::IsResourceExhausted(verdicts[0]));
  EXPECT_TRUE(absl::IsAborted(verdicts[1])) << "its own reason, not another's";
  EXPECT_TRUE(absl::IsResourceExhausted(verdicts[2]));
}

TEST_F(GroupCommitRule, aTransactionThatIsGoneKeepsNobodysChanges) {
  const auto full = [](HubTransaction&) { return absl::ResourceExhaustedError("disk full"); };
  for (const auto& verdict : together({full, full, full})) EXPECT_TRUE(absl::IsResourceExhausted(verdict));
  EXPECT_EQ(m_engine.committed, 1) << "only the first one's";
}

TEST_F(GroupCommitRule, nothingIsCommittedWhenAllFailed) {
  EXPECT_TRUE(absl::IsAborted(m_group.write([](HubTransaction&) { return absl::AbortedError("no"); })));
  EXPECT_EQ(m_engine.committed, 0);
  m_engine.begin_says = absl::UnavailableError("busy");
  EXPECT_TRUE(absl::IsUnavailable(m_group.write(fine)));
  EXPECT_EQ(m_engine.ran_alone, 1) << "the second never ran";
}

TEST_F(GroupCommitRule, aHoldOrderOvertakesEverybodyWhoWaits) {
  constexpr std::size_t kUploads = 200;
  std::atomic<bool> at_work{false};
  std::atomic<bool> go{false};
  std::vector<std::thread> threads;
  threads.emplace_back([&] { EXPECT_EQ(m_group.write(blocked("first", at_work, go)), absl::OkStatus()); });
  while (!at_work) std::this_thread::yield();
  for (std::size_t i = 0; i < kUploads; ++i) {
    threads.emplace_back([&] { EXPECT_EQ(m_group.write(named("upload")), absl::OkStatus()); });
  }
  waitUntilWaiting(kUploads);
  threads.emplace_back([&] { EXPECT_EQ(m_group.writeFirst(named("hold")), absl::OkStatus()); });
  waitUntilWaiting(kUploads + 1);
  go = true;
  for (auto& thread : threads) thread.join();
  ASSERT_EQ(m_order.size(), kUploads + 2);
  EXPECT_EQ(m_order[0], "first");
  EXPECT_EQ(m_order[1], "hold");
  EXPECT_EQ(m_engine.ran_alone, 2) << "the hold order's commit is its own";
}

// A group that is under way is committed as far as it is, and the rest of it waits again, in its order.
TEST_F(GroupCommitRule, aGroupUnderWayMakesWayForAHoldOrder) {
  std::atomic<bool> first_at_work{false};
  std::atomic<bool> upload_at_work{false};
  std::atomic<bool> first_go{false};
  std::atomic<bool> upload_go{false};
  std::vector<std::thread> threads;
  const auto start = [&](const WriteBody& body, bool first = false) {
    threads.emplace_back([this, body, first] {
      EXPECT_EQ(first ? m_group.writeFirst(body) : m_group.write(body), absl::OkStatus());
    });
  };
  start(blocked("first", first_at_work, first_go));
  while (!first_at_work) std::this_thread::yield();
  start(blocked("upload 1", upload_at_work, upload_go));
  waitUntilWaiting(1);
  for (std::size_t i = 2; i <= 5; ++i) {
    start(named("upload " + std::to_string(i)));
    waitUntilWaiting(i);
  }
  first_go = true;
  while (!upload_at_work) std::this_thread::yield();
  ASSERT_EQ(m_group.waiting(), 0U) << "all five are in one group";
  start(named("hold"), true);
  waitUntilWaiting(1);
  upload_go = true;
  for (auto& thread : threads) thread.join();
  EXPECT_EQ(m_order, (std::vector<std::string>{"first", "upload 1", "hold", "upload 2", "upload 3",
                                               "upload 4", "upload 5"}));
  EXPECT_EQ(m_engine.committed, 4);
}

TEST_F(GroupCommitRule, aClashIsRunAgainAndNotForEver) {
  m_engine.clashes = 2;
  EXPECT_EQ(m_group.write(fine), absl::OkStatus());
  EXPECT_EQ(m_engine.ran_alone, 3);
  m_engine.clashes = 1000;
  EXPECT_TRUE(absl::IsUnavailable(m_group.write(fine)));
  EXPECT_EQ(m_engine.ran_alone, 3 + 5);
}

}  // namespace
}  // namespace newel
