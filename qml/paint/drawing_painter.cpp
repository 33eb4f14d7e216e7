#include "qml/paint/drawing_painter.h"

#include <QtGui/QFont>
#include <QtGui/QTransform>
#include <algorithm>

namespace newel::paint {
namespace {

// Letters are traced once, this large, and scaled from there.
constexpr int kTracedPixels = 200;

QColor toQt(Colour colour) { return {colour.r, colour.g, colour.b}; }

QPainterPath traced(const std::string& text) {
  QFont font(QStringLiteral("Noto Sans"));
  font.setPixelSize(kTracedPixels);
  font.setBold(true);
  QPainterPath path;
  path.addText(0, 0, font, QString::fromStdString(text));
  const QRectF box = path.boundingRect();
  if (box.height() <= 0) return path;
  // Centred on what is seen; scaled so that a capital L is 1 high, whatever letter this is.
  QPainterPath capital;
  capital.addText(0, 0, font, QStringLiteral("L"));
  const double size = capital.boundingRect().height();
  QTransform to_unit;
  to_unit.scale(1 / size, 1 / size);
  to_unit.translate(-box.center().x(), -box.center().y());
  path = to_unit.map(path);
  // Straight pieces, fine enough for letters: curves would be worked out anew in every picture.
  QPainterPath straight;
  constexpr int kFine = 200;
  for (const QPolygonF& outline : path.toSubpathPolygons(QTransform::fromScale(kFine, kFine)))
    straight.addPolygon(outline);
  QTransform back;
  back.scale(1.0 / kFine, 1.0 / kFine);
  return back.map(straight);
}

}  // namespace

const QBrush& DrawingPainter::brushOf(Colour colour) {
  const auto known =
      std::find_if(m_inks.begin(), m_inks.end(), [&](const Ink& ink) { return ink.colour == colour; });
  if (known != m_inks.end()) return known->brush;
  m_inks.push_back({colour, QBrush(toQt(colour))});
  return m_inks.back().brush;
}

const QPainterPath& DrawingPainter::lettersOf(const std::string& text) {
  const auto known = std::find_if(m_letters.begin(), m_letters.end(),
                                  [&](const Letters& letters) { return letters.text == text; });
  if (known != m_letters.end()) return known->outline;
  m_letters.push_back({text, traced(text)});
  return m_letters.back().outline;
}

void DrawingPainter::tracePath(const Drawing& drawing, const Op& op) {
  m_path.clear();
  m_path.setFillRule(Qt::WindingFill);
  std::uint32_t point = op.first_point;
  for (std::uint32_t i = 0; i < op.verb_count; ++i) {
    switch (drawing.verbs[op.first_verb + i]) {
      case Verb::Move:
        m_path.moveTo(at(drawing.points[point++]));
        break;
      case Verb::Line:
        m_path.lineTo(at(drawing.points[point++]));
        break;
      case Verb::Cubic:
        m_path.cubicTo(at(drawing.points[point]), at(drawing.points[point + 1]),
                       at(drawing.points[point + 2]));
        point += 3;
        break;
      case Verb::Close:
        m_path.closeSubpath();
        break;
    }
  }
}

void DrawingPainter::paintLabel(QPainter& painter, const Drawing& drawing, const Op& op) {
  const Label& label = drawing.labels[op.label];
  const QPainterPath& letters = lettersOf(label.text);
  const QPointF centre = at(label.at);
  // A label's size is that of its type; capitals are 0.72 of it.
  const double capital = label.size * m_scale * 0.72;
  m_path.clear();
  m_path.setFillRule(Qt::WindingFill);
  for (int i = 0; i < letters.elementCount(); ++i) {
    const QPainterPath::Element& element = letters.elementAt(i);
    const QPointF point = centre + QPointF(element.x, element.y) * capital;
    element.isMoveTo() ? m_path.moveTo(point) : m_path.lineTo(point);
  }
  painter.fillPath(m_path, brushOf(op.colour));
}

void DrawingPainter::paint(QPainter& painter, const Drawing& drawing, const QRectF& place) {
  const Box& frame = drawing.frame;
  if (place.isEmpty() || frame.width() <= 0 || frame.height() <= 0) return;
  m_scale = std::min(place.width() / frame.width(), place.height() / frame.height());
  m_origin = QPointF(place.center().x() - (frame.left + frame.right) / 2 * m_scale,
                     place.bottom() - frame.bottom * m_scale);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setClipRect(place, Qt::IntersectClip);
  QPen pen;
  pen.setCapStyle(Qt::RoundCap);
  pen.setJoinStyle(Qt::RoundJoin);
  for (const Op& op : drawing.ops) {
    if (op.kind == OpKind::Label) {
      paintLabel(painter, drawing, op);
      continue;
    }
    tracePath(drawing, op);
    if (op.kind == OpKind::Fill) {
      painter.fillPath(m_path, brushOf(op.colour));
      continue;
    }
    pen.setColor(toQt(op.colour));
    pen.setWidthF(op.width * m_scale);
    painter.strokePath(m_path, pen);
  }
  painter.restore();
}

}  // namespace newel::paint
