#include "core/figure/motion.h"

#include <algorithm>
#include <cmath>

namespace newel {
namespace {

// Slope at a key between the slopes before and after it: no overshoot, no stop in the middle of a movement
// (Fritsch and Carlson 1980, from memory).
double slopeAt(double before, double after) {
  return before * after <= 0 ? 0 : 2 * before * after / (before + after);
}

// Key times and a reader of one number at each of up to four neighbouring keys.
struct Neighbours {
  const KeyPose* before = nullptr;  // may be absent
  const KeyPose* a = nullptr;
  const KeyPose* b = nullptr;
  const KeyPose* after = nullptr;  // may be absent
  double before_at = 0;
  double a_at = 0;
  double share = 0;  // between a and b
};

double mixNumber(double before, double a, double b, double after, const Neighbours& keys) {
  const double span = keys.b->at - keys.a_at;
  const double here = (b - a) / span;
  const double start =
      keys.before == nullptr ? here : slopeAt((a - before) / (keys.a_at - keys.before_at), here);
  const double end =
      keys.after == nullptr ? here : slopeAt(here, (after - b) / (keys.after->at - keys.b->at));
  const double u = keys.share;
  const double v = 1 - u;
  return a * v * v * (1 + 2 * u) + b * u * u * (1 + 2 * v) + span * (start * v * v * u - end * u * u * v);
}

// `read` gives the numbers of a key; keys of another kind are left out as neighbours by `same`.
template <typename Numbers, typename Read, typename Same>
void mixNumbers(Numbers& out, const Neighbours& keys, const Read& read, const Same& same) {
  Neighbours near = keys;
  if (near.before != nullptr && !same(*near.before)) near.before = nullptr;
  if (near.after != nullptr && !same(*near.after)) near.after = nullptr;
  const Numbers& a = read(*keys.a);
  const Numbers& b = read(*keys.b);
  const Numbers& before = near.before == nullptr ? a : read(*near.before);
  const Numbers& after = near.after == nullptr ? b : read(*near.after);
  for (std::size_t i = 0; i < out.size(); ++i) out[i] = mixNumber(before[i], a[i], b[i], after[i], near);
}

double legBend(const LegPosture& leg) { return anglesOf(inverse(leg.thigh) * leg.shank).y; }
double elbowBend(const ArmPosture& arm) { return -anglesOf(inverse(arm.upper) * arm.fore).y; }

void mixLeg(LegGoal& out, const Neighbours& keys, int side) {
  const LegGoal& a = keys.a->goal.legs[side];
  const LegGoal& b = keys.b->goal.legs[side];
  const double u = keys.share;
  if (a.how == b.how && (a.how != LegHow::kRoll || a.prop == b.prop)) {
    out = b;
    mixNumbers(
        out.n, keys, [&](const KeyPose& key) -> const auto& { return key.goal.legs[side].n; },
        [&](const KeyPose& key) { return key.goal.legs[side].how == a.how; });
    // Up first, then over: the foot clears the edge of a step.
    if (a.how == LegHow::kPrint) out.n[2] += b.lift * std::sqrt(std::max(0.0, 1 - (2 * u - 1) * (2 * u - 1)));
    out.air = !standsThrough(a, b);
    return;
  }
  const LegPosture& pa = keys.a->posture.legs[side];
  const LegPosture& pb = keys.b->posture.legs[side];
  out.how = LegHow::kTurns;
  out.hip =
      between(inverse(keys.a->posture.pelvis) * pa.thigh, inverse(keys.b->posture.pelvis) * pb.thigh, u);
  out.n[0] = legBend(pa) + (legBend(pb) - legBend(pa)) * u;
  out.ankle = between(inverse(pa.shank) * pa.foot, inverse(pb.shank) * pb.foot, u);
  out.air = true;
}

void mixArm(ArmGoal& out, const Neighbours& keys, int side) {
  const ArmGoal& a = keys.a->goal.arms[side];
  const ArmGoal& b = keys.b->goal.arms[side];
  const double u = keys.share;
  if (a.how == b.how && (a.how != ArmHow::kTouch || a.part == b.part)) {
    out = b;
    mixNumbers(
        out.n, keys, [&](const KeyPose& key) -> const auto& { return key.goal.arms[side].n; },
        [&](const KeyPose& key) { return key.goal.arms[side].how == a.how; });
    out.fist = a.fist && b.fist;
    if (a.prop != b.prop) out.prop = -1;
    return;
  }
  const ArmPosture& pa = keys.a->posture.arms[side];
  const ArmPosture& pb = keys.b->posture.arms[side];
  out.how = ArmHow::kTurns;
  out.shoulder =
      between(inverse(keys.a->posture.chest) * pa.upper, inverse(keys.b->posture.chest) * pb.upper, u);
  out.n[0] = elbowBend(pa) + (elbowBend(pb) - elbowBend(pa)) * u;
  out.wrist = between(inverse(pa.fore) * pa.hand, inverse(pb.fore) * pb.hand, u);
  out.fist = (u < 0.5 ? pa : pb).closed;
}

// As what holds it is mixed, so that hand and thing stay together.
void mixProp(Vec3& out, const Neighbours& keys, int prop) {
  const Vec3& a = keys.a->goal.props[prop];
  const Vec3& b = keys.b->goal.props[prop];
  const Vec3& before = keys.before == nullptr ? a : keys.before->goal.props[prop];
  const Vec3& after = keys.after == nullptr ? b : keys.after->goal.props[prop];
  out = {mixNumber(before.x, a.x, b.x, after.x, keys), mixNumber(before.y, a.y, b.y, after.y, keys),
         mixNumber(before.z, a.z, b.z, after.z, keys)};
}

// Planted legs never let the hips rise higher than they reach; this bend is left in them at least.
constexpr double kLeastBendDeg = 1.5;

void mixPoses(const Choreography& keys, const SceneKeys& scene, const Neighbours& near, Pose& pose) {
  Goal& goal = pose.goal;
  mixNumbers(
      goal.trunk.n, near, [](const KeyPose& key) -> const auto& { return key.goal.trunk.n; },
      [](const KeyPose&) { return true; });
  for (int side = 0; side < 2; ++side) mixLeg(goal.legs[side], near, side);
  for (int side = 0; side < 2; ++side) mixArm(goal.arms[side], near, side);
  for (int i = 0; i < kMostProps; ++i) mixProp(goal.props[i], near, i);
  goal.trunk.stands = false;
  goal.trunk.stand_deg = kLeastBendDeg;
  double& height = goal.trunk.n[TrunkGoal::kZ];
  height = std::min(height, standingHeight(goal, keys.limbs));
  pose.posture = solve(goal, keys.limbs, scene.ground);
}

void show(const KeyPose& key, Pose& pose) {
  pose.goal = key.goal;
  pose.posture = key.posture;
}

// Share of the scene's moving phases done; the view follows it.
double runDone(const SceneKeys& scene, int phase, double eased) {
  int moving = 0;
  double done = 0;
  for (int i = 0; i < static_cast<int>(scene.phases.size()); ++i) {
    if (scene.phases[i].frames.empty()) continue;
    ++moving;
    if (i < phase) done += 1;
    if (i == phase) done += eased;
  }
  return moving == 0 ? 0 : done / moving;
}

bool near(double a, double b) { return std::fabs(a - b) < 1e-9; }

}  // namespace

bool standsThrough(const LegGoal& from, const LegGoal& to) {
  if (from.how != to.how) return false;
  if (from.how == LegHow::kRoll) return from.prop == to.prop;
  if (from.how != LegHow::kPrint && from.how != LegHow::kKneel) return false;
  const bool same_place = near(from.n[0], to.n[0]) && near(from.n[1], to.n[1]) && near(from.n[2], to.n[2]);
  const bool same_turn = near(from.n[3], to.n[3]);
  return same_place && same_turn && !from.air && !to.air && (from.how == LegHow::kKneel || to.lift == 0);
}

bool holdsThrough(const ArmGoal& from, const ArmGoal& to, const Goal& a, const Goal& b) {
  if (from.how != to.how || from.prop != to.prop) return false;
  if (from.how == ArmHow::kTouch) return from.part == to.part && near(from.n[0], to.n[0]);
  if (from.how != ArmHow::kPoint && from.how != ArmHow::kPlant) return false;
  // What is held may itself move.
  const Vec3 way = from.prop < 0 ? Vec3{} : b.props[from.prop] - a.props[from.prop];
  return near(from.n[0] + way.x, to.n[0]) && near(from.n[1] + way.y, to.n[1]) &&
         near(from.n[2] + way.z, to.n[2]);
}

void poseAt(const Choreography& keys, const Moment& moment, Pose& pose) {
  const SceneKeys& scene = keys.scenes[moment.scene];
  pose.run = 0;
  if (moment.phase < 0) {
    show(scene.start, pose);
    return;
  }
  const PhaseKeys& phase = scene.phases[moment.phase];
  const KeyPose& from = moment.first_run ? phase.first_from : phase.from;
  // What goes round never stops between two rounds.
  const double done = phase.goesRound() ? moment.fraction : personEase(moment.fraction);
  pose.run = runDone(scene, moment.phase, done);
  if (phase.frames.empty() || done <= 0) {
    show(from, pose);
    return;
  }
  int index = 0;
  while (phase.frames[index].at < done && index + 1 < static_cast<int>(phase.frames.size())) ++index;
  if (done >= 1) {
    show(phase.frames.back(), pose);
    return;
  }
  Neighbours near;
  near.a = index == 0 ? &from : &phase.frames[index - 1];
  near.a_at = index == 0 ? 0 : near.a->at;
  near.b = &phase.frames[index];
  if (index > 0) {
    near.before = index == 1 ? &from : &phase.frames[index - 2];
    near.before_at = index == 1 ? 0 : near.before->at;
  }
  if (index + 1 < static_cast<int>(phase.frames.size())) near.after = &phase.frames[index + 1];
  if (phase.goesRound() && index == 0 && !moment.first_run) {
    near.before = &phase.round_before;
    near.before_at = phase.round_before.at;
  }
  if (phase.goesRound() && near.after == nullptr) near.after = &phase.round_after;
  near.share = (done - near.a_at) / (near.b->at - near.a_at);
  mixPoses(keys, scene, near, pose);
}

v1::Side sideAOf(v1::LimbRole side_a, v1::LimbRole moves, v1::Side side, v1::Side weaker, v1::Side fallback) {
  const auto other = [](v1::Side s) { return s == v1::SIDE_LEFT ? v1::SIDE_RIGHT : v1::SIDE_LEFT; };
  if (side_a == v1::LIMB_ROLE_WEAKER) return weaker;
  if (side_a == v1::LIMB_ROLE_STRONGER) return other(weaker);
  if (side == v1::SIDE_UNSPECIFIED) return fallback;
  return moves == v1::LIMB_ROLE_OTHER ? other(side) : side;
}

int beatAt(const v1::Timeline& timeline, std::int64_t ms) {
  int low = 0;
  int high = timeline.beats_size() - 1;
  if (high < 0) return -1;
  while (low < high) {
    const int middle = (low + high + 1) / 2;
    if (timeline.beats(middle).start_ms() <= ms) {
      low = middle;
    } else {
      high = middle - 1;
    }
  }
  return low;
}

namespace {

bool findPhase(const Choreography& keys, const std::string& id, Moment& moment) {
  for (int scene = 0; scene < static_cast<int>(keys.scenes.size()); ++scene) {
    const auto& phases = keys.scenes[scene].phases;
    for (int phase = 0; phase < static_cast<int>(phases.size()); ++phase) {
      if (phases[phase].id != id) continue;
      moment.scene = scene;
      moment.phase = phase;
      return true;
    }
  }
  return false;
}

// Beats that the compiler adds (get ready, rest, change of side) show where the next phase begins.
int nextWithPhase(const v1::Timeline& timeline, int beat) {
  for (int i = beat; i < timeline.beats_size(); ++i) {
    if (!timeline.beats(i).phase_id().empty()) return i;
  }
  return -1;
}

// Has the scene run before without a break (only then does it begin from its own end)?
bool isFirstRun(const v1::Timeline& timeline, int beat, const PhaseKeys& phase) {
  for (int i = beat - 1; i >= 0; --i) {
    const v1::Beat& before = timeline.beats(i);
    if (before.phase_id().empty() || before.part_id() != timeline.beats(beat).part_id()) return true;
    if (before.phase_id() == phase.id) return false;
  }
  return true;
}

// When the bout began that this beat is a piece of (bouts are told a minute a beat).
std::int64_t boutStart(const v1::Timeline& timeline, int beat) {
  while (beat > 0 && timeline.beats(beat - 1).phase_id() == timeline.beats(beat).phase_id()) --beat;
  return timeline.beats(beat).start_ms();
}

// Rounds begin with the bout, not with its pieces.
void setRound(const v1::Timeline& timeline, int beat, std::int64_t ms, double round_s, Moment& moment) {
  const double rounds = static_cast<double>(ms - boutStart(timeline, beat)) / (round_s * 1000);
  moment.first_run = rounds < 1;
  moment.fraction = std::max(0.0, rounds - std::floor(rounds));
}

}  // namespace

Moment momentAt(const Choreography& keys, const v1::Clip& clip, const v1::Timeline& timeline, std::int64_t ms,
                v1::Side weaker) {
  Moment moment;
  moment.side_a = weaker;
  const int index = beatAt(timeline, ms);
  if (index < 0) return moment;
  const v1::Beat& beat = timeline.beats(index);
  const int shown = beat.phase_id().empty() ? nextWithPhase(timeline, index) : index;
  if (shown < 0 || !findPhase(keys, timeline.beats(shown).phase_id(), moment)) return moment;
  const SceneKeys& scene = keys.scenes[moment.scene];
  const PhaseKeys& phase = scene.phases[moment.phase];
  moment.side_a = sideAOf(clip.side_a(), phase.moves, timeline.beats(shown).side(), weaker, weaker);
  moment.first_run = isFirstRun(timeline, shown, phase);
  if (shown != index) {
    moment.phase = -1;
    return moment;
  }
  if (phase.goesRound()) {
    setRound(timeline, index, ms, phase.round_s, moment);
    return moment;
  }
  moment.fraction =
      std::clamp(static_cast<double>(ms - beat.start_ms()) / static_cast<double>(beat.length_ms()), 0.0, 1.0);
  return moment;
}

}  // namespace newel
