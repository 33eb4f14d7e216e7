// Small shapes that carry a meaning beside colour and words: each urgency has its own outline.
#pragma once

#include "qml/parts/themed_item.h"

namespace newel::parts {

class Mark : public newel::parts::ThemedItem {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(Shape shape READ shape WRITE setShape NOTIFY shapeChanged)
  Q_PROPERTY(QColor colour READ colour WRITE setColour NOTIFY colourChanged)  // of the shape
  Q_PROPERTY(QColor inner READ inner WRITE setInner NOTIFY innerChanged)      // of the sign in it

 public:
  enum class Shape {
    Octagon,   // stop: octagon with a square, as on the Stop button
    Alarm,     // octagon with an exclamation mark
    Triangle,  // attention
    Tick,      // square with a tick: all is well
    Square,    // empty square: still to do
    Letter,    // something to read
    Bars,      // pause
    Play,      // go on
    Back,      // one page back, toward the leading edge
    Minus,     // left out: a square with a bar
    Lines,     // lines of text: worth knowing, nothing to do
  };
  Q_ENUM(Shape)

  explicit Mark(QQuickItem* parent = nullptr);
  Shape shape() const { return m_shape; }
  void setShape(Shape shape);
  QColor colour() const { return m_colour; }
  void setColour(const QColor& colour);
  QColor inner() const { return m_inner; }
  void setInner(const QColor& inner);
  void paint(QPainter* painter) override;

 signals:
  void shapeChanged();
  void colourChanged();
  void innerChanged();

 private:
  Shape m_shape = Shape::Square;
  QColor m_colour = Qt::black;
  QColor m_inner = Qt::white;
};

}  // namespace newel::parts
