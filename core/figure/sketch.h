// Builds a Drawing piece by piece: the few shapes the figure is made of. For core/figure alone.
#pragma once

#include <array>
#include <initializer_list>

#include "core/figure/drawing.h"
#include "core/figure/vec.h"

namespace newel {

// The eye: from body heights in space to the picture's plane.
struct Eye {
  Vec3 right{1, 0, 0};
  Vec3 up{0, 0, 1};
  Vec3 toward{0, -1, 0};  // from what is seen to the eye
  Vec3 shift;             // taken off everything first (the view follows the body)

  DrawPoint see(const Vec3& p) const {
    const Vec3 q = p - shift;
    return {static_cast<float>(dot(q, right)), static_cast<float>(-dot(q, up))};
  }
  double depth(const Vec3& p) const { return dot(p - shift, toward); }
};

struct Disc {
  DrawPoint at;
  float radius = 0;
};

class Sketch {
 public:
  explicit Sketch(Drawing& drawing) : m_drawing(drawing) {}

  // Filling costs a painter far less than stroking: what is straight or round becomes filled outlines.

  // ---- a group of pieces with one outline: first every piece is drawn larger in ink, then every piece ----
  void beginGroup(Layer layer, Colour line, float width);
  // The next pieces have this colour.
  void colour(Colour fill) { m_fill = fill; }
  // The hull of two discs.
  void hull(const Disc& a, const Disc& b);
  void disc(const Disc& a) { hull(a, a); }
  void polygon(const DrawPoint* points, std::size_t count);
  void polygon(std::initializer_list<DrawPoint> points) { polygon(points.begin(), points.size()); }
  void endGroup();

  // ---- single operations ----
  void fillPolygon(Layer layer, Colour fill, const DrawPoint* points, std::size_t count);
  void fillPolygon(Layer layer, Colour fill, std::initializer_list<DrawPoint> points) {
    fillPolygon(layer, fill, points.begin(), points.size());
  }
  // A convex polygon with an outline.
  void outlinedPolygon(Layer layer, Colour fill, Colour ink, float width, const DrawPoint* points,
                       std::size_t count);
  // A closed smooth curve through the points.
  void fillBlob(Layer layer, Colour fill, const DrawPoint* points, std::size_t count);
  void line(Layer layer, Colour ink, float width, DrawPoint a, DrawPoint b);
  void polyline(Layer layer, Colour ink, float width, const DrawPoint* points, std::size_t count,
                bool closed);
  void curve(Layer layer, Colour ink, float width, const DrawPoint* points, std::size_t count);
  // Parallel lines, 45 degrees to the axis from a to b, over the hull of the two discs and inside it.
  void hatch(Layer layer, Colour ink, float width, float spacing, const Disc& a, const Disc& b);
  void label(Colour ink, const std::string& text, DrawPoint at, float size);
  void fillHull(Layer layer, Colour fill, const Disc& a, const Disc& b);
  void fillDisc(Layer layer, Colour fill, const Disc& disc) { fillHull(layer, fill, disc, disc); }

 private:
  struct Piece {
    Colour fill;
    std::uint32_t first_verb, verb_count, first_point;
    bool round = false;  // the hull of a and b
    Disc a, b;
  };
  struct Mark {
    std::uint32_t verb, point;
  };
  Mark here() const {
    return {static_cast<std::uint32_t>(m_drawing.verbs.size()),
            static_cast<std::uint32_t>(m_drawing.points.size())};
  }
  // A straight piece of line as an outline: round ends where it is wide enough for them to be seen.
  void segment(float width, DrawPoint a, DrawPoint b);
  void outlineGroup();
  // The polygon with each side moved out by `by`.
  void movedSides(const DrawPoint* points, std::size_t count, double by);
  void move(DrawPoint p);
  void lineTo(DrawPoint p);
  void cubic(DrawPoint a, DrawPoint b, DrawPoint p);
  void close();
  void arc(DrawPoint centre, float radius, double from, double to);
  void hullPath(const Disc& a, const Disc& b);
  void smoothPath(const DrawPoint* points, std::size_t count, bool closed);
  void beginPiece();
  void endPiece();
  Op& add(OpKind kind, Layer layer, Colour colour, float width, std::uint32_t first_verb,
          std::uint32_t first_point);

  Drawing& m_drawing;
  std::array<Piece, 64> m_pieces{};
  std::size_t m_piece_count = 0;
  Layer m_layer = Layer::Ground;
  Colour m_line;
  Colour m_fill;
  float m_width = 0;
};

}  // namespace newel
