#include "qml/parts/mark.h"

#include <QtGui/QPainter>
#include <QtGui/QPainterPath>
#include <cmath>
#include <numbers>

namespace newel::parts {
namespace {

QPolygonF octagon(double size) {
  QPolygonF points;
  for (int i = 0; i < 8; ++i) {
    const double angle = (i + 0.5) * std::numbers::pi / 4;
    points << QPointF(size / 2 + size / 2 * std::cos(angle), size / 2 + size / 2 * std::sin(angle));
  }
  return points;
}

void paintExclamation(QPainter& painter, double size, double top) {
  painter.drawRect(QRectF(size * 0.45, top, size * 0.10, size * 0.32));
  painter.drawRect(QRectF(size * 0.45, top + size * 0.38, size * 0.10, size * 0.10));
}

void paintSquare(QPainter& painter, double size, const QColor& colour, bool filled) {
  const double line = size * 0.12;
  painter.setPen(filled ? QPen(Qt::NoPen) : QPen(colour, line));
  painter.setBrush(filled ? QBrush(colour) : QBrush(Qt::NoBrush));
  const double inset = filled ? size * 0.08 : size * 0.08 + line / 2;
  painter.drawRoundedRect(QRectF(inset, inset, size - 2 * inset, size - 2 * inset), size * 0.12, size * 0.12);
}

void paintStrokes(QPainter& painter, double size, const QColor& colour, const QList<QPointF>& unit) {
  QPolygonF points;
  for (const QPointF& point : unit) points << point * size;
  painter.setPen(QPen(colour, size * 0.11, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter.setBrush(Qt::NoBrush);
  painter.drawPolyline(points);
}

}  // namespace

Mark::Mark(QQuickItem* parent) : ThemedItem(parent) {}

void Mark::setShape(Shape shape) {
  if (m_shape == shape) return;
  m_shape = shape;
  emit shapeChanged();
  update();
}

void Mark::setColour(const QColor& colour) {
  if (m_colour == colour) return;
  m_colour = colour;
  emit colourChanged();
  update();
}

void Mark::setInner(const QColor& inner) {
  if (m_inner == inner) return;
  m_inner = inner;
  emit innerChanged();
  update();
}

void Mark::paint(QPainter* painter) {
  const double size = qMin(width(), height());
  painter->translate((width() - size) / 2, (height() - size) / 2);
  painter->setPen(Qt::NoPen);
  painter->setBrush(m_colour);
  switch (m_shape) {
    case Shape::Octagon:
      painter->drawPolygon(octagon(size));
      painter->setBrush(m_inner);
      painter->drawRect(QRectF(size * 0.34, size * 0.34, size * 0.32, size * 0.32));
      break;
    case Shape::Alarm:
      painter->drawPolygon(octagon(size));
      painter->setBrush(m_inner);
      paintExclamation(*painter, size, size * 0.26);
      break;
    case Shape::Triangle: {
      const QPolygonF triangle(
          QList<QPointF>{{size * 0.5, size * 0.06}, {size * 0.98, size * 0.92}, {size * 0.02, size * 0.92}});
      painter->drawPolygon(triangle);
      painter->setBrush(m_inner);
      paintExclamation(*painter, size, size * 0.36);
      break;
    }
    case Shape::Tick:
      paintSquare(*painter, size, m_colour, true);
      paintStrokes(*painter, size, m_inner, {{0.28, 0.52}, {0.44, 0.68}, {0.74, 0.34}});
      break;
    case Shape::Square:
      paintSquare(*painter, size, m_colour, false);
      break;
    case Shape::Minus:
      paintSquare(*painter, size, m_colour, false);
      paintStrokes(*painter, size, m_colour, {{0.32, 0.5}, {0.68, 0.5}});
      break;
    case Shape::Letter:
      painter->drawRoundedRect(QRectF(0, size * 0.16, size, size * 0.68), size * 0.08, size * 0.08);
      paintStrokes(*painter, size, m_inner, {{0.14, 0.32}, {0.5, 0.58}, {0.86, 0.32}});
      break;
    case Shape::Lines:
      paintStrokes(*painter, size, m_colour, {{0.12, 0.24}, {0.88, 0.24}});
      paintStrokes(*painter, size, m_colour, {{0.12, 0.5}, {0.88, 0.5}});
      paintStrokes(*painter, size, m_colour, {{0.12, 0.76}, {0.56, 0.76}});
      break;
    case Shape::Bars:
      painter->drawRect(QRectF(size * 0.22, size * 0.14, size * 0.18, size * 0.72));
      painter->drawRect(QRectF(size * 0.60, size * 0.14, size * 0.18, size * 0.72));
      break;
    case Shape::Play:
      painter->drawPolygon(QPolygonF(
          QList<QPointF>{{size * 0.24, size * 0.12}, {size * 0.88, size * 0.5}, {size * 0.24, size * 0.88}}));
      break;
    case Shape::Back:
      paintStrokes(*painter, size, m_colour, {{0.62, 0.18}, {0.32, 0.5}, {0.62, 0.82}});
      break;
  }
}

}  // namespace newel::parts
