// Walks every frame of a clip and says where the drawn body could not be a body: bones that stretch, joints
// past their range, feet that slide or sink, hands that miss, balance that would not hold.
// Run by a test over every clip, level, side, build and way of support. Not here: whether the exercise itself
// is safe for anyone (core/safety).
#pragma once

#include <array>
#include <map>
#include <string>
#include <vector>

#include "core/figure/body_shape.h"
#include "core/figure/key_poses.h"
#include "core/records/clip.pb.h"
#include "core/records/exercise.pb.h"

namespace newel {

// The stated tolerances. Lengths in body heights, ours where no source is named.
struct AuditLimits {
  double frames_per_s = 30;
  double segment = 1e-6;         // change of a segment's length
  double joint_deg = 0.5;        // past the range of joint_ranges.h or its exception
  double contact = 0.005;        // way of a planted contact; miss of a hand or knee
  double hard = 0.006;           // a shoe or a hand in something solid
  double soft_share = 0.28;      // of its radius a soft part may be pressed flat
  double limb_gap_share = 0.55;  // of the two radii that limb axes keep apart
  double speed_per_s = 1.8;  // of any joint; a foot swung in walking is faster (common practice, no source)
  double balance = 0.0;      // centre of mass inside what carries
};

struct AuditFinding {
  std::string check;  // "segment", "joint", "contact", "solid", "gap", "speed", "balance", "loop", "ground"
  std::string where;  // scene or phase and its fraction
  std::string what;
  double amount = 0;  // how far past the tolerance's own measure
};

struct AuditReport {
  int frames = 0;
  std::map<std::string, double> worst;  // by check: the largest amount met, good or bad
  std::vector<AuditFinding> findings;   // the worst of each check and thing, empty when clean
};

// `keys` must come from `clip` and `exercise`. Durations are those of the exercise's default dose.
AuditReport auditClip(const Choreography& keys, const v1::Clip& clip, const v1::Exercise& exercise,
                      const BodyShape& shape, const AuditLimits& limits = {});

// Who an exercise is drawn for, limbs of side a and side b: nobody's limb lost, then with the prosthesis on
// and off (as the exercise has it) every level lost on side a, on side b, on both.
std::vector<std::array<LimbState, 2>> auditedLimbs(const v1::Exercise& exercise);

// auditClip() over every build, way of support and auditedLimbs(): the findings, each with the body it was
// met on in `where`, and the worst of each check.
AuditReport auditEveryBody(const v1::Clip& clip, const v1::Exercise& exercise);

}  // namespace newel
