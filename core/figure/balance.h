// Where the body's centre of mass is and what carries it. For the audit and for tests.
#pragma once

#include <array>
#include <vector>

#include "core/figure/key_poses.h"
#include "core/figure/posture.h"
#include "core/figure/skeleton.h"

namespace newel {

// Masses as in skeleton.h, with lost parts left out and a prosthesis at its share.
Vec3 centreOfMass(const Posture& posture, const std::array<LimbState, 2>& limbs);

// Corners of what stands, kneels, sits or holds: soles, knees, planted palms, hands that grip, the seat under
// the hips. Fingertips and hands on the own body do not count.
std::vector<Vec3> carriers(const SceneKeys& scene, const std::array<LimbState, 2>& limbs, const Goal& goal,
                           const Posture& posture);

// How far inside the hull of `corners`, seen from above, a point is; below 0: how far outside.
double marginInside(const std::vector<Vec3>& corners, const Vec3& point);

}  // namespace newel
