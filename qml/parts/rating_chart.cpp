#include "qml/parts/rating_chart.h"

#include <QtCore/QLocale>
#include <QtGui/QFontMetricsF>
#include <QtGui/QGuiApplication>
#include <QtGui/QPainter>
#include <algorithm>
#include <optional>

namespace newel::parts {
namespace {

constexpr double kMost = 10;
constexpr double kDot = 5;  // radius
constexpr double kLine = 2.5;

}  // namespace

RatingChart::RatingChart(QQuickItem* parent) : ThemedItem(parent) {
  setImplicitWidth(280);
  setImplicitHeight(140);
}

void RatingChart::setPoints(const QVariantList& points) {
  if (m_points == points) return;
  m_points = points;
  emit pointsChanged();
  update();
}

void RatingChart::setSquare(bool square) {
  if (m_square == square) return;
  m_square = square;
  emit squareChanged();
  update();
}

void RatingChart::setMirrored(bool mirrored) {
  if (m_mirrored == mirrored) return;
  m_mirrored = mirrored;
  emit mirroredChanged();
  update();
}

// Lines at 0, 5 and 10 with their numbers; the room that is left for the dots.
QRectF RatingChart::paintScale(QPainter& painter) const {
  QFont font = QGuiApplication::font();
  font.setPixelSize(std::min(theme().small(), static_cast<int>(height() / 4)));
  painter.setFont(font);
  const QFontMetricsF metrics(font);
  const double words = metrics.horizontalAdvance(QLocale().toString(10)) + 8;
  const double margin = std::max(metrics.height() / 2, kDot + 1);
  const QRectF room(m_mirrored ? 0 : words, margin, width() - words, height() - 2 * margin);
  for (const int value : {0, 5, 10}) {
    const double y = room.bottom() - room.height() * value / kMost;
    painter.setPen(QPen(value == 0 ? theme().soft() : theme().groove(), value == 0 ? 2 : 1));
    painter.drawLine(QPointF(room.left(), y), QPointF(room.right(), y));
    painter.setPen(theme().soft());
    const QRectF place(m_mirrored ? room.right() : 0, y - metrics.height() / 2, words, metrics.height());
    painter.drawText(
        place,
        static_cast<int>(m_mirrored ? Qt::AlignRight : Qt::AlignLeft) | static_cast<int>(Qt::AlignVCenter),
        QLocale().toString(value));
  }
  return room.adjusted(kDot + 1, 0, -kDot - 1, 0);
}

void RatingChart::paintDot(QPainter& painter, const QPointF& at) const {
  painter.setPen(QPen(theme().sheet(), 1.5));
  painter.setBrush(m_square ? theme().brass() : theme().rail());
  if (m_square) {
    painter.drawRect(QRectF(at.x() - kDot, at.y() - kDot, 2 * kDot, 2 * kDot));
  } else {
    painter.drawEllipse(at, kDot, kDot);
  }
}

void RatingChart::paint(QPainter* painter) {
  const QRectF room = paintScale(*painter);
  const auto place = [&](const QVariantMap& point) {
    const double along = std::clamp(point.value(QStringLiteral("at")).toDouble(), 0.0, 1.0);
    const double value = std::clamp(point.value(QStringLiteral("value")).toDouble(), 0.0, kMost);
    return QPointF(room.left() + room.width() * (m_mirrored ? 1 - along : along),
                   room.bottom() - room.height() * value / kMost);
  };
  std::optional<QPointF> before;
  for (const QVariant& entry : m_points) {
    const QVariantMap point = entry.toMap();
    const QPointF at = place(point);
    if (before.has_value() && point.value(QStringLiteral("joined")).toBool()) {
      painter->setPen(QPen(m_square ? theme().brass() : theme().rail(), kLine,
                           m_square ? Qt::DashLine : Qt::SolidLine, Qt::RoundCap));
      painter->drawLine(*before, at);
    }
    before = at;
  }
  for (const QVariant& entry : m_points) paintDot(*painter, place(entry.toMap()));
}

}  // namespace newel::parts
