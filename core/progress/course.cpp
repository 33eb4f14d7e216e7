#include "core/progress/course.h"

#include <algorithm>
#include <map>

#include "core/time/local_day.h"

namespace newel {
namespace {

using State = OccasionResult::State;

void add(CourseCount& count, State state) {
  switch (state) {
    case State::Done:
      ++count.done;
      break;
    case State::Part:
      ++count.part;
      break;
    case State::NotDone:
      ++count.not_done;
      break;
    case State::Excused:
      ++count.excused;
      break;
    case State::Coming:
      ++count.coming;
      break;
    case State::NoData:
      ++count.no_data;
      break;
  }
}

void raise(std::optional<int>& highest, std::uint32_t value) {
  highest = std::max(highest.value_or(0), static_cast<int>(value));
}

}  // namespace

std::optional<State> CourseDay::state() const {
  if (count.all() == 0) return std::nullopt;
  // What was excused takes nothing from a day that is otherwise done.
  if (count.done > 0 && count.done + count.excused == count.all()) return State::Done;
  if (count.done > 0 || count.part > 0) return State::Part;
  if (count.not_done > 0) return State::NotDone;
  if (count.coming > 0) return State::Coming;
  return count.no_data > 0 ? State::NoData : State::Excused;
}

std::vector<CourseWeek> courseWeeks(const Adherence& adherence, absl::CivilDay first, int weeks,
                                    absl::CivilDay known_from) {
  std::vector<CourseWeek> course(static_cast<std::size_t>(std::max(0, weeks)));
  for (std::size_t week = 0; week < course.size(); ++week) {
    course[week].first = first + 7 * static_cast<absl::civil_diff_t>(week);
    for (int day = 0; day < 7; ++day) course[week].days[day].day = course[week].first + day;
  }
  for (const OccasionResult& occasion : adherence.occasions) {
    const auto day = parseLocalDay(occasion.ref.local_day());
    if (!day.ok() || *day < first || *day - first >= 7 * static_cast<absl::civil_diff_t>(course.size())) {
      continue;
    }
    const auto place = static_cast<std::size_t>(*day - first);
    const bool unknown = occasion.state == State::NotDone && *day < known_from;
    CourseWeek& week = course[place / 7];
    add(week.days[place % 7].count, unknown ? State::NoData : occasion.state);
    add(week.count, unknown ? State::NoData : occasion.state);
  }
  return course;
}

std::vector<CourseRating> courseRatings(const std::vector<v1::Practice>& practices, absl::CivilDay first,
                                        absl::CivilDay last) {
  std::map<absl::CivilDay, CourseRating> days;
  for (const v1::Practice& practice : practices) {
    const auto day = parseLocalDay(practice.local_day());
    if (!day.ok() || *day < first || *day > last) continue;
    for (const v1::EntryDone& entry : practice.entries()) {
      if (!entry.has_pain_after_0_10() && !entry.has_effort_0_10()) continue;
      CourseRating& rating = days[*day];
      rating.day = *day;
      if (entry.has_pain_after_0_10()) raise(rating.pain_0_10, entry.pain_after_0_10());
      if (entry.has_effort_0_10()) raise(rating.effort_0_10, entry.effort_0_10());
    }
  }
  std::vector<CourseRating> course;
  course.reserve(days.size());
  for (const auto& [day, rating] : days) course.push_back(rating);
  return course;
}

}  // namespace newel
