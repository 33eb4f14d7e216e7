#include "tests/core/people/sample_people.h"

#include <array>

#include "core/library/default_entry.h"
#include "core/records/uuid7.h"

namespace newel::test {
namespace {

v1::Person basePerson(std::uint64_t number) {
  v1::Person person;
  person.set_id(idOf(number));
  person.set_revision(1);
  person.set_mobility(v1::MOBILITY_LEVEL_K2);
  person.set_walking_aid(v1::WALKING_AID_ONE_CANE);
  v1::Home& home = *person.mutable_home();
  home.set_rails(v1::RAILS_BOTH);
  home.set_ramp(v1::ANSWER_YES);
  home.set_sturdy_chairs(2);
  home.set_rolling_chair(v1::ANSWER_YES);
  home.set_counter(v1::ANSWER_YES);
  home.set_floor_space(v1::ANSWER_YES);
  home.set_someone_near(v1::ANSWER_YES);
  person.set_can_get_up_from_floor(v1::ANSWER_YES);
  person.mutable_senses()->set_low_vision(v1::ANSWER_NO);
  person.mutable_senses()->set_hard_of_hearing(v1::ANSWER_NO);
  person.set_language("en");
  person.set_zone("Europe/Berlin");
  person.set_height_cm(172);
  return person;
}

}  // namespace

void lose(v1::Person& person, v1::Side side, v1::LimbLossLevel level, bool prosthesis) {
  v1::LimbLoss& limb = *person.add_limbs();
  limb.set_side(side);
  limb.set_level(level);
  limb.set_has_prosthesis(prosthesis);
  const bool own_knee = level < v1::LIMB_LOSS_LEVEL_KNEE_DISARTICULATION;
  limb.set_knee(own_knee     ? v1::KNEE_KIND_OWN_KNEE
                : prosthesis ? v1::KNEE_KIND_YIELDING
                             : v1::KNEE_KIND_NO_PROSTHESIS);
  limb.set_foot(prosthesis ? v1::FOOT_KIND_ENERGY_STORING : v1::FOOT_KIND_NO_PROSTHESIS);
}

std::string idOf(std::uint64_t number) {
  std::array<std::uint8_t, 10> random{};
  for (std::size_t i = 0; i < 8; ++i) random[9 - i] = static_cast<std::uint8_t>(number >> (8 * i));
  // 2026-11-01 00:00:00 UTC and one millisecond a number, so that ids sort as they were made.
  return makeUuid7(1793491200000 + static_cast<std::int64_t>(number), random);
}

v1::Person transfemoralLeft() {
  v1::Person person = basePerson(1);
  lose(person, v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_TRANSFEMORAL);
  return person;
}

v1::Person transtibialRight() {
  v1::Person person = basePerson(2);
  lose(person, v1::SIDE_RIGHT, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL);
  person.set_mobility(v1::MOBILITY_LEVEL_K3);
  person.set_walking_aid(v1::WALKING_AID_NONE);
  return person;
}

v1::Person bothTranstibial() {
  v1::Person person = basePerson(3);
  lose(person, v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL);
  lose(person, v1::SIDE_RIGHT, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL);
  person.set_strong_side(v1::SIDE_RIGHT);
  person.set_walking_aid(v1::WALKING_AID_TWO_CANES);
  return person;
}

v1::Person bothTransfemoral() {
  v1::Person person = basePerson(4);
  lose(person, v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_TRANSFEMORAL);
  lose(person, v1::SIDE_RIGHT, v1::LIMB_LOSS_LEVEL_TRANSFEMORAL);
  person.set_strong_side(v1::SIDE_LEFT);
  person.set_walking_aid(v1::WALKING_AID_WALKER);
  person.set_mobility(v1::MOBILITY_LEVEL_K1);
  return person;
}

v1::Person transfemoralRightNoProsthesis() {
  v1::Person person = basePerson(5);
  lose(person, v1::SIDE_RIGHT, v1::LIMB_LOSS_LEVEL_TRANSFEMORAL, false);
  person.set_mobility(v1::MOBILITY_LEVEL_K0);
  person.set_walking_aid(v1::WALKING_AID_CRUTCHES);
  return person;
}

v1::Person kneeDisarticulationLeft() {
  v1::Person person = basePerson(6);
  lose(person, v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_KNEE_DISARTICULATION);
  return person;
}

v1::Person partialFootRight() {
  v1::Person person = basePerson(7);
  lose(person, v1::SIDE_RIGHT, v1::LIMB_LOSS_LEVEL_PARTIAL_FOOT);
  person.set_mobility(v1::MOBILITY_LEVEL_K3);
  return person;
}

v1::Person hipDisarticulationRight() {
  v1::Person person = basePerson(8);
  lose(person, v1::SIDE_RIGHT, v1::LIMB_LOSS_LEVEL_HIP_DISARTICULATION);
  person.set_mobility(v1::MOBILITY_LEVEL_K1);
  return person;
}

std::vector<SamplePerson> samplePeople() {
  return {{"transfemoral left", transfemoralLeft()},
          {"transtibial right", transtibialRight()},
          {"both transtibial", bothTranstibial()},
          {"both transfemoral", bothTransfemoral()},
          {"transfemoral right, no prosthesis", transfemoralRightNoProsthesis()},
          {"knee disarticulation left", kneeDisarticulationLeft()},
          {"partial foot right", partialFootRight()},
          {"hip disarticulation right", hipDisarticulationRight()}};
}

v1::Entry entryOf(const std::string& exercise_id, const v1::Person& person, std::uint64_t number) {
  v1::Entry entry = defaultEntry(*Catalogue::builtIn().find(exercise_id), person);
  entry.set_id(idOf(number));
  v1::Schedule& schedule = *entry.mutable_schedule();
  for (const v1::Weekday day : {v1::WEEKDAY_MONDAY, v1::WEEKDAY_WEDNESDAY, v1::WEEKDAY_FRIDAY})
    schedule.mutable_weekdays()->add_days(day);
  v1::Window& window = *schedule.add_windows();
  window.set_from_min(9 * 60);
  window.set_to_min(11 * 60);
  return entry;
}

v1::Programme programmeOf(const v1::Person& person, const std::vector<v1::Entry>& entries) {
  v1::Programme programme;
  programme.set_id(idOf(1000));
  programme.set_number(1);
  programme.set_person_id(person.id());
  programme.set_clinic_id(idOf(2000));
  programme.set_signer_id(idOf(2001));
  programme.set_signer_name("Dr Sample (invented)");
  programme.mutable_issued_at()->set_seconds(1793491200);
  programme.set_effective_day("2026-11-02");
  programme.set_end_day("2027-01-31");
  programme.set_zone(person.zone());
  for (const v1::Entry& entry : entries) *programme.add_entries() = entry;
  programme.mutable_thresholds()->set_pain_stop_0_10(5);
  programme.mutable_thresholds()->set_pain_rise_0_10(2);
  return programme;
}

}  // namespace newel::test
