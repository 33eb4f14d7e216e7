#include "platform/linux/wall_alarm.h"

#include <absl/time/clock.h>
#include <sys/timerfd.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>

namespace newel::platform {
namespace {

// Nothing is armed further ahead than days; a timer that far only tells that the clock was set.
constexpr absl::Duration kLongest = absl::Hours(24 * 365);

}  // namespace

WallAlarm::WallAlarm(const Clock& clock, QObject* parent) : QObject(parent), m_clock(clock) {
  m_timer = timerfd_create(CLOCK_REALTIME, TFD_NONBLOCK | TFD_CLOEXEC);
  if (m_timer < 0) return;
  m_notifier = std::make_unique<QSocketNotifier>(m_timer, QSocketNotifier::Read);
  connect(m_notifier.get(), &QSocketNotifier::activated, this, &WallAlarm::read);
}

WallAlarm::~WallAlarm() {
  m_notifier.reset();
  if (m_timer >= 0) close(m_timer);
}

void WallAlarm::wakeAt(absl::Time at) {
  if (m_timer < 0) return;
  // The program's clock may be shifted against the system's (tests); the length is the same on both.
  const absl::Duration left = std::clamp(at - m_clock.wall(), absl::ZeroDuration(), kLongest);
  // A nanosecond at least: zero would switch the timer off.
  const absl::Time system = absl::Now() + std::max(left, absl::Nanoseconds(1));
  itimerspec spec{};
  spec.it_value = absl::ToTimespec(system);
  timerfd_settime(m_timer, TFD_TIMER_ABSTIME | TFD_TIMER_CANCEL_ON_SET, &spec, nullptr);
}

void WallAlarm::read() {
  std::uint64_t times = 0;
  const ssize_t got = ::read(m_timer, &times, sizeof times);
  if (got == sizeof times) {
    emit due();
  } else if (errno == ECANCELED) {
    emit clockSet();
  }
}

}  // namespace newel::platform
