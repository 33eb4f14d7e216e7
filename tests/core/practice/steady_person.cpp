#include "tests/core/practice/steady_person.h"

namespace newel::test {
namespace {

std::string fineChoice(const v1::ReadyQuestion& question) {
  for (const v1::ReadyChoice& choice : question.choices()) {
    if (choice.fine()) return choice.id();
  }
  return {};
}

absl::Status playOn(PracticeRun& run, absl::Time wall, absl::Duration now) {
  const PlayerState state = run.player()->state();
  if (state == PlayerState::Paused) return run.resume(wall, now);
  return state == PlayerState::WaitingTap ? run.tapDone(wall, now) : run.tick(wall, now);
}

}  // namespace

absl::Status goOn(PracticeRun& run, const Feeling& feeling, absl::Time wall, absl::Duration now) {
  switch (run.step()) {
    case RunStep::Question:
      return run.answer(fineChoice(*run.question()), wall, now);
    case RunStep::PainBefore:
      return run.painBefore(feeling.pain_before, wall, now);
    case RunStep::Support:
      return run.confirmSupport(wall, now);
    case RunStep::Ready:
      return run.startEntry(wall, now);
    case RunStep::Playing:
      return playOn(run, wall, now);
    case RunStep::WhatHappened:
      return run.stopReason(feeling.why_stopped, wall, now);
    case RunStep::Verdict:
      return run.acknowledge(wall, now);
    case RunStep::Rating:
      return run.rate(feeling.pain_after, feeling.effort, wall, now);
    case RunStep::Closed:
      return absl::OkStatus();
  }
  return absl::InternalError("step: unknown");
}

}  // namespace newel::test
