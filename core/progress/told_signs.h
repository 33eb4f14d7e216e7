// Falls and skin that a person told of: by an answer of the ready check, or as the reason for a stop.
// Not here: what they mean for practice (core/safety); only that the clinic should read of them.
#pragma once

#include <absl/time/time.h>

#include <optional>
#include <string>
#include <vector>

#include "core/records/practice.pb.h"

namespace newel {

struct ToldSign {
  absl::Time at;     // the practice's end
  std::string what;  // the answer's id, or "stopped"
};

// The latest each; nullopt: none. An answer that all is well is none, nor is "not looked yet".
std::optional<ToldSign> lastFall(const std::vector<v1::Practice>& practices);
std::optional<ToldSign> lastSkinSign(const std::vector<v1::Practice>& practices);

}  // namespace newel
