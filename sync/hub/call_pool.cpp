#include "sync/hub/call_pool.h"

#include <utility>

namespace newel {

CallPool::CallPool(const Limits& limits) : m_limits(limits) {
  for (int i = 0; i < limits.threads; ++i) m_threads.emplace_back([this] { work(); });
}

CallPool::~CallPool() {
  {
    const std::lock_guard lock(m_mutex);
    m_stop = true;
  }
  m_something.notify_all();
  for (auto& thread : m_threads) thread.join();
}

bool CallPool::post(std::function<void()> job, std::size_t bytes) {
  {
    const std::lock_guard lock(m_mutex);
    // The first that waits is always taken: one request may be larger than all that may wait.
    if (!m_waiting.empty() &&
        (m_waiting.size() >= m_limits.most_waiting || m_bytes + bytes > m_limits.most_waiting_bytes)) {
      return false;
    }
    m_waiting.push_back({std::move(job), bytes});
    m_bytes += bytes;
  }
  m_something.notify_one();
  return true;
}

void CallPool::drain() {
  std::unique_lock lock(m_mutex);
  m_nothing.wait(lock, [this] { return m_waiting.empty() && m_under_way == 0; });
}

void CallPool::work() {
  std::unique_lock lock(m_mutex);
  while (true) {
    m_something.wait(lock, [this] { return m_stop || !m_waiting.empty(); });
    if (m_waiting.empty()) return;
    Job job = std::move(m_waiting.front());
    m_waiting.pop_front();
    m_bytes -= job.bytes;
    ++m_under_way;
    lock.unlock();
    job.run();
    job.run = nullptr;
    lock.lock();
    --m_under_way;
    if (m_waiting.empty() && m_under_way == 0) m_nothing.notify_all();
  }
}

}  // namespace newel
