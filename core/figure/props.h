// The things round the drawn body: their usual sizes, where hands hold them, what stands in the way.
// Not here: how they are drawn (draw_props.cpp). All lengths in body heights.
//
// What the place ("at") and the sizes of a v1::Prop mean, and what sizes are when 0 (ours, no source, from
// usual furniture beside a person of 1.70 m):
//   CHAIR, ROLLING_CHAIR: at the floor under the seat's middle, facing as turn says. length .25 (depth of the
//     seat), width .27, height .255 (of the seat); the back ends at .52. STOOL: the same without a back.
//   COUNTER, BED, KERB: at the floor under the middle of the near long edge, which looks against x.
//     length .3/.6/.5 (away from the person), width 1/1.2/.6 (along the edge), height .53/.3/.085.
//   RAIL: at the floor under its middle, runs along x. length 1, height .53 (at the middle), rise 0 (over the
//     length).
//   STAIRS: at the foot of the first riser, middle of the width. length .17 (of one tread), width .5,
//     rise .1 (of one step; under 0: going down).
//   RAMP: at its beginning, middle of the width. length 1.2, width .5, rise .1 (over the length).
//   MAT, FLOOR: at its middle. length 1.2 (along x), width .5. LINE: the same, length 1, width .02.
//   WALL, MIRROR: at the floor below it, looks against x. width .8/.35, height 1/.9.
//   ROLL: at the middle of its axis, which runs from side to side. width .3, height .11 (thickness).
//   CUSHION, BOX: at the middle of its underside. length .2, width .25/.3, height .08/.06.
//   BALL: at its middle. height .13 (thickness). TOWEL, BAND: from one point to another; width .05/.02.
//   CYCLE: at the floor under the axle of its cranks. height .48 (of the saddle). WATER: height .72 (of its
//     surface). TIPPING_BOARD: at the floor under its pivot. length .26, width .34, height .05 (of its top).
//   CANE: at its tip; stands upright, handle along x. height .5.
//   SLEEVE: on the limb that `from` ends; moved x: how far on, 0 to 1. MIRROR or TOWEL with `from` alone:
//     in that hand.
#pragma once

#include "core/figure/goal.h"
#include "core/figure/vec.h"
#include "core/records/clip.pb.h"

namespace newel {

// Sizes with the usual values filled in.
struct PropShape {
  v1::PropKind kind = v1::PROP_KIND_UNSPECIFIED;
  double length = 0;
  double width = 0;
  double height = 0;
  double rise = 0;
  double turn_deg = 0;
  // Stairs, ramp, rail, floor, line and worktop of a scene that follows the body.
  bool endless = false;
};
PropShape shapeOf(const v1::Prop& prop);

inline constexpr double kChairBack = 0.52;
// Of a cycle, from the floor under its axle.
inline constexpr Vec3 kCycleAxle{0, 0, 0.155};
inline constexpr Vec3 kCycleBar{0.19, 0, 0.63};
inline constexpr double kCycleSaddleX = -0.14;

// The middle of a hand that holds the prop standing at `at`, as v1::Hold asks. Only for kinds with that grip:
// see hasGrip().
Vec3 gripPoint(const PropShape& shape, const Vec3& at, const v1::Hold& hold);
bool hasGrip(v1::PropKind kind, v1::Grip grip);
// Direction of the bar or edge under that hand.
Vec3 gripDirection(const PropShape& shape, v1::Grip grip);

// Height of the highest solid surface of the prop at (x, y) that a foot or seat may rest on; -1 where it has
// none.
double surfaceHeight(const PropShape& shape, const Vec3& at, double x, double y);

// How deep a ball of radius `radius` at `centre` is inside the prop; 0 or less when outside. Legs of
// furniture and thin bars do not count.
double depthInside(const PropShape& shape, const Vec3& at, const Vec3& centre, double radius);

}  // namespace newel
