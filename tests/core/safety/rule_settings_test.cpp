// Rules in every language and with a clinic's own numbers.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/library/plain_words.h"
#include "core/safety/rule_book.h"
#include "tests/core/safety/safety_fixture.h"

namespace newel {
namespace {

using testing::HasSubstr;

std::vector<std::string> languages() { return Catalogue::builtIn().languages(); }

TEST(RuleLanguages, everyRuleAndQuestionSpeaksEveryLanguageOfTheCatalogue) {
  for (const std::string& language : languages()) {
    for (const auto& rule : RuleBook::builtIn().rules()) {
      ASSERT_TRUE(rule.words().contains(language)) << language << " " << rule.id();
      EXPECT_FALSE(rule.words().at(language).person().empty()) << rule.id();
      EXPECT_FALSE(rule.words().at(language).therapist().empty()) << rule.id();
    }
    for (const auto& question : RuleBook::builtIn().questions()) {
      ASSERT_TRUE(question.words().contains(language)) << language << " " << question.id();
      for (const auto& choice : question.choices())
        EXPECT_TRUE(choice.words().contains(language))
            << language << " " << question.id() << " " << choice.id();
    }
  }
}

TEST(RuleLanguages, spanishIsFairlyEasy) {
  for (const auto& rule : RuleBook::builtIn().rules()) {
    const std::string& text = rule.words().at("es").person();
    EXPECT_GE(spanishReadingEase(text), kLeastSpanishEase) << rule.id() << ": " << text;
  }
}

// Who is to be called first must not get lost on the way: the emergency number where English has it.
TEST(RuleLanguages, theEmergencyNumberIsNamedWhereverEnglishNamesIt) {
  const std::pair<std::string, std::string> names[] = {{"es", "número de emergencias"}, {"ar", "الطوارئ"}};
  int named = 0;
  for (const auto& rule : RuleBook::builtIn().rules()) {
    const bool in_english = rule.words().at("en").person().find("emergency number") != std::string::npos;
    named += in_english ? 1 : 0;
    for (const auto& [language, name] : names) {
      EXPECT_EQ(rule.words().at(language).person().find(name) != std::string::npos, in_english)
          << language << " " << rule.id();
    }
  }
  EXPECT_GT(named, 10);
}

// The numbers of a text are the same in every language.
TEST(RuleLanguages, carryTheSameSettings) {
  for (const auto& rule : RuleBook::builtIn().rules()) {
    for (const auto& [language, words] : rule.words()) {
      EXPECT_EQ(words.therapist().find('{'), std::string::npos) << language << " " << rule.id();
      EXPECT_EQ(words.person().find('{'), std::string::npos) << language << " " << rule.id();
    }
  }
}

TEST(RuleLanguages, aReaderGetsTheBaseLanguageOrEnglishWhole) {
  const auto& question = *RuleBook::builtIn().question("feeling");
  EXPECT_EQ(wordsOf(question, "es-MX").question(), question.words().at("es").question());
  EXPECT_EQ(wordsOf(question, "fi").question(), question.words().at("en").question());
  EXPECT_EQ(wordsOf(question.choices(0), "ar"), "بخير");
}

TEST(RuleSettings, aClinicsNumberMovesTheBoundAndTheWords) {
  const Catalogue& catalogue = Catalogue::builtIn();
  v1::ClinicSettings settings;
  (*settings.mutable_values())["minutes-a-day"] = 45;
  (*settings.mutable_values())["redness-minutes"] = 20;
  const RuleBook book = RuleBook::builtIn().with(settingValues(settings, catalogue));
  RuleFacts facts;
  facts["programme.minutes_per_day"] = {{}, 40};
  const auto says = [&facts](const RuleBook& rules) {
    std::string ids;
    for (const auto& finding : rules.checkProgramme(facts)) ids += finding.rule_id() + " ";
    return ids;
  };
  EXPECT_EQ(says(RuleBook::builtIn()), "programme-long-day ");
  EXPECT_EQ(says(book), "");
  facts["programme.minutes_per_day"] = {{}, 46};
  EXPECT_EQ(says(book), "programme-long-day ");
  EXPECT_THAT(book.checkProgramme(facts)[0].therapist(), HasSubstr("More than 45 minutes"));
  const auto* skin = book.question("skin");
  ASSERT_NE(skin, nullptr);
  EXPECT_EQ(wordsOf(skin->choices(2), "en"), "Red marks that do not fade in 20 minutes");
  EXPECT_THAT(wordsOf(skin->choices(2), "es"), HasSubstr("20 minutos"));
  // Setting again begins from the rules as written, not from what was filled in.
  EXPECT_EQ(wordsOf(book.with(usualSettings(catalogue)).question("skin")->choices(2), "en"),
            "Red marks that do not fade in 15 minutes");
}

TEST(RuleSettings, aTherapistReadsInTheirLanguage) {
  const RuleBook spanish = RuleBook::builtIn().with(usualSettings(Catalogue::builtIn()), "es");
  RuleFacts facts;
  facts["answer.feeling"] = {{"chest-pain"}, std::nullopt};
  EXPECT_EQ(spanish.readyFindings(facts, "en")[0].therapist(),
            "Dolor u opresión en el pecho antes de la práctica.");
  EXPECT_THAT(spanish.readyFindings(facts, "en")[0].person(), HasSubstr("No practice."));
}

}  // namespace
}  // namespace newel
