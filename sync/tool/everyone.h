// Every exercise against every kind of person, looking for what no single person would show: a crash, words
// that are missing or were not filled in, findings that contradict each other, an exercise that may be signed
// and cannot be led.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/library/catalogue.h"
#include "core/safety/rule_book.h"

namespace newel::tool {

// How many values each of several factors has, and rows of one value a factor in which every pair of values
// of every two factors occurs at least once. Greedy: small, not smallest. Deterministic.
std::vector<std::vector<std::size_t>> everyPair(const std::vector<std::size_t>& values);

struct EveryoneReport {
  std::int64_t pairs = 0;     // cases in which every two circumstances meet
  std::int64_t products = 0;  // cases of exercise x level x knee x sides x mobility x rails, all of them
  std::int64_t led = 0;       // of those, timelines made
  std::vector<std::string> problems;  // one line a case, at most 50
};
EveryoneReport checkEveryone(const Catalogue& catalogue, const RuleBook& rules);

}  // namespace newel::tool
