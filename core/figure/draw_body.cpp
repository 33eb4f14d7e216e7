#include "core/figure/draw_body.h"

#include <algorithm>
#include <cmath>

namespace newel {
namespace {

using namespace lengths;

// Far limbs are mixed this far toward the sheet, their line a little more.
constexpr double kFarFade = 0.42;
constexpr double kFarLine = 0.50;
// Looked at from less than this off the front or back, no side is the far one.
constexpr double kFrontal = 0.40;

double smoothStep(double from, double to, double value) {
  const double t = std::clamp((value - from) / (to - from), 0.0, 1.0);
  return t * t * (3 - 2 * t);
}

}  // namespace

BodyPainter::BodyPainter(Sketch& sketch, const Eye& eye, const Posture& posture,
                         const std::array<LimbState, 2>& limbs, const Palette& palette,
                         const BodyShape& shape, v1::HeadWear head)
    : m_sketch(sketch),
      m_eye(eye),
      m_posture(posture),
      m_limbs(limbs),
      m_palette(palette),
      m_shape(shape),
      m_head_wear(head) {
  const double toward = dot(posture.pelvis.y, eye.toward);
  m_near = toward >= 0 ? kSideA : kSideB;
  m_sidedness = std::fabs(toward);
  m_fade = kFarFade * smoothStep(kFrontal - 0.1, kFrontal + 0.25, m_sidedness);
}

Colour BodyPainter::tone(Colour colour, int side) const {
  return side == m_near ? colour : mixed(colour, m_palette.sheet, m_fade);
}
Colour BodyPainter::lineTone(int side) const {
  return side == m_near ? m_palette.ink : mixed(m_palette.ink, m_palette.sheet, m_fade * kFarLine / kFarFade);
}

// What an elliptic section shows across the trunk, seen from here.
Disc BodyPainter::section(const Vec3& at, const Turn& turn, const Section& size) const {
  const auto seen = [&](const Vec3& axis) { return 1 - std::pow(dot(axis, m_eye.toward), 2); };
  const double across = seen(turn.y);
  const double along = seen(turn.x);
  const double total = std::max(0.3, across + along);
  const double square = (size.breadth * size.breadth * across + size.depth * size.depth * along) / total;
  return disc(at, std::sqrt(square));
}

Vec3 BodyPainter::thighAt(int side, double share) const {
  return mix(m_posture.legs[side].hip, m_posture.legs[side].knee, share);
}
Vec3 BodyPainter::shankAt(int side, double share) const {
  return mix(m_posture.legs[side].knee, m_posture.legs[side].ankle, share);
}
double BodyPainter::thighRadiusAt(double share) const {
  return m_shape.thigh_top + (m_shape.thigh_end - m_shape.thigh_top) * share;
}

bool BodyPainter::showsLeg(int side) const {
  return !(m_limbs[side].bare() && remainingOf(m_limbs[side].level).thigh == 0);
}

// Where the shorts end; higher where a socket is to be seen.
double BodyPainter::hemOf(int side) const {
  const v1::LimbLossLevel level = m_limbs[side].level;
  const bool above =
      level == v1::LIMB_LOSS_LEVEL_TRANSFEMORAL || level == v1::LIMB_LOSS_LEVEL_KNEE_DISARTICULATION;
  return above ? 0.36 : 0.5;
}

Disc BodyPainter::hemDisc(int side) const {
  const LimbState& limb = m_limbs[side];
  const double hem = std::min(hemOf(side), limb.bare() ? remainingOf(limb.level).thigh - 0.15 : 1);
  return disc(thighAt(side, hem), thighRadiusAt(hem) + 0.007);
}

void BodyPainter::thighPieces(int side) {
  const LimbState& limb = m_limbs[side];
  const bool hip_lost = limb.level == v1::LIMB_LOSS_LEVEL_HIP_DISARTICULATION;
  if (hip_lost) {
    // A prosthesis from the hip down: bare metal from its joint to the knee.
    m_sketch.colour(tone(m_palette.metal, side));
    m_sketch.hull(disc(thighAt(side, 0.12), 0.019), disc(thighAt(side, 0.9), 0.015));
    return;
  }
  const double end = limb.bare() ? remainingOf(limb.level).thigh : 1;
  const bool device = limb.prosthetic() && remainingOf(limb.level).shank == 0;
  m_sketch.colour(tone(m_palette.skin, side));
  if (!device) {
    const double round = end < 1 ? 0.9 : 1;
    m_sketch.hull(disc(m_posture.legs[side].hip, m_shape.thigh_top),
                  disc(thighAt(side, end), thighRadiusAt(end) * round));
  }
}

void BodyPainter::socket(int side, const Disc& a, const Disc& b) {
  m_sketch.colour(tone(m_palette.pale_brass, side));
  m_sketch.hull(a, b);
}

void BodyPainter::kneeBlock(int side) {
  const LimbState& limb = m_limbs[side];
  const LegPosture& leg = m_posture.legs[side];
  m_sketch.colour(tone(mixed(m_palette.metal, m_palette.ink, 0.35), side));
  const double from = limb.level == v1::LIMB_LOSS_LEVEL_KNEE_DISARTICULATION ? 0.97 : 0.86;
  // A yielding knee carries its cylinder down the shank; a plain or locked one is short.
  const double to = limb.knee == v1::KNEE_KIND_YIELDING ? 0.42 : 0.16;
  m_sketch.hull(disc(thighAt(side, from), 0.021), disc(leg.knee, 0.025));
  m_sketch.hull(disc(leg.knee, 0.025), disc(shankAt(side, to), 0.0185));
}

void BodyPainter::pylon(int side, double from) {
  const LegPosture& leg = m_posture.legs[side];
  m_sketch.colour(tone(m_palette.metal, side));
  m_sketch.hull(disc(shankAt(side, from), 0.0115), disc(shankAt(side, 0.9), 0.0115));
  m_sketch.hull(disc(shankAt(side, 0.9), 0.0125),
                disc(leg.ankle + leg.foot * Vec3{0.002, 0, -0.012}, 0.0195));
}

void BodyPainter::shankPieces(int side) {
  const LimbState& limb = m_limbs[side];
  const LegPosture& leg = m_posture.legs[side];
  const Remaining left = remainingOf(limb.level);
  if (left.shank == 0) {
    if (!limb.prosthetic()) return;
    pylon(side, 0.1);
    if (left.thigh > 0) {
      const bool whole = left.thigh == 1;
      const double end = whole ? 0.95 : 0.78;
      socket(side, disc(thighAt(side, 0.16), m_shape.thigh_top + 0.003),
             disc(thighAt(side, end), whole ? m_shape.thigh_end + 0.004 : m_shape.thigh_end * 0.86));
    }
    kneeBlock(side);
    return;
  }
  const double end = limb.bare() ? left.shank : 1;
  m_sketch.colour(tone(m_palette.skin, side));
  const Vec3 calf = shankAt(side, 0.27) + leg.shank * Vec3{-0.006, 0, 0};
  if (!limb.lost() || left.shank == 1) {
    m_sketch.hull(disc(leg.knee, m_shape.knee), disc(calf, m_shape.calf));
    m_sketch.hull(disc(calf, m_shape.calf),
                  disc(leg.ankle, limb.lost() && left.foot == 0 ? 0.026 : m_shape.ankle));
  } else {
    m_sketch.hull(disc(leg.knee, m_shape.knee),
                  disc(shankAt(side, std::min(end, left.shank)), m_shape.calf * 0.86));
  }
  if (!limb.prosthetic() || left.foot > 0) return;
  if (left.shank < 1) pylon(side, 0.58);
  const double socket_end = left.shank < 1 ? 0.60 : 0.96;
  socket(side, disc(shankAt(side, 0.1), m_shape.calf + 0.006),
         disc(shankAt(side, socket_end), left.shank < 1 ? m_shape.calf * 0.78 : 0.030));
}

void BodyPainter::shoePieces(int side) {
  const LimbState& limb = m_limbs[side];
  const LegPosture& leg = m_posture.legs[side];
  const double left = remainingOf(limb.level).foot;
  if (limb.bare() && left == 0) return;
  const auto at = [&](double x, double up) { return leg.ankle + leg.foot * Vec3{x, 0, up - kFootHeight}; };
  const Vec3 toe = leg.ball + (leg.toe - leg.ball) * (1 - m_shape.toe / (kToe - kBall));
  const Vec3 lift = leg.foot.z;
  if (limb.bare()) {
    // The front of the foot is gone: what is there ends round.
    m_sketch.colour(tone(m_palette.skin, side));
    m_sketch.hull(disc(at(-kHeel + m_shape.heel, m_shape.heel), m_shape.heel),
                  disc(at(kBall * 0.45, 0.019), 0.019));
    m_sketch.hull(disc(leg.ankle, m_shape.ankle), disc(at(kBall * 0.40, 0.02), 0.02));
    return;
  }
  m_sketch.colour(tone(m_palette.shoe, side));
  const Disc heel = disc(at(-kHeel + m_shape.heel, m_shape.heel), m_shape.heel);
  const Disc ball = disc(leg.ball + lift * m_shape.ball, m_shape.ball);
  m_sketch.hull(heel, ball);
  m_sketch.hull(ball, disc(toe + lift * m_shape.toe, m_shape.toe));
  m_sketch.hull(disc(at(-0.004, 0.026), 0.0205), ball);
  m_sketch.hull(disc(at(-0.008, 0.028), 0.020), heel);
}

void BodyPainter::pelvisPieces() {
  m_sketch.colour(m_palette.shorts);
  m_sketch.hull(disc(mix(m_posture.hips, m_posture.legs[kSideA].hip, 0.75), m_shape.hip),
                disc(mix(m_posture.hips, m_posture.legs[kSideB].hip, 0.75), m_shape.hip));
  // The seat.
  m_sketch.hull(section(m_posture.hips + m_posture.pelvis * Vec3{-0.008, 0, 0.004}, m_posture.pelvis,
                        {m_shape.hip, m_shape.hips.depth}),
                section(m_posture.hips + m_posture.pelvis * Vec3{0, 0, 0.017}, m_posture.pelvis,
                        {m_shape.hip * 0.7, m_shape.waist.depth * 0.8}));
}

void BodyPainter::legPieces(int side) {
  if (!showsLeg(side)) return;
  const LegPosture& leg = m_posture.legs[side];
  const LimbState& limb = m_limbs[side];
  thighPieces(side);
  shankPieces(side);
  shoePieces(side);
  if (limb.level == v1::LIMB_LOSS_LEVEL_HIP_DISARTICULATION) return;
  m_sketch.colour(tone(m_palette.shorts, side));
  m_sketch.hull(disc(leg.hip, m_shape.hip), hemDisc(side));
}

// Hatching and the small lines, over the fills.
void BodyPainter::legDetails(int side) {
  const LimbState& limb = m_limbs[side];
  if (!limb.prosthetic()) return;
  const Layer layer = side == m_near ? Layer::NearLeg : Layer::FarLeg;
  const Colour brass = tone(m_palette.brass, side);
  const Colour line = lineTone(side);
  const LegPosture& leg = m_posture.legs[side];
  const Remaining left = remainingOf(limb.level);
  const auto hatch = [&](const Disc& a, const Disc& b) {
    m_sketch.hatch(layer, brass, 0.006F, 0.0155F, a, b);
  };
  // A brim across the limb where the socket begins.
  const auto across = [&](const Vec3& at, const Turn& turn, double radius) {
    const Vec3 aside = cross(turn.z, m_eye.toward);
    if (length(aside) < 0.3) return;
    const Vec3 half = unit(aside, turn.y) * radius;
    m_sketch.line(layer, line, kThinLine, m_eye.see(at - half), m_eye.see(at + half));
  };
  if (left.foot > 0) {
    const Vec3 up = leg.foot.z * m_shape.ball;
    hatch(disc(leg.ball - leg.foot.x * 0.03 + up, m_shape.ball), disc(leg.ball + up, m_shape.ball * 0.98));
    return;
  }
  if (left.shank == 1) {
    hatch(disc(shankAt(side, 0.13), m_shape.calf + 0.003), disc(shankAt(side, 0.94), 0.027));
    across(shankAt(side, 0.07), leg.shank, m_shape.calf + 0.003);
  } else if (left.shank > 0) {
    hatch(disc(shankAt(side, 0.13), m_shape.calf + 0.003), disc(shankAt(side, 0.585), m_shape.calf * 0.75));
    across(shankAt(side, 0.05), leg.shank, m_shape.calf + 0.003);
  } else if (left.thigh > 0) {
    const bool whole = left.thigh == 1;
    const double hem = hemOf(side) + 0.1;
    const double end = whole ? 0.94 : 0.76;
    hatch(disc(thighAt(side, hem), thighRadiusAt(hem) - 0.001),
          disc(thighAt(side, end), whole ? m_shape.thigh_end : m_shape.thigh_end * 0.82));
    // The cloth lies over the socket's upper end.
    m_sketch.fillHull(layer, tone(m_palette.shorts, side), disc(leg.hip, m_shape.hip), hemDisc(side));
    m_sketch.fillDisc(layer, tone(m_palette.metal, side), disc(leg.knee, 0.008));
  } else {
    m_sketch.fillDisc(layer, tone(m_palette.metal, side), disc(leg.knee, 0.008));
    hatch(disc(mix(m_posture.hips, leg.hip, 0.75), m_shape.hip * 0.86),
          disc(leg.hip + leg.thigh.x * 0.004, m_shape.hip * 0.8));
  }
  // A locked knee shows its bolt.
  if (left.shank == 0 && limb.knee == v1::KNEE_KIND_LOCKED) across(leg.knee, leg.thigh, 0.021);
}

void BodyPainter::drawFarLeg() {
  const int far = 1 - m_near;
  if (m_sidedness < kFrontal || !showsLeg(far)) return;
  m_sketch.beginGroup(Layer::FarLeg, lineTone(far), kOutline * 2);
  if (m_limbs[far].level == v1::LIMB_LOSS_LEVEL_HIP_DISARTICULATION) {
    m_sketch.colour(tone(m_palette.pale_brass, far));
    m_sketch.disc(disc(m_posture.legs[far].hip, m_shape.hip));
  }
  legPieces(far);
  m_sketch.endGroup();
  legDetails(far);
}

void BodyPainter::drawNearLeg() {
  const int far = 1 - m_near;
  m_sketch.beginGroup(Layer::NearLeg, m_palette.ink, kOutline * 2);
  if (m_sidedness < kFrontal) legPieces(far);
  const bool hip_lost = m_limbs[m_near].level == v1::LIMB_LOSS_LEVEL_HIP_DISARTICULATION;
  if (hip_lost && m_limbs[m_near].prosthetic()) {
    legPieces(m_near);
    pelvisPieces();
    m_sketch.colour(m_palette.pale_brass);
    m_sketch.hull(disc(mix(m_posture.hips, m_posture.legs[m_near].hip, 0.75), m_shape.hip * 0.95),
                  disc(m_posture.legs[m_near].hip, m_shape.hip * 0.9));
  } else {
    pelvisPieces();
    legPieces(m_near);
  }
  m_sketch.endGroup();
  if (m_sidedness < kFrontal) legDetails(far);
  legDetails(m_near);
}

void BodyPainter::drawTrunk() {
  const Posture& p = m_posture;
  m_sketch.beginGroup(Layer::Trunk, m_palette.ink, kOutline * 2);
  m_sketch.colour(m_head_wear == v1::HEAD_WEAR_SCARF ? m_palette.cloth : m_palette.skin);
  m_sketch.hull(disc(p.neck - p.chest.z * 0.01, m_shape.neck),
                disc(mix(p.neck, p.head, 0.6), m_shape.neck * 0.95));
  m_sketch.colour(m_palette.shirt);
  const Vec3 top = p.neck - p.chest.z * 0.034;
  m_sketch.hull(section(p.hips + p.pelvis.z * 0.03, p.pelvis, m_shape.waist),
                section(p.waist, p.belly, m_shape.waist));
  m_sketch.hull(section(p.waist, p.belly, m_shape.waist), section(p.ribs, p.chest, m_shape.ribs));
  m_sketch.hull(section(p.ribs, p.chest, m_shape.ribs),
                section(top, p.chest, {m_shape.chest.breadth * 0.9, m_shape.chest.depth}));
  for (int side = 0; side < 2; ++side) {
    const Vec3 shoulder = p.arms[side].shoulder;
    m_sketch.hull(disc(p.neck - p.chest.z * 0.012, m_shape.shoulder * 0.95),
                  disc(shoulder, m_shape.shoulder * 1.01));
    m_sketch.hull(disc(shoulder, m_shape.shoulder * 0.8),
                  section(p.ribs, p.chest, {m_shape.ribs.breadth * 0.9, m_shape.ribs.depth * 0.9}));
  }
  m_sketch.endGroup();
}

void BodyPainter::drawArm(int side) {
  const ArmPosture& arm = m_posture.arms[side];
  const Layer layer = side == m_near ? Layer::NearArm : Layer::FarArm;
  m_sketch.beginGroup(layer, lineTone(side), kOutline * 2);
  m_sketch.colour(tone(m_palette.skin, side));
  const auto hand = [&](double along, double forward) {
    return arm.wrist + arm.hand * Vec3{forward, 0, -along};
  };
  if (arm.closed) {
    m_sketch.hull(disc(arm.wrist, m_shape.wrist), disc(hand(0.035, 0), m_shape.palm));
    m_sketch.hull(disc(hand(0.035, 0), m_shape.palm), disc(hand(0.05, 0), m_shape.palm * 1.05));
  } else {
    m_sketch.hull(disc(arm.wrist, m_shape.wrist), disc(hand(0.045, 0), m_shape.palm * 0.92));
    m_sketch.hull(disc(hand(0.045, 0), m_shape.palm * 0.9), disc(hand(kHand - 0.02, 0.004), m_shape.fingers));
    m_sketch.hull(disc(hand(0.02, 0.008), 0.010), disc(hand(0.056, 0.026), 0.0075));
  }
  m_sketch.hull(disc(arm.elbow, m_shape.elbow), disc(arm.wrist, m_shape.wrist));
  m_sketch.hull(disc(arm.shoulder, m_shape.upper_arm), disc(arm.elbow, m_shape.elbow));
  m_sketch.colour(tone(m_palette.shirt, side));
  m_sketch.hull(disc(arm.shoulder, m_shape.shoulder),
                disc(mix(arm.shoulder, arm.elbow, 0.56), m_shape.upper_arm + 0.002));
  m_sketch.endGroup();
  if (!arm.closed) return;
  // Fingers round what is held.
  for (const double at : {0.034, 0.046}) {
    m_sketch.line(layer, lineTone(side), kThinLine * 0.8F, m_eye.see(hand(at, 0.002)),
                  m_eye.see(hand(at + 0.006, 0.016)));
  }
}

DrawPoint BodyPainter::letterPlace(int side) const {
  const LegPosture& leg = m_posture.legs[side];
  if (remainingOf(m_limbs[side].level).thigh == 0) return m_eye.see(mix(m_posture.hips, leg.hip, 0.8));
  return m_eye.see(thighAt(side, 0.16));
}

}  // namespace newel
