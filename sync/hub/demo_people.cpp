#include "sync/hub/demo_people.h"

#include <array>

#include "core/records/uuid7.h"

namespace newel {
namespace {

// 2026-11-02 00:00:00 UTC; ids of the demo are those of its invention.
constexpr std::int64_t kInventedMs = 1793577600000;

std::string demoId(std::uint8_t number) {
  std::array<std::uint8_t, 10> bytes{};
  bytes.back() = number;
  return makeUuid7(kInventedMs + number, bytes);
}

v1::Person usualPerson(std::uint8_t number) {
  v1::Person person;
  person.set_id(demoId(number));
  person.set_mobility(v1::MOBILITY_LEVEL_K2);
  person.set_walking_aid(v1::WALKING_AID_ONE_CANE);
  v1::Home& home = *person.mutable_home();
  home.set_rails(v1::RAILS_BOTH);
  home.set_ramp(v1::ANSWER_NO);
  home.set_sturdy_chairs(2);
  home.set_rolling_chair(v1::ANSWER_NO);
  home.set_counter(v1::ANSWER_YES);
  home.set_floor_space(v1::ANSWER_YES);
  home.set_someone_near(v1::ANSWER_YES);
  person.set_can_get_up_from_floor(v1::ANSWER_YES);
  person.mutable_senses()->set_low_vision(v1::ANSWER_NO);
  person.mutable_senses()->set_hard_of_hearing(v1::ANSWER_NO);
  person.set_language("en");
  person.set_zone("Europe/Berlin");
  person.set_height_cm(170);
  return person;
}

void addLimb(v1::Person& person, v1::Side side, v1::LimbLossLevel level) {
  v1::LimbLoss& limb = *person.add_limbs();
  limb.set_side(side);
  limb.set_level(level);
  limb.set_has_prosthesis(true);
  const bool own_knee = level < v1::LIMB_LOSS_LEVEL_KNEE_DISARTICULATION;
  limb.set_knee(own_knee ? v1::KNEE_KIND_OWN_KNEE : v1::KNEE_KIND_YIELDING);
  limb.set_foot(v1::FOOT_KIND_ENERGY_STORING);
}

v1::Identity identityOf(const v1::Person& person, const std::string& given, const std::string& family) {
  v1::Identity identity;
  identity.set_person_id(person.id());
  identity.set_given_name(given);
  identity.set_family_name(family + " (demo)");
  return identity;
}

DemoPerson ada() {
  v1::Person person = usualPerson(1);
  addLimb(person, v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL);
  person.set_mobility(v1::MOBILITY_LEVEL_K3);
  person.set_walking_aid(v1::WALKING_AID_NONE);
  return {person,
          identityOf(person, "Ada", "Example"),
          demoId(101),
          {"sit-to-stand", "weight-shift-side", "step-through", "opposite-arm-and-leg"}};
}

DemoPerson ben() {
  v1::Person person = usualPerson(2);
  addLimb(person, v1::SIDE_RIGHT, v1::LIMB_LOSS_LEVEL_TRANSFEMORAL);
  person.set_height_cm(182);
  return {person,
          identityOf(person, "Ben", "Sample"),
          demoId(102),
          {"even-weight-standing", "weight-shift-side", "face-down-lying", "stairs-one-at-a-time"}};
}

DemoPerson cleo() {
  v1::Person person = usualPerson(3);
  addLimb(person, v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_KNEE_DISARTICULATION);
  person.add_conditions(v1::CONDITION_DIABETES);
  person.set_height_cm(163);
  return {person, identityOf(person, "Cleo", "Invented"), demoId(103), {}};
}

DemoPerson dov() {
  v1::Person person = usualPerson(4);
  addLimb(person, v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL);
  addLimb(person, v1::SIDE_RIGHT, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL);
  person.set_strong_side(v1::SIDE_LEFT);
  person.set_walking_aid(v1::WALKING_AID_TWO_CANES);
  return {person, identityOf(person, "Dov", "Specimen"), demoId(104), {}};
}

DemoPerson edda() {
  v1::Person person = usualPerson(5);
  addLimb(person, v1::SIDE_RIGHT, v1::LIMB_LOSS_LEVEL_PARTIAL_FOOT);
  person.set_mobility(v1::MOBILITY_LEVEL_K4);
  person.set_walking_aid(v1::WALKING_AID_NONE);
  return {person, identityOf(person, "Edda", "Pretend"), demoId(105), {}};
}

}  // namespace

const std::vector<DemoPerson>& demoPeople() {
  static const std::vector<DemoPerson> kPeople = {ada(), ben(), cleo(), dov(), edda()};
  return kPeople;
}

}  // namespace newel
