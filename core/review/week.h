// A programme's usual week, and what the rules over a whole programme look at (programme.*,
// core/safety/facts.h). Not here: what follows from it; that is in the rules.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/library/catalogue.h"
#include "core/records/person.pb.h"
#include "core/records/programme.pb.h"
#include "core/safety/facts.h"

namespace newel {

// Days of the week on which it is done, Monday 0. A times-per-week schedule counts on the days of
// spreadOverWeek().
std::vector<std::size_t> weekdaysOf(const v1::Schedule& schedule);

struct Week {
  std::array<double, 7> minutes{};  // Monday first; rests between sets included
  std::array<int, 7> exercises{};
  std::map<std::string, std::set<std::size_t>> strength_days;  // by muscle

  // `total_ms`: one occasion of the entry.
  void add(const v1::Entry& entry, std::int64_t total_ms, const Catalogue& catalogue);
  double total() const;
  // Days from one strength day of a muscle to its next, the shortest of all muscles; nullopt without strength
  // work.
  std::optional<int> muscleGap() const;
};

// `total_ms`: one occasion of each entry, in the order of the programme.
Week weekOf(const v1::Programme& programme, const std::vector<std::int64_t>& total_ms,
            const Catalogue& catalogue);
// nullopt when an entry of it cannot be compiled: a part of a week is not to be compared with a whole one.
std::optional<Week> weekOf(const v1::Programme& programme, const v1::Person& person,
                           const Catalogue& catalogue);

// `programme` has days that are days. `last` may be absent: a first programme.
RuleFacts programmeFacts(const v1::Programme& programme, const Week& week, const std::optional<Week>& last);

}  // namespace newel
