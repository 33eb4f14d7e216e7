// What an invented history holds beside entries and practices: wear plans, rules of progression, measures
// asked for, phones, and the hub's audit trail. From a seed of its own, so that the rest stays what it was.
#pragma once

#include <cstdint>

#include "sync/export/person_history.h"

namespace newel::test {

// Adds to `history`, whose programmes are there and in order. What comes of it passes checkHistory().
void addBeside(std::uint64_t seed, PersonHistory& history);

}  // namespace newel::test
