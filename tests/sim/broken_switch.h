// Turns one known mistake on, in the copy of the sources that can be told to be wrong (newel_sim_broken), and
// asks whether the simulation finds it.
#pragma once

#include <cstdint>
#include <iosfwd>

namespace newel::sim {

struct ProofOptions {
  std::uint64_t seeds = 200;  // within which each mistake has to be found
  int days = 30;
  int jobs = 1;
};

// One line for each mistake: the seed that found it and what it broke. True: every one was found.
bool proveEach(const ProofOptions& options, std::ostream& out);

}  // namespace newel::sim
