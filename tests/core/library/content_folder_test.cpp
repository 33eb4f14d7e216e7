// Adding an exercise, a tag, a card, a setting, a language, a rule and a measure is adding files: one of
// each, loaded from folders beside the program's own content. Everything in them is made up.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <sstream>

#include "core/library/default_entry.h"
#include "core/library/settings.h"
#include "core/library/wording.h"
#include "core/practice/compile.h"
#include "core/progress/measure_table.h"
#include "core/safety/rule_book.h"
#include "tests/core/people/sample_people.h"

namespace newel {
namespace {

namespace fs = std::filesystem;

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
    text.replace(at, from.size(), to);
  return text;
}

class ContentFolder : public testing::Test {
 protected:
  void SetUp() override {
    m_folder =
        fs::temp_directory_path() /
        ("newel-content-" + std::string(testing::UnitTest::GetInstance()->current_test_info()->name()));
    fs::remove_all(m_folder);
    fs::create_directories(m_folder / "library");
    fs::create_directories(m_folder / "safety");
    const fs::path source(NEWEL_SOURCE_DIR);
    for (const char* part : {"exercises", "words", "cards", "movements", "settings"})
      fs::copy(source / "core/library" / part, m_folder / "library" / part, fs::copy_options::recursive);
    for (const char* part : {"rules", "questions", "words"})
      fs::copy(source / "core/safety" / part, m_folder / "safety" / part, fs::copy_options::recursive);
  }
  void TearDown() override { fs::remove_all(m_folder); }

  std::string read(const std::string& name) const {
    std::ifstream in(m_folder / name);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
  }
  void write(const std::string& name, const std::string& text) const {
    fs::create_directories((m_folder / name).parent_path());
    std::ofstream(m_folder / name) << text;
  }
  void append(const std::string& name, const std::string& text) const { write(name, read(name) + text); }

  // A like exercise under another id, with a tag that no exercise had before.
  void addExercise() const {
    const auto renamed = [](const std::string& text) {
      return replaced(text, "\"sit-to-stand\"", "\"bench-stand\"");
    };
    write("library/exercises/bench-stand.textproto",
          renamed(read("library/exercises/sit-to-stand.textproto")) + "tags: \"bench\"\n");
    for (const char* language : {"en", "es"}) {
      const std::string words = std::string("library/words/") + language + "/";
      write(words + "bench-stand.textproto", renamed(read(words + "sit-to-stand.textproto")));
    }
    for (const char* language : {"en", "es", "ar"})
      append(std::string("library/words/") + language + "/phrases.textproto",
             "phrases { key: \"tag.bench\" value: \"bench\" }\n");
  }

  // The Spanish words once more, as the language of nobody: "vo" for Volapük.
  void addLanguage() const {
    for (const auto& file : fs::recursive_directory_iterator(m_folder / "library/words/es")) {
      if (!file.is_regular_file()) continue;
      const std::string name = fs::relative(file.path(), m_folder / "library/words/es").string();
      std::string text = replaced(read("library/words/es/" + name), "language: \"es\"", "language: \"vo\"");
      text = replaced(text, " forms { key: \"many\" value: ", " forms { key: \"other\" value: ");
      write("library/words/vo/" + name, replaced(text, "claim { whole: true }", "claim { }"));
    }
    for (const auto& file : fs::directory_iterator(m_folder / "safety/words/es")) {
      const std::string name = file.path().filename().string();
      write("safety/words/vo/" + name,
            replaced(read("safety/words/es/" + name), "language: \"es\"", "language: \"vo\""));
    }
  }

  static std::string rule(const std::string& when) {
    return "rules {\n  id: \"bench-wobbles\"\n  stage: STAGE_PRESCRIBE\n  when { " + when +
           " }\n  effect: EFFECT_ASK\n  words { key: \"en\" value {\n"
           "    therapist: \"A bench has no arms, and {bench-height} cm is low. Say why it is safe.\"\n"
           "    person: \"Sit in the middle of the bench.\" } }\n"
           "  sources { kind: SOURCE_KIND_COMMON_PRACTICE text: \"common practice, no source\" }\n}\n";
  }
  static std::string ruleWords(const std::string& language) {
    return "language: \"" + language +
           "\"\nrules { key: \"bench-wobbles\" value { therapist: \"{bench-height} cm.\" person: \"Ya.\" } "
           "}\n";
  }

  fs::path m_folder;
};

constexpr char kSetting[] = R"(settings {
  id: "bench-height" usual: 40 least: 35 most: 60 unit: "exercises"
  words { key: "en" value { title: "Height of a bench" help: "A made-up number." } }
  words { key: "es" value { title: "Altura de un banco" help: "Un número inventado." } }
  sources { kind: SOURCE_KIND_COMMON_PRACTICE text: "common practice, no source" }
}
)";

TEST_F(ContentFolder, oneOfEachNeedsNoProgramming) {
  addExercise();
  addLanguage();
  write("library/settings/bench.textproto", kSetting);
  write("safety/rules/97_bench.textproto", rule("has { fact: \"exercise.tag\" values: \"bench\" }"));
  for (const char* language : {"es", "ar", "vo"})
    write(std::string("safety/words/") + language + "/97_bench.textproto", ruleWords(language));
  const auto catalogue = Catalogue::load((m_folder / "library").string());
  ASSERT_TRUE(catalogue.ok()) << catalogue.status();
  const auto rules = RuleBook::load((m_folder / "safety").string(), *catalogue);
  ASSERT_TRUE(rules.ok()) << rules.status();

  EXPECT_EQ(catalogue->exercises().size(), Catalogue::builtIn().exercises().size() + 1);
  EXPECT_THAT(catalogue->languages(), testing::Contains("vo"));
  EXPECT_EQ(rules->rules().size(), RuleBook::builtIn().rules().size() + 1);

  v1::Person person = test::transtibialRight();
  person.set_language("vo");
  v1::Entry entry = defaultEntry(*catalogue->find("bench-stand"), person);
  entry.set_id(test::idOf(7));
  entry.mutable_schedule()->set_times_per_week(2);
  entry.mutable_schedule()->add_windows()->set_to_min(1440);
  const auto findings = rules->check(entry, person, *catalogue);
  ASSERT_TRUE(findings.ok()) << findings.status();
  ASSERT_FALSE(findings->empty());
  EXPECT_EQ(findings->front().rule_id(), "bench-wobbles");
  EXPECT_EQ(findings->front().person(), "Ya.");
  EXPECT_THAT(findings->front().therapist(), testing::HasSubstr("and 40 cm is low"));
  const auto timeline = compileTimeline(entry, person, *catalogue, "vo");
  ASSERT_TRUE(timeline.ok()) << timeline.status();
  EXPECT_EQ(timeline->language(), "vo");
  EXPECT_FALSE(timeline->fell_back());
}

TEST_F(ContentFolder, aMeasureIsAFile) {
  write("measures/bench-test.textproto", R"(id: "bench-test"
revision: 1
words { key: "en" value { name: "Bench test" protocol: "Made up for this test." } }
unit: "s" better: MEASURE_DIRECTION_LOWER_IS_BETTER least: 1 most: 600 decimals: 1
sources { kind: SOURCE_KIND_COMMON_PRACTICE text: "common practice, no source" }
)");
  const auto table = MeasureTable::load((m_folder / "measures").string());
  ASSERT_TRUE(table.ok()) << table.status();
  EXPECT_NE(table->find("bench-test"), nullptr);
}

TEST_F(ContentFolder, aCardIsAFileAndItsWords) {
  const std::string card = replaced(read("library/cards/skin-check.textproto"), "skin-check", "bench-care");
  write("library/cards/bench-care.textproto", card);
  for (const char* language : {"en", "es", "ar"}) {
    const std::string words = std::string("library/words/") + language + "/cards/";
    write(words + "bench-care.textproto",
          replaced(read(words + "skin-check.textproto"), "skin-check", "bench-care"));
  }
  const auto catalogue = Catalogue::load((m_folder / "library").string());
  ASSERT_TRUE(catalogue.ok()) << catalogue.status();
  EXPECT_NE(catalogue->card("bench-care"), nullptr);
}

// Bad content is refused with file, line and reason; the build reads through the same door.
class BadContent : public ContentFolder {
 protected:
  std::string libraryError() const {
    const auto catalogue = Catalogue::load((m_folder / "library").string());
    return catalogue.ok() ? ""
                          : replaced(std::string(catalogue.status().message()), m_folder.string() + "/", "");
  }
  std::string safetyError() const {
    const auto rules = RuleBook::load((m_folder / "safety").string());
    return rules.ok() ? "" : replaced(std::string(rules.status().message()), m_folder.string() + "/", "");
  }
};

TEST_F(BadContent, aClaimThatIsNotKept) {
  fs::remove(m_folder / "library/words/es/sit-to-stand.textproto");
  EXPECT_THAT(libraryError(), testing::HasSubstr("library/words/es/phrases.textproto:"));
  EXPECT_THAT(libraryError(), testing::HasSubstr("the exercise sit-to-stand has no words in this language"));
}

TEST_F(BadContent, aPluralThatTheLanguageDoesNotHave) {
  append("library/words/en/phrases.textproto",
         "plurals { key: \"bench.seats\" value { forms { key: \"one\" value: \"a seat\" } "
         "forms { key: \"few\" value: \"{n} seats\" } } }\n");
  EXPECT_THAT(libraryError(), testing::HasSubstr("has no form \"other\""));
  EXPECT_THAT(libraryError(), testing::HasSubstr("the language has no form \"few\""));
}

TEST_F(BadContent, aCardThatIsHardToRead) {
  write("library/words/en/cards/skin-check.textproto",
        replaced(read("library/words/en/cards/skin-check.textproto"),
                 "Take the prosthesis off and sit in good light.",
                 "Systematic examination necessitates appropriate illumination."));
  EXPECT_THAT(libraryError(), testing::HasSubstr("skin-check.textproto:5: steps[0]: is too hard to read"));
}

TEST_F(BadContent, aSettingOutsideItsOwnRange) {
  write("library/settings/bench.textproto", replaced(kSetting, "usual: 40", "usual: 90"));
  EXPECT_THAT(libraryError(), testing::HasSubstr("library/settings/bench.textproto:"));
  EXPECT_THAT(libraryError(), testing::HasSubstr("usual: 90 is over 60"));
}

TEST_F(BadContent, anExerciseThatTakesTheClinicsPrefix) {
  write("library/exercises/own-bench.textproto",
        replaced(read("library/exercises/sit-to-stand.textproto"), "\"sit-to-stand\"", "\"own-bench\""));
  EXPECT_THAT(libraryError(), testing::HasSubstr("is kept for what a clinic writes itself"));
}

TEST_F(BadContent, aRuleOnASettingOrTagThatDoesNotExist) {
  write("safety/rules/97_bench.textproto",
        rule("number { fact: \"entry.sets\" over_setting: \"bench-height\" }"));
  EXPECT_THAT(safetyError(),
              testing::HasSubstr("safety/rules/97_bench.textproto:1: bench-wobbles: words: there is "
                                 "no setting \"bench-height\""));
  write("safety/rules/97_bench.textproto", replaced(rule("has { fact: \"exercise.tag\" values: \"bench\" }"),
                                                    ", and {bench-height} cm is low", ""));
  EXPECT_THAT(safetyError(), testing::HasSubstr("97_bench.textproto:4: there is no tag \"bench\""));
}

TEST_F(BadContent, aLanguageThatIsSilentAtOneRule) {
  write("safety/words/es/95_practice.textproto", replaced(read("safety/words/es/95_practice.textproto"),
                                                          "key: \"stop-tired\"", "key: \"stop-bored\""));
  EXPECT_THAT(safetyError(), testing::HasSubstr("stop-bored: there is no such rule"));
  fs::remove(m_folder / "safety/words/es/95_practice.textproto");
  EXPECT_THAT(safetyError(), testing::HasSubstr("safety/words/es:1: no words for the rule stop-chest-pain"));
}

}  // namespace
}  // namespace newel
