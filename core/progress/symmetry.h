// How alike two sides are: step lengths, times, loads. All formulas in use, since papers differ in which they
// mean. Not here: which difference is too much; no limit is established for people with a prosthesis.
#pragma once

#include <absl/status/statusor.h>

#include <utility>
#include <vector>

namespace newel {

// Formulas and check values: the table of published fictive step lengths, Omics International,
// 2329-9096-2-201, table 1. The index is Robinson's (1987), the angle that of the same table: over 0 where
// the second side is the longer.
struct Symmetry {
  double difference = 0;          // a - b, in the unit given
  double ratio = 0;               // a / b
  double of_first_percent = 0;    // (a - b) / a x 100
  double index_percent = 0;       // (a - b) / (half of a + b) x 100
  double half_index_percent = 0;  // (a - b) / (a + b) x 100
  double share_percent = 0;       // a / (a + b) x 100
  double angle_percent = 0;       // (45 - atan(a / b) in degrees) / 90 x 100
};

// kInvalidArgument unless both are over 0 and finite: no formula has a meaning otherwise.
absl::StatusOr<Symmetry> symmetryOf(double a, double b);

// The mean of the sizes of the index over pairs of steps, in percent. Never the mean of the index itself: a
// step that is long on the left and one that is long on the right would cancel to "even".
// kInvalidArgument for no pair, or naming the pair (from 1) that is not over 0.
absl::StatusOr<double> meanIndexSize(const std::vector<std::pair<double, double>>& pairs);

}  // namespace newel
