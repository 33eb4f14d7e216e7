// One entry for one person, expanded to beats. Pure: the same input gives the same bytes.
#pragma once

#include <absl/status/statusor.h>

#include <string>
#include <vector>

#include "core/library/catalogue.h"
#include "core/records/person.pb.h"
#include "core/records/practice.pb.h"
#include "core/records/programme.pb.h"
#include "core/records/timeline.pb.h"

namespace newel {

// Beats are contiguous from 0 ms, never overlap, and sum to total_ms. Every set begins with get-ready or
// rest, and the end of a long rest is get-ready again (rest_s stays the time between sets); sides follow the
// entry's policy, and where they take turns the stronger one begins (common practice, no source); a hold beat
// lasts exactly hold_s. A bout of minutes is a row of hold beats of one minute or less with one cue, so that
// an interruption voids a minute and not the whole bout; half of it ends on a beat's end
// ("half way" is said there), and its last beat ends the repetition. `language`: BCP 47; falls back
// whole to "en" when the exercise has no words in it (Timeline.fell_back).
// Errors, each naming the field: kInvalidArgument (entry or person does not pass check(), dose kind, support
// or side policy the exercise does not have), kNotFound (exercise id or revision), kFailedPrecondition (no
// meaning for this person: refused when both limbs are lost, no leading leg chosen, prosthesis asked for and
// none owned).
absl::StatusOr<v1::Timeline> compileTimeline(const v1::Entry& entry, const v1::Person& person,
                                             const Catalogue& catalogue, const std::string& language);

// What was done, counted over the beats [0, end) that were completed; `done` says which.
v1::DoseCount countDose(const v1::Timeline& timeline, const std::vector<bool>& done);

// The same by set, in order, sets with nothing done left out. Where one side follows the other within a set
// each has its own; `side` is absent where a set has no one side.
std::vector<v1::SetDone> countSets(const v1::Timeline& timeline, const std::vector<bool>& done);

// True for what counts as work: moves, holds and returns.
bool isWork(v1::BeatKind kind);

}  // namespace newel
