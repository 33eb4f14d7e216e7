#include <algorithm>
#include <cmath>

#include "core/figure/draw_body.h"
#include "core/figure/draw_props.h"

namespace newel {
namespace {

constexpr float kBar = 0.011F;
// Half of what an endless thing shows round the place the eye looks at.
constexpr double kOutOfSight = 1.6;
constexpr double kBoard = 0.3;

}  // namespace

DrawPoint PropPainter::see(const PropShape& shape, const Vec3& at, double x, double y, double z) const {
  return m_eye.see(at + aboutZ(shape.turn_deg) * Vec3{x, y, z});
}

bool PropPainter::looksAtEye(const PropShape& shape, const Vec3& normal) const {
  return dot(aboutZ(shape.turn_deg) * normal, m_eye.toward) > 0.02;
}

void PropPainter::quad(Layer layer, Colour fill, Colour line, const PropShape& shape, const Vec3& at,
                       const Vec3 (&corners)[4]) {
  DrawPoint points[4];
  for (int i = 0; i < 4; ++i) points[i] = see(shape, at, corners[i].x, corners[i].y, corners[i].z);
  if (fill == line) return m_sketch.fillPolygon(layer, fill, points, 4);
  m_sketch.outlinedPolygon(layer, fill, line, kThinLine, points, 4);
}

void PropPainter::bar(Colour colour, float width, const PropShape& shape, const Vec3& at, const Vec3& a,
                      const Vec3& b) {
  m_sketch.line(Layer::Prop, colour, width, see(shape, at, a.x, a.y, a.z), see(shape, at, b.x, b.y, b.z));
}

void PropPainter::box(Colour fill, const PropShape& shape, const Vec3& at, const Vec3& low,
                      const Vec3& high) {
  const Colour line = m_palette.wood_line;
  const Colour shade = mixed(fill, m_palette.wood_line, 0.18);
  const Colour light = mixed(fill, m_palette.sheet, 0.35);
  if (looksAtEye(shape, {0, 1, 0})) {
    quad(Layer::Prop, fill, line, shape, at,
         {{low.x, high.y, low.z}, {high.x, high.y, low.z}, high, {low.x, high.y, high.z}});
  }
  if (looksAtEye(shape, {0, -1, 0})) {
    quad(Layer::Prop, fill, line, shape, at,
         {low, {high.x, low.y, low.z}, {high.x, low.y, high.z}, {low.x, low.y, high.z}});
  }
  if (looksAtEye(shape, {1, 0, 0})) {
    quad(Layer::Prop, shade, line, shape, at,
         {{high.x, low.y, low.z}, {high.x, high.y, low.z}, high, {high.x, low.y, high.z}});
  }
  if (looksAtEye(shape, {-1, 0, 0})) {
    quad(Layer::Prop, shade, line, shape, at,
         {low, {low.x, high.y, low.z}, {low.x, high.y, high.z}, {low.x, low.y, high.z}});
  }
  quad(Layer::Prop, light, line, shape, at,
       {{low.x, low.y, high.z}, {high.x, low.y, high.z}, high, {low.x, high.y, high.z}});
}

void PropPainter::seat(const PropShape& shape, const Vec3& at) {
  const double x = shape.length / 2;
  const double y = shape.width / 2;
  box(m_palette.wood, shape, at, {-x, -y, shape.height - 0.022}, {x, y, shape.height});
}

void PropPainter::back(const PropShape& shape, const Vec3& at) {
  const double x = -shape.length / 2;
  const double y = shape.width / 2;
  const Colour line = m_palette.wood_line;
  bar(line, kBar, shape, at, {x, -y, shape.height}, {x - 0.012, -y, kChairBack});
  bar(line, kBar, shape, at, {x, y, shape.height}, {x - 0.012, y, kChairBack});
  quad(Layer::Prop, m_palette.wood, line, shape, at,
       {{x - 0.006, -y, shape.height + 0.11},
        {x - 0.006, y, shape.height + 0.11},
        {x - 0.012, y, kChairBack},
        {x - 0.012, -y, kChairBack}});
  bar(line, kBar * 1.3F, shape, at, {x - 0.012, -y, kChairBack}, {x - 0.012, y, kChairBack});
}

void PropPainter::chair(const PropShape& shape, const Vec3& at) {
  const double x = shape.length / 2 - 0.008;
  const double y = shape.width / 2 - 0.008;
  const double top = shape.height - 0.02;
  const Colour line = m_palette.wood_line;
  const bool back_first = looksAtEye(shape, {1, 0, 0});
  if (back_first && shape.kind == v1::PROP_KIND_CHAIR) back(shape, at);
  for (const double sx : {-1.0, 1.0}) {
    for (const double sy : {-1.0, 1.0})
      bar(line, kBar, shape, at, {sx * x, sy * y, top}, {sx * x, sy * y, 0.006});
  }
  seat(shape, at);
  if (!back_first && shape.kind == v1::PROP_KIND_CHAIR) back(shape, at);
}

void PropPainter::rollingChair(const PropShape& shape, const Vec3& at) {
  const Colour line = m_palette.wood_line;
  const bool back_first = looksAtEye(shape, {1, 0, 0});
  for (int i = 0; i < 5; ++i) {
    const double a = radians(36 + 72.0 * i);
    const Vec3 end{0.125 * std::cos(a), 0.125 * std::sin(a), 0.032};
    bar(line, kBar, shape, at, {0, 0, 0.05}, end);
    m_sketch.fillDisc(Layer::Prop, m_palette.ink, {see(shape, at, end.x, end.y, 0.016), 0.016F});
    m_sketch.fillDisc(Layer::Prop, m_palette.wood, {see(shape, at, end.x, end.y, 0.016), 0.006F});
  }
  bar(line, kBar * 1.8F, shape, at, {0, 0, 0.05}, {0, 0, shape.height - 0.02});
  if (back_first) back(shape, at);
  seat(shape, at);
  if (!back_first) back(shape, at);
}

void PropPainter::rail(const PropShape& shape, const Vec3& at) {
  double from = -shape.length / 2;
  double to = shape.length / 2;
  double spacing = shape.length;
  const double slope = shape.rise / shape.length;
  if (shape.endless) {
    // Posts stay where they are in the world; more of them come into sight as the view follows.
    spacing = repeatOf(shape.length / 2);
    const double here = std::round((m_eye.shift.x - at.x) / spacing) * spacing;
    from = here - 4 * spacing;
    to = here + 4 * spacing;
  }
  for (double x = from; x <= to + 1e-9; x += spacing) {
    bar(m_palette.rail, kBar * 0.8F, shape, at, {x, 0, slope * x}, {x, 0, shape.height + slope * x});
  }
  // Piece by piece: one long slanting line is dear to paint.
  const double piece = shape.endless ? spacing : to - from;
  for (double x = from; x < to - 1e-9; x += piece) {
    bar(m_palette.rail, kBar * 1.9F, shape, at, {x, 0, shape.height + slope * x},
        {x + piece, 0, shape.height + slope * (x + piece)});
  }
}

void PropPainter::stairs(const PropShape& shape, const Vec3& at) {
  const double y = shape.width / 2;
  int first = 0;
  int last = 3;
  if (shape.endless) {
    const int here = static_cast<int>(std::floor((m_eye.shift.x - at.x) / shape.length));
    first = here - 5;
    last = here + 6;
  }
  const double near_y = looksAtEye(shape, {0, 1, 0}) ? y : -y;
  const bool risers = looksAtEye(shape, {shape.rise > 0 ? -1.0 : 1.0, 0, 0});
  const auto step = [&](int k) {
    const double x0 = k * shape.length;
    const double x1 = x0 + shape.length;
    const double z = (k + 1) * shape.rise;
    const double below =
        shape.endless ? z - 3 * std::fabs(shape.rise) : std::min(0.0, (last + 2) * shape.rise);
    quad(Layer::Prop, m_palette.pale_wood, m_palette.pale_wood, shape, at,
         {{x0, near_y, below}, {x1, near_y, below}, {x1, near_y, z}, {x0, near_y, z}});
    if (risers) {
      const double x = shape.rise > 0 ? x0 : x1;
      quad(Layer::Prop, mixed(m_palette.wood, m_palette.wood_line, 0.12), m_palette.wood_line, shape, at,
           {{x, -y, z - std::fabs(shape.rise)}, {x, y, z - std::fabs(shape.rise)}, {x, y, z}, {x, -y, z}});
    }
    quad(Layer::Prop, mixed(m_palette.pale_wood, m_palette.sheet, 0.45), m_palette.wood_line, shape, at,
         {{x0, -y, z}, {x1, -y, z}, {x1, y, z}, {x0, y, z}});
    const Vec3 corner{shape.rise > 0 ? x0 : x1, near_y, z - std::fabs(shape.rise)};
    const Vec3 edge{corner.x, near_y, z};
    bar(m_palette.wood_line, kThinLine, shape, at, corner, edge);
    bar(m_palette.wood_line, kThinLine, shape, at, {x0, near_y, z}, {x1, near_y, z});
  };
  // Steps further from the eye first.
  const bool up_is_far = dot(aboutZ(shape.turn_deg).x, m_eye.toward) < 0;
  for (int i = first; i <= last; ++i) step(up_is_far ? last + first - i : i);
}

void PropPainter::ramp(const PropShape& shape, const Vec3& at) {
  const double y = shape.width / 2;
  const double slope = shape.rise / shape.length;
  double from = 0;
  double to = shape.length;
  if (shape.endless) {
    from = m_eye.shift.x - at.x - kOutOfSight;
    to = m_eye.shift.x - at.x + kOutOfSight;
  }
  const double near_y = looksAtEye(shape, {0, 1, 0}) ? y : -y;
  const double low = shape.endless ? std::min(from * slope, to * slope) - 0.1 : std::min(0.0, shape.rise);
  quad(Layer::Prop, m_palette.pale_wood, m_palette.wood_line, shape, at,
       {{from, near_y, low}, {to, near_y, low}, {to, near_y, to * slope}, {from, near_y, from * slope}});
  quad(Layer::Prop, mixed(m_palette.pale_wood, m_palette.sheet, 0.45), m_palette.wood_line, shape, at,
       {{from, -y, from * slope}, {to, -y, to * slope}, {to, y, to * slope}, {from, y, from * slope}});
  // Joints of the slabs show that the ground moves by.
  const double board = repeatOf(kBoard);
  for (double x = std::ceil(from / board) * board; x < to; x += board) {
    bar(m_palette.floor_line, kThinLine, shape, at, {x, -y, x * slope}, {x, y, x * slope});
  }
}

void PropPainter::counter(const PropShape& shape, const Vec3& at) {
  double from = -shape.width / 2;
  double to = shape.width / 2;
  if (shape.endless) {
    const double here = dot(m_eye.shift - at, aboutZ(shape.turn_deg).y);
    from = here - kOutOfSight;
    to = here + kOutOfSight;
  }
  const double top = shape.height;
  const double thick = 0.028;
  box(m_palette.pale_wood, shape, at, {0.03, from + 0.02, 0.02}, {shape.length, to - 0.02, top - thick});
  box(m_palette.wood, shape, at, {0, from, top - thick}, {shape.length, to, top});
}

void PropPainter::roll(const PropShape& shape, const Vec3& at) {
  const Vec3 half = aboutZ(shape.turn_deg) * Vec3{0, shape.width / 2, 0};
  const auto radius = static_cast<float>(shape.height / 2);
  const bool a_near = dot(half, m_eye.toward) > 0;
  const Disc near{m_eye.see(at + (a_near ? half : -half)), radius};
  m_sketch.beginGroup(Layer::Prop, m_palette.wood_line, kThinLine * 2);
  m_sketch.colour(m_palette.wood);
  m_sketch.hull(near, {m_eye.see(at - (a_near ? half : -half)), radius});
  m_sketch.endGroup();
  // Its rolled-up end.
  m_sketch.beginGroup(Layer::Prop, m_palette.wood_line, kThinLine);
  m_sketch.colour(m_palette.pale_wood);
  m_sketch.disc({near.at, radius * 0.92F});
  m_sketch.disc({near.at, radius * 0.62F});
  m_sketch.endGroup();
  DrawPoint spiral[12];
  for (int i = 0; i < 12; ++i) {
    const double a = i * 0.95;
    const double r = radius * 0.85 * (1 - i / 13.0);
    spiral[i] = {static_cast<float>(near.at.x + r * std::cos(a)),
                 static_cast<float>(near.at.y + r * std::sin(a))};
  }
  m_sketch.curve(Layer::Prop, m_palette.wood_line, kThinLine * 0.8F, spiral, 12);
}

void PropPainter::flat(const PropShape& shape, const Vec3& at) {
  Vec3 low{-shape.length / 2, -shape.width / 2, 0};
  Vec3 high = -low;
  if (shape.kind == v1::PROP_KIND_MAT) {
    low.z = -0.018;
    box(m_palette.pale_wood, shape, at, low, high);
    return;
  }
  // What is endless runs on the way the body goes.
  const bool ahead = std::fabs(m_scene.travel.x) >= std::fabs(m_scene.travel.y);
  double& from = ahead ? low.x : low.y;
  double& to = ahead ? high.x : high.y;
  if (shape.endless) {
    const Vec3 here = inverse(aboutZ(shape.turn_deg)) * (m_eye.shift - at);
    from = (ahead ? here.x : here.y) - kOutOfSight;
    to = (ahead ? here.x : here.y) + kOutOfSight;
  }
  const bool line = shape.kind == v1::PROP_KIND_LINE;
  quad(Layer::Ground, line ? m_palette.rail : m_palette.floor, line ? m_palette.rail : m_palette.floor_line,
       shape, at, {{low.x, low.y, 0}, {high.x, low.y, 0}, {high.x, high.y, 0}, {low.x, high.y, 0}});
  if (!shape.endless || line) return;
  // Boards show that the ground moves by.
  const double board = repeatOf(kBoard);
  for (double x = std::ceil(from / board) * board; x < to; x += board) {
    const Vec3 a = ahead ? Vec3{x, low.y, 0} : Vec3{low.x, x, 0};
    const Vec3 b = ahead ? Vec3{x, high.y, 0} : Vec3{high.x, x, 0};
    bar(m_palette.floor_line, kThinLine, shape, at, a, b);
  }
}

void PropPainter::cushion(const PropShape& shape, const Vec3& at) {
  const double r = shape.height / 2;
  const double x = shape.length / 2 - r;
  const double y = shape.width / 2 - r;
  const auto round = [&](double px, double py) {
    return Disc{see(shape, at, px, py, r), static_cast<float>(r)};
  };
  m_sketch.beginGroup(Layer::Prop, m_palette.wood_line, kThinLine * 2);
  m_sketch.colour(m_palette.wood);
  for (const double side : {-y, y}) m_sketch.hull(round(-x, side), round(x, side));
  for (const double end : {-x, x}) m_sketch.hull(round(end, -y), round(end, y));
  m_sketch.endGroup();
}

void PropPainter::mirror(const PropShape& shape, const Vec3& at) {
  const double y = shape.width / 2;
  const double top = shape.height;
  constexpr double kFrame = 0.025;
  quad(Layer::Prop, m_palette.wood, m_palette.wood_line, shape, at,
       {{0, -y, 0.04}, {0, y, 0.04}, {0, y, top}, {0, -y, top}});
  quad(Layer::Prop, mixed(m_palette.sheet, m_palette.rail, 0.12), m_palette.wood_line, shape, at,
       {{0, -y + kFrame, 0.04 + kFrame},
        {0, y - kFrame, 0.04 + kFrame},
        {0, y - kFrame, top - kFrame},
        {0, -y + kFrame, top - kFrame}});
  bar(m_palette.on_rail, kThinLine, shape, at, {0, -y * 0.5, top * 0.55}, {0, y * 0.3, top * 0.8});
}

}  // namespace newel
