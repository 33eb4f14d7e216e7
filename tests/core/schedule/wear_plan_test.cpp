// The wear plan: schedules as published, days that count, and what the skin has to say.
#include "core/schedule/wear_plan.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>

#include "core/library/catalogue.h"
#include "core/schedule/wear_library.h"
#include "core/time/local_day.h"

namespace newel {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

constexpr char kPerson[] = "017f22e2-79b0-7cc3-98c4-dc0c0c07398f";
const absl::CivilDay kFirst(2026, 11, 2);

// Three good days of 2 x 30 min, then 2 x 60 min a day, an hour off between, 5 min of grace, red for 15 min.
v1::WearPlan plan() {
  v1::WearPlan made;
  made.set_id("017f22e2-79b0-7cc3-98c4-dc0c0c073991");
  made.set_number(1);
  made.set_person_id(kPerson);
  made.set_clinic_id("017f22e2-79b0-7cc3-98c4-dc0c0c073992");
  made.set_signer_id("017f22e2-79b0-7cc3-98c4-dc0c0c073993");
  made.set_signer_name("Demo Therapist");
  made.mutable_issued_at()->set_seconds(1793577600);
  made.set_effective_day("2026-11-02");
  made.set_zone("Europe/Berlin");
  for (const std::uint32_t minutes : {30U, 60U}) {
    auto* step = made.add_steps();
    step->set_days(minutes == 30 ? 3 : 1);
    step->set_blocks(2);
    step->set_block_min(minutes);
  }
  made.set_off_min(60);
  made.set_grace_min(5);
  made.set_redness_min(15);
  made.set_redness_action(v1::REDNESS_ACTION_STAY_OFF);
  return made;
}

// Begins `at_min` after midnight UTC of the day, lasts `minutes`, skin clear.
v1::WearBlock block(absl::CivilDay day, int at_min, int minutes) {
  static int made_so_far = 0;
  v1::WearBlock made;
  char id[37];
  std::snprintf(id, sizeof id, "017f22e2-79b0-7cc3-98c4-%012d", ++made_so_far);
  made.set_id(id);
  made.set_revision(1);
  made.set_person_id(kPerson);
  made.set_local_day(formatLocalDay(day));
  made.set_zone("Europe/Berlin");
  const std::int64_t on = absl::ToUnixSeconds(absl::FromCivil(day, absl::UTCTimeZone())) + at_min * 60;
  made.mutable_put_on_at()->set_seconds(on);
  made.mutable_taken_off_at()->set_seconds(on + minutes * 60);
  made.mutable_check()->add_signs(v1::SKIN_SIGN_CLEAR);
  made.set_origin(v1::ORIGIN_TIMED_HERE);
  return made;
}

v1::WearBlock redBlock(absl::CivilDay day, int at_min, std::uint32_t watched_min, bool gone) {
  auto made = block(day, at_min, 30);
  made.mutable_check()->set_signs(0, v1::SKIN_SIGN_RED);
  made.mutable_check()->mutable_redness()->set_watched_min(watched_min);
  made.mutable_check()->mutable_redness()->set_gone(gone);
  return made;
}

// Two blocks as the first step asks.
std::vector<v1::WearBlock> goodDays(int days) {
  std::vector<v1::WearBlock> blocks;
  for (int i = 0; i < days; ++i) {
    blocks.push_back(block(kFirst + i, 600, 30));
    blocks.push_back(block(kFirst + i, 720, 30));
  }
  return blocks;
}

WearDay on(absl::CivilDay day, const std::vector<v1::WearBlock>& blocks, const v1::WearPlan& by = plan()) {
  const auto answer = wearDay(by, blocks, day);
  EXPECT_TRUE(answer.ok()) << answer.status();
  return answer.value();
}

bool says(const WearDay& day, const std::string& key) {
  return std::any_of(day.reasons.begin(), day.reasons.end(),
                     [&](const EvidenceLine& line) { return line.key == key; });
}

std::vector<double> hoursOfDays(const std::string& example) {
  std::vector<double> hours;
  for (const auto& step : WearLibrary::builtIn().find(example)->steps()) {
    for (std::uint32_t day = 0; day < step.days(); ++day) hours.push_back(plannedMinutes(step) / 60.0);
  }
  return hours;
}

TEST(WearExamples, fastIsTheHospitalsPage) {
  // Shirley Ryan AbilityLab: 1, 2, 4, 8 hours, full day.
  EXPECT_THAT(hoursOfDays("fast"), ElementsAre(1, 2, 4, 8, 24));
  EXPECT_TRUE(WearLibrary::builtIn().find("fast")->steps(4).all_day());
}

TEST(WearExamples, slowIsTheFirstClinicsPage) {
  // Scheck and Siress: 0.5, 1.5, 2.25, 3 h; from day 5 on 15 min more a bout, worked out: 3.75 to 6.75 h.
  EXPECT_THAT(hoursOfDays("slow"), ElementsAre(0.5, 1.5, 2.25, 3, 3.75, 4.5, 5.25, 6, 6.75));
}

TEST(WearExamples, steadyIsTheSecondClinicsPage) {
  // Jaubert Prosthetics: 30 min x 3 for three days, 60 min x 3 for three days, 2 h x 4 for three days.
  EXPECT_THAT(hoursOfDays("steady"), ElementsAre(1.5, 1.5, 1.5, 3, 3, 3, 8, 8, 8));
}

TEST(WearExamples, rednessDefaultIsTheCautiousEndWithThePublishedRangeBesideIt) {
  // Pages say 10 (recalled), 15 to 20, 20 to 30 and 30 minutes; the cautious default is 15 to 20 with stop
  // and call (common practice, no source).
  const auto& setting = WearLibrary::builtIn().redness();
  EXPECT_EQ(setting.default_action(), v1::REDNESS_ACTION_STAY_OFF);
  const v1::SettingKind* minutes = Catalogue::builtIn().setting("redness-minutes");
  ASSERT_NE(minutes, nullptr);
  EXPECT_EQ(minutes->usual(), 15U);
  EXPECT_EQ(minutes->least(), 10U);
  EXPECT_EQ(minutes->most(), 30U);
  EXPECT_EQ(setting.published_size(), 5);
}

TEST(WearExamples, becomePlansWithTheClinicsSetting) {
  const auto& library = WearLibrary::builtIn();
  const auto draft = draftPlan(*library.find("slow"), library.redness(), 15);
  EXPECT_EQ(draft.steps_size(), 9);
  EXPECT_EQ(draft.redness_min(), 15U);
  EXPECT_EQ(draft.redness_action(), v1::REDNESS_ACTION_STAY_OFF);
  EXPECT_EQ(draft.off_min(), 60U);
}

TEST(WearPlan, beginsAtItsFirstStep) {
  const auto day = on(kFirst, {});
  EXPECT_EQ(day.gate, WearGate::Wear);
  EXPECT_EQ(day.step, 0U);
  EXPECT_EQ(day.blocks_left, 2U);
  EXPECT_EQ(day.block_min, 30U);
  EXPECT_EQ(on(kFirst - 1, {}).gate, WearGate::NotBegun);
  auto later = plan();
  later.set_first_step(1);
  EXPECT_EQ(on(kFirst, {}, later).block_min, 60U);
}

TEST(WearPlan, goesUpAfterItsGoodDaysAndNotBefore) {
  EXPECT_EQ(on(kFirst + 2, goodDays(2)).step, 0U);
  EXPECT_EQ(on(kFirst + 2, goodDays(2)).good_days, 2U);
  const auto up = on(kFirst + 3, goodDays(3));
  EXPECT_EQ(up.step, 1U);
  EXPECT_EQ(up.good_days, 0U);
  EXPECT_EQ(up.block_min, 60U);
  // The third good day itself is still the first step.
  EXPECT_EQ(on(kFirst + 2, goodDays(3)).step, 0U);
}

TEST(WearPlan, daysWithoutWearNeitherCountNorThrowBack) {
  const auto day = on(kFirst + 10, goodDays(2));
  EXPECT_EQ(day.step, 0U);
  EXPECT_EQ(day.good_days, 2U);
  EXPECT_EQ(day.gate, WearGate::Wear);
  EXPECT_TRUE(says(day, "wear.not-worn"));
}

TEST(WearPlan, staysAtItsLastStep) {
  auto one = plan();
  one.mutable_steps()->RemoveLast();
  const auto day = on(kFirst + 5, goodDays(5), one);
  EXPECT_EQ(day.step, 0U);
  EXPECT_EQ(day.good_days, 5U);
}

TEST(WearPlan, aDayThatWasNotLookedAtDoesNotCount) {
  auto blocks = goodDays(3);
  blocks[4].clear_check();  // the first of the third day
  const auto day = on(kFirst + 3, blocks);
  EXPECT_EQ(day.step, 0U);
  EXPECT_EQ(day.good_days, 2U);
  EXPECT_TRUE(says(day, "wear.not-looked"));
}

TEST(WearPlan, noNextBlockBeforeTheSkinWasLookedAt) {
  auto first = block(kFirst, 600, 30);
  first.clear_check();
  const auto day = on(kFirst, {first});
  EXPECT_EQ(day.gate, WearGate::LookFirst);
  EXPECT_EQ(day.blocks_left, 0U);
  first.mutable_check()->add_signs(v1::SKIN_SIGN_RED);
  EXPECT_EQ(on(kFirst, {first}).gate, WearGate::LookFirst) << "red, and still being watched";
  first.mutable_check()->mutable_redness()->set_watched_min(10);
  first.mutable_check()->mutable_redness()->set_gone(true);
  EXPECT_EQ(on(kFirst, {first}).gate, WearGate::Wear);
  EXPECT_EQ(on(kFirst, {first}).blocks_left, 1U);
}

TEST(WearPlan, redWithinTheMinutesIsFineAndAfterThemIsNot) {
  // Limit 15. Gone at 15 is within; still red at 15 is not; gone only at 16 was too long; red at 14 is open.
  EXPECT_EQ(skinVerdict(redBlock(kFirst, 600, 15, true), plan()), SkinVerdict::Clear);
  EXPECT_EQ(skinVerdict(redBlock(kFirst, 600, 16, true), plan()), SkinVerdict::TooRed);
  EXPECT_EQ(skinVerdict(redBlock(kFirst, 600, 15, false), plan()), SkinVerdict::TooRed);
  EXPECT_EQ(skinVerdict(redBlock(kFirst, 600, 14, false), plan()), SkinVerdict::Watching);
}

TEST(WearPlan, theClinicsMinutesCount) {
  auto patient = plan();
  patient.set_redness_min(30);
  EXPECT_EQ(skinVerdict(redBlock(kFirst, 600, 25, true), patient), SkinVerdict::Clear);
  EXPECT_EQ(skinVerdict(redBlock(kFirst, 600, 25, true), plan()), SkinVerdict::TooRed);
}

TEST(WearPlan, redAfterTheMinutesMeansNoIncreaseAndACall) {
  auto blocks = goodDays(2);
  blocks.push_back(redBlock(kFirst + 2, 600, 20, false));
  const auto same_day = on(kFirst + 2, blocks);
  EXPECT_EQ(same_day.gate, WearGate::StayOff);
  EXPECT_TRUE(same_day.call_clinic);
  EXPECT_TRUE(says(same_day, "wear.too-red"));
  EXPECT_EQ(same_day.blocks_left, 0U);
  EXPECT_EQ(on(kFirst + 9, blocks).step, 0U);
  EXPECT_TRUE(on(kFirst + 9, blocks).call_clinic) << "it stands until the clinic's next plan";
}

TEST(WearPlan, whereTheClinicSaysSoRedLeavesTheSameStep) {
  auto same = plan();
  same.set_redness_action(v1::REDNESS_ACTION_SAME_STEP);
  auto blocks = goodDays(2);
  blocks.push_back(redBlock(kFirst + 2, 600, 20, false));
  // Ten good days after it change nothing: only the clinic's word does.
  for (int i = 3; i < 13; ++i) {
    blocks.push_back(block(kFirst + i, 600, 30));
    blocks.push_back(block(kFirst + i, 720, 30));
  }
  const auto day = on(kFirst + 13, blocks, same);
  EXPECT_EQ(day.gate, WearGate::NoIncrease);
  EXPECT_TRUE(day.call_clinic);
  EXPECT_EQ(day.step, 0U);
  EXPECT_EQ(day.blocks_left, 2U);
}

TEST(WearPlan, everySignOfHarmMeansStayOffAndACallWhateverTheClinicSaysOfRedness) {
  auto same = plan();
  same.set_redness_action(v1::REDNESS_ACTION_SAME_STEP);
  for (int sign = v1::SKIN_SIGN_OPEN_SKIN; sign <= v1::SkinSign_MAX; ++sign) {
    auto hurt = block(kFirst, 600, 30);
    hurt.mutable_check()->set_signs(0, static_cast<v1::SkinSign>(sign));
    const auto day = on(kFirst + 1, {hurt}, same);
    EXPECT_EQ(day.gate, WearGate::StayOff) << v1::SkinSign_Name(sign);
    EXPECT_TRUE(day.call_clinic);
    EXPECT_TRUE(says(day, "wear.harm"));
  }
}

TEST(WearPlan, harmSeenAfterRednessOutranksIt) {
  auto same = plan();
  same.set_redness_action(v1::REDNESS_ACTION_SAME_STEP);
  auto blistered = block(kFirst + 1, 600, 30);
  blistered.mutable_check()->set_signs(0, v1::SKIN_SIGN_BLISTER);
  EXPECT_EQ(on(kFirst + 2, {redBlock(kFirst, 600, 20, false), blistered}, same).gate, WearGate::StayOff);
}

TEST(WearPlan, aNewPlanBeginsFresh) {
  auto next = plan();
  next.set_number(2);
  next.set_effective_day("2026-11-05");
  const auto day = on(kFirst + 3, {redBlock(kFirst + 2, 600, 20, false)}, next);
  EXPECT_EQ(day.gate, WearGate::Wear);
  EXPECT_FALSE(day.call_clinic);
}

TEST(WearPlan, theHighestNumberInForceCounts) {
  auto second = plan();
  second.set_number(2);
  second.set_effective_day("2026-11-05");
  const std::vector<v1::WearPlan> plans = {second, plan()};
  EXPECT_EQ(planInForce(plans, kFirst - 1), nullptr);
  EXPECT_EQ(planInForce(plans, kFirst + 2)->number(), 1U);
  EXPECT_EQ(planInForce(plans, kFirst + 3)->number(), 2U);
}

TEST(WearPlan, tooMuchTooLittleAndShortBreaksDoNotCount) {
  const auto reasonOf = [](const std::vector<v1::WearBlock>& blocks) {
    const auto day = on(kFirst + 1, blocks);
    EXPECT_EQ(day.good_days, 0U);
    EXPECT_EQ(day.gate, WearGate::Wear) << "it slows the plan, it does not end it";
    return day.reasons.back().key;
  };
  EXPECT_EQ(reasonOf({block(kFirst, 600, 40), block(kFirst, 720, 20)}), "wear.block-too-long");
  EXPECT_EQ(reasonOf({block(kFirst, 600, 30), block(kFirst, 720, 30), block(kFirst, 840, 30)}),
            "wear.too-much");
  EXPECT_EQ(reasonOf({block(kFirst, 600, 30)}), "wear.too-little");
  EXPECT_EQ(reasonOf({block(kFirst, 600, 30), block(kFirst, 680, 30)}), "wear.short-break") << "50 min off";
}

TEST(WearPlan, graceIsGranted) {
  // 35 + 25 minutes, 55 minutes off: each within 5 minutes of the plan.
  EXPECT_EQ(on(kFirst + 1, {block(kFirst, 600, 35), block(kFirst, 690, 25)}).good_days, 1U);
  EXPECT_EQ(on(kFirst + 1, {block(kFirst, 600, 36), block(kFirst, 690, 25)}).good_days, 0U);
}

TEST(WearPlan, countsWhatIsLeftOfToday) {
  const auto one = on(kFirst, {block(kFirst, 600, 30)});
  EXPECT_EQ(one.blocks_worn, 1U);
  EXPECT_EQ(one.worn_min, 30U);
  EXPECT_EQ(one.blocks_left, 1U);
  const auto two = on(kFirst, goodDays(1));
  EXPECT_EQ(two.blocks_left, 0U);
  EXPECT_TRUE(says(two, "wear.done-today"));
  // 50 of 60 minutes are gone: the second block is the rest.
  EXPECT_EQ(on(kFirst, {block(kFirst, 600, 50)}).block_min, 10U);
}

TEST(WearPlan, aBlockThatIsStillOn) {
  auto now = block(kFirst, 600, 0);
  now.clear_taken_off_at();
  now.clear_check();
  const auto day = on(kFirst, {now});
  EXPECT_TRUE(day.wearing);
  EXPECT_EQ(day.gate, WearGate::Wear);
  EXPECT_EQ(day.blocks_left, 1U);
  // Forgotten in the log: its end and its skin come first.
  const auto next = on(kFirst + 1, {now});
  EXPECT_FALSE(next.wearing);
  EXPECT_EQ(next.gate, WearGate::LookFirst);
  EXPECT_EQ(next.good_days, 0U);
}

TEST(WearPlan, theLastStepMayHaveNoLimit) {
  auto open = plan();
  open.mutable_steps(0)->set_days(1);
  open.mutable_steps(1)->set_all_day(true);
  const auto day = on(kFirst + 1, goodDays(1), open);
  EXPECT_EQ(day.step, 1U);
  EXPECT_EQ(day.blocks_left, 1U);
  EXPECT_EQ(day.block_min, 0U);
  EXPECT_EQ(
      on(kFirst + 2, {block(kFirst, 600, 30), block(kFirst, 720, 30), block(kFirst + 1, 480, 700)}, open)
          .good_days,
      1U);
}

TEST(WearPlan, theLastRevisionOfABlockCounts) {
  auto first = block(kFirst, 600, 30);
  auto mended = first;
  mended.set_revision(2);
  mended.mutable_check()->set_signs(0, v1::SKIN_SIGN_BLISTER);
  EXPECT_EQ(on(kFirst, {mended, first}).gate, WearGate::StayOff);
}

TEST(WearPlan, otherPeoplesBlocksAndTomorrowsAreNotSeen) {
  auto other = redBlock(kFirst, 600, 20, false);
  other.set_person_id("017f22e2-79b0-7cc3-98c4-dc0c0c07399a");
  EXPECT_EQ(on(kFirst, {other}).blocks_worn, 0U);
  EXPECT_FALSE(on(kFirst, {other}).call_clinic);
  EXPECT_FALSE(on(kFirst, {redBlock(kFirst + 1, 600, 20, false)}).call_clinic);
}

TEST(WearPlan, theOrderOfBlocksIsNoMatter) {
  auto blocks = goodDays(3);
  std::reverse(blocks.begin(), blocks.end());
  EXPECT_EQ(on(kFirst + 3, blocks).step, 1U);
}

TEST(WearPlan, daysAcrossTheChangeOfTheClocksAreDays) {
  // Europe/Berlin leaves summer time on 2026-10-25; a day stays a day.
  auto october = plan();
  october.set_effective_day("2026-10-24");
  std::vector<v1::WearBlock> blocks;
  for (int i = 0; i < 3; ++i) {
    blocks.push_back(block(absl::CivilDay(2026, 10, 24) + i, 600, 30));
    blocks.push_back(block(absl::CivilDay(2026, 10, 24) + i, 720, 30));
  }
  EXPECT_EQ(on(absl::CivilDay(2026, 10, 27), blocks, october).step, 1U);
}

TEST(WearPlan, badRecordsAreNamed) {
  auto bad = plan();
  bad.set_redness_min(0);
  EXPECT_EQ(std::string(wearDay(bad, {}, kFirst).status().message()), "redness_min: 0 is under 5");
  bad = plan();
  bad.mutable_steps(0)->set_all_day(true);
  EXPECT_THAT(std::string(wearDay(bad, {}, kFirst).status().message()), HasSubstr("steps[0].all_day"));
  bad = plan();
  bad.set_first_step(2);
  EXPECT_THAT(std::string(wearDay(bad, {}, kFirst).status().message()), HasSubstr("first_step"));
  auto odd = block(kFirst, 600, 30);
  odd.mutable_check()->add_signs(v1::SKIN_SIGN_BLISTER);
  EXPECT_EQ(std::string(wearDay(plan(), {block(kFirst, 500, 30), odd}, kFirst).status().message()),
            "blocks[1]: check.signs: clear stands alone");
  odd = block(kFirst, 600, -5);
  EXPECT_THAT(std::string(wearDay(plan(), {odd}, kFirst).status().message()),
              HasSubstr("taken_off_at: is before put_on_at"));
  odd = block(kFirst, 600, 30);
  odd.mutable_check()->clear_signs();
  EXPECT_THAT(std::string(wearDay(plan(), {odd}, kFirst).status().message()),
              HasSubstr("check.signs: is missing"));
}

TEST(WearPlan, everyKeyItSaysIsListed) {
  const std::set<std::string> keys(wearKeys().begin(), wearKeys().end());
  EXPECT_EQ(keys.size(), wearKeys().size());
  auto unlooked = block(kFirst + 1, 600, 30);
  unlooked.clear_check();
  for (const auto& day : {on(kFirst - 1, {}), on(kFirst, goodDays(1)), on(kFirst + 1, goodDays(1)),
                          on(kFirst + 2, {unlooked}), on(kFirst + 2, {redBlock(kFirst, 600, 20, false)})}) {
    for (const auto& line : day.reasons) EXPECT_TRUE(keys.contains(line.key)) << line.key;
  }
}

// However a person wears it, no order of blocks ever makes the step grow without the days it asks for, and
// after a sign nothing grows.
TEST(WearPlan, neverGrowsFasterThanItsDays) {
  std::uint32_t seed = 20261125;
  const auto next = [&](std::uint32_t below) {
    seed = seed * 1664525U + 1013904223U;
    return (seed >> 8U) % below;
  };
  for (int run = 0; run < 200; ++run) {
    std::vector<v1::WearBlock> blocks;
    for (int day = 0; day < 12; ++day) {
      for (std::uint32_t n = next(4); n > 0; --n) {
        auto made = block(kFirst + day, static_cast<int>(480 + 100 * n), static_cast<int>(10 + next(60)));
        if (next(6) == 0) made.clear_check();
        if (next(20) == 0)
          made.mutable_check()->Clear(), made.mutable_check()->add_signs(v1::SKIN_SIGN_BLISTER);
        blocks.push_back(made);
      }
    }
    std::size_t last_step = 0;
    bool called = false;
    for (int day = 0; day < 13; ++day) {
      const auto answer = on(kFirst + day, blocks);
      EXPECT_LE(answer.step, static_cast<std::size_t>(day / 3)) << "run " << run;
      EXPECT_LE(answer.step, last_step + 1) << "run " << run;
      if (called) {
        EXPECT_TRUE(answer.call_clinic);
        EXPECT_EQ(answer.step, last_step) << "run " << run;
        EXPECT_EQ(answer.blocks_left, 0U);
      }
      last_step = answer.step;
      called = answer.call_clinic;
    }
  }
}

TEST(WearLibrary, aClinicsOwnScheduleIsAFile) {
  const auto folder = std::filesystem::temp_directory_path() / "newel-wear-library";
  std::filesystem::create_directories(folder);
  const std::filesystem::path data = std::filesystem::path(NEWEL_SOURCE_DIR) / "core/schedule/wear";
  std::filesystem::copy_file(data / "redness.textproto", folder / "redness.textproto",
                             std::filesystem::copy_options::overwrite_existing);
  const auto write = [&](const std::string& minutes) {
    std::ofstream(folder / "own.textproto")
        << "examples {\n  id: \"own\"\n  revision: 1\n"
           "  words { key: \"en\" value { name: \"Own\" when: \"Always.\" } }\n"
           "  steps { days: 2 blocks: 2 block_min: "
        << minutes
        << " }\n"
           "  sources { kind: SOURCE_KIND_COMMON_PRACTICE text: \"common practice, no source\" }\n}\n";
  };
  write("20");
  const auto library = WearLibrary::load(folder.string());
  ASSERT_TRUE(library.ok()) << library.status();
  ASSERT_NE(library->find("own"), nullptr);
  EXPECT_EQ(plannedMinutes(library->find("own")->steps(0)), 40U);
  write("4");
  EXPECT_THAT(std::string(WearLibrary::load(folder.string()).status().message()),
              HasSubstr("own.textproto:5: examples[0].steps[0].block_min: 4 is under 5"));
  std::filesystem::remove(folder / "own.textproto");
  std::filesystem::copy_file(data / "redness.textproto", folder / "second.textproto",
                             std::filesystem::copy_options::overwrite_existing);
  EXPECT_THAT(std::string(WearLibrary::load(folder.string()).status().message()),
              HasSubstr("second.textproto:1: redness: is given twice"));
  std::filesystem::remove_all(folder);
}

TEST(WearLibrary, isInEnglishAndSpanish) {
  for (const auto& example : WearLibrary::builtIn().examples()) {
    EXPECT_TRUE(example.words().contains("es")) << example.id();
  }
}

}  // namespace
}  // namespace newel
