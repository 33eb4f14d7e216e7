#include "core/figure/skeleton.h"

namespace newel {

Remaining remainingOf(v1::LimbLossLevel level) {
  switch (level) {
    case v1::LIMB_LOSS_LEVEL_PARTIAL_FOOT:
      return {1, 1, 0.5};
    case v1::LIMB_LOSS_LEVEL_ANKLE_DISARTICULATION:
      return {1, 1, 0};
    case v1::LIMB_LOSS_LEVEL_TRANSTIBIAL:
      return {1, 0.45, 0};
    case v1::LIMB_LOSS_LEVEL_KNEE_DISARTICULATION:
      return {1, 0, 0};
    case v1::LIMB_LOSS_LEVEL_TRANSFEMORAL:
      return {0.6, 0, 0};
    case v1::LIMB_LOSS_LEVEL_HIP_DISARTICULATION:
      return {0, 0, 0};
    default:
      return {1, 1, 1};
  }
}

std::array<PartMass, 3> legMasses(const LimbState& limb) {
  const Remaining left = remainingOf(limb.level);
  const double share = limb.prosthetic() ? masses::kProsthesisShare : 0;
  const auto part = [&](const SegmentMass& segment, double remaining) {
    return PartMass{segment.mass * remaining, segment.mass * (1 - remaining) * share};
  };
  return {part(masses::kThigh, left.thigh), part(masses::kShank, left.shank), part(masses::kFoot, left.foot)};
}

}  // namespace newel
