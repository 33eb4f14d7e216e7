#include "core/figure/props.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace newel {
namespace {

struct Usual {
  double length, width, height, rise;
};

const std::map<v1::PropKind, Usual>& usualSizes() {
  static const std::map<v1::PropKind, Usual> kUsual = {
      {v1::PROP_KIND_CHAIR, {0.25, 0.27, 0.255, 0}},
      {v1::PROP_KIND_ROLLING_CHAIR, {0.25, 0.27, 0.255, 0}},
      {v1::PROP_KIND_STOOL, {0.22, 0.22, 0.255, 0}},
      {v1::PROP_KIND_COUNTER, {0.3, 1, 0.53, 0}},
      {v1::PROP_KIND_BED, {0.6, 1.2, 0.3, 0}},
      {v1::PROP_KIND_KERB, {0.5, 0.6, 0.085, 0}},
      {v1::PROP_KIND_RAIL, {1, 0, 0.53, 0}},
      {v1::PROP_KIND_STAIRS, {0.17, 0.5, 0, 0.1}},
      {v1::PROP_KIND_RAMP, {1.2, 0.5, 0, 0.1}},
      {v1::PROP_KIND_MAT, {1.2, 0.5, 0, 0}},
      {v1::PROP_KIND_FLOOR, {1.2, 0.5, 0, 0}},
      {v1::PROP_KIND_WALL, {0, 0.8, 1, 0}},
      {v1::PROP_KIND_ROLL, {0, 0.3, 0.11, 0}},
      {v1::PROP_KIND_CUSHION, {0.2, 0.25, 0.08, 0}},
      {v1::PROP_KIND_BOX, {0.2, 0.3, 0.06, 0}},
      {v1::PROP_KIND_LINE, {1, 0.02, 0, 0}},
      {v1::PROP_KIND_MIRROR, {0, 0.35, 0.9, 0}},
      {v1::PROP_KIND_BALL, {0, 0, 0.13, 0}},
      {v1::PROP_KIND_TOWEL, {0, 0.05, 0, 0}},
      {v1::PROP_KIND_BAND, {0, 0.02, 0, 0}},
      {v1::PROP_KIND_CYCLE, {0.15, 0.09, 0.48, 0}},
      {v1::PROP_KIND_WATER, {1.2, 0.5, 0.72, 0}},
      {v1::PROP_KIND_TIPPING_BOARD, {0.26, 0.34, 0.05, 0}},
      {v1::PROP_KIND_CANE, {0, 0, 0.5, 0}},
  };
  return kUsual;
}

// A point seen from the prop: x ahead of it, y toward side a, z above its foot.
Vec3 seenFrom(const PropShape& shape, const Vec3& at, const Vec3& point) {
  return inverse(aboutZ(shape.turn_deg)) * (point - at);
}

// A worktop that runs on has no ends at its sides.
double halfWidth(const PropShape& shape) {
  return shape.endless && shape.kind == v1::PROP_KIND_COUNTER ? 1e6 : shape.width / 2;
}

// Height of a climbing surface at `x` from where it begins; steps and slopes are endless downward and upward
// in scenes that follow the body, else they begin at 0.
double climb(const PropShape& shape, double x) {
  if (x < 0 && !shape.endless) return 0;
  if (shape.kind == v1::PROP_KIND_RAMP) {
    const double along = shape.endless ? x : std::min(x, shape.length);
    return along / shape.length * shape.rise;
  }
  // Going up, the first riser is at 0; going down, the first edge is.
  return (std::floor(x / shape.length + 1e-9) + 1) * shape.rise;
}

double boxDepth(const Vec3& centre, double radius, const Vec3& low, const Vec3& high) {
  const double gap_x = std::max(low.x - centre.x, centre.x - high.x);
  const double gap_y = std::max(low.y - centre.y, centre.y - high.y);
  const double gap_z = std::max(low.z - centre.z, centre.z - high.z);
  const double most = std::max({gap_x, gap_y, gap_z});
  if (most <= 0) return radius - most;
  const double out = std::hypot(std::max(0.0, gap_x), std::max(0.0, gap_y), std::max(0.0, gap_z));
  return radius - out;
}

}  // namespace

PropShape shapeOf(const v1::Prop& prop) {
  PropShape shape;
  shape.kind = prop.kind();
  const auto found = usualSizes().find(prop.kind());
  const Usual usual = found == usualSizes().end() ? Usual{} : found->second;
  shape.length = prop.length() != 0 ? prop.length() : usual.length;
  shape.width = prop.width() != 0 ? prop.width() : usual.width;
  shape.height = prop.height() != 0 ? prop.height() : usual.height;
  shape.rise = prop.rise() != 0 ? prop.rise() : usual.rise;
  shape.turn_deg = prop.turn_deg();
  return shape;
}

bool hasGrip(v1::PropKind kind, v1::Grip grip) {
  switch (grip) {
    case v1::GRIP_BACK:
      return kind == v1::PROP_KIND_CHAIR || kind == v1::PROP_KIND_ROLLING_CHAIR;
    case v1::GRIP_SEAT:
      return kind == v1::PROP_KIND_CHAIR || kind == v1::PROP_KIND_ROLLING_CHAIR ||
             kind == v1::PROP_KIND_STOOL;
    case v1::GRIP_BAR:
      return kind == v1::PROP_KIND_RAIL || kind == v1::PROP_KIND_COUNTER || kind == v1::PROP_KIND_BED ||
             kind == v1::PROP_KIND_WALL || kind == v1::PROP_KIND_CYCLE || kind == v1::PROP_KIND_CANE;
    case v1::GRIP_MIDDLE:
      return kind == v1::PROP_KIND_BALL || kind == v1::PROP_KIND_ROLL || kind == v1::PROP_KIND_MIRROR;
    default:
      return false;
  }
}

Vec3 gripPoint(const PropShape& shape, const Vec3& at, const v1::Hold& hold) {
  const double along = hold.along();
  Vec3 point;
  switch (hold.grip()) {
    case v1::GRIP_BACK:
      point = {-shape.length / 2 - 0.012, along, kChairBack};
      break;
    case v1::GRIP_SEAT:
      // Beside the seat; `up` moves the hand forward on it.
      point = {hold.up(), (along > 0 ? 1 : -1) * shape.width / 2, shape.height + 0.012};
      break;
    case v1::GRIP_BAR:
      if (shape.kind == v1::PROP_KIND_RAIL) {
        point = {along, 0, shape.height + shape.rise * along / shape.length};
      } else if (shape.kind == v1::PROP_KIND_CANE) {
        point = {0, 0, shape.height};
      } else if (shape.kind == v1::PROP_KIND_CYCLE) {
        point = kCycleBar + Vec3{0, along, 0};
      } else if (shape.kind == v1::PROP_KIND_WALL) {
        point = {-0.018, along, hold.up()};
      } else {
        point = {hold.fingertips() ? 0.04 : 0.012, along, shape.height + (hold.fingertips() ? 0.008 : 0.016)};
      }
      break;
    default:
      point = {0, along, hold.up()};
  }
  return at + aboutZ(shape.turn_deg) * point;
}

Vec3 gripDirection(const PropShape& shape, v1::Grip grip) {
  const Turn turn = aboutZ(shape.turn_deg);
  if (grip == v1::GRIP_SEAT || shape.kind == v1::PROP_KIND_CANE) return turn.x;
  if (shape.kind == v1::PROP_KIND_RAIL) return unit(turn.x * shape.length + Vec3{0, 0, shape.rise}, turn.x);
  return turn.y;
}

double surfaceHeight(const PropShape& shape, const Vec3& at, double x, double y) {
  const Vec3 seen = seenFrom(shape, at, {x, y, at.z});
  const double half = halfWidth(shape);
  const bool beside = std::fabs(seen.y) > half + 1e-9;
  switch (shape.kind) {
    case v1::PROP_KIND_STAIRS:
    case v1::PROP_KIND_RAMP:
      return beside ? -1 : at.z + climb(shape, seen.x);
    case v1::PROP_KIND_KERB:
    case v1::PROP_KIND_BED:
    case v1::PROP_KIND_COUNTER:
      return beside || seen.x < 0 || seen.x > shape.length ? -1 : at.z + shape.height;
    case v1::PROP_KIND_CHAIR:
    case v1::PROP_KIND_ROLLING_CHAIR:
    case v1::PROP_KIND_STOOL:
    case v1::PROP_KIND_CUSHION:
    case v1::PROP_KIND_BOX:
    case v1::PROP_KIND_TIPPING_BOARD:
      return beside || std::fabs(seen.x) > shape.length / 2 ? -1 : at.z + shape.height;
    default:
      return -1;
  }
}

double depthInside(const PropShape& shape, const Vec3& at, const Vec3& centre, double radius) {
  const Vec3 seen = seenFrom(shape, at, centre);
  const double half = halfWidth(shape);
  switch (shape.kind) {
    case v1::PROP_KIND_CHAIR:
    case v1::PROP_KIND_ROLLING_CHAIR:
    case v1::PROP_KIND_STOOL:
      return boxDepth(seen, radius, {-shape.length / 2, -half, shape.height - 0.025},
                      {shape.length / 2, half, shape.height});
    case v1::PROP_KIND_CUSHION:
    case v1::PROP_KIND_BOX:
      return boxDepth(seen, radius, {-shape.length / 2, -half, 0}, {shape.length / 2, half, shape.height});
    case v1::PROP_KIND_KERB:
    case v1::PROP_KIND_BED:
    case v1::PROP_KIND_COUNTER:
      return boxDepth(seen, radius, {0, -half, 0}, {shape.length, half, shape.height});
    case v1::PROP_KIND_CYCLE:
      return boxDepth(seen - Vec3{kCycleSaddleX, 0, 0}, radius,
                      {-shape.length / 2, -half, shape.height - 0.03},
                      {shape.length / 2, half, shape.height});
    case v1::PROP_KIND_WALL:
      return std::fabs(seen.y) > half ? 0 : radius + seen.x;
    case v1::PROP_KIND_ROLL:
      return std::fabs(seen.y) > half ? 0 : radius + shape.height / 2 - std::hypot(seen.x, seen.z);
    case v1::PROP_KIND_RAMP:
    case v1::PROP_KIND_STAIRS: {
      if (std::fabs(seen.y) > half) return 0;
      // The corner of a step must not cut into the ball either: the highest ground under it counts, save
      // where only its rim hangs over an edge.
      double deepest = radius + climb(shape, seen.x) - seen.z;
      for (const double share : {-0.7, 0.7}) {
        const double under = climb(shape, seen.x + share * radius) - (seen.z - 0.714 * radius);
        deepest = std::max(deepest, under);
      }
      return deepest;
    }
    default:
      return 0;
  }
}

}  // namespace newel
