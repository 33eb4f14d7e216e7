// A practice under a simulated clock, with a journal kept in memory that can fail. For tests alone.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "core/practice/practice_run.h"
#include "core/time/clock.h"

namespace newel::test {

// Sit to stand, all-fours reach, stairs one at a time; short doses, for a person transfemoral left.
RunInput shortInput();

class RunFixture {
 public:
  explicit RunFixture(RunInput input = shortInput());
  RunFixture(RunFixture&&) = delete;  // the run writes into this very journal

  absl::Status begin();
  // As after a kill: from the journal's first `lines` lines, on a clock that began anew.
  absl::Status takeUp(std::size_t lines);
  absl::Status takeUpFrom(std::vector<v1::JournalLine> lines);

  PracticeRun& run() { return *m_run; }
  bool running() const { return m_run != nullptr; }
  const std::vector<v1::JournalLine>& journal() const { return m_journal; }
  // How often lines went to be kept, since the start.
  int writes() const { return m_writes; }
  std::vector<v1::Timeline> timelines() const;
  RunInput& input() { return m_input; }

  absl::Time wall() const { return m_clock.wall(); }
  absl::Duration now() const { return m_clock.elapsed(); }
  SimulatedClock& clock() { return m_clock; }
  // Moves the clock in tenths of a second, ticking.
  absl::Status advance(absl::Duration by);

  // Keep fails from now on, after `writes` more calls; never() again.
  void failAfter(int writes) { m_until_failure = writes; }
  void failNever() { m_until_failure = -1; }

  // Answers every question with its first fine choice, no pain before, and stands at the first entry.
  absl::Status passReadyCheck(std::uint32_t pain = 1);
  // From Support or Ready to the first beat.
  absl::Status startEntry();
  // Until the step is no longer Playing.
  absl::Status playOut();
  // Whatever step it is: goes on towards Closed as a person with no complaint would. One act a call.
  absl::Status goOn();
  absl::Status finish();

 private:
  PracticeRun::Keep keep();

  RunInput m_input;
  SimulatedClock m_clock;
  std::vector<v1::JournalLine> m_journal;
  std::unique_ptr<PracticeRun> m_run;
  int m_until_failure = -1;
  int m_writes = 0;
};

v1::HoldOrder holdOrder(const std::vector<std::string>& entry_ids = {});

}  // namespace newel::test
