#include "core/library/default_entry.h"

#include <algorithm>

namespace newel {
namespace {

v1::SidePolicy defaultPolicy(const v1::Exercise& exercise, const v1::Person& person) {
  for (const int value : exercise.side_policies()) {
    const auto policy = static_cast<v1::SidePolicy>(value);
    const bool needs_sound = policy == v1::SIDE_POLICY_PROSTHETIC || policy == v1::SIDE_POLICY_SOUND;
    if (person.limbs_size() < 2 || !needs_sound) return policy;
  }
  return exercise.side_policies(0);
}

v1::ProsthesisUse defaultUse(const v1::Exercise& exercise, const v1::Person& person) {
  if (exercise.prosthesis() != v1::PROSTHESIS_USE_EITHER) return exercise.prosthesis();
  if (!ownsProsthesis(person)) return v1::PROSTHESIS_USE_OFF;
  switch (exercise.position()) {
    case v1::POSITION_LYING_ON_BACK:
    case v1::POSITION_LYING_FACE_DOWN:
    case v1::POSITION_LYING_ON_SIDE:
    case v1::POSITION_HANDS_AND_KNEES:
      return v1::PROSTHESIS_USE_OFF;
    default:
      return v1::PROSTHESIS_USE_ON;
  }
}

}  // namespace

v1::Entry defaultEntry(const v1::Exercise& exercise, const v1::Person& person) {
  v1::Entry entry;
  entry.set_exercise_id(exercise.id());
  entry.set_exercise_revision(exercise.revision());
  entry.set_side_policy(defaultPolicy(exercise, person));
  *entry.mutable_dose() = exercise.default_dose();
  entry.set_support(exercise.supports(0));
  entry.set_prosthesis(defaultUse(exercise, person));
  entry.set_pacing(v1::PACING_TIMED);
  return entry;
}

void standOn(v1::Entry& entry, const v1::Rung& rung) {
  entry.set_rung_id(rung.id());
  entry.set_support(rung.support());
  *entry.mutable_dose() = rung.dose();
}

bool ownsProsthesis(const v1::Person& person) {
  return std::all_of(person.limbs().begin(), person.limbs().end(),
                     [](const v1::LimbLoss& limb) { return limb.has_prosthesis(); });
}

}  // namespace newel
