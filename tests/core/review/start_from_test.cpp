#include "core/review/start_from.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/library/default_entry.h"
#include "core/library/templates.h"
#include "core/practice/compile.h"
#include "core/records/check.h"
#include "core/review/review.h"
#include "tests/core/people/sample_people.h"

namespace newel {
namespace {

const Catalogue& catalogue() { return Catalogue::builtIn(); }
const RuleBook& rules() { return RuleBook::builtIn(); }

Beginning begin(const v1::ProgrammeTemplate& from, const v1::Person& person) {
  return beginFrom(from, person, catalogue(), rules());
}

// Somebody whom the template says it is for: a home that has all, no conditions, somebody near.
v1::Person madeUp(const v1::TemplateFit& fit, v1::LimbLossLevel level, v1::MobilityLevel mobility,
                  v1::Side side) {
  v1::Person person = test::transfemoralLeft();
  person.clear_limbs();
  person.set_mobility(mobility);
  const bool prosthesis = fit.phase() != v1::TEMPLATE_PHASE_BEFORE_PROSTHESIS;
  test::lose(person, side, level, prosthesis);
  if (fit.both_lost()) {
    test::lose(person, side == v1::SIDE_LEFT ? v1::SIDE_RIGHT : v1::SIDE_LEFT, level, prosthesis);
    person.set_strong_side(v1::SIDE_RIGHT);
  }
  return person;
}

std::vector<v1::Person> peopleFor(const v1::ProgrammeTemplate& from) {
  std::vector<v1::Person> people;
  for (const int level : from.fit().levels()) {
    for (int mobility = from.fit().least_mobility(); mobility <= from.fit().most_mobility(); ++mobility) {
      for (const auto side : {v1::SIDE_LEFT, v1::SIDE_RIGHT}) {
        people.push_back(madeUp(from.fit(), static_cast<v1::LimbLossLevel>(level),
                                static_cast<v1::MobilityLevel>(mobility), side));
      }
    }
  }
  return people;
}

v1::Programme draftOf(const v1::ProgrammeTemplate& from, const Beginning& beginning) {
  v1::Programme draft;
  draft.set_effective_day("2026-11-30");
  draft.set_end_day("2026-12-27");
  draft.set_zone("Europe/Berlin");
  draft.mutable_thresholds()->set_pain_stop_0_10(5);
  draft.mutable_thresholds()->set_pain_rise_0_10(2);
  for (const auto& entry : beginning.entries) {
    *draft.add_entries() = entry;
    draft.mutable_entries(draft.entries_size() - 1)
        ->set_id(test::idOf(100 + static_cast<std::uint64_t>(draft.entries_size())));
  }
  *draft.mutable_cards() = from.cards();
  return draft;
}

// Every level, every mobility level and both sides that a template says it is for: nothing is left out,
// nothing blocks, nothing even asks, and it could be signed as it stands.
TEST(StartingTemplates, areSafeForWhomTheySayTheyAreFor) {
  for (const auto& from : catalogue().templates()) {
    for (const auto& person : peopleFor(from)) {
      ASSERT_TRUE(check(person).ok()) << check(person);
      const std::string who = from.id() + " " + v1::LimbLossLevel_Name(person.limbs(0).level()) + " " +
                              v1::MobilityLevel_Name(person.mobility());
      EXPECT_TRUE(fitsPerson(from, person)) << who;
      const Beginning beginning = begin(from, person);
      for (const auto& left : beginning.left_out)
        ADD_FAILURE() << who << ": " << left.exercise_id << left.words;
      const auto review =
          reviewProgramme(draftOf(from, beginning), person, nullptr, catalogue(), rules(), "en");
      ASSERT_TRUE(review.ok()) << who << review.status();
      EXPECT_TRUE(review->may_sign) << who;
      for (const auto& entry : review->entries) {
        for (const auto& finding : entry.findings)
          EXPECT_GT(finding.effect(), v1::EFFECT_ASK) << who << ": " << entry.entry_id << finding.therapist();
      }
      for (const auto& finding : review->programme_findings)
        EXPECT_GT(finding.effect(), v1::EFFECT_ASK) << who << ": " << finding.therapist();
    }
  }
}

// Whatever the person, what was taken is never blocked and can be put into beats, and what was not is named.
TEST(BeginFrom, takesNothingThatIsBlockedAndLosesNothing) {
  int left_out = 0;
  for (const auto& from : catalogue().templates()) {
    for (const auto& sample : test::samplePeople()) {
      const Beginning beginning = begin(from, sample.person);
      EXPECT_EQ(beginning.entries.size() + beginning.left_out.size(),
                static_cast<std::size_t>(from.entries_size()));
      for (v1::Entry entry : beginning.entries) {
        entry.set_id(test::idOf(1));
        const auto findings = rules().check(entry, sample.person, catalogue());
        ASSERT_TRUE(findings.ok());
        for (const auto& finding : *findings)
          EXPECT_NE(finding.effect(), v1::EFFECT_BLOCK) << from.id() << " " << sample.name;
        EXPECT_TRUE(compileTimeline(entry, sample.person, catalogue(), "en").ok());
      }
      for (const auto& left : beginning.left_out) {
        ++left_out;
        EXPECT_EQ(left.words.empty(), left.why != LeftOut::Why::Blocked) << left.exercise_id;
      }
    }
  }
  EXPECT_GT(left_out, 5) << "templates meet people whom they do not fit";
}

TEST(BeginFrom, saysWhyInTheWordsOfTheRule) {
  v1::Person person = test::transfemoralLeft();
  person.add_conditions(v1::CONDITION_CANNOT_LIE_FACE_DOWN);
  const auto& all = catalogue().templates();
  const auto from = std::find_if(all.begin(), all.end(),
                                 [](const auto& one) { return one.id() == "first-steps-above-knee"; });
  ASSERT_NE(from, all.end());
  const Beginning beginning = begin(*from, person);
  EXPECT_EQ(beginning.entries.size(), 2U);
  ASSERT_EQ(beginning.left_out.size(), 1U);
  EXPECT_EQ(beginning.left_out[0].exercise_id, "face-down-lying");
  EXPECT_EQ(beginning.left_out[0].why, LeftOut::Why::Blocked);
  EXPECT_EQ(beginning.left_out[0].words, rules().rule("face-down-cannot")->words().at("en").therapist());
}

TEST(BeginFrom, whatIsGoneOrHasNoMeaningIsNamed) {
  v1::ProgrammeTemplate from = catalogue().templates().front();
  from.mutable_entries(0)->set_exercise_id("own-gone");
  const Beginning beginning = begin(from, test::transtibialRight());
  ASSERT_FALSE(beginning.left_out.empty());
  EXPECT_EQ(beginning.left_out[0].why, LeftOut::Why::NotThere);
  // A dose of another kind than the exercise has now.
  v1::ProgrammeTemplate stale = catalogue().templates().front();
  stale.mutable_entries(0)->mutable_dose()->mutable_minutes()->set_minutes(5);
  stale.mutable_entries(0)->mutable_dose()->mutable_minutes()->set_bouts(1);
  const Beginning second = begin(stale, test::transtibialRight());
  ASSERT_FALSE(second.left_out.empty());
  EXPECT_EQ(second.left_out[0].why, LeftOut::Why::NotThere);
}

TEST(BeginFrom, anAskIsTakenAndAsks) {
  v1::Person person = test::transfemoralLeft();
  person.add_conditions(v1::CONDITION_HEART_DISEASE);
  const auto& all = catalogue().templates();
  const auto from = std::find_if(all.begin(), all.end(),
                                 [](const auto& one) { return one.id() == "first-steps-above-knee"; });
  const Beginning beginning = begin(*from, person);
  EXPECT_EQ(beginning.entries.size(), 3U);
  const auto review = reviewProgramme(draftOf(*from, beginning), person, nullptr, catalogue(), rules(), "en");
  ASSERT_TRUE(review.ok());
  EXPECT_FALSE(review->may_sign) << "lying face down with heart disease needs a reason";
}

TEST(SuggestedFor, nothingIsSpokenAgainstAndEverybodyHasSome) {
  for (const auto& sample : test::samplePeople()) {
    const auto suggested = suggestedFor(sample.person, catalogue(), rules());
    EXPECT_GE(suggested.size(), 3U) << sample.name;
    int purpose = 0;
    for (const auto* exercise : suggested) {
      EXPECT_GE(exercise->purpose(), purpose) << "by purpose";
      purpose = exercise->purpose();
      EXPECT_GE(sample.person.mobility(), exercise->fit().least_mobility()) << sample.name << exercise->id();
      const auto findings = rules().check(defaultEntry(*exercise, sample.person), sample.person, catalogue());
      ASSERT_TRUE(findings.ok());
      for (const auto& finding : *findings) {
        EXPECT_NE(finding.effect(), v1::EFFECT_BLOCK) << sample.name << exercise->id();
        EXPECT_NE(finding.effect(), v1::EFFECT_ASK) << sample.name << exercise->id();
      }
    }
  }
}

TEST(SuggestedFor, followsTheRecord) {
  const auto has = [](const v1::Person& person, const std::string& id) {
    const auto suggested = suggestedFor(person, catalogue(), rules());
    return std::any_of(suggested.begin(), suggested.end(),
                       [&id](const auto* exercise) { return exercise->id() == id; });
  };
  v1::Person person = test::transtibialRight();
  EXPECT_TRUE(has(person, "face-down-lying"));
  person.add_conditions(v1::CONDITION_CANNOT_LIE_FACE_DOWN);
  EXPECT_FALSE(has(person, "face-down-lying"));
  EXPECT_TRUE(has(person, "quad-set"));
  EXPECT_FALSE(has(test::transfemoralLeft(), "quad-set")) << "not usual above the knee";
  EXPECT_FALSE(has(test::bothTranstibial(), "calf-stretch")) << "makes no sense without a sound limb";
}

}  // namespace
}  // namespace newel
