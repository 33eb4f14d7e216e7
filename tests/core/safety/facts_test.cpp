#include "core/safety/facts.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/core/safety/safety_fixture.h"

namespace newel {
namespace {

using Words = std::set<std::string>;

Words wordsOf(const RuleFacts& facts, const std::string& name) {
  const auto found = facts.find(name);
  return found == facts.end() ? Words() : found->second.words;
}

std::optional<double> numberOf(const RuleFacts& facts, const std::string& name) {
  const auto found = facts.find(name);
  return found == facts.end() ? std::nullopt : found->second.number;
}

TEST(WordOf, isTheValueWithoutItsPrefixInLowerCase) {
  EXPECT_EQ(wordOf(*v1::LimbLossLevel_descriptor(), v1::LIMB_LOSS_LEVEL_PARTIAL_FOOT), "partial-foot");
  EXPECT_EQ(wordOf(*v1::StopReason_descriptor(), v1::STOP_REASON_WEAKNESS_OR_SPEECH), "weakness-or-speech");
  EXPECT_EQ(wordOf(*v1::Answer_descriptor(), v1::ANSWER_NOT_KNOWN), "not-known");
  EXPECT_EQ(wordOf(*v1::Answer_descriptor(), 0), "unspecified");
  EXPECT_EQ(wordOf(*v1::Answer_descriptor(), 77), "unknown");
}

TEST(PersonFacts, carryBothLimbsSideBySide) {
  v1::Person person = test::personNamed("both-tt-k3");
  test::change(person, "prosthesis_right=no");
  person.mutable_limbs(1)->set_level(v1::LIMB_LOSS_LEVEL_TRANSFEMORAL);
  person.mutable_limbs(1)->set_knee(v1::KNEE_KIND_NO_PROSTHESIS);
  const RuleFacts facts = factsOf(person);
  EXPECT_EQ(wordsOf(facts, "person.level"), (Words{"transtibial", "transfemoral"}));
  EXPECT_EQ(wordsOf(facts, "person.knee"), (Words{"own-knee", "no-prosthesis"}));
  EXPECT_EQ(wordsOf(facts, "person.foot"), (Words{"energy-storing", "no-prosthesis"}));
  EXPECT_EQ(wordsOf(facts, "person.has_prosthesis"), (Words{"yes", "no"}));
  EXPECT_EQ(wordsOf(facts, "person.both_lost"), Words{"yes"});
  EXPECT_EQ(wordsOf(facts, "person.strong_side"), Words{"left"});
}

TEST(PersonFacts, mobilityIsAWordAndANumberFromZero) {
  for (int level = 0; level <= 4; ++level) {
    v1::Person person = test::personNamed("tt-k3");
    test::change(person, "mobility=k" + std::to_string(level));
    const RuleFacts facts = factsOf(person);
    EXPECT_EQ(wordsOf(facts, "person.mobility"), Words{"k" + std::to_string(level)});
    EXPECT_EQ(numberOf(facts, "person.mobility"), level);
  }
}

TEST(PersonFacts, whatNobodyAskedIsNotKnownAndNeverNo) {
  const RuleFacts facts = factsOf(v1::Person());
  for (const std::string name :
       {"person.ramp", "person.counter", "person.rolling_chair", "person.floor_space", "person.someone_near",
        "person.can_get_up", "person.low_vision", "person.hard_of_hearing", "person.rails"}) {
    EXPECT_EQ(wordsOf(facts, name), Words{"not-known"}) << name;
  }
  EXPECT_TRUE(wordsOf(facts, "person.mobility").empty());
  EXPECT_FALSE(numberOf(facts, "person.mobility").has_value());
}

TEST(PersonFacts, conditionsAreASet) {
  v1::Person person = test::personNamed("tt-k3");
  EXPECT_TRUE(wordsOf(factsOf(person), "person.condition").empty());
  test::change(person, "condition=diabetes,insulin");
  EXPECT_EQ(wordsOf(factsOf(person), "person.condition"), (Words{"diabetes", "insulin"}));
}

TEST(EntryFacts, carryTheNumbersOfTheDoseThatIsSet) {
  const v1::Exercise exercise;
  v1::Entry entry;
  entry.mutable_dose()->mutable_sets()->set_sets(3);
  entry.mutable_dose()->mutable_sets()->set_repetitions(8);
  entry.mutable_dose()->mutable_sets()->set_hold_s(5);
  RuleFacts facts = factsOf(entry, exercise);
  EXPECT_EQ(numberOf(facts, "entry.sets"), 3);
  EXPECT_EQ(numberOf(facts, "entry.repetitions"), 8);
  EXPECT_EQ(numberOf(facts, "entry.hold_s"), 5);
  EXPECT_FALSE(numberOf(facts, "entry.minutes").has_value());
  entry.mutable_dose()->mutable_minutes()->set_minutes(10);
  entry.mutable_dose()->mutable_minutes()->set_bouts(2);
  facts = factsOf(entry, exercise);
  EXPECT_EQ(numberOf(facts, "entry.minutes"), 20) << "all bouts together";
  EXPECT_FALSE(numberOf(facts, "entry.sets").has_value());
  entry.mutable_dose()->mutable_passes()->set_passes(4);
  EXPECT_EQ(numberOf(factsOf(entry, exercise), "entry.passes"), 4);
  entry.clear_dose();
  EXPECT_FALSE(numberOf(factsOf(entry, exercise), "entry.passes").has_value());
}

TEST(EntryFacts, aLegLeadsWhereAPhaseAsksForTheStrongerOne) {
  const v1::Person person = test::personNamed("tt-k3");
  const auto leads = [&person](const std::string& id) {
    return wordsOf(factsOf(test::entryOf(id, person), *Catalogue::builtIn().find(id)), "exercise.leads");
  };
  EXPECT_EQ(leads("stairs-one-at-a-time"), Words{"yes"});
  EXPECT_EQ(leads("stairs-step-over-step"), Words{"yes"});
  EXPECT_EQ(leads("ramp-up-down"), Words{"yes"});
  EXPECT_EQ(leads("weight-shift-side"), Words{"no"});
  EXPECT_EQ(leads("curl-up-legs-lifted"), Words{"no"});
}

TEST(EntryFacts, thresholdsAreFactsOnlyWhereTheEntryHasItsOwn) {
  v1::Entry entry;
  EXPECT_FALSE(numberOf(factsOf(entry, {}), "entry.pain_stop").has_value());
  entry.mutable_thresholds()->set_pain_stop_0_10(4);
  entry.mutable_thresholds()->set_pain_rise_0_10(2);
  EXPECT_EQ(numberOf(factsOf(entry, {}), "entry.pain_stop"), 4);
  EXPECT_EQ(numberOf(factsOf(entry, {}), "entry.pain_rise"), 2);
  v1::Programme programme;
  programme.mutable_thresholds()->set_pain_stop_0_10(5);
  EXPECT_EQ(thresholdsOf(programme, entry).pain_stop_0_10(), 4U);
  EXPECT_EQ(thresholdsOf(programme, v1::Entry()).pain_stop_0_10(), 5U);
}

// The rail is recorded as seen going up; amputee.co.nz wants it on the prosthetic side going down.
TEST(FitFacts, theRailChangesHandsGoingDown) {
  const auto side = [](const std::string& name, const std::string& rails) {
    v1::Person person = test::personNamed(name);
    test::change(person, "rails=" + rails);
    const v1::Entry entry = test::entryOf("stairs-one-at-a-time", person);
    return wordsOf(fitFacts(person, entry, *Catalogue::builtIn().find("stairs-one-at-a-time")),
                   "fit.rail_going_down");
  };
  EXPECT_EQ(side("tt-k3", "left-going-up"), Words{"sound-side"}) << "left limb lost";
  EXPECT_EQ(side("tt-k3", "right-going-up"), Words{"prosthetic-side"});
  EXPECT_EQ(side("tf-yielding-k3", "left-going-up"), Words{"prosthetic-side"}) << "right limb lost";
  EXPECT_EQ(side("tf-yielding-k3", "right-going-up"), Words{"sound-side"});
  EXPECT_EQ(side("tt-k3", "both"), Words{"both"});
  EXPECT_EQ(side("tt-k3", "none"), Words{"none"});
  EXPECT_EQ(side("tt-k3", "no-stairs"), Words{"none"});
  EXPECT_EQ(side("tt-k3", "not-known"), Words{"not-known"});
  EXPECT_TRUE(side("both-tt-k3", "both").empty()) << "no prosthetic side to speak of";
}

TEST(FitFacts, shortageIsNeverNegative) {
  v1::Person person = test::personNamed("tt-k3");
  const v1::Entry entry = test::entryOf("even-weight-standing", person);
  const v1::Exercise& exercise = *Catalogue::builtIn().find("even-weight-standing");
  EXPECT_EQ(numberOf(fitFacts(person, entry, exercise), "fit.chairs_short"), 0);
  EXPECT_EQ(numberOf(fitFacts(person, entry, exercise), "fit.mobility_short"), 0);
  test::change(person, "chairs=0 mobility=k0");
  EXPECT_EQ(numberOf(fitFacts(person, entry, exercise), "fit.chairs_short"), 2);
  EXPECT_EQ(numberOf(fitFacts(person, entry, exercise), "fit.mobility_short"), 1);
}

TEST(FitFacts, oneUnusualLevelOfTwoIsUnusual) {
  v1::Person person = test::personNamed("both-tt-k3");
  const v1::Entry entry = test::entryOf("stairs-step-over-step", person);
  const v1::Exercise& exercise = *Catalogue::builtIn().find("stairs-step-over-step");
  EXPECT_EQ(wordsOf(fitFacts(person, entry, exercise), "fit.usual_level"), Words{"yes"});
  person.mutable_limbs(1)->set_level(v1::LIMB_LOSS_LEVEL_TRANSFEMORAL);
  EXPECT_EQ(wordsOf(fitFacts(person, entry, exercise), "fit.usual_level"), Words{"no"});
}

TEST(TodayFacts, areTheTagsAndProsthesesOfAllEntriesTogether) {
  const v1::Person person = test::personNamed("tt-k3");
  std::vector<v1::Entry> entries = {test::entryOf("curl-up-legs-lifted", person),
                                    test::entryOf("sit-to-stand", person)};
  RuleFacts facts = todayFacts(entries, Catalogue::builtIn());
  EXPECT_EQ(numberOf(facts, "today.entries"), 2);
  EXPECT_EQ(wordsOf(facts, "today.prosthesis"), (Words{"on", "off"}));
  EXPECT_TRUE(wordsOf(facts, "today.tag").contains("floor"));
  EXPECT_TRUE(wordsOf(facts, "today.tag").contains("standing"));
  entries[1].set_exercise_id("unknown-exercise");
  facts = todayFacts(entries, Catalogue::builtIn());
  EXPECT_EQ(wordsOf(facts, "today.prosthesis"), (Words{"on", "off"}));
  EXPECT_FALSE(wordsOf(facts, "today.tag").contains("standing"));
}

TEST(StopFacts, areTheWordOfTheReason) {
  EXPECT_EQ(wordsOf(stopFacts(v1::STOP_REASON_CHEST_PAIN), "stop.reason"), Words{"chest-pain"});
  EXPECT_TRUE(stopFacts(v1::STOP_REASON_UNSPECIFIED).empty());
}

TEST(RatingFacts, whatWasNotRatedGivesNoWordEitherWay) {
  v1::StopThresholds thresholds;
  thresholds.set_pain_stop_0_10(5);
  thresholds.set_pain_rise_0_10(2);
  const RuleFacts nothing = ratingFacts(std::nullopt, std::nullopt, std::nullopt, thresholds);
  EXPECT_TRUE(wordsOf(nothing, "rating.over_stop").empty());
  EXPECT_TRUE(wordsOf(nothing, "rating.over_rise").empty());
  EXPECT_EQ(numberOf(nothing, "threshold.pain_stop"), 5);
  const RuleFacts now_only = ratingFacts(std::nullopt, 7, 3, thresholds);
  EXPECT_EQ(wordsOf(now_only, "rating.over_stop"), Words{"yes"});
  EXPECT_TRUE(wordsOf(now_only, "rating.over_rise").empty());
  EXPECT_EQ(numberOf(now_only, "rating.effort"), 3);
  const RuleFacts before_only = ratingFacts(4, std::nullopt, std::nullopt, thresholds);
  EXPECT_EQ(numberOf(before_only, "rating.pain_before"), 4);
  EXPECT_TRUE(wordsOf(before_only, "rating.over_rise").empty());
}

TEST(RatingFacts, aFallOfPainIsARiseOfZero) {
  v1::StopThresholds thresholds;
  thresholds.set_pain_stop_0_10(5);
  thresholds.set_pain_rise_0_10(1);
  const RuleFacts facts = ratingFacts(6, 2, std::nullopt, thresholds);
  EXPECT_EQ(numberOf(facts, "rating.pain_rise"), 0);
  EXPECT_EQ(wordsOf(facts, "rating.over_rise"), Words{"no"});
  thresholds.set_pain_rise_0_10(0);
  EXPECT_EQ(wordsOf(ratingFacts(3, 3, std::nullopt, thresholds), "rating.over_rise"), Words{"no"});
}

TEST(HistoryFacts, aFirstPracticeHasNoDaysSinceTheLast) {
  const RuleFacts first = historyFacts({});
  EXPECT_EQ(wordsOf(first, "history.first_practice"), Words{"yes"});
  EXPECT_FALSE(numberOf(first, "history.days_since_last_practice").has_value());
  EXPECT_FALSE(numberOf(first, "history.last_pain").has_value());
  PracticeHistory history;
  history.days_since_last_practice = 0;
  history.last_pain = 4;
  history.red_flag_open = true;
  history.fell_since_last = true;
  const RuleFacts facts = historyFacts(history);
  EXPECT_EQ(wordsOf(facts, "history.first_practice"), Words{"no"});
  EXPECT_EQ(numberOf(facts, "history.days_since_last_practice"), 0);
  EXPECT_EQ(numberOf(facts, "history.last_pain"), 4);
  EXPECT_EQ(wordsOf(facts, "history.red_flag_open"), Words{"yes"});
  EXPECT_EQ(wordsOf(facts, "history.fell_since_last"), Words{"yes"});
}

TEST(Merged, laterSetsWin) {
  const RuleFacts facts =
      merged({test::factsNamed("person.ramp=no person.chairs#1"), test::factsNamed("person.ramp=yes")});
  EXPECT_EQ(wordsOf(facts, "person.ramp"), Words{"yes"});
  EXPECT_EQ(numberOf(facts, "person.chairs"), 1);
}

// Facts that are made and not in the table could be in no rule; words that are made and not in it neither.
TEST(FactTable, knowsEveryFactAndWordThatIsMade) {
  for (const auto& name : test::personNames()) {
    const v1::Person person = test::personNamed(name);
    for (const auto& exercise : Catalogue::builtIn().exercises()) {
      const v1::Entry entry = test::entryOf(exercise.id(), person);
      PracticeHistory history;
      history.days_since_last_practice = 3;
      history.last_pain = 2;
      const RuleFacts facts =
          merged({factsOf(person), factsOf(entry, exercise), fitFacts(person, entry, exercise),
                  todayFacts({entry}, Catalogue::builtIn()), stopFacts(v1::STOP_REASON_FALL),
                  ratingFacts(1, 2, 3, v1::StopThresholds()), historyFacts(history)});
      for (const auto& [fact, value] : facts) {
        const auto& names = factNames();
        ASSERT_TRUE(std::find(names.begin(), names.end(), fact) != names.end()) << fact;
        for (const auto& word : value.words)
          EXPECT_EQ(whyNotWord(fact, word, Catalogue::builtIn()), "") << fact;
        if (value.number) {
          EXPECT_EQ(whyNotNumber(fact), "") << fact;
        }
      }
    }
  }
}

TEST(FactTable, isSortedAndKnowsNothingElse) {
  EXPECT_TRUE(std::is_sorted(factNames().begin(), factNames().end()));
  EXPECT_EQ(whyNotWord("person.ramp", "unspecified", Catalogue::builtIn()),
            "\"person.ramp\" is never \"unspecified\"");
  EXPECT_EQ(whyNotWord("entry.prosthesis", "either", Catalogue::builtIn()),
            "\"entry.prosthesis\" is never \"either\"");
  EXPECT_EQ(whyNotNumber("nothing.here"), "there is no fact \"nothing.here\"");
}

}  // namespace
}  // namespace newel
