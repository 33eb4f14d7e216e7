#include "core/figure/sketch.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace newel {
namespace {

DrawPoint plus(DrawPoint a, double x, double y) {
  return {static_cast<float>(a.x + x), static_cast<float>(a.y + y)};
}

double gap(DrawPoint a, DrawPoint b) { return std::hypot(b.x - a.x, b.y - a.y); }

}  // namespace

void Sketch::move(DrawPoint p) {
  m_drawing.verbs.push_back(Verb::Move);
  m_drawing.points.push_back(p);
}
void Sketch::lineTo(DrawPoint p) {
  m_drawing.verbs.push_back(Verb::Line);
  m_drawing.points.push_back(p);
}
void Sketch::cubic(DrawPoint a, DrawPoint b, DrawPoint p) {
  m_drawing.verbs.push_back(Verb::Cubic);
  m_drawing.points.push_back(a);
  m_drawing.points.push_back(b);
  m_drawing.points.push_back(p);
}
void Sketch::close() { m_drawing.verbs.push_back(Verb::Close); }

// From the angle `from` to `to` (radians, `to` may pass a full turn), the pen already at the beginning.
void Sketch::arc(DrawPoint centre, float radius, double from, double to) {
  const int parts =
      std::max(1, static_cast<int>(std::ceil(std::fabs(to - from) / (std::numbers::pi / 2) - 1e-6)));
  const double step = (to - from) / parts;
  const double reach = 4.0 / 3 * std::tan(step / 4) * radius;
  for (int i = 0; i < parts; ++i) {
    const double a = from + step * i;
    const double b = a + step;
    const DrawPoint start = plus(centre, radius * std::cos(a), radius * std::sin(a));
    const DrawPoint end = plus(centre, radius * std::cos(b), radius * std::sin(b));
    cubic(plus(start, -reach * std::sin(a), reach * std::cos(a)),
          plus(end, reach * std::sin(b), -reach * std::cos(b)), end);
  }
}

void Sketch::hullPath(const Disc& a, const Disc& b) {
  const double apart = gap(a.at, b.at);
  const double pi = std::numbers::pi;
  if (apart <= std::fabs(a.radius - b.radius) + 1e-6) {
    const Disc& big = a.radius > b.radius ? a : b;
    move(plus(big.at, big.radius, 0));
    arc(big.at, big.radius, 0, 2 * pi);
    close();
    return;
  }
  const double axis = std::atan2(b.at.y - a.at.y, b.at.x - a.at.x);
  const double open = std::acos(std::clamp((a.radius - b.radius) / apart, -1.0, 1.0));
  move(plus(a.at, a.radius * std::cos(axis + open), a.radius * std::sin(axis + open)));
  arc(a.at, a.radius, axis + open, axis - open + 2 * pi);
  lineTo(plus(b.at, b.radius * std::cos(axis - open), b.radius * std::sin(axis - open)));
  arc(b.at, b.radius, axis - open, axis + open);
  close();
}

// Through all points, each tangent along its neighbours.
void Sketch::smoothPath(const DrawPoint* points, std::size_t count, bool closed) {
  move(points[0]);
  const std::size_t spans = closed ? count : count - 1;
  const auto at = [&](std::size_t i) { return points[closed ? i % count : std::min(i, count - 1)]; };
  for (std::size_t i = 0; i < spans; ++i) {
    const DrawPoint before = i == 0 ? (closed ? points[count - 1] : points[0]) : points[i - 1];
    const DrawPoint a = at(i);
    const DrawPoint b = at(i + 1);
    const DrawPoint after = at(i + 2);
    cubic(plus(a, (b.x - before.x) / 6, (b.y - before.y) / 6),
          plus(b, -(after.x - a.x) / 6, -(after.y - a.y) / 6), b);
  }
  if (closed) close();
}

Op& Sketch::add(OpKind kind, Layer layer, Colour colour, float width, std::uint32_t first_verb,
                std::uint32_t first_point) {
  Op op;
  op.kind = kind;
  op.layer = layer;
  op.colour = colour;
  op.width = width;
  op.first_verb = first_verb;
  op.first_point = first_point;
  op.verb_count = static_cast<std::uint32_t>(m_drawing.verbs.size()) - first_verb;
  m_drawing.ops.push_back(op);
  return m_drawing.ops.back();
}

void Sketch::beginGroup(Layer layer, Colour line, float width) {
  m_layer = layer;
  m_line = line;
  m_width = width;
  m_piece_count = 0;
}

void Sketch::beginPiece() {
  Piece& piece = m_pieces[m_piece_count];
  piece.fill = m_fill;
  piece.round = false;
  piece.first_verb = static_cast<std::uint32_t>(m_drawing.verbs.size());
  piece.first_point = static_cast<std::uint32_t>(m_drawing.points.size());
}

void Sketch::endPiece() {
  Piece& piece = m_pieces[m_piece_count];
  piece.verb_count = static_cast<std::uint32_t>(m_drawing.verbs.size()) - piece.first_verb;
  if (m_piece_count + 1 < m_pieces.size()) ++m_piece_count;
}

void Sketch::hull(const Disc& a, const Disc& b) {
  beginPiece();
  Piece& piece = m_pieces[m_piece_count];
  piece.round = true;
  piece.a = a;
  piece.b = b;
  hullPath(a, b);
  endPiece();
}

// All pieces run the same way round, or overlaps would cancel out.
void Sketch::polygon(const DrawPoint* points, std::size_t count) {
  double area = 0;
  for (std::size_t i = 0; i < count; ++i) {
    const DrawPoint& a = points[i];
    const DrawPoint& b = points[(i + 1) % count];
    area += a.x * b.y - b.x * a.y;
  }
  beginPiece();
  move(points[0]);
  for (std::size_t i = 1; i < count; ++i) lineTo(points[area > 0 ? i : count - i]);
  close();
  endPiece();
}

void Sketch::outlineGroup() {
  const Mark from = here();
  for (std::size_t i = 0; i < m_piece_count; ++i) {
    const Piece& piece = m_pieces[i];
    if (piece.round)
      hullPath({piece.a.at, piece.a.radius + m_width / 2}, {piece.b.at, piece.b.radius + m_width / 2});
  }
  if (here().verb > from.verb) add(OpKind::Fill, m_layer, m_line, 0, from.verb, from.point);
  for (std::size_t i = 0; i < m_piece_count; ++i) {
    const Piece& piece = m_pieces[i];
    if (piece.round) continue;
    Op& op = add(OpKind::Stroke, m_layer, m_line, m_width, piece.first_verb, piece.first_point);
    op.verb_count = piece.verb_count;
  }
}

void Sketch::endGroup() {
  if (m_piece_count == 0) return;
  if (m_width > 0) outlineGroup();
  std::size_t i = 0;
  while (i < m_piece_count) {
    std::size_t end = i + 1;
    while (end < m_piece_count && m_pieces[end].fill == m_pieces[i].fill) ++end;
    Op& op = add(OpKind::Fill, m_layer, m_pieces[i].fill, 0, m_pieces[i].first_verb, m_pieces[i].first_point);
    op.verb_count = m_pieces[end - 1].first_verb + m_pieces[end - 1].verb_count - m_pieces[i].first_verb;
    i = end;
  }
}

void Sketch::line(Layer layer, Colour ink, float width, DrawPoint a, DrawPoint b) {
  const DrawPoint points[] = {a, b};
  polyline(layer, ink, width, points, 2, false);
}

void Sketch::polyline(Layer layer, Colour ink, float width, const DrawPoint* points, std::size_t count,
                      bool closed) {
  const Mark from = here();
  for (std::size_t i = 0; i + (closed ? 0 : 1) < count; ++i)
    segment(width, points[i], points[(i + 1) % count]);
  add(OpKind::Fill, layer, ink, 0, from.verb, from.point);
}

void Sketch::segment(float width, DrawPoint a, DrawPoint b) {
  constexpr float kRoundFrom = 0.009F;
  if (width >= kRoundFrom) return hullPath({a, width / 2}, {b, width / 2});
  const double apart = std::max(1e-6, gap(a, b));
  const double x = (b.x - a.x) / apart * width / 2;
  const double y = (b.y - a.y) / apart * width / 2;
  // The same way round as hulls, or overlaps would cancel out.
  move(plus(a, -x + y, -y - x));
  lineTo(plus(b, x + y, y - x));
  lineTo(plus(b, x - y, y + x));
  lineTo(plus(a, -x - y, -y + x));
  close();
}

void Sketch::curve(Layer layer, Colour ink, float width, const DrawPoint* points, std::size_t count) {
  const auto verb = static_cast<std::uint32_t>(m_drawing.verbs.size());
  const auto point = static_cast<std::uint32_t>(m_drawing.points.size());
  smoothPath(points, count, false);
  add(OpKind::Stroke, layer, ink, width, verb, point);
}

void Sketch::fillPolygon(Layer layer, Colour fill, const DrawPoint* points, std::size_t count) {
  const auto verb = static_cast<std::uint32_t>(m_drawing.verbs.size());
  const auto point = static_cast<std::uint32_t>(m_drawing.points.size());
  move(points[0]);
  for (std::size_t i = 1; i < count; ++i) lineTo(points[i]);
  close();
  add(OpKind::Fill, layer, fill, 0, verb, point);
}

void Sketch::movedSides(const DrawPoint* points, std::size_t count, double by) {
  double area = 0;
  for (std::size_t i = 0; i < count; ++i) {
    const DrawPoint& a = points[i];
    const DrawPoint& b = points[(i + 1) % count];
    area += a.x * b.y - b.x * a.y;
  }
  const double out = area > 0 ? by : -by;
  for (std::size_t i = 0; i < count; ++i) {
    const DrawPoint& before = points[(i + count - 1) % count];
    const DrawPoint& at = points[i];
    const DrawPoint& after = points[(i + 1) % count];
    const double in_length = std::max(1e-9, gap(before, at));
    const double out_length = std::max(1e-9, gap(at, after));
    const double ax = (at.x - before.x) / in_length;
    const double ay = (at.y - before.y) / in_length;
    const double bx = (after.x - at.x) / out_length;
    const double by_ = (after.y - at.y) / out_length;
    // Where the two moved sides meet; a sharp corner is cut off at three times the way.
    const double cosine = std::max(-0.78, ax * bx + ay * by_);
    const double reach = out / (1 + cosine);
    const DrawPoint corner = plus(at, (ay + by_) * reach, -(ax + bx) * reach);
    i == 0 ? move(corner) : lineTo(corner);
  }
  close();
}

void Sketch::outlinedPolygon(Layer layer, Colour fill, Colour ink, float width, const DrawPoint* points,
                             std::size_t count) {
  const Mark outer = here();
  movedSides(points, count, width / 2);
  add(OpKind::Fill, layer, ink, 0, outer.verb, outer.point);
  const Mark inner = here();
  movedSides(points, count, -width / 2);
  add(OpKind::Fill, layer, fill, 0, inner.verb, inner.point);
}

void Sketch::fillBlob(Layer layer, Colour fill, const DrawPoint* points, std::size_t count) {
  const auto verb = static_cast<std::uint32_t>(m_drawing.verbs.size());
  const auto point = static_cast<std::uint32_t>(m_drawing.points.size());
  smoothPath(points, count, true);
  add(OpKind::Fill, layer, fill, 0, verb, point);
}

void Sketch::fillHull(Layer layer, Colour fill, const Disc& a, const Disc& b) {
  const auto verb = static_cast<std::uint32_t>(m_drawing.verbs.size());
  const auto point = static_cast<std::uint32_t>(m_drawing.points.size());
  hullPath(a, b);
  add(OpKind::Fill, layer, fill, 0, verb, point);
}

void Sketch::hatch(Layer layer, Colour ink, float width, float spacing, const Disc& a, const Disc& b) {
  const double apart = gap(a.at, b.at);
  if (apart < 1e-6) return;
  const double along_x = (b.at.x - a.at.x) / apart;
  const double along_y = (b.at.y - a.at.y) / apart;
  // Lines run at 45 degrees to the axis; across them is the direction in which they follow each other.
  const double c = std::numbers::sqrt2 / 2;
  const DrawPoint run{static_cast<float>((along_x - along_y) * c),
                      static_cast<float>((along_x + along_y) * c)};
  const DrawPoint next{-run.y, run.x};
  const auto verb = static_cast<std::uint32_t>(m_drawing.verbs.size());
  const auto point = static_cast<std::uint32_t>(m_drawing.points.size());
  const double from = std::min(
      -a.radius, static_cast<float>((b.at.x - a.at.x) * next.x + (b.at.y - a.at.y) * next.y) - b.radius);
  const double to = std::max(
      a.radius, static_cast<float>((b.at.x - a.at.x) * next.x + (b.at.y - a.at.y) * next.y) + b.radius);
  // The hull is the union of discs between the ends: a line meets it where it meets any of them.
  constexpr int kDiscs = 24;
  for (double off = from + spacing / 2; off < to; off += spacing) {
    double low = 1e9;
    double high = -1e9;
    for (int i = 0; i <= kDiscs; ++i) {
      const double share = static_cast<double>(i) / kDiscs;
      const double x = (b.at.x - a.at.x) * share;
      const double y = (b.at.y - a.at.y) * share;
      const double radius = a.radius + (b.radius - a.radius) * share - width / 2;
      const double aside = off - (x * next.x + y * next.y);
      if (std::fabs(aside) >= radius) continue;
      const double half = std::sqrt(radius * radius - aside * aside);
      const double middle = x * run.x + y * run.y;
      low = std::min(low, middle - half);
      high = std::max(high, middle + half);
    }
    if (high - low < width) continue;
    segment(width, plus(a.at, next.x * off + run.x * low, next.y * off + run.y * low),
            plus(a.at, next.x * off + run.x * high, next.y * off + run.y * high));
  }
  if (m_drawing.verbs.size() > verb) add(OpKind::Fill, layer, ink, 0, verb, point);
}

void Sketch::label(Colour ink, const std::string& text, DrawPoint at, float size) {
  if (m_drawing.label_count == m_drawing.labels.size()) m_drawing.labels.emplace_back();
  Label& label = m_drawing.labels[m_drawing.label_count];
  label.text = text;
  label.at = at;
  label.size = size;
  Op op;
  op.kind = OpKind::Label;
  op.layer = Layer::Letter;
  op.colour = ink;
  op.label = static_cast<std::uint32_t>(m_drawing.label_count++);
  m_drawing.ops.push_back(op);
}

}  // namespace newel
