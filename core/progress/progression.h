// Whether an entry may be ready for its next step, by its own rule, with the evidence.
// Not here: the next step. Nothing here writes a dose; only a therapist's signature changes one.
#pragma once

#include <absl/status/statusor.h>

#include <string>
#include <vector>

#include "core/progress/adherence.h"
#include "core/records/evidence.h"
#include "core/records/practice.pb.h"
#include "core/records/programme.pb.h"

namespace newel {

enum class Advice {
  NoRule,   // the entry carries none: nobody asked
  Hold,     // as it is
  Ready,    // the therapist may look at the next step
  StepBack  // it was too hard again and again
};

struct ProgressionAdvice {
  std::string entry_id;
  Advice advice = Advice::NoRule;
  int good_in_a_row = 0;      // newest backwards
  int too_hard_in_a_row = 0;  // newest backwards
  // The row first, then what the newest practices (as many as the rule looks at) say for and against, newest
  // first. Keys and arguments: see progressionKeys().
  std::vector<EvidenceLine> evidence;
};

// Judges the practices of `entry_id` under its present dose: those of programmes in which exercise, dose,
// support, side policy, prosthesis and rung are as in the last one.
// `programmes`: every number of one person. `practices`: all of that person, each id once with its last
// revision, any order. `occasions`: what was due, from adherenceOf(); with none given nothing counts as
// missed.
// A practice is good when no stop or skip is told, every set was done, the last one on each side to the goal
// and what the rule asks over it (in minutes or passes: all of the dose), and effort and pain were rated and
// are within the rule; pain before an exercise is its own, or what was said before the first of the practice.
// It is too hard when it was stopped for pain, dizziness or unsteadiness, when pain rose
// by step_back_pain_rise_0_10, or when less than step_back_done_percent was done for no outer reason.
// Where the rule says nothing_missed, a missed occasion begins the row anew, and so does a day that nobody
// has heard of yet. A practice that a red flag ended, among those the rule looks at, means Hold whatever else
// it says.
// kNotFound when the last programme has no such entry; kInvalidArgument when there is no programme.
// Source of "2 repetitions over the goal in 2 practices": Baechle and Earle, as quoted by strength handouts
// (second-hand); of all else: common practice, no source.
absl::StatusOr<ProgressionAdvice> adviseProgression(const std::vector<v1::Programme>& programmes,
                                                    const std::string& entry_id,
                                                    const std::vector<v1::Practice>& practices,
                                                    const std::vector<OccasionResult>& occasions);

// Every key that evidence may carry, for whoever makes words of them.
const std::vector<std::string>& progressionKeys();

}  // namespace newel
