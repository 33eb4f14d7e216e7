// Many seeds one after another, in several processes: each has its own SQLite and its own memory, so that no
// seed can touch another.
#pragma once

#include <cstdint>
#include <iosfwd>

namespace newel::sim {

struct ManySeeds {
  std::uint64_t first = 1;
  std::uint64_t count = 0;
  int days = 30;
  int jobs = 1;
};

// Runs them, prints every seed that broke something and the simulated days per second. True: none did.
bool runMany(const ManySeeds& what, std::ostream& out);

}  // namespace newel::sim
