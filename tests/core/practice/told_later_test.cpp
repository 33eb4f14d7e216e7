// What was told later becomes a record of its own kind, and the rules look at it as after a practice.
#include "core/practice/told_later.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/practice/compile.h"
#include "core/records/check.h"
#include "core/safety/practice_history.h"
#include "core/time/local_day.h"
#include "tests/core/people/sample_people.h"

namespace newel {
namespace {

using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

const absl::CivilDay kWednesday(2026, 11, 25);

ToldInput plainInput() {
  ToldInput input;
  input.practice_id = test::idOf(900);
  input.person = test::transfemoralLeft();
  input.programme = test::programmeOf(input.person, {test::entryOf("sit-to-stand", input.person)});
  input.occasion.set_entry_id(input.programme.entries(0).id());
  input.occasion.set_local_day("2026-11-25");
  input.pain_after_0_10 = 2;
  input.effort_0_10 = 4;
  input.zone = "Europe/Berlin";
  input.today = kWednesday;
  input.told_at = absl::FromUnixSeconds(1795600000);
  input.language = "en";
  input.app_version = "0.1.0";
  return input;
}

absl::StatusOr<ToldResult> told(const ToldInput& input) {
  return tellLater(input, Catalogue::builtIn(), RuleBook::builtIn());
}

TEST(ToldLater, isKeptAsWhatItIsAndNothingInItWasTimed) {
  const ToldInput input = plainInput();
  const auto result = told(input);
  ASSERT_TRUE(result.ok()) << result.status();
  const v1::Practice& practice = result->practice;
  EXPECT_EQ(check(practice), absl::OkStatus());
  EXPECT_EQ(practice.origin(), v1::ORIGIN_TOLD_LATER);
  EXPECT_EQ(practice.end(), v1::PRACTICE_END_FINISHED);
  EXPECT_EQ(practice.elapsed_ms(), 0);
  EXPECT_EQ(practice.local_day(), "2026-11-25");
  ASSERT_EQ(practice.entries_size(), 1);
  EXPECT_EQ(practice.entries(0).elapsed_ms(), 0);
  EXPECT_EQ(practice.entries(0).pain_after_0_10(), 2U);
  EXPECT_EQ(practice.entries(0).effort_0_10(), 4U);
  EXPECT_FALSE(practice.entries(0).has_pain_before_0_10()) << "nobody asked before";
  const auto timeline = compileTimeline(input.programme.entries(0), input.person, Catalogue::builtIn(), "en");
  ASSERT_TRUE(timeline.ok());
  EXPECT_EQ(practice.entries(0).done().repetitions(), timeline->asked().repetitions());
  EXPECT_EQ(practice.entries(0).done().active_ms(), timeline->asked().active_ms());
  EXPECT_THAT(result->findings, IsEmpty());
  EXPECT_FALSE(result->ends_practice);
}

TEST(ToldLater, howMuchIsAShareOfWhatWasAskedAndOneRepetitionAtLeast) {
  ToldInput input = plainInput();
  const auto asked = told(input)->practice.entries(0).asked();
  ASSERT_GE(asked.repetitions(), 4U);
  input.done_percent = 50;
  EXPECT_EQ(told(input)->practice.entries(0).done().repetitions(), asked.repetitions() / 2);
  EXPECT_EQ(told(input)->practice.entries(0).done().active_ms(), asked.active_ms() / 2);
  input.done_percent = 1;
  EXPECT_EQ(told(input)->practice.entries(0).done().repetitions(), 1U);
}

TEST(ToldLater, everyStopReasonIsJudgedAsAfterAPractice) {
  const RuleBook& rules = RuleBook::builtIn();
  for (int value = 1; v1::StopReason_IsValid(value); ++value) {
    const auto reason = static_cast<v1::StopReason>(value);
    if (reason == v1::STOP_REASON_HOLD_ORDER) continue;
    ToldInput input = plainInput();
    input.happened = reason;
    const auto result = told(input);
    ASSERT_TRUE(result.ok()) << result.status();
    const auto by_rules = rules.practiceFindings(merged({factsOf(input.person), stopFacts(reason)}), "en");
    std::vector<std::string> ending;
    for (const auto& finding : by_rules) {
      if (endsPractice(finding)) ending.push_back(finding.rule_id());
    }
    const v1::Practice& practice = result->practice;
    EXPECT_EQ(
        std::vector<std::string>(practice.red_flag_rule_ids().begin(), practice.red_flag_rule_ids().end()),
        ending)
        << v1::StopReason_Name(reason);
    EXPECT_EQ(practice.end(), ending.empty() ? v1::PRACTICE_END_STOPPED : v1::PRACTICE_END_RED_FLAG);
    EXPECT_EQ(practice.stop_reason(), reason);
    EXPECT_EQ(practice.entries(0).skipped(), reason);
    EXPECT_EQ(result->ends_practice, !ending.empty());
    EXPECT_EQ(check(practice), absl::OkStatus());
  }
}

TEST(ToldLater, aRedFlagStandsUntilTheClinicHasSpokenAfterItWasTold) {
  ToldInput input = plainInput();
  input.happened = v1::STOP_REASON_CHEST_PAIN;
  input.occasion.set_local_day("2026-11-23");  // told two days late
  const auto result = told(input);
  ASSERT_TRUE(result.ok());
  ASSERT_EQ(result->findings.size(), 1U);
  EXPECT_TRUE(result->findings[0].emergency_first());
  EXPECT_TRUE(result->ends_practice);
  const std::vector<v1::Practice> practices = {result->practice};
  const RuleBook& rules = RuleBook::builtIn();
  // What the clinic wrote in between was written without knowing.
  EXPECT_TRUE(openStop(rules, practices, kWednesday, input.told_at - absl::Hours(10)).has_value());
  EXPECT_FALSE(openStop(rules, practices, kWednesday, input.told_at + absl::Hours(1)).has_value());
}

TEST(ToldLater, severePainIsAFlagAndAnEarlierDaysNoMoreTodayIsPast) {
  ToldInput input = plainInput();
  input.pain_after_0_10 = 9;
  input.occasion.set_local_day("2026-11-23");
  auto result = told(input);
  ASSERT_TRUE(result.ok());
  EXPECT_THAT(result->practice.red_flag_rule_ids(), ElementsAre("pain-severe"));
  EXPECT_TRUE(result->ends_practice);
  input.pain_after_0_10 = 6;  // over the limit of 5: no more that day
  result = told(input);
  ASSERT_TRUE(result.ok());
  EXPECT_THAT(result->practice.red_flag_rule_ids(), ElementsAre("pain-over-stop")) << "the clinic sees it";
  EXPECT_THAT(result->findings, IsEmpty()) << "that day is over";
  EXPECT_FALSE(result->ends_practice);
  EXPECT_FALSE(openStop(RuleBook::builtIn(), {result->practice}, kWednesday, std::nullopt).has_value());
  input.occasion.set_local_day("2026-11-25");
  result = told(input);
  EXPECT_TRUE(result->ends_practice);
  EXPECT_TRUE(openStop(RuleBook::builtIn(), {result->practice}, kWednesday, std::nullopt).has_value());
}

TEST(ToldLater, refusesWhatMakesNoSense) {
  ToldInput input = plainInput();
  input.occasion.set_local_day("2026-11-26");
  EXPECT_THAT(std::string(told(input).status().message()), HasSubstr("occasion.local_day: is to come"));
  input = plainInput();
  input.occasion.set_local_day("the other day");
  EXPECT_THAT(std::string(told(input).status().message()), HasSubstr("occasion.local_day"));
  input = plainInput();
  input.occasion.set_entry_id(test::idOf(7));
  EXPECT_THAT(std::string(told(input).status().message()), HasSubstr("occasion.entry_id"));
  for (const std::uint32_t percent : {0U, 101U}) {
    input = plainInput();
    input.done_percent = percent;
    EXPECT_THAT(std::string(told(input).status().message()), HasSubstr("done_percent"));
  }
  input = plainInput();
  input.happened = v1::STOP_REASON_HOLD_ORDER;
  EXPECT_THAT(std::string(told(input).status().message()), HasSubstr("happened"));
  input = plainInput();
  input.pain_after_0_10 = 11;
  EXPECT_THAT(std::string(told(input).status().message()), HasSubstr("pain_after_0_10"));
  input = plainInput();
  input.person = test::transfemoralRightNoProsthesis();
  EXPECT_FALSE(told(input).ok()) << "an entry with no meaning for the person";
}

}  // namespace
}  // namespace newel
