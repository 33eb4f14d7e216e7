#include "sync/hub/group_commit.h"

#include <algorithm>

namespace newel {
namespace {

// More would let the first of them wait for the last. Ours, no source.
constexpr std::size_t kMostJoined = 32;
constexpr int kTries = 5;

}  // namespace

absl::Status GroupCommit::write(const WriteBody& body) {
  Job job;
  job.body = &body;
  std::unique_lock lock(m_mutex);
  m_waiting.push_back(&job);
  m_changed.wait(lock, [&] { return job.done || !m_busy; });
  while (!job.done) {
    // Nobody is at work: whoever comes first works for those that wait, in the order in which they came.
    m_busy = true;
    const Group group = takeGroup();
    lock.unlock();
    runGroup(group);
    lock.lock();
    for (Job* other : group) other->done = true;
    m_busy = false;
    m_changed.notify_all();
    m_changed.wait(lock, [&] { return job.done || !m_busy; });
  }
  lock.unlock();
  if (job.thrown) std::rethrow_exception(job.thrown);
  return job.verdict;
}

GroupCommit::Group GroupCommit::takeGroup() {
  const auto count = static_cast<std::ptrdiff_t>(std::min(m_waiting.size(), kMostJoined));
  Group group(m_waiting.begin(), m_waiting.begin() + count);
  m_waiting.erase(m_waiting.begin(), m_waiting.begin() + count);
  return group;
}

void GroupCommit::runGroup(const Group& group) {
  for (int tries = 1;; ++tries) {
    runOnce(group);
    if (tries == kTries || !m_engine->mayRunAgain()) return;
  }
}

void GroupCommit::runOnce(const Group& group) {
  const absl::Status open = m_engine->begin();
  for (Job* job : group) {
    job->verdict = open;
    job->thrown = nullptr;
  }
  if (!open.ok()) return;
  bool any = false;
  for (Job* job : group) {
    runJob(*job, group.size() == 1);
    if (m_engine->isLost()) {
      // Nothing of anybody was kept. Those who failed by themselves keep their own reason.
      const absl::Status why = job->verdict;
      for (Job* other : group) {
        if (other->verdict.ok() && !other->thrown) other->verdict = why;
      }
      m_engine->rollBack();
      return;
    }
    any = any || (job->verdict.ok() && !job->thrown);
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
