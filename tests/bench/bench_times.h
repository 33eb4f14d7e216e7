// Times of many calls, and the two figures that are said about them.
#pragma once

#include <benchmark/benchmark.h>
#include <time.h>

#include <algorithm>
#include <chrono>
#include <mutex>
#include <string>
#include <vector>

namespace newel::bench {

template <typename Body>
double secondsOf(Body body) {
  const auto begun = std::chrono::steady_clock::now();
  body();
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - begun).count();
}

// Of the processor, on this thread: what a busy machine or a slow disk does not change.
template <typename Body>
double cpuSecondsOf(Body body) {
  const auto now = [] {
    timespec time{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
    return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_nsec) * 1e-9;
  };
  const double begun = now();
  body();
  return now() - begun;
}

// Thread-safe.
class Times {
 public:
  void add(double seconds) {
    const std::lock_guard lock(m_mutex);
    m_seconds.push_back(seconds);
  }
  // "<name>p50_ms" and "<name>p99_ms".
  void say(benchmark::State& state, const std::string& name = "") {
    const std::lock_guard lock(m_mutex);
    if (m_seconds.empty()) return;
    std::sort(m_seconds.begin(), m_seconds.end());
    state.counters[name + "p50_ms"] = at(50) * 1000;
    state.counters[name + "p99_ms"] = at(99) * 1000;
  }
  double p99() {
    const std::lock_guard lock(m_mutex);
    std::sort(m_seconds.begin(), m_seconds.end());
    return m_seconds.empty() ? 0 : at(99);
  }

 private:
  double at(std::size_t percent) const { return m_seconds[m_seconds.size() * percent / 100]; }

  std::mutex m_mutex;
  std::vector<double> m_seconds;
};

}  // namespace newel::bench
