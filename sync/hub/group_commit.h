// Writers that wait are joined into one commit, so that one wait for the disk serves them all. Each gets its
// own verdict: a body that fails takes back its own changes and nobody else's. A hold order overtakes all of
// them.
#pragma once

#include <absl/status/status.h>

#include <atomic>
#include <condition_variable>
#include <deque>
#include <exception>
#include <functional>
#include <mutex>
#include <vector>

#include "sync/hub/hub_store.h"

namespace newel {

using WriteBody = std::function<absl::Status(HubTransaction&)>;

// What a store has to offer. Called by one thread at a time; engine errors come back as a status, what a body
// throws besides passes through.
class CommitEngine {
 public:
  virtual ~CommitEngine() = default;
  virtual absl::Status begin() = 0;
  // The body's status. `alone`: the caller rolls everything back when it is not OK; otherwise this takes back
  // what the body did, and only that.
  virtual absl::Status run(const WriteBody& body, bool alone) = 0;
  // True when the whole transaction is gone, or could not be committed any more.
  virtual bool isLost() = 0;
  virtual absl::Status commit() = 0;
  virtual void rollBack() = 0;
  // True after a clash with another writer: everything may be run again from the start.
  virtual bool mayRunAgain() { return false; }
};

// Thread-safe.
class GroupCommit {
 public:
  explicit GroupCommit(CommitEngine* engine) : m_engine(engine) {}

  // Runs `body` in a transaction, perhaps on another thread and perhaps beside others, and returns when that
  // is committed. What `body` throws is thrown here.
  absl::Status write(const WriteBody& body) { return waitFor(body, m_waiting); }
  // The same, ahead of everybody who waits: after the one body that is at work and the commit of those before
  // it, in a commit of its own with others of its kind.
  absl::Status writeFirst(const WriteBody& body) { return waitFor(body, m_first); }
  // How many wait for their turn, of both kinds.
  std::size_t waiting();

 private:
  struct Job {
    const WriteBody* body = nullptr;
    absl::Status verdict;
    std::exception_ptr thrown;
    bool first = false;
    bool leads = false;  // works for those that wait
    bool done = false;
    std::condition_variable woken;
  };
  using Group = std::vector<Job*>;

  using Queue = std::deque<Job*>;

  absl::Status waitFor(const WriteBody& body, Queue& queue);
  static void wake(Job& job, bool Job::*why);
  void handOn();
  Group takeGroup();
  void runGroup(Group& group);
  void runOnce(Group& group);
  bool makeWay(Group& group, std::size_t done);
  void runJob(Job& job, bool alone);
  void finish(const Group& group, bool any);

  CommitEngine* m_engine;
  std::mutex m_mutex;
  Queue m_first;
  Queue m_waiting;
  std::atomic<bool> m_somebody_first{false};
  bool m_busy = false;
};

}  // namespace newel
