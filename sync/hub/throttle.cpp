#include "sync/hub/throttle.h"

#include <algorithm>

namespace newel {

absl::Duration Throttle::waitFor(const std::string& key) {
  const absl::Duration now = m_clock->elapsed();
  const std::lock_guard lock(m_mutex);
  const auto found = m_records.find(key);
  if (found == m_records.end()) return absl::ZeroDuration();
  if (now - found->second.last > m_limits.forget_after) {
    m_records.erase(found);
    return absl::ZeroDuration();
  }
  return std::max(found->second.until - now, absl::ZeroDuration());
}

void Throttle::failed(const std::string& key) {
  const absl::Duration now = m_clock->elapsed();
  const std::lock_guard lock(m_mutex);
  if (!m_records.contains(key)) makeRoom();
  Record& record = m_records[key];
  ++record.failures;
  record.last = now;
  record.until = now;
  if (record.failures < m_limits.free_failures) return;
  absl::Duration wait = m_limits.first_wait;
  for (int i = m_limits.free_failures; i < record.failures && wait < m_limits.longest_wait; ++i) wait *= 2;
  record.until = now + std::min(wait, m_limits.longest_wait);
}

void Throttle::succeeded(const std::string& key) {
  const std::lock_guard lock(m_mutex);
  m_records.erase(key);
}

void Throttle::makeRoom() {
  if (m_records.size() < m_limits.most_keys) return;
  const auto oldest = std::min_element(m_records.begin(), m_records.end(), [](const auto& a, const auto& b) {
    return a.second.last < b.second.last;
  });
  m_records.erase(oldest);
}

}  // namespace newel
