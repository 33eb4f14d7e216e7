#include "core/safety/rule_loading.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

#include "core/safety/rule_book.h"

namespace newel {
namespace {

constexpr char kSource[] =
    R"(sources { kind: SOURCE_KIND_COMMON_PRACTICE text: "common practice, no source" })";

// A folder of its own with one rules file and one questions file.
class RuleLoading : public testing::Test {
 protected:
  void SetUp() override {
    m_folder = testing::TempDir() + "newel_rule_loading_" +
               testing::UnitTest::GetInstance()->current_test_info()->name();
    std::filesystem::remove_all(m_folder);
    std::filesystem::create_directories(m_folder + "/rules");
    std::filesystem::create_directories(m_folder + "/questions");
    write("questions/q.textproto", question("mood", "low"));
    write("rules/r.textproto", rule("one", R"(has { fact: "person.ramp" values: "no" })"));
  }
  void TearDown() override { std::filesystem::remove_all(m_folder); }

  void write(const std::string& name, const std::string& text) const {
    std::ofstream(m_folder + "/" + name, std::ios::trunc) << text;
  }

  static std::string rule(const std::string& id, const std::string& when, const std::string& rest = kSource) {
    return "rules {\n  id: \"" + id + "\"\n  stage: STAGE_PRESCRIBE\n  when { " + when +
           " }\n  effect: EFFECT_NOTE\n"
           "  words { key: \"en\" value { therapist: \"t\" person: \"p\" } }\n  " +
           rest + "\n}\n";
  }
  static std::string question(const std::string& id, const std::string& choice) {
    return "questions {\n  id: \"" + id + "\"\n  words { key: \"en\" value { question: \"How?\" } }\n" +
           "  choices { id: \"fine\" fine: true words { key: \"en\" value: \"Fine\" } }\n  choices { id: \"" +
           choice + "\" words { key: \"en\" value: \"Bad\" } }\n  " + kSource + "\n}\n";
  }

  std::string error() const {
    const auto set = loadRules(m_folder, Catalogue::builtIn());
    if (set.ok()) return "";
    return std::string(set.status().message()).substr(m_folder.size() + 1);
  }
  std::string m_folder;
};

TEST_F(RuleLoading, readsWhatIsSound) {
  const auto set = loadRules(m_folder, Catalogue::builtIn());
  ASSERT_TRUE(set.ok()) << set.status();
  EXPECT_EQ(set->rules.rules_size(), 1);
  EXPECT_EQ(set->questions.questions_size(), 1);
  EXPECT_TRUE(RuleBook::load(m_folder).ok());
}

TEST_F(RuleLoading, ordersFilesByName) {
  write("rules/a.textproto", rule("zero", R"(has { fact: "person.ramp" values: "no" })"));
  const auto set = loadRules(m_folder, Catalogue::builtIn());
  ASSERT_TRUE(set.ok());
  EXPECT_EQ(set->rules.rules(0).id(), "zero");
  EXPECT_EQ(set->rules.rules(1).id(), "one");
}

TEST_F(RuleLoading, takesNoFileOfAnotherKind) {
  write("rules/notes.txt", "not a rule");
  EXPECT_EQ(error(), "");
}

TEST_F(RuleLoading, aSyntaxErrorSaysFileAndLine) {
  write("rules/r.textproto", "rules {\n  id \"one\"\n}\n");
  EXPECT_EQ(error().rfind("rules/r.textproto:2:", 0), 0U) << error();
}

TEST_F(RuleLoading, aFactThatDoesNotExistIsRefused) {
  write("rules/r.textproto", rule("one", R"(has { fact: "person.hobby" values: "no" })"));
  EXPECT_EQ(error(), "rules/r.textproto:4: there is no fact \"person.hobby\"");
}

TEST_F(RuleLoading, aWordThatTheFactNeverCarriesIsRefused) {
  write("rules/r.textproto", rule("one", R"(has { fact: "person.ramp" values: "maybe" })"));
  EXPECT_EQ(error(), "rules/r.textproto:4: \"person.ramp\" is never \"maybe\"");
}

TEST_F(RuleLoading, aFaultDeepInsideIsFoundOnItsOwnLine) {
  write("rules/r.textproto", rule("one", R"(all {
    tests { any {
      tests { not { has { fact: "person.ramp" values: "no"
        values: "perhaps" } } }
    } } })"));
  EXPECT_EQ(error(), "rules/r.textproto:7: \"person.ramp\" is never \"perhaps\"");
}

TEST_F(RuleLoading, aWordOfANumberAndANumberOfAWordAreRefused) {
  write("rules/r.textproto", rule("one", R"(has { fact: "entry.sets" values: "three" })"));
  EXPECT_EQ(error(), "rules/r.textproto:4: \"entry.sets\" is a number and has no words");
  write("rules/r.textproto", rule("one", R"(number { fact: "person.ramp" over: 1 })"));
  EXPECT_EQ(error(), "rules/r.textproto:4: \"person.ramp\" has no number");
  write("rules/r.textproto", rule("one", R"(number { fact: "entry.zest" over: 1 })"));
  EXPECT_EQ(error(), "rules/r.textproto:4: there is no fact \"entry.zest\"");
}

TEST_F(RuleLoading, anUnknownTagIsRefused) {
  write("rules/r.textproto", rule("one", R"(has { fact: "exercise.tag" values: "ceiling" })"));
  EXPECT_EQ(error(), "rules/r.textproto:4: there is no tag \"ceiling\"");
}

TEST_F(RuleLoading, anAnswerMustBeAChoiceOfItsQuestion) {
  write("rules/r.textproto", rule("one", R"(has { fact: "answer.mood" values: "low" })"));
  EXPECT_EQ(error(), "");
  write("rules/r.textproto", rule("one", R"(has { fact: "answer.mood" values: "high" })"));
  EXPECT_EQ(error(), "rules/r.textproto:4: no choice of its question is \"high\"");
  write("rules/r.textproto", rule("one", R"(has { fact: "answer.weather" values: "low" })"));
  EXPECT_EQ(error(), "rules/r.textproto:4: no question gives \"answer.weather\"");
}

TEST_F(RuleLoading, aQuestionCannotHangOnAnAnswer) {
  std::string text = question("mood", "low");
  text.insert(text.find("  words"), "  when { has { fact: \"answer.mood\" values: \"low\" } }\n");
  write("questions/q.textproto", text);
  EXPECT_EQ(error(), "questions/q.textproto:3: no question gives \"answer.mood\"");
}

TEST_F(RuleLoading, aRuleWithoutASourceIsRefused) {
  write("rules/r.textproto", rule("one", R"(has { fact: "person.ramp" values: "no" })", ""));
  EXPECT_EQ(error(), "rules/r.textproto:1: one: sources: is missing");
}

TEST_F(RuleLoading, aCommonPracticeMustSayThatItHasNoSource) {
  write("rules/r.textproto",
        rule("one", R"(has { fact: "person.ramp" values: "no" })",
             R"(sources { kind: SOURCE_KIND_COMMON_PRACTICE text: "everybody knows" })"));
  EXPECT_EQ(
      error(),
      "rules/r.textproto:1: one: sources: a common practice begins with \"common practice, no source\"");
}

TEST_F(RuleLoading, wordsThatAreHardToReadAreRefused) {
  std::string text = rule("one", R"(has { fact: "person.ramp" values: "no" })");
  const std::string hard = "Discontinue ambulatory activities immediately.";
  text.replace(text.find("person: \"p\"") + 9, 1, hard);
  write("rules/r.textproto", text);
  EXPECT_EQ(error(), "rules/r.textproto:1: one: too hard to read: " + hard);
}

TEST_F(RuleLoading, anIdGivenTwiceIsRefusedAcrossFiles) {
  write("rules/s.textproto", rule("one", R"(has { fact: "person.ramp" values: "yes" })"));
  EXPECT_EQ(error(), "rules/s.textproto:1: one: is given twice");
  std::filesystem::remove(m_folder + "/rules/s.textproto");
  write("questions/r.textproto", question("mood", "bad"));
  EXPECT_EQ(error(), "questions/r.textproto:1: mood: is given twice");
}

TEST_F(RuleLoading, aTagToLeaveOutMustExist) {
  const std::string leave_out = R"(rules {
  id: "one"
  stage: STAGE_READY_CHECK
  when { has { fact: "answer.mood" values: "low" } }
  effect: EFFECT_LEAVE_OUT
  leave_out_tags: "TAG"
  words { key: "en" value { therapist: "t" person: "p" } }
)" + std::string(kSource) + "\n}\n";
  const auto with = [&leave_out](const std::string& tag) {
    std::string text = leave_out;
    return text.replace(text.find("\"TAG\"") + 1, 3, tag);
  };
  write("rules/r.textproto", with("prosthesis-on"));
  EXPECT_EQ(error(), "");
  write("rules/r.textproto", with("stairs"));
  EXPECT_EQ(error(), "");
  write("rules/r.textproto", with("lifts"));
  EXPECT_EQ(error(), "rules/r.textproto:1: one: leave_out_tags: there is no tag \"lifts\"");
}

TEST_F(RuleLoading, aMissingOrEmptyFolderIsNotFound) {
  std::filesystem::remove(m_folder + "/rules/r.textproto");
  EXPECT_EQ(loadRules(m_folder, Catalogue::builtIn()).status().code(), absl::StatusCode::kNotFound);
  std::filesystem::remove_all(m_folder + "/questions");
  EXPECT_EQ(loadRules(m_folder, Catalogue::builtIn()).status().code(), absl::StatusCode::kNotFound);
  EXPECT_EQ(RuleBook::load(m_folder).status().code(), absl::StatusCode::kNotFound);
}

}  // namespace
}  // namespace newel
