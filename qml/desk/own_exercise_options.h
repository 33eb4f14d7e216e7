// What can be chosen in the form of an own exercise, and what is still wrong in it, in words.
#pragma once

#include <QtCore/QVariantMap>
#include <string>

#include "core/library/catalogue.h"

namespace newel::desk {

// Lists of {value, text}: position, purpose_group, prosthesis, mobility, both, supports, sides (of the
// movement), equipment, muscles, tags.
QVariantMap ownExerciseOptions(const Catalogue& catalogue, const std::string& movement,
                               const std::string& language);

// From the message of checkOwn(): which question of the form, and what is wrong with its answer.
QString ownExerciseProblem(const std::string& message);

}  // namespace newel::desk
