// The body as simple solids, for the audit: balls that must not sink into things, axes that must not cross.
// For core/figure alone.
#pragma once

#include <array>
#include <vector>

#include "core/figure/body_shape.h"
#include "core/figure/posture.h"
#include "core/figure/skeleton.h"

namespace newel {

struct BodyBall {
  const char* name;
  Vec3 at;
  double radius;
  bool hard;  // gives nothing, as a shoe or a hand
};

struct BodyAxis {
  const char* name;
  Vec3 a, b;
  double radius;
  int limb;  // axes of the same limb are neighbours and may touch
};

// Reused from frame to frame. What is lost has no solids.
class BodyShapes {
 public:
  BodyShapes(const std::array<LimbState, 2>& limbs, const BodyShape& shape)
      : m_limbs(limbs), m_shape(shape) {}

  const std::vector<BodyBall>& balls(const Posture& posture);
  // A hand that lies on the own body has no axis.
  const std::vector<BodyAxis>& axes(const Posture& posture, const std::array<bool, 2>& hand_on_body);

 private:
  void limbBalls(const Posture& posture, int side);
  Remaining leftOf(int side) const;

  std::array<LimbState, 2> m_limbs;
  BodyShape m_shape;
  std::vector<BodyBall> m_balls;
  std::vector<BodyAxis> m_axes;
};

// The least distance between two axes.
double gapBetween(const BodyAxis& p, const BodyAxis& q);

}  // namespace newel
