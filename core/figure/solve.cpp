#include "core/figure/solve.h"

#include <algorithm>
#include <cmath>

namespace newel {
namespace {

using namespace lengths;

// A fully straight limb has no knee direction; a hair less has.
constexpr double kNearlyStraight = 1e-7;
// A little inside the published range of the ankle (joint_ranges.h).
constexpr double kMostAnkleUp = 19.5;
constexpr double kMostAnkleDown = 48;

struct TwoBones {
  Vec3 middle;
  Turn near;  // z toward the body, x to the side that bends out (knee) on request
  Turn far;
};

// Knee or elbow between `root` and `target`. `pole`: where the joint shall point. `bends_forward`: the joint
// opens so that x of both frames looks along the pole (knee) or against it (elbow).
TwoBones reach(const Vec3& root, const Vec3& target, double near, double far, const Vec3& pole, bool knee) {
  const Vec3 way = target - root;
  const double least = std::fabs(near - far) + 1e-6;
  const double size = std::clamp(length(way), least, (near + far) * (1 - kNearlyStraight));
  const Vec3 along = unit(way, {0, 0, -1});
  const Vec3 aside = turnFrom(-along, pole).x;
  const double down = (near * near - far * far + size * size) / (2 * size);
  const double out = std::sqrt(std::max(0.0, near * near - down * down));
  TwoBones bones;
  bones.middle = root + along * down + aside * out;
  const Vec3 end = root + along * size;
  const Vec3 forward = knee ? aside : -aside;
  // Both frames share the hinge, which is square to the plane of the limb.
  const Vec3 hinge = cross(-along, forward);
  const auto frame = [&](const Vec3& up) {
    Turn turn;
    turn.z = unit(up, {0, 0, 1});
    turn.y = hinge;
    turn.x = cross(turn.y, turn.z);
    return turn;
  };
  bones.near = frame(root - bones.middle);
  bones.far = frame(bones.middle - end);
  return bones;
}

Vec3 swivel(const Vec3& direction, const Vec3& axis, double deg) {
  const Vec3 k = unit(axis, {0, 0, 1});
  const double c = std::cos(radians(deg));
  const double s = std::sin(radians(deg));
  return direction * c + cross(k, direction) * s + k * (dot(k, direction) * (1 - c));
}

void setFoot(LegPosture& leg, const Turn& toes) {
  leg.heel = leg.ankle + leg.foot * Vec3{-kHeel, 0, -kFootHeight};
  leg.ball = leg.ankle + leg.foot * Vec3{kBall, 0, -kFootHeight};
  leg.toe = leg.ball + toes * Vec3{kToe - kBall, 0, 0};
}

// Thigh and knee bend known; the rest hangs on them.
void hangLeg(LegPosture& leg, double knee_deg, const Turn& ankle) {
  leg.knee = leg.hip + leg.thigh * Vec3{0, 0, -kThigh};
  leg.shank = leg.thigh * aboutY(knee_deg);
  leg.ankle = leg.knee + leg.shank * Vec3{0, 0, -kShank};
  leg.foot = leg.shank * ankle;
  setFoot(leg, leg.foot);
}

void stepLeg(LegPosture& leg, const LegGoal& goal, int side) {
  const FootPlace place = placeFoot(goal, side);
  const Vec3 pole = place.flat.x + place.flat.z;
  const Vec3 turned = swivel(pole, leg.hip - place.ankle, outward(side) * goal.n[5]);
  const TwoBones bones = reach(leg.hip, place.ankle, kThigh, kShank, turned, true);
  leg.thigh = bones.near;
  leg.shank = bones.far;
  leg.knee = bones.middle;
  leg.ankle = leg.knee + leg.shank * Vec3{0, 0, -kShank};
  leg.foot = place.foot;
  if (goal.air) {
    // In the air the ankle decides how far the foot can lag behind the leg.
    const double up = -anglesOf(inverse(leg.shank) * leg.foot).y;
    if (up > kMostAnkleUp) leg.foot = leg.foot * aboutY(up - kMostAnkleUp);
    if (up < -kMostAnkleDown) leg.foot = leg.foot * aboutY(up + kMostAnkleDown);
  }
  // Toes stay on the ground while the heel comes up.
  setFoot(leg, goal.n[4] < 0 ? leg.foot * aboutY(goal.n[4]) : leg.foot);
}

void kneelLeg(LegPosture& leg, const LegGoal& goal, int side) {
  const Vec3 at{goal.n[0], goal.n[1], goal.n[2]};
  const Vec3 down = unit(at - leg.hip, {0, 0, -1});
  leg.knee = leg.hip + down * kThigh;
  const double out = radians(goal.n[3]) * outward(side);
  const double up = radians(goal.n[4]);
  const Vec3 back{-std::cos(out) * std::cos(up), std::sin(out) * std::cos(up), std::sin(up)};
  leg.ankle = leg.knee + back * kShank;
  const Vec3 hinge = unit(cross(down, back), {0, 1, 0});
  const auto frame = [&](const Vec3& z) {
    const Vec3 y = hinge;
    return Turn{cross(y, z), y, z};
  };
  leg.thigh = frame(-down);
  leg.shank = frame(-back);
  leg.foot = leg.shank * aboutY(-goal.n[5]);
  setFoot(leg, leg.foot);
}

// The thigh lies across the top of a roll whose axis runs from side to side.
void lieOverRoll(LegPosture& leg, const LegGoal& goal, const Vec3& roll, double roll_radius) {
  const double dx = roll.x - leg.hip.x;
  const double dz = roll.z - leg.hip.z;
  const double far = std::max(std::hypot(dx, dz), 1e-6);
  double radius = thighRadius(0.7);
  double direction = 0;
  for (int round = 0; round < 4; ++round) {
    const double rise = std::asin(std::min(1.0, (roll_radius + radius) / far));
    direction = std::atan2(dz, dx) + rise;
    radius = thighRadius(std::clamp(far * std::cos(rise) / kThigh, 0.0, 1.0));
  }
  const Vec3 down{std::cos(direction), 0, std::sin(direction)};
  leg.thigh = turnFrom(-down, {0, 0, 1});
  hangLeg(leg, goal.n[0], aboutY(-goal.n[1]));
}

void setLeg(Posture& posture, const Goal& goal, int side, const Ground& ground) {
  LegPosture& leg = posture.legs[side];
  const LegGoal& asked = goal.legs[side];
  leg.hip = posture.hips + posture.pelvis * Vec3{0, outward(side) * kHipHalf, 0};
  const auto& n = asked.n;
  switch (asked.how) {
    case LegHow::kPrint:
      stepLeg(leg, asked, side);
      break;
    case LegHow::kKneel:
      kneelLeg(leg, asked, side);
      break;
    case LegHow::kAngles:
      leg.thigh =
          posture.pelvis * aboutY(-n[0]) * aboutX(outward(side) * n[1]) * aboutZ(outward(side) * n[2]);
      hangLeg(leg, n[3], aboutY(-n[4]));
      break;
    case LegHow::kTurns:
      leg.thigh = posture.pelvis * asked.hip;
      hangLeg(leg, n[0], asked.ankle);
      break;
    case LegHow::kRoll:
      lieOverRoll(leg, asked, goal.props[asked.prop], ground.roll_radius[asked.prop]);
      break;
  }
}

// On the leg below its last whole joint: where nothing is lost, or the end is out of reach, down to the
// middle of the shank.
Vec3 onLimb(const LegPosture& leg, const LimbState& limb, const ArmGoal& goal, int side) {
  constexpr double kReach = 0.55;
  constexpr double kStump = 0.42;
  const Remaining left = remainingOf(limb.level);
  const bool below_knee = left.shank > 0;
  const double end = below_knee ? std::min(left.shank, kReach) : std::max(left.thigh, kStump);
  const double share = end * goal.n[0];
  const Vec3 centre = below_knee ? mix(leg.knee, leg.ankle, share) : mix(leg.hip, leg.knee, share);
  const double radius = below_knee ? 0.036 : thighRadius(share);
  const double round = radians(goal.n[2]);
  const Vec3 out{std::cos(round), outward(side) * std::sin(round), 0};
  return centre + (below_knee ? leg.shank : leg.thigh) * (out * (radius + 0.012) + Vec3{0, goal.n[1], 0});
}

// Where a hand lies on the own body.
Vec3 touchPoint(const Posture& posture, const ArmGoal& goal, int side,
                const std::array<LimbState, 2>& limbs) {
  const double along = goal.n[0];
  const Vec3 across{0, goal.n[1], 0};
  const LegPosture& own = posture.legs[side];
  const LegPosture& other = posture.legs[1 - side];
  const auto onThigh = [&](const LegPosture& leg) {
    return mix(leg.hip, leg.knee, along) + leg.thigh * (across + Vec3{thighRadius(along) + 0.012, 0, 0});
  };
  switch (goal.part) {
    case v1::BODY_PART_OWN_THIGH:
      return onThigh(own);
    case v1::BODY_PART_OTHER_THIGH:
      return onThigh(other);
    case v1::BODY_PART_OWN_SHANK:
      return mix(own.knee, own.ankle, along) + own.shank * (across + Vec3{0.05, 0, 0});
    case v1::BODY_PART_BELLY:
      return mix(posture.hips, posture.ribs, along) + posture.belly * (across + Vec3{0.078, 0, 0});
    case v1::BODY_PART_CHEST:
      return mix(posture.ribs, posture.neck, along) + posture.chest * (across + Vec3{0.078, 0, 0});
    case v1::BODY_PART_HIP:
      return posture.hips + posture.pelvis * Vec3{0.02, outward(side) * 0.105, 0.05 + 0.05 * along};
    case v1::BODY_PART_OTHER_SHOULDER:
      return posture.arms[1 - side].shoulder + posture.chest * Vec3{0.045, outward(side) * 0.015, -0.01};
    case v1::BODY_PART_HEAD_BACK:
      return posture.head + posture.skull * Vec3{-0.066, outward(side) * 0.03, -0.01};
    case v1::BODY_PART_LIMB_A:
      return onLimb(posture.legs[kSideA], limbs[kSideA], goal, kSideA);
    case v1::BODY_PART_LIMB_B:
      return onLimb(posture.legs[kSideB], limbs[kSideB], goal, kSideB);
    case v1::BODY_PART_FOREHEAD:
      return posture.head + posture.skull * (across + Vec3{0.07, 0, 0.03});
    default:
      return own.hip;
  }
}

void hangArm(ArmPosture& arm, double elbow_deg, const Turn& wrist) {
  arm.elbow = arm.shoulder + arm.upper * Vec3{0, 0, -kUpperArm};
  arm.fore = arm.upper * aboutY(-elbow_deg);
  arm.wrist = arm.elbow + arm.fore * Vec3{0, 0, -kForearm};
  arm.hand = arm.fore * wrist;
}

// The elbow points back, down and a little out, then swung out as asked.
Vec3 elbowPole(const Posture& posture, const Vec3& way, double out_deg, int side) {
  const Vec3 pole = posture.chest * Vec3{-1, outward(side) * 0.25, -0.5};
  return swivel(pole, way, outward(side) * out_deg);
}

void reachArm(Posture& posture, const ArmGoal& goal, const Vec3& target, int side) {
  ArmPosture& arm = posture.arms[side];
  const Vec3 pole = elbowPole(posture, arm.shoulder - target, goal.n[ArmGoal::kElbowOut], side);
  const double hand = goal.how == ArmHow::kPoint && !goal.fist ? kFingertip : kGrip;
  const TwoBones bones = reach(arm.shoulder, target, kUpperArm, kForearm + hand, pole, false);
  arm.upper = bones.near;
  arm.elbow = bones.middle;
  arm.fore = bones.far;
  arm.hand = bones.far;
  arm.wrist = arm.elbow + arm.fore * Vec3{0, 0, -kForearm};
  arm.closed = goal.how == ArmHow::kPoint && goal.fist;
}

void plantArm(Posture& posture, const ArmGoal& goal, int side) {
  ArmPosture& arm = posture.arms[side];
  const double out = radians(goal.n[3]) * outward(side);
  const Vec3 palm{goal.n[0], goal.n[1], goal.n[2]};
  const Vec3 fingers{std::cos(out), std::sin(out), 0};
  const Vec3 wrist = goal.fist ? palm + Vec3{0, 0, kGrip + 0.01} : palm - fingers * kGrip + Vec3{0, 0, 0.021};
  const Vec3 pole = elbowPole(posture, arm.shoulder - wrist, goal.n[ArmGoal::kElbowOut], side);
  const TwoBones bones = reach(arm.shoulder, wrist, kUpperArm, kForearm, pole, false);
  arm.upper = bones.near;
  arm.elbow = bones.middle;
  arm.fore = bones.far;
  arm.wrist = arm.elbow + arm.fore * Vec3{0, 0, -kForearm};
  const Vec3 hand = goal.fist ? Vec3{0, 0, -1} : unit(fingers + Vec3{0, 0, -0.08}, fingers);
  arm.hand = turnFrom(-hand, arm.fore.x);
  arm.closed = goal.fist;
}

void setArm(Posture& posture, const Goal& goal, int side, const std::array<LimbState, 2>& limbs) {
  ArmPosture& arm = posture.arms[side];
  const ArmGoal& asked = goal.arms[side];
  const auto& n = asked.n;
  arm.shoulder = posture.neck + posture.chest * Vec3{0, outward(side) * kShoulderHalf, 0};
  arm.closed = false;
  switch (asked.how) {
    case ArmHow::kAngles:
      arm.upper = posture.chest * aboutY(-n[0]) * aboutX(outward(side) * n[1]) * aboutZ(outward(side) * n[2]);
      hangArm(arm, n[3], aboutY(-n[4]));
      break;
    case ArmHow::kTurns:
      arm.upper = posture.chest * asked.shoulder;
      hangArm(arm, n[0], asked.wrist);
      arm.closed = asked.fist;
      break;
    case ArmHow::kPoint:
      reachArm(posture, asked, {n[0], n[1], n[2]}, side);
      break;
    case ArmHow::kTouch:
      reachArm(posture, asked, touchPoint(posture, asked, side, limbs), side);
      break;
    case ArmHow::kPlant:
      plantArm(posture, asked, side);
      break;
  }
  arm.grip = arm.wrist + arm.hand * Vec3{0, 0, -kGrip};
  arm.tip = arm.wrist + arm.hand * Vec3{0, 0, -kHand};
}

void setTrunk(Posture& posture, const TrunkGoal& trunk) {
  const auto& n = trunk.n;
  posture.pelvis = aboutZ(n[TrunkGoal::kYaw]) * aboutY(n[TrunkGoal::kLean]) * aboutX(-n[TrunkGoal::kRoll]);
  // Half of the spine's bend in each of its two places.
  const Turn half =
      aboutY(n[TrunkGoal::kBend] / 2) * aboutX(-n[TrunkGoal::kSide] / 2) * aboutZ(n[TrunkGoal::kTwist] / 2);
  posture.belly = posture.pelvis * half;
  posture.chest = posture.belly * half;
  posture.skull =
      posture.chest * aboutY(n[TrunkGoal::kNod]) * aboutX(-n[TrunkGoal::kTilt]) * aboutZ(n[TrunkGoal::kTurn]);
}

void placeTrunk(Posture& posture, const Vec3& hips) {
  posture.hips = hips;
  posture.waist = hips + posture.pelvis * Vec3{0, 0, kPelvis};
  posture.ribs = posture.waist + posture.belly * Vec3{0, 0, kBelly};
  posture.neck = posture.ribs + posture.chest * Vec3{0, 0, kChest};
  // The neck carries the head a little before the shoulders.
  posture.head = posture.neck + posture.skull * Vec3{0.012, 0, kHeadCentre};
}

// Height of the hips that puts every kneeling knee on its place; the middle where they disagree.
// `all`: also those that have nothing to kneel on.
bool kneelingHeight(const Goal& goal, const Turn& pelvis, const std::array<LimbState, 2>& limbs, bool all,
                    double& height) {
  double sum = 0;
  int count = 0;
  for (int side = 0; side < 2; ++side) {
    const LegGoal& leg = goal.legs[side];
    if (leg.how != LegHow::kKneel || !(all || limbs[side].canKneel())) continue;
    const Vec3 hip = pelvis * Vec3{0, outward(side) * kHipHalf, 0};
    const double dx = leg.n[0] - goal.trunk.n[TrunkGoal::kX] - hip.x;
    const double dy = leg.n[1] - goal.trunk.n[TrunkGoal::kY] - hip.y;
    sum += leg.n[2] + std::sqrt(std::max(0.0, kThigh * kThigh - dx * dx - dy * dy)) - hip.z;
    ++count;
  }
  if (count > 0) height = sum / count;
  return count > 0;
}

}  // namespace

double thighRadius(double along) { return 0.056 + (0.039 - 0.056) * along; }

FootPlace placeFoot(const LegGoal& goal, int side) {
  const auto& n = goal.n;
  FootPlace place;
  place.flat = aboutZ(outward(side) * n[3]) * aboutY(-n[6]);
  place.foot = place.flat * aboutY(-n[4]);
  const Vec3 print{n[0], n[1], n[2]};
  // The foot turns over its heel when the toes come up, over its ball when the heel does.
  const double pivot = n[4] > 0 ? -kHeel : kBall;
  place.ankle = print + place.flat * Vec3{pivot, 0, 0} + place.foot * Vec3{-pivot, 0, kFootHeight};
  return place;
}

double standingHeight(const Goal& goal, const std::array<LimbState, 2>& limbs) {
  Posture posture;
  setTrunk(posture, goal.trunk);
  const double bend = std::cos(radians(goal.trunk.stand_deg));
  const double span = std::sqrt(kThigh * kThigh + kShank * kShank + 2 * kThigh * kShank * bend);
  double height = 1e9;
  for (int side = 0; side < 2; ++side) {
    const LegGoal& leg = goal.legs[side];
    if (leg.how != LegHow::kPrint || leg.air || !limbs[side].hasFoot()) continue;
    const Vec3 ankle = placeFoot(leg, side).ankle;
    const Vec3 hip = posture.pelvis * Vec3{0, outward(side) * kHipHalf, 0};
    const double dx = ankle.x - goal.trunk.n[TrunkGoal::kX] - hip.x;
    const double dy = ankle.y - goal.trunk.n[TrunkGoal::kY] - hip.y;
    height = std::min(height, ankle.z + std::sqrt(std::max(0.0, span * span - dx * dx - dy * dy)) - hip.z);
  }
  return height < 1e8 ? height : goal.trunk.n[TrunkGoal::kZ];
}

Posture solve(const Goal& goal, const std::array<LimbState, 2>& limbs, const Ground& ground) {
  Posture posture;
  setTrunk(posture, goal.trunk);
  const auto& n = goal.trunk.n;
  double height = goal.trunk.stands ? standingHeight(goal, limbs) : n[TrunkGoal::kZ];
  if (!kneelingHeight(goal, posture.pelvis, limbs, false, height)) {
    kneelingHeight(goal, posture.pelvis, limbs, true, height);
  }
  placeTrunk(posture, {n[TrunkGoal::kX], n[TrunkGoal::kY], height});
  for (int side = 0; side < 2; ++side) setLeg(posture, goal, side, ground);
  // A hand may touch the other shoulder: both must be placed before either arm reaches.
  for (int side = 0; side < 2; ++side) {
    posture.arms[side].shoulder = posture.neck + posture.chest * Vec3{0, outward(side) * kShoulderHalf, 0};
  }
  for (int side = 0; side < 2; ++side) setArm(posture, goal, side, limbs);
  return posture;
}

}  // namespace newel
