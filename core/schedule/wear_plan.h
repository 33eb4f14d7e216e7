// How long the prosthesis may be worn today, by the clinic's plan and what the skin said.
// A plan only ever slows down by itself: more wearing time needs good days, and after a sign of harm it needs
// a new plan from the clinic. Not here: reminders, and whether an exercise is safe.
#pragma once

#include <absl/status/statusor.h>
#include <absl/time/civil_time.h>

#include <cstdint>
#include <string>
#include <vector>

#include "core/records/evidence.h"
#include "core/records/wear.pb.h"

namespace newel {

// What a block's skin check means under a plan.
enum class SkinVerdict {
  NotLooked,  // the prosthesis came off and nobody looked
  Watching,   // red, and not yet known whether it goes within the plan's minutes
  Clear,      // no sign, or red that was gone within the minutes
  TooRed,     // red after the plan's minutes
  Harm        // open skin, blister, drainage, new bruise, rising pain, swelling, fever, numb or cold
};
// Source of the signs of harm: common practice, no source (partly stated by the pages that give the examples'
// schedules). Red that is gone exactly at the plan's minutes is Clear; red still there at them is TooRed.
SkinVerdict skinVerdict(const v1::WearBlock& block, const v1::WearPlan& plan);

// A sign that something is wrong, redness aside: what makes a verdict Harm.
bool isSignOfHarm(int sign);
// From put on to taken off, whole minutes; the block has its end.
std::uint32_t wornMinutes(const v1::WearBlock& block);

enum class WearGate {
  NotBegun,    // the plan is not in force on this day
  Wear,        // by today's step
  LookFirst,   // no next block before the last one has its end and its skin was looked at, redness decided
  NoIncrease,  // too red: today's step and never more, until the clinic's next plan
  StayOff      // leave it off until the clinic's next plan
};

struct WearDay {
  absl::CivilDay day;
  WearGate gate = WearGate::NotBegun;
  bool call_clinic = false;
  bool wearing = false;               // a block of this day is still on
  std::size_t step = 0;               // index into the plan's steps
  std::uint32_t good_days = 0;        // finished good days at this step
  std::uint32_t blocks_worn = 0;      // of this day
  std::uint32_t worn_min = 0;         // of this day, finished blocks
  std::uint32_t blocks_left = 0;      // 0 unless the gate is Wear or NoIncrease; 1 where a step has no limit
  std::uint32_t block_min = 0;        // of the next block; 0 where a step has no limit
  std::vector<EvidenceLine> reasons;  // keys: see wearKeys()
};

// `blocks`: all of the person's since the plan began, any order, revisions and other people's included; the
// last revision of each id counts. A day is good when every block was looked at and Clear, and the person
// wore what the step asks for, neither more nor less than the plan's grace, with the plan's breaks. After the
// step's number of good days the next day is the next step. Days without a block, or not good, neither count
// nor throw back. The first TooRed or Harm since the plan began stands until a plan with a higher number: the
// step no longer grows, and the clinic is to be called.
// kInvalidArgument when the plan or a block ("blocks[3]: ...") does not pass check().
absl::StatusOr<WearDay> wearDay(const v1::WearPlan& plan, const std::vector<v1::WearBlock>& blocks,
                                absl::CivilDay day);

// The plan that counts on `day`: the highest number among those in force by then. nullptr when there is none.
const v1::WearPlan* planInForce(const std::vector<v1::WearPlan>& plans, absl::CivilDay day);

// Blocks x minutes; 1440 where a step has no limit.
std::uint32_t plannedMinutes(const v1::WearStep& step);

// Every key that reasons may carry, for whoever makes words of them.
const std::vector<std::string>& wearKeys();

}  // namespace newel
