// How far each joint may go, and how far a posture takes it.
// The table: American Academy of Orthopaedic Surgeons, as in Greene and Heckman, The Clinical Measurement of
// Joint Motion, 1994. Not here: what to do about it (audit.h).
#pragma once

#include <array>
#include <string>

#include "core/figure/posture.h"

namespace newel {

enum Joint {
  kHipFlexion,
  kHipExtension,
  kHipAbduction,
  kHipAdduction,
  kHipInward,
  kHipOutward,
  kKneeFlexion,
  kKneeExtension,
  kAnkleUp,
  kAnkleDown,
  kFootIn,
  kFootOut,
  kShoulderFlexion,
  kShoulderExtension,
  kShoulderAbduction,
  kShoulderInward,
  kShoulderOutward,
  kElbowFlexion,
  kElbowExtension,
  kWristFlexion,
  kWristExtension,
  kNeckFlexion,
  kNeckExtension,
  kNeckSide,
  kNeckTurn,
  kSpineFlexion,
  kSpineExtension,
  kSpineSide,
  kSpineTurn,
  kJointCount
};

struct JointRange {
  const char* name;  // as in LimitException.joint
  double limit_deg;
};
const JointRange& rangeOf(Joint joint);
// kJointCount when there is none of that name.
Joint jointNamed(const std::string& name);

// Degrees of each motion, 0 where the joint is turned the other way. Legs and arms of one side.
using JointAngles = std::array<double, kJointCount>;
JointAngles jointAngles(const Posture& posture, int side);

}  // namespace newel
