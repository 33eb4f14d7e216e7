// Seeded random people and entries for property tests: the same seed gives the same bytes on every machine.
#pragma once

#include <cstdint>

#include "core/records/exercise.pb.h"
#include "core/records/person.pb.h"
#include "core/records/programme.pb.h"
#include "core/records/random.h"

namespace newel::test {

// SplitMix64 (Steele, Lea and Flood 2014), kept here because the standard library's distributions differ by
// platform.
class SampleRandom : public Random {
 public:
  explicit SampleRandom(std::uint64_t seed) : m_state(seed) {}
  void fill(std::uint8_t* bytes, std::size_t size) override;
  std::uint64_t next();
  // From `least` to `most`, both included.
  std::uint32_t between(std::uint32_t least, std::uint32_t most);
  bool chance(std::uint32_t percent) { return between(1, 100) <= percent; }

 private:
  std::uint64_t m_state;
};

// Any person that passes check(): one or two limbs, every level, with and without prosthesis.
v1::Person anyPerson(SampleRandom& random);

// Any entry of `exercise` that passes check(), with what the exercise offers (side policy, support,
// prosthesis) and any dose inside the records' bounds. Not every one has a meaning for every person.
v1::Entry anyEntry(const v1::Exercise& exercise, SampleRandom& random);

}  // namespace newel::test
