// Test vectors for the days and instants of a programme: the examples of RFC 5545, and times at which clocks
// change.
#pragma once

#include <absl/time/civil_time.h>

#include <string>
#include <utility>
#include <vector>

#include "sync/export/person_history.h"

namespace newel::test {

using Day = absl::CivilDay;

// One entry on `days` of the week in one window, less `off` (first and last day of each pause).
struct Plan {
  std::string name, zone;
  Day first, last;
  std::uint32_t from_min;
  std::vector<v1::Weekday> days;
  std::vector<std::pair<Day, Day>> off;
  std::string rule;                   // expected; empty: none
  std::vector<std::string> expected;  // instants in UTC
};

// With no practices; its one programme is the plan.
PersonHistory historyOf(const Plan& plan);

// R1 to R9, X1 (RFC 5545's own examples) and D1 to D7.
std::vector<Plan> allVectors();

}  // namespace newel::test
