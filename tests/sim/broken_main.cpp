// newel_sim_broken: proof that the simulation finds what it is for.
#include <CLI/CLI.hpp>
#include <iostream>

#include "tests/sim/broken_switch.h"

int main(int argc, char** argv) {
  CLI::App app("Makes the sync wrong in one known way after another; each has to be found.");
  newel::sim::ProofOptions options;
  app.add_option("--seeds", options.seeds, "within which each has to be found")->check(CLI::PositiveNumber);
  app.add_option("--days", options.days, "simulated days of each seed")->check(CLI::Range(1, 3650));
  app.add_option("--jobs", options.jobs, "processes at once")->check(CLI::Range(1, 64));
  CLI11_PARSE(app, argc, argv);
  return newel::sim::proveEach(options, std::cout) ? 0 : 1;
}
