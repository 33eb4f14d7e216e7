// Which entries of the last programme their rules call ready or too hard, and until when without another
// word. For attention_digest.h.
#pragma once

#include <absl/status/status.h>

#include "core/progress/occasion_facts.h"
#include "core/records/attention.pb.h"

namespace newel {

// adviseProgression() on `today` and on the days to come in `facts`: where nothing may be missed, an entry is
// ready until the first day after which an occasion that nobody told of counts as missed.
absl::Status addNextSteps(const std::vector<v1::Programme>& programmes,
                          const std::vector<v1::Practice>& practices, const OccasionFacts& facts,
                          absl::CivilDay today, v1::AttentionDigest& digest);

}  // namespace newel
