// How much of the present beat is left, as an open ring. The number in it is text, in CountRing.qml.
#pragma once

#include "qml/parts/themed_item.h"

namespace newel::parts {

class Ring : public newel::parts::ThemedItem {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(double fraction READ fraction WRITE setFraction NOTIFY fractionChanged)  // done, 0 to 1
  Q_PROPERTY(bool resting READ resting WRITE setResting NOTIFY restingChanged)        // dashed: nothing to do

 public:
  explicit Ring(QQuickItem* parent = nullptr);
  double fraction() const { return m_fraction; }
  void setFraction(double fraction);
  bool resting() const { return m_resting; }
  void setResting(bool resting);
  void paint(QPainter* painter) override;

 signals:
  void fractionChanged();
  void restingChanged();

 private:
  double m_fraction = 0;
  bool m_resting = false;
};

}  // namespace newel::parts
