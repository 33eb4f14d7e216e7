// The one sign of a picture: where the movement goes, where the weight is, which limb leads. For core/figure
// alone.
#pragma once

#include <array>

#include "core/figure/motion.h"
#include "core/figure/palette.h"
#include "core/figure/sketch.h"

namespace newel {

// The way of a marked point through a phase, worked out once a phase.
struct MarkWay {
  static constexpr int kPoints = 14;
  bool known = false;
  double clear = 0;  // how far beside its way an arrow keeps off the limb
  Moment of;         // fraction does not count
  std::array<Vec3, kPoints> points;
  bool with_view = false;  // goes where the view goes, as the body walks on and on
  Vec3 middle;             // of the trunk, half-way: the arrow keeps to the other side of the limb
};
void findWay(const Choreography& keys, const Moment& moment, const v1::Mark& mark, MarkWay& way);

class MarkPainter {
 public:
  MarkPainter(Sketch& sketch, const Eye& eye, const Palette& palette)
      : m_sketch(sketch), m_eye(eye), m_palette(palette) {}

  // A ring on the ground round the foot of `side`.
  void weight(const Posture& posture, int side);
  // `shift` on the picture; none: beside the limb, away from the trunk.
  void arrow(const MarkWay& way, DrawPoint shift);
  void press(const Vec3& point);
  // `letter` in a filled disc before the foot that leads.
  void leads(const Posture& posture, int side, const std::string& letter, bool flipped);

 private:
  void head(DrawPoint tip, double dx, double dy);

  Sketch& m_sketch;
  const Eye& m_eye;
  const Palette& m_palette;
};

}  // namespace newel
