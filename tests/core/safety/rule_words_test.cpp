// What rules and questions say: complete, plain, and never a promise.
#include <gtest/gtest.h>

#include <algorithm>

#include "core/library/plain_words.h"
#include "core/safety/rule_book.h"
#include "tests/core/safety/safety_fixture.h"

namespace newel {
namespace {

constexpr double kHardestGrade = 6;  // Flesch-Kincaid; the formula has its source in plain_words.h

bool endsASentence(const std::string& text) {
  return !text.empty() && (text.back() == '.' || text.back() == '?');
}

TEST(RuleWords, areReadAtGradeSixOrUnder) {
  for (const auto& rule : RuleBook::builtIn().rules()) {
    const std::string& person = rule.words().at("en").person();
    EXPECT_LE(readingGrade(person), kHardestGrade) << rule.id() << ": " << person;
  }
  for (const auto& question : RuleBook::builtIn().questions()) {
    const auto& words = question.words().at("en");
    EXPECT_LE(readingGrade(words.question()), kHardestGrade) << question.id() << ": " << words.question();
    EXPECT_LE(readingGrade(words.help()), kHardestGrade) << question.id() << ": " << words.help();
  }
}

TEST(RuleWords, areWholeSentencesWithoutPlaceholders) {
  for (const auto& rule : RuleBook::builtIn().rules()) {
    for (const auto& [language, words] : rule.words()) {
      for (const std::string& text : {words.therapist(), words.person()}) {
        EXPECT_TRUE(endsASentence(text)) << rule.id() << ": " << text;
        EXPECT_EQ(text.find('{'), std::string::npos) << rule.id() << ": " << text;
        EXPECT_EQ(text.find("  "), std::string::npos) << rule.id() << ": " << text;
      }
    }
  }
}

TEST(RuleWords, anAskAsksForAReasonOrForAFact) {
  for (const auto& rule : RuleBook::builtIn().rules()) {
    if (rule.effect() != v1::EFFECT_ASK) continue;
    const std::string& text = rule.words().at("en").therapist();
    bool asks = false;
    for (const std::string word : {"Say", "say", "Ask"}) asks = asks || text.find(word) != std::string::npos;
    EXPECT_TRUE(asks) << rule.id();
  }
}

// Rules may refuse, stop, lighten or ask: no sentence to the person tells them to do more.
TEST(RuleWords, neverTellThePersonToDoMore) {
  for (const auto& rule : RuleBook::builtIn().rules()) {
    const std::string& text = rule.words().at("en").person();
    for (const std::string more : {"do more", "Do more", "add a rep", "more sets", "go faster", "push on",
                                   "Push on", "no pain", "harder"}) {
      EXPECT_EQ(text.find(more), std::string::npos) << rule.id() << ": " << text;
    }
  }
}

TEST(RuleWords, aLeaveOutSaysSoAndANotTodaySaysWhatToDo) {
  for (const auto& rule : RuleBook::builtIn().rules()) {
    const std::string& text = rule.words().at("en").person();
    if (rule.effect() == v1::EFFECT_LEAVE_OUT) {
      EXPECT_NE(text.find("oday"), std::string::npos) << rule.id() << ": " << text;
    }
    if (rule.effect() == v1::EFFECT_NOT_TODAY) {
      EXPECT_GE(std::count(text.begin(), text.end(), '.'), 1) << rule.id();
      EXPECT_GE(text.size(), 30U) << rule.id();
    }
  }
}

// Every person with every exercise, every support it offers and both uses of the prosthesis: no word is
// missing, the order holds, and at most one caution is shown (hazard H17).
TEST(RuleWords, areThereForEveryPersonAndEveryEntry) {
  const auto& conditions = *v1::Condition_descriptor();
  std::vector<v1::Person> people;
  for (const auto& name : test::personNames()) {
    people.push_back(test::personNamed(name));
    for (int i = 1; i < conditions.value_count(); ++i) {
      people.push_back(test::personNamed(name));
      people.back().add_conditions(static_cast<v1::Condition>(conditions.value(i)->number()));
    }
  }
  std::size_t pairs = 0;
  for (const auto& person : people) {
    for (const auto& exercise : Catalogue::builtIn().exercises()) {
      for (const int support : exercise.supports()) {
        for (const auto use : {v1::PROSTHESIS_USE_ON, v1::PROSTHESIS_USE_OFF}) {
          v1::Entry entry = test::entryOf(exercise.id(), person);
          entry.set_support(static_cast<v1::Support>(support));
          entry.set_prosthesis(use);
          const auto findings = RuleBook::builtIn().check(entry, person, Catalogue::builtIn());
          ASSERT_TRUE(findings.ok()) << findings.status();
          ++pairs;
          for (const auto& finding : *findings) {
            ASSERT_FALSE(finding.therapist().empty() || finding.person().empty()) << finding.rule_id();
            ASSERT_FALSE(finding.sources().empty()) << finding.rule_id();
          }
          ASSERT_TRUE(std::is_sorted(findings->begin(), findings->end(),
                                     [](const auto& a, const auto& b) { return a.effect() < b.effect(); }));
          const auto caution = shownCaution(*findings);
          const bool any = std::any_of(findings->begin(), findings->end(), [](const auto& finding) {
            return finding.effect() == v1::EFFECT_CAUTION;
          });
          ASSERT_EQ(caution.has_value(), any);
        }
      }
    }
  }
  EXPECT_GE(pairs, people.size() * 12 * 2);
}

}  // namespace
}  // namespace newel
