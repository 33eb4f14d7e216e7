#include "core/figure/draw_marks.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/figure/draw_props.h"

namespace newel {
namespace {

constexpr float kArrow = 0.013F;
constexpr double kHead = 0.036;
// A shorter way is not worth an arrow.
constexpr double kShortest = 0.035;
constexpr double kLeastLength = 0.13;

void setStraight(const Vec3& from, const Vec3& go, MarkWay& way) {
  for (int i = 0; i < MarkWay::kPoints; ++i)
    way.points[i] = from + go * (static_cast<double>(i) / (MarkWay::kPoints - 1));
}

// On and on ahead: a plain arrow that stays beside the body.
void setOnward(const SceneKeys& scene, const Vec3& from, MarkWay& way) {
  constexpr double kLong = 0.34;
  const Vec3 go = unit(scene.travel, {1, 0, 0}) * kLong;
  setStraight(from - go * 0.5, go, way);
  way.with_view = true;
}

// The share of a round at which the point is furthest from where the round began.
double furthest(const Choreography& keys, Moment moment, v1::BodyPoint point) {
  constexpr int kSteps = 24;
  Pose pose;
  moment.fraction = 0;
  poseAt(keys, moment, pose);
  const Vec3 from = pointOf(pose.posture, keys.limbs, point);
  double most = 0;
  double share = 1;
  for (int i = 1; i < kSteps; ++i) {
    moment.fraction = static_cast<double>(i) / kSteps;
    poseAt(keys, moment, pose);
    const double off = distance(from, pointOf(pose.posture, keys.limbs, point));
    if (off <= most) continue;
    most = off;
    share = moment.fraction;
  }
  return share;
}

}  // namespace

void findWay(const Choreography& keys, const Moment& moment, const v1::Mark& mark, MarkWay& way) {
  const v1::BodyPoint point = mark.point();
  Moment key = moment;
  key.fraction = 0;
  if (way.known && way.of == key) return;
  way.known = true;
  const bool thick =
      point == v1::BODY_POINT_HEAD || point == v1::BODY_POINT_CHEST || point == v1::BODY_POINT_PELVIS;
  way.clear = thick ? 0.115 : 0.055;
  way.of = key;
  way.with_view = false;
  Pose pose;
  const SceneKeys& scene = keys.scenes[moment.scene];
  const bool rounds = scene.phases[moment.phase].goesRound();
  if (mark.has_way()) {
    poseAt(keys, key, pose);
    way.middle = mix(pose.posture.hips, pose.posture.neck, 0.5);
    setStraight(pointOf(pose.posture, keys.limbs, point), {mark.way().x(), mark.way().y(), mark.way().z()},
                way);
    return;
  }
  if (rounds && length(scene.travel) > 0) {
    poseAt(keys, key, pose);
    way.middle = mix(pose.posture.hips, pose.posture.neck, 0.5);
    setOnward(scene, pointOf(pose.posture, keys.limbs, point), way);
    return;
  }
  const double whole = rounds ? furthest(keys, moment, point) : 1;
  for (int i = 0; i < MarkWay::kPoints; ++i) {
    Moment at = moment;
    // Evenly along the way rather than in time.
    const double share = static_cast<double>(i) / (MarkWay::kPoints - 1);
    double low = 0;
    double high = 1;
    for (int round = 0; round < 24; ++round) {
      const double middle = (low + high) / 2;
      (personEase(middle) < share ? low : high) = middle;
    }
    at.fraction = i == 0 ? 0 : i == MarkWay::kPoints - 1 ? 1 : (low + high) / 2;
    if (rounds) at.fraction = share * whole;
    poseAt(keys, at, pose);
    way.points[i] = pointOf(pose.posture, keys.limbs, point);
    if (i == MarkWay::kPoints / 2) way.middle = mix(pose.posture.hips, pose.posture.neck, 0.5);
  }
}

void MarkPainter::head(DrawPoint tip, double dx, double dy) {
  const double size = std::hypot(dx, dy);
  if (size < 1e-9) return;
  const double x = dx / size * kHead;
  const double y = dy / size * kHead;
  const double c = std::cos(radians(32));
  const double s = std::sin(radians(32));
  const DrawPoint wings[3] = {
      {static_cast<float>(tip.x - (x * c - y * s)), static_cast<float>(tip.y - (x * s + y * c))},
      tip,
      {static_cast<float>(tip.x - (x * c + y * s)), static_cast<float>(tip.y - (-x * s + y * c))}};
  m_sketch.polyline(Layer::Mark, m_palette.rail, kArrow, wings, 3, false);
}

void MarkPainter::arrow(const MarkWay& way, DrawPoint shift) {
  const Vec3 along = way.with_view ? m_eye.shift : Vec3{};
  const DrawPoint first = m_eye.see(way.points.front() + along);
  const DrawPoint last = m_eye.see(way.points.back() + along);
  const double chord_x = last.x - first.x;
  const double chord_y = last.y - first.y;
  const double chord = std::hypot(chord_x, chord_y);
  if (chord < kShortest) return;
  // One plain bow from end to end, through the point of the way that is furthest off the straight line.
  double bow = 0;
  for (const Vec3& point : way.points) {
    const DrawPoint p = m_eye.see(point + along);
    const double off = ((p.x - first.x) * -chord_y + (p.y - first.y) * chord_x) / chord;
    if (std::fabs(off) > std::fabs(bow)) bow = off;
  }
  bow = std::clamp(bow, -chord * 0.35, chord * 0.35);
  // A short way is drawn longer, about its middle, so that it is seen from across the room.
  const double grow = std::max(1.0, kLeastLength / chord);
  if (shift.x == 0 && shift.y == 0) {
    const DrawPoint middle = m_eye.see(way.middle);
    const double nx = -chord_y / chord;
    const double ny = chord_x / chord;
    const double away = nx * ((first.x + last.x) / 2 - middle.x) + ny * ((first.y + last.y) / 2 - middle.y);
    const double by = away >= 0 ? way.clear : -way.clear;
    shift = {static_cast<float>(nx * by), static_cast<float>(ny * by)};
  }
  std::array<DrawPoint, 9> points;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const double u = static_cast<double>(i) / (points.size() - 1);
    const double out = 4 * u * (1 - u) * bow / chord;
    const double v = 0.5 + (u - 0.5) * grow;
    points[i] = {static_cast<float>(first.x + chord_x * v - chord_y * out + shift.x),
                 static_cast<float>(first.y + chord_y * v + chord_x * out + shift.y)};
  }
  m_sketch.curve(Layer::Mark, m_palette.rail, kArrow, points.data(), points.size());
  const DrawPoint before = points[points.size() - 2];
  head(points.back(), points.back().x - before.x, points.back().y - before.y);
}

void MarkPainter::press(const Vec3& point) {
  const DrawPoint at = m_eye.see(point);
  const DrawPoint from{at.x, at.y - 0.19F};
  const DrawPoint tip{at.x, at.y - 0.08F};
  m_sketch.line(Layer::Mark, m_palette.rail, kArrow, from, tip);
  head(tip, 0, 1);
}

void MarkPainter::weight(const Posture& posture, int side) {
  const LegPosture& leg = posture.legs[side];
  const Vec3 middle = mix(leg.heel, leg.toe, 0.5);
  const Vec3 ahead = unit({leg.foot.x.x, leg.foot.x.y, 0}, {1, 0, 0});
  const Vec3 aside = cross({0, 0, 1}, ahead);
  constexpr int kRound = 24;
  std::array<DrawPoint, kRound> ring;
  for (int i = 0; i < kRound; ++i) {
    const double a = 2 * std::numbers::pi * i / kRound;
    ring[i] = m_eye.see(Vec3{middle.x, middle.y, leg.heel.z} + ahead * (0.125 * std::cos(a)) +
                        aside * (0.08 * std::sin(a)));
  }
  m_sketch.fillPolygon(Layer::Mark, mixed(m_palette.rail, m_palette.sheet, 0.78), ring.data(), kRound);
  m_sketch.polyline(Layer::Mark, m_palette.rail, kArrow, ring.data(), kRound, true);
}

void MarkPainter::leads(const Posture& posture, int side, const std::string& letter, bool flipped) {
  const LegPosture& leg = posture.legs[side];
  DrawPoint at = m_eye.see(leg.toe + leg.foot.x * 0.055 + Vec3{0, 0, 0.035});
  m_sketch.fillDisc(Layer::Mark, m_palette.rail, {at, 0.034F});
  if (flipped) at.x = -at.x;
  m_sketch.label(m_palette.on_rail, letter, at, 0.036F);
}

}  // namespace newel
