// Clips as data: what is built in, and what a bad clip is refused with.
#include "core/figure/clip_book.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <functional>
#include <sstream>

#include "core/figure/figure.h"

namespace newel {
namespace {

using testing::HasSubstr;

TEST(ClipBook, everyExerciseOfTheCatalogueIsDrawn) {
  for (const v1::Exercise& exercise : Catalogue::builtIn().exercises())
    EXPECT_NE(ClipBook::builtIn().find(exercise.id()), nullptr) << exercise.id();
}

// What goes on for minutes must be seen to go on, unless it is lying or resting.
TEST(ClipBook, boutsGoRoundSaveForRest) {
  for (const v1::Clip& clip : ClipBook::builtIn().clips()) {
    const v1::Exercise& exercise = *Catalogue::builtIn().find(clip.exercise_id());
    if (exercise.default_dose().kind_case() != v1::Dose::kMinutes) continue;
    const bool rests =
        clip.exercise_id() == "face-down-lying" || clip.exercise_id() == "knee-straight-on-board";
    EXPECT_EQ(clip.scenes(0).phases(0).round_s() > 0, !rests) << clip.exercise_id();
  }
}

TEST(ClipBook, everyClipFitsItsExercise) {
  for (const v1::Clip& clip : ClipBook::builtIn().clips()) {
    const v1::Exercise* exercise = Catalogue::builtIn().find(clip.exercise_id());
    ASSERT_NE(exercise, nullptr) << clip.exercise_id();
    EXPECT_TRUE(problemsOf(clip, *exercise).empty()) << clip.exercise_id();
  }
}

TEST(ClipBook, everyClipNamesItsSource) {
  for (const v1::Clip& clip : ClipBook::builtIn().clips()) {
    ASSERT_FALSE(clip.sources().empty()) << clip.exercise_id();
    EXPECT_FALSE(clip.sources(0).text().empty()) << clip.exercise_id();
  }
}

std::string problems(const std::function<void(v1::Clip&)>& spoil) {
  v1::Clip clip = *ClipBook::builtIn().find("sit-to-stand");
  spoil(clip);
  std::string text;
  for (const ClipProblem& problem : problemsOf(clip, *Catalogue::builtIn().find("sit-to-stand"))) {
    text += problem.path + ": " + problem.reason + "\n";
  }
  return text;
}

TEST(ClipChecks, aGoodClipHasNone) {
  EXPECT_EQ(problems([](v1::Clip&) {}), "");
}
TEST(ClipChecks, nameTheFieldAndTheReason) {
  EXPECT_THAT(problems([](v1::Clip& c) { c.mutable_scenes(0)->mutable_phases(0)->set_phase_id("rise"); }),
              HasSubstr("scenes[0].phases[0].phase_id: must be \"stand-up\""));
  EXPECT_THAT(problems([](v1::Clip& c) { c.mutable_scenes(0)->mutable_phases(1)->add_frames()->set_at(1); }),
              HasSubstr("scenes[0].phases[1].frames: a hold has none"));
  EXPECT_THAT(problems([](v1::Clip& c) { c.mutable_scenes(0)->mutable_phases(0)->set_round_s(2); }),
              HasSubstr("scenes[0].phases[0].round_s: only a bout of minutes goes round"));
  EXPECT_THAT(
      problems([](v1::Clip& c) { c.mutable_scenes(0)->mutable_phases(0)->mutable_frames()->RemoveLast(); }),
      HasSubstr("scenes[0].phases[0].frames: the last must be at 1"));
  EXPECT_THAT(problems([](v1::Clip& c) { c.mutable_scenes(0)->mutable_props(1)->set_id("stool"); }),
              HasSubstr("hold.prop: there is no such prop"));
  EXPECT_THAT(problems([](v1::Clip& c) {
                c.mutable_scenes(0)->mutable_start()->mutable_arms(0)->mutable_a()->mutable_hold()->set_grip(
                    v1::GRIP_BAR);
              }),
              HasSubstr("hold.grip: the prop cannot be held so"));
  EXPECT_THAT(problems([](v1::Clip& c) { c.mutable_scenes(0)->mutable_start()->mutable_trunk()->set_x(50); }),
              HasSubstr("scenes[0].start.trunk.x: is over 5 body heights"));
  EXPECT_THAT(
      problems([](v1::Clip& c) { c.mutable_scenes(0)->mutable_start()->mutable_trunk()->set_nod_deg(300); }),
      HasSubstr("nod_deg: is over 200 degrees"));
  EXPECT_THAT(problems([](v1::Clip& c) {
                auto* exception = c.add_exceptions();
                exception->set_joint("knee.flexion");
                exception->set_limit_deg(140);
              }),
              HasSubstr("exceptions[0].reason: is missing"));
  EXPECT_THAT(problems([](v1::Clip& c) { c.clear_sources(); }), HasSubstr("sources: is missing"));
  EXPECT_THAT(problems([](v1::Clip& c) { c.mutable_scenes(0)->mutable_start()->clear_leg_b(); }),
              HasSubstr("scenes[0].start: the start needs both legs"));
}

class ClipFiles : public testing::Test {
 protected:
  void SetUp() override {
    m_folder = std::filesystem::path(testing::TempDir()) /
               testing::UnitTest::GetInstance()->current_test_info()->name();
    std::filesystem::remove_all(m_folder);
    std::filesystem::create_directories(m_folder / "clips");
    std::filesystem::create_directories(m_folder / "words");
    copy("words/en.textproto");
    copy("clips/sit-to-stand.textproto");
  }
  void TearDown() override { std::filesystem::remove_all(m_folder); }

  void copy(const std::string& name) {
    std::filesystem::copy_file(std::filesystem::path(NEWEL_SOURCE_DIR) / "core/figure" / name,
                               m_folder / name);
  }
  // Puts `to` in place of the first `from` in the clip's file; gives the line it was on.
  int spoil(const std::string& from, const std::string& to) {
    const auto path = m_folder / "clips/sit-to-stand.textproto";
    std::ifstream in(path);
    std::stringstream text;
    text << in.rdbuf();
    std::string content = text.str();
    const std::size_t at = content.find(from);
    EXPECT_NE(at, std::string::npos);
    const int line =
        1 + static_cast<int>(std::count(content.begin(), content.begin() + static_cast<long>(at), '\n'));
    std::ofstream(path) << content.replace(at, from.size(), to);
    return line;
  }
  std::string load() {
    const auto book = ClipBook::load(m_folder.string(), Catalogue::builtIn());
    return book.ok() ? "" : std::string(book.status().message());
  }

  std::filesystem::path m_folder;
};

TEST_F(ClipFiles, goodFilesAreLoaded) { EXPECT_EQ(load(), ""); }

TEST_F(ClipFiles, aBadFieldIsNamedWithFileAndLine) {
  const int line = spoil("phase_id: \"stand-tall\"", "phase_id: \"stand-small\"");
  EXPECT_THAT(load(),
              HasSubstr("sit-to-stand.textproto:" + std::to_string(line) + ": scenes[0].phases[1].phase_id"));
}
TEST_F(ClipFiles, aTypingErrorIsNamedWithFileAndLine) {
  const int line = spoil("stand_deg: 4", "stand_dog: 4");
  EXPECT_THAT(load(), HasSubstr("sit-to-stand.textproto:" + std::to_string(line) + ":"));
}
TEST_F(ClipFiles, aClipWithoutItsExerciseIsRefused) {
  std::filesystem::rename(m_folder / "clips/sit-to-stand.textproto",
                          m_folder / "clips/sit-to-stond.textproto");
  EXPECT_THAT(load(), HasSubstr("exercise_id: is not the name of the file"));
}
TEST_F(ClipFiles, aMissingFolderIsNotFound) {
  const auto book = ClipBook::load((m_folder / "nowhere").string(), Catalogue::builtIn());
  EXPECT_EQ(book.status().code(), absl::StatusCode::kNotFound);
}

TEST(Figure, unknownExercisesAndPhasesAreNotFound) {
  EXPECT_EQ(Figure::make("no-such", FigureBody{}).status().code(), absl::StatusCode::kNotFound);
  const auto figure = Figure::make("sit-to-stand", FigureBody{});
  ASSERT_TRUE(figure.ok());
  EXPECT_EQ(figure->momentOfPhase("no-such", 0).status().code(), absl::StatusCode::kNotFound);
}

TEST(Figure, bodyComesFromTheRecord) {
  v1::Person person;
  auto* limb = person.add_limbs();
  limb->set_side(v1::SIDE_RIGHT);
  limb->set_level(v1::LIMB_LOSS_LEVEL_TRANSFEMORAL);
  limb->set_knee(v1::KNEE_KIND_LOCKED);
  limb->set_has_prosthesis(true);
  const FigureBody on = bodyOf(person, v1::PROSTHESIS_USE_ON, {});
  EXPECT_EQ(on.weaker, v1::SIDE_RIGHT);
  EXPECT_TRUE(on.right.prosthetic());
  EXPECT_FALSE(on.left.lost());
  EXPECT_TRUE(bodyOf(person, v1::PROSTHESIS_USE_OFF, {}).right.bare());
}

}  // namespace
}  // namespace newel
