#include "sync/hub/group_commit.h"

#include <algorithm>
#include <utility>

namespace newel {
namespace {

// More would let the first of them wait for the last. Ours, no source.
constexpr std::size_t kMostJoined = 32;
constexpr int kTries = 5;

}  // namespace

absl::Status GroupCommit::waitFor(const WriteBody& body, Queue& queue) {
  Job job;
  job.body = &body;
  job.first = &queue == &m_first;
  std::unique_lock lock(m_mutex);
  queue.push_back(&job);
  m_somebody_first = !m_first.empty();
  // Nobody is at work: whoever comes first works for those that wait, in the order in which they came.
  job.leads = !std::exchange(m_busy, true);
  job.woken.wait(lock, [&] { return job.done || job.leads; });
  while (!job.done) {
    Group group = takeGroup();
    lock.unlock();
    runGroup(group);
    lock.lock();
    for (Job* other : group) wake(*other, &Job::done);
  }
  if (job.leads) handOn();
  lock.unlock();
  if (job.thrown) std::rethrow_exception(job.thrown);
  return job.verdict;
}

// Under the lock: whoever is woken may be gone with its job as soon as it is let go. One by one, for of two
// hundred who wait all but a few would look and go back to sleep.
void GroupCommit::wake(Job& job, bool Job::*why) {
  job.*why = true;
  job.woken.notify_one();
}

void GroupCommit::handOn() {
  if (m_first.empty() && m_waiting.empty()) {
    m_busy = false;
  } else {
    wake(m_first.empty() ? *m_waiting.front() : *m_first.front(), &Job::leads);
  }
}

std::size_t GroupCommit::waiting() {
  const std::lock_guard lock(m_mutex);
  return m_first.size() + m_waiting.size();
}

GroupCommit::Group GroupCommit::takeGroup() {
  Queue& queue = m_first.empty() ? m_waiting : m_first;
  const auto count = static_cast<std::ptrdiff_t>(std::min(queue.size(), kMostJoined));
  Group group(queue.begin(), queue.begin() + count);
  queue.erase(queue.begin(), queue.begin() + count);
  m_somebody_first = !m_first.empty();
  return group;
}

void GroupCommit::runGroup(Group& group) {
  for (int tries = 1;; ++tries) {
    runOnce(group);
    if (tries == kTries || !m_engine->mayRunAgain()) return;
  }
}

// Those of `group` from number `done` on go back to where they came from, when somebody waits who goes first.
bool GroupCommit::makeWay(Group& group, std::size_t done) {
  if (done == 0 || !m_somebody_first || group[done]->first) return false;
  const auto rest = group.begin() + static_cast<std::ptrdiff_t>(done);
  const std::lock_guard lock(m_mutex);
  m_waiting.insert(m_waiting.begin(), rest, group.end());
  group.erase(rest, group.end());
  return true;
}

void GroupCommit::runOnce(Group& group) {
  const absl::Status open = m_engine->begin();
  for (Job* job : group) {
    job->verdict = open;
    job->thrown = nullptr;
  }
  if (!open.ok()) return;
  bool any = false;
  const bool alone = group.size() == 1;
  for (std::size_t i = 0; i < group.size() && !makeWay(group, i); ++i) {
    Job& job = *group[i];
    runJob(job, alone);
    if (m_engine->isLost()) {
      // Nothing of anybody was kept. Those who failed by themselves keep their own reason.
      const absl::Status why = job.verdict;
      for (Job* other : group) {
        if (other->verdict.ok() && !other->thrown) other->verdict = why;
      }
      m_engine->rollBack();
      return;
    }
    any = any || (job.verdict.ok() && !job.thrown);
  }
  finish(group, any);
}

void GroupCommit::runJob(Job& job, bool alone) {
  try {
    job.verdict = m_engine->run(*job.body, alone);
  } catch (...) {
    job.thrown = std::current_exception();
  }
}

void GroupCommit::finish(const Group& group, bool any) {
  const absl::Status kept = any ? m_engine->commit() : absl::OkStatus();
  if (any && kept.ok()) return;
  m_engine->rollBack();
  for (Job* job : group) {
    if (job->verdict.ok() && !job->thrown) job->verdict = kept;
  }
}

}  // namespace newel
