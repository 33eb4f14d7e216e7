#include "core/figure/balance.h"

#include <algorithm>
#include <cmath>

namespace newel {
namespace {

struct Sum {
  double mass = 0;
  Vec3 moment;
  void add(const Vec3& at, double m) {
    mass += m;
    moment = moment + at * m;
  }
};

// A leg's part: what is left has its centre nearer the body, the device stands in for the rest.
void addPart(Sum& sum, const Vec3& near, const Vec3& far, const SegmentMass& segment, const PartMass& part,
             double remaining) {
  sum.add(mix(near, far, segment.centre * remaining), part.own);
  sum.add(mix(near, far, remaining + (1 - remaining) * 0.5), part.device);
}

void addSole(std::vector<Vec3>& corners, const LegPosture& leg, double remaining) {
  constexpr double kHalfBreadth = 0.0275;  // of a foot: 0.055 of body height, Drillis and Contini
  const Vec3 aside = leg.foot.y * kHalfBreadth;
  const Vec3 front = mix(leg.heel, leg.toe, remaining);
  for (const Vec3& at : {leg.heel, front}) {
    corners.push_back(at + aside);
    corners.push_back(at - aside);
  }
}

void addSpot(std::vector<Vec3>& corners, const Vec3& at, double half) {
  for (const double x : {-half, half}) {
    for (const double y : {-half, half}) corners.push_back(at + Vec3{x, y, 0});
  }
}

double crossAt(const Vec3& o, const Vec3& a, const Vec3& b) {
  return (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x);
}

}  // namespace

Vec3 centreOfMass(const Posture& p, const std::array<LimbState, 2>& limbs) {
  Sum sum;
  // Thorax from the shoulders, abdomen from the upper bend, pelvis from the lower one; the head's centre lies
  // at the ear.
  sum.add(mix(p.neck, p.ribs, masses::kThorax.centre), masses::kThorax.mass);
  sum.add(mix(p.ribs, p.waist, masses::kAbdomen.centre), masses::kAbdomen.mass);
  sum.add(mix(p.waist, p.hips, masses::kPelvis.centre), masses::kPelvis.mass);
  sum.add(mix(p.neck, p.head, masses::kHead.centre), masses::kHead.mass);
  for (int side = 0; side < 2; ++side) {
    const ArmPosture& arm = p.arms[side];
    sum.add(mix(arm.shoulder, arm.elbow, masses::kUpperArm.centre), masses::kUpperArm.mass);
    sum.add(mix(arm.elbow, arm.wrist, masses::kForearm.centre), masses::kForearm.mass);
    // The hand's mass is given between wrist and knuckles; the grip is there.
    sum.add(mix(arm.wrist, arm.grip, masses::kHand.centre), masses::kHand.mass);
    const LegPosture& leg = p.legs[side];
    const auto parts = legMasses(limbs[side]);
    const Remaining left = remainingOf(limbs[side].level);
    addPart(sum, leg.hip, leg.knee, masses::kThigh, parts[0], left.thigh);
    addPart(sum, leg.knee, leg.ankle, masses::kShank, parts[1], left.shank);
    addPart(sum, leg.ankle, leg.ball, masses::kFoot, parts[2], left.foot);
  }
  return sum.moment * (1 / sum.mass);
}

std::vector<Vec3> carriers(const SceneKeys& scene, const std::array<LimbState, 2>& limbs, const Goal& goal,
                           const Posture& p) {
  std::vector<Vec3> corners;
  for (int side = 0; side < 2; ++side) {
    const LegGoal& leg = goal.legs[side];
    if (leg.how == LegHow::kPrint && !leg.air && limbs[side].hasFoot()) {
      addSole(corners, p.legs[side], limbs[side].bare() ? remainingOf(limbs[side].level).foot : 1);
    }
    if (leg.how == LegHow::kKneel && limbs[side].needsPad()) {
      addSpot(corners, mix(p.legs[side].hip, p.legs[side].knee, remainingOf(limbs[side].level).thigh), 0.045);
    } else if (leg.how == LegHow::kKneel && limbs[side].canKneel()) {
      const LegPosture& at = p.legs[side];
      corners.push_back(at.knee + Vec3{0.03, 0.02, 0});
      corners.push_back(at.knee + Vec3{0.03, -0.02, 0});
      const double left = limbs[side].bare() ? remainingOf(limbs[side].level).shank : 1;
      corners.push_back(mix(at.knee, at.ankle, left));
      if (limbs[side].hasFoot()) corners.push_back(at.toe);
    }
    const ArmGoal& arm = goal.arms[side];
    const bool grips = arm.how == ArmHow::kPoint && arm.prop >= 0 && arm.fist;
    if (arm.how == ArmHow::kPlant) addSpot(corners, p.arms[side].grip, 0.025);
    if (grips) corners.push_back(p.arms[side].grip);
  }
  for (std::size_t i = 0; i < scene.props.size(); ++i) {
    const SceneProp& prop = scene.props[i];
    const v1::PropKind kind = prop.shape.kind;
    const bool seat = kind == v1::PROP_KIND_CHAIR || kind == v1::PROP_KIND_ROLLING_CHAIR ||
                      kind == v1::PROP_KIND_STOOL || kind == v1::PROP_KIND_BED;
    if (!seat) continue;
    const double top = surfaceHeight(prop.shape, goal.props[i], p.hips.x, p.hips.y);
    if (top < 0 || p.hips.z - top > 0.085) continue;
    for (const double y : {-0.09, 0.09}) {
      for (const double x : {-0.05, 0.08}) corners.push_back(p.hips + Vec3{x, y, 0});
    }
  }
  return corners;
}

double marginInside(const std::vector<Vec3>& corners, const Vec3& point) {
  if (corners.size() < 3) return -1;
  std::vector<Vec3> sorted = corners;
  std::sort(sorted.begin(), sorted.end(),
            [](const Vec3& a, const Vec3& b) { return a.x != b.x ? a.x < b.x : a.y < b.y; });
  std::vector<Vec3> hull;
  for (int round = 0; round < 2; ++round) {
    const std::size_t base = hull.size();
    for (const Vec3& p : sorted) {
      while (hull.size() >= base + 2 && crossAt(hull[hull.size() - 2], hull.back(), p) <= 1e-12)
        hull.pop_back();
      hull.push_back(p);
    }
    hull.pop_back();
    std::reverse(sorted.begin(), sorted.end());
  }
  double margin = 1e9;
  for (std::size_t i = 0; i < hull.size(); ++i) {
    const Vec3& a = hull[i];
    const Vec3& b = hull[(i + 1) % hull.size()];
    const double size = std::hypot(b.x - a.x, b.y - a.y);
    if (size > 1e-9) margin = std::min(margin, crossAt(a, b, point) / size);
  }
  return margin;
}

}  // namespace newel
