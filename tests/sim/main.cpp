// newel_sim: the sync of phones and hub under faults, from seeds.
#include <CLI/CLI.hpp>
#include <chrono>
#include <iostream>

#include "tests/sim/many_seeds.h"
#include "tests/sim/world.h"

int main(int argc, char** argv) {
  CLI::App app("Sync of phones and a hub in one process, under faults that a seed decides.");
  newel::sim::ManySeeds many;
  newel::sim::RunOptions one;
  bool trace = false;
  auto* seeds = app.add_option("--seeds", many.count, "how many seeds to run");
  app.add_option("--first", many.first, "the first of them")->needs(seeds);
  app.add_option("--jobs", many.jobs, "processes at once")->needs(seeds)->check(CLI::Range(1, 64));
  auto* seed = app.add_option("--seed", one.seed, "run this seed alone")->excludes(seeds);
  app.add_flag("--trace", trace, "print every step")->needs(seed);
  app.add_option("--days", one.days, "simulated days of each seed")->check(CLI::Range(1, 3650));
  CLI11_PARSE(app, argc, argv);
  many.days = one.days;
  if (*seeds) return newel::sim::runMany(many, std::cout) ? 0 : 1;
  one.trace = trace ? &std::cout : nullptr;
  const auto result = newel::sim::run(one);
  std::cout << "seed " << one.seed << ", digest " << std::hex << result.digest << std::dec << ": "
            << (result.violation.empty() ? "nothing broken" : result.violation) << '\n';
  return result.violation.empty() ? 0 : 1;
}
