// A clinic's own numbers over the catalogue's usual ones. Not here: what a rule does with them (core/safety).
#pragma once

#include <absl/status/status.h>

#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "core/library/catalogue.h"

namespace newel {

// Every setting of the catalogue by its id.
using SettingValues = std::map<std::string, std::uint32_t>;

// OK when every value is one of the catalogue's settings and in its range; else kInvalidArgument, for example
// "values[redness-minutes]: 60 is over 30".
absl::Status fitsSettings(const v1::ClinicSettings& settings, const Catalogue& catalogue);

// The clinic's number where it has set one that fits, else the usual one. A number of an older or newer
// program that does not fit is as if it were not set: the usual value is the cautious one.
SettingValues settingValues(const v1::ClinicSettings& settings, const Catalogue& catalogue);

// The usual values alone.
SettingValues usualSettings(const Catalogue& catalogue);

// The names between braces in `text`, as they stand.
std::vector<std::string> settingsNamedIn(const std::string& text);

// `text` with "{<setting id>}" replaced by the number; names that are in no setting stay.
std::string withSettings(std::string text, const SettingValues& values);

}  // namespace newel
