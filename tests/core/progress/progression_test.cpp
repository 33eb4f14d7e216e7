// Ready, hold or step back, each with its reasons.
// The rule "2 repetitions over the goal in the last set, in 2 practices in a row": Baechle and Earle, as
// quoted by strength handouts (second-hand). Limits of effort and pain: common practice, no source.
#include "core/progress/progression.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>

#include "core/progress/progression_presets.h"
#include "core/records/check.h"

namespace newel {
namespace {

using testing::HasSubstr;

constexpr char kEntry[] = "017f22e2-79b0-7cc3-98c4-dc0c0c073990";

v1::ProgressionRule twoForTwo() {
  v1::ProgressionRule rule;
  rule.set_practices(2);
  rule.set_goal_repetitions(8);
  rule.set_repetitions_over_goal(2);
  rule.set_effort_at_most_0_10(5);
  rule.set_pain_rise_at_most_0_10(1);
  rule.set_nothing_missed(true);
  rule.set_step_back_practices(2);
  rule.set_step_back_pain_rise_0_10(2);
  rule.set_step_back_done_percent(50);
  return rule;
}

// Three sets of ten led by the phone; the goal is eight.
v1::Entry entry() {
  v1::Entry made;
  made.set_id(kEntry);
  made.set_exercise_id("sit-to-stand");
  made.set_exercise_revision(1);
  made.set_side_policy(v1::SIDE_POLICY_WHOLE_BODY);
  made.mutable_dose()->mutable_sets()->set_sets(3);
  made.mutable_dose()->mutable_sets()->set_repetitions(10);
  made.set_support(v1::SUPPORT_TWO_HANDS);
  *made.mutable_progression() = twoForTwo();
  return made;
}

v1::Programme programme(std::uint32_t number, const std::string& from, const v1::Entry& with) {
  v1::Programme made;
  made.set_number(number);
  made.set_effective_day(from);
  *made.add_entries() = with;
  return made;
}

v1::Practice practice(const std::string& day, std::uint32_t last_set, std::uint32_t number = 1) {
  v1::Practice made;
  made.set_id("practice of " + day);
  made.set_programme_number(number);
  made.set_local_day(day);
  made.set_end(v1::PRACTICE_END_FINISHED);
  made.set_origin(v1::ORIGIN_TIMED_HERE);
  auto* done = made.add_entries();
  done->mutable_occasion()->set_entry_id(kEntry);
  done->mutable_occasion()->set_local_day(day);
  for (std::uint32_t set = 1; set <= 3; ++set) {
    auto* sets = done->add_sets();
    sets->set_set(set);
    sets->mutable_done()->set_repetitions(set == 3 ? last_set : 10);
  }
  done->mutable_asked()->set_repetitions(30);
  done->mutable_done()->set_repetitions(20 + last_set);
  done->set_pain_before_0_10(1);
  done->set_pain_after_0_10(2);
  done->set_effort_0_10(5);
  return made;
}

OccasionResult occasion(const std::string& day, OccasionResult::State state) {
  OccasionResult made;
  made.ref.set_entry_id(kEntry);
  made.ref.set_local_day(day);
  made.state = state;
  return made;
}

ProgressionAdvice advise(const std::vector<v1::Practice>& practices,
                         const std::vector<OccasionResult>& occasions = {}, const v1::Entry& of = entry()) {
  const auto advice = adviseProgression({programme(1, "2026-11-02", of)}, kEntry, practices, occasions);
  EXPECT_TRUE(advice.ok()) << advice.status();
  return advice.value();
}

bool says(const ProgressionAdvice& advice, const std::string& key, bool good) {
  return std::any_of(advice.evidence.begin(), advice.evidence.end(),
                     [&](const EvidenceLine& line) { return line.key == key && line.good == good; });
}

TEST(Progression, twoPracticesTwoOverTheGoalAreReady) {
  const auto advice = advise({practice("2026-11-03", 10), practice("2026-11-05", 10)});
  EXPECT_EQ(advice.advice, Advice::Ready);
  EXPECT_EQ(advice.good_in_a_row, 2);
  EXPECT_TRUE(says(advice, "progress.last-set", true));
  EXPECT_EQ(advice.evidence[0].key, "progress.row");
  EXPECT_EQ(advice.evidence[1].args.at("day"), "2026-11-05") << "newest first";
}

TEST(Progression, oneOverTheGoalHolds) {
  const auto advice = advise({practice("2026-11-03", 10), practice("2026-11-05", 9)});
  EXPECT_EQ(advice.advice, Advice::Hold);
  EXPECT_EQ(advice.good_in_a_row, 0) << "the newest breaks the row";
  EXPECT_TRUE(says(advice, "progress.last-set", false));
}

TEST(Progression, onePracticeIsNotARow) {
  EXPECT_EQ(advise({practice("2026-11-03", 10)}).advice, Advice::Hold);
}

TEST(Progression, onlyTheNewestRowCounts) {
  const auto advice =
      advise({practice("2026-11-03", 10), practice("2026-11-05", 10), practice("2026-11-06", 8)});
  EXPECT_EQ(advice.advice, Advice::Hold);
  const auto again =
      advise({practice("2026-11-03", 8), practice("2026-11-05", 10), practice("2026-11-06", 10)});
  EXPECT_EQ(again.advice, Advice::Ready);
}

TEST(Progression, earlierSetsAreNoSubstituteForTheLast) {
  auto short_of_a_set = practice("2026-11-05", 10);
  short_of_a_set.mutable_entries(0)->mutable_sets()->RemoveLast();
  const auto advice = advise({practice("2026-11-03", 10), short_of_a_set});
  EXPECT_EQ(advice.advice, Advice::Hold);
  EXPECT_TRUE(says(advice, "progress.sets-missing", false));
}

TEST(Progression, effortAtTheLimitPassesAndOverItDoesNot) {
  auto hard = practice("2026-11-05", 10);
  EXPECT_EQ(advise({practice("2026-11-03", 10), hard}).advice, Advice::Ready) << "5 at a limit of 5";
  hard.mutable_entries(0)->set_effort_0_10(6);
  const auto advice = advise({practice("2026-11-03", 10), hard});
  EXPECT_EQ(advice.advice, Advice::Hold);
  EXPECT_TRUE(says(advice, "progress.effort", false));
}

TEST(Progression, painOneOverTheStartPassesAndTwoOverDoesNot) {
  auto sore = practice("2026-11-05", 10);
  sore.mutable_entries(0)->set_pain_after_0_10(3);
  const auto advice = advise({practice("2026-11-03", 10), sore});
  EXPECT_EQ(advice.advice, Advice::Hold);
  EXPECT_TRUE(says(advice, "progress.pain", false));
}

TEST(Progression, whatNobodyRatedIsNotGood) {
  auto unrated = practice("2026-11-05", 10);
  unrated.mutable_entries(0)->clear_effort_0_10();
  EXPECT_TRUE(says(advise({practice("2026-11-03", 10), unrated}), "progress.effort-unknown", false));
  EXPECT_EQ(advise({practice("2026-11-03", 10), unrated}).advice, Advice::Hold);
  auto no_pain = practice("2026-11-05", 10);
  no_pain.mutable_entries(0)->clear_pain_before_0_10();
  EXPECT_EQ(advise({practice("2026-11-03", 10), no_pain}).advice, Advice::Hold);
}

// The phone asks for pain once, before the first exercise of a practice: the start counts for all of them.
TEST(Progression, painBeforeTheFirstExerciseIsTheStartForEveryOther) {
  const auto second = [](const std::string& day, std::uint32_t at_start) {
    v1::Practice both = practice(day, 10);
    v1::EntryDone mine = both.entries(0);
    mine.clear_pain_before_0_10();
    both.mutable_entries(0)->mutable_occasion()->set_entry_id("another entry");
    both.mutable_entries(0)->set_pain_before_0_10(at_start);
    *both.add_entries() = mine;
    return both;
  };
  EXPECT_EQ(advise({second("2026-11-03", 1), second("2026-11-05", 1)}).advice, Advice::Ready);
  const auto risen = advise({second("2026-11-03", 1), second("2026-11-05", 0)});
  EXPECT_EQ(risen.advice, Advice::Hold);
  EXPECT_TRUE(says(risen, "progress.pain", false)) << "from 0 to 2";
}

TEST(Progression, aMissedOccasionBeginsTheRowAnew) {
  const std::vector<v1::Practice> practices = {practice("2026-11-03", 10), practice("2026-11-06", 10)};
  const auto advice = advise(practices, {occasion("2026-11-05", OccasionResult::State::NotDone)});
  EXPECT_EQ(advice.advice, Advice::Hold);
  EXPECT_EQ(advice.good_in_a_row, 1);
  EXPECT_TRUE(says(advice, "progress.missed", false));
  // Days that were excused, or are still to come, are not missed.
  EXPECT_EQ(advise(practices, {occasion("2026-11-05", OccasionResult::State::Excused),
                               occasion("2026-11-09", OccasionResult::State::Coming)})
                .advice,
            Advice::Ready);
}

TEST(Progression, aDayThatNobodyHasHeardOfIsNotKnownToBeGood) {
  const auto advice = advise({practice("2026-11-03", 10), practice("2026-11-05", 10)},
                             {occasion("2026-11-06", OccasionResult::State::NoData)});
  EXPECT_EQ(advice.advice, Advice::Hold);
  EXPECT_TRUE(says(advice, "progress.not-heard", false));
}

TEST(Progression, missingIsNoMatterWhereTheRuleDoesNotSaySo) {
  auto lenient = entry();
  lenient.mutable_progression()->set_nothing_missed(false);
  EXPECT_EQ(advise({practice("2026-11-03", 10), practice("2026-11-06", 10)},
                   {occasion("2026-11-05", OccasionResult::State::NotDone)}, lenient)
                .advice,
            Advice::Ready);
}

v1::Practice tooSore(const std::string& day) {
  auto sore = practice(day, 10);
  sore.mutable_entries(0)->set_pain_after_0_10(3);  // from 1: a rise of 2
  return sore;
}

TEST(Progression, painThatRoseByTwoTwiceIsAStepBack) {
  const auto advice = advise({tooSore("2026-11-03"), tooSore("2026-11-05")});
  EXPECT_EQ(advice.advice, Advice::StepBack);
  EXPECT_TRUE(says(advice, "progress.pain-too-much", false));
  EXPECT_EQ(advise({tooSore("2026-11-03"), practice("2026-11-05", 8)}).advice, Advice::Hold)
      << "once is not twice";
}

TEST(Progression, halfOfTheDoseTwiceIsAStepBackUnlessSomethingElseCameBetween) {
  const auto little = [](const std::string& day, v1::StopReason reason) {
    auto made = practice(day, 0);
    auto* done = made.mutable_entries(0);
    done->mutable_sets()->DeleteSubrange(1, 2);
    done->mutable_done()->set_repetitions(10);  // 33 % of 30
    done->set_skipped(reason);
    return made;
  };
  EXPECT_EQ(advise({little("2026-11-03", v1::STOP_REASON_TIRED), little("2026-11-05", v1::STOP_REASON_TIRED)})
                .advice,
            Advice::StepBack);
  EXPECT_EQ(advise({little("2026-11-03", v1::STOP_REASON_NO_TIME),
                    little("2026-11-05", v1::STOP_REASON_INTERRUPTED)})
                .advice,
            Advice::Hold);
}

TEST(Progression, stoppedForPainDizzinessOrUnsteadinessTwiceIsAStepBack) {
  for (const auto reason : {v1::STOP_REASON_PAIN, v1::STOP_REASON_DIZZY, v1::STOP_REASON_UNSTEADY}) {
    auto stopped = practice("2026-11-05", 10);
    stopped.mutable_entries(0)->set_skipped(reason);
    auto before = practice("2026-11-03", 10);
    before.mutable_entries(0)->set_skipped(reason);
    EXPECT_EQ(advise({before, stopped}).advice, Advice::StepBack);
  }
}

TEST(Progression, neverAdvisesAStepBackWhereTheRuleHasNone) {
  auto no_step_back = entry();
  no_step_back.mutable_progression()->set_step_back_practices(0);
  EXPECT_EQ(advise({tooSore("2026-11-03"), tooSore("2026-11-05")}, {}, no_step_back).advice, Advice::Hold);
}

TEST(Progression, aRedFlagMeansHoldWhateverElseIsTrue) {
  auto flagged = practice("2026-11-05", 10);
  flagged.set_end(v1::PRACTICE_END_RED_FLAG);
  const auto advice = advise({practice("2026-11-03", 10), flagged});
  EXPECT_EQ(advice.advice, Advice::Hold);
  EXPECT_TRUE(says(advice, "progress.red-flag", false));
  EXPECT_EQ(advise({practice("2026-11-02", 10), flagged, practice("2026-11-06", 10)}).advice, Advice::Hold);
  EXPECT_EQ(advise({flagged, practice("2026-11-06", 10), practice("2026-11-09", 10)}).advice, Advice::Ready)
      << "behind a new row it no longer stands";
}

TEST(Progression, onlyPracticesUnderThePresentDoseCount) {
  auto before = entry();
  before.mutable_dose()->mutable_sets()->set_repetitions(8);
  const std::vector<v1::Programme> programmes = {programme(2, "2026-11-09", entry()),
                                                 programme(1, "2026-11-02", before)};
  const auto advice = adviseProgression(programmes, kEntry,
                                        {practice("2026-11-05", 10, 1), practice("2026-11-10", 10, 2)}, {});
  ASSERT_TRUE(advice.ok());
  EXPECT_EQ(advice->advice, Advice::Hold);
  EXPECT_EQ(advice->good_in_a_row, 1);
}

TEST(Progression, anUnchangedEntryKeepsItsRowOverProgrammes) {
  const auto advice =
      adviseProgression({programme(1, "2026-11-02", entry()), programme(2, "2026-11-09", entry())}, kEntry,
                        {practice("2026-11-05", 10, 1), practice("2026-11-10", 10, 2)}, {});
  EXPECT_EQ(advice->advice, Advice::Ready);
}

TEST(Progression, theSideThatDidLessCounts) {
  auto sided = entry();
  sided.set_side_policy(v1::SIDE_POLICY_ONE_THEN_OTHER);
  const auto made = [](const std::string& day, std::uint32_t left, std::uint32_t right) {
    auto with = practice(day, left);
    auto* done = with.mutable_entries(0);
    done->mutable_sets(2)->set_side(v1::SIDE_LEFT);
    auto* other = done->add_sets();
    other->set_set(3);
    other->set_side(v1::SIDE_RIGHT);
    other->mutable_done()->set_repetitions(right);
    return with;
  };
  EXPECT_EQ(advise({made("2026-11-03", 10, 10), made("2026-11-05", 10, 10)}, {}, sided).advice,
            Advice::Ready);
  EXPECT_EQ(advise({made("2026-11-03", 10, 10), made("2026-11-05", 12, 8)}, {}, sided).advice, Advice::Hold);
}

TEST(Progression, sidesInTurnAreCountedInHalves) {
  auto alternating = entry();
  alternating.set_side_policy(v1::SIDE_POLICY_ALTERNATING);
  EXPECT_EQ(advise({practice("2026-11-03", 20), practice("2026-11-05", 20)}, {}, alternating).advice,
            Advice::Ready);
  EXPECT_EQ(advise({practice("2026-11-03", 20), practice("2026-11-05", 19)}, {}, alternating).advice,
            Advice::Hold);
}

TEST(Progression, aGoalBeyondWhatThePhoneLeadsSaysSo) {
  auto out_of_reach = entry();
  out_of_reach.mutable_progression()->set_goal_repetitions(0);  // the dose's 10, and 2 over it
  const auto advice = advise({practice("2026-11-03", 10), practice("2026-11-05", 10)}, {}, out_of_reach);
  EXPECT_EQ(advice.advice, Advice::Hold);
  EXPECT_TRUE(says(advice, "progress.goal-out-of-reach", false));
}

TEST(Progression, inMinutesAndPassesAllOfTheDoseIsTheGoal) {
  auto walk = entry();
  walk.mutable_dose()->mutable_minutes()->set_minutes(10);
  walk.mutable_dose()->mutable_minutes()->set_bouts(2);
  walk.mutable_progression()->set_goal_repetitions(0);
  walk.mutable_progression()->set_repetitions_over_goal(0);
  const auto made = [](const std::string& day, std::uint32_t bouts) {
    auto with = practice(day, 10);
    with.mutable_entries(0)->mutable_asked()->set_repetitions(2);
    with.mutable_entries(0)->mutable_done()->set_repetitions(bouts);
    return with;
  };
  EXPECT_EQ(advise({made("2026-11-03", 2), made("2026-11-05", 2)}, {}, walk).advice, Advice::Ready);
  EXPECT_EQ(advise({made("2026-11-03", 2), made("2026-11-05", 1)}, {}, walk).advice, Advice::Hold);
}

TEST(Progression, whatWasToldLaterIsMarked) {
  auto told = practice("2026-11-05", 12);
  told.set_origin(v1::ORIGIN_TOLD_LATER);
  EXPECT_TRUE(says(advise({practice("2026-11-03", 10), told}), "progress.told-later", false));
}

TEST(Progression, withoutARuleNobodyAsked) {
  auto plain = entry();
  plain.clear_progression();
  const auto advice = advise({practice("2026-11-03", 10), practice("2026-11-05", 10)}, {}, plain);
  EXPECT_EQ(advice.advice, Advice::NoRule);
  EXPECT_TRUE(advice.evidence.empty());
}

TEST(Progression, withoutPracticesHolds) {
  EXPECT_EQ(advise({}).advice, Advice::Hold);
  EXPECT_TRUE(says(advise({}), "progress.no-practice", false));
}

TEST(Progression, errorsSayWhatIsMissing) {
  EXPECT_TRUE(absl::IsInvalidArgument(adviseProgression({}, kEntry, {}, {}).status()));
  const auto none = adviseProgression({programme(1, "2026-11-02", entry())}, "nobody", {}, {});
  EXPECT_TRUE(absl::IsNotFound(none.status()));
}

TEST(Progression, everyKeyItSaysIsListed) {
  const std::set<std::string> keys(progressionKeys().begin(), progressionKeys().end());
  EXPECT_EQ(keys.size(), progressionKeys().size());
  for (const auto& advice : {advise({practice("2026-11-03", 10), tooSore("2026-11-05")},
                                    {occasion("2026-11-06", OccasionResult::State::NoData)}),
                             advise({})}) {
    for (const auto& line : advice.evidence) EXPECT_TRUE(keys.contains(line.key)) << line.key;
  }
}

TEST(ProgressionRule, isCheckedAtTheDoor) {
  auto with = entry();
  with.mutable_schedule()->set_times_per_week(3);
  auto* window = with.mutable_schedule()->add_windows();
  window->set_to_min(1440);
  with.set_prosthesis(v1::PROSTHESIS_USE_ON);
  with.set_pacing(v1::PACING_TIMED);
  with.mutable_dose()->mutable_sets()->set_move_s(3);
  with.mutable_dose()->mutable_sets()->set_return_s(3);
  EXPECT_EQ(std::string(check(with).message()), "");
  auto bad = with;
  bad.mutable_progression()->set_practices(0);
  EXPECT_EQ(std::string(check(bad).message()), "progression.practices: 0 is under 1");
  bad = with;
  bad.mutable_progression()->set_step_back_pain_rise_0_10(1);
  EXPECT_EQ(std::string(check(bad).message()),
            "progression.step_back_pain_rise_0_10: is not over pain_rise_at_most_0_10");
  bad = with;
  bad.mutable_dose()->mutable_minutes()->set_minutes(10);
  bad.mutable_dose()->mutable_minutes()->set_bouts(1);
  EXPECT_EQ(std::string(check(bad).message()),
            "progression.repetitions_over_goal: a goal of repetitions needs a dose in sets");
  with.clear_progression();
  EXPECT_TRUE(check(with).ok()) << "no rule is not an error";
}

TEST(ProgressionPresets, theBuiltInOnesAreTheRuleOfTheTrade) {
  ASSERT_FALSE(progressionPresets().empty());
  const auto found = std::find_if(progressionPresets().begin(), progressionPresets().end(),
                                  [](const auto& preset) { return preset.id() == "two-for-two"; });
  ASSERT_NE(found, progressionPresets().end());
  EXPECT_EQ(found->rule().practices(), 2U);
  EXPECT_EQ(found->rule().repetitions_over_goal(), 2U);
  EXPECT_TRUE(found->rule().nothing_missed());
  for (const auto& preset : progressionPresets()) EXPECT_TRUE(preset.words().contains("es")) << preset.id();
}

TEST(ProgressionPresets, aClinicsOwnIsAFile) {
  const auto folder = std::filesystem::temp_directory_path() / "newel-progression-presets";
  std::filesystem::create_directories(folder);
  const auto write = [&](const std::string& practices) {
    std::ofstream(folder / "slow.textproto")
        << "id: \"slow\"\nrevision: 1\n"
           "words { key: \"en\" value { name: \"Slow\" says: \"Four good practices in a row.\" } }\n"
           "rule {\n  practices: "
        << practices
        << "\n  effort_at_most_0_10: 4\n}\n"
           "sources { kind: SOURCE_KIND_COMMON_PRACTICE text: \"common practice, no source\" }\n";
  };
  write("4");
  const auto presets = loadProgressionPresets(folder.string());
  ASSERT_TRUE(presets.ok()) << presets.status();
  EXPECT_EQ(presets->at(0).rule().practices(), 4U);
  write("40");
  EXPECT_THAT(std::string(loadProgressionPresets(folder.string()).status().message()),
              HasSubstr("slow.textproto:5: rule.practices: 40 is over 10"));
  std::filesystem::remove_all(folder);
}

}  // namespace
}  // namespace newel
