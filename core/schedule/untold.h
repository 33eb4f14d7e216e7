// Occasions of the last days that nothing is known of: what a person may still tell to have done away from
// the phone. Pure. Not here: what is made of it (core/practice/told_later.h).
#pragma once

#include <absl/time/civil_time.h>

#include <cstdint>
#include <vector>

#include "core/schedule/occasions.h"

namespace newel {

// How many days back, today included. What lies further back is remembered badly (common practice, no
// source).
inline constexpr int kUntoldDays = 7;

struct UntoldOccasion {
  std::uint32_t programme_number = 0;
  Occasion occasion;
};

// The newest day first, within a day in the order of its windows. On each day the programme counts that
// counted then: the highest number that had begun by it. Left out: what is in `done`, what was excused, and
// what is to come today (its window begins after `minute_now`, 0 to 1439). A times-a-week entry is there on
// each day of a week whose share is not done. `programmes`: all numbers, any order.
std::vector<UntoldOccasion> untoldOccasions(const std::vector<v1::Programme>& programmes,
                                            absl::CivilDay today, int minute_now,
                                            const std::vector<v1::OccasionRef>& done);

}  // namespace newel
