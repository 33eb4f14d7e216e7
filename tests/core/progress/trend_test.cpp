// The slope that single bad days do not move, and the change of pain that matters.
#include "core/progress/trend.h"

#include <gtest/gtest.h>

#include <string>

namespace newel {
namespace {

std::vector<TrendPoint> points(const std::vector<double>& at, const std::vector<double>& values) {
  std::vector<TrendPoint> all;
  for (std::size_t i = 0; i < at.size(); ++i) all.push_back({at[i], values[i]});
  return all;
}

TEST(TheilSen, matchesAnotherImplementation) {
  // Made once with scipy.stats.theilslopes of SciPy 1.10.1 (its first result).
  EXPECT_NEAR(theilSenSlope(points({0, 1, 3, 4, 7, 9}, {6, 6, 5, 5, 4, 2})).value(), -0.3333333333333333,
              1e-12);
  EXPECT_NEAR(theilSenSlope(points({0, 2, 4, 6, 8, 10, 12, 14}, {3, 5, 2, 4, 6, 5, 7, 6})).value(), 0.25,
              1e-12);
  EXPECT_NEAR(theilSenSlope(points({0, 7, 14, 21, 28}, {6, 9, 5, 4, 4})).value(), -0.08333333333333333,
              1e-12);
  // Two ratings of one day make no slope between them.
  EXPECT_NEAR(theilSenSlope(points({0, 0, 1, 5}, {4, 2, 4, 1})).value(), -0.2, 1e-12);
}

TEST(TheilSen, isTheMedianOfAllPairsByHand) {
  // Pairs of (0,5) (1,4) (2,4) (3,1): -1, -1/2, -4/3, 0, -3/2, -3; sorted -3 -1.5 -1.333 -1 -0.5 0.
  EXPECT_NEAR(theilSenSlope(points({0, 1, 2, 3}, {5, 4, 4, 1})).value(), (-4.0 / 3 - 1) / 2, 1e-12);
}

TEST(TheilSen, oneBadDayDoesNotTurnIt) {
  EXPECT_NEAR(theilSenSlope(points({0, 1, 2, 3, 4, 5, 6}, {6, 5.5, 5, 10, 4, 3.5, 3})).value(), -0.5, 1e-12);
}

TEST(TheilSen, ofOneDayIsNothing) {
  EXPECT_FALSE(theilSenSlope({}).has_value());
  EXPECT_FALSE(theilSenSlope(points({3}, {5})).has_value());
  EXPECT_FALSE(theilSenSlope(points({3, 3}, {5, 2})).has_value());
}

TEST(PainChangeRule, twoPointsOrThirtyPercent) {
  // Farrar 2001, Pain 94:149: about 2 points or about 30 %. 6 to 4: both; 9 to 7: points; 3 to 2: percent.
  const PainChange both = painChange(6, 4);
  EXPECT_TRUE(both.by_points && both.by_percent);
  EXPECT_NEAR(both.percent.value(), -33.3, 0.05);
  const PainChange by_points = painChange(9, 7);
  EXPECT_TRUE(by_points.by_points);
  EXPECT_FALSE(by_points.by_percent);
  EXPECT_NEAR(by_points.percent.value(), -22.2, 0.05);
  const PainChange by_percent = painChange(3, 2);
  EXPECT_FALSE(by_percent.by_points);
  EXPECT_TRUE(by_percent.by_percent);
}

v1::Practice practice(const std::string& day, std::int64_t hour, const std::string& entry, int pain) {
  v1::Practice made;
  made.set_local_day(day);
  made.mutable_started_at()->set_seconds(hour * 3600);
  auto* done = made.add_entries();
  done->mutable_occasion()->set_entry_id(entry);
  if (pain >= 0) done->set_pain_after_0_10(static_cast<std::uint32_t>(pain));
  return made;
}

TEST(PainCourse, isInDaysOldestFirstAndPerWeek) {
  // 6, 5, 4 a week apart, given out of order: one point down a week.
  const PainCourse course = painCourse({practice("2026-11-16", 5, "a", 4), practice("2026-11-02", 5, "a", 6),
                                        practice("2026-11-09", 5, "a", 5)},
                                       "a");
  ASSERT_EQ(course.ratings.size(), 3U);
  EXPECT_EQ(course.ratings[0].pain_0_10, 6);
  EXPECT_NEAR(course.slope_per_week.value(), -1, 1e-12);
  EXPECT_FALSE(course.change.has_value()) << "three ratings are too few to compare three with three";
}

TEST(PainCourse, ofOneEntryLeavesTheOthersOut) {
  const std::vector<v1::Practice> practices = {practice("2026-11-02", 5, "a", 2),
                                               practice("2026-11-03", 5, "b", 9),
                                               practice("2026-11-04", 5, "a", -1)};
  EXPECT_EQ(painCourse(practices, "a").ratings.size(), 1U) << "unrated is not 0";
  EXPECT_EQ(painCourse(practices, "").ratings.size(), 2U);
}

TEST(PainCourse, ofWholePracticesTakesTheHighest) {
  v1::Practice two = practice("2026-11-02", 5, "a", 2);
  *two.add_entries() = practice("2026-11-02", 5, "b", 6).entries(0);
  EXPECT_EQ(painCourse({two}, "").ratings.at(0).pain_0_10, 6);
}

TEST(PainBefore, isTheExercisesOwnOrThatOfThePracticesStart) {
  v1::Practice practice;
  practice.add_entries();
  practice.add_entries();
  EXPECT_EQ(painBefore(practice, practice.entries(1)), std::nullopt);
  practice.mutable_entries(0)->set_pain_before_0_10(3);
  EXPECT_EQ(painBefore(practice, practice.entries(0)), 3U);
  EXPECT_EQ(painBefore(practice, practice.entries(1)), 3U) << "the phone asks once";
  practice.mutable_entries(1)->set_pain_before_0_10(0);
  EXPECT_EQ(painBefore(practice, practice.entries(1)), 0U);
}

}  // namespace
}  // namespace newel
