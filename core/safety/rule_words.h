// Words of rules and questions in every language: read, proved complete and plain. For core/safety alone.
#pragma once

#include <absl/status/status.h>

#include <string>

#include "core/library/catalogue.h"
#include "core/safety/rule_loading.h"

namespace newel {

// `text` is for the person: plain in its language, and naming no setting that does not exist.
absl::Status checkText(const std::string& id, const std::string& text, const std::string& language,
                       const Catalogue& catalogue);
absl::Status checkPlaceholders(const std::string& id, const std::string& text, const Catalogue& catalogue);

// Adds the words under `folder`/<language> to `set`; no such folder is no error. See loadRules().
absl::Status addSafetyWords(const std::string& folder, const Catalogue& catalogue, RuleSet& set);

}  // namespace newel
