// One held moment of the drawn body: where every joint is and how every segment is turned.
// Not here: how a moment is asked for (goal.h), found (solve.h) or drawn (figure.h).
#pragma once

#include <array>

#include "core/figure/vec.h"

namespace newel {

// Index of the sides in every pair below. Which of them is the left one is decided when a moment is drawn.
inline constexpr int kSideA = 0;
inline constexpr int kSideB = 1;
// +1 for side a, -1 for side b: the sign of y on that side.
inline constexpr double outward(int side) { return side == kSideA ? 1 : -1; }

struct LegPosture {
  Vec3 hip, knee, ankle, heel, ball, toe;  // heel, ball and toe are on the sole
  Turn thigh, shank, foot;                 // z along the segment toward the body, x forward
};

struct ArmPosture {
  Vec3 shoulder, elbow, wrist, grip, tip;
  Turn upper, fore, hand;
  bool closed = false;  // the hand holds something
};

// Lengths in body heights, in the axes of clip.proto (side a at +y). Lost parts are there as if they were not
// lost: what is drawn and weighed is decided by the limb's state.
struct Posture {
  Vec3 hips, waist, ribs, neck,
      head;  // middle of the hip joints, the two bends, between the shoulders, head's centre
  Turn pelvis, belly, chest, skull;
  std::array<LegPosture, 2> legs;
  std::array<ArmPosture, 2> arms;
};

}  // namespace newel
