#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "core/figure/draw_body.h"

namespace newel {
namespace {

// Half axes of the head: front to back, side to side, crown to chin.
constexpr double kDeep = 0.058;
constexpr double kWide = 0.049;
constexpr double kTall = lengths::kHeadHeight / 2 + 0.001;
constexpr int kRound = 28;
constexpr std::size_t kOutlinePoints = 56;
constexpr std::size_t kCapPoints = 84;  // a rim and an outline

}  // namespace

Vec3 BodyPainter::headPoint(const Vec3& direction) const {
  const Vec3 d = unit(direction, {1, 0, 0});
  return m_posture.head + m_posture.skull * Vec3{d.x * kDeep, d.y * kWide, d.z * kTall};
}

// The visible part of a cap of the head, as a polygon: the seen part of its rim, closed along the head's own
// outline where the rim goes out of sight.
void BodyPainter::headCap(const Vec3& direction, double angle_deg, Colour fill) {
  const Vec3 axis = unit(direction, {1, 0, 0});
  const Turn round = turnFrom(axis, std::fabs(axis.z) < 0.9 ? Vec3{0, 0, 1} : Vec3{1, 0, 0});
  const double s = std::sin(radians(angle_deg));
  const double c = std::cos(radians(angle_deg));
  // In the head's own round space the eye looks along this; a point is seen where it leans toward it.
  const Vec3 eye_in = inverse(m_posture.skull) * m_eye.toward;
  const Vec3 eye = unit({eye_in.x * kDeep, eye_in.y * kWide, eye_in.z * kTall}, {0, 1, 0});
  const auto rim = [&](int i) {
    const double a = 2 * std::numbers::pi * i / kRound;
    return axis * c + (round.x * std::cos(a) + round.y * std::sin(a)) * s;
  };
  std::array<DrawPoint, kCapPoints> points;
  std::size_t count = 0;
  int first = -1;
  int seen = 0;
  for (int i = 0; i < kRound; ++i) {
    if (dot(rim(i), eye) <= 0) continue;
    ++seen;
    if (dot(rim((i + kRound - 1) % kRound), eye) <= 0) first = i;
  }
  if (seen == 0 && dot(axis, eye) <= 0 && angle_deg <= 90) return;
  const Turn outline = turnFrom(eye, round.x);
  if (seen == 0) {
    // The whole visible side of the head is inside the cap (or none of it).
    if (dot(axis, eye) < c) return;
    for (int i = 0; i < kRound; ++i) {
      const double a = 2 * std::numbers::pi * i / kRound;
      points[count++] = m_eye.see(headPoint(outline.x * std::cos(a) + outline.y * std::sin(a)));
    }
    m_sketch.fillPolygon(Layer::Head, fill, points.data(), count);
    return;
  }
  if (first < 0) {
    for (int i = 0; i < kRound; ++i) points[count++] = m_eye.see(headPoint(rim(i)));
    m_sketch.fillPolygon(Layer::Head, fill, points.data(), count);
    return;
  }
  const auto angleOf = [&](const Vec3& p) { return std::atan2(dot(p, outline.y), dot(p, outline.x)); };
  for (int i = 0; i < seen; ++i) points[count++] = m_eye.see(headPoint(rim((first + i) % kRound)));
  // Back along the outline, the way round that lies in the cap.
  const double from = angleOf(rim((first + seen - 1) % kRound));
  double to = angleOf(rim(first));
  const double pi = std::numbers::pi;
  while (to < from) to += 2 * pi;
  const double middle = (from + to) / 2;
  const Vec3 half = outline.x * std::cos(middle) + outline.y * std::sin(middle);
  if (dot(half, axis) < c) to -= 2 * pi;
  for (int i = 0; i <= kRound; ++i) {
    const double a = from + (to - from) * i / kRound;
    points[count++] = m_eye.see(headPoint(outline.x * std::cos(a) + outline.y * std::sin(a)));
  }
  m_sketch.fillPolygon(Layer::Head, fill, points.data(), count);
}

void BodyPainter::drawHead() {
  const Posture& p = m_posture;
  // The outline is the ellipse that the head's three axes throw on the picture.
  const Vec3 eye_in = inverse(p.skull) * m_eye.toward;
  const Vec3 eye = unit({eye_in.x * kDeep, eye_in.y * kWide, eye_in.z * kTall}, {0, 1, 0});
  const Turn outline = turnFrom(eye, std::fabs(eye.z) < 0.9 ? Vec3{0, 0, 1} : Vec3{1, 0, 0});
  std::array<DrawPoint, kOutlinePoints> points;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const double a = 2 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(points.size());
    points[i] = m_eye.see(headPoint(outline.x * std::cos(a) + outline.y * std::sin(a)));
  }
  const bool scarf = m_head_wear == v1::HEAD_WEAR_SCARF;
  const Vec3 nose = p.head + p.skull * Vec3{kDeep + 0.007, 0, -0.012};
  const Vec3 bridge = p.head + p.skull * Vec3{kDeep - 0.012, 0, -0.002};
  const bool nose_beside = std::fabs(dot(p.skull.x, m_eye.toward)) < 0.85;
  m_sketch.beginGroup(Layer::Head, m_palette.ink, kOutline * 2);
  m_sketch.colour(m_palette.skin);
  if (nose_beside) m_sketch.hull({m_eye.see(bridge), 0.012F}, {m_eye.see(nose), 0.0065F});
  if (scarf) {
    // The cloth falls to the shoulders.
    m_sketch.colour(m_palette.cloth);
    m_sketch.hull({m_eye.see(p.head + p.skull * Vec3{-0.016, 0, -0.025}), 0.048F},
                  {m_eye.see(p.neck + p.chest * Vec3{-0.006, 0, 0.016}), 0.05F});
  }
  m_sketch.polygon(points.data(), points.size());
  m_sketch.endGroup();
  if (scarf) {
    headCap({1, 0, -0.12}, 52, m_palette.skin);
    if (nose_beside && dot(p.skull.x, m_eye.toward) > -0.5) {
      m_sketch.fillDisc(Layer::Head, m_palette.skin, {m_eye.see(mix(bridge, nose, 0.6)), 0.0085F});
    }
  } else if (m_head_wear != v1::HEAD_WEAR_NONE) {
    headCap({-0.74, 0, 0.68}, 83, m_palette.hair);
  }
  // An ear on the near side of the face tells front from back.
  for (const double side : {1.0, -1.0}) {
    if (scarf || side * dot(p.skull.y, m_eye.toward) < 0.35) continue;
    const DrawPoint ear = m_eye.see(p.head + p.skull * Vec3{-0.006, side * kWide, -0.008});
    m_sketch.fillDisc(Layer::Head, mixed(m_palette.skin, m_palette.ink, 0.35), {ear, 0.0105F});
    m_sketch.fillDisc(Layer::Head, m_palette.skin, {ear, 0.0075F});
  }
}

}  // namespace newel
