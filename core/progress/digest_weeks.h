// Weeks of occasions in little space, and what they come to on one day. For attention_digest.h.
#pragma once

#include <absl/time/civil_time.h>

#include "core/progress/occasion_facts.h"
#include "core/records/attention.pb.h"

namespace newel {

// Days as the digest has them: counted from 1970-01-01.
std::int32_t dayNumber(absl::CivilDay day);
absl::CivilDay dayOfNumber(std::int32_t number);

// The weeks from `first`, a Monday, to `last`, a Sunday; what `facts` has of others is left out.
void tallyWeeks(const OccasionFacts& facts, absl::CivilDay first, absl::CivilDay last,
                v1::AttentionDigest& digest);

struct WeekFigures {
  Share share;      // as adherenceOf() has it
  int no_data = 0;  // due, over, and nobody has heard of them
  int missed = 0;   // in `share.due`, and nobody told of them, on days after `since`
};
// Of the weeks from the Monday `first` on, `weeks` of them.
WeekFigures figuresOf(const v1::AttentionDigest& digest, absl::CivilDay first, int weeks,
                      absl::CivilDay today, absl::CivilDay heard_until,
                      absl::CivilDay since = absl::CivilDay::min());

}  // namespace newel
