// Work that a hub which runs for weeks has to do once a day.
#pragma once

#include <condition_variable>
#include <functional>
#include <mutex>
#include <thread>

#include "core/time/clock.h"

namespace newel {

// Calls `work` on a thread of its own when the UTC day of `clock` has changed, looked at once a minute. The
// first day's work is the caller's. Ends, after a call under way, when it goes.
class DailyRound {
 public:
  // `clock` outlives this.
  DailyRound(const Clock* clock, std::function<void()> work);
  ~DailyRound();
  DailyRound(const DailyRound&) = delete;
  DailyRound& operator=(const DailyRound&) = delete;

 private:
  void run();

  const Clock* m_clock;
  const std::function<void()> m_work;
  std::mutex m_mutex;
  std::condition_variable m_condition;
  bool m_stop = false;
  std::thread m_thread;
};

}  // namespace newel
