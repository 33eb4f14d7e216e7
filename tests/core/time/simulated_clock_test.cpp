#include <gtest/gtest.h>

#include "core/time/clock.h"
#include "platform/clock.h"

namespace newel {
namespace {

TEST(SimulatedClock, elapsedDoesNotNoticeThatTheWallWasSet) {
  SimulatedClock clock(absl::FromUnixSeconds(1764000000));
  clock.advance(absl::Seconds(5));
  clock.setWall(absl::FromUnixSeconds(0));
  clock.advance(absl::Seconds(5));
  EXPECT_EQ(clock.elapsed(), absl::Seconds(10));
  EXPECT_EQ(clock.wall(), absl::FromUnixSeconds(5));
}

TEST(SystemClock, elapsedNeverGoesBack) {
  const auto clock = platform::makeSystemClock();
  absl::Duration last = clock->elapsed();
  for (int i = 0; i < 1000; ++i) {
    const absl::Duration now = clock->elapsed();
    ASSERT_GE(now, last);
    last = now;
  }
}

}  // namespace
}  // namespace newel
