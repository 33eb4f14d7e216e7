#include "core/figure/audit_shapes.h"

#include <algorithm>
#include <cmath>

namespace newel {

using namespace lengths;

double gapBetween(const BodyAxis& p, const BodyAxis& q) {
  // Nearest points of two pieces of line.
  const Vec3 d1 = p.b - p.a;
  const Vec3 d2 = q.b - q.a;
  const Vec3 r = p.a - q.a;
  const double a = std::max(1e-12, dot(d1, d1));
  const double e = std::max(1e-12, dot(d2, d2));
  const double b = dot(d1, d2);
  const double c = dot(d1, r);
  const double f = dot(d2, r);
  const double denominator = a * e - b * b;
  double s = denominator > 1e-12 ? std::clamp((b * f - c * e) / denominator, 0.0, 1.0) : 0;
  double t = std::clamp((b * s + f) / e, 0.0, 1.0);
  s = std::clamp((b * t - c) / a, 0.0, 1.0);
  t = std::clamp((b * s + f) / e, 0.0, 1.0);
  return distance(p.a + d1 * s, q.a + d2 * t);
}

Remaining BodyShapes::leftOf(int side) const {
  return m_limbs[side].bare() ? remainingOf(m_limbs[side].level) : Remaining{};
}

void BodyShapes::limbBalls(const Posture& p, int side) {
  const LegPosture& leg = p.legs[side];
  const ArmPosture& arm = p.arms[side];
  const Remaining left = leftOf(side);
  m_balls.push_back({"elbow", arm.elbow, m_shape.elbow, false});
  m_balls.push_back({"wrist", arm.wrist, m_shape.wrist, true});
  m_balls.push_back({"hand", arm.grip, arm.closed ? 0.0 : m_shape.palm * 0.9, true});
  m_balls.push_back({"shoulder", arm.shoulder, m_shape.shoulder, false});
  if (!arm.closed) m_balls.push_back({"fingers", mix(arm.grip, arm.tip, 0.8), m_shape.fingers, true});
  m_balls.push_back({"seat", leg.hip, m_shape.hips.depth, false});
  if (left.thigh > 0) {
    m_balls.push_back({"thigh", mix(leg.hip, leg.knee, 0.5 * left.thigh), m_shape.thigh_top * 0.85, false});
  }
  if (left.thigh == 1) m_balls.push_back({"knee", leg.knee, m_shape.knee, false});
  if (left.shank > 0)
    m_balls.push_back({"calf", mix(leg.knee, leg.ankle, 0.4 * left.shank), m_shape.calf * 0.9, false});
  if (left.shank == 1) m_balls.push_back({"ankle", leg.ankle, m_shape.ankle, true});
  if (left.foot == 0) return;
  m_balls.push_back(
      {"heel", leg.heel + leg.foot.z * m_shape.heel + leg.foot.x * m_shape.heel, m_shape.heel, true});
  if (left.foot < 1) return;
  m_balls.push_back({"ball", leg.ball + leg.foot.z * m_shape.ball, m_shape.ball, true});
  const Vec3 toe = leg.toe + (leg.ball - leg.toe) * (m_shape.toe / (kToe - kBall));
  m_balls.push_back({"toe", toe + leg.foot.z * m_shape.toe, m_shape.toe, true});
}

const std::vector<BodyBall>& BodyShapes::balls(const Posture& p) {
  m_balls.clear();
  m_balls.push_back({"hips", p.hips, m_shape.hips.depth, false});
  m_balls.push_back({"waist", p.waist, m_shape.waist.depth, false});
  m_balls.push_back({"ribs", p.ribs, m_shape.ribs.depth, false});
  m_balls.push_back({"chest", mix(p.ribs, p.neck, 0.7), m_shape.chest.depth, false});
  m_balls.push_back({"head", p.head, 0.05, false});
  for (int side = 0; side < 2; ++side) limbBalls(p, side);
  return m_balls;
}

const std::vector<BodyAxis>& BodyShapes::axes(const Posture& p, const std::array<bool, 2>& hand_on_body) {
  static constexpr const char* kNames[2][5] = {{"thigh a", "shank a", "foot a", "forearm a", "hand a"},
                                               {"thigh b", "shank b", "foot b", "forearm b", "hand b"}};
  m_axes.clear();
  m_axes.push_back({"lower trunk", p.hips, p.ribs, m_shape.waist.depth, 0});
  m_axes.push_back({"chest", p.ribs, p.neck, m_shape.chest.depth, 0});
  m_axes.push_back({"head", p.head - p.skull.z * 0.03, p.head + p.skull.z * 0.03, 0.045, 0});
  for (int side = 0; side < 2; ++side) {
    const LegPosture& leg = p.legs[side];
    const ArmPosture& arm = p.arms[side];
    const Remaining left = leftOf(side);
    const auto& names = kNames[side];
    // The thigh's upper part is next to the other one by nature.
    if (left.thigh > 0.5) {
      m_axes.push_back(
          {names[0], mix(leg.hip, leg.knee, 0.45), mix(leg.hip, leg.knee, left.thigh), 0.042, 1 + side});
    }
    if (left.shank > 0.5)
      m_axes.push_back({names[1], leg.knee, mix(leg.knee, leg.ankle, left.shank), 0.028, 1 + side});
    if (left.foot > 0) {
      m_axes.push_back({names[2], leg.heel + leg.foot.z * 0.02,
                        mix(leg.heel, leg.toe, left.foot) + leg.foot.z * 0.015, 0.02, 1 + side});
    }
    m_axes.push_back({names[3], arm.elbow, arm.wrist, 0.02, 3 + side});
    if (!hand_on_body[side]) m_axes.push_back({names[4], arm.wrist, arm.tip, 0.014, 3 + side});
  }
  return m_axes;
}

}  // namespace newel
