// What a moment of the body is asked to be: numbers that can be mixed with those of another moment.
// Made from a clip's poses (key_poses.h), mixed in time (motion.h), turned into joints by solve.h.
#pragma once

#include <array>

#include "core/figure/posture.h"
#include "core/records/clip.pb.h"

namespace newel {

inline constexpr int kMostProps = 10;  // in one scene

// As v1::Trunk, in its order.
struct TrunkGoal {
  enum Number { kX, kY, kZ, kLean, kRoll, kYaw, kBend, kSide, kTwist, kNod, kTilt, kTurn, kCount };
  std::array<double, kCount> n{};
  bool stands = false;  // kZ is found from the legs; then:
  double stand_deg = 0;
};

enum class LegHow { kAngles, kPrint, kKneel, kRoll, kTurns };
enum class ArmHow { kAngles, kPoint, kPlant, kTouch, kTurns };

struct LegGoal {
  // Numbers by kind:
  // kAngles: hip flex, out, turn, knee, ankle.  kPrint: x y z, toe out, pitch, knee out, slope.
  // kKneel: x y z, shank out, shank up, ankle.  kRoll: knee, ankle.  kTurns: knee.
  static constexpr int kCount = 7;
  LegHow how = LegHow::kAngles;
  std::array<double, kCount> n{};
  double lift = 0;   // kPrint: of the way that ends here
  bool air = false;  // kPrint: not on the ground
  int prop = -1;     // kRoll
  Turn hip, ankle;   // kTurns: thigh seen from the pelvis, foot seen from the shank
};

struct ArmGoal {
  // kAngles: flex, out, turn, elbow, wrist.  kPoint: x y z of the grip.  kPlant: x y z of the palm, turn out.
  // kTouch: along, across, round.  kTurns: elbow.  The last number of all kinds: elbow out.
  static constexpr int kCount = 6;
  static constexpr int kElbowOut = 5;
  ArmHow how = ArmHow::kAngles;
  std::array<double, kCount> n{};
  int prop = -1;  // kPoint: what is held; -1 after mixing two different things
  v1::Grip grip = v1::GRIP_UNSPECIFIED;
  v1::BodyPart part = v1::BODY_PART_UNSPECIFIED;
  bool fist = false;     // kPlant, or fingertips only on kPoint when false
  Turn shoulder, wrist;  // kTurns: upper arm seen from the chest, hand seen from the forearm
};

struct Goal {
  TrunkGoal trunk;
  std::array<LegGoal, 2> legs;
  std::array<ArmGoal, 2> arms;
  std::array<Vec3, kMostProps> props{};  // where each of the scene's props is
};

}  // namespace newel
