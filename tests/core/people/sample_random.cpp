#include "tests/core/people/sample_random.h"

#include "tests/core/people/sample_people.h"

namespace newel::test {
namespace {

v1::Dose anyDose(const v1::Exercise& exercise, SampleRandom& random) {
  v1::Dose dose;
  if (exercise.dose_kind() == v1::DOSE_KIND_SETS) {
    v1::SetsDose& sets = *dose.mutable_sets();
    sets.set_sets(random.between(1, 10));
    sets.set_repetitions(random.between(1, 20));
    sets.set_hold_s(random.chance(30) ? 0 : random.between(1, 120));
    sets.set_move_s(random.between(1, 20));
    sets.set_return_s(random.between(1, 20));
    sets.set_repetition_rest_s(random.chance(30) ? 0 : random.between(1, 60));
    sets.set_rest_s(random.chance(30) ? 0 : random.between(1, 300));
  } else if (exercise.dose_kind() == v1::DOSE_KIND_MINUTES) {
    v1::MinutesDose& minutes = *dose.mutable_minutes();
    minutes.set_minutes(random.between(1, 60));
    minutes.set_bouts(random.between(1, 6));
    minutes.set_rest_s(random.chance(30) ? 0 : random.between(1, 600));
  } else {
    v1::PassesDose& passes = *dose.mutable_passes();
    passes.set_passes(random.between(1, 8));
    if (exercise.step_length_cm() > 0 && random.chance(50)) {
      passes.set_distance_m(random.between(1, 40));
    } else {
      passes.set_step_count(random.between(1, 40));
    }
    passes.set_step_s(random.between(1, 10));
    passes.set_rest_s(random.chance(30) ? 0 : random.between(1, 300));
  }
  return dose;
}

void addLimb(v1::Person& person, v1::Side side, SampleRandom& random) {
  v1::LimbLoss& limb = *person.add_limbs();
  limb.set_side(side);
  limb.set_level(static_cast<v1::LimbLossLevel>(random.between(1, 6)));
  limb.set_has_prosthesis(random.chance(80));
  const bool own_knee = limb.level() < v1::LIMB_LOSS_LEVEL_KNEE_DISARTICULATION;
  limb.set_knee(own_knee                ? v1::KNEE_KIND_OWN_KNEE
                : limb.has_prosthesis() ? static_cast<v1::KneeKind>(random.between(2, 4))
                                        : v1::KNEE_KIND_NO_PROSTHESIS);
  limb.set_foot(limb.has_prosthesis() ? static_cast<v1::FootKind>(random.between(2, 5))
                                      : v1::FOOT_KIND_NO_PROSTHESIS);
}

}  // namespace

std::uint64_t SampleRandom::next() {
  m_state += 0x9e3779b97f4a7c15ULL;
  std::uint64_t z = m_state;
  z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ULL;
  z = (z ^ (z >> 27)) * 0x94d049bb133111ebULL;
  return z ^ (z >> 31);
}

void SampleRandom::fill(std::uint8_t* bytes, std::size_t size) {
  for (std::size_t i = 0; i < size; ++i) bytes[i] = static_cast<std::uint8_t>(next() >> 32);
}

std::uint32_t SampleRandom::between(std::uint32_t least, std::uint32_t most) {
  return least + static_cast<std::uint32_t>(next() % (most - least + 1));
}

v1::Person anyPerson(SampleRandom& random) {
  v1::Person person = transfemoralLeft();
  person.clear_limbs();
  const bool both = random.chance(30);
  const bool left = random.chance(50);
  if (both || left) addLimb(person, v1::SIDE_LEFT, random);
  if (both || !left) addLimb(person, v1::SIDE_RIGHT, random);
  if (both && random.chance(80)) person.set_strong_side(random.chance(50) ? v1::SIDE_LEFT : v1::SIDE_RIGHT);
  person.set_mobility(static_cast<v1::MobilityLevel>(random.between(1, 5)));
  person.set_height_cm(random.between(80, 230));
  return person;
}

v1::Entry anyEntry(const v1::Exercise& exercise, SampleRandom& random) {
  v1::Entry entry = entryOf(exercise.id(), transfemoralLeft(), random.between(1, 1000000));
  entry.set_side_policy(exercise.side_policies(
      static_cast<int>(random.between(0, static_cast<std::uint32_t>(exercise.side_policies_size()) - 1))));
  entry.set_support(exercise.supports(
      static_cast<int>(random.between(0, static_cast<std::uint32_t>(exercise.supports_size()) - 1))));
  if (exercise.prosthesis() == v1::PROSTHESIS_USE_EITHER)
    entry.set_prosthesis(random.chance(50) ? v1::PROSTHESIS_USE_ON : v1::PROSTHESIS_USE_OFF);
  entry.set_pacing(random.chance(25) ? v1::PACING_BY_PERSON : v1::PACING_TIMED);
  *entry.mutable_dose() = anyDose(exercise, random);
  return entry;
}

}  // namespace newel::test
