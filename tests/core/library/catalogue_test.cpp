#include "core/library/catalogue.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <sstream>

#include "core/records/check.h"

namespace newel {
namespace {

namespace fs = std::filesystem;
using ::testing::HasSubstr;

const char kSource[] = NEWEL_SOURCE_DIR "/core/library";

std::string textOf(const fs::path& path) {
  std::ifstream in(path);
  std::stringstream text;
  text << in.rdbuf();
  return text.str();
}

// A copy of the catalogue's files that a test may break.
class CatalogueFiles : public ::testing::Test {
 protected:
  void SetUp() override {
    const auto* info = ::testing::UnitTest::GetInstance()->current_test_info();
    m_folder = fs::path(NEWEL_BINARY_DIR) / "tests" / (std::string("catalogue_") + info->name());
    fs::remove_all(m_folder);
    fs::create_directories(m_folder);
    for (const char* part : {"exercises", "cards", "movements", "settings", "words"})
      fs::copy(fs::path(kSource) / part, m_folder / part, fs::copy_options::recursive);
  }
  void TearDown() override { fs::remove_all(m_folder); }

  void change(const std::string& file, const std::string& from, const std::string& to) const {
    std::string text = textOf(m_folder / file);
    const std::size_t at = text.find(from);
    ASSERT_NE(at, std::string::npos) << file << " has no " << from;
    text.replace(at, from.size(), to);
    std::ofstream(m_folder / file) << text;
  }
  int lineOf(const std::string& file, const std::string& what) const {
    const std::string text = textOf(m_folder / file);
    return 1 + static_cast<int>(
                   std::count(text.begin(), text.begin() + static_cast<long>(text.find(what)), '\n'));
  }
  std::string problem() const {
    const auto catalogue = Catalogue::load(m_folder.string());
    if (catalogue.ok()) return "";
    return std::string(catalogue.status().message().data(), catalogue.status().message().size());
  }
  std::string at(const std::string& file, int line) const {
    return (m_folder / file).string() + ":" + std::to_string(line) + ": ";
  }

  fs::path m_folder;
};

TEST(Catalogue, holdsTheTwelve) {
  const Catalogue& catalogue = Catalogue::builtIn();
  EXPECT_GE(catalogue.exercises().size(), 12U);
  for (const char* id :
       {"sit-to-stand", "weight-shift-side", "even-weight-standing", "step-through", "stairs-one-at-a-time",
        "stairs-step-over-step", "ramp-up-down", "opposite-arm-and-leg", "curl-up-legs-lifted",
        "rolling-chair-push-pull", "face-down-lying", "bridge-over-roll"}) {
    ASSERT_NE(catalogue.find(id), nullptr) << id;
    EXPECT_EQ(catalogue.find(id, 1), catalogue.find(id)) << id;
    EXPECT_EQ(catalogue.find(id, 99), nullptr) << id;
    ASSERT_NE(catalogue.words(id, "en"), nullptr) << id;
    EXPECT_GE(catalogue.find(id)->ladder_size(), 3) << id;
    EXPECT_TRUE(check(*catalogue.find(id)).ok());
    EXPECT_TRUE(check(*catalogue.words(id, "en")).ok());
  }
}

TEST(Catalogue, isInOrderOfPurpose) {
  const auto& exercises = Catalogue::builtIn().exercises();
  for (std::size_t i = 1; i < exercises.size(); ++i)
    EXPECT_LE(exercises[i - 1].purpose(), exercises[i].purpose());
}

TEST(Catalogue, answersNothingForWhatItDoesNotHave) {
  const Catalogue& catalogue = Catalogue::builtIn();
  EXPECT_EQ(catalogue.find("handstand"), nullptr);
  EXPECT_EQ(catalogue.words("sit-to-stand", "xx"), nullptr);
  EXPECT_EQ(catalogue.phrase("leg.left", "xx"), "");
  EXPECT_EQ(catalogue.phrase("leg.middle", "en"), "");
  EXPECT_THAT(catalogue.languages(), ::testing::Contains("en"));
  EXPECT_THAT(catalogue.languages(), ::testing::Not(::testing::Contains("xx")));
}

TEST(Catalogue, filesGiveWhatWasCompiledIn) {
  const auto loaded = Catalogue::load(kSource);
  ASSERT_TRUE(loaded.ok()) << loaded.status();
  const Catalogue& built_in = Catalogue::builtIn();
  ASSERT_EQ(loaded->exercises().size(), built_in.exercises().size());
  for (std::size_t i = 0; i < built_in.exercises().size(); ++i) {
    const v1::Exercise& exercise = built_in.exercises()[i];
    EXPECT_EQ(loaded->exercises()[i].DebugString(), exercise.DebugString());
    EXPECT_EQ(loaded->words(exercise.id(), "en")->DebugString(),
              built_in.words(exercise.id(), "en")->DebugString());
  }
}

TEST(Catalogue, aFolderWithNothingInItIsNotFound) {
  EXPECT_EQ(Catalogue::load("/nowhere/at/all").status().code(), absl::StatusCode::kNotFound);
}

// Its structure, and words in each language that says to be whole.
TEST_F(CatalogueFiles, aNewExerciseIsNewFilesAndNothingElse) {
  for (const char* folder : {"exercises/", "words/en/", "words/es/"}) {
    std::string text = textOf(m_folder / (std::string(folder) + "sit-to-stand.textproto"));
    text.replace(text.find("sit-to-stand"), 12, "sit-to-sit");
    std::ofstream(m_folder / (std::string(folder) + "sit-to-sit.textproto")) << text;
  }
  const auto catalogue = Catalogue::load(m_folder.string());
  ASSERT_TRUE(catalogue.ok()) << catalogue.status();
  EXPECT_EQ(catalogue->exercises().size(), Catalogue::builtIn().exercises().size() + 1);
  EXPECT_NE(catalogue->find("sit-to-sit"), nullptr);
}

TEST_F(CatalogueFiles, aSpellingErrorIsFoundOnItsLine) {
  change("exercises/sit-to-stand.textproto", "prosthesis: PROSTHESIS_USE_ON", "prothesis: PROSTHESIS_USE_ON");
  const int line = lineOf("exercises/sit-to-stand.textproto", "prothesis:");
  EXPECT_THAT(problem(), HasSubstr(at("exercises/sit-to-stand.textproto", line)));
}

TEST_F(CatalogueFiles, aDoseOutOfBoundsIsFoundOnItsLine) {
  change("exercises/sit-to-stand.textproto", "hold_s: 2", "hold_s: 400");
  const int line = lineOf("exercises/sit-to-stand.textproto", "hold_s: 400");
  EXPECT_THAT(problem(),
              HasSubstr(at("exercises/sit-to-stand.textproto", line) + "default_dose.sets.hold_s"));
}

TEST_F(CatalogueFiles, aRungWithASupportThatTheExerciseHasNot) {
  change("exercises/sit-to-stand.textproto", "  support: SUPPORT_NO_HANDS", "  support: SUPPORT_LYING");
  const int line = lineOf("exercises/sit-to-stand.textproto", "  support: SUPPORT_LYING");
  EXPECT_THAT(problem(), HasSubstr(at("exercises/sit-to-stand.textproto", line) + "ladder[3].support"));
}

TEST_F(CatalogueFiles, aTagThatNoRuleCanKnow) {
  change("exercises/sit-to-stand.textproto", "tags: \"knee-load\"", "tags: \"knee-lode\"");
  EXPECT_THAT(problem(), HasSubstr("no phrase \"tag.knee-lode\""));
}

TEST_F(CatalogueFiles, aMuscleWithNoName) {
  change("exercises/sit-to-stand.textproto", "muscles: \"quadriceps\"", "muscles: \"biceps\"");
  EXPECT_THAT(problem(), HasSubstr("no phrase \"muscle.biceps\""));
}

TEST_F(CatalogueFiles, anExerciseWithNoSource) {
  std::string text = textOf(m_folder / "exercises/rolling-chair-push-pull.textproto");
  const std::size_t from = text.find("sources {");
  text.erase(from, text.find("}", from) + 1 - from);
  std::ofstream(m_folder / "exercises/rolling-chair-push-pull.textproto") << text;
  EXPECT_THAT(problem(), HasSubstr("sources"));
}

TEST_F(CatalogueFiles, aPhaseWithNoCue) {
  change("words/en/sit-to-stand.textproto", "key: \"stand-tall\"", "key: \"stand-tal\"");
  EXPECT_THAT(problem(), HasSubstr("no cue \"stand-tall\""));
  EXPECT_THAT(problem(), HasSubstr("the exercise has no beat for this cue"));
}

TEST_F(CatalogueFiles, ownWordsForBothMustBeThere) {
  change("words/en/sit-to-stand.textproto", "key: \"stand-tall.both\"", "key: \"stand-tall.bth\"");
  EXPECT_THAT(problem(), HasSubstr("no cue \"stand-tall.both\""));
}

TEST_F(CatalogueFiles, aPlaceholderWithNoAnswerIsFoundOnItsLine) {
  change("words/en/even-weight-standing.textproto", "screen: \"Ease off. Hold the chairs.\"",
         "screen: \"Ease off your {working}.\"");
  const int line = lineOf("words/en/even-weight-standing.textproto", "key: \"ease\"");
  EXPECT_THAT(problem(),
              HasSubstr(at("words/en/even-weight-standing.textproto", line) + "cues[ease]: {working}"));
}

TEST_F(CatalogueFiles, aSoundLimbCannotBeNamedWhereBothMayBeLost) {
  change("words/en/weight-shift-side.textproto", "Come back to the middle.", "Back on your {sound}.");
  EXPECT_THAT(problem(), HasSubstr("{sound}: has no answer here when both limbs are lost"));
}

TEST_F(CatalogueFiles, aRoleThatNeedsASoundLimbMustBeRefusedForBoth) {
  change("exercises/stairs-one-at-a-time.textproto", "moves: LIMB_ROLE_STRONGER", "moves: LIMB_ROLE_SOUND");
  EXPECT_THAT(problem(), HasSubstr("parts[0].phases[0].moves"));
}

TEST_F(CatalogueFiles, aSpokenCueLongerThanItsBeat) {
  change("words/en/ramp-up-down.textproto", "spoken: \"{Stronger} up.\"",
         "spoken: \"Now please put your {stronger} a little way up the ramp.\"");
  EXPECT_THAT(problem(), HasSubstr("cues[up-first]: spoken takes longer than its beat of 2 s"));
}

TEST_F(CatalogueFiles, wordsForAnExerciseThatIsNotThere) {
  fs::remove(m_folder / "exercises/sit-to-stand.textproto");
  EXPECT_THAT(problem(), HasSubstr("there is no such exercise"));
}

TEST_F(CatalogueFiles, anExerciseWithNoEnglishWords) {
  fs::remove(m_folder / "words/en/sit-to-stand.textproto");
  EXPECT_THAT(problem(), HasSubstr("has no English words"));
}

TEST_F(CatalogueFiles, aFileNamedOtherwiseThanItsExercise) {
  fs::rename(m_folder / "exercises/sit-to-stand.textproto", m_folder / "exercises/stand.textproto");
  EXPECT_THAT(problem(), HasSubstr("id: is not the file's name"));
}

TEST_F(CatalogueFiles, aMissingPhrase) {
  change("words/en/phrases.textproto", "key: \"leg.left\"", "key: \"leg.lft\"");
  EXPECT_THAT(problem(), HasSubstr("no phrase \"leg.left\""));
}

}  // namespace
}  // namespace newel
