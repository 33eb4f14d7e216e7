// A finished picture as plain data: what an adapter needs to put a figure on a screen, on paper or in SVG,
// and nothing it would have to work out. Not here: how a picture comes about (figure.h).
//
// To paint one: set up a plain mapping of `frame` (x to the right, y down, body heights) to the place at
// hand, the same scale both ways, clipped to it; then go through `ops` in order:
//   Fill    path filled with `colour`, non-zero winding; no outline.
//   Stroke  path drawn with a pen of `colour`, `width` (body heights), round caps and joins; no fill.
//   Label   `labels[op.label]`: text centred on its point, cap height near `size`, bold, `colour`.
// A path is `verb_count` verbs from `first_verb`, taking points from `first_point` on: Move 1, Line 1, Cubic
// 3 (two handles, then the end), Close 0. Every path begins with Move. The picture is never mirrored for
// right-to-left layouts: left is a side of the person, not of the page.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace newel {

struct Colour {
  std::uint8_t r = 0;
  std::uint8_t g = 0;
  std::uint8_t b = 0;
  bool operator==(const Colour&) const = default;
};

struct DrawPoint {
  float x = 0;
  float y = 0;
};

struct Box {
  float left = 0;
  float top = 0;
  float right = 0;
  float bottom = 0;
  float width() const { return right - left; }
  float height() const { return bottom - top; }
};

enum class Verb : std::uint8_t { Move, Line, Cubic, Close };
enum class OpKind : std::uint8_t { Fill, Stroke, Label };

// What an operation belongs to, from far to near as a rule; for tests and for those who want to paint only
// some.
enum class Layer : std::uint8_t { Ground, Prop, FarArm, FarLeg, Trunk, Head, NearLeg, NearArm, Mark, Letter };

struct Op {
  OpKind kind = OpKind::Fill;
  Layer layer = Layer::Ground;
  Colour colour;
  float width = 0;
  std::uint32_t first_verb = 0;
  std::uint32_t verb_count = 0;
  std::uint32_t first_point = 0;
  std::uint32_t label = 0;
};

struct Label {
  std::string text;
  DrawPoint at;
  float size = 0;
};

struct Drawing {
  Box frame;
  std::vector<Op> ops;
  std::vector<Verb> verbs;
  std::vector<DrawPoint> points;
  std::vector<Label> labels;

  // Empties it and keeps its memory.
  void clear() {
    ops.clear();
    verbs.clear();
    points.clear();
    label_count = 0;
  }
  // Labels are reused so that their texts keep their memory; only the first `label_count` count.
  std::size_t label_count = 0;
};

}  // namespace newel
