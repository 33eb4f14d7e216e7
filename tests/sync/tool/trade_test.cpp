// The command line over measures, load, wear, progression, the reporting template, catalogue and sources.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/wait.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>

#include "core/library/catalogue.h"
#include "core/progress/progression.h"
#include "core/review/cert.h"
#include "core/schedule/wear_plan.h"
#include "sync/tool/everyone.h"
#include "sync/tool/evidence_words.h"
#include "sync/tool/tool_io.h"
#include "sync/tool/trade_commands.h"

namespace newel::tool {
namespace {

using nlohmann::json;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

constexpr char kPersonId[] = "017f22e2-79b0-7cc3-98c4-dc0c0c07398f";
constexpr char kEntryId[] = "017f22e2-79b0-7cc3-98c4-dc0c0c073990";

class Trade : public testing::Test {
 protected:
  void SetUp() override {
    m_folder = std::filesystem::temp_directory_path() /
               ("newel-trade-" + std::string(testing::UnitTest::GetInstance()->current_test_info()->name()));
    std::filesystem::create_directories(m_folder);
  }
  void TearDown() override { std::filesystem::remove_all(m_folder); }

  std::string file(const std::string& name, const std::string& text) {
    std::ofstream(m_folder / name) << text;
    return (m_folder / name).string();
  }
  std::string data(const std::string& name) const {
    return std::string(NEWEL_SOURCE_DIR) + "/tests/data/progress/" + name;
  }
  Output output(bool as_json = false) {
    m_out.str("");
    m_err.str("");
    return {m_out, m_err, as_json};
  }
  json read() const { return json::parse(m_out.str()); }
  std::string out() const { return m_out.str(); }
  std::string err() const { return m_err.str(); }

  std::filesystem::path m_folder;
  std::ostringstream m_out, m_err;
};

TEST_F(Trade, measureChangeAnswersWithItsNumbers) {
  // From memory: Resnik and Borgia 2011, 3.6 s; Sawers and others 2020 (abstract), 0.91 to 2.2 s.
  ASSERT_EQ(runMeasureChange("", "timed-up-and-go", 12, 8, 90, output()), kFine) << err();
  EXPECT_THAT(out(), StartsWith("changed by -4 s (better); beyond measurement error: yes\n"));
  EXPECT_THAT(out(), HasSubstr("MDC90 3.60: yes"));
  EXPECT_THAT(out(), HasSubstr("from memory: Resnik and Borgia 2011"));
  ASSERT_EQ(runMeasureChange("", "timed-up-and-go", 12, 9, 90, output(true)), kFine);
  EXPECT_EQ(read()["beyond_error"], "cannot tell");
  EXPECT_EQ(read()["why"], "the sources differ");
  EXPECT_EQ(read()["known"].size(), 2U);
  EXPECT_EQ(read()["from_memory"], true);
}

TEST_F(Trade, measureRefusesWhatIsNoValueOfIt) {
  EXPECT_EQ(runMeasureChange("", "timed-up-and-go", 12, 0.5, 90, output()), kBadInput);
  EXPECT_EQ(err(), "newel: 0.5 is not between 3 and 300 s\n");
  EXPECT_EQ(runMeasureChange("", "headstand", 1, 2, 90, output()), kBadInput);
  EXPECT_THAT(err(), HasSubstr("\"headstand\" is none of five-times-sit-to-stand, "));
  EXPECT_EQ(runMeasureChange("", "l-test", 20, 30, 80, output()), kBadInput);
  EXPECT_THAT(err(), HasSubstr("--sure"));
}

TEST_F(Trade, measureErrorComputesTheFormulas) {
  // Sawers and others 2020: SEM 0.39 s gives MDC90 0.91 s.
  ASSERT_EQ(runMeasureError(0.39, 0, -1, output(true)), kFine);
  EXPECT_NEAR(read()["detectable_90"].get<double>(), 0.91, 0.005);
  ASSERT_EQ(runMeasureError(0, 10, 0.84, output(true)), kFine);
  EXPECT_NEAR(read()["standard_error"].get<double>(), 4, 1e-9);
  EXPECT_EQ(runMeasureError(0, 10, 1.2, output()), kBadInput);
}

TEST_F(Trade, measureSymmetryMatchesThePublishedTable) {
  // Omics International 2329-9096-2-201, table 1: index 43.75, 38.38, 23.81 %.
  ASSERT_EQ(runMeasureSymmetry({0.39, 0.25, 0.59, 0.40, 0.47, 0.37}, output(true)), kFine);
  EXPECT_NEAR(read()["pairs"][0]["index_percent"].get<double>(), 43.75, 0.005);
  EXPECT_NEAR(read()["pairs"][1]["index_percent"].get<double>(), 38.38, 0.005);
  EXPECT_NEAR(read()["pairs"][2]["index_percent"].get<double>(), 23.81, 0.005);
  EXPECT_NEAR(read()["mean_index_size_percent"].get<double>(), 35.31, 0.01);
  EXPECT_EQ(runMeasureSymmetry({0.39}, output()), kBadInput);
  EXPECT_EQ(runMeasureSymmetry({0.39, 0}, output()), kBadInput);
}

std::string measureText(const std::string& day, int day_number, double value) {
  return "id: \"017f22e2-79b0-7cc3-98c4-dc0c0c07399" + std::to_string(day_number) +
         "\" revision: 1 person_id: \"" + kPersonId +
         "\" kind: \"two-minute-walk\" value: " + std::to_string(value) +
         " unit: \"m\" taken_at { seconds: " + std::to_string(1764000000 + day_number) + " } local_day: \"" +
         day + "\"";
}

TEST_F(Trade, measureReadComparesTheLastWithTheFirst) {
  const auto last = file("last", measureText("2026-11-20", 2, 140));
  const auto first = file("first", measureText("2026-09-01", 1, 100));
  ASSERT_EQ(runMeasureRead("", {last, first}, output(true)), kFine) << err();
  EXPECT_EQ(read()[0]["values"][0]["value"], 100.0);
  EXPECT_EQ(read()[0]["change"]["difference"], 40.0);
  EXPECT_EQ(read()[0]["change"]["beyond_error"], "yes") << "over 34.3 m";
  ASSERT_EQ(runMeasureRead("", {last, first}, output()), kFine);
  EXPECT_THAT(out(), HasSubstr("2-minute walk"));
  std::string wrong = measureText("2026-11-20", 2, 900);
  EXPECT_EQ(runMeasureRead("", {file("wrong", wrong)}, output()), kSaysNo);
  EXPECT_THAT(err(), HasSubstr("value: 900 is not between 0 and 400"));
}

TEST_F(Trade, measureOfAClinicsFolder) {
  std::filesystem::create_directories(m_folder / "own");
  file(
      "own/stair-climb.textproto",
      "id: \"stair-climb\" revision: 1 words { key: \"en\" value { name: \"Stair climb\" protocol: \"One "
      "flight "
      "up and down.\" } } unit: \"s\" better: MEASURE_DIRECTION_LOWER_IS_BETTER least: 1 most: 600 decimals: "
      "1 "
      "errors { population: \"made up\" standard_error { low: 2 } source { kind: SOURCE_KIND_COMMON_PRACTICE "
      "text: \"common practice, no source\" } } sources { kind: SOURCE_KIND_COMMON_PRACTICE text: \"common "
      "practice, no source\" }");
  const std::string folder = (m_folder / "own").string();
  ASSERT_EQ(runMeasureChange(folder, "stair-climb", 30, 25, 90, output(true)), kFine) << err();
  EXPECT_EQ(read()["beyond_error"], "yes");
  ASSERT_EQ(runMeasureList(folder, "en", output()), kFine);
  EXPECT_THAT(out(), HasSubstr("stair-climb"));
  EXPECT_THAT(out(), HasSubstr("timed-up-and-go"));
}

TEST_F(Trade, loadOfTheWorkedWeek) {
  // Daily loads 60 0 45 0 80 30 0, by hand: 215, 1.022, 219.7.
  ASSERT_EQ(runLoad({{60, 0, 45, 0, 80, 30, 0}, "", {}, "", ""}, output(true)), kFine);
  EXPECT_EQ(read()["sum"], 215.0);
  EXPECT_NEAR(read()["monotony"].get<double>(), 1.022, 0.0005);
  EXPECT_NEAR(read()["strain"].get<double>(), 219.7, 0.05);
  // The same from a file of effort and minutes.
  ASSERT_EQ(runLoad({{}, data("home_week.tsv"), {}, "2026-11-02", "2026-11-08"}, output(true)), kFine)
      << err();
  EXPECT_NEAR(read()[0]["monotony"].get<double>(), 1.022, 0.0005);
  EXPECT_EQ(read()[0]["days"], json::parse("[60, 0, 45, 0, 80, 30, 0]"));
  // Without days named the week ends with its last practice and is not whole.
  ASSERT_EQ(runLoad({{}, data("home_week.tsv"), {}, "", ""}, output(true)), kFine);
  EXPECT_TRUE(read()[0]["monotony"].is_null());
}

TEST_F(Trade, loadOfThePublishedWeekIsOursNotThePrinted) {
  // Foster 2001, table 5: 3400 and 1.26 are printed; rating x minutes over days gives 3780 and 1.3069.
  ASSERT_EQ(runLoad({{}, data("foster_2001_table_5.tsv"), {}, "", ""}, output(true)), kFine) << err();
  EXPECT_EQ(read()[0]["sum"], 3780.0);
  EXPECT_NEAR(read()[0]["monotony"].get<double>(), 1.3069, 0.00005);
  ASSERT_EQ(runLoad({{940, 50, 840, 280, 180, 390, 50, 390, 280}, "", {}, "", ""}, output(true)), kFine);
  EXPECT_NEAR(read()["monotony"].get<double>(), 1.2646, 0.00005) << "the printed 1.26, from nine entries";
}

TEST_F(Trade, loadOfEqualDaysHasNoMonotony) {
  ASSERT_EQ(runLoad({{30, 30, 30, 30, 30, 30, 30}, "", {}, "", ""}, output(true)), kFine);
  EXPECT_TRUE(read()["monotony"].is_null());
  ASSERT_EQ(runLoad({{30, 30, 30, 30, 30, 30, 30}, "", {}, "", ""}, output()), kFine);
  EXPECT_THAT(out(), HasSubstr("-  "));
}

TEST_F(Trade, loadNamesTheLineThatIsWrong) {
  EXPECT_EQ(runLoad({{}, file("loads", "2026-11-02 3 20\n2026-11-03 12 20\n"), {}, "", ""}, output()),
            kBadInput);
  EXPECT_THAT(err(), HasSubstr("loads:2: effort is not 0 to 10"));
  EXPECT_EQ(runLoad({{}, file("loads", "2026-11-02 3\n"), {}, "", ""}, output()), kBadInput);
  EXPECT_EQ(runLoad({{1}, file("loads", ""), {}, "", ""}, output()), kBadInput) << "two at once";
}

std::string practiceText(const std::string& day, int number, const std::string& last_set, int pain_after) {
  const std::string count = "repetitions: 30 active_ms: 180000";
  std::string sets;
  for (int set = 1; set <= 3; ++set) {
    sets += "sets { set: " + std::to_string(set) + " done { repetitions: " + (set == 3 ? last_set : "10") +
            " active_ms: 60000 } } ";
  }
  return "id: \"017f22e2-79b0-7cc3-98c4-dc0c0c0739a" + std::to_string(number) +
         "\" revision: 1 person_id: \"" + kPersonId +
         "\" programme_number: 1 zone: \"Europe/Berlin\" local_day: \"" + day +
         "\" started_at { seconds: " + std::to_string(1764000000 + number * 86400) +
         " } ended_at { seconds: " + std::to_string(1764000600 + number * 86400) +
         " } elapsed_ms: 300000 end: PRACTICE_END_FINISHED origin: ORIGIN_TIMED_HERE app_version: \"1\" "
         "entries { occasion { entry_id: \"" +
         kEntryId + "\" local_day: \"" + day + "\" } exercise_id: \"sit-to-stand\" exercise_revision: 1 " +
         sets + "asked { " + count + " } done { " + count +
         " } pain_before_0_10: 1 pain_after_0_10: " + std::to_string(pain_after) +
         " effort_0_10: 5 elapsed_ms: 300000 }";
}

std::string programmeText() {
  return R"(id: "017f22e2-79b0-7cc3-98c4-dc0c0c073991" number: 1 person_id: ")" + std::string(kPersonId) +
         R"(" clinic_id: "017f22e2-79b0-7cc3-98c4-dc0c0c073992" signer_id: "017f22e2-79b0-7cc3-98c4-dc0c0c073993"
    signer_name: "Demo Therapist" issued_at { seconds: 1764000000 } effective_day: "2026-11-02"
    end_day: "2026-11-29" zone: "Europe/Berlin" thresholds { pain_stop_0_10: 5 pain_rise_0_10: 2 }
    entries { id: ")" +
         kEntryId + R"(" exercise_id: "sit-to-stand" exercise_revision: 1
      side_policy: SIDE_POLICY_WHOLE_BODY support: SUPPORT_TWO_HANDS prosthesis: PROSTHESIS_USE_ON
      dose { sets { sets: 3 repetitions: 10 move_s: 3 return_s: 3 rest_s: 60 } } pacing: PACING_TIMED
      schedule { weekdays { days: WEEKDAY_MONDAY days: WEEKDAY_THURSDAY } windows { from_min: 480 to_min: 720 } }
      progression { practices: 2 goal_repetitions: 8 repetitions_over_goal: 2 effort_at_most_0_10: 5
        pain_rise_at_most_0_10: 1 nothing_missed: true step_back_practices: 2 step_back_pain_rise_0_10: 2 } })";
}

TEST_F(Trade, progressSaysReadyWithItsEvidence) {
  // Two over the goal of eight in the last set, twice: Baechle and Earle, as quoted by strength handouts.
  ProgressOptions options;
  options.programmes = {file("programme", programmeText())};
  options.practices = {file("one", practiceText("2026-11-02", 1, "10", 2)),
                       file("two", practiceText("2026-11-05", 2, "10", 2))};
  options.from = "2026-11-02";
  options.to = "2026-11-08";
  ASSERT_EQ(runProgress(options, output(true)), kFine) << err();
  EXPECT_EQ(read()[0]["advice"], "ready");
  EXPECT_EQ(read()[0]["good_in_a_row"], 2);
  ASSERT_EQ(runProgress(options, output()), kFine);
  EXPECT_THAT(out(), StartsWith("sit-to-stand: ready\n"));
  EXPECT_THAT(out(), HasSubstr("10 in the last set, goal 8 and 2 over"));
  EXPECT_THAT(out(), HasSubstr("a dose changes with a therapist's signature"));
  // Monday 9 November was missed.
  options.to = "2026-11-10";
  ASSERT_EQ(runProgress(options, output()), kFine);
  EXPECT_THAT(out(), HasSubstr("2026-11-09: missed"));
  EXPECT_THAT(out(), StartsWith("sit-to-stand: hold\n"));
}

TEST_F(Trade, progressSaysStepBack) {
  ProgressOptions options;
  options.programmes = {file("programme", programmeText())};
  options.practices = {file("one", practiceText("2026-11-02", 1, "10", 3)),
                       file("two", practiceText("2026-11-05", 2, "10", 4))};
  ASSERT_EQ(runProgress(options, output(true)), kFine) << err();
  EXPECT_EQ(read()[0]["advice"], "step back");
  EXPECT_EQ(read()[0]["pain"]["ratings"].size(), 2U);
}

TEST_F(Trade, loadOfPracticesIsEffortTimesMinutes) {
  // Effort 5 over 5 minutes twice.
  const LoadOptions options = {{},
                               "",
                               {file("one", practiceText("2026-11-02", 1, "10", 2)),
                                file("two", practiceText("2026-11-05", 2, "10", 2))},
                               "2026-11-02",
                               "2026-11-08"};
  ASSERT_EQ(runLoad(options, output(true)), kFine) << err();
  EXPECT_EQ(read()[0]["days"], json::parse("[25, 0, 0, 25, 0, 0, 0]"));
}

std::string planText() {
  return R"(id: "017f22e2-79b0-7cc3-98c4-dc0c0c0739b1" number: 1 person_id: ")" + std::string(kPersonId) +
         R"(" clinic_id: "017f22e2-79b0-7cc3-98c4-dc0c0c073992" signer_id: "017f22e2-79b0-7cc3-98c4-dc0c0c073993"
    signer_name: "Demo Therapist" issued_at { seconds: 1764000000 } effective_day: "2026-11-02"
    zone: "Europe/Berlin" steps { days: 1 blocks: 1 block_min: 30 } steps { days: 1 blocks: 1 block_min: 60 }
    grace_min: 5 redness_min: 15 redness_action: REDNESS_ACTION_STAY_OFF)";
}

std::string blockText(int number, const std::string& day, int day_start_s, const std::string& check) {
  return "blocks { id: \"017f22e2-79b0-7cc3-98c4-dc0c0c0739c" + std::to_string(number) +
         "\" revision: 1 person_id: \"" + kPersonId + "\" local_day: \"" + day +
         "\" zone: \"Europe/Berlin\" put_on_at { seconds: " + std::to_string(1793606400 + day_start_s) +
         " } taken_off_at { seconds: " + std::to_string(1793606400 + day_start_s + 1800) + " } check { " +
         check + " } origin: ORIGIN_TIMED_HERE } ";
}

TEST_F(Trade, wearDaysGoUpWhereTheSkinIsClearAndStopWhereItIsRed) {
  const auto plan = file("plan", planText());
  const auto log = file("log", blockText(1, "2026-11-02", 0, "signs: SKIN_SIGN_CLEAR") +
                                   blockText(2, "2026-11-03", 86400,
                                             "signs: SKIN_SIGN_RED redness { watched_min: 15 gone: false }"));
  ASSERT_EQ(runWearDays(plan, {log}, "2026-11-02", "2026-11-04", output(true)), kSaysNo) << err();
  EXPECT_EQ(read()[0]["gate"], "wear");
  EXPECT_EQ(read()[1]["step"], 2) << "a good day, and the next step";
  EXPECT_EQ(read()[2]["gate"], "stay-off");
  EXPECT_EQ(read()[2]["call_clinic"], true);
  ASSERT_EQ(runWearDays(plan, {}, "2026-11-02", "2026-11-02", output()), kFine);
  EXPECT_THAT(out(), HasSubstr("30 min"));
  EXPECT_EQ(runWearDays(plan, {}, "2026-11-02", "2026-11-01", output()), kBadInput);
}

TEST_F(Trade, wearExamplesAndDrafts) {
  ASSERT_EQ(runWearExamples("", "en", output()), kFine);
  EXPECT_THAT(out(), HasSubstr("redness: 15 min unless the clinic sets 10 to 30"));
  ASSERT_EQ(runWearDraft("", "slow", output(true)), kFine);
  EXPECT_EQ(read()["steps"].size(), 9U);
  EXPECT_EQ(read()["redness_min"], 15);
  EXPECT_EQ(runWearDraft("", "quick", output()), kBadInput);
  EXPECT_THAT(err(), HasSubstr("none of fast, slow, steady"));
}

constexpr char kPerson[] = R"(
  id: "017f22e2-79b0-7cc3-98c4-dc0c0c07398f"
  limbs { side: SIDE_LEFT level: LIMB_LOSS_LEVEL_TRANSFEMORAL knee: KNEE_KIND_MECHANICAL
    foot: FOOT_KIND_FIXED_ANKLE has_prosthesis: true }
  mobility: MOBILITY_LEVEL_K2 walking_aid: WALKING_AID_ONE_CANE
  home { rails: RAILS_BOTH ramp: ANSWER_NO sturdy_chairs: 2 rolling_chair: ANSWER_NO counter: ANSWER_YES
    floor_space: ANSWER_YES someone_near: ANSWER_YES }
  can_get_up_from_floor: ANSWER_NO senses { low_vision: ANSWER_NO hard_of_hearing: ANSWER_NO }
  language: "en" zone: "Europe/Berlin" height_cm: 172)";

TEST_F(Trade, certNamesWhatIsMissing) {
  CertOptions options;
  options.person = file("person", kPerson);
  options.programme = file("programme", programmeText());
  ASSERT_EQ(runCert(options, output(true)), kSaysNo) << err();
  EXPECT_EQ(read()["lines"].size(), 19U);
  EXPECT_EQ(read()["missing"], 4) << "2, 6, 10 and 15; the progression rule is there";
  options.statements = file("statements", R"(
    statements { line: "2" text: "Invented therapists." } statements { line: "6" text: "A call a week." }
    statements { line: "10" text: "A leaflet." } statements { line: "15" text: "By what was managed in clinic." })");
  options.practices = {file("one", practiceText("2026-11-02", 1, "10", 2))};
  options.from = "2026-11-02";
  options.to = "2026-11-08";
  ASSERT_EQ(runCert(options, output(true)), kFine) << out() << err();
  EXPECT_EQ(read()["missing"], 0);
  EXPECT_EQ(read()["not_yet"], 1) << "a first programme was not progressed yet";
  ASSERT_EQ(runCert(options, output()), kFine);
  EXPECT_THAT(out(), HasSubstr("1 of 2 occasions done"));
}

TEST_F(Trade, libraryListsFiltersAndCounts) {
  ASSERT_EQ(runLibrary({}, output(true)), kFine) << err();
  const std::size_t all = read().size();
  EXPECT_EQ(all, Catalogue::builtIn().exercises().size());
  LibraryOptions balance;
  balance.purpose = "balance";
  ASSERT_EQ(runLibrary(balance, output(true)), kFine) << err();
  EXPECT_GT(read().size(), 0U);
  EXPECT_LT(read().size(), all);
  for (const auto& row : read()) EXPECT_EQ(row["purpose"], "balance");
  LibraryOptions stairs;
  stairs.tag = "stairs";
  ASSERT_EQ(runLibrary(stairs, output()), kFine);
  EXPECT_THAT(out(), HasSubstr("stairs-one-at-a-time"));
  EXPECT_THAT(out(), Not(HasSubstr("bridge-over-roll")));
  LibraryOptions words;
  words.words = "SIT TO STAND";
  ASSERT_EQ(runLibrary(words, output(true)), kFine);
  EXPECT_EQ(read()[0]["id"], "sit-to-stand");
}

TEST_F(Trade, libraryLeavesOutWhatTheRulesBlockForAPerson) {
  LibraryOptions options;
  options.person_file = file("person", kPerson);
  options.findings = true;
  ASSERT_EQ(runLibrary(options, output(true)), kFine) << err();
  const auto all = read();
  options.allowed = true;
  ASSERT_EQ(runLibrary(options, output(true)), kFine);
  EXPECT_LT(read().size(), all.size());
  for (const auto& row : read()) {
    EXPECT_NE(row["id"], "bridge-over-roll") << "a floor exercise for who cannot get up";
    for (const auto& finding : row["findings"]) EXPECT_NE(finding["effect"], "EFFECT_BLOCK") << row["id"];
  }
}

TEST_F(Trade, libraryRefusesAFilterThatIsNone) {
  LibraryOptions options;
  options.purpose = "dancing";
  EXPECT_EQ(runLibrary(options, output()), kBadInput);
  EXPECT_THAT(err(), StartsWith("newel: --purpose: \"dancing\" is none of "));
  LibraryOptions none;
  none.exercise = "handstand";
  EXPECT_EQ(runLibrary(none, output()), kBadInput);
}

TEST_F(Trade, libraryPrintsAnExerciseForThePerson) {
  LibraryOptions options;
  options.exercise = "stairs-one-at-a-time";
  options.side = "left";
  options.level = "transfemoral";
  ASSERT_EQ(runLibrary(options, output()), kFine) << err();
  // Sound leg up first (right), prosthesis down first (left).
  EXPECT_LT(out().find("right leg"), out().find("left leg"));
  for (const char* part : {"stop if:", "sources:", "ladder", "good is:", "hands:"}) {
    EXPECT_THAT(out(), HasSubstr(part));
  }
}

TEST_F(Trade, libraryPrintsEveryExerciseForEveryKindOfPersonInEveryLanguage) {
  auto languages = Catalogue::builtIn().languages();
  languages.emplace_back("fi");  // nobody wrote it: whole in English, with a mark
  for (const auto& language : languages) {
    for (const bool both : {false, true}) {
      for (const char* level : {"partial-foot", "transtibial", "transfemoral"}) {
        for (const auto& exercise : Catalogue::builtIn().exercises()) {
          LibraryOptions options;
          options.exercise = exercise.id();
          options.level = level;
          options.both = both;
          options.language = language;
          std::ostringstream text, error;
          EXPECT_EQ(runLibrary(options, {text, error}), kFine) << exercise.id() << ' ' << error.str();
          const bool refused = text.str().find("not led for this person") != std::string::npos;
          if (!both) {
            EXPECT_FALSE(refused) << exercise.id() << ' ' << level << ' ' << text.str();
            EXPECT_THAT(text.str(), Not(HasSubstr("{"))) << exercise.id() << ' ' << language;
          }
          if (language == "fi") {
            EXPECT_THAT(text.str(), HasSubstr("words in en, there are none in fi"));
          }
        }
      }
    }
  }
}

TEST_F(Trade, libraryReadsAFolder) {
  LibraryOptions options;
  options.folder = std::string(NEWEL_SOURCE_DIR) + "/core/library";
  ASSERT_EQ(runLibrary(options, output(true)), kFine) << err();
  EXPECT_EQ(read().size(), Catalogue::builtIn().exercises().size());
  options.folder = (m_folder / "nowhere").string();
  EXPECT_EQ(runLibrary(options, output()), kBadInput);
}

TEST_F(Trade, sourcesListEverythingWithItsKindAndUsers) {
  ASSERT_EQ(runSources("", "", output(true)), kFine);
  std::set<std::string> parts;
  bool resnik = false;
  for (const auto& source : read()) {
    EXPECT_FALSE(source["text"].get<std::string>().empty());
    EXPECT_FALSE(source["used_by"].empty());
    for (const auto& user : source["used_by"]) parts.insert(user["of"].get<std::string>());
    if (source["text"] == "Resnik and Borgia 2011, Physical Therapy 91:555") {
      resnik = true;
      EXPECT_EQ(source["kind"], "from-memory");
      EXPECT_EQ(source["used_by"].size(), 4U) << "TUG, 2- and 6-minute walk, mobility predictor";
    }
  }
  EXPECT_TRUE(resnik);
  EXPECT_EQ(parts, (std::set<std::string>{"exercises", "cards", "settings", "rules", "questions", "measures",
                                          "progression", "wear", "report"}));
}

TEST_F(Trade, libraryListsAndPrintsTheCardsOfAdvice) {
  LibraryOptions options;
  options.cards = true;
  ASSERT_EQ(runLibrary(options, output()), kFine);
  EXPECT_THAT(out(), HasSubstr("Look at your skin"));
  EXPECT_THAT(out(), HasSubstr("7 cards"));
  options.cards = false;
  options.exercise = "skin-check";
  for (const auto& [language, said] :
       {std::pair("en", "Look again after 15 minutes."), std::pair("es", "Mire otra vez a los 15 minutos."),
        std::pair("ar", "بعد 15 دقيقة")}) {
    options.language = language;
    ASSERT_EQ(runLibrary(options, output()), kFine);
    EXPECT_THAT(out(), HasSubstr(said));
    EXPECT_THAT(out(), HasSubstr(std::string("words in ") + language));
  }
  options.language = "fi";
  ASSERT_EQ(runLibrary(options, output()), kFine);
  EXPECT_THAT(out(), HasSubstr("words in en, there are none in fi"));
}

TEST_F(Trade, sourcesCanBeChosenByKindAndPart) {
  ASSERT_EQ(runSources("from-memory", "measures", output(true)), kFine);
  ASSERT_FALSE(read().empty());
  for (const auto& source : read()) {
    EXPECT_EQ(source["kind"], "from-memory");
    for (const auto& user : source["used_by"]) EXPECT_EQ(user["of"], "measures");
  }
  EXPECT_EQ(runSources("hearsay", "", output()), kBadInput);
  EXPECT_EQ(runSources("", "poems", output()), kBadInput);
}

TEST_F(Trade, everyExerciseAndRuleIsInTheSources) {
  ASSERT_EQ(runSources("", "", output(true)), kFine);
  std::set<std::string> users;
  for (const auto& source : read()) {
    for (const auto& user : source["used_by"]) users.insert(user["id"].get<std::string>());
  }
  for (const auto& exercise : Catalogue::builtIn().exercises())
    EXPECT_TRUE(users.contains(exercise.id())) << exercise.id();
}

TEST(EvidenceWords, everyKeyOfTheCoreHasWords) {
  for (const auto* keys : {&progressionKeys(), &wearKeys(), &certKeys()}) {
    for (const auto& key : *keys) EXPECT_TRUE(hasEvidenceWords(key)) << key;
  }
}

TEST(EvidenceWords, fillInTheirArguments) {
  EXPECT_EQ(
      evidenceText({"progress.effort", {{"day", "2026-11-05"}, {"effort", "6"}, {"limit", "5"}}, false}),
      "2026-11-05: effort 6, limit 5");
  EXPECT_EQ(evidenceText({"unheard.of", {{"a", "1"}}, false}), "unheard.of a=1");
}

// The program itself: every command is reached, and its exit code is the command's.
TEST_F(Trade, theProgramKnowsTheCommands) {
  const auto exitCode = [](const std::string& arguments) {
    const std::string program = std::string(NEWEL_BINARY_DIR) + "/bin/newel ";
    return WEXITSTATUS(std::system((program + arguments + " >/dev/null 2>&1").c_str()));
  };
  EXPECT_EQ(exitCode("measure list"), 0);
  EXPECT_EQ(exitCode("--json measure show l-test"), 0);
  EXPECT_EQ(exitCode("measure change timed-up-and-go 12 8 --sure 95"), 0);
  EXPECT_EQ(exitCode("measure symmetry 0.39 0.25"), 0);
  EXPECT_EQ(exitCode("measure error --sem 0.39"), 0);
  EXPECT_EQ(exitCode("measure"), 2);
  EXPECT_EQ(exitCode("load --loads 60 0 45 0 80 30 0"), 0);
  EXPECT_EQ(exitCode("load"), 2);
  EXPECT_EQ(exitCode("wear examples"), 0);
  EXPECT_EQ(exitCode("wear draft slow"), 0);
  EXPECT_EQ(exitCode("progress --rules"), 0);
  EXPECT_EQ(exitCode("progress"), 2);
  EXPECT_EQ(exitCode("library --purpose balance"), 0);
  EXPECT_EQ(exitCode("library sit-to-stand --level transfemoral --language en"), 0);
  EXPECT_EQ(exitCode("sources --kind from-memory"), 0);
  const auto person = file("person", kPerson);
  const auto programme = file("programme", programmeText());
  EXPECT_EQ(exitCode("cert " + person + " " + programme), 1);
  EXPECT_EQ(exitCode("record validate wear-plan " + file("plan", planText())), 0);
}

TEST(EveryPair, everyTwoValuesMeetInSomeRow) {
  const std::vector<std::size_t> values = {7, 3, 4, 2, 5};
  const auto rows = everyPair(values);
  for (std::size_t a = 0; a < values.size(); ++a) {
    for (std::size_t b = a + 1; b < values.size(); ++b) {
      for (std::size_t i = 0; i < values[a]; ++i) {
        for (std::size_t j = 0; j < values[b]; ++j) {
          EXPECT_TRUE(std::any_of(rows.begin(), rows.end(),
                                  [&](const auto& row) { return row[a] == i && row[b] == j; }));
        }
      }
    }
  }
  EXPECT_LE(rows.size(), 3 * 7 * 5U) << "far from every product, 840";
}

TEST(CheckEveryone, findsNothingWrong) {
  std::ostringstream out, err;
  EXPECT_EQ(runCheckEveryone({out, err, false}), kFine) << out.str();
  EXPECT_THAT(out.str(), HasSubstr("nothing wrong"));
}

// It can fail: an exercise whose words nobody can be told.
TEST(CheckEveryone, findsAnExerciseThatCannotBeLed) {
  const Catalogue& catalogue = Catalogue::builtIn();
  v1::OwnExercise broken;
  *broken.mutable_exercise() = *catalogue.find("sit-to-stand");
  broken.mutable_exercise()->set_id("own-broken");
  *broken.add_words() = *catalogue.words("sit-to-stand", "en");
  broken.mutable_words(0)->set_exercise_id("own-broken");
  broken.mutable_words(0)->set_exercise_revision(1);
  (*broken.mutable_words(0)->mutable_cues())["stand-up"].set_screen("Lift your {tail}.");
  const auto report = checkEveryone(catalogue.with({broken}), RuleBook::builtIn());
  ASSERT_FALSE(report.problems.empty());
  EXPECT_THAT(report.problems[0], HasSubstr("own-broken"));
  EXPECT_THAT(report.problems[0], HasSubstr("cannot be led"));
}

}  // namespace
}  // namespace newel::tool
