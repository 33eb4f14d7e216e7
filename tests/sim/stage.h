// What every part of one simulated run shares: the clock, the seed, what happens next, the trace and the
// first promise that was broken. One thread, no real time.
#pragma once

#include <absl/time/time.h>

#include <cstdint>
#include <functional>
#include <iosfwd>
#include <map>
#include <string>
#include <utility>

#include "core/time/clock.h"
#include "tests/core/people/sample_random.h"

namespace newel::sim {

// A machine's own clocks: the wall clock as somebody set it, and the time since it was last switched on.
class MachineClock : public Clock {
 public:
  explicit MachineClock(const SimulatedClock* world) : m_world(world) {}
  absl::Time wall() const override { return m_world->wall() + m_wrong_by; }
  absl::Duration elapsed() const override { return m_world->elapsed() - m_booted; }
  void setWrongBy(absl::Duration by) { m_wrong_by = by; }
  absl::Duration wrongBy() const { return m_wrong_by; }
  void reboot() { m_booted = m_world->elapsed(); }

 private:
  const SimulatedClock* m_world;
  absl::Duration m_wrong_by = absl::ZeroDuration();
  absl::Duration m_booted = absl::ZeroDuration();
};

class Stage {
 public:
  Stage(std::uint64_t seed, std::ostream* trace) : random(seed), m_seed(seed), m_trace(trace) {}

  // A seed of its own for part `number`, so that one part's draws do not move another's.
  std::uint64_t seedFor(std::uint64_t number) const { return m_seed * 1000003 + number; }
  bool chance(std::uint32_t per_thousand) { return random.between(1, 1000) <= per_thousand; }
  // The same, and never once the faults have stopped.
  bool fault(std::uint32_t per_thousand) { return !calm && chance(per_thousand); }
  absl::Duration seconds(std::uint32_t least, std::uint32_t most) {
    return absl::Seconds(random.between(least, most));
  }

  void at(absl::Duration elapsed, std::function<void()> what);
  void in(absl::Duration wait, std::function<void()> what) { at(clock.elapsed() + wait, std::move(what)); }
  // The next thing, when it is due by `until`. False: nothing is.
  bool step(absl::Duration until);
  // Time passes within one thing, as a slow call does.
  void pass(absl::Duration by) { clock.advance(by); }

  void say(const std::string& who, const std::string& what);
  void violated(const std::string& what);
  const std::string& violation() const { return m_violation; }
  // Two runs that did the same have the same number.
  std::uint64_t digest() const { return m_digest; }

  // Monday, 2026-11-02, 06:00 UTC: the first day of the sample programmes.
  SimulatedClock clock{absl::FromUnixSeconds(1793599200)};
  test::SampleRandom random;
  bool calm = false;  // the faults have stopped

 private:
  const std::uint64_t m_seed;
  std::ostream* m_trace;
  std::string m_violation;
  std::uint64_t m_digest = 14695981039346656037U;
  std::uint64_t m_count = 0;
  std::map<std::pair<absl::Duration, std::uint64_t>, std::function<void()>> m_next;
};

}  // namespace newel::sim
