// Every record's door: what is refused, and that the first bad field is named.
#include "core/records/check.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <functional>

#include "core/records/record_text.h"

namespace newel {
namespace {

using testing::StartsWith;

constexpr char kId[] = "017f22e2-79b0-7cc3-98c4-dc0c0c07398f";

template <typename Record>
Record fromText(std::string text) {
  for (std::size_t at = 0; (at = text.find("$ID", at)) != std::string::npos;) text.replace(at, 3, kId);
  Record record;
  const auto status = parseText(text, "test", record);
  EXPECT_TRUE(status.ok()) << status;
  return record;
}

v1::Person goodPerson() {
  return fromText<v1::Person>(R"(
    id: "$ID" limbs { side: SIDE_LEFT level: LIMB_LOSS_LEVEL_TRANSFEMORAL knee: KNEE_KIND_YIELDING
      foot: FOOT_KIND_ENERGY_STORING has_prosthesis: true }
    mobility: MOBILITY_LEVEL_K2 conditions: CONDITION_DIABETES walking_aid: WALKING_AID_ONE_CANE
    home { rails: RAILS_BOTH ramp: ANSWER_NO sturdy_chairs: 2 rolling_chair: ANSWER_NO counter: ANSWER_YES
      floor_space: ANSWER_YES someone_near: ANSWER_NOT_KNOWN }
    can_get_up_from_floor: ANSWER_YES senses { low_vision: ANSWER_NO hard_of_hearing: ANSWER_NO }
    language: "en" zone: "Europe/Berlin" height_cm: 172)");
}

v1::Entry goodEntry() {
  return fromText<v1::Entry>(R"(
    id: "$ID" exercise_id: "sit-to-stand" exercise_revision: 1 side_policy: SIDE_POLICY_WHOLE_BODY
    dose { sets { sets: 2 repetitions: 8 move_s: 3 return_s: 3 rest_s: 60 } } support: SUPPORT_TWO_HANDS
    prosthesis: PROSTHESIS_USE_ON pacing: PACING_TIMED
    schedule { weekdays { days: WEEKDAY_MONDAY days: WEEKDAY_FRIDAY } windows { from_min: 420 to_min: 720 } })");
}

v1::Programme goodProgramme() {
  auto programme = fromText<v1::Programme>(R"(
    id: "$ID" number: 1 person_id: "$ID" clinic_id: "$ID" signer_id: "$ID" signer_name: "Demo Therapist"
    issued_at { seconds: 1764000000 } effective_day: "2026-11-25" end_day: "2026-12-31" zone: "Europe/Berlin"
    thresholds { pain_stop_0_10: 5 pain_rise_0_10: 2 })");
  *programme.add_entries() = goodEntry();
  return programme;
}

v1::Practice goodPractice() {
  return fromText<v1::Practice>(R"(
    id: "$ID" revision: 1 person_id: "$ID" programme_number: 1 zone: "Europe/Berlin" local_day: "2026-11-25"
    started_at { seconds: 1764000000 } ended_at { seconds: 1764000600 } elapsed_ms: 600000
    end: PRACTICE_END_FINISHED origin: ORIGIN_TIMED_HERE app_version: "0.1.0"
    entries { occasion { entry_id: "$ID" local_day: "2026-11-25" window: 0 } exercise_id: "sit-to-stand"
      exercise_revision: 1 asked { repetitions: 16 } done { repetitions: 12 } pain_after_0_10: 2 })");
}

// A change that spoils a good record, and the path that the error must begin with.
template <typename Record>
struct Spoiled {
  std::string path;
  std::function<void(Record&)> spoil;
};

template <typename Record>
void expectRefused(const Record& good, const std::vector<Spoiled<Record>>& cases) {
  ASSERT_TRUE(check(good).ok()) << check(good);
  for (const auto& [path, spoil] : cases) {
    Record record = good;
    spoil(record);
    const auto status = check(record);
    EXPECT_EQ(status.code(), absl::StatusCode::kInvalidArgument) << path;
    EXPECT_THAT(std::string(status.message()), StartsWith(path + ": "));
  }
}

TEST(CheckPerson, refusesWhatTheRecordForbids) {
  using P = v1::Person;
  expectRefused<P>(goodPerson(),
                   {{"id", [](P& p) { p.set_id("7"); }},
                    {"limbs", [](P& p) { p.clear_limbs(); }},
                    {"limbs[0].side", [](P& p) { p.mutable_limbs(0)->clear_side(); }},
                    {"limbs[0].level", [](P& p) { p.mutable_limbs(0)->clear_level(); }},
                    {"limbs[1].side", [](P& p) { *p.add_limbs() = p.limbs(0); }},
                    {"limbs[0].knee", [](P& p) { p.mutable_limbs(0)->set_knee(v1::KNEE_KIND_OWN_KNEE); }},
                    {"limbs[0].knee", [](P& p) { p.mutable_limbs(0)->set_has_prosthesis(false); }},
                    {"mobility", [](P& p) { p.clear_mobility(); }},
                    {"mobility", [](P& p) { p.set_mobility(static_cast<v1::MobilityLevel>(99)); }},
                    {"conditions[0]", [](P& p) { p.set_conditions(0, v1::CONDITION_UNSPECIFIED); }},
                    {"conditions[1]", [](P& p) { p.add_conditions(v1::CONDITION_DIABETES); }},
                    {"walking_aid", [](P& p) { p.clear_walking_aid(); }},
                    {"home", [](P& p) { p.clear_home(); }},
                    {"home.ramp", [](P& p) { p.mutable_home()->clear_ramp(); }},
                    {"home.sturdy_chairs", [](P& p) { p.mutable_home()->set_sturdy_chairs(21); }},
                    {"can_get_up_from_floor", [](P& p) { p.clear_can_get_up_from_floor(); }},
                    {"senses", [](P& p) { p.clear_senses(); }},
                    {"language", [](P& p) { p.set_language("English!"); }},
                    {"zone", [](P& p) { p.set_zone(""); }},
                    {"height_cm", [](P& p) { p.set_height_cm(17); }},
                    {"strong_side", [](P& p) { p.set_strong_side(v1::SIDE_LEFT); }}});
}

TEST(CheckPerson, bothLimbsLostIsAPersonToo) {
  auto person = goodPerson();
  auto* second = person.add_limbs();
  *second =
      fromText<v1::LimbLoss>(R"(side: SIDE_RIGHT level: LIMB_LOSS_LEVEL_TRANSTIBIAL knee: KNEE_KIND_OWN_KNEE
      foot: FOOT_KIND_FIXED_ANKLE has_prosthesis: true)");
  EXPECT_TRUE(check(person).ok()) << check(person);
  person.set_strong_side(v1::SIDE_RIGHT);
  EXPECT_TRUE(check(person).ok()) << check(person);
}

std::string idNumbered(int number) {
  std::string id = kId;
  id.back() = static_cast<char>('0' + number);
  return id;
}

v1::Programme programmeWithMedia() {
  v1::Programme programme = goodProgramme();
  v1::MediaRef& photo = *programme.mutable_entries(0)->mutable_photo();
  photo.set_sha256(std::string(32, '\x11'));
  photo.set_type(v1::MEDIA_TYPE_JPEG);
  photo.set_size_bytes(1);
  photo.set_words("Both feet flat.");
  v1::MediaRef& clip = *programme.mutable_entries(0)->mutable_clip();
  clip = photo;
  clip.set_type(v1::MEDIA_TYPE_WEBM);
  clip.set_captions("Nose over toes.");
  return programme;
}

TEST(CheckProgramme, takesAPhotoAndAClipAndRefusesWhatTheyMayNotBe) {
  using P = v1::Programme;
  EXPECT_EQ(check(programmeWithMedia()), absl::OkStatus());
  const auto photo = [](P& p) { return p.mutable_entries(0)->mutable_photo(); };
  const auto clip = [](P& p) { return p.mutable_entries(0)->mutable_clip(); };
  expectRefused<P>(
      programmeWithMedia(),
      {{"entries[0].photo.sha256", [&](P& p) { photo(p)->set_sha256("short"); }},
       {"entries[0].photo.type", [&](P& p) { photo(p)->clear_type(); }},
       {"entries[0].photo.type", [&](P& p) { photo(p)->set_type(v1::MEDIA_TYPE_MP4); }},
       {"entries[0].photo.size_bytes", [&](P& p) { photo(p)->set_size_bytes(0); }},
       {"entries[0].photo.size_bytes", [&](P& p) { photo(p)->set_size_bytes((1U << 20U) + 1); }},
       {"entries[0].photo.words", [&](P& p) { photo(p)->clear_words(); }},
       {"entries[0].photo.words", [&](P& p) { photo(p)->set_words(" \n"); }},
       {"entries[0].photo.words", [&](P& p) { photo(p)->set_words(std::string(301, 'x')); }},
       {"entries[0].photo.captions", [&](P& p) { photo(p)->set_captions("cheese"); }},
       {"entries[0].clip.type", [&](P& p) { clip(p)->set_type(v1::MEDIA_TYPE_PNG); }},
       {"entries[0].clip.size_bytes", [&](P& p) { clip(p)->set_size_bytes((16U << 20U) + 1); }},
       {"entries[0].clip.words", [&](P& p) { clip(p)->clear_words(); }},
       {"entries[0].clip.captions", [&](P& p) { clip(p)->set_captions(std::string(2001, 'x')); }},
       {"entries", [&](P& p) {
          for (int i = 1; i <= 4; ++i) {
            v1::Entry& entry = *p.add_entries();
            entry = p.entries(0);
            entry.set_id(idNumbered(i));
            entry.mutable_clip()->set_sha256(std::string(32, static_cast<char>(0x20 + i)));
            entry.mutable_clip()->set_size_bytes(16U << 20U);
          }
        }}});
  // The same content twice is there once.
  v1::Programme same = programmeWithMedia();
  for (int i = 1; i <= 4; ++i) {
    v1::Entry& entry = *same.add_entries();
    entry = same.entries(0);
    entry.set_id(idNumbered(i));
    entry.mutable_clip()->set_size_bytes(16U << 20U);
  }
  EXPECT_EQ(check(same), absl::OkStatus());
}

TEST(CheckProgramme, refusesWhatTheRecordForbids) {
  using P = v1::Programme;
  expectRefused<P>(
      goodProgramme(),
      {{"number", [](P& p) { p.set_number(0); }},
       {"person_id", [](P& p) { p.clear_person_id(); }},
       {"issued_at", [](P& p) { p.clear_issued_at(); }},
       {"effective_day", [](P& p) { p.set_effective_day("2026-02-30"); }},
       {"end_day", [](P& p) { p.set_end_day("2026-11-24"); }},
       {"thresholds", [](P& p) { p.clear_thresholds(); }},
       {"thresholds.pain_stop_0_10", [](P& p) { p.mutable_thresholds()->set_pain_stop_0_10(11); }},
       {"entries", [](P& p) { p.clear_entries(); }},
       {"entries[1].id", [](P& p) { *p.add_entries() = p.entries(0); }},
       {"entries[0].side_policy", [](P& p) { p.mutable_entries(0)->clear_side_policy(); }},
       {"entries[0].dose.sets.hold_s",
        [](P& p) { p.mutable_entries(0)->mutable_dose()->mutable_sets()->set_hold_s(400); }},
       {"entries[0].dose.sets.sets",
        [](P& p) { p.mutable_entries(0)->mutable_dose()->mutable_sets()->set_sets(0); }},
       {"entries[0].dose.kind", [](P& p) { p.mutable_entries(0)->clear_dose(); }},
       {"entries[0].prosthesis",
        [](P& p) { p.mutable_entries(0)->set_prosthesis(v1::PROSTHESIS_USE_EITHER); }},
       {"entries[0].schedule.rhythm", [](P& p) { p.mutable_entries(0)->mutable_schedule()->clear_rhythm(); }},
       {"entries[0].schedule.weekdays.days[2]",
        [](P& p) {
          p.mutable_entries(0)->mutable_schedule()->mutable_weekdays()->add_days(v1::WEEKDAY_MONDAY);
        }},
       {"entries[0].schedule.times_per_week",
        [](P& p) { p.mutable_entries(0)->mutable_schedule()->set_times_per_week(8); }},
       {"entries[0].schedule.windows",
        [](P& p) { p.mutable_entries(0)->mutable_schedule()->clear_windows(); }},
       {"entries[0].schedule.windows[0].to_min",
        [](P& p) { p.mutable_entries(0)->mutable_schedule()->mutable_windows(0)->set_to_min(420); }},
       {"entries[0].schedule.windows[1].from_min",
        [](P& p) {
          auto* window = p.mutable_entries(0)->mutable_schedule()->add_windows();
          window->set_from_min(700);
          window->set_to_min(800);
        }},
       {"entries[0].overrides[0].reason",
        [](P& p) { p.mutable_entries(0)->add_overrides()->set_rule_id("stairs-alone"); }}});
}

TEST(CheckPractice, refusesWhatTheRecordForbids) {
  using P = v1::Practice;
  expectRefused<P>(
      goodPractice(),
      {{"end", [](P& p) { p.clear_end(); }},
       {"origin", [](P& p) { p.clear_origin(); }},
       {"programme_number", [](P& p) { p.set_programme_number(0); }},
       {"local_day", [](P& p) { p.set_local_day("25.11.2026"); }},
       {"elapsed_ms", [](P& p) { p.set_elapsed_ms(-1); }},
       {"elapsed_ms", [](P& p) { p.set_elapsed_ms(std::int64_t{37} * 3600000); }},
       {"entries[0].pain_after_0_10", [](P& p) { p.mutable_entries(0)->set_pain_after_0_10(11); }},
       {"entries[0].occasion.entry_id", [](P& p) { p.mutable_entries(0)->clear_occasion(); }},
       {"entries[0].done.hold_ms", [](P& p) { p.mutable_entries(0)->mutable_done()->set_hold_ms(-5); }},
       {"red_flag_rule_ids", [](P& p) { p.set_end(v1::PRACTICE_END_RED_FLAG); }},
       {"app_version", [](P& p) { p.clear_app_version(); }}});
}

TEST(CheckHoldOrder, aLiftHoldsNothingItself) {
  auto order =
      fromText<v1::HoldOrder>(R"(id: "$ID" number: 1 person_id: "$ID" clinic_id: "$ID" signer_id: "$ID"
      signer_name: "Demo Therapist" issued_at { seconds: 1764000000 } reason: "Skin first" entry_ids: "$ID")");
  EXPECT_TRUE(check(order).ok()) << check(order);
  order.set_lifts_id(kId);
  EXPECT_THAT(std::string(check(order).message()), StartsWith("entry_ids: "));
}

TEST(CheckRule, anEffectBelongsToItsStage) {
  auto rule = fromText<v1::Rule>(R"(id: "floor-needs-getting-up" stage: STAGE_PRESCRIBE effect: EFFECT_BLOCK
      when { has { fact: "person.can_get_up" values: "no" } }
      words { key: "en" value { therapist: "No way up from the floor." person: "Not on the floor." } }
      sources { kind: SOURCE_KIND_COMMON_PRACTICE text: "common practice, no source" })");
  EXPECT_TRUE(check(rule).ok()) << check(rule);
  rule.set_effect(v1::EFFECT_RED_FLAG);
  EXPECT_THAT(std::string(check(rule).message()), StartsWith("effect: "));
  rule.set_effect(v1::EFFECT_BLOCK);
  rule.clear_sources();
  EXPECT_THAT(std::string(check(rule).message()), StartsWith("sources: "));
}

// A newer program's fields are kept, not refused.
TEST(Check, unknownFieldsAreNoError) {
  auto person = goodPerson();
  person.GetReflection()->MutableUnknownFields(&person)->AddVarint(1000, 7);
  EXPECT_TRUE(check(person).ok());
}

}  // namespace
}  // namespace newel
