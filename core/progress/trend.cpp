#include "core/progress/trend.h"

#include <algorithm>
#include <utility>

#include "core/time/local_day.h"

namespace newel {
namespace {

double medianOf(std::vector<double> values) {
  const std::size_t middle = values.size() / 2;
  std::nth_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(middle), values.end());
  const double upper = values[middle];
  if (values.size() % 2 == 1) return upper;
  const double lower =
      *std::max_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(middle));
  return (lower + upper) / 2;
}

std::optional<double> ratingOf(const v1::Practice& practice, const std::string& entry_id) {
  std::optional<double> highest;
  for (const auto& entry : practice.entries()) {
    if (!entry.has_pain_after_0_10()) continue;
    if (!entry_id.empty() && entry.occasion().entry_id() != entry_id) continue;
    highest = std::max(highest.value_or(0), static_cast<double>(entry.pain_after_0_10()));
  }
  return highest;
}

// Practices of one day in the order they were begun.
bool startedBefore(const v1::Practice* a, const v1::Practice* b) {
  if (a->local_day() != b->local_day()) return a->local_day() < b->local_day();
  return a->started_at().seconds() < b->started_at().seconds();
}

}  // namespace

std::optional<double> theilSenSlope(const std::vector<TrendPoint>& points) {
  std::vector<double> slopes;
  for (std::size_t i = 0; i < points.size(); ++i) {
    for (std::size_t j = i + 1; j < points.size(); ++j) {
      const double apart = points[j].at - points[i].at;
      if (apart != 0) slopes.push_back((points[j].value - points[i].value) / apart);
    }
  }
  if (slopes.empty()) return std::nullopt;
  return medianOf(std::move(slopes));
}

std::vector<PainRating> painRatings(const std::vector<v1::Practice>& practices, const std::string& entry_id) {
  std::vector<const v1::Practice*> ordered;
  ordered.reserve(practices.size());
  for (const auto& practice : practices) ordered.push_back(&practice);
  std::stable_sort(ordered.begin(), ordered.end(), startedBefore);
  std::vector<PainRating> ratings;
  for (const auto* practice : ordered) {
    const auto day = parseLocalDay(practice->local_day());
    const auto pain = ratingOf(*practice, entry_id);
    if (day.ok() && pain) ratings.push_back({*day, *pain});
  }
  return ratings;
}

PainCourse painCourse(const std::vector<v1::Practice>& practices, const std::string& entry_id) {
  return painCourseOf(painRatings(practices, entry_id));
}

std::optional<std::uint32_t> painBefore(const v1::Practice& practice, const v1::EntryDone& entry) {
  if (entry.has_pain_before_0_10()) return entry.pain_before_0_10();
  for (const v1::EntryDone& first : practice.entries()) {
    if (first.has_pain_before_0_10()) return first.pain_before_0_10();
  }
  return std::nullopt;
}

PainCourse painCourseOf(std::vector<PainRating> ratings) {
  PainCourse course;
  course.ratings = std::move(ratings);
  std::vector<TrendPoint> points;
  std::vector<double> values;
  for (const PainRating& rating : course.ratings) {
    const auto days = static_cast<double>(rating.day - course.ratings.front().day);
    points.push_back({days / 7, rating.pain_0_10});
    values.push_back(rating.pain_0_10);
  }
  course.slope_per_week = theilSenSlope(points);
  course.change = painTrend(values);
  return course;
}

}  // namespace newel
