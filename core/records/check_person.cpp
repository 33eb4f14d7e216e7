#include <set>

#include "core/records/check.h"
#include "core/records/field_check.h"

namespace newel {
namespace {

bool kneeIsLost(v1::LimbLossLevel level) { return level >= v1::LIMB_LOSS_LEVEL_KNEE_DISARTICULATION; }

void checkLimb(const FieldCheck& check, const v1::LimbLoss& limb) {
  if (!kneeIsLost(limb.level())) {
    check.that(limb.knee() == v1::KNEE_KIND_OWN_KNEE, "knee", "a loss below the knee keeps its own knee");
  } else {
    check.that(limb.knee() != v1::KNEE_KIND_OWN_KNEE, "knee", "this level has no knee of its own");
    check.that((limb.knee() == v1::KNEE_KIND_NO_PROSTHESIS) == !limb.has_prosthesis(), "knee",
               "does not fit has_prosthesis");
  }
  check.that((limb.foot() == v1::FOOT_KIND_NO_PROSTHESIS) == !limb.has_prosthesis(), "foot",
             "does not fit has_prosthesis");
}

}  // namespace

absl::Status check(const v1::Person& person) {
  FieldCheck check;
  check.uuid("id", person.id());
  check.that(!person.limbs().empty(), "limbs", "is missing");
  check.that(person.limbs_size() <= 2, "limbs", "a person has two legs");
  check.enums(person);
  std::set<int> sides;
  for (int i = 0; i < person.limbs_size(); ++i) {
    check.that(sides.insert(person.limbs(i).side()).second, "limbs[" + std::to_string(i) + "].side",
               "is given twice");
    checkLimb(check.at("limbs", i), person.limbs(i));
  }
  std::set<int> conditions;
  for (int i = 0; i < person.conditions_size(); ++i) {
    check.that(conditions.insert(person.conditions(i)).second, "conditions[" + std::to_string(i) + "]",
               "is given twice");
  }
  check.that(person.has_home(), "home", "is missing");
  check.range("home.sturdy_chairs", person.home().sturdy_chairs(), 0, 20);
  check.that(person.has_senses(), "senses", "is missing");
  check.language("language", person.language());
  check.zone("zone", person.zone());
  check.range("height_cm", person.height_cm(), 80, 230);
  check.that(person.limbs_size() == 2 || person.strong_side() == v1::SIDE_UNSPECIFIED, "strong_side",
             "is for people who lost both limbs");
  return check.status();
}

absl::Status check(const v1::Identity& identity) {
  FieldCheck check;
  check.uuid("person_id", identity.person_id());
  check.text("given_name", identity.given_name(), 1, 200);
  check.text("family_name", identity.family_name(), 0, 200);
  if (!identity.birth_date().empty()) check.day("birth_date", identity.birth_date());
  check.text("phone", identity.phone(), 0, 60);
  return check.status();
}

absl::Status check(const v1::ClinicCard& card) {
  FieldCheck check;
  check.uuid("clinic_id", card.clinic_id());
  check.text("name", card.name(), 1, 200);
  check.text("phone", card.phone(), 1, 60);
  check.text("hours", card.hours(), 0, 400);
  check.text("emergency_number", card.emergency_number(), 1, 20);
  if (card.has_settings()) {
    const absl::Status settings = newel::check(card.settings());
    check.that(settings.ok(), "settings", std::string(settings.message()));
  }
  return check.status();
}

}  // namespace newel
