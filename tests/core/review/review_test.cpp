#include "core/review/review.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>
#include <set>

#include "core/practice/compile.h"
#include "tests/core/safety/safety_fixture.h"
#include "tests/core/schedule/programme_fixture.h"

namespace newel {
namespace {

v1::Entry& add(v1::Programme& programme, const std::string& exercise, const v1::Person& person,
               const v1::Schedule& schedule) {
  v1::Entry& entry = *programme.add_entries();
  entry = test::entryOf(exercise, person);
  entry.set_id(test::idNumbered(100 + programme.entries_size()));
  *entry.mutable_schedule() = schedule;
  return entry;
}

// What a therapist has before signing: no number, no signer, no instant.
v1::Programme draftOf(const v1::Person& person, const std::vector<std::string>& exercises) {
  v1::Programme draft;
  draft.set_effective_day("2026-11-30");
  draft.set_end_day("2026-12-27");
  draft.set_zone("Europe/Berlin");
  draft.mutable_thresholds()->set_pain_stop_0_10(5);
  draft.mutable_thresholds()->set_pain_rise_0_10(2);
  for (const auto& exercise : exercises) {
    add(draft, exercise, person, test::weekdays({v1::WEEKDAY_MONDAY, v1::WEEKDAY_THURSDAY}));
  }
  return draft;
}

absl::StatusOr<Review> review(const v1::Programme& draft, const v1::Person& person,
                              const v1::Programme* last = nullptr) {
  return reviewProgramme(draft, person, last, Catalogue::builtIn(), RuleBook::builtIn(), "en");
}

bool says(const std::vector<v1::Finding>& findings, const std::string& rule) {
  for (const auto& finding : findings) {
    if (finding.rule_id() == rule) return true;
  }
  return false;
}

TEST(Review, minutesAreThoseOfTheTimelinesOnTheDaysOfTheSchedule) {
  const v1::Person person = test::personNamed("tt-k3");
  v1::Programme draft = draftOf(person, {"sit-to-stand", "weight-shift-side"});
  *draft.mutable_entries(1)->mutable_schedule() = test::timesPerWeek(1);
  v1::Window* evening = draft.mutable_entries(1)->mutable_schedule()->add_windows();
  evening->set_from_min(1000);
  evening->set_to_min(1100);
  const auto result = review(draft, person);
  ASSERT_TRUE(result.ok()) << result.status();
  std::array<double, 2> minutes{};
  for (int i = 0; i < 2; ++i) {
    const auto timeline = compileTimeline(draft.entries(i), person, Catalogue::builtIn(), "en");
    ASSERT_TRUE(timeline.ok()) << timeline.status();
    minutes[static_cast<std::size_t>(i)] = static_cast<double>(timeline->total_ms()) / 60000;
    EXPECT_EQ(result->entries[static_cast<std::size_t>(i)].total_ms, timeline->total_ms());
    EXPECT_EQ(result->entries[static_cast<std::size_t>(i)].asked.repetitions(),
              timeline->asked().repetitions());
  }
  EXPECT_DOUBLE_EQ(result->minutes_by_weekday[0], minutes[0] + 2 * minutes[1]) << "two windows";
  EXPECT_DOUBLE_EQ(result->minutes_by_weekday[3], minutes[0]);
  for (const std::size_t day : {1U, 2U, 4U, 5U, 6U}) EXPECT_DOUBLE_EQ(result->minutes_by_weekday[day], 0);
  EXPECT_TRUE(result->may_sign);
  EXPECT_TRUE(result->changes.empty());
}

TEST(Review, aBlockStandsInTheWayOfSigning) {
  v1::Person person = test::personNamed("tt-k3");
  test::change(person, "rails=none");
  const auto result = review(draftOf(person, {"sit-to-stand", "stairs-one-at-a-time"}), person);
  ASSERT_TRUE(result.ok());
  EXPECT_FALSE(result->may_sign);
  EXPECT_TRUE(result->entries[0].findings.empty());
  EXPECT_TRUE(says(result->entries[1].findings, "stairs-no-rail"));
}

TEST(Review, anAskNeedsItsReason) {
  const v1::Person person = test::personNamed("tf-yielding-k3");
  v1::Programme draft = draftOf(person, {"stairs-step-over-step"});
  EXPECT_FALSE(review(draft, person)->may_sign);
  v1::Override* answer = draft.mutable_entries(0)->add_overrides();
  answer->set_rule_id("step-over-step-knee-yields");
  answer->set_reason("Trained here on three days.");
  EXPECT_TRUE(review(draft, person)->may_sign);
}

TEST(Review, whatCannotBeCompiledSaysWhyAndIsNoError) {
  const v1::Person person = test::personNamed("tt-k3");
  v1::Programme draft = draftOf(person, {"sit-to-stand"});
  draft.mutable_entries(0)->set_exercise_id("sit-to-fly");
  auto result = review(draft, person);
  ASSERT_TRUE(result.ok()) << result.status();
  EXPECT_FALSE(result->may_sign);
  EXPECT_NE(result->entries[0].problem.find("sit-to-fly"), std::string::npos);
  EXPECT_EQ(result->entries[0].total_ms, 0);
  draft = draftOf(person, {"sit-to-stand"});
  draft.mutable_entries(0)->mutable_dose()->mutable_minutes()->set_minutes(5);
  result = review(draft, person);
  ASSERT_TRUE(result.ok());
  EXPECT_FALSE(result->entries[0].problem.empty());
  EXPECT_FALSE(result->may_sign);
}

TEST(Review, aLongDayIsAskedAboutOverTheWholeProgramme) {
  const v1::Person person = test::personNamed("tt-k3");
  v1::Programme draft = draftOf(person, {"face-down-lying", "curl-up-legs-lifted"});
  draft.mutable_entries(0)->mutable_dose()->mutable_minutes()->set_minutes(40);
  auto result = review(draft, person);
  ASSERT_TRUE(result.ok());
  EXPECT_TRUE(says(result->programme_findings, "programme-long-day"));
  EXPECT_FALSE(result->may_sign);
  v1::Override* answer = draft.mutable_entries(1)->add_overrides();
  answer->set_rule_id("programme-long-day");
  answer->set_reason("Half of it is lying still.");
  result = review(draft, person);
  EXPECT_TRUE(result->may_sign) << "answered in any entry";
  EXPECT_EQ(result->programme_findings[0].overridden_reason(), "Half of it is lying still.");
}

TEST(Review, moreThanFourExercisesADayAreNoted) {
  const v1::Person person = test::personNamed("tt-k3");
  const std::vector<std::string> five = {"sit-to-stand", "weight-shift-side", "even-weight-standing",
                                         "step-through", "curl-up-legs-lifted"};
  v1::Programme draft = draftOf(person, five);
  EXPECT_TRUE(says(review(draft, person)->programme_findings, "programme-many-exercises"));
  *draft.mutable_entries(4)->mutable_schedule() = test::weekdays({v1::WEEKDAY_TUESDAY});
  EXPECT_FALSE(says(review(draft, person)->programme_findings, "programme-many-exercises"))
      << "five entries, never five on one day";
}

TEST(Review, aJumpOfTheWeeksMinutesIsAskedAbout) {
  const v1::Person person = test::personNamed("tt-k3");
  const v1::Programme last = draftOf(person, {"sit-to-stand"});
  v1::Programme draft = last;
  EXPECT_FALSE(says(review(draft, person, &last)->programme_findings, "programme-rise"));
  draft.mutable_entries(0)->mutable_dose()->mutable_sets()->set_sets(6);
  EXPECT_TRUE(says(review(draft, person, &last)->programme_findings, "programme-rise-large"));
  EXPECT_FALSE(says(review(draft, person)->programme_findings, "programme-rise-large"))
      << "a first programme rises against nothing";
  EXPECT_FALSE(says(review(last, person, &draft)->programme_findings, "programme-rise-large"))
      << "less than before";
  v1::Programme broken = last;
  broken.mutable_entries(0)->set_exercise_id("gone");
  EXPECT_FALSE(says(review(draft, person, &broken)->programme_findings, "programme-rise-large"))
      << "a last programme that cannot be read is not compared with";
}

// American College of Sports Medicine 1998, older or frail adults: at least 48 h between the same muscles,
// which is every other day.
TEST(Review, strengthOfTheSameMusclesOnDaysInARowIsNoted) {
  const v1::Person person = test::personNamed("tt-k3");
  const auto close = [&person](const std::vector<std::string>& exercises,
                               const std::vector<v1::Schedule>& schedules) {
    v1::Programme draft = draftOf(person, {});
    for (std::size_t i = 0; i < exercises.size(); ++i) add(draft, exercises[i], person, schedules[i]);
    return says(review(draft, person)->programme_findings, "programme-same-muscles-close");
  };
  const v1::Schedule every_other =
      test::weekdays({v1::WEEKDAY_MONDAY, v1::WEEKDAY_WEDNESDAY, v1::WEEKDAY_FRIDAY});
  const v1::Schedule in_a_row = test::weekdays({v1::WEEKDAY_MONDAY, v1::WEEKDAY_TUESDAY});
  const v1::Schedule over_the_week = test::weekdays({v1::WEEKDAY_MONDAY, v1::WEEKDAY_SUNDAY});
  const v1::Schedule tuesday = test::weekdays({v1::WEEKDAY_TUESDAY});
  EXPECT_FALSE(close({"bridge-over-roll"}, {every_other}));
  EXPECT_TRUE(close({"bridge-over-roll"}, {in_a_row}));
  EXPECT_TRUE(close({"bridge-over-roll"}, {over_the_week})) << "Sunday is followed by Monday";
  EXPECT_TRUE(close({"bridge-over-roll", "face-down-hip-extension"}, {every_other, tuesday}))
      << "two exercises of the back of the hip";
  EXPECT_FALSE(close({"bridge-over-roll", "band-row"}, {every_other, tuesday})) << "other muscles";
  EXPECT_FALSE(close({"weight-shift-side"}, {in_a_row})) << "no strength work";
}

TEST(Review, cardsThatComeGoOrMoveAreChanges) {
  const v1::Person person = test::personNamed("tt-k3");
  v1::Programme last = draftOf(person, {"sit-to-stand"});
  const auto card = [](v1::Programme& programme, const std::string& id) {
    auto& entry = *programme.add_cards();
    entry.set_card_id(id);
    entry.set_card_revision(1);
    entry.mutable_days()->add_days(v1::WEEKDAY_MONDAY);
  };
  card(last, "skin-check");
  card(last, "after-a-fall");
  v1::Programme draft = draftOf(person, {"sit-to-stand"});
  card(draft, "skin-check");
  draft.mutable_cards(0)->mutable_days()->add_days(v1::WEEKDAY_FRIDAY);
  card(draft, "sock-changes");
  const std::vector<std::string> changes = changesBetween(last, draft, Catalogue::builtIn(), "en");
  EXPECT_EQ(changes,
            (std::vector<std::string>{"The card has changed: Look at your skin.",
                                      "New card: Socks through the day.", "No longer: After a fall."}));
}

TEST(Review, factsOfThePersonReachTheRulesOfTheProgramme) {
  v1::Person person = test::personNamed("tt-k3");
  test::change(person, "condition=insulin,blood-thinners");
  const auto result = review(draftOf(person, {"curl-up-legs-lifted"}), person);
  ASSERT_TRUE(result.ok());
  EXPECT_TRUE(says(result->programme_findings, "programme-insulin"));
  EXPECT_TRUE(says(result->programme_findings, "programme-blood-thinners"));
  EXPECT_TRUE(result->may_sign);
}

std::string errorOf(const v1::Programme& draft, const v1::Person& person) {
  const auto result = review(draft, person);
  EXPECT_EQ(result.status().code(), absl::StatusCode::kInvalidArgument);
  return std::string(result.status().message());
}

TEST(Review, aDraftThatCannotBeReadNamesItsField) {
  const v1::Person person = test::personNamed("tt-k3");
  v1::Programme draft = draftOf(person, {});
  EXPECT_EQ(errorOf(draft, person), "entries: is missing");
  draft = draftOf(person, std::vector<std::string>(21, "sit-to-stand"));
  EXPECT_EQ(errorOf(draft, person), "entries: more than 20");
  draft = draftOf(person, {"sit-to-stand", "sit-to-stand"});
  draft.mutable_entries(1)->set_id(draft.entries(0).id());
  EXPECT_EQ(errorOf(draft, person), "entries[1].id: is given twice");
  draft = draftOf(person, {"sit-to-stand"});
  draft.mutable_entries(0)->mutable_schedule()->clear_windows();
  EXPECT_EQ(errorOf(draft, person).rfind("entries[0].schedule.windows:", 0), 0U);
  draft = draftOf(person, {"sit-to-stand"});
  draft.set_end_day("2026-11-29");
  EXPECT_EQ(errorOf(draft, person), "end_day: is before effective_day");
  draft.set_end_day("soon");
  EXPECT_EQ(errorOf(draft, person).rfind("end_day:", 0), 0U);
  draft.set_effective_day("");
  EXPECT_EQ(errorOf(draft, person).rfind("effective_day:", 0), 0U);
  v1::Person nobody = person;
  nobody.clear_limbs();
  EXPECT_EQ(errorOf(draftOf(person, {"sit-to-stand"}), nobody).rfind("person.limbs:", 0), 0U);
}

using Sentences = std::vector<std::string>;

Sentences changes(const v1::Programme& last, const v1::Programme& draft) {
  return changesBetween(last, draft, Catalogue::builtIn(), "en");
}

std::string titleOf(const std::string& exercise) {
  return Catalogue::builtIn().words(exercise, "en")->title();
}

TEST(Changes, sayWhatIsNewAndWhatIsGone) {
  const v1::Person person = test::personNamed("tt-k3");
  const v1::Programme last = draftOf(person, {"sit-to-stand"});
  v1::Programme draft = draftOf(person, {"weight-shift-side"});
  draft.mutable_entries(0)->set_id(test::idNumbered(777));
  EXPECT_EQ(changes(last, draft), (Sentences{"New: " + titleOf("weight-shift-side") + ".",
                                             "No longer: " + titleOf("sit-to-stand") + "."}));
  EXPECT_EQ(changes(last, last), Sentences{});
}

TEST(Changes, sayThatAPhotoOrAClipCameChangedOrWent) {
  const v1::Person person = test::personNamed("tt-k3");
  const v1::Programme plain = draftOf(person, {"sit-to-stand"});
  v1::Programme with = plain;
  with.mutable_entries(0)->mutable_photo()->set_words("Feet flat");
  with.mutable_entries(0)->mutable_clip()->set_words("Rising");
  v1::Programme another = with;
  another.mutable_entries(0)->mutable_photo()->set_sha256("other");
  const std::string title = titleOf("sit-to-stand");
  EXPECT_EQ(changes(plain, with),
            (Sentences{title + ": a photo goes with it.", title + ": a clip goes with it."}));
  EXPECT_EQ(changes(with, another), Sentences{title + ": another photo goes with it."});
  EXPECT_EQ(changes(with, plain), (Sentences{title + ": the photo is gone.", title + ": the clip is gone."}));
  EXPECT_EQ(changes(with, with), Sentences{});
}

TEST(Review, aPhotoOrAClipWithoutWordsStandsInTheWayOfSigning) {
  const v1::Person person = test::personNamed("tt-k3");
  v1::Programme draft = draftOf(person, {"sit-to-stand"});
  v1::MediaRef& photo = *draft.mutable_entries(0)->mutable_photo();
  photo.set_type(v1::MEDIA_TYPE_JPEG);
  photo.set_sha256(std::string(32, 'p'));
  photo.set_size_bytes(1000);
  photo.set_words(" ");
  auto result = review(draft, person);
  ASSERT_TRUE(result.ok()) << result.status();
  EXPECT_FALSE(result->may_sign);
  EXPECT_EQ(result->entries[0].problem, "say in words what the photo shows");
  photo.set_words("Feet flat");
  v1::MediaRef& clip = *draft.mutable_entries(0)->mutable_clip();
  clip.set_type(v1::MEDIA_TYPE_WEBM);
  clip.set_sha256(std::string(32, 'c'));
  clip.set_size_bytes(1000);
  result = review(draft, person);
  EXPECT_EQ(result->entries[0].problem, "say in words what the clip shows");
  clip.set_words("Rising");
  EXPECT_TRUE(review(draft, person)->entries[0].problem.empty());
}

TEST(Changes, sayEachNumberOfTheDoseWithBothValues) {
  const v1::Person person = test::personNamed("tt-k3");
  v1::Programme last = draftOf(person, {"sit-to-stand"});
  last.mutable_entries(0)->mutable_dose()->mutable_sets()->set_hold_s(2);
  v1::Programme draft = last;
  v1::SetsDose* dose = draft.mutable_entries(0)->mutable_dose()->mutable_sets();
  const v1::SetsDose& before = last.entries(0).dose().sets();
  dose->set_sets(before.sets() + 1);
  dose->set_hold_s(1);
  const std::string title = titleOf("sit-to-stand");
  EXPECT_EQ(changes(last, draft),
            (Sentences{title + ": " + std::to_string(before.sets() + 1) + " sets instead of " +
                           std::to_string(before.sets()) + ".",
                       title + ": 1 s of hold instead of " + std::to_string(before.hold_s()) + "."}));
}

TEST(Changes, coverMinutesPassesAndOtherKindsOfDose) {
  const v1::Person person = test::personNamed("tt-k3");
  v1::Programme last = draftOf(person, {"face-down-lying", "stairs-one-at-a-time", "ramp-up-down"});
  last.mutable_entries(0)->mutable_dose()->mutable_minutes()->set_minutes(10);
  last.mutable_entries(0)->mutable_dose()->mutable_minutes()->set_bouts(1);
  last.mutable_entries(1)->mutable_dose()->mutable_passes()->set_step_count(4);
  last.mutable_entries(2)->mutable_dose()->mutable_passes()->set_distance_m(4);
  v1::Programme draft = last;
  draft.mutable_entries(0)->mutable_dose()->mutable_minutes()->set_minutes(12);
  draft.mutable_entries(0)->mutable_dose()->mutable_minutes()->set_bouts(2);
  draft.mutable_entries(1)->mutable_dose()->mutable_passes()->set_step_count(1);
  draft.mutable_entries(2)->mutable_dose()->mutable_passes()->set_distance_m(6);
  const Sentences said = changes(last, draft);
  ASSERT_EQ(said.size(), 4U);
  EXPECT_EQ(said[0], titleOf("face-down-lying") + ": 12 minutes instead of 10.");
  EXPECT_EQ(said[1], titleOf("face-down-lying") + ": 2 times instead of 1.");
  EXPECT_EQ(said[2], titleOf("stairs-one-at-a-time") + ": 1 step instead of 4 steps.");
  EXPECT_EQ(said[3], titleOf("ramp-up-down") + ": 6 metres each way instead of 4 metres each way.");
  draft = last;
  draft.mutable_entries(0)->mutable_dose()->mutable_sets()->set_sets(1);
  EXPECT_EQ(changes(last, draft),
            Sentences{titleOf("face-down-lying") + ": the dose is counted in another way."});
}

TEST(Changes, saySupportProsthesisSidesDaysAndTimes) {
  const v1::Person person = test::personNamed("tt-k3");
  const v1::Programme last = draftOf(person, {"weight-shift-side"});
  v1::Programme draft = last;
  v1::Entry* entry = draft.mutable_entries(0);
  entry->set_support(v1::SUPPORT_ONE_HAND);
  entry->set_prosthesis(v1::PROSTHESIS_USE_OFF);
  entry->set_side_policy(v1::SIDE_POLICY_PROSTHETIC);
  *entry->mutable_schedule() = test::timesPerWeek(3);
  entry->mutable_schedule()->mutable_windows(0)->set_from_min(485);
  entry->mutable_thresholds()->set_pain_stop_0_10(3);
  entry->set_pacing(v1::PACING_BY_PERSON);
  entry->set_note("Slowly.");
  v1::Pause* pause = entry->mutable_schedule()->add_pauses();
  pause->set_first_day("2026-12-24");
  pause->set_last_day("2026-12-26");
  const std::string title = titleOf("weight-shift-side") + ": ";
  EXPECT_EQ(
      changes(last, draft),
      (Sentences{title + "support: one hand holds on instead of both hands hold on.",
                 title + "prosthesis off instead of on.",
                 title + "sides: prosthesis side instead of sides in turn.",
                 title + "days: 3 times a week instead of Monday, Thursday.",
                 title + "time of day: 08:05 to 12:00 instead of 09:00 to 12:00.",
                 title + "the days off have changed.", title + "when to stop for pain has changed.",
                 title + "the pace is set in another way.", title + "the therapist's note has changed."}));
}

// The person reads them: in their language, whole, with nothing left in braces and no English word.
TEST(Changes, areInTheLanguageOfWhoReadsThem) {
  const v1::Person person = test::personNamed("tt-k3");
  const v1::Programme last = draftOf(person, {"sit-to-stand", "weight-shift-side"});
  v1::Programme draft = last;
  v1::Entry* entry = draft.mutable_entries(0);
  entry->mutable_dose()->mutable_sets()->set_sets(5);
  entry->mutable_dose()->mutable_sets()->set_rest_s(77);
  entry->set_support(v1::SUPPORT_ONE_HAND);
  *entry->mutable_schedule() = test::timesPerWeek(3);
  draft.mutable_entries()->DeleteSubrange(1, 1);
  draft.mutable_thresholds()->set_pain_stop_0_10(3);
  draft.set_advice("Drink more.");
  const auto in = [&](const std::string& language) {
    return changesBetween(last, draft, Catalogue::builtIn(), language);
  };
  const Sentences spanish = in("es-MX");
  ASSERT_EQ(spanish.size(), in("en").size());
  EXPECT_EQ(spanish[0].rfind("De la silla a estar de pie: 5 series en lugar de ", 0), 0U) << spanish[0];
  EXPECT_NE(std::find(spanish.begin(), spanish.end(), "Los consejos generales han cambiado."), spanish.end());
  for (const char* language : {"es", "ar"}) {
    for (const std::string& sentence : in(language)) {
      EXPECT_EQ(sentence.find('{'), std::string::npos) << sentence;
      EXPECT_EQ(sentence.find("instead"), std::string::npos) << sentence;
      EXPECT_EQ(sentence.find("No longer"), std::string::npos) << sentence;
    }
  }
  EXPECT_EQ(in("xx"), in("en"));
}

TEST(Changes, haveAWordForEverySupportAndATitleForEveryExercise) {
  const v1::Person person = test::personNamed("tt-k3");
  v1::Programme last = draftOf(person, {"weight-shift-side"});
  last.mutable_entries(0)->set_exercise_id("not-in-the-catalogue");
  std::set<std::string> said;
  for (int support = v1::SUPPORT_ONE_HAND; support <= v1::SUPPORT_SEATED; ++support) {
    v1::Programme draft = last;
    draft.mutable_entries(0)->set_support(static_cast<v1::Support>(support));
    const Sentences sentences = changes(last, draft);
    ASSERT_EQ(sentences.size(), 1U);
    EXPECT_EQ(sentences[0].rfind("not-in-the-catalogue: support:", 0), 0U) << sentences[0];
    EXPECT_EQ(sentences[0].find("not known"), std::string::npos) << sentences[0];
    said.insert(sentences[0]);
  }
  EXPECT_EQ(said.size(), 5U) << "no two alike";
}

TEST(Changes, sayAnotherExerciseInTheSamePlaceAndEveryDay) {
  const v1::Person person = test::personNamed("tt-k3");
  const v1::Programme last = draftOf(person, {"sit-to-stand"});
  v1::Programme draft = last;
  draft.mutable_entries(0)->set_exercise_id("weight-shift-side");
  EXPECT_EQ(changes(last, draft),
            Sentences{titleOf("weight-shift-side") + ": this exercise takes the place of another."});
  draft = last;
  *draft.mutable_entries(0)->mutable_schedule() = test::everyDay();
  EXPECT_EQ(changes(last, draft),
            Sentences{titleOf("sit-to-stand") + ": days: every day instead of Monday, Thursday."});
}

TEST(Changes, sayThresholdsAndAdviceOfTheWholeProgramme) {
  const v1::Person person = test::personNamed("tt-k3");
  const v1::Programme last = draftOf(person, {"sit-to-stand"});
  v1::Programme draft = last;
  draft.mutable_thresholds()->set_pain_stop_0_10(4);
  draft.set_advice("Drink enough.");
  EXPECT_EQ(changes(last, draft),
            (Sentences{"When to stop for pain: over 4 of 10, or 2 more than at the start.",
                       "The general advice has changed."}));
}

// Whatever is prescribed: the week's chart is the sum of its entries, and a block is never signed over.
TEST(Review, ofEveryPersonWithEveryExerciseAddsUp) {
  for (const auto& name : test::personNames()) {
    const v1::Person person = test::personNamed(name);
    for (const auto& exercise : Catalogue::builtIn().exercises()) {
      const auto result = review(draftOf(person, {exercise.id(), "curl-up-legs-lifted"}), person);
      ASSERT_TRUE(result.ok()) << name << " " << exercise.id() << ": " << result.status();
      double expected = 0;
      bool blocked = false;
      for (const auto& entry : result->entries) {
        expected += 2 * static_cast<double>(entry.total_ms) / 60000;
        for (const auto& finding : entry.findings) blocked |= finding.effect() == v1::EFFECT_BLOCK;
        EXPECT_TRUE(entry.problem.empty() || !result->may_sign);
      }
      const auto& week = result->minutes_by_weekday;
      EXPECT_NEAR(std::accumulate(week.begin(), week.end(), 0.0), expected, 1e-9);
      EXPECT_FALSE(blocked && result->may_sign) << name << " " << exercise.id();
    }
  }
}

}  // namespace
}  // namespace newel
