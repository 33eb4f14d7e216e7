#include "core/figure/draw_props.h"

#include <algorithm>
#include <cmath>

#include "core/figure/draw_body.h"

namespace newel {
Vec3 pointOf(const Posture& p, const std::array<LimbState, 2>& limbs, v1::BodyPoint point) {
  const auto foot = [&](int side) {
    const LegPosture& leg = p.legs[side];
    if (limbs[side].hasFoot()) return mix(leg.heel, leg.toe, 0.5);
    const Remaining left = remainingOf(limbs[side].level);
    return left.shank > 0 ? mix(leg.knee, leg.ankle, left.shank) : mix(leg.hip, leg.knee, left.thigh);
  };
  switch (point) {
    case v1::BODY_POINT_HEAD:
      return p.head;
    case v1::BODY_POINT_CHEST:
      return mix(p.ribs, p.neck, 0.5);
    case v1::BODY_POINT_A_HAND:
      return p.arms[kSideA].grip;
    case v1::BODY_POINT_B_HAND:
      return p.arms[kSideB].grip;
    case v1::BODY_POINT_BOTH_HANDS:
      return mix(p.arms[kSideA].grip, p.arms[kSideB].grip, 0.5);
    case v1::BODY_POINT_A_KNEE:
      return p.legs[kSideA].knee;
    case v1::BODY_POINT_B_KNEE:
      return p.legs[kSideB].knee;
    case v1::BODY_POINT_A_FOOT:
      return foot(kSideA);
    case v1::BODY_POINT_B_FOOT:
      return foot(kSideB);
    case v1::BODY_POINT_A_THIGH:
      return mix(p.legs[kSideA].hip, p.legs[kSideA].knee, 0.5);
    case v1::BODY_POINT_B_THIGH:
      return mix(p.legs[kSideB].hip, p.legs[kSideB].knee, 0.5);
    case v1::BODY_POINT_A_HIP:
      return p.legs[kSideA].hip;
    case v1::BODY_POINT_B_HIP:
      return p.legs[kSideB].hip;
    default:
      return p.hips;
  }
}

void PropPainter::one(const SceneProp& prop, const Vec3& at) {
  const PropShape& shape = prop.shape;
  const double y = shape.width / 2;
  switch (shape.kind) {
    case v1::PROP_KIND_CHAIR:
    case v1::PROP_KIND_STOOL:
      return chair(shape, at);
    case v1::PROP_KIND_ROLLING_CHAIR:
      return rollingChair(shape, at);
    case v1::PROP_KIND_RAIL:
      return rail(shape, at);
    case v1::PROP_KIND_STAIRS:
      return stairs(shape, at);
    case v1::PROP_KIND_RAMP:
      return ramp(shape, at);
    case v1::PROP_KIND_COUNTER:
      return counter(shape, at);
    case v1::PROP_KIND_BED:
      box(m_palette.wood, shape, at, {0.02, -y + 0.02, 0.03},
          {shape.length - 0.02, y - 0.02, shape.height - 0.1});
      return box(m_palette.pale_wood, shape, at, {0, -y, shape.height - 0.1},
                 {shape.length, y, shape.height});
    case v1::PROP_KIND_KERB:
      return box(m_palette.wood, shape, at, {0, -y, 0}, {shape.length, y, shape.height});
    case v1::PROP_KIND_CUSHION:
      return cushion(shape, at);
    case v1::PROP_KIND_ROLL:
      return roll(shape, at);
    case v1::PROP_KIND_WALL:
      return quad(Layer::Ground, m_palette.floor, m_palette.floor_line, shape, at,
                  {{0, -y, 0}, {0, y, 0}, {0, y, shape.height}, {0, -y, shape.height}});
    case v1::PROP_KIND_MIRROR:
      return mirror(shape, at);
    case v1::PROP_KIND_CYCLE:
      return cycle(shape, at);
    case v1::PROP_KIND_TIPPING_BOARD:
      return tippingBoard(shape, at);
    case v1::PROP_KIND_WATER:
      return water(shape, at);
    case v1::PROP_KIND_CANE:
      return cane(shape, at);
    case v1::PROP_KIND_BOX:
      return box(m_palette.wood, shape, at, {-shape.length / 2, -y, 0}, {shape.length / 2, y, shape.height});
    case v1::PROP_KIND_BALL:
      m_sketch.beginGroup(Layer::Prop, m_palette.ink, kOutline * 1.4F);
      m_sketch.colour(m_palette.cloth);
      m_sketch.disc({m_eye.see(at), static_cast<float>(shape.height / 2)});
      return m_sketch.endGroup();
    default:
      return flat(shape, at);
  }
}

PropPlace PropPainter::placeOf(const SceneProp& prop, const Vec3& at) const {
  const PropShape& shape = prop.shape;
  switch (shape.kind) {
    case v1::PROP_KIND_CANE:
    case v1::PROP_KIND_RAIL: {
      // Its height and reach along the way do not matter, only which side of the body it runs on.
      const Vec3 across = aboutZ(shape.turn_deg).y;
      const double side = dot(m_pose.posture.hips - at, across);
      return side * dot(across, m_eye.toward) < -0.05 ? PropPlace::Front : PropPlace::Behind;
    }
    case v1::PROP_KIND_WATER:
      return PropPlace::Front;
    case v1::PROP_KIND_BALL:
    case v1::PROP_KIND_CUSHION:
      return m_eye.depth({at.x, at.y, m_pose.posture.hips.z}) > m_eye.depth(m_pose.posture.hips)
                 ? PropPlace::Front
                 : PropPlace::Behind;
    case v1::PROP_KIND_COUNTER:
    case v1::PROP_KIND_WALL:
    case v1::PROP_KIND_MIRROR: {
      const Vec3 ahead = aboutZ(shape.turn_deg).x;
      const double before = dot(m_pose.posture.hips - at, ahead);
      return before < 0 && dot(ahead, m_eye.toward) > 0.5 ? PropPlace::Front : PropPlace::Behind;
    }
    default:
      return PropPlace::Behind;
  }
}

namespace {

bool isFlat(v1::PropKind kind) {
  return kind == v1::PROP_KIND_FLOOR || kind == v1::PROP_KIND_MAT || kind == v1::PROP_KIND_LINE ||
         kind == v1::PROP_KIND_WALL || kind == v1::PROP_KIND_STAIRS || kind == v1::PROP_KIND_RAMP;
}

}  // namespace

bool PropPainter::isAstride() const {
  return std::any_of(m_scene.props.begin(), m_scene.props.end(), [](const SceneProp& prop) {
    const bool between = prop.shape.kind == v1::PROP_KIND_MIRROR && !isCarried(prop) &&
                         std::fabs(std::sin(radians(prop.shape.turn_deg))) > 0.7;
    return prop.there && (between || prop.shape.kind == v1::PROP_KIND_CYCLE);
  });
}

void PropPainter::drawFlat() {
  for (std::size_t i = 0; i < m_scene.props.size(); ++i) {
    const SceneProp& prop = m_scene.props[i];
    if (prop.there && isFlat(prop.shape.kind)) one(prop, m_pose.goal.props[i]);
  }
}

void PropPainter::drawUpright(PropPlace place) {
  std::array<std::size_t, kMostProps> order{};
  std::size_t count = 0;
  for (std::size_t i = 0; i < m_scene.props.size(); ++i) {
    const SceneProp& prop = m_scene.props[i];
    if (!prop.there || isCarried(prop) || isFlat(prop.shape.kind)) continue;
    if (placeOf(prop, m_pose.goal.props[i]) == place) order[count++] = i;
  }
  std::sort(order.begin(), order.begin() + count, [&](std::size_t a, std::size_t b) {
    return m_eye.depth(m_pose.goal.props[a]) < m_eye.depth(m_pose.goal.props[b]);
  });
  for (std::size_t i = 0; i < count; ++i) one(m_scene.props[order[i]], m_pose.goal.props[order[i]]);
}

void PropPainter::drawInHand() {
  for (const SceneProp& prop : m_scene.props) {
    if (!prop.there || !isInHand(prop)) continue;
    const ArmPosture& arm = m_pose.posture.arms[prop.prop.from() == v1::BODY_POINT_B_HAND ? kSideB : kSideA];
    prop.shape.kind == v1::PROP_KIND_MIRROR ? handMirror(arm) : cloth(arm.grip);
  }
}

void PropPainter::drawCarried() {
  for (std::size_t i = 0; i < m_scene.props.size(); ++i) {
    const SceneProp& prop = m_scene.props[i];
    if (!prop.there || !isCarried(prop) || isInHand(prop)) continue;
    if (prop.shape.kind == v1::PROP_KIND_SLEEVE) {
      sleeve(prop, m_pose.goal.props[i].x);
      continue;
    }
    const std::array<LimbState, 2> whole{};
    const bool tied = prop.prop.from() == v1::BODY_POINT_UNSPECIFIED;
    const Vec3 from = tied ? Vec3{prop.prop.x(), prop.prop.y(), prop.prop.z()}
                           : pointOf(m_pose.posture, whole, prop.prop.from());
    if (prop.shape.kind == v1::PROP_KIND_BALL) {
      one(prop, from + m_pose.posture.chest.x * (prop.shape.height / 2));
      continue;
    }
    const Vec3 to = pointOf(m_pose.posture, whole, prop.prop.to());
    const float width = prop.shape.kind == v1::PROP_KIND_TOWEL ? 0.03F : 0.014F;
    m_sketch.line(Layer::Prop, m_palette.ink, width + kOutline, m_eye.see(from), m_eye.see(to));
    m_sketch.line(Layer::Prop, m_palette.cloth, width, m_eye.see(from), m_eye.see(to));
  }
}

}  // namespace newel
