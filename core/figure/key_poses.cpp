#include "core/figure/key_poses.h"

#include <algorithm>

namespace newel {
namespace {

// The pose being built up: the clip's poses say only what changes.
struct Running {
  TrunkGoal trunk;
  std::array<v1::Leg, 2> legs;
  std::array<v1::Leg, 2> bare;
  std::array<bool, 2> has_bare{};
  std::vector<v1::Arms> arms;
  std::array<Vec3, kMostProps> props{};
};

class KeyMaker {
 public:
  KeyMaker(v1::Support support, const std::array<LimbState, 2>& limbs) : m_support(support), m_limbs(limbs) {}

  SceneKeys scene(const v1::Scene& scene, const std::vector<const v1::Phase*>& phases) {
    SceneKeys keys;
    keys.part_id = scene.part_id();
    keys.view = scene.view();
    keys.still_balance = scene.still_balance();
    keys.follow = scene.follow();
    keys.travel = {scene.travel().x(), scene.travel().y(), scene.travel().z()};
    addProps(scene, keys);
    apply(scene.start(), keys);
    keys.start = key(keys, 1);
    KeyPose from = keys.start;
    for (int i = 0; i < scene.phases_size(); ++i) {
      PhaseKeys phase;
      phase.id = scene.phases(i).phase_id();
      phase.kind = phases[i]->kind();
      phase.moves = phases[i]->moves();
      phase.mark = scene.phases(i).mark();
      phase.round_s = scene.phases(i).round_s();
      phase.first_from = from;
      phase.from = from;
      for (const v1::Frame& frame : scene.phases(i).frames()) {
        apply(frame.pose(), keys);
        phase.frames.push_back(key(keys, frame.at()));
      }
      from = phase.end();
      keys.phases.push_back(std::move(phase));
    }
    const bool rounds = std::any_of(keys.phases.begin(), keys.phases.end(),
                                    [](const PhaseKeys& phase) { return phase.goesRound(); });
    if (!keys.phases.empty() && (rounds || length(keys.travel) > 0)) loop(keys, from);
    return keys;
  }

 private:
  void addProps(const v1::Scene& scene, SceneKeys& keys) {
    for (int i = 0; i < scene.props_size(); ++i) {
      SceneProp prop;
      prop.prop = scene.props(i);
      prop.shape = shapeOf(prop.prop);
      const v1::PropKind kind = prop.shape.kind;
      const bool runs_on = kind == v1::PROP_KIND_STAIRS || kind == v1::PROP_KIND_RAMP ||
                           kind == v1::PROP_KIND_RAIL || kind == v1::PROP_KIND_FLOOR ||
                           kind == v1::PROP_KIND_LINE || kind == v1::PROP_KIND_COUNTER;
      prop.shape.endless = scene.follow() && runs_on;
      prop.there = isThere(prop.prop.when());
      m_running.props[i] = {prop.prop.x(), prop.prop.y(), prop.prop.z()};
      keys.ground.roll_radius[i] = prop.shape.height / 2;
      keys.props.push_back(prop);
    }
  }

  bool isThere(v1::PropWhen when) const {
    switch (when) {
      case v1::PROP_WHEN_HANDS:
        return m_support != v1::SUPPORT_NO_HANDS;
      case v1::PROP_WHEN_TWO_HANDS:
        return m_support == v1::SUPPORT_TWO_HANDS;
      case v1::PROP_WHEN_SHORT_LIMB_A:
        return m_limbs[kSideA].needsPad();
      case v1::PROP_WHEN_SHORT_LIMB_B:
        return m_limbs[kSideB].needsPad();
      default:
        return true;
    }
  }

  // A foot is lifted on the way that says so, not on the ways after it.
  void landFeet() {
    for (auto* legs : {&m_running.legs, &m_running.bare}) {
      for (v1::Leg& leg : *legs) {
        if (leg.has_print()) leg.mutable_print()->clear_lift();
      }
    }
  }

  void apply(const v1::Pose& pose, const SceneKeys& keys) {
    landFeet();
    applyTrunk(pose.trunk());
    if (pose.has_leg_a()) setLeg(kSideA, pose.leg_a());
    if (pose.has_leg_b()) setLeg(kSideB, pose.leg_b());
    if (pose.has_leg_a_bare()) setBare(kSideA, pose.leg_a_bare());
    if (pose.has_leg_b_bare()) setBare(kSideB, pose.leg_b_bare());
    if (!pose.arms().empty()) m_running.arms.assign(pose.arms().begin(), pose.arms().end());
    for (const auto& move : pose.props()) {
      m_running.props[indexOf(keys, move.prop())] = {move.x(), move.y(), move.z()};
      m_moves[indexOf(keys, move.prop())] = true;
    }
  }

  void setLeg(int side, const v1::Leg& leg) {
    m_running.legs[side] = leg;
    m_running.has_bare[side] = false;
  }
  void setBare(int side, const v1::Leg& leg) {
    m_running.bare[side] = leg;
    m_running.has_bare[side] = true;
  }

  void applyTrunk(const v1::Trunk& said) {
    auto& n = m_running.trunk.n;
    const auto set = [&](bool has, double value, TrunkGoal::Number number) {
      if (has) n[number] = value;
    };
    set(said.has_x(), said.x(), TrunkGoal::kX);
    set(said.has_y(), said.y(), TrunkGoal::kY);
    set(said.has_z(), said.z(), TrunkGoal::kZ);
    set(said.has_lean_deg(), said.lean_deg(), TrunkGoal::kLean);
    set(said.has_roll_deg(), said.roll_deg(), TrunkGoal::kRoll);
    set(said.has_yaw_deg(), said.yaw_deg(), TrunkGoal::kYaw);
    set(said.has_bend_deg(), said.bend_deg(), TrunkGoal::kBend);
    set(said.has_side_deg(), said.side_deg(), TrunkGoal::kSide);
    set(said.has_twist_deg(), said.twist_deg(), TrunkGoal::kTwist);
    set(said.has_nod_deg(), said.nod_deg(), TrunkGoal::kNod);
    set(said.has_tilt_deg(), said.tilt_deg(), TrunkGoal::kTilt);
    set(said.has_turn_deg(), said.turn_deg(), TrunkGoal::kTurn);
    if (said.has_z()) m_running.trunk.stands = false;
    if (said.has_stand_deg()) {
      m_running.trunk.stands = true;
      m_running.trunk.stand_deg = said.stand_deg();
    }
  }

  static int indexOf(const SceneKeys& keys, const std::string& id) {
    for (std::size_t i = 0; i < keys.props.size(); ++i) {
      if (keys.props[i].prop.id() == id) return static_cast<int>(i);
    }
    return 0;
  }

  LegGoal legGoal(int side, const SceneKeys& keys) const {
    const bool bare = m_running.has_bare[side] && !m_limbs[side].hasFoot();
    const v1::Leg& leg = bare ? m_running.bare[side] : m_running.legs[side];
    LegGoal goal;
    switch (leg.how_case()) {
      case v1::Leg::kPrint: {
        const auto& print = leg.print();
        goal.how = LegHow::kPrint;
        goal.n = {print.x(),           print.y(),         print.z(),
                  print.toe_out_deg(), print.pitch_deg(), print.knee_out_deg(),
                  print.slope_deg()};
        goal.lift = print.lift();
        goal.air = print.air();
        break;
      }
      case v1::Leg::kKneel: {
        const auto& kneel = leg.kneel();
        goal.how = LegHow::kKneel;
        goal.n = {kneel.x(),        kneel.y(), kneel.z(), kneel.shank_out_deg(), kneel.shank_up_deg(),
                  kneel.ankle_deg()};
        break;
      }
      case v1::Leg::kOverRoll:
        goal.how = LegHow::kRoll;
        goal.n = {leg.over_roll().knee_deg(), leg.over_roll().ankle_deg()};
        goal.prop = indexOf(keys, leg.over_roll().prop());
        break;
      default: {
        const auto& angles = leg.angles();
        goal.n = {angles.hip_flex_deg(), angles.hip_out_deg(), angles.hip_turn_deg(), angles.knee_deg(),
                  angles.ankle_deg()};
      }
    }
    return goal;
  }

  const v1::Arms& armsNow() const {
    for (const v1::Arms& arms : m_running.arms) {
      const auto& supports = arms.supports();
      if (std::find(supports.begin(), supports.end(), m_support) != supports.end()) return arms;
    }
    return m_running.arms.front();
  }

  ArmGoal armGoal(const v1::Arm& arm, const SceneKeys& keys, const Goal& goal) const {
    ArmGoal result;
    switch (arm.how_case()) {
      case v1::Arm::kHold: {
        const int prop = indexOf(keys, arm.hold().prop());
        const Vec3 point = gripPoint(keys.props[prop].shape, goal.props[prop], arm.hold());
        result.how = ArmHow::kPoint;
        result.n = {point.x, point.y, point.z};
        result.prop = prop;
        result.grip = arm.hold().grip();
        result.fist = !arm.hold().fingertips();
        break;
      }
      case v1::Arm::kPlant:
        result.how = ArmHow::kPlant;
        result.n = {arm.plant().x(), arm.plant().y(), arm.plant().z(), arm.plant().turn_out_deg()};
        result.fist = arm.plant().fist();
        break;
      case v1::Arm::kTouch:
        result.how = ArmHow::kTouch;
        result.n = {arm.touch().along(), arm.touch().across(), arm.touch().round_deg()};
        result.part = arm.touch().part();
        break;
      default: {
        const auto& angles = arm.angles();
        result.n = {angles.flex_deg(), angles.out_deg(), angles.turn_deg(), angles.elbow_deg(),
                    angles.wrist_deg()};
      }
    }
    if (result.how != ArmHow::kAngles) result.n[ArmGoal::kElbowOut] = arm.elbow_out_deg();
    return result;
  }

  KeyPose key(const SceneKeys& keys, double at) const {
    KeyPose pose;
    pose.at = at;
    pose.goal.trunk = m_running.trunk;
    pose.goal.props = m_running.props;
    for (int side = 0; side < 2; ++side) pose.goal.legs[side] = legGoal(side, keys);
    const v1::Arms& arms = armsNow();
    pose.goal.arms = {armGoal(arms.a(), keys, pose.goal), armGoal(arms.b(), keys, pose.goal)};
    pose.posture = solve(pose.goal, m_limbs, keys.ground);
    pose.goal.trunk.n[TrunkGoal::kZ] = pose.posture.hips.z;
    pose.goal.trunk.stands = false;
    return pose;
  }

  // Later runs begin where the one before ended, seen from the place it brought the body to.
  void loop(SceneKeys& keys, const KeyPose& last) const {
    const KeyPose from = moved(keys, last, -keys.travel, 0);
    for (PhaseKeys& phase : keys.phases) {
      phase.from = from;
      if (phase.goesRound()) {
        const KeyPose& next_to_last = phase.frames[phase.frames.size() - 2];
        phase.round_before = moved(keys, next_to_last, -keys.travel, next_to_last.at - 1);
        phase.round_after = moved(keys, phase.frames.front(), keys.travel, phase.frames.front().at + 1);
      }
      if (!phase.frames.empty()) break;
    }
  }

  KeyPose moved(const SceneKeys& keys, const KeyPose& key, const Vec3& way, double at) const {
    KeyPose pose;
    pose.at = at;
    pose.goal = shifted(key.goal, way);
    // What the body takes along (a cane) goes with it; rails and ground stay.
    for (int i = 0; i < kMostProps; ++i) {
      if (m_moves[i]) pose.goal.props[i] = pose.goal.props[i] + way;
    }
    pose.posture = solve(pose.goal, m_limbs, keys.ground);
    return pose;
  }

  v1::Support m_support;
  std::array<LimbState, 2> m_limbs;
  Running m_running;
  std::array<bool, kMostProps> m_moves{};
};

}  // namespace

Goal shifted(const Goal& goal, const Vec3& shift) {
  Goal moved = goal;
  const auto add = [&](auto& n) {
    n[0] += shift.x;
    n[1] += shift.y;
    n[2] += shift.z;
  };
  add(moved.trunk.n);
  for (LegGoal& leg : moved.legs) {
    if (leg.how == LegHow::kPrint || leg.how == LegHow::kKneel) add(leg.n);
  }
  for (ArmGoal& arm : moved.arms) {
    if (arm.how == ArmHow::kPoint || arm.how == ArmHow::kPlant) add(arm.n);
  }
  return moved;
}

Choreography keysOf(const v1::Clip& clip, const v1::Exercise& exercise, v1::Support support,
                    const std::array<LimbState, 2>& limbs) {
  Choreography keys;
  keys.limbs = limbs;
  keys.support = support;
  for (const v1::Scene& scene : clip.scenes()) {
    std::vector<const v1::Phase*> phases;
    for (const v1::Part& part : exercise.parts()) {
      if (!scene.part_id().empty() && scene.part_id() != part.id()) continue;
      for (const v1::Phase& phase : part.phases()) phases.push_back(&phase);
    }
    keys.scenes.push_back(KeyMaker(support, limbs).scene(scene, phases));
  }
  return keys;
}

}  // namespace newel
