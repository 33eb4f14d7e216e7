// A dose in words, in any language: "2 sets, 10 times each side, hold 5 seconds, rest 60 seconds".
#pragma once

#include <string>

#include "core/library/catalogue.h"
#include "core/records/exercise.pb.h"

namespace newel {

// Whole in `language` (or its base language), else whole in English. `policy` says whether "each side" is
// said.
std::string doseWords(const v1::Dose& dose, v1::SidePolicy policy, const Catalogue& catalogue,
                      const std::string& language);

}  // namespace newel
