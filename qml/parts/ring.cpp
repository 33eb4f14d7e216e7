#include "qml/parts/ring.h"

#include <QtGui/QPainter>
#include <algorithm>

namespace newel::parts {
namespace {
constexpr double kLine = 10;
}

Ring::Ring(QQuickItem* parent) : ThemedItem(parent) {}

void Ring::setFraction(double fraction) {
  const double kept = std::clamp(fraction, 0.0, 1.0);
  if (m_fraction == kept) return;
  m_fraction = kept;
  emit fractionChanged();
  update();
}

void Ring::setResting(bool resting) {
  if (m_resting == resting) return;
  m_resting = resting;
  emit restingChanged();
  update();
}

void Ring::paint(QPainter* painter) {
  const double side = std::min(width(), height()) - kLine;
  const QRectF box((width() - side) / 2, (height() - side) / 2, side, side);
  painter->setBrush(Qt::NoBrush);
  painter->setPen(QPen(theme().groove(), kLine));
  painter->drawEllipse(box);
  QPen pen(m_resting ? theme().soft() : theme().rail(), kLine, Qt::SolidLine, Qt::FlatCap);
  if (m_resting) pen.setDashPattern({0.6, 0.4});
  painter->setPen(pen);
  painter->drawArc(box, 90 * 16, static_cast<int>(-360 * 16 * m_fraction));
}

}  // namespace newel::parts
