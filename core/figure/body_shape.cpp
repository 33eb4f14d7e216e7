#include "core/figure/body_shape.h"

namespace newel {

BodyShape bodyShape(v1::Build build) {
  BodyShape shape;
  double limbs = 1;
  double trunk = 1;
  if (build == v1::BUILD_LIGHT) {
    limbs = 0.88;
    trunk = 0.88;
  } else if (build == v1::BUILD_HEAVY) {
    limbs = 1.16;
    trunk = 1.25;
  }
  for (Section* section : {&shape.hips, &shape.waist, &shape.ribs, &shape.chest}) {
    section->breadth *= trunk;
    section->depth *= trunk;
  }
  // A heavy trunk carries more at the waist.
  if (build == v1::BUILD_HEAVY) {
    shape.waist.breadth *= 1.12;
    shape.waist.depth *= 1.16;
  }
  for (double* radius : {&shape.hip, &shape.thigh_top, &shape.thigh_end, &shape.calf, &shape.knee,
                         &shape.upper_arm, &shape.elbow, &shape.neck, &shape.shoulder}) {
    *radius *= limbs;
  }
  return shape;
}

}  // namespace newel
