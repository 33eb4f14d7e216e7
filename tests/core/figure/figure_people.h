// Bodies for the figure's tests.
#pragma once

#include <vector>

#include "core/figure/figure.h"

namespace newel {

inline LimbState limbState(v1::LimbLossLevel level, bool prosthesis_on) {
  LimbState limb;
  limb.level = level;
  limb.prosthesis_on = prosthesis_on;
  limb.knee = v1::KNEE_KIND_MECHANICAL;
  return limb;
}

inline FigureBody bodyWith(v1::Side side, v1::LimbLossLevel level, bool prosthesis_on) {
  FigureBody body;
  (side == v1::SIDE_LEFT ? body.left : body.right) = limbState(level, prosthesis_on);
  body.weaker = side;
  return body;
}

inline std::vector<v1::LimbLossLevel> allLevels() {
  return {v1::LIMB_LOSS_LEVEL_PARTIAL_FOOT, v1::LIMB_LOSS_LEVEL_ANKLE_DISARTICULATION,
          v1::LIMB_LOSS_LEVEL_TRANSTIBIAL,  v1::LIMB_LOSS_LEVEL_KNEE_DISARTICULATION,
          v1::LIMB_LOSS_LEVEL_TRANSFEMORAL, v1::LIMB_LOSS_LEVEL_HIP_DISARTICULATION};
}

inline v1::Side otherOne(v1::Side side) { return side == v1::SIDE_LEFT ? v1::SIDE_RIGHT : v1::SIDE_LEFT; }

}  // namespace newel
