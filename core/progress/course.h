// How things went, day by day and week by week, as the person's own pages show it: what was due and what
// became of it, and the highest pain and effort of each day. Nothing is judged here.
// Not here: shares in per cent (adherence.h), which way a row of ratings goes (trend.h), words.
#pragma once

#include <absl/time/civil_time.h>

#include <array>
#include <optional>
#include <vector>

#include "core/progress/adherence.h"

namespace newel {

// How many occasions of a day or a week came to what. What was not due is in none of them.
struct CourseCount {
  int done = 0, part = 0, not_done = 0, excused = 0, coming = 0, no_data = 0;
  int due() const { return done + part + not_done; }  // known and not excused
  int all() const { return due() + excused + coming + no_data; }
};

struct CourseDay {
  absl::CivilDay day;
  CourseCount count;
  // One state for all of the day; nullopt: nothing was due. All done is Done; anything done beside anything
  // else is Part; else the first that there is of NotDone, Coming, NoData, Excused.
  std::optional<OccasionResult::State> state() const;
};

struct CourseWeek {
  absl::CivilDay first;
  std::array<CourseDay, 7> days;
  CourseCount count;
};

// `weeks` weeks from `first` on, whatever day of the week that is (a place's week begins where its people
// say). What is outside of them is left out. Before `known_from` nobody knows: NotDone becomes NoData.
std::vector<CourseWeek> courseWeeks(const Adherence& adherence, absl::CivilDay first, int weeks,
                                    absl::CivilDay known_from);

// The highest ratings of one day, 0 to 10; nullopt where there was none.
struct CourseRating {
  absl::CivilDay day;
  std::optional<int> pain_0_10;
  std::optional<int> effort_0_10;
};
// Of the days from `first` to `last` with any rating, oldest first. Practices whose day cannot be read give
// none.
std::vector<CourseRating> courseRatings(const std::vector<v1::Practice>& practices, absl::CivilDay first,
                                        absl::CivilDay last);

}  // namespace newel
