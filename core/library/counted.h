// Counted things in any language: "1 set", "3 sets", by CLDR's plural rules (through ICU).
// Not here: numbers in other digits than 0 to 9.
#pragma once

#include <cstdint>
#include <set>
#include <string>

#include "core/library/catalogue.h"

namespace newel {

// CLDR category of `n` in `language` (BCP 47): "zero", "one", "two", "few", "many" or "other".
std::string pluralCategory(const std::string& language, std::int64_t n);

// The categories that whole numbers can have in `language`.
std::set<std::string> pluralCategories(const std::string& language);

// The counted phrase `key` for `n`, in `language`, its base language, or English; empty when there is none.
std::string counted(const Catalogue& catalogue, const std::string& key, std::int64_t n,
                    const std::string& language);

}  // namespace newel
