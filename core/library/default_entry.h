// The entry that a therapist starts from: an exercise with its own defaults, for one person.
// Not here: whether it is safe (core/safety), when it is due (the therapist's choice).
#pragma once

#include "core/records/exercise.pb.h"
#include "core/records/person.pb.h"
#include "core/records/programme.pb.h"

namespace newel {

// `exercise`'s default dose, first support, and the first side policy that has a meaning for `person` (a
// policy that needs a sound limb has none when both are lost). Prosthesis: as the exercise says; where it
// leaves it open, OFF when lying or on hands and knees, else ON (common practice, no source); always OFF for
// a person who has none. Pacing timed: a tap between
// two steps would take a hand off the rail. No id and no schedule.
v1::Entry defaultEntry(const v1::Exercise& exercise, const v1::Person& person);

// Puts `entry` on a rung of its exercise's ladder: the rung's support and dose, all else as it was.
void standOn(v1::Entry& entry, const v1::Rung& rung);

// True when every lost limb of `person` has a prosthesis.
bool ownsProsthesis(const v1::Person& person);

}  // namespace newel
