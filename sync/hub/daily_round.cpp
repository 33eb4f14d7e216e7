#include "sync/hub/daily_round.h"

#include <absl/time/civil_time.h>
#include <absl/time/time.h>

#include <chrono>
#include <utility>

namespace newel {
namespace {

constexpr std::chrono::minutes kLook(1);

absl::CivilDay dayOf(const Clock& clock) { return absl::ToCivilDay(clock.wall(), absl::UTCTimeZone()); }

}  // namespace

DailyRound::DailyRound(const Clock* clock, std::function<void()> work)
    : m_clock(clock), m_work(std::move(work)), m_thread([this] { run(); }) {}

DailyRound::~DailyRound() {
  {
    const std::lock_guard lock(m_mutex);
    m_stop = true;
  }
  m_condition.notify_all();
  m_thread.join();
}

void DailyRound::run() {
  absl::CivilDay done = dayOf(*m_clock);
  std::unique_lock lock(m_mutex);
  while (!m_condition.wait_for(lock, kLook, [this] { return m_stop; })) {
    const absl::CivilDay today = dayOf(*m_clock);
    if (today == done) continue;
    done = today;
    lock.unlock();
    m_work();
    lock.lock();
  }
}

}  // namespace newel
