#include "qml/parts/week_bars.h"

#include <QtGui/QPainter>
#include <algorithm>

namespace newel::parts {
namespace {
constexpr double kBase = 3;   // the rail's line
constexpr double kLeast = 3;  // a week with nothing done still shows that it was a week
}  // namespace

WeekBars::WeekBars(QQuickItem* parent) : ThemedItem(parent) {
  setImplicitWidth(150);
  setImplicitHeight(36);
}

void WeekBars::setWeeks(const QVariantList& weeks) {
  if (m_weeks == weeks) return;
  m_weeks = weeks;
  emit weeksChanged();
  update();
}

void WeekBars::setMirrored(bool mirrored) {
  if (m_mirrored == mirrored) return;
  m_mirrored = mirrored;
  emit mirroredChanged();
  update();
}

void WeekBars::paint(QPainter* painter) {
  if (m_weeks.isEmpty()) return;
  const double step = width() / static_cast<double>(m_weeks.size());
  const double bar = std::min(step * 0.6, 14.0);
  const double room = height() - kBase;
  painter->fillRect(QRectF(0, room, width(), kBase), theme().groove());
  for (int i = 0; i < m_weeks.size(); ++i) {
    const int place = m_mirrored ? static_cast<int>(m_weeks.size()) - 1 - i : i;
    const double centre = step * (place + 0.5);
    const QVariant& week = m_weeks.at(i);
    if (!week.isValid() || week.isNull()) {
      painter->setPen(QPen(theme().soft(), 2.5, Qt::DotLine, Qt::FlatCap));
      painter->drawLine(QPointF(centre, room - 2), QPointF(centre, room * 0.25));
      continue;
    }
    const double tall = std::max(kLeast, room * std::clamp(week.toDouble(), 0.0, 1.0));
    painter->setPen(Qt::NoPen);
    painter->setBrush(theme().rail());
    painter->drawRoundedRect(QRectF(centre - bar / 2, room - tall, bar, tall), 2, 2);
  }
}

}  // namespace newel::parts
