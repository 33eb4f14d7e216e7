// The command line: what it prints, what it refuses, and its exit codes, through the functions and the
// program.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/wait.h>

#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>

#include "core/library/catalogue.h"
#include "sync/tool/commands.h"
#include "sync/tool/tool_io.h"

namespace newel::tool {
namespace {

using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

constexpr char kPerson[] = R"(
  id: "017f22e2-79b0-7cc3-98c4-dc0c0c07398f"
  limbs { side: SIDE_LEFT level: LIMB_LOSS_LEVEL_TRANSFEMORAL knee: KNEE_KIND_MECHANICAL
    foot: FOOT_KIND_FIXED_ANKLE has_prosthesis: true }
  mobility: MOBILITY_LEVEL_K2 walking_aid: WALKING_AID_ONE_CANE
  home { rails: RAILS_BOTH ramp: ANSWER_NO sturdy_chairs: 2 rolling_chair: ANSWER_NO counter: ANSWER_YES
    floor_space: ANSWER_YES someone_near: ANSWER_YES }
  can_get_up_from_floor: ANSWER_NO senses { low_vision: ANSWER_NO hard_of_hearing: ANSWER_NO }
  language: "en" zone: "Europe/Berlin" height_cm: 172)";

std::string entryText(const std::string& exercise, const std::string& dose, const std::string& more) {
  return "id: \"017f22e2-79b0-7cc3-98c4-dc0c0c073990\" exercise_id: \"" + exercise +
         "\" exercise_revision: 1 dose { " + dose + " } pacing: PACING_TIMED " + more +
         " schedule { weekdays { days: WEEKDAY_MONDAY days: WEEKDAY_THURSDAY } windows { from_min: 480 "
         "to_min: 720 } }";
}

constexpr char kSitToStand[] =
    "side_policy: SIDE_POLICY_WHOLE_BODY support: SUPPORT_TWO_HANDS prosthesis: PROSTHESIS_USE_ON";
constexpr char kEightTimes[] = "sets { sets: 2 repetitions: 8 move_s: 3 return_s: 3 rest_s: 60 }";

std::string programmeText(const std::string& entry) {
  return R"(id: "017f22e2-79b0-7cc3-98c4-dc0c0c073991" number: 1 person_id: "017f22e2-79b0-7cc3-98c4-dc0c0c07398f"
    clinic_id: "017f22e2-79b0-7cc3-98c4-dc0c0c073992" signer_id: "017f22e2-79b0-7cc3-98c4-dc0c0c073993"
    signer_name: "Demo Therapist" issued_at { seconds: 1764000000 } effective_day: "2026-11-02"
    end_day: "2026-11-29" zone: "Europe/Berlin" thresholds { pain_stop_0_10: 5 pain_rise_0_10: 2 }
    entries { )" +
         entry + " }";
}

class Tool : public testing::Test {
 protected:
  void SetUp() override {
    m_folder = std::filesystem::temp_directory_path() /
               ("newel-tool-" + std::string(testing::UnitTest::GetInstance()->current_test_info()->name()));
    std::filesystem::create_directories(m_folder);
  }
  void TearDown() override { std::filesystem::remove_all(m_folder); }

  std::string file(const std::string& name, const std::string& text) {
    std::ofstream(m_folder / name) << text;
    return (m_folder / name).string();
  }
  std::string out() const { return m_out.str(); }
  std::string err() const { return m_err.str(); }
  Output output(bool json = false) { return {m_out, m_err, json}; }

  std::filesystem::path m_folder;
  std::ostringstream m_out, m_err;
};

TEST_F(Tool, timelineOfAHoldSaysWhatThePhoneWillDo) {
  // Common practice, no source: the all-fours reach holds 3 s each side, alternating.
  TimelineOptions options;
  options.exercise = "opposite-arm-and-leg";
  options.sets = 1;
  options.repetitions = 2;
  options.hold_s = 3;
  ASSERT_EQ(runTimeline(options, output(true)), kFine) << err();
  const auto timeline = nlohmann::json::parse(out());
  int holds = 0;
  for (const auto& beat : timeline["beats"]) {
    if (beat["kind"] != "BEAT_KIND_HOLD") continue;
    ++holds;
    EXPECT_EQ(beat["length_ms"], "3000");
  }
  EXPECT_EQ(holds, 4) << "two repetitions on each side";
}

TEST_F(Tool, timelineTakesTheLeadingLegFromSideAndLevel) {
  TimelineOptions options;
  options.exercise = "stairs-one-at-a-time";
  options.side = "left";
  options.level = "transfemoral";
  ASSERT_EQ(runTimeline(options, output()), kFine) << err();
  // Sound leg up first (right), prosthesis down first (left).
  EXPECT_LT(out().find("right leg"), out().find("left leg"));
  EXPECT_THAT(out(), HasSubstr("total "));
}

TEST_F(Tool, everyExerciseHasATimelineOrAReasonForEachSideAndLevel) {
  for (const auto& exercise : Catalogue::builtIn().exercises()) {
    for (const char* side : {"left", "right"}) {
      for (const char* level : {"partial-foot", "ankle-disarticulation", "transtibial",
                                "knee-disarticulation", "transfemoral", "hip-disarticulation"}) {
        TimelineOptions options;
        options.exercise = exercise.id();
        options.side = side;
        options.level = level;
        std::ostringstream text, error;
        EXPECT_EQ(runTimeline(options, {text, error}), kFine)
            << exercise.id() << ' ' << level << ": " << error.str();
        EXPECT_THAT(text.str(), Not(HasSubstr("{"))) << "a placeholder was left in " << exercise.id();
      }
    }
  }
}

TEST_F(Tool, aWrongOptionNamesItselfAndWhatItCouldHaveBeen) {
  TimelineOptions options;
  options.exercise = "sit-to-stand";
  options.level = "above-knee";
  EXPECT_EQ(runTimeline(options, output()), kBadInput);
  EXPECT_THAT(err(), StartsWith("newel: --level: \"above-knee\" is none of partial-foot, "));
  EXPECT_EQ(out(), "");
}

TEST_F(Tool, aDoseThatTheExerciseDoesNotHaveIsRefused) {
  TimelineOptions options;
  options.exercise = "sit-to-stand";
  options.distance_m = 5;
  EXPECT_EQ(runTimeline(options, output()), kBadInput);
  EXPECT_THAT(err(), HasSubstr("--distance"));
}

TEST_F(Tool, occasionsAreDaysAndWindows) {
  const auto programme =
      file("p.textproto", programmeText(entryText("sit-to-stand", kEightTimes, kSitToStand)));
  ASSERT_EQ(runOccasions(programme, "2026-11-23", "2026-11-29", output()), kFine) << err();
  EXPECT_THAT(out(), HasSubstr("2026-11-23  monday    08:00-12:00  sit-to-stand  due"));
  EXPECT_THAT(out(), HasSubstr("2026-11-26  thursday"));
  EXPECT_THAT(out(), HasSubstr("2 occasions\n"));
}

TEST_F(Tool, occasionsInJsonAreReadableAsJson) {
  const auto programme =
      file("p.textproto", programmeText(entryText("sit-to-stand", kEightTimes, kSitToStand)));
  ASSERT_EQ(runOccasions(programme, "2026-11-02", "2026-11-15", output(true)), kFine);
  EXPECT_EQ(nlohmann::json::parse(out()).size(), 4U);
}

TEST_F(Tool, aDayThatIsNoneIsRefusedWithItsOption) {
  const auto programme =
      file("p.textproto", programmeText(entryText("sit-to-stand", kEightTimes, kSitToStand)));
  EXPECT_EQ(runOccasions(programme, "2026-11-31", "2026-12-01", output()), kBadInput);
  EXPECT_THAT(err(), StartsWith("newel: --from: "));
}

TEST_F(Tool, checkBlocksAFloorExerciseForWhoCannotGetUp) {
  const auto person = file("person.textproto", kPerson);
  const auto entry = file(
      "entry.textproto",
      entryText("bridge-over-roll", "sets { sets: 1 repetitions: 5 hold_s: 5 move_s: 2 return_s: 2 }",
                "side_policy: SIDE_POLICY_WHOLE_BODY support: SUPPORT_LYING prosthesis: PROSTHESIS_USE_OFF"));
  EXPECT_EQ(runCheck({person, entry, "", "", "en"}, output()), kSaysNo) << err();
  EXPECT_THAT(out(), HasSubstr("block"));
  EXPECT_THAT(out(), HasSubstr("may not be signed"));
}

TEST_F(Tool, checkOfAProgrammeShowsMinutesADay) {
  const auto person = file("person.textproto", kPerson);
  const auto programme =
      file("p.textproto", programmeText(entryText("sit-to-stand", kEightTimes, kSitToStand)));
  EXPECT_EQ(runCheck({person, programme, "", "", "en"}, output()), kFine) << out() << err();
  EXPECT_THAT(out(), HasSubstr("monday"));
  EXPECT_THAT(out(), HasSubstr("may be signed"));
}

TEST_F(Tool, validateKnowsWhatAClinicAdds) {
  const std::string settings =
      file("settings.textproto",
           "clinic_id: \"017f22e2-79b0-7cc3-98c4-dc0c0c073992\" values { key: \"pain-stop\" value: 9 }");
  EXPECT_EQ(runValidate("clinic-settings", settings, output()), kSaysNo);
  EXPECT_THAT(err(), HasSubstr("values[pain-stop]: 9 is over 6"));
  const std::string own = file("own.textproto", "clinic_id: \"017f22e2-79b0-7cc3-98c4-dc0c0c073992\"");
  EXPECT_EQ(runValidate("own-exercise", own, output()), kSaysNo);
  EXPECT_THAT(err(), HasSubstr("author_id: is missing"));
}

TEST_F(Tool, checkTakesTheClinicsSettingsAndTheTherapistsLanguage) {
  const std::string person = file("person.textproto", kPerson);
  const std::string entry =
      file("entry.textproto",
           entryText("sit-to-stand", kEightTimes,
                     std::string(kSitToStand) + " thresholds { pain_stop_0_10: 5 pain_rise_0_10: 2 }"));
  const std::string settings =
      file("settings.textproto",
           "clinic_id: \"017f22e2-79b0-7cc3-98c4-dc0c0c073992\" values { key: \"pain-stop\" value: 4 }");
  EXPECT_EQ(runCheck({person, entry, "", "", "en"}, output()), kFine) << out() << err();
  EXPECT_EQ(runCheck({person, entry, "", settings, "es"}, output()), kSaysNo);
  EXPECT_THAT(out(), HasSubstr("entry-pain-stop-high"));
  EXPECT_THAT(out(), HasSubstr("por encima de 4 de 10"));
  const std::string wrong =
      file("settings.textproto",
           "clinic_id: \"017f22e2-79b0-7cc3-98c4-dc0c0c073992\" values { key: \"pain-stop\" value: 9 }");
  EXPECT_EQ(runCheck({person, entry, "", wrong, "en"}, output()), kBadInput);
  EXPECT_THAT(err(), HasSubstr("values[pain-stop]: 9 is over 6"));
}

TEST_F(Tool, validateNamesFileAndField) {
  std::string text = kPerson;
  text.replace(text.find("height_cm: 172"), 14, "height_cm: 17");
  const auto person = file("person.textproto", text);
  EXPECT_EQ(runValidate("person", person, output()), kSaysNo);
  EXPECT_EQ(err(), "newel: " + person + ": height_cm: 17 is under 80\n");
}

TEST_F(Tool, validateOfAMissingFileIsBadInput) {
  EXPECT_EQ(runValidate("person", (m_folder / "nobody.textproto").string(), output()), kBadInput);
  EXPECT_EQ(runValidate("poem", file("x", ""), output()), kBadInput);
  EXPECT_THAT(err(), HasSubstr("is none of "));
}

DoneOptions over(const std::string& programme, const std::string& heard_until) {
  DoneOptions options;
  options.programmes = {programme};
  options.from = "2026-11-02";
  options.to = "2026-11-15";
  options.today = "2026-11-16";
  options.heard_until = heard_until;
  return options;
}

TEST_F(Tool, adherenceOfNothingDoneIsZeroOfWhatWasDue) {
  const auto programme =
      file("p.textproto", programmeText(entryText("sit-to-stand", kEightTimes, kSitToStand)));
  ASSERT_EQ(runAdherence(over(programme, "2026-11-16"), output(true)), kFine) << err();
  const auto result = nlohmann::json::parse(out());
  EXPECT_EQ(result["all"]["due"], 4);
  EXPECT_EQ(result["all"]["capped"], 0.0);
}

TEST_F(Tool, adherenceOfDaysNobodyHeardOfIsNoNumber) {
  const auto programme =
      file("p.textproto", programmeText(entryText("sit-to-stand", kEightTimes, kSitToStand)));
  ASSERT_EQ(runAdherence(over(programme, "2026-11-01"), output(true)), kFine);
  EXPECT_TRUE(nlohmann::json::parse(out())["all"]["capped"].is_null());
}

// Two a week: the order of Wednesday the 4th forbade the rest of both weeks, and all but Monday's was
// excused.
TEST_F(Tool, adherenceLeavesOutWhatAHoldOrderForbade) {
  DoneOptions options = over(
      file("p.textproto", programmeText(entryText("sit-to-stand", kEightTimes, kSitToStand))), "2026-11-16");
  options.holds = {file("h.textproto", R"(
    id: "01939f00-0000-7000-8000-00000000f001" number: 1 person_id: "01939f00-0000-7000-8000-000000000001"
    clinic_id: "01939f00-0000-7000-8000-000000000002" signer_id: "01939f00-0000-7000-8000-000000000003"
    signer_name: "Demo Therapist" issued_at { seconds: 1793793600 } reason: "Rest your skin.")")};
  ASSERT_EQ(runAdherence(options, output(true)), kFine) << err();
  EXPECT_EQ(nlohmann::json::parse(out())["all"]["due"], 1);
  options.zone = "Nowhere/Land";
  EXPECT_EQ(runAdherence(options, output()), kBadInput);
  EXPECT_THAT(err(), HasSubstr("--zone"));
}

// The program itself: its exit code and that an error is one line.
TEST_F(Tool, theProgramEndsWithTheSameCodes) {
  const std::string program = std::string(NEWEL_BINARY_DIR) + "/bin/newel";
  const auto exitCode = [&](const std::string& arguments) {
    const int status = std::system((program + " " + arguments + " >/dev/null 2>&1").c_str());
    return WEXITSTATUS(status);
  };
  EXPECT_EQ(exitCode("--version"), 0);
  EXPECT_EQ(exitCode("timeline sit-to-stand"), 0);
  EXPECT_EQ(exitCode("timeline no-such-exercise"), 2);
  EXPECT_EQ(exitCode("dance"), 2);
  EXPECT_EQ(exitCode("record validate person " + file("p", kPerson)), 0);
}

}  // namespace
}  // namespace newel::tool
