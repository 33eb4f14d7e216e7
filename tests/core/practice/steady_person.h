// Somebody who goes through a practice without complaint, one act a call: for tests and benches that let the
// player lead and only answer.
#pragma once

#include "core/practice/practice_run.h"

namespace newel::test {

// What is answered, by day or by exercise as the caller likes.
struct Feeling {
  std::uint32_t pain_before = 1;
  std::uint32_t pain_after = 1;
  std::uint32_t effort = 3;
  v1::StopReason why_stopped = v1::STOP_REASON_TIRED;  // where a stop asks what happened
};

// Does what the step at hand asks for; while an exercise is led: ticks, goes on after a pause, taps where a
// tap is waited for.
absl::Status goOn(PracticeRun& run, const Feeling& feeling, absl::Time wall, absl::Duration now);

}  // namespace newel::test
