// What must be true of an exercise and its words beyond each record's own check(): that they fit together,
// and that every text can be said to every person. For core/library alone.
#pragma once

#include <string>
#include <vector>

#include "core/library/catalogue.h"

namespace newel {

struct CatalogueProblem {
  std::string path;  // of the field in its record, may be empty
  std::string reason;
};

// Muscles and tags must be among the English phrases of `catalogue`.
std::vector<CatalogueProblem> problemsOf(const v1::Exercise& exercise, const Catalogue& catalogue);

// `catalogue` must hold the phrases of the words' language already.
std::vector<CatalogueProblem> problemsOf(const v1::ExerciseWords& words, const v1::Exercise& exercise,
                                         const Catalogue& catalogue);

std::vector<CatalogueProblem> problemsOf(const v1::PhraseFile& phrases);

}  // namespace newel
