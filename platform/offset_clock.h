// A clock whose wall time is shifted by a fixed amount, for tests that need practices on different days.
// Elapsed time is untouched: nothing runs faster. A program that uses it says so on its screen.
#pragma once

#include "core/time/clock.h"

namespace newel::platform {

class OffsetClock : public Clock {
 public:
  // `clock` outlives this.
  OffsetClock(const Clock& clock, absl::Duration offset) : m_clock(clock), m_offset(offset) {}
  absl::Time wall() const override { return m_clock.wall() + m_offset; }
  absl::Duration elapsed() const override { return m_clock.elapsed(); }

 private:
  const Clock& m_clock;
  absl::Duration m_offset;
};

// What NEWEL_WALL_OFFSET_S asks for, in whole seconds; zero when it is not set or is no number. For tests.
absl::Duration wallOffsetAskedFor();

}  // namespace newel::platform
