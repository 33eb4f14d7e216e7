// One simulated clinic for some days under one seed: a hub, three people, four phones (two of one person).
#pragma once

#include <cstdint>
#include <iosfwd>
#include <string>

namespace newel::sim {

struct RunOptions {
  std::uint64_t seed = 1;
  int days = 30;
  std::ostream* trace = nullptr;  // every step, when set
};
struct RunResult {
  std::string violation;     // the first promise that was broken; empty: none
  std::uint64_t digest = 0;  // of all steps: equal for the same seed
};

RunResult run(const RunOptions& options);

}  // namespace newel::sim
