#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "core/safety/rule_book.h"
#include "tests/core/safety/safety_fixture.h"

namespace newel {
namespace {

using test::factsNamed;

std::vector<std::string> idsOf(const std::vector<const v1::ReadyQuestion*>& questions) {
  std::vector<std::string> ids;
  for (const auto* question : questions) ids.push_back(question->id());
  return ids;
}

std::vector<std::string> asked(const std::string& conditions, const std::string& prosthesis,
                               bool both_lost = false) {
  const std::string facts = "person.both_lost=" + std::string(both_lost ? "yes" : "no") +
                            " today.prosthesis=" + prosthesis +
                            (conditions.empty() ? "" : " person.condition=" + conditions);
  return idsOf(RuleBook::builtIn().readyQuestions(factsNamed(facts)));
}

using Ids = std::vector<std::string>;

TEST(ReadyQuestions, areAskedInTheOrderOfTheirRank) {
  EXPECT_EQ(asked("", "on"), (Ids{"feeling", "skin", "fall", "fit"}));
}

TEST(ReadyQuestions, theFitIsAskedOnlyWhenTheProsthesisIsWornToday) {
  EXPECT_EQ(asked("", "off"), (Ids{"feeling", "skin", "fall"}));
  EXPECT_EQ(asked("", "off,on"), (Ids{"feeling", "skin", "fall", "fit"}));
}

TEST(ReadyQuestions, theOtherFootIsAskedAboutWhereFeelingOrBloodFlowIsPoor) {
  for (const std::string condition : {"diabetes", "neuropathy", "vascular-disease"}) {
    EXPECT_EQ(asked(condition, "on"), (Ids{"feeling", "skin-and-foot", "fall", "fit"})) << condition;
    EXPECT_EQ(asked(condition, "on", true), (Ids{"feeling", "skin", "fall", "fit"})) << "no other foot";
  }
}

TEST(ReadyQuestions, bloodSugarIsAskedOfPeopleWhoUseInsulin) {
  EXPECT_EQ(asked("diabetes,insulin", "on"), (Ids{"feeling", "skin-and-foot", "fall", "fit", "sugar"}));
  EXPECT_EQ(asked("diabetes", "on"), (Ids{"feeling", "skin-and-foot", "fall", "fit"}));
}

// Hazard H17: over all conditions, at most five and the first three always.
TEST(ReadyQuestions, areNeverMoreThanFiveAndRedFlagsAreAlwaysAsked) {
  const auto& conditions = *v1::Condition_descriptor();
  std::string all;
  for (int i = 1; i < conditions.value_count(); ++i) {
    all += (all.empty() ? "" : ",") + wordOf(conditions, conditions.value(i)->number());
    for (const std::string prosthesis : {"on", "off"}) {
      for (const bool both : {false, true}) {
        const Ids ids = asked(all, prosthesis, both);
        ASSERT_LE(ids.size(), kMostQuestions);
        ASSERT_GE(ids.size(), 3U);
        EXPECT_EQ(ids[0], "feeling");
        EXPECT_EQ(ids[1].rfind("skin", 0), 0U);
        EXPECT_EQ(ids[2], "fall");
      }
    }
  }
}

TEST(ReadyQuestions, moreThanFiveAreCutByRank) {
  const auto loaded = RuleBook::load(std::string(NEWEL_SOURCE_DIR) + "/tests/data/safety/seven_questions");
  ASSERT_TRUE(loaded.ok()) << loaded.status();
  EXPECT_EQ(idsOf(loaded->readyQuestions({})), (Ids{"a", "b", "c", "d", "e"}));
}

TEST(ReadyFindings, everyChoiceThatIsNotFineHasARuleAndEveryFineOneHasNone) {
  for (const auto& question : RuleBook::builtIn().questions()) {
    for (const auto& choice : question.choices()) {
      v1::ReadyAnswer answer;
      answer.set_question_id(question.id());
      answer.set_answer_id(choice.id());
      const auto findings = RuleBook::builtIn().readyFindings(answerFacts({answer}));
      EXPECT_EQ(findings.empty(), choice.fine()) << question.id() << ": " << choice.id();
    }
  }
}

TEST(ReadyFindings, theWorstComesFirstAndTheEmergencyNumberBeforeTheClinic) {
  const auto findings = RuleBook::builtIn().readyFindings(
      factsNamed("answer.fit=loose answer.skin=open answer.feeling=chest-pain answer.sugar=under-90"));
  EXPECT_EQ(test::namesOf(findings),
            "red-flag:ready-chest-pain red-flag:ready-skin-open not-today:ready-sugar-low "
            "leave-out:ready-fit-loose");
  EXPECT_TRUE(findings.front().emergency_first());
}

TEST(ReadyFindings, noAnswersMeanNothingStandsAgainstThePractice) {
  EXPECT_TRUE(RuleBook::builtIn().readyFindings({}).empty());
}

// Section 9 of the reference values: these signs are an emergency.
TEST(RedFlags, theSignsOfAnEmergencyPutItsNumberFirst) {
  for (const std::string facts : {"answer.feeling=chest-pain", "answer.feeling=fainted",
                                  "answer.feeling=breathless", "answer.feeling=weakness-or-speech",
                                  "answer.fall=head", "answer.fall=hurt person.condition=blood-thinners"}) {
    const auto findings = RuleBook::builtIn().readyFindings(factsNamed(facts));
    ASSERT_FALSE(findings.empty()) << facts;
    EXPECT_EQ(findings.front().effect(), v1::EFFECT_RED_FLAG) << facts;
    EXPECT_TRUE(findings.front().emergency_first()) << facts;
  }
  for (const std::string facts :
       {"stop.reason=chest-pain", "stop.reason=breathless", "stop.reason=weakness-or-speech",
        "stop.reason=fall person.condition=blood-thinners"}) {
    const auto findings = RuleBook::builtIn().practiceFindings(factsNamed(facts));
    ASSERT_FALSE(findings.empty()) << facts;
    EXPECT_EQ(findings.front().effect(), v1::EFFECT_RED_FLAG) << facts;
    EXPECT_TRUE(findings.front().emergency_first()) << facts;
  }
}

TEST(RedFlags, everyOneSaysWhomToCallAndLastsUntilTheClinicSays) {
  for (const auto& rule : RuleBook::builtIn().rules()) {
    if (rule.effect() != v1::EFFECT_RED_FLAG) continue;
    const std::string& words = rule.words().at("en").person();
    EXPECT_EQ(rule.until(), v1::UNTIL_CLINIC_SAYS) << rule.id();
    EXPECT_NE(words.find("clinic"), std::string::npos) << rule.id();
    if (rule.emergency_first()) {
      EXPECT_NE(words.find("emergency number"), std::string::npos) << rule.id();
    }
    EXPECT_FALSE(rule.hazard().empty()) << rule.id();
  }
}

TEST(RedFlags, noAnswerAndNoStopReasonTakesOneAway) {
  // Any further answer or rating beside a red flag leaves it standing, and first.
  for (const auto& question : RuleBook::builtIn().questions()) {
    for (const auto& choice : question.choices()) {
      if (question.id() == "feeling") continue;
      const auto findings = RuleBook::builtIn().readyFindings(
          factsNamed("answer.feeling=chest-pain answer." + question.id() + "=" + choice.id()));
      ASSERT_FALSE(findings.empty());
      EXPECT_EQ(findings.front().rule_id(), "ready-chest-pain");
      EXPECT_TRUE(endsPractice(findings.front()));
    }
  }
}

TEST(StopThresholds, painStopsOverTheLimitAndNotAtIt) {
  v1::StopThresholds thresholds;
  thresholds.set_pain_stop_0_10(5);
  thresholds.set_pain_rise_0_10(2);
  const RuleBook& book = RuleBook::builtIn();
  const auto said = [&](std::uint32_t before, std::uint32_t now) {
    return test::namesOf(book.practiceFindings(ratingFacts(before, now, std::nullopt, thresholds)));
  };
  EXPECT_EQ(said(5, 5), "-");
  EXPECT_EQ(said(5, 6), "not-today:pain-over-stop");
  EXPECT_EQ(said(1, 2), "-");
  EXPECT_EQ(said(1, 3), "end-entry:pain-over-rise");
  EXPECT_EQ(said(4, 1), "-");
  EXPECT_EQ(said(0, 8), "red-flag:pain-severe");
}

// Whatever a therapist signed as a limit, 0 to 10 before and after: never silent at 8 and more, never a stop
// when pain fell and lies under the limit.
TEST(StopThresholds, holdForEveryRatingAndEveryLimit) {
  for (std::uint32_t stop = 1; stop <= 10; ++stop) {
    for (std::uint32_t rise = 1; rise <= 10; ++rise) {
      v1::StopThresholds thresholds;
      thresholds.set_pain_stop_0_10(stop);
      thresholds.set_pain_rise_0_10(rise);
      for (std::uint32_t before = 0; before <= 10; ++before) {
        for (std::uint32_t now = 0; now <= 10; ++now) {
          const auto findings =
              RuleBook::builtIn().practiceFindings(ratingFacts(before, now, std::nullopt, thresholds));
          const bool over = now >= 8 || now > stop || (now > before && now - before >= rise);
          ASSERT_EQ(!findings.empty(), over) << before << " " << now << " " << stop << " " << rise;
          ASSERT_LE(findings.size(), 1U);
        }
      }
    }
  }
}

TEST(Words, arePickedInTheLanguageAskedForAndElseInEnglish) {
  const auto book = RuleBook::load(std::string(NEWEL_SOURCE_DIR) + "/tests/data/safety/seven_questions");
  ASSERT_TRUE(book.ok());
  const RuleFacts facts = factsNamed("answer.a=bad");
  EXPECT_EQ(book->readyFindings(facts, "es").front().person(), "Hoy no.");
  EXPECT_EQ(book->readyFindings(facts, "fr").front().person(), "Not today.");
  EXPECT_EQ(book->readyFindings(facts, "es").front().therapist(), "A bad answer.");
}

}  // namespace
}  // namespace newel
