// What became of what was due on one day, as a shape that needs no colour: done a full square, part a
// half-full one, not done an empty one with a bar, excused a dash, to come a small ring, no data dots.
#pragma once

#include <QtCore/QVariantList>

#include "qml/parts/themed_item.h"

namespace newel::parts {

class DayMark : public newel::parts::ThemedItem {
  Q_OBJECT
  QML_ELEMENT
  // OccasionResult::State as numbers, one a time of day, first at the top; empty: nothing was due.
  Q_PROPERTY(QVariantList states READ states WRITE setStates NOTIFY statesChanged)
  // The longest side of one shape.
  Q_PROPERTY(double most MEMBER m_most NOTIFY statesChanged)

 public:
  explicit DayMark(QQuickItem* parent = nullptr) : newel::parts::ThemedItem(parent) {}
  QVariantList states() const { return m_states; }
  void setStates(const QVariantList& states);
  void paint(QPainter* painter) override;

 signals:
  void statesChanged();

 private:
  void paintOne(QPainter& painter, const QRectF& room, int state) const;

  QVariantList m_states;
  double m_most = 16;
};

}  // namespace newel::parts
