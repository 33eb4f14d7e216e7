#include "core/progress/symmetry.h"

#include <cmath>
#include <numbers>
#include <string>

namespace newel {

absl::StatusOr<Symmetry> symmetryOf(double a, double b) {
  if (!(a > 0) || !(b > 0) || !std::isfinite(a) || !std::isfinite(b)) {
    return absl::InvalidArgumentError("both sides must be over 0");
  }
  Symmetry symmetry;
  symmetry.difference = a - b;
  symmetry.ratio = a / b;
  symmetry.of_first_percent = (a - b) / a * 100;
  symmetry.index_percent = (a - b) / ((a + b) / 2) * 100;
  symmetry.half_index_percent = (a - b) / (a + b) * 100;
  symmetry.share_percent = a / (a + b) * 100;
  symmetry.angle_percent = (45 - std::atan(a / b) * 180 / std::numbers::pi) / 90 * 100;
  return symmetry;
}

absl::StatusOr<double> meanIndexSize(const std::vector<std::pair<double, double>>& pairs) {
  if (pairs.empty()) return absl::InvalidArgumentError("no pair of steps was given");
  double sum = 0;
  for (std::size_t i = 0; i < pairs.size(); ++i) {
    const auto symmetry = symmetryOf(pairs[i].first, pairs[i].second);
    if (!symmetry.ok()) {
      return absl::InvalidArgumentError("pair " + std::to_string(i + 1) + ": " +
                                        std::string(symmetry.status().message()));
    }
    sum += std::abs(symmetry->index_percent);
  }
  return sum / static_cast<double>(pairs.size());
}

}  // namespace newel
