#include "tests/bench/bench_records.h"

#include <cstdio>

#include "core/library/catalogue.h"

namespace newel::bench {

std::string benchId(std::uint64_t n) {
  char text[40];
  std::snprintf(text, sizeof text, "%08llx-0000-7000-8000-%012llx",
                static_cast<unsigned long long>(n >> 16 & 0xFFFFFFFF),
                static_cast<unsigned long long>(n & 0xFFFFFFFFFFFF));
  return text;
}

v1::Person benchPerson() {
  v1::Person person;
  person.set_id(benchId(1));
  auto* limb = person.add_limbs();
  limb->set_side(v1::SIDE_LEFT);
  limb->set_level(v1::LIMB_LOSS_LEVEL_TRANSFEMORAL);
  limb->set_knee(v1::KNEE_KIND_YIELDING);
  limb->set_foot(v1::FOOT_KIND_ENERGY_STORING);
  limb->set_has_prosthesis(true);
  person.set_mobility(v1::MOBILITY_LEVEL_K3);
  person.set_walking_aid(v1::WALKING_AID_NONE);
  auto* home = person.mutable_home();
  home->set_rails(v1::RAILS_BOTH);
  home->set_ramp(v1::ANSWER_YES);
  home->set_sturdy_chairs(2);
  for (const auto set : {&v1::Home::set_rolling_chair, &v1::Home::set_counter, &v1::Home::set_floor_space,
                         &v1::Home::set_someone_near}) {
    (home->*set)(v1::ANSWER_YES);
  }
  person.set_can_get_up_from_floor(v1::ANSWER_YES);
  person.mutable_senses()->set_low_vision(v1::ANSWER_NO);
  person.mutable_senses()->set_hard_of_hearing(v1::ANSWER_NO);
  person.set_language("en");
  person.set_zone("Europe/Berlin");
  person.set_height_cm(172);
  return person;
}

v1::Entry benchEntry(const std::string& exercise_id, std::uint64_t n) {
  const auto* exercise = Catalogue::builtIn().find(exercise_id);
  v1::Entry entry;
  entry.set_id(benchId(1000 + n));
  entry.set_exercise_id(exercise->id());
  entry.set_exercise_revision(exercise->revision());
  entry.set_side_policy(exercise->side_policies(0));
  *entry.mutable_dose() = exercise->default_dose();
  entry.set_support(exercise->supports(0));
  entry.set_prosthesis(exercise->prosthesis() == v1::PROSTHESIS_USE_OFF ? v1::PROSTHESIS_USE_OFF
                                                                        : v1::PROSTHESIS_USE_ON);
  entry.set_pacing(v1::PACING_TIMED);
  auto* days = entry.mutable_schedule()->mutable_weekdays();
  for (const auto day : {v1::WEEKDAY_MONDAY, v1::WEEKDAY_WEDNESDAY, v1::WEEKDAY_FRIDAY}) days->add_days(day);
  auto* window = entry.mutable_schedule()->add_windows();
  window->set_from_min(8 * 60);
  window->set_to_min(12 * 60);
  return entry;
}

v1::Programme benchProgramme(int entries) {
  v1::Programme programme;
  programme.set_id(benchId(2));
  programme.set_number(1);
  programme.set_person_id(benchId(1));
  programme.set_clinic_id(benchId(3));
  programme.set_signer_id(benchId(4));
  programme.set_signer_name("Bench Therapist");
  programme.mutable_issued_at()->set_seconds(1764000000);
  programme.set_effective_day("2026-01-01");
  programme.set_end_day("2026-12-31");
  programme.set_zone("Europe/Berlin");
  programme.mutable_thresholds()->set_pain_stop_0_10(5);
  programme.mutable_thresholds()->set_pain_rise_0_10(2);
  const auto& all = Catalogue::builtIn().exercises();
  for (int i = 0; i < entries; ++i) {
    const auto& exercise = all[static_cast<std::size_t>(i) % all.size()];
    *programme.add_entries() = benchEntry(exercise.id(), static_cast<std::uint64_t>(i));
  }
  return programme;
}

v1::Practice benchPractice(std::uint64_t n) {
  v1::Practice practice;
  practice.set_id(benchId(100000 + n));
  practice.set_revision(1);
  practice.set_person_id(benchId(1));
  practice.set_programme_number(1);
  practice.set_zone("Europe/Berlin");
  practice.set_local_day("2026-11-25");
  practice.mutable_started_at()->set_seconds(1764000000 + static_cast<std::int64_t>(n));
  practice.mutable_ended_at()->set_seconds(1764001200 + static_cast<std::int64_t>(n));
  practice.set_elapsed_ms(1200000);
  practice.set_end(v1::PRACTICE_END_FINISHED);
  practice.set_origin(v1::ORIGIN_TIMED_HERE);
  practice.set_app_version("bench");
  for (std::uint64_t i = 0; i < 6; ++i) {
    auto* done = practice.add_entries();
    done->mutable_occasion()->set_entry_id(benchId(1000 + i));
    done->mutable_occasion()->set_local_day("2026-11-25");
    done->set_exercise_id("sit-to-stand");
    done->set_exercise_revision(1);
    for (std::uint32_t set = 1; set <= 3; ++set) {
      auto* one = done->add_sets();
      one->set_set(set);
      one->mutable_done()->set_repetitions(8);
      one->mutable_done()->set_active_ms(48000);
    }
    done->mutable_asked()->set_repetitions(24);
    done->mutable_done()->set_repetitions(24);
    done->mutable_done()->set_active_ms(144000);
    done->set_pain_after_0_10(2);
    done->set_effort_0_10(4);
  }
  return practice;
}

}  // namespace newel::bench
