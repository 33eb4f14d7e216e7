// Progression rules to start writing from, read from data. What counts is the entry's own rule.
// Not here: judging practices (progression.h).
#pragma once

#include <absl/status/statusor.h>

#include <string>
#include <vector>

#include "core/records/progression.pb.h"

namespace newel {

// Compiled in; the build fails on a bad one. In the order of their files' names. Safe from any thread.
const std::vector<v1::ProgressionPreset>& progressionPresets();

// Every "*.textproto" directly in `folder`, one preset a file, named after its id. kInvalidArgument with
// "<file>:<line>: <reason>"; kNotFound when the folder is missing or empty.
absl::StatusOr<std::vector<v1::ProgressionPreset>> loadProgressionPresets(const std::string& folder);

}  // namespace newel
