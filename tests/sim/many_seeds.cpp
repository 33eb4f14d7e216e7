#include "tests/sim/many_seeds.h"

#include <malloc.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <iostream>
#include <vector>

#include "tests/sim/world.h"

namespace newel::sim {
namespace {

// The failing seeds of one share of the work.
int runShare(const ManySeeds& what, int share, std::ostream& out) {
  int failed = 0;
  for (std::uint64_t i = static_cast<std::uint64_t>(share); i < what.count;
       i += static_cast<std::uint64_t>(what.jobs)) {
    RunOptions options;
    options.seed = what.first + i;
    options.days = what.days;
    const RunResult result = run(options);
    if (result.violation.empty()) continue;
    ++failed;
    out << "seed " << options.seed << " broke: " << result.violation << "\n  again: newel_sim --seed "
        << options.seed << " --days " << what.days << " --trace\n"
        << std::flush;
  }
  return failed;
}

}  // namespace

bool runMany(const ManySeeds& what, std::ostream& out) {
  // A run makes and drops whole disks: giving that memory back to the system each time costs a tenth of it.
  mallopt(M_MMAP_THRESHOLD, 1 << 28);
  mallopt(M_TRIM_THRESHOLD, 1 << 28);
  const auto began = std::chrono::steady_clock::now();
  out << std::flush;
  std::vector<pid_t> children;
  for (int share = 1; share < what.jobs; ++share) {
    const pid_t child = fork();
    if (child == 0) _exit(runShare(what, share, out) == 0 ? 0 : 1);
    children.push_back(child);
  }
  bool good = runShare(what, 0, out) == 0;
  for (const pid_t child : children) {
    int status = 0;
    if (child < 0 || waitpid(child, &status, 0) < 0 || !WIFEXITED(status) || WEXITSTATUS(status) != 0)
      good = false;
  }
  const std::chrono::duration<double> took = std::chrono::steady_clock::now() - began;
  const double days = static_cast<double>(what.count) * what.days;
  out << what.count << " seeds of " << what.days << " days in " << took.count()
      << " s: " << days / took.count() << " simulated days per second; "
      << (good ? "nothing broken" : "FAILED") << '\n';
  return good;
}

}  // namespace newel::sim
