// What is ridden, waded in, worn or carried.
#include <algorithm>
#include <cmath>

#include "core/figure/draw_body.h"
#include "core/figure/draw_props.h"

namespace newel {
namespace {

constexpr float kTube = 0.016F;
constexpr double kOutOfSight = 1.6;

}  // namespace

double PropPainter::repeatOf(double usual) const {
  const double way = std::max(std::fabs(m_scene.travel.x), std::fabs(m_scene.travel.y));
  if (way == 0) return usual;
  return way / std::max(1.0, std::round(way / usual));
}

void PropPainter::cycle(const PropShape& shape, const Vec3& at) {
  const Colour line = m_palette.wood_line;
  const Vec3 saddle{kCycleSaddleX, 0, shape.height - 0.02};
  const Vec3 wheel{0.15, 0, 0.13};
  bar(line, kTube, shape, at, {-0.22, 0, 0.008}, {0.28, 0, 0.008});
  for (const double x : {-0.22, 0.28}) bar(line, kTube, shape, at, {x, -0.1, 0.008}, {x, 0.1, 0.008});
  m_sketch.beginGroup(Layer::Prop, line, kThinLine * 2);
  m_sketch.colour(m_palette.pale_wood);
  m_sketch.disc({see(shape, at, wheel.x, wheel.y, wheel.z), 0.105F});
  m_sketch.colour(m_palette.wood);
  m_sketch.disc({see(shape, at, wheel.x, wheel.y, wheel.z), 0.03F});
  m_sketch.endGroup();
  bar(line, kTube, shape, at, kCycleAxle, {saddle.x, 0, saddle.z});
  bar(line, kTube, shape, at, kCycleAxle, {0.17, 0, 0.4});
  bar(line, kTube, shape, at, kCycleAxle, {0.0, 0, 0.01});
  bar(line, kTube, shape, at, {0.15, 0, 0.02}, {kCycleBar.x - 0.01, 0, kCycleBar.z});
  bar(line, kTube, shape, at, kCycleBar + Vec3{0, -0.13, 0}, kCycleBar + Vec3{0, 0.13, 0});
  m_sketch.beginGroup(Layer::Prop, line, kThinLine * 2);
  m_sketch.colour(m_palette.wood);
  m_sketch.hull({see(shape, at, saddle.x - 0.05, 0, saddle.z), 0.026F},
                {see(shape, at, saddle.x + 0.07, 0, saddle.z + 0.004), 0.015F});
  m_sketch.endGroup();
  // The cranks go to wherever the feet are.
  const DrawPoint axle = see(shape, at, kCycleAxle.x, kCycleAxle.y, kCycleAxle.z);
  for (const LegPosture& leg : m_pose.posture.legs) {
    const DrawPoint pedal = m_eye.see(leg.ball);
    m_sketch.line(Layer::Prop, m_palette.ink, kTube * 0.7F, axle, pedal);
    m_sketch.line(Layer::Prop, m_palette.ink, kTube, m_eye.see(leg.ball - leg.foot.x * 0.03),
                  m_eye.see(leg.ball + leg.foot.x * 0.03));
  }
}

// Tips with the slope that the feet on it have.
void PropPainter::tippingBoard(const PropShape& shape, const Vec3& at) {
  constexpr double kThick = 0.016;
  const double slope = m_pose.goal.legs[kSideA].n[6];
  const Turn tip = aboutY(-slope);
  const double x = shape.length / 2;
  const double y = shape.width / 2;
  const auto round = static_cast<float>(shape.height - kThick);
  m_sketch.beginGroup(Layer::Prop, m_palette.wood_line, kThinLine * 2);
  m_sketch.colour(m_palette.wood);
  m_sketch.hull({see(shape, at, 0, -y * 0.7, round * 0.5), round * 0.5F},
                {see(shape, at, 0, y * 0.7, round * 0.5), round * 0.5F});
  m_sketch.endGroup();
  const auto corner = [&](double px, double py, double pz) {
    return Vec3{0, 0, shape.height} + tip * Vec3{px, py, pz};
  };
  const double near_y = looksAtEye(shape, {0, 1, 0}) ? y : -y;
  const double near_x = looksAtEye(shape, {1, 0, 0}) ? x : -x;
  const Colour side = mixed(m_palette.wood, m_palette.wood_line, 0.18);
  quad(Layer::Prop, m_palette.pale_wood, m_palette.wood_line, shape, at,
       {corner(-x, -y, 0), corner(x, -y, 0), corner(x, y, 0), corner(-x, y, 0)});
  quad(
      Layer::Prop, side, m_palette.wood_line, shape, at,
      {corner(-x, near_y, -kThick), corner(x, near_y, -kThick), corner(x, near_y, 0), corner(-x, near_y, 0)});
  quad(
      Layer::Prop, side, m_palette.wood_line, shape, at,
      {corner(near_x, -y, -kThick), corner(near_x, y, -kThick), corner(near_x, y, 0), corner(near_x, -y, 0)});
}

// Waves over the part of the body that is under water: lines, not a veil, so that the legs stay seen.
void PropPainter::water(const PropShape& shape, const Vec3& at) {
  constexpr int kPoints = 49;
  constexpr int kLines = 9;
  constexpr double kHigh = 0.007;
  const double wave = repeatOf(0.12);
  const double half = m_scene.follow ? kOutOfSight : shape.length / 2;
  const double near_y = looksAtEye(shape, {0, 1, 0}) ? shape.width / 2 : -shape.width / 2;
  const double middle = m_eye.shift.x - at.x;
  for (int row = 0; row < kLines; ++row) {
    const double z = shape.height * (1 - static_cast<double>(row) / kLines);
    DrawPoint points[kPoints];
    for (int i = 0; i < kPoints; ++i) {
      const double x = middle - half + 2 * half * i / (kPoints - 1);
      const double swing = std::sin(2 * 3.14159265358979 * (x / wave + row * 0.5));
      points[i] = see(shape, at, x, near_y, z + kHigh * swing);
    }
    const Colour ink = mixed(m_palette.rail, m_palette.sheet, row == 0 ? 0.1 : 0.5);
    m_sketch.curve(Layer::Prop, ink, row == 0 ? kThinLine * 2 : kThinLine, points, kPoints);
  }
}

void PropPainter::sleeve(const SceneProp& prop, double share) {
  if (share <= 0) return;
  const int side = prop.prop.from() == v1::BODY_POINT_B_FOOT ? kSideB : kSideA;
  const LegPosture& leg = m_pose.posture.legs[side];
  const Remaining left = remainingOf(m_limbs[side].level);
  const bool below_knee = left.shank > 0;
  const Vec3 joint = below_knee ? leg.knee : leg.hip;
  const Vec3 far = below_knee ? leg.ankle : leg.knee;
  const double end = below_knee ? left.shank : std::max(left.thigh, 0.1);
  const double top = below_knee ? 0.1 : 0.25;
  const double to = end + (top - end) * std::min(1.0, share);
  const auto radius = [&](double at) {
    return static_cast<float>(below_knee ? 0.044 - 0.012 * at : thighRadius(at) + 0.004);
  };
  const auto disc = [&](double at) { return Disc{m_eye.see(mix(joint, far, at)), radius(at)}; };
  m_sketch.beginGroup(Layer::Prop, m_palette.ink, kOutline * 2);
  m_sketch.colour(m_palette.cloth);
  m_sketch.hull(disc(end), disc(to));
  m_sketch.endGroup();
  // Its weave, told from skin and from a socket's hatching: rings, not slants.
  const Vec3 along = unit(far - joint, {0, 0, -1});
  const Vec3 aside = cross(along, m_eye.toward);
  if (length(aside) < 0.3) return;
  const Vec3 half = unit(aside, {0, 1, 0});
  constexpr double kRing = 0.05;
  for (double at = end; at > to; at -= kRing) {
    const Vec3 middle = mix(joint, far, at);
    const double r = radius(at) * 0.94;
    m_sketch.line(Layer::Prop, m_palette.ink, kThinLine, m_eye.see(middle - half * r),
                  m_eye.see(middle + half * r));
  }
}

void PropPainter::cane(const PropShape& shape, const Vec3& at) {
  const double z = shape.height;
  bar(m_palette.wood_line, kTube * 0.85F, shape, at, {0, 0, 0.02}, {0, 0, z});
  bar(m_palette.ink, kTube * 1.3F, shape, at, {0, 0, 0.004}, {0, 0, 0.016});
  bar(m_palette.wood_line, kTube * 1.2F, shape, at, {-0.025, 0, z}, {0.04, 0, z});
}

// Crumpled in a hand.
void PropPainter::cloth(const Vec3& hand) {
  constexpr int kPoints = 7;
  constexpr float kRadii[kPoints] = {0.036F, 0.028F, 0.04F, 0.03F, 0.042F, 0.027F, 0.034F};
  const DrawPoint at = m_eye.see(hand);
  DrawPoint rim[kPoints];
  for (int i = 0; i < kPoints; ++i) {
    const auto turn = static_cast<float>(2 * 3.14159265358979 * i / kPoints);
    rim[i] = {at.x + kRadii[i] * std::cos(turn), at.y + 0.006F + kRadii[i] * std::sin(turn)};
  }
  m_sketch.fillBlob(Layer::Prop, m_palette.cloth, rim, kPoints);
  DrawPoint closed[kPoints + 1];
  std::copy(rim, rim + kPoints, closed);
  closed[kPoints] = rim[0];
  m_sketch.curve(Layer::Prop, m_palette.ink, kThinLine * 1.5F, closed, kPoints + 1);
}

// It goes on from the hand.
void PropPainter::handMirror(const ArmPosture& arm) {
  const DrawPoint grip = m_eye.see(arm.grip);
  const DrawPoint middle = m_eye.see(arm.grip + unit(arm.tip - arm.wrist, {0, 0, -1}) * 0.09);
  m_sketch.line(Layer::Prop, m_palette.wood_line, kTube, grip, middle);
  m_sketch.beginGroup(Layer::Prop, m_palette.ink, kThinLine * 2);
  m_sketch.colour(m_palette.wood);
  m_sketch.disc({middle, 0.052F});
  m_sketch.colour(mixed(m_palette.sheet, m_palette.rail, 0.12));
  m_sketch.disc({middle, 0.04F});
  m_sketch.endGroup();
  m_sketch.line(Layer::Prop, m_palette.rail, kThinLine, {middle.x - 0.015F, middle.y + 0.005F},
                {middle.x + 0.008F, middle.y - 0.02F});
}

}  // namespace newel
