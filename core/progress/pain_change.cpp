#include "core/progress/pain_change.h"

#include <cmath>
#include <numeric>

namespace newel {
namespace {

constexpr double kPoints = 2;
constexpr double kPercent = 30;
constexpr std::size_t kRatings = 3;
// A rise of exactly 30 % must not be lost in the last binary digit.
constexpr double kSlack = 1e-9;

}  // namespace

PainChange painChange(double before, double after) {
  PainChange change;
  change.points = after - before;
  change.by_points = std::abs(change.points) >= kPoints - kSlack;
  if (before > 0) {
    change.percent = change.points / before * 100;
    change.by_percent = std::abs(*change.percent) >= kPercent - kSlack;
  }
  return change;
}

std::optional<PainChange> painTrend(const std::vector<double>& ratings) {
  if (ratings.size() < 2 * kRatings) return std::nullopt;
  const auto middle = ratings.end() - kRatings;
  const double after = std::accumulate(middle, ratings.end(), 0.0) / kRatings;
  const double before = std::accumulate(middle - kRatings, middle, 0.0) / kRatings;
  return painChange(before, after);
}

}  // namespace newel
