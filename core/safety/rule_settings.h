// Settings of the clinic inside rules: numbers that a rule names, and "{<setting id>}" in its words.
// For core/safety alone.
#pragma once

#include <string>

#include "core/library/settings.h"
#include "core/records/rule.pb.h"
#include "core/safety/rule_loading.h"

namespace newel {

// The setting that the bound names; empty when it is a plain number.
std::string settingOf(const v1::RuleNumber& number);

// `set` with every setting replaced by its number. `values` must have every setting that `set` names.
RuleSet withValues(RuleSet set, const SettingValues& values);

}  // namespace newel
