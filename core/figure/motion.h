// The body in time: from two key poses to the moment between them, as a person would move.
// Also which moment of which phase a timeline's beat is. Not here: drawing.
#pragma once

#include "core/figure/key_poses.h"
#include "core/records/exercise.pb.h"
#include "core/records/timeline.pb.h"

namespace newel {

// One moment of an exercise.
struct Moment {
  int scene = 0;
  int phase = -1;         // in the scene; -1 is the start (get ready, rest, change of side)
  double fraction = 0;    // of the phase in time, 0 to 1
  bool first_run = true;  // the scene's phases run for the first time
  v1::Side side_a = v1::SIDE_LEFT;
  bool operator==(const Moment&) const = default;
};

struct Pose {
  Goal goal;
  Posture posture;
  double run = 0;  // how much of the scene's phases is done, eased, 0 to 1: the view follows it
};

// Eased by least jerk between rest and rest; a hold holds. No allocation. `moment` must be of this
// choreography.
void poseAt(const Choreography& keys, const Moment& moment, Pose& pose);

// Does the leg stand on the same print (or kneel on the same place) during the whole way between two key
// poses?
bool standsThrough(const LegGoal& from, const LegGoal& to);
// Does the hand stay on the same thing at the same place?
bool holdsThrough(const ArmGoal& from, const ArmGoal& to, const Goal& a, const Goal& b);

// The side that `clip.side_a` means for a phase whose beat names `side`; `fallback` where it names none.
v1::Side sideAOf(v1::LimbRole side_a, v1::LimbRole moves, v1::Side side, v1::Side weaker, v1::Side fallback);

// The beat running at `ms` of active time, clipped to the first and last; -1 when there are none.
int beatAt(const v1::Timeline& timeline, std::int64_t ms);

// The moment shown at `ms`. `weaker`: the person's weaker side (the prosthetic one; see sideOf() in
// core/library/wording.h). Pure; no allocation.
Moment momentAt(const Choreography& keys, const v1::Clip& clip, const v1::Timeline& timeline, std::int64_t ms,
                v1::Side weaker);

}  // namespace newel
