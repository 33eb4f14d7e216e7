// From what is asked (goal.h) to joints (posture.h): forward kinematics, and two-bone inverse kinematics for
// legs and arms so that what is planted stays planted. Pure arithmetic, no allocation.
#pragma once

#include <array>

#include "core/figure/goal.h"
#include "core/figure/posture.h"
#include "core/figure/skeleton.h"

namespace newel {

// What the solver must know of the surroundings: the radius of each prop that can lie under a thigh.
struct Ground {
  std::array<double, kMostProps> roll_radius{};
};

// A goal that cannot be reached gives the nearest posture, with all segments at their length; the audit says
// so.
Posture solve(const Goal& goal, const std::array<LimbState, 2>& limbs, const Ground& ground);

// The height of the hips at which the straightest standing leg has `goal.trunk.stand_deg` of knee bend.
double standingHeight(const Goal& goal, const std::array<LimbState, 2>& limbs);

// Ankle and turn of a foot on its print.
struct FootPlace {
  Vec3 ankle;
  Turn foot;
  Turn flat;  // the same foot flat on its ground
};
FootPlace placeFoot(const LegGoal& goal, int side);

// Radius of the thigh of medium build at `along` (0 hip, 1 knee), for lying on rolls.
double thighRadius(double along);

}  // namespace newel
