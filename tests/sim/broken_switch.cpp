#include "tests/sim/broken_switch.h"

#include <sys/wait.h>
#include <unistd.h>

#include <iostream>
#include <string>
#include <vector>

#include "sync/common/broken_variant.h"
#include "tests/sim/world.h"

#ifndef NEWEL_BROKEN_VARIANTS
#error "only for the copy that can be told to be wrong"
#endif

namespace newel {
namespace {

Broken g_broken = Broken::Nothing;

}  // namespace

bool isBroken(Broken which) { return which == g_broken; }

namespace sim {
namespace {

struct Mistake {
  Broken which;
  const char* name;
};
constexpr Mistake kMistakes[] = {
    {Broken::AcknowledgeBeforeCommit, "acknowledge before commit"},
    {Broken::DropDedupe, "drop dedupe"},
    {Broken::ServeRevoked, "serve a phone whose access was ended"},
    {Broken::FeedEverybody, "send everybody's records to each phone"},
    {Broken::MissTheRestore, "begin no new generation after a restore"},
    {Broken::NumbersIgnorePhones, "give numbers that a phone has already"},
    {Broken::LeaveTheClash, "leave a number that was given twice"},
    {Broken::CompareDeviceClocks, "compare device clocks"},
    {Broken::AcceptOlderNumber, "accept an older number"},
    {Broken::CursorBeforeRecords, "move the cursor before the records are kept"},
    {Broken::HoldWaitsForDisk, "let a hold order wait for the disk"},
    {Broken::ForgetOutboxOnRevocation, "forget the outbox on revocation"},
    {Broken::ClearWholePage, "take later for kept"},
    {Broken::AcknowledgeById, "take one revision's acknowledgement for all"},
    {Broken::OfferNothingAgain, "offer nothing again after a restore"},
    {Broken::OfferFirstRevision, "offer the first revision again, not the last"},
    {Broken::KeepFormerPerson, "keep the former person's records"},
    {Broken::ForgetCorrections, "never queue a correction"},
    {Broken::IgnoreBackupPin, "ignore the certificate that was announced"},
    {Broken::UseMediaUnchecked, "show a photo before its hash is checked"},
    {Broken::NoFlush, "commit without a flush"},
    {Broken::TrustTheLog, "trust the log after a failed flush"},
};

bool proveOne(const Mistake& mistake, const ProofOptions& options, std::ostream& out) {
  g_broken = mistake.which;
  for (std::uint64_t seed = 1; seed <= options.seeds; ++seed) {
    RunOptions run_options;
    run_options.seed = seed;
    run_options.days = options.days;
    const RunResult result = run(run_options);
    if (result.violation.empty()) continue;
    out << "found by seed " + std::to_string(seed) + ": " + mistake.name + " -- " + result.violation + "\n"
        << std::flush;
    return true;
  }
  out << std::string("NOT FOUND: ") + mistake.name + "\n" << std::flush;
  return false;
}

bool proveShare(const ProofOptions& options, int share, std::ostream& out) {
  bool all = true;
  for (int i = share; i < static_cast<int>(std::size(kMistakes)); i += options.jobs) {
    all = proveOne(kMistakes[i], options, out) && all;
  }
  return all;
}

}  // namespace

bool proveEach(const ProofOptions& options, std::ostream& out) {
  out << std::flush;
  std::vector<pid_t> children;
  for (int share = 1; share < options.jobs; ++share) {
    const pid_t child = fork();
    if (child == 0) _exit(proveShare(options, share, out) ? 0 : 1);
    children.push_back(child);
  }
  bool all = proveShare(options, 0, out);
  for (const pid_t child : children) {
    int status = 0;
    if (child < 0 || waitpid(child, &status, 0) < 0 || !WIFEXITED(status) || WEXITSTATUS(status) != 0)
      all = false;
  }
  out << std::size(kMistakes) << " mistakes, " << (all ? "every one found" : "NOT all found") << " within "
      << options.seeds << " seeds each\n";
  return all;
}

}  // namespace sim
}  // namespace newel
