// Templates as records and against the catalogue. That safety agrees with them: tests/core/review.
#include "core/library/templates.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

#include "core/records/check.h"
#include "tests/core/people/sample_people.h"

namespace newel {
namespace {

using testing::HasSubstr;

const Catalogue& catalogue() { return Catalogue::builtIn(); }

std::string wrong(const v1::ProgrammeTemplate& value) {
  const absl::Status status = check(value);
  return std::string(status.message());
}

// "Pages allow it" is no promise: each starting template is looked at again here, beside the build's own
// check.
TEST(StartingTemplates, haveExercisesRungsDosesWordsAndStatedSources) {
  std::set<std::string> ids;
  ASSERT_GE(catalogue().templates().size(), 10U);
  for (const auto& one : catalogue().templates()) {
    EXPECT_EQ(check(one), absl::OkStatus()) << one.id();
    EXPECT_TRUE(ids.insert(one.id()).second);
    EXPECT_FALSE(isOwnTemplate(one));
    for (const auto& problem : problemsOfTemplate(one, catalogue()))
      ADD_FAILURE() << one.id() << ": " << problem.path << ": " << problem.reason;
    for (const char* language : {"en", "es"}) {
      ASSERT_TRUE(one.words().contains(language)) << one.id();
      EXPECT_FALSE(one.words().at(language).for_whom().empty()) << one.id();
    }
    // Bachmann 2018 (thieme s-0043-120527), from its abstract: fewer than four are linked with better
    // adherence.
    EXPECT_LT(one.entries_size(), 4) << one.id();
    bool common = false;
    for (const auto& source : one.sources()) common |= source.kind() == v1::SOURCE_KIND_COMMON_PRACTICE;
    EXPECT_TRUE(common) << one.id() << ": which exercises were chosen has no published source, and says so";
  }
}

TEST(StartingTemplates, everyPhaseIsThere) {
  std::set<int> phases;
  for (const auto& one : catalogue().templates()) phases.insert(one.fit().phase());
  EXPECT_EQ(phases, (std::set<int>{1, 2, 3, 4, 5}));
}

v1::ProgrammeTemplate sample() { return catalogue().templates().front(); }

TEST(TemplateCheck, namesTheFirstBadField) {
  auto value = sample();
  value.mutable_fit()->set_most_mobility(v1::MOBILITY_LEVEL_K1);
  value.mutable_fit()->set_least_mobility(v1::MOBILITY_LEVEL_K3);
  EXPECT_THAT(wrong(value), HasSubstr("fit.most_mobility"));
  value = sample();
  value.mutable_entries(1)->set_exercise_id(value.entries(0).exercise_id());
  EXPECT_THAT(wrong(value), HasSubstr("entries[1].exercise_id: is given twice"));
  value = sample();
  value.mutable_entries(0)->set_side_policy(v1::SIDE_POLICY_LEFT);
  EXPECT_THAT(wrong(value), HasSubstr("entries[0].side_policy: names the left or the right side"));
  value = sample();
  value.mutable_entries(0)->mutable_schedule()->add_pauses();
  EXPECT_THAT(wrong(value), HasSubstr("entries[0].schedule.pauses"));
  value = sample();
  value.mutable_entries(0)->set_prosthesis(v1::PROSTHESIS_USE_EITHER);
  EXPECT_THAT(wrong(value), HasSubstr("entries[0].prosthesis"));
  value = sample();
  value.set_weeks(53);
  EXPECT_THAT(wrong(value), HasSubstr("weeks: 53 is over 52"));
  value = sample();
  value.clear_sources();
  EXPECT_THAT(wrong(value), HasSubstr("sources: is missing"));
  value.set_id(test::idOf(1));  // a clinic's own has an author in place of sources
  EXPECT_THAT(wrong(value), HasSubstr("revision"));
}

std::string unfit(const v1::ProgrammeTemplate& value) {
  const auto found = problemsOfTemplate(value, catalogue());
  return found.empty() ? "" : found.front().path + ": " + found.front().reason;
}

TEST(TemplateCheck, aDoseStaysWithinTheExercisesOwn) {
  auto value = sample();
  v1::TemplateEntry& entry = *value.mutable_entries(0);
  *entry.mutable_dose() = catalogue().find(entry.exercise_id())->default_dose();
  EXPECT_EQ(unfit(value), "");
  entry.mutable_dose()->mutable_sets()->set_sets(9);
  EXPECT_EQ(unfit(value), "entries[0].dose: is outside what the exercise's dose and ladder span");
  EXPECT_EQ(fitsCatalogue(value, catalogue()), absl::OkStatus()) << "a therapist may choose it";
  entry.mutable_dose()->mutable_minutes()->set_minutes(5);
  EXPECT_EQ(unfit(value), "entries[0].dose: is not of the exercise's kind");
  EXPECT_FALSE(fitsCatalogue(value, catalogue()).ok());
  value = sample();
  value.mutable_entries(0)->set_rung_id("the-moon");
  EXPECT_EQ(unfit(value), "entries[0].rung_id: the exercise has no such rung");
  value = sample();
  value.mutable_entries(0)->set_support(v1::SUPPORT_FINGERTIPS);
  EXPECT_EQ(unfit(value), "entries[0].support: the exercise does not have it");
}

TEST(TemplateOf, keepsNothingThatWasWrittenToOrAboutThePerson) {
  const v1::Person person = test::transfemoralLeft();
  v1::Programme draft = test::programmeOf(
      person, {test::entryOf("sit-to-stand", person, 100), test::entryOf("weight-shift-side", person, 101),
               test::entryOf("sit-to-stand", person, 102)});
  draft.set_advice("secret advice");
  draft.set_changes("secret changes");
  auto& entry = *draft.mutable_entries(0);
  entry.set_note("secret note");
  auto& answered = *entry.add_overrides();
  answered.set_rule_id("any");
  answered.set_reason("secret reason");
  entry.mutable_photo()->set_words("secret photo");
  auto& pause = *entry.mutable_schedule()->add_pauses();
  pause.set_reason("secret pause");
  auto& card = *draft.add_cards();
  card.set_card_id("skin-check");
  card.set_note("secret card");
  const auto left = templateOf(draft, person, "Ours", "en");
  const std::string bytes = left.SerializeAsString();
  EXPECT_EQ(bytes.find("secret"), std::string::npos);
  EXPECT_EQ(bytes.find(person.id()), std::string::npos);
  ASSERT_EQ(left.entries_size(), 2) << "each exercise once";
  EXPECT_EQ(left.weeks(), 13U);  // 2026-11-02 to 2027-01-31
  EXPECT_EQ(left.words().at("en").name(), "Ours");
}

v1::WearPlan wearPlan(const v1::Person& person) {
  v1::WearPlan plan;
  plan.set_id(test::idOf(77));
  plan.set_number(3);
  plan.set_person_id(person.id());
  plan.set_signer_name("secret signer");
  plan.set_effective_day("2026-11-02");
  plan.set_zone("Europe/Berlin");
  for (const std::uint32_t minutes : {30U, 60U}) {
    v1::WearStep& step = *plan.add_steps();
    step.set_days(3);
    step.set_blocks(2);
    step.set_block_min(minutes);
    step.set_activity("Sitting.");
  }
  plan.set_first_step(1);
  plan.set_off_min(60);
  plan.set_grace_min(5);
  plan.set_redness_min(20);
  plan.set_redness_action(v1::REDNESS_ACTION_STAY_OFF);
  plan.set_note("secret note");
  return plan;
}

TEST(TemplateOf, takesMeasuresByWeeksAndWearingTimeFromItsFirstStep) {
  const v1::Person person = test::transfemoralLeft();
  v1::Programme draft = test::programmeOf(person, {test::entryOf("sit-to-stand", person, 100)});
  *draft.mutable_wear_plan() = wearPlan(person);
  const std::pair<const char*, const char*> asked[] = {{"two-minute-walk", "2026-11-30"},
                                                       {"timed-up-and-go", "2026-11-04"}};
  for (const auto& [kind, day] : asked) {
    draft.add_measures()->set_kind(kind);
    draft.mutable_measures(draft.measures_size() - 1)->set_by_day(day);
  }
  v1::ProgrammeTemplate left = templateOf(draft, person, "Ours", "en");
  EXPECT_EQ(left.SerializeAsString().find("secret"), std::string::npos);
  EXPECT_EQ(left.SerializeAsString().find(person.id()), std::string::npos);
  ASSERT_EQ(left.measures_size(), 2);
  EXPECT_EQ(left.measures(0).after_weeks(), 4U);
  EXPECT_EQ(left.measures(1).after_weeks(), 1U) << "never on the first day";
  EXPECT_EQ(left.wear_plan().steps_size(), 2);
  EXPECT_EQ(left.wear_plan().first_step(), 0U) << "where that person had got to is theirs";
  left.set_id(test::idOf(500));
  left.set_revision(1);
  left.set_author_id(test::idOf(501));
  left.set_author_name("Terry Sample (invented)");
  left.mutable_written_at()->set_seconds(1);
  EXPECT_EQ(check(left), absl::OkStatus());
  // Put to somebody else, from another day on.
  v1::Programme other = test::programmeOf(test::transtibialRight(), {});
  other.set_effective_day("2027-01-04");
  other.add_measures()->set_kind("two-minute-walk");
  other.mutable_measures(0)->set_by_day("2027-01-05");
  askMeasures(left, other);
  ASSERT_EQ(other.measures_size(), 2) << "each kind once, and what was asked for already stays";
  EXPECT_EQ(other.measures(0).by_day(), "2027-01-05");
  EXPECT_EQ(other.measures(1).by_day(), "2027-01-11");
  const v1::WearPlan plan = wearFor(left, other);
  EXPECT_EQ(plan.person_id(), other.person_id());
  EXPECT_EQ(plan.effective_day(), "2027-01-04");
  EXPECT_EQ(plan.steps_size(), 2);
  EXPECT_EQ(plan.number(), 0U) << "the hub gives it its own";
}

TEST(TemplateChecks, aPlanOrMeasureThatIsSomebodysIsRefusedByItsField) {
  const v1::Person person = test::transfemoralLeft();
  v1::Programme draft = test::programmeOf(person, {test::entryOf("sit-to-stand", person, 100)});
  *draft.mutable_wear_plan() = wearPlan(person);
  draft.add_measures()->set_kind("two-minute-walk");
  v1::ProgrammeTemplate good = templateOf(draft, person, "Ours", "en");
  good.set_id(test::idOf(500));
  good.set_revision(1);
  good.set_author_id(test::idOf(501));
  good.set_author_name("Terry Sample (invented)");
  good.mutable_written_at()->set_seconds(1);
  ASSERT_EQ(check(good), absl::OkStatus());
  const auto refused = [&good](const auto& spoil) {
    v1::ProgrammeTemplate bad = good;
    spoil(bad);
    return std::string(check(bad).message());
  };
  EXPECT_NE(
      refused([](auto& t) { t.mutable_wear_plan()->set_person_id(test::idOf(1)); }).find("wear_plan.id"),
      std::string::npos);
  EXPECT_NE(refused([](auto& t) { t.mutable_wear_plan()->set_note("Mind it."); }).find("wear_plan.note"),
            std::string::npos);
  EXPECT_NE(refused([](auto& t) { t.mutable_wear_plan()->set_first_step(1); }).find("wear_plan.first_step"),
            std::string::npos);
  EXPECT_NE(refused([](auto& t) { t.mutable_wear_plan()->clear_steps(); }).find("wear_plan.steps"),
            std::string::npos);
  EXPECT_NE(
      refused([](auto& t) { t.mutable_measures(0)->set_after_weeks(0); }).find("measures[0].after_weeks"),
      std::string::npos);
  EXPECT_NE(refused([](auto& t) { *t.add_measures() = t.measures(0); }).find("measures[1].kind"),
            std::string::npos);
}

TEST(TemplateOf, whatItLeavesIsTheSameProgrammeForTheSamePerson) {
  for (const auto& sample : test::samplePeople()) {
    std::vector<v1::Entry> entries;
    for (const auto& exercise : catalogue().exercises()) {
      entries.push_back(test::entryOf(exercise.id(), sample.person, 100 + entries.size()));
      if (entries.size() == 20) break;
    }
    const v1::Programme draft = test::programmeOf(sample.person, entries);
    const auto left = templateOf(draft, sample.person, "Ours", "en");
    for (int i = 0; i < left.entries_size(); ++i) {
      v1::Entry again =
          entryFrom(left.entries(i), *catalogue().find(left.entries(i).exercise_id()), sample.person);
      again.set_id(draft.entries(i).id());
      EXPECT_EQ(again.SerializeAsString(), draft.entries(i).SerializeAsString()) << sample.name;
    }
  }
}

// The left leg of one person is the prosthesis of one and the sound limb of another.
TEST(TemplateOf, leftAndRightFollowThePerson) {
  const v1::Person left_lost = test::transfemoralLeft();
  v1::Programme draft = test::programmeOf(left_lost, {test::entryOf("weight-shift-side", left_lost, 100)});
  draft.mutable_entries(0)->set_side_policy(v1::SIDE_POLICY_LEFT);
  EXPECT_EQ(templateOf(draft, left_lost, "Ours", "en").entries(0).side_policy(), v1::SIDE_POLICY_PROSTHETIC);
  EXPECT_EQ(templateOf(draft, test::transtibialRight(), "Ours", "en").entries(0).side_policy(),
            v1::SIDE_POLICY_SOUND);
  EXPECT_EQ(templateOf(draft, test::bothTranstibial(), "Ours", "en").entries(0).side_policy(),
            v1::SIDE_POLICY_UNSPECIFIED);
}

TEST(FitsPerson, byLevelMobilityProsthesisAndHowMany) {
  const auto fits = [](const std::string& id, const v1::Person& person) {
    for (const auto& one : catalogue().templates()) {
      if (one.id() == id) return fitsPerson(one, person);
    }
    ADD_FAILURE() << id;
    return false;
  };
  EXPECT_TRUE(fits("first-steps-above-knee", test::transfemoralLeft()));
  EXPECT_FALSE(fits("first-steps-below-knee", test::transfemoralLeft()));
  EXPECT_FALSE(fits("out-and-about-above-knee", test::transfemoralLeft())) << "K2";
  EXPECT_FALSE(fits("first-steps-above-knee", test::transfemoralRightNoProsthesis()));
  EXPECT_TRUE(fits("before-prosthesis-above-knee", test::transfemoralRightNoProsthesis()));
  EXPECT_TRUE(fits("out-and-about-below-knee", test::transtibialRight()));
  EXPECT_TRUE(fits("sitting-both-sides", test::bothTransfemoral()));
  EXPECT_FALSE(fits("at-home-below-knee", test::bothTranstibial()));
  v1::ProgrammeTemplate own;
  EXPECT_TRUE(fitsPerson(own, test::bothTransfemoral())) << "a clinic's own is for everybody";
}

TEST(WordsOf, fallBackOverTheBaseLanguageAndEnglishToWhatThereIs) {
  v1::ProgrammeTemplate value;
  EXPECT_EQ(wordsOf(value, "en"), nullptr);
  (*value.mutable_words())["es"].set_name("uno");
  EXPECT_EQ(wordsOf(value, "en")->name(), "uno");
  EXPECT_EQ(wordsOf(value, "es-MX")->name(), "uno");
  (*value.mutable_words())["en"].set_name("one");
  EXPECT_EQ(wordsOf(value, "ar")->name(), "one");
}

}  // namespace
}  // namespace newel
