// The clinic's own exercises: what to begin one from, and whether it is fit to be kept.
// Not here: keeping them (sync/hub), the form (qml/desk), what is safe for whom (core/safety).
#pragma once

#include <absl/status/status.h>

#include <set>
#include <string>

#include "core/library/catalogue.h"

namespace newel {

// An exercise to go on writing: phases, dose and sides of the movement, and in `language` (or English) the
// words that are the same for all of them. Titles, purpose, start and the phases' words are empty: they are
// the therapist's. `id` begins with "own-".
v1::OwnExercise beginOwn(const v1::Movement& movement, const Catalogue& catalogue, const std::string& id,
                         const std::string& language);

// What every exercise of the catalogue in that position carries, and no own one may leave out: safety rules
// look at tags.
std::set<std::string> tagsOfPosition(const Catalogue& catalogue, v1::Position position);

// kInvalidArgument naming the field: what check() says, words that do not fit the exercise or cannot be said
// in their beat, phases that are not the movement's, a tag of the position that is missing, a tag or muscle
// that does not exist.
absl::Status checkOwn(const v1::OwnExercise& own, const Catalogue& catalogue);

}  // namespace newel
