// Is a language as complete as it says? For core/library alone.
#pragma once

#include <vector>

#include "core/library/catalogue.h"
#include "core/library/exercise_checks.h"

namespace newel {

// `phrases` has every phrase and counted phrase that English has, each counted one with exactly the plural
// categories that CLDR gives the language, and every exercise, card, movement and setting that it claims.
std::vector<CatalogueProblem> problemsOfLanguage(const v1::PhraseFile& phrases, const Catalogue& catalogue);

}  // namespace newel
