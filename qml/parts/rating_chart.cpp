#include "qml/parts/rating_chart.h"

#include <QtCore/QLocale>
#include <QtGui/QFontMetricsF>
#include <QtGui/QGuiApplication>
#include <QtGui/QPainter>
#include <algorithm>
#include <optional>

namespace newel::parts {
namespace {

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

void RatingChart::setLeast(double least) {
  if (m_least == least) return;
  m_least = least;
  emit scaleChanged();
  update();
}

void RatingChart::setMost(double most) {
  if (m_most == most) return;
  m_most = most;
  emit scaleChanged();
  update();
}

void RatingChart::setBand(const QVariantList& band) {
  if (m_band == band) return;
  m_band = band;
  emit scaleChanged();
  update();
}

double RatingChart::heightOf(const QRectF& room, double value) const {
  const double span = m_most > m_least ? m_most - m_least : 1;
  return room.bottom() - room.height() * (std::clamp(value, m_least, m_most) - m_least) / span;
}

void RatingChart::setMirrored(bool mirrored) {
  if (m_mirrored == mirrored) return;
  m_mirrored = mirrored;
  emit mirroredChanged();
  update();
}

// Lines at both ends and the middle of the scale with their numbers; the room that is left for the dots.
QRectF RatingChart::paintScale(QPainter& painter) const {
  QFont font = QGuiApplication::font();
  font.setPixelSize(std::min(theme().small(), static_cast<int>(height() / 4)));
  painter.setFont(font);
  const QFontMetricsF metrics(font);
  const double words = metrics.horizontalAdvance(QLocale().toString(m_most)) + 8;
  const double margin = std::max(metrics.height() / 2, kDot + 1);
  const QRectF room(m_mirrored ? 0 : words, margin, width() - words, height() - 2 * margin);
  if (m_band.size() == 2) {
    const double top = heightOf(room, m_band[1].toDouble());
    const double bottom = heightOf(room, m_band[0].toDouble());
    // Hatched, so that it shows without colour.
    painter.fillRect(QRectF(room.left(), top, room.width(), bottom - top),
                     QBrush(theme().groove(), Qt::BDiagPattern));
  }
  for (const double value : {m_least, (m_least + m_most) / 2, m_most}) {
    const double y = heightOf(room, value);
    painter.setPen(QPen(value == m_least ? theme().soft() : theme().groove(), value == m_least ? 2 : 1));
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
    return QPointF(room.left() + room.width() * (m_mirrored ? 1 - along : along),
                   heightOf(room, point.value(QStringLiteral("value")).toDouble()));
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
