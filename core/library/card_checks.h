// What must be true of cards of advice, movements and settings beside being well-formed records.
// For core/library alone.
#pragma once

#include <vector>

#include "core/library/catalogue.h"
#include "core/library/exercise_checks.h"

namespace newel {

// `words` belong to a card, ask a question where the card has something to write down, and are plain: English
// at reading grade 6 or under, Spanish fairly easy (plain_words.h).
std::vector<CatalogueProblem> problemsOfCard(const v1::AdviceWords& words, const Catalogue& catalogue);

// Phases that fit their dose and their sides, with no role that needs a sound limb: a movement is for
// everyone.
std::vector<CatalogueProblem> problemsOfMovement(const v1::Movement& movement);

std::vector<CatalogueProblem> problemsOfSetting(const v1::SettingKind& setting);

}  // namespace newel
