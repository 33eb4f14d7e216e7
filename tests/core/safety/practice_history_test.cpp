#include "core/safety/practice_history.h"

#include <gtest/gtest.h>

#include "core/time/local_day.h"

namespace newel {
namespace {

const absl::CivilDay kToday(2026, 11, 25);

v1::Practice practiceOn(absl::CivilDay day, v1::PracticeEnd end = v1::PRACTICE_END_FINISHED) {
  v1::Practice practice;
  practice.set_id("practice-" + formatLocalDay(day));
  practice.set_local_day(formatLocalDay(day));
  const absl::Time noon = absl::FromCivil(absl::CivilSecond(day) + 12 * 3600, absl::UTCTimeZone());
  *practice.mutable_started_at() = toTimestamp(noon);
  *practice.mutable_ended_at() = toTimestamp(noon + absl::Minutes(20));
  practice.set_end(end);
  return practice;
}

v1::Practice stopped(absl::CivilDay day, const std::string& rule) {
  v1::Practice practice = practiceOn(day, v1::PRACTICE_END_RED_FLAG);
  practice.add_red_flag_rule_ids(rule);
  return practice;
}

absl::Time endOf(const v1::Practice& practice) { return toTime(practice.ended_at()); }

std::optional<OpenStop> open(const std::vector<v1::Practice>& practices, absl::CivilDay today,
                             std::optional<absl::Time> spoke = std::nullopt) {
  return openStop(RuleBook::builtIn(), practices, today, spoke);
}

TEST(OpenStop, aRedFlagStandsForWeeksUntilTheClinicSpeaks) {
  const v1::Practice practice = stopped(kToday - 40, "stop-chest-pain");
  const auto stop = open({practice}, kToday);
  ASSERT_TRUE(stop.has_value());
  EXPECT_EQ(stop->rule_id, "stop-chest-pain");
  EXPECT_EQ(stop->practice_id, practice.id());
  EXPECT_EQ(stop->until, v1::UNTIL_CLINIC_SAYS);
}

TEST(OpenStop, whatTheClinicSaidBeforeTheStopDoesNotLiftIt) {
  const v1::Practice practice = stopped(kToday, "stop-skin");
  EXPECT_TRUE(open({practice}, kToday, endOf(practice) - absl::Hours(1)).has_value());
  EXPECT_TRUE(open({practice}, kToday, endOf(practice)).has_value());
  EXPECT_FALSE(open({practice}, kToday, endOf(practice) + absl::Seconds(1)).has_value());
}

TEST(OpenStop, untilNextDayEndsWithTheDayAndNotWithAWord) {
  const v1::Practice practice = stopped(kToday, "stop-dizzy");
  EXPECT_TRUE(open({practice}, kToday).has_value());
  EXPECT_TRUE(open({practice}, kToday, endOf(practice) + absl::Hours(1)).has_value());
  EXPECT_FALSE(open({practice}, kToday + 1).has_value());
}

TEST(OpenStop, travelWestwardsToADayBeforeDoesNotLiftIt) {
  EXPECT_TRUE(open({stopped(kToday, "stop-dizzy")}, kToday - 1).has_value());
}

TEST(OpenStop, aDayThatCannotBeReadLiftsNothing) {
  v1::Practice practice = stopped(kToday, "stop-dizzy");
  practice.set_local_day("someday");
  EXPECT_TRUE(open({practice}, kToday + 5).has_value());
}

TEST(OpenStop, anAnswerThatMayChangeDoesNotStand) {
  EXPECT_FALSE(open({stopped(kToday, "ready-dizzy")}, kToday).has_value());
}

TEST(OpenStop, aRuleThisProgramDoesNotKnowStandsUntilTheClinicSays) {
  const v1::Practice practice = stopped(kToday - 3, "rule-of-a-newer-program");
  ASSERT_TRUE(open({practice}, kToday).has_value());
  EXPECT_EQ(open({practice}, kToday)->until, v1::UNTIL_CLINIC_SAYS);
  EXPECT_FALSE(open({practice}, kToday, endOf(practice) + absl::Hours(1)).has_value());
}

TEST(OpenStop, aRuleThatEndsNoPracticeIsNoReasonToLetItPass) {
  EXPECT_EQ(open({stopped(kToday - 3, "stop-tired")}, kToday)->until, v1::UNTIL_CLINIC_SAYS);
}

TEST(OpenStop, aRedFlagEndWithoutARuleStandsToo) {
  EXPECT_TRUE(open({practiceOn(kToday - 3, v1::PRACTICE_END_RED_FLAG)}, kToday).has_value());
  EXPECT_FALSE(open({practiceOn(kToday - 3)}, kToday).has_value());
  EXPECT_FALSE(open({}, kToday).has_value());
}

// Trying again on the day of a lesser stop is refused, and the refusal must not outlive what it refused for.
TEST(OpenStop, aRefusedNewTryDoesNotMakeItLonger) {
  v1::Practice refused = practiceOn(kToday, v1::PRACTICE_END_REFUSED);
  refused.add_red_flag_rule_ids("ready-red-flag-open");
  EXPECT_TRUE(open({stopped(kToday, "stop-dizzy"), refused}, kToday).has_value());
  EXPECT_FALSE(open({stopped(kToday, "stop-dizzy"), refused}, kToday + 1).has_value());
}

TEST(OpenStop, theStricterOneIsNamed) {
  const v1::Practice dizzy = stopped(kToday, "stop-dizzy");
  const v1::Practice skin = stopped(kToday - 1, "stop-skin");
  EXPECT_EQ(open({dizzy, skin}, kToday)->rule_id, "stop-skin");
  EXPECT_EQ(open({skin, dizzy}, kToday)->rule_id, "stop-skin");
}

TEST(History, ofNoPracticeIsAFirstOne) {
  const PracticeHistory history = historyOf(RuleBook::builtIn(), {}, kToday, std::nullopt);
  EXPECT_FALSE(history.days_since_last_practice.has_value());
  EXPECT_FALSE(history.last_pain.has_value());
  EXPECT_FALSE(history.red_flag_open);
}

TEST(History, countsDaysSinceTheNewestAndTakesItsHighestPain) {
  v1::Practice old_one = practiceOn(kToday - 9);
  old_one.add_entries()->set_pain_after_0_10(9);
  v1::Practice last = practiceOn(kToday - 2);
  last.add_entries()->set_pain_after_0_10(3);
  last.add_entries()->set_pain_after_0_10(5);
  last.add_entries();
  const PracticeHistory history = historyOf(RuleBook::builtIn(), {last, old_one}, kToday, std::nullopt);
  EXPECT_EQ(history.days_since_last_practice, 2);
  EXPECT_EQ(history.last_pain, 5U);
}

TEST(History, aRefusedPracticeWasNotDoneButItsStopStands) {
  v1::Practice refused = practiceOn(kToday - 1, v1::PRACTICE_END_REFUSED);
  refused.add_red_flag_rule_ids("ready-skin-open");
  const PracticeHistory history =
      historyOf(RuleBook::builtIn(), {refused, practiceOn(kToday - 6)}, kToday, std::nullopt);
  EXPECT_EQ(history.days_since_last_practice, 6);
  EXPECT_TRUE(history.red_flag_open);
}

TEST(History, aPracticeOfTomorrowAfterTravelIsZeroDaysAgo) {
  EXPECT_EQ(
      historyOf(RuleBook::builtIn(), {practiceOn(kToday + 1)}, kToday, std::nullopt).days_since_last_practice,
      0);
  v1::Practice broken = practiceOn(kToday - 4);
  broken.set_local_day("?");
  EXPECT_FALSE(
      historyOf(RuleBook::builtIn(), {broken}, kToday, std::nullopt).days_since_last_practice.has_value());
}

}  // namespace
}  // namespace newel
