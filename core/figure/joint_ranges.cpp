#include "core/figure/joint_ranges.h"

#include <algorithm>
#include <cmath>

namespace newel {
namespace {

constexpr std::array<JointRange, kJointCount> kRanges = {{
    {"hip.flexion", 120},
    {"hip.extension", 30},
    {"hip.abduction", 45},
    {"hip.adduction", 30},
    {"hip.inward", 45},
    {"hip.outward", 45},
    {"knee.flexion", 135},
    {"knee.extension", 2},
    {"ankle.up", 20},
    {"ankle.down", 50},
    {"foot.in", 35},
    {"foot.out", 15},
    {"shoulder.flexion", 180},
    {"shoulder.extension", 60},
    {"shoulder.abduction", 180},
    {"shoulder.inward", 70},
    {"shoulder.outward", 90},
    {"elbow.flexion", 150},
    {"elbow.extension", 0.5},
    {"wrist.flexion", 80},
    {"wrist.extension", 70},
    {"neck.flexion", 45},
    {"neck.extension", 45},
    {"neck.side", 45},
    {"neck.turn", 60},
    {"spine.flexion", 80},
    {"spine.extension", 25},
    {"spine.side", 35},
    {"spine.turn", 45},
}};

void split(JointAngles& angles, Joint positive, Joint negative, double value) {
  angles[positive] = std::max(0.0, value);
  angles[negative] = std::max(0.0, -value);
}

void setLeg(JointAngles& angles, const Posture& posture, int side) {
  const LegPosture& leg = posture.legs[side];
  const Angles hip = anglesOf(inverse(posture.pelvis) * leg.thigh);
  split(angles, kHipFlexion, kHipExtension, -hip.y);
  split(angles, kHipAbduction, kHipAdduction, outward(side) * hip.x);
  split(angles, kHipOutward, kHipInward, outward(side) * hip.z);
  split(angles, kKneeFlexion, kKneeExtension, anglesOf(inverse(leg.thigh) * leg.shank).y);
  const Angles ankle = anglesOf(inverse(leg.shank) * leg.foot);
  split(angles, kAnkleUp, kAnkleDown, -ankle.y);
  // The sole turned toward the other foot is inversion.
  split(angles, kFootOut, kFootIn, outward(side) * ankle.x);
}

void setArm(JointAngles& angles, const Posture& posture, int side) {
  const ArmPosture& arm = posture.arms[side];
  const Turn upper = inverse(posture.chest) * arm.upper;
  const Vec3 down = -upper.z;
  // Raising is measured as the arm leaves the side, forward or outward; behind the body it is extension.
  const double raised = degrees(std::acos(std::clamp(-down.z, -1.0, 1.0)));
  const double ahead = down.x;
  const double aside = outward(side) * down.y;
  if (ahead < 0 && -ahead > std::fabs(aside)) {
    angles[kShoulderExtension] = raised;
  } else {
    angles[std::fabs(aside) > std::fabs(ahead) ? kShoulderAbduction : kShoulderFlexion] = raised;
  }
  // Rotation about the arm itself, beyond the shortest way from hanging. Near straight up it has no meaning.
  if (raised < 150) {
    const Vec3 axis = unit(cross({0, 0, -1}, down), {0, 1, 0});
    const double c = -down.z;
    const double s = length(cross({0, 0, -1}, down));
    const Vec3 x{1, 0, 0};
    const Vec3 forward = x * c + cross(axis, x) * s + axis * (dot(axis, x) * (1 - c));
    const double twist = degrees(std::atan2(dot(cross(forward, upper.x), upper.z), dot(forward, upper.x)));
    split(angles, kShoulderOutward, kShoulderInward, outward(side) * twist);
  }
  split(angles, kElbowFlexion, kElbowExtension, -anglesOf(inverse(arm.upper) * arm.fore).y);
  const Vec3 hand = -(inverse(arm.fore) * arm.hand).z;
  const double bent = degrees(std::acos(std::clamp(-hand.z, -1.0, 1.0)));
  split(angles, kWristFlexion, kWristExtension, 0);
  // The forearm can turn, so that only the size of the bend is known; a planted palm extends.
  angles[arm.closed ? kWristFlexion : kWristExtension] = bent;
}

}  // namespace

const JointRange& rangeOf(Joint joint) { return kRanges[joint]; }

Joint jointNamed(const std::string& name) {
  for (int joint = 0; joint < kJointCount; ++joint) {
    if (name == kRanges[joint].name) return static_cast<Joint>(joint);
  }
  return kJointCount;
}

JointAngles jointAngles(const Posture& posture, int side) {
  JointAngles angles{};
  setLeg(angles, posture, side);
  setArm(angles, posture, side);
  const Angles neck = anglesOf(inverse(posture.chest) * posture.skull);
  split(angles, kNeckFlexion, kNeckExtension, neck.y);
  angles[kNeckSide] = std::fabs(neck.x);
  angles[kNeckTurn] = std::fabs(neck.z);
  // Both places together; each bends by half.
  const Angles spine = anglesOf(inverse(posture.pelvis) * posture.belly);
  split(angles, kSpineFlexion, kSpineExtension, 2 * spine.y);
  angles[kSpineSide] = 2 * std::fabs(spine.x);
  angles[kSpineTurn] = 2 * std::fabs(spine.z);
  return angles;
}

}  // namespace newel
