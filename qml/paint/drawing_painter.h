// Puts a figure's Drawing on anything a QPainter paints on: screen, picture, PDF. The only place that does.
// Not here: what the drawing shows (core/figure), when it is painted (qml/parts/figure_view.h).
#pragma once

#include <QtCore/QRectF>
#include <QtGui/QBrush>
#include <QtGui/QPainter>
#include <QtGui/QPainterPath>
#include <string>
#include <vector>

#include "core/figure/drawing.h"

namespace newel::paint {

// Keeps its memory between pictures: one for each thing that is painted over and over. Any thread, one at a
// time.
class DrawingPainter {
 public:
  // The drawing's frame as large as `place` allows, standing on its lower edge and in the middle of its
  // width, clipped to `place`. Never mirrored.
  void paint(QPainter& painter, const Drawing& drawing, const QRectF& place);

 private:
  // Outlines of a label's letters about its centre, capitals 1 high.
  struct Letters {
    std::string text;
    QPainterPath outline;
  };
  // Made once for each colour: a new one in every operation would be a new piece of memory.
  struct Ink {
    Colour colour;
    QBrush brush;
  };
  const QBrush& brushOf(Colour colour);
  const QPainterPath& lettersOf(const std::string& text);
  QPointF at(const DrawPoint& point) const { return m_origin + QPointF(point.x, point.y) * m_scale; }
  void tracePath(const Drawing& drawing, const Op& op);
  void paintLabel(QPainter& painter, const Drawing& drawing, const Op& op);

  QPainterPath m_path;
  std::vector<Letters> m_letters;
  std::vector<Ink> m_inks;
  QPointF m_origin;  // of the drawing's plane, where it is painted
  double m_scale = 1;
};

}  // namespace newel::paint
