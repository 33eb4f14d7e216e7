// A clip made ready for one body and one way of support: every key pose complete and solved.
// Made once when a figure is set up; read at every frame. Not here: time (motion.h).
#pragma once

#include <array>
#include <string>
#include <vector>

#include "core/figure/goal.h"
#include "core/figure/props.h"
#include "core/figure/skeleton.h"
#include "core/figure/solve.h"
#include "core/records/clip.pb.h"

namespace newel {

struct KeyPose {
  double at = 1;  // share of its phase
  Goal goal;      // the height of the hips is said outright
  Posture posture;
};

struct PhaseKeys {
  std::string id;
  v1::PhaseKind kind = v1::PHASE_KIND_MOVE;
  v1::LimbRole moves = v1::LIMB_ROLE_BOTH;
  v1::Mark mark;
  // What it begins from: at the first run of the scene, and at every later one (differs where the body gets
  // ahead by a step without bringing its feet level).
  KeyPose first_from;
  KeyPose from;
  std::vector<KeyPose> frames;  // empty in a hold
  // Over 0: the frames are one round that goes on without a stop; with the keys on the far sides of its seam.
  double round_s = 0;
  KeyPose round_before;
  KeyPose round_after;
  bool goesRound() const { return round_s > 0; }
  const KeyPose& end() const { return frames.empty() ? from : frames.back(); }
};

struct SceneProp {
  v1::Prop prop;
  PropShape shape;
  bool there = true;
};

struct SceneKeys {
  std::string part_id;
  v1::View view;
  bool still_balance = false;
  bool follow = false;
  Vec3 travel;
  std::vector<SceneProp> props;
  Ground ground;
  KeyPose start;
  std::vector<PhaseKeys> phases;
};

struct Choreography {
  std::array<LimbState, 2> limbs;  // side a, side b
  v1::Support support = v1::SUPPORT_UNSPECIFIED;
  std::vector<SceneKeys> scenes;
};

// `clip` must fit `exercise` (clip_book.h); unknown props were refused there.
Choreography keysOf(const v1::Clip& clip, const v1::Exercise& exercise, v1::Support support,
                    const std::array<LimbState, 2>& limbs);

// The goal with everything moved by `shift`.
Goal shifted(const Goal& goal, const Vec3& shift);

}  // namespace newel
