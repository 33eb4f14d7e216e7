#include "sync/tool/person_options.h"

#include "core/records/check.h"
#include "sync/tool/tool_io.h"

namespace newel::tool {
namespace {

// Of a person who exists only on the command line.
constexpr char kPersonId[] = "00000000-0000-7000-8000-000000000001";

v1::LimbLoss limb(v1::Side side, v1::LimbLossLevel level, v1::KneeKind knee) {
  v1::LimbLoss loss;
  loss.set_side(side);
  loss.set_level(level);
  loss.set_knee(knee);
  loss.set_foot(v1::FOOT_KIND_NOT_KNOWN);
  loss.set_has_prosthesis(true);
  return loss;
}

}  // namespace

absl::StatusOr<v1::Person> personFrom(const PersonOptions& options) {
  if (!options.person_file.empty()) return readRecord<v1::Person>(options.person_file);
  const auto side = fromShortName(v1::Side_descriptor(), "--side", options.side);
  if (!side.ok()) return side.status();
  const auto level = fromShortName(v1::LimbLossLevel_descriptor(), "--level", options.level);
  if (!level.ok()) return level.status();
  const bool above = *level >= v1::LIMB_LOSS_LEVEL_KNEE_DISARTICULATION;
  const auto knee = fromShortName(v1::KneeKind_descriptor(), "--knee",
                                  !options.knee.empty() ? options.knee
                                  : above               ? "yielding"
                                                        : "own-knee");
  if (!knee.ok()) return knee.status();
  v1::Person person;
  person.set_id(kPersonId);
  const auto at = static_cast<v1::LimbLossLevel>(*level);
  const auto bends = static_cast<v1::KneeKind>(*knee);
  if (options.both) {
    *person.add_limbs() = limb(v1::SIDE_LEFT, at, bends);
    *person.add_limbs() = limb(v1::SIDE_RIGHT, at, bends);
    person.set_strong_side(static_cast<v1::Side>(*side));
  } else {
    *person.add_limbs() = limb(static_cast<v1::Side>(*side), at, bends);
  }
  person.set_mobility(v1::MOBILITY_LEVEL_K3);
  person.set_walking_aid(v1::WALKING_AID_NONE);
  auto* home = person.mutable_home();
  home->set_rails(v1::RAILS_BOTH);
  home->set_ramp(v1::ANSWER_YES);
  home->set_sturdy_chairs(2);
  home->set_rolling_chair(v1::ANSWER_YES);
  home->set_counter(v1::ANSWER_YES);
  home->set_floor_space(v1::ANSWER_YES);
  home->set_someone_near(v1::ANSWER_YES);
  person.set_can_get_up_from_floor(v1::ANSWER_YES);
  person.mutable_senses()->set_low_vision(v1::ANSWER_NO);
  person.mutable_senses()->set_hard_of_hearing(v1::ANSWER_NO);
  person.set_language(options.language);
  person.set_zone("Etc/UTC");
  person.set_height_cm(170);
  return person;
}

}  // namespace newel::tool
