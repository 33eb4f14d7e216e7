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

// What one practice tells of a fall, or of skin: the answer's id, "stopped", or empty for nothing. An answer
// that all is well is nothing, nor is "not looked yet".
std::string fallToldIn(const v1::Practice& practice);
std::string skinSignToldIn(const v1::Practice& practice);

// The latest each; nullopt: none.
std::optional<ToldSign> lastFall(const std::vector<v1::Practice>& practices);
std::optional<ToldSign> lastSkinSign(const std::vector<v1::Practice>& practices);

}  // namespace newel
