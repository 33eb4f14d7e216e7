// The clinic's own exercises: written from a movement, checked, led like any other, and revised without
// reaching back. The exercise and the clinic are invented.
#include "core/library/own_exercises.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/library/default_entry.h"
#include "core/library/settings.h"
#include "core/library/wording.h"
#include "core/practice/compile.h"
#include "core/records/check.h"
#include "core/safety/rule_book.h"
#include "tests/core/people/sample_people.h"

namespace newel {
namespace {

using testing::Contains;
using testing::HasSubstr;

const Catalogue& catalogue() { return Catalogue::builtIn(); }

// A standing exercise from `movement`, complete.
v1::OwnExercise written(const std::string& movement, const std::string& language = "en") {
  v1::OwnExercise own = beginOwn(*catalogue().movement(movement), catalogue(), "own-demo", language);
  own.set_clinic_id(test::idOf(1));
  own.set_author_id(test::idOf(2));
  own.set_author_name("Demo Therapist");
  own.mutable_written_at()->set_seconds(1700000000);
  v1::Exercise& exercise = *own.mutable_exercise();
  exercise.set_purpose(v1::PURPOSE_BALANCE);
  exercise.set_position(v1::POSITION_STANDING);
  exercise.set_prosthesis(v1::PROSTHESIS_USE_ON);
  exercise.set_both_sides(v1::BOTH_SIDES_SAME);
  exercise.add_muscles("trunk");
  exercise.add_supports(v1::SUPPORT_TWO_HANDS);
  exercise.add_supports(v1::SUPPORT_ONE_HAND);
  exercise.mutable_fit()->add_usual_levels(v1::LIMB_LOSS_LEVEL_TRANSTIBIAL);
  exercise.mutable_fit()->set_least_mobility(v1::MOBILITY_LEVEL_K2);
  for (const std::string& tag : tagsOfPosition(catalogue(), v1::POSITION_STANDING)) exercise.add_tags(tag);
  auto& source = *exercise.add_sources();
  source.set_kind(v1::SOURCE_KIND_COMMON_PRACTICE);
  source.set_text("common practice, no source: written by the clinic");
  v1::ExerciseWords& words = *own.mutable_words(0);
  words.set_title("Reach to the shelf");
  words.set_purpose("You learn to reach with ease.");
  words.set_start("Stand at the worktop.");
  words.add_good("You stand tall.");
  words.add_good("Your feet stay flat.");
  words.add_cautions("Keep the floor clear.");
  auto& fault = *words.add_faults();
  fault.set_seen("You lean far over.");
  fault.set_mend("Reach less far.");
  for (const v1::Part& part : exercise.parts()) {
    for (const v1::Phase& phase : part.phases()) {
      v1::Cue& cue = (*words.mutable_cues())[phase.id()];
      cue.set_screen("Reach now.");
      cue.set_spoken("Reach now.");
    }
  }
  return own;
}

std::string error(const v1::OwnExercise& own) { return std::string(checkOwn(own, catalogue()).message()); }

TEST(OwnExercise, everyMovementMakesOneThatCanBeKeptAndLed) {
  ASSERT_GE(catalogue().movements().size(), 5U);
  for (const v1::Movement& movement : catalogue().movements()) {
    const v1::OwnExercise own = written(movement.id());
    EXPECT_EQ(error(own), "") << movement.id();
    const Catalogue all = catalogue().with({own});
    for (const test::SamplePerson& sample : test::samplePeople()) {
      if (!ownsProsthesis(sample.person)) continue;  // it is done with the prosthesis on
      v1::Entry entry = defaultEntry(own.exercise(), sample.person);
      entry.set_id(test::idOf(9));
      entry.mutable_schedule()->set_times_per_week(3);
      entry.mutable_schedule()->add_windows()->set_to_min(1440);
      const auto timeline = compileTimeline(entry, sample.person, all, "en");
      EXPECT_TRUE(timeline.ok()) << movement.id() << " " << sample.name << ": " << timeline.status();
    }
  }
}

TEST(OwnExercise, rulesSeeItAndSayThatItIsTheClinicsOwn) {
  const v1::OwnExercise own = written("whole-body-hold");
  const Catalogue all = catalogue().with({own});
  v1::Person person = test::transfemoralLeft();
  v1::Entry entry = defaultEntry(own.exercise(), person);
  auto findings = RuleBook::builtIn().check(entry, person, all);
  ASSERT_TRUE(findings.ok()) << findings.status();
  const auto ids = [&findings] {
    std::vector<std::string> list;
    for (const auto& finding : *findings) list.push_back(finding.rule_id());
    return list;
  };
  EXPECT_THAT(ids(), Contains("own-exercise"));
  // It carries weight on the prosthesis, and the rules about a wound know it without having heard of it.
  person.add_conditions(v1::CONDITION_OPEN_WOUND);
  findings = RuleBook::builtIn().check(entry, person, all);
  ASSERT_TRUE(findings.ok());
  EXPECT_THAT(ids(), Contains("prosthesis-open-wound"));
}

TEST(OwnExercise, saysWhatIsMissingByItsField) {
  v1::OwnExercise own = written("one-side-hold");
  own.mutable_words(0)->clear_title();
  EXPECT_EQ(error(own), "words[0].title: is missing");
  own = written("one-side-hold");
  own.mutable_words(0)->mutable_cues()->erase("stay");
  EXPECT_THAT(error(own), HasSubstr("no cue \"stay\""));
  own = written("one-side-hold");
  (*own.mutable_words(0)->mutable_cues())["move"].set_spoken(
      "Reach up and over and out to the shelf as far as you can go today without any pain.");
  EXPECT_EQ(error(own), "words[0].cues[move]: spoken takes longer than its beat of 3 s");
  own = written("one-side-hold");
  own.mutable_exercise()->clear_tags();
  EXPECT_EQ(error(own), "exercise.tags: \"standing\" belongs to this position");
  own = written("one-side-hold");
  own.mutable_exercise()->add_tags("juggling");
  EXPECT_EQ(error(own), "exercise.tags[1]: no phrase \"tag.juggling\"");
  own = written("one-side-hold");
  own.mutable_exercise()->mutable_parts(0)->mutable_phases(0)->set_moves(v1::LIMB_ROLE_BOTH);
  EXPECT_EQ(error(own), "exercise.parts: are not the movement's");
  own = written("one-side-hold");
  own.set_movement("somersault");
  EXPECT_EQ(error(own), "movement: there is none of that id");
  own = written("one-side-hold");
  own.mutable_exercise()->set_id("sit-to-stand");
  own.mutable_words(0)->set_exercise_id("sit-to-stand");
  EXPECT_EQ(error(own), "exercise.id: must begin with \"own-\"");
  own = written("one-side-hold");
  own.set_picture("GIF89a");
  EXPECT_EQ(error(own), "picture: is neither JPEG nor PNG");
  own.set_picture("\xFF\xD8\xFF" + std::string(50000, 'x'));
  EXPECT_EQ(error(own), "picture: is larger than 48 KiB");
}

TEST(OwnExercise, wordsOfASoundLimbNeedASayOnBothLost) {
  v1::OwnExercise own = written("whole-body-hold");
  (*own.mutable_words(0)->mutable_cues())["move"].set_screen("Lean on your {sound}.");
  EXPECT_THAT(error(own), HasSubstr("when both limbs are lost"));
  own.mutable_exercise()->set_both_sides(v1::BOTH_SIDES_REFUSED);
  EXPECT_EQ(error(own), "");
}

TEST(OwnExercise, isShownInTheLanguageItWasWrittenIn) {
  v1::OwnExercise own = written("whole-body-hold", "es");
  EXPECT_EQ(own.words(0).language(), "es");
  EXPECT_EQ(error(own), "");
  const Catalogue all = catalogue().with({own});
  EXPECT_EQ(wordsOrEnglish(all, "own-demo", "en")->language(), "es");
}

TEST(OwnExercise, aRevisionLeavesTheOneBeforeAsItWas) {
  const v1::OwnExercise first = written("whole-body-hold");
  v1::OwnExercise second = first;
  second.mutable_exercise()->set_revision(2);
  second.mutable_words(0)->set_exercise_revision(2);
  second.mutable_words(0)->set_title("Reach to the high shelf");
  const Catalogue all = catalogue().with({first, second});
  EXPECT_EQ(all.find("own-demo")->revision(), 2U);
  EXPECT_EQ(all.find("own-demo", 1)->revision(), 1U);
  EXPECT_EQ(all.words("own-demo", "en", 1)->title(), "Reach to the shelf");
  EXPECT_EQ(all.words("own-demo", "en")->title(), "Reach to the high shelf");
  const v1::Person person = test::transtibialRight();
  v1::Entry entry = defaultEntry(first.exercise(), person);
  entry.set_id(test::idOf(9));
  entry.mutable_schedule()->set_times_per_week(3);
  entry.mutable_schedule()->add_windows()->set_to_min(1440);
  EXPECT_EQ(compileTimeline(entry, person, all, "en")->title(), "Reach to the shelf");
}

TEST(OwnExercise, aProgrammeCarriesWhatItNamesAndNothingElse) {
  const v1::OwnExercise own = written("whole-body-hold");
  const v1::Person person = test::transtibialRight();
  v1::Entry entry = defaultEntry(own.exercise(), person);
  entry.set_id(test::idOf(9));
  entry.mutable_schedule()->set_times_per_week(3);
  entry.mutable_schedule()->add_windows()->set_to_min(1440);
  v1::Programme programme = test::programmeOf(person, {entry});
  EXPECT_EQ(std::string(check(programme).message()),
            "entries[0].exercise_id: is the clinic's own and is not carried in own_exercises");
  *programme.add_own_exercises() = own;
  EXPECT_TRUE(check(programme).ok()) << check(programme);
  programme.clear_entries();
  *programme.add_entries() = test::entryOf("sit-to-stand", person);
  EXPECT_EQ(std::string(check(programme).message()), "own_exercises: one of them is in no entry");
}

TEST(OwnExercise, tagsOfAPositionAreWhatEveryExerciseThereCarries) {
  EXPECT_THAT(tagsOfPosition(catalogue(), v1::POSITION_STANDING), testing::ElementsAre("standing"));
  EXPECT_THAT(tagsOfPosition(catalogue(), v1::POSITION_STAIRS), Contains("needs-rail"));
  EXPECT_THAT(tagsOfPosition(catalogue(), v1::POSITION_LYING_FACE_DOWN), testing::ElementsAre("face-down"));
}

TEST(Settings, keepToTheirRangesAndFallBackToTheCautiousValue) {
  v1::ClinicSettings settings;
  settings.set_clinic_id(test::idOf(1));
  (*settings.mutable_values())["redness-minutes"] = 20;
  EXPECT_TRUE(fitsSettings(settings, catalogue()).ok());
  EXPECT_EQ(settingValues(settings, catalogue()).at("redness-minutes"), 20U);
  EXPECT_EQ(settingValues(settings, catalogue()).at("pain-stop"), 5U);
  (*settings.mutable_values())["redness-minutes"] = 60;
  EXPECT_EQ(std::string(fitsSettings(settings, catalogue()).message()),
            "values[redness-minutes]: 60 is over 30");
  EXPECT_EQ(settingValues(settings, catalogue()).at("redness-minutes"), 15U);
  (*settings.mutable_values())["redness-minutes"] = 15;
  (*settings.mutable_values())["wishes"] = 3;
  EXPECT_EQ(std::string(fitsSettings(settings, catalogue()).message()),
            "values[wishes]: there is no such setting");
}

TEST(Settings, fillWordsAndLeaveWhatTheyDoNotKnow) {
  const SettingValues values = usualSettings(catalogue());
  EXPECT_EQ(withSettings("after {redness-minutes} min, {redness-minutes} min", values),
            "after 15 min, 15 min");
  EXPECT_EQ(withSettings("{working} leg", values), "{working} leg");
}

// Every number a clinic can set has its range, its source and words in the whole languages.
TEST(Settings, haveSourcesAndWords) {
  ASSERT_GE(catalogue().settings().size(), 8U);
  for (const v1::SettingKind& kind : catalogue().settings()) {
    EXPECT_FALSE(kind.sources().empty()) << kind.id();
    EXPECT_TRUE(kind.words().contains("es")) << kind.id();
    EXPECT_NE(catalogue().phrase("unit." + kind.unit(), "en"), "") << kind.id();
  }
}

TEST(Cards, areTheSevenAskedForWithAWordOnWhomToPhone) {
  std::vector<std::string> ids;
  for (const v1::AdviceCard& card : catalogue().cards()) ids.push_back(card.id());
  EXPECT_THAT(
      ids, testing::UnorderedElementsAre("skin-check", "liner-and-sock-care", "sock-changes", "drink-and-eat",
                                         "after-a-fall", "phantom-feelings", "whom-to-phone"));
  for (const v1::AdviceCard& card : catalogue().cards()) {
    EXPECT_FALSE(catalogue().cardWords(card.id(), "en")->call_if().empty()) << card.id();
    EXPECT_EQ(catalogue().cardWords(card.id(), "en")->log_question().empty(),
              card.log() == v1::ADVICE_LOG_NOTHING);
  }
}

}  // namespace
}  // namespace newel
