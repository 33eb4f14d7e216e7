// Invented histories of one person each, from a seed: what was asked compiles for this person, what was done
// is counted by the real counters, what the rules said is what they say. The same seed gives the same
// history.
#pragma once

#include <cstdint>

#include "sync/export/person_history.h"

namespace newel::test {

// Passes checkHistory(). Up to three programmes over a few weeks from 2026-09-07, with everything that a
// history may hold, and words that try a format's escapes.
PersonHistory anyHistory(std::uint64_t seed);

// One programme of `entries` entries over 52 weeks, three days a week, every practice done as asked: for
// times.
PersonHistory yearOfHistory(int entries);

}  // namespace newel::test
