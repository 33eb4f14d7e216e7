// How thick the drawn body is: radii of its pieces in body heights, by build. For core/figure alone.
#pragma once

#include "core/records/clip.pb.h"

namespace newel {

// Half breadth (side to side) and half depth (front to back) of a trunk's section.
struct Section {
  double breadth;
  double depth;
};

// Radii of a medium build; ours, after the studies of the look, no source.
struct BodyShape {
  Section hips{0.092, 0.066};
  Section waist{0.080, 0.060};
  Section ribs{0.088, 0.068};
  Section chest{0.088, 0.062};
  double shoulder = 0.038;
  double neck = 0.026;
  double hip = 0.060;  // shorts over the hip joint
  double thigh_top = 0.056;
  double thigh_end = 0.039;
  double calf = 0.0375;
  double knee = 0.037;
  double ankle = 0.0215;
  double upper_arm = 0.0315;
  double elbow = 0.0245;
  double wrist = 0.0165;
  double palm = 0.0195;
  double fingers = 0.011;
  double heel = 0.021;
  double ball = 0.0175;
  double toe = 0.0145;
};

BodyShape bodyShape(v1::Build build);

}  // namespace newel
