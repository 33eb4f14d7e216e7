// Days and weeks as the person's own pages show them: nothing is confused with anything else.
#include "core/progress/course.h"

#include <gtest/gtest.h>

#include <random>

#include "core/time/local_day.h"
#include "tests/core/schedule/programme_fixture.h"

namespace newel {
namespace {

using State = OccasionResult::State;

const absl::CivilDay kMonday(2026, 11, 2);
constexpr State kStates[] = {State::Done,    State::Part,   State::NotDone,
                             State::Excused, State::Coming, State::NoData};

OccasionResult on(absl::CivilDay day, State state) {
  OccasionResult result;
  result.ref.set_local_day(formatLocalDay(day));
  result.state = state;
  return result;
}

std::optional<State> stateOf(const std::vector<State>& states) {
  Adherence adherence;
  for (const State state : states) adherence.occasions.push_back(on(kMonday, state));
  return courseWeeks(adherence, kMonday, 1, absl::CivilDay::min())[0].days[0].state();
}

TEST(Course, aDayOfOneKindIsOfThatKind) {
  for (const State state : kStates) {
    EXPECT_EQ(stateOf({state}), state);
    EXPECT_EQ(stateOf({state, state}), state);
  }
  EXPECT_EQ(stateOf({}), std::nullopt) << "nothing due is not nothing done";
}

TEST(Course, aMixedDayIsPartOnceAnythingWasDone) {
  for (const State other : {State::Part, State::NotDone, State::Coming, State::NoData}) {
    EXPECT_EQ(stateOf({State::Done, other}), State::Part);
    EXPECT_EQ(stateOf({other, State::Done}), State::Part);
  }
  EXPECT_EQ(stateOf({State::Done, State::Excused}), State::Done) << "excused takes nothing away";
  EXPECT_EQ(stateOf({State::NotDone, State::NoData}), State::NotDone);
  EXPECT_EQ(stateOf({State::NoData, State::Excused}), State::NoData);
}

TEST(Course, beforeThePhoneKnewAnythingThereIsNoDataRatherThanNothingDone) {
  Adherence adherence;
  for (int day = 0; day < 14; ++day) adherence.occasions.push_back(on(kMonday + day, State::NotDone));
  const auto weeks = courseWeeks(adherence, kMonday, 2, kMonday + 10);
  EXPECT_EQ(weeks[0].count.no_data, 7);
  EXPECT_EQ(weeks[0].count.not_done, 0);
  EXPECT_EQ(weeks[1].count.no_data, 3);
  EXPECT_EQ(weeks[1].count.not_done, 4);
}

// Whatever comes in: each occasion of the span is counted once, in its own day, and none outside of it.
TEST(CourseProperties, everyOccasionIsCountedOnceWhateverDayTheWeekBegins) {
  std::mt19937 random(20261130);
  for (int round = 0; round < 200; ++round) {
    Adherence adherence;
    const absl::CivilDay first = kMonday + static_cast<int>(random() % 7);
    const int weeks = 1 + static_cast<int>(random() % 8);
    int inside = 0;
    for (int i = 0; i < 60; ++i) {
      const absl::CivilDay day = first - 20 + static_cast<int>(random() % 100);
      adherence.occasions.push_back(on(day, kStates[random() % std::size(kStates)]));
      if (day >= first && day < first + 7 * weeks) ++inside;
    }
    int counted = 0;
    for (const CourseWeek& week : courseWeeks(adherence, first, weeks, first)) {
      int in_days = 0;
      for (const CourseDay& day : week.days) {
        EXPECT_GE(day.day, week.first);
        EXPECT_LT(day.day, week.first + 7);
        in_days += day.count.all();
      }
      EXPECT_EQ(in_days, week.count.all());
      counted += in_days;
    }
    EXPECT_EQ(counted, inside);
  }
}

TEST(CourseRatings, theHighestOfEachDayAndNothingForDaysWithoutOne) {
  std::vector<v1::Practice> practices;
  const auto rated = [&](absl::CivilDay day, int pain, int effort) {
    v1::Practice practice;
    practice.set_local_day(formatLocalDay(day));
    v1::EntryDone* entry = practice.add_entries();
    if (pain >= 0) entry->set_pain_after_0_10(static_cast<std::uint32_t>(pain));
    if (effort >= 0) entry->set_effort_0_10(static_cast<std::uint32_t>(effort));
    practices.push_back(practice);
  };
  rated(kMonday + 1, 2, 6);
  rated(kMonday, 0, -1);
  rated(kMonday + 1, 5, 4);
  rated(kMonday + 2, -1, -1);
  rated(kMonday + 30, 9, 9);
  practices.emplace_back().set_local_day("no day");
  const auto ratings = courseRatings(practices, kMonday, kMonday + 6);
  ASSERT_EQ(ratings.size(), 2U);
  EXPECT_EQ(ratings[0].day, kMonday);
  EXPECT_EQ(ratings[0].pain_0_10, 0) << "no pain is an answer";
  EXPECT_EQ(ratings[0].effort_0_10, std::nullopt);
  EXPECT_EQ(ratings[1].pain_0_10, 5);
  EXPECT_EQ(ratings[1].effort_0_10, 6);
}

}  // namespace
}  // namespace newel
