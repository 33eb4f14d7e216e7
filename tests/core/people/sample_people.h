// Invented people, entries and programmes for tests. Nobody here exists.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/library/catalogue.h"
#include "core/records/person.pb.h"
#include "core/records/programme.pb.h"

namespace newel::test {

// A UUIDv7 that is the same for the same number.
std::string idOf(std::uint64_t number);

// Adds the loss of a limb: with a prosthesis, its usual knee (own, or yielding) and an energy-storing foot.
void lose(v1::Person& person, v1::Side side, v1::LimbLossLevel level, bool prosthesis = true);

// K2, yielding knee, one cane, two sturdy chairs, rails on both sides, can get up from the floor.
v1::Person transfemoralLeft();
// K3, no walking aid.
v1::Person transtibialRight();
// Two prostheses; the right leg was chosen as the stronger one.
v1::Person bothTranstibial();
v1::Person bothTransfemoral();
// Before the first prosthesis, on crutches.
v1::Person transfemoralRightNoProsthesis();
v1::Person kneeDisarticulationLeft();
v1::Person partialFootRight();
v1::Person hipDisarticulationRight();

struct SamplePerson {
  std::string name;
  v1::Person person;
};
// All of the above.
std::vector<SamplePerson> samplePeople();

// The exercise's defaults for this person, on Monday, Wednesday and Friday from 9 to 11, with id
// idOf(`number`). The exercise must be in the compiled-in catalogue.
v1::Entry entryOf(const std::string& exercise_id, const v1::Person& person, std::uint64_t number = 100);

// Number 1, from 2026-11-02 to 2027-01-31 in Europe/Berlin, thresholds 5 and 2.
v1::Programme programmeOf(const v1::Person& person, const std::vector<v1::Entry>& entries);

}  // namespace newel::test
