// Numbers over time, ratings from 0 to 10 unless another scale is set: a dot for each day that has one,
// joined where the days are near each other. A day without a number has no dot; it is never drawn as a zero.
// What it shows stands beside it in words.
#pragma once

#include <QtCore/QVariantList>

#include "qml/parts/themed_item.h"

namespace newel::parts {

class RatingChart : public newel::parts::ThemedItem {
  Q_OBJECT
  QML_ELEMENT
  // Oldest first, one map a dot: "at" (0 to 1, along the time shown), "value", "joined" (to the dot
  // before it).
  Q_PROPERTY(QVariantList points READ points WRITE setPoints NOTIFY pointsChanged)
  // Squares on a dashed line in place of round dots on a full one: two kinds differ without colour.
  Q_PROPERTY(bool square READ square WRITE setSquare NOTIFY squareChanged)
  Q_PROPERTY(double least READ least WRITE setLeast NOTIFY scaleChanged)
  Q_PROPERTY(double most READ most WRITE setMost NOTIFY scaleChanged)  // over `least`
  // Two numbers between which the ground is shaded; empty: none.
  Q_PROPERTY(QVariantList band READ band WRITE setBand NOTIFY scaleChanged)
  Q_PROPERTY(bool mirrored READ mirrored WRITE setMirrored NOTIFY mirroredChanged)

 public:
  explicit RatingChart(QQuickItem* parent = nullptr);
  QVariantList points() const { return m_points; }
  void setPoints(const QVariantList& points);
  bool square() const { return m_square; }
  void setSquare(bool square);
  double least() const { return m_least; }
  void setLeast(double least);
  double most() const { return m_most; }
  void setMost(double most);
  QVariantList band() const { return m_band; }
  void setBand(const QVariantList& band);
  bool mirrored() const { return m_mirrored; }
  void setMirrored(bool mirrored);
  void paint(QPainter* painter) override;

 signals:
  void pointsChanged();
  void squareChanged();
  void scaleChanged();
  void mirroredChanged();

 private:
  QRectF paintScale(QPainter& painter) const;
  void paintDot(QPainter& painter, const QPointF& at) const;

  QVariantList m_points;
  double heightOf(const QRectF& room, double value) const;

  bool m_square = false;
  QVariantList m_band;
  double m_least = 0;
  double m_most = 10;
  bool m_mirrored = false;
};

}  // namespace newel::parts
