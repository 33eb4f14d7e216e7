// Whether pain changed enough to be looked at. Rating scale 0 to 10.
// Not here: when to stop (core/safety), and which pain it was.
#pragma once

#include <optional>
#include <vector>

namespace newel {

struct PainChange {
  double points = 0;              // after - before; over 0 is worse
  std::optional<double> percent;  // of before; nullopt when before is 0
  bool by_points = false;         // 2 points or more, either way
  bool by_percent = false;        // 30 % or more, either way
};

// Source: Farrar 2001, Pain 94:149: about 2 points or about 30 % is clinically important. The paper is about
// pain that fell; reading a rise by the same measure is common practice, no source.
PainChange painChange(double before, double after);

// The mean of the last three ratings against the mean of the three before them, so that one bad day is not a
// trend. `ratings`: the highest of each practice, oldest first. nullopt with fewer than six.
std::optional<PainChange> painTrend(const std::vector<double>& ratings);

}  // namespace newel
