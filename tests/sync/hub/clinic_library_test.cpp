// The clinic's own exercises and settings through the real hub over TLS, to the phone and back.
#include "sync/hub/clinic_library.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/library/default_entry.h"
#include "core/library/own_exercises.h"
#include "core/library/settings.h"
#include "core/practice/compile.h"
#include "core/time/local_day.h"
#include "sync/common/signing.h"
#include "sync/hub/backup.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

using testing::HasSubstr;

class ClinicLibraryRule : public testing::Test {
 protected:
  // As a therapist would send it: no clinic, author or time.
  static v1::OwnExercise written(const std::string& title) {
    const Catalogue& catalogue = Catalogue::builtIn();
    v1::OwnExercise own = beginOwn(*catalogue.movement("whole-body-hold"), catalogue, "own-0123abcd", "en");
    v1::Exercise& exercise = *own.mutable_exercise();
    exercise.set_purpose(v1::PURPOSE_STRENGTH);
    exercise.set_position(v1::POSITION_SITTING);
    exercise.set_prosthesis(v1::PROSTHESIS_USE_EITHER);
    exercise.add_muscles("trunk");
    exercise.add_supports(v1::SUPPORT_SEATED);
    for (const std::string& tag : tagsOfPosition(catalogue, v1::POSITION_SITTING)) exercise.add_tags(tag);
    exercise.mutable_fit()->add_usual_levels(v1::LIMB_LOSS_LEVEL_TRANSTIBIAL);
    exercise.mutable_fit()->set_least_mobility(v1::MOBILITY_LEVEL_K0);
    auto& source = *exercise.add_sources();
    source.set_kind(v1::SOURCE_KIND_COMMON_PRACTICE);
    source.set_text("common practice, no source: written by the clinic");
    v1::ExerciseWords& words = *own.mutable_words(0);
    words.set_title(title);
    words.set_purpose("You sit tall with ease.");
    words.set_start("Sit on a firm chair.");
    words.add_good("You sit tall.");
    words.add_good("You breathe.");
    words.add_cautions("Use a chair that stands firm.");
    auto& fault = *words.add_faults();
    fault.set_seen("You slump.");
    fault.set_mend("Grow tall.");
    for (const char* phase : {"move", "stay", "return"}) {
      v1::Cue& cue = (*words.mutable_cues())[phase];
      cue.set_screen("Sit tall.");
      cue.set_spoken("Sit tall.");
    }
    return own;
  }

  absl::StatusOr<v1::OwnExercise> put(const std::string& title, std::uint32_t base) {
    v1::PutOwnExerciseRequest request;
    *request.mutable_exercise() = written(title);
    request.set_base_revision(base);
    return m_clinic.desk().putOwnExercise(request);
  }

  absl::StatusOr<v1::SignProgrammeReply> signWith(std::uint32_t revision, std::uint32_t base) {
    const Catalogue all = Catalogue::builtIn().with({written("any")});
    v1::Entry entry = defaultEntry(*all.find("own-0123abcd"), m_person);
    entry.set_id(test::idOf(300));
    entry.set_exercise_revision(revision);
    entry.mutable_schedule()->set_times_per_week(3);
    entry.mutable_schedule()->add_windows()->set_to_min(1440);
    v1::SignProgrammeRequest request;
    *request.mutable_draft() = m_clinic.draft(m_person);
    request.mutable_draft()->clear_entries();
    *request.mutable_draft()->add_entries() = entry;
    request.set_base_number(base);
    return m_clinic.desk().signProgramme(request);
  }

  absl::StatusOr<v1::ClinicCard> set(const std::string& id, std::uint32_t value, std::uint64_t base) {
    v1::PutSettingsRequest request;
    (*request.mutable_values())[id] = value;
    request.set_base_revision(base);
    return m_lead->putSettings(request);
  }

  void signInALead() {
    ASSERT_TRUE(
        m_clinic.hub().accounts().add("l.lead", "Lee Lead (invented)", v1::ROLE_LEAD, test::kPassword).ok());
    m_lead = m_clinic.newDesk();
    ASSERT_TRUE(m_lead->signIn("l.lead", test::kPassword).ok());
  }

  test::TestClinic m_clinic;
  std::unique_ptr<DeskClient> m_lead;
  v1::Person m_person = test::transtibialRight();
  std::string m_id = m_clinic.addPerson(m_person);
};

TEST_F(ClinicLibraryRule, anExerciseIsKeptWithItsAuthorAndRevision) {
  const auto own = put("Sit tall", 0);
  ASSERT_TRUE(own.ok()) << own.status();
  EXPECT_EQ(own->exercise().revision(), 1U);
  EXPECT_EQ(own->author_name(), "Terry Sample (invented)");
  EXPECT_TRUE(own->has_written_at());
  EXPECT_EQ(put("Again", 0).status().code(), absl::StatusCode::kAborted);
  EXPECT_EQ(put("Sit taller", 1)->exercise().revision(), 2U);
  const auto all = m_clinic.desk().ownExercises();
  ASSERT_TRUE(all.ok());
  ASSERT_EQ(all->size(), 2U);
  EXPECT_EQ((*all)[0].words(0).title(), "Sit tall");
  EXPECT_EQ((*all)[1].words(0).title(), "Sit taller");
}

TEST_F(ClinicLibraryRule, aBadOneIsRefusedByItsField) {
  v1::PutOwnExerciseRequest request;
  *request.mutable_exercise() = written("Sit tall");
  request.mutable_exercise()->mutable_words(0)->clear_start();
  const auto put = m_clinic.desk().putOwnExercise(request);
  EXPECT_EQ(put.status().code(), absl::StatusCode::kInvalidArgument);
  EXPECT_THAT(std::string(put.status().message()), HasSubstr("words[0].start: is missing"));
  EXPECT_TRUE(m_clinic.desk().ownExercises()->empty());
}

TEST_F(ClinicLibraryRule, aRevisionNeverChangesAProgrammeThatIsSigned) {
  ASSERT_TRUE(put("Sit tall", 0).ok());
  const auto first = signWith(1, 0);
  ASSERT_TRUE(first.ok()) << first.status();
  ASSERT_EQ(first->programme().own_exercises_size(), 1);
  ASSERT_TRUE(put("Sit taller", 1).ok());
  const auto kept = openProgramme(first->signed_programme(), m_clinic.hub().clinic().key.public_key);
  ASSERT_TRUE(kept.ok()) << kept.status();
  EXPECT_EQ(kept->own_exercises(0).words(0).title(), "Sit tall");
  EXPECT_EQ(m_clinic.desk().programmes(m_id)->at(0).own_exercises(0).words(0).title(), "Sit tall");
  const auto second = signWith(2, 1);
  ASSERT_TRUE(second.ok()) << second.status();
  EXPECT_EQ(second->programme().own_exercises(0).words(0).title(), "Sit taller");
}

TEST_F(ClinicLibraryRule, aRevisionThatIsNotThereCannotBeSigned) {
  ASSERT_TRUE(put("Sit tall", 0).ok());
  const auto reply = signWith(7, 0);
  EXPECT_EQ(reply.status().code(), absl::StatusCode::kInvalidArgument);
  EXPECT_THAT(std::string(reply.status().message()), HasSubstr("entries[0].exercise_id"));
}

TEST_F(ClinicLibraryRule, thePhoneLeadsItFromWhatWasSigned) {
  ASSERT_TRUE(put("Sit tall", 0).ok());
  ASSERT_TRUE(signWith(1, 0).ok());
  const auto phone = m_clinic.pairedPhone("phone", m_id);
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  const auto programme = phone->programme();
  ASSERT_TRUE(programme.has_value());
  const Catalogue all =
      Catalogue::builtIn().with({programme->own_exercises().begin(), programme->own_exercises().end()});
  const auto timeline = compileTimeline(programme->entries(0), m_person, all, "en");
  ASSERT_TRUE(timeline.ok()) << timeline.status();
  EXPECT_EQ(timeline->title(), "Sit tall");
}

TEST_F(ClinicLibraryRule, aCardThatDoesNotExistIsRefused) {
  v1::SignProgrammeRequest request;
  *request.mutable_draft() = m_clinic.draft(m_person);
  auto& card = *request.mutable_draft()->add_cards();
  card.set_card_id("skin-check");
  card.set_card_revision(1);
  card.mutable_days()->add_days(v1::WEEKDAY_MONDAY);
  EXPECT_TRUE(m_clinic.desk().signProgramme(request).ok());
  request.mutable_draft()->clear_id();
  request.mutable_draft()->mutable_cards(0)->set_card_id("horoscope");
  request.set_base_number(1);
  EXPECT_THAT(std::string(m_clinic.desk().signProgramme(request).status().message()),
              HasSubstr("cards[0].card_id: there is no such card"));
}

TEST_F(ClinicLibraryRule, onlyALeadChangesSettings) {
  v1::PutSettingsRequest request;
  (*request.mutable_values())["minutes-a-day"] = 45;
  EXPECT_EQ(m_clinic.desk().putSettings(request).status().code(), absl::StatusCode::kPermissionDenied);
  signInALead();
  const auto card = set("minutes-a-day", 45, 0);
  ASSERT_TRUE(card.ok()) << card.status();
  EXPECT_EQ(card->settings().revision(), 1U);
  EXPECT_EQ(set("minutes-a-day", 50, 0).status().code(), absl::StatusCode::kAborted);
  EXPECT_EQ(m_clinic.desk().clinic()->settings().values().at("minutes-a-day"), 45U);
  EXPECT_THAT(m_clinic.auditActions().back(), HasSubstr("\"settings.change\""));
}

TEST_F(ClinicLibraryRule, settingsKeepToTheirRange) {
  signInALead();
  const auto card = set("redness-minutes", 90, 0);
  EXPECT_EQ(card.status().code(), absl::StatusCode::kInvalidArgument);
  EXPECT_THAT(std::string(card.status().message()), HasSubstr("values[redness-minutes]: 90 is over 30"));
}

// What was set reaches a phone that was paired before, the rules of the hub, and a restart.
TEST_F(ClinicLibraryRule, settingsReachPhonesRulesAndARestart) {
  signInALead();
  const auto phone = m_clinic.pairedPhone("phone", m_id);
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(phone->clinic()->settings().values().size(), 0U);
  ASSERT_TRUE(set("pain-stop", 4, 0).ok());
  ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
  EXPECT_EQ(phone->clinic()->settings().values().at("pain-stop"), 4U);
  v1::SignProgrammeRequest request;
  *request.mutable_draft() = m_clinic.draft(m_person);
  request.mutable_draft()->mutable_thresholds()->set_pain_stop_0_10(5);
  EXPECT_THAT(std::string(m_clinic.desk().signProgramme(request).status().message()),
              HasSubstr("programme-pain-stop-high"));
  m_clinic.stopHub();
  m_clinic.startHub();
  EXPECT_EQ(clinicCard(m_clinic.store())->settings().values().at("pain-stop"), 4U);
}

TEST_F(ClinicLibraryRule, saysWhenTheStoreWasLastCopied) {
  auto state = m_clinic.desk().clinicState();
  ASSERT_TRUE(state.ok()) << state.status();
  EXPECT_FALSE(state->backup().has_last());
  EXPECT_EQ(state->backup().by_database(), m_clinic.store().copiedByDatabase());
  const absl::Time at = m_clinic.clock().wall();
  ASSERT_EQ(m_clinic.store().write([&](HubTransaction& transaction) {
    noteBackup(transaction, at);
    return absl::OkStatus();
  }),
            absl::OkStatus());
  state = m_clinic.desk().clinicState();
  ASSERT_TRUE(state.ok()) << state.status();
  EXPECT_EQ(toTime(state->backup().last()), absl::FromUnixSeconds(absl::ToUnixSeconds(at)));
  EXPECT_EQ(state->clinic().name(), m_clinic.hub().clinic().card.name());
}

// A template as a desk leaves it: a starting one of the catalogue under an id and a name of the clinic's.
v1::PutTemplateRequest templateRequest(const std::string& id, const std::string& name) {
  v1::PutTemplateRequest request;
  v1::ProgrammeTemplate& value = *request.mutable_programme_template();
  value = Catalogue::builtIn().templates().front();
  value.set_id(id);
  value.clear_words();
  (*value.mutable_words())["en"].set_name(name);
  return request;
}

TEST_F(ClinicLibraryRule, aTemplateIsKeptListedRenamedAndWithdrawn) {
  auto request = templateRequest(test::idOf(500), "First weeks, our way");
  const auto kept = m_clinic.desk().putTemplate(request);
  ASSERT_TRUE(kept.ok()) << kept.status();
  EXPECT_EQ(kept->revision(), 1U);
  EXPECT_EQ(kept->author_name(), "Terry Sample (invented)");
  EXPECT_TRUE(kept->has_written_at());
  EXPECT_THAT(m_clinic.auditActions().back(), HasSubstr("\"template.write\""));
  ASSERT_TRUE(m_clinic.desk().putTemplate(templateRequest(test::idOf(499), "An older one")).ok());
  EXPECT_EQ(m_clinic.desk().putTemplate(request).status().code(), absl::StatusCode::kAborted);
  (*request.mutable_programme_template()->mutable_words())["en"].set_name("First weeks");
  request.set_base_revision(1);
  EXPECT_EQ(m_clinic.desk().putTemplate(request)->revision(), 2U);
  const auto all = m_clinic.desk().templates();
  ASSERT_TRUE(all.ok()) << all.status();
  ASSERT_EQ(all->size(), 2U);
  EXPECT_EQ(all->at(0).id(), test::idOf(499)) << "by id, which is by age";
  EXPECT_EQ(all->at(1).words().at("en").name(), "First weeks");
  EXPECT_EQ(m_clinic.desk().withdrawTemplate(test::idOf(500), 1).code(), absl::StatusCode::kAborted);
  EXPECT_EQ(m_clinic.desk().withdrawTemplate(test::idOf(500), 2), absl::OkStatus());
  EXPECT_THAT(m_clinic.auditActions().back(), HasSubstr("\"template.withdraw\""));
  EXPECT_EQ(m_clinic.desk().withdrawTemplate(test::idOf(500), 2).code(), absl::StatusCode::kNotFound);
  EXPECT_EQ(m_clinic.desk().templates()->size(), 1U);
}

TEST_F(ClinicLibraryRule, templatesOutliveARestart) {
  ASSERT_TRUE(m_clinic.desk().putTemplate(templateRequest(test::idOf(500), "First weeks")).ok());
  m_clinic.stopHub();
  m_clinic.startHub();
  const auto all = m_clinic.hub().library().templates();
  ASSERT_TRUE(all.ok()) << all.status();
  ASSERT_EQ(all->templates_size(), 1);
  EXPECT_EQ(all->templates(0).words().at("en").name(), "First weeks");
}

TEST_F(ClinicLibraryRule, aTemplateThatNamesWhatIsNotThereIsRefusedByItsField) {
  const auto refused = [this](const v1::PutTemplateRequest& request) {
    const auto put = m_clinic.desk().putTemplate(request);
    EXPECT_EQ(put.status().code(), absl::StatusCode::kInvalidArgument);
    return std::string(put.status().message());
  };
  auto request = templateRequest(test::idOf(500), "First weeks");
  request.mutable_programme_template()->mutable_entries(1)->set_exercise_id("moon-walking");
  EXPECT_THAT(refused(request), HasSubstr("programme_template.entries[1].exercise_id: there is no such"));
  request = templateRequest("own-way", "Not a UUID");
  EXPECT_THAT(refused(request), HasSubstr("programme_template.id"));
  request = templateRequest(test::idOf(500), "");
  EXPECT_THAT(refused(request), HasSubstr("programme_template.words[en].name"));
  request = templateRequest(test::idOf(500), "A note to one person");
  request.mutable_programme_template()->mutable_cards(0)->set_note("Ann, mind the heel.");
  EXPECT_THAT(refused(request), HasSubstr("programme_template.cards[0].note"));
  request = templateRequest(test::idOf(500), "A measure that nobody takes");
  auto& measure = *request.mutable_programme_template()->add_measures();
  measure.set_kind("moon-walk");
  measure.set_after_weeks(4);
  EXPECT_THAT(refused(request), HasSubstr("programme_template.measures[0].kind: there is no such measure"));
  request = templateRequest(test::idOf(500), "A note to one person, again");
  request.mutable_programme_template()->mutable_cards(0)->set_note("Ann, mind the heel.");
  EXPECT_THAT(refused(request), HasSubstr("programme_template.cards[0].note"));
  EXPECT_TRUE(m_clinic.desk().templates()->empty());
}

// The clinic's own exercise is named by id alone: a template goes on with its newest revision.
TEST_F(ClinicLibraryRule, aTemplateMayNameTheClinicsOwnExercise) {
  ASSERT_TRUE(put("Sit tall", 0).ok());
  auto request = templateRequest(test::idOf(500), "With our own");
  auto& entry = *request.mutable_programme_template()->mutable_entries(0);
  entry.set_exercise_id("own-0123abcd");
  entry.clear_rung_id();
  EXPECT_TRUE(m_clinic.desk().putTemplate(request).ok());
}

TEST_F(ClinicLibraryRule, moreTemplatesThanAnybodyReadsAreRefused) {
  for (int i = 0; i < kMostTemplates; ++i) {
    DeskCaller caller;
    caller.therapist.set_id(test::idOf(900));
    caller.therapist.set_display_name("Terry Sample (invented)");
    ASSERT_TRUE(
        m_clinic.hub()
            .library()
            .putTemplate(caller, templateRequest(test::idOf(1000 + static_cast<std::uint64_t>(i)), "One"))
            .ok());
  }
  EXPECT_EQ(m_clinic.desk().templates()->size(), static_cast<std::size_t>(kMostTemplates));
  EXPECT_EQ(m_clinic.desk().putTemplate(templateRequest(test::idOf(500), "One more")).status().code(),
            absl::StatusCode::kResourceExhausted);
}

}  // namespace
}  // namespace newel
