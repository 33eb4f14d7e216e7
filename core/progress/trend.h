// Which way a row of ratings goes, unmoved by single bad days.
// Not here: whether a change matters (pain_change.h), and which pain it was: pain in the residual limb,
// phantom pain and pain in a joint are different things, and a rating of a practice does not part them.
#pragma once

#include <absl/time/civil_time.h>

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/progress/pain_change.h"
#include "core/records/practice.pb.h"

namespace newel {

struct TrendPoint {
  double at = 0;
  double value = 0;
};

// The median of the slopes of all pairs of points that differ in `at` (Theil 1950, Sen 1968): one value in
// four may be anything and the slope holds. nullopt when no two points differ in `at`. Any order; at most a
// few thousand points, since every pair is looked at.
std::optional<double> theilSenSlope(const std::vector<TrendPoint>& points);

struct PainRating {
  absl::CivilDay day;
  double pain_0_10 = 0;
};

// What each practice was rated afterwards, oldest first: of one entry, or, with an empty `entry_id`, the
// highest of each practice. Practices without a rating, or with a day that cannot be read, give none.
std::vector<PainRating> painRatings(const std::vector<v1::Practice>& practices, const std::string& entry_id);

// Of an exercise of `practice`: the phone asks once, before the first one, and what is told later may say it
// for each. nullopt: it was not rated.
std::optional<std::uint32_t> painBefore(const v1::Practice& practice, const v1::EntryDone& entry);

struct PainCourse {
  std::vector<PainRating> ratings;
  std::optional<double> slope_per_week;  // points of 0 to 10 in seven days; under 0: pain falls
  std::optional<PainChange> change;      // the last three ratings against the three before them
};
PainCourse painCourseOf(std::vector<PainRating> ratings);
PainCourse painCourse(const std::vector<v1::Practice>& practices, const std::string& entry_id);

}  // namespace newel
