// The one way to ask what time it is. The real clock is made in a program's main (platform/clock.h);
// tests and the simulation hold a SimulatedClock.
#pragma once

#include <absl/time/time.h>

namespace newel {

class Clock {
 public:
  virtual ~Clock() = default;
  // Civil time in UTC; people and networks set it, so it can jump. For calendar facts only.
  virtual absl::Time wall() const = 0;
  // Time since some fixed moment; never set, never backwards, and it goes on while the machine sleeps.
  // For every deadline and every length. Not comparable across a reboot.
  virtual absl::Duration elapsed() const = 0;
};

// Moves only when told to. Not thread-safe.
class SimulatedClock : public Clock {
 public:
  explicit SimulatedClock(absl::Time wall) : m_wall(wall) {}
  absl::Time wall() const override { return m_wall; }
  absl::Duration elapsed() const override { return m_elapsed; }
  // Both clocks move on by `by` (at or over 0).
  void advance(absl::Duration by) {
    m_wall += by;
    m_elapsed += by;
  }
  // Somebody set the wall clock; elapsed time does not notice.
  void setWall(absl::Time wall) { m_wall = wall; }

 private:
  absl::Time m_wall;
  absl::Duration m_elapsed = absl::ZeroDuration();
};

}  // namespace newel
