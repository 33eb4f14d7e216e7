// Ratings from 0 to 10 over time: a dot for each day that has one, joined where the days are near each other.
// A day without a rating has no dot; it is never drawn as a zero. What it shows stands beside it in words.
#pragma once

#include <QtCore/QVariantList>

#include "qml/parts/themed_item.h"

namespace newel::parts {

class RatingChart : public newel::parts::ThemedItem {
  Q_OBJECT
  QML_ELEMENT
  // Oldest first, one map a dot: "at" (0 to 1, along the time shown), "value" (0 to 10), "joined" (to the dot
  // before it).
  Q_PROPERTY(QVariantList points READ points WRITE setPoints NOTIFY pointsChanged)
  // Squares on a dashed line in place of round dots on a full one: two kinds differ without colour.
  Q_PROPERTY(bool square READ square WRITE setSquare NOTIFY squareChanged)
  Q_PROPERTY(bool mirrored READ mirrored WRITE setMirrored NOTIFY mirroredChanged)

 public:
  explicit RatingChart(QQuickItem* parent = nullptr);
  QVariantList points() const { return m_points; }
  void setPoints(const QVariantList& points);
  bool square() const { return m_square; }
  void setSquare(bool square);
  bool mirrored() const { return m_mirrored; }
  void setMirrored(bool mirrored);
  void paint(QPainter* painter) override;

 signals:
  void pointsChanged();
  void squareChanged();
  void mirroredChanged();

 private:
  QRectF paintScale(QPainter& painter) const;
  void paintDot(QPainter& painter, const QPointF& at) const;

  QVariantList m_points;
  bool m_square = false;
  bool m_mirrored = false;
};

}  // namespace newel::parts
