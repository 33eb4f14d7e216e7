#include "core/figure/audit.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

#include "core/figure/audit_shapes.h"
#include "core/figure/balance.h"
#include "core/figure/joint_ranges.h"
#include "core/figure/motion.h"

namespace newel {
namespace {

using namespace lengths;

double usualSeconds(const v1::Exercise& exercise, const std::string& phase_id) {
  const v1::Dose& dose = exercise.default_dose();
  for (const v1::Part& part : exercise.parts()) {
    for (const v1::Phase& phase : part.phases()) {
      if (phase.id() != phase_id) continue;
      switch (phase.length()) {
        case v1::PHASE_LENGTH_MOVE:
          return dose.sets().move_s();
        case v1::PHASE_LENGTH_RETURN:
          return dose.sets().return_s();
        case v1::PHASE_LENGTH_FIXED:
          return phase.fixed_s();
        case v1::PHASE_LENGTH_STEP:
          return dose.passes().step_s();
        default:
          return 0.2;  // a hold shows one picture, however long
      }
    }
  }
  return 1;
}

class Auditor {
 public:
  Auditor(const Choreography& keys, const v1::Clip& clip, const v1::Exercise& exercise,
          const BodyShape& shape, const AuditLimits& limits)
      : m_keys(keys), m_exercise(exercise), m_limits(limits), m_shapes(keys.limbs, shape) {
    for (int joint = 0; joint < kJointCount; ++joint)
      m_ranges[joint] = rangeOf(static_cast<Joint>(joint)).limit_deg;
    for (const auto& exception : clip.exceptions()) {
      const Joint joint = jointNamed(exception.joint());
      if (joint != kJointCount) m_ranges[joint] = exception.limit_deg();
    }
  }

  AuditReport run() {
    for (m_scene = 0; m_scene < static_cast<int>(m_keys.scenes.size()); ++m_scene) runScene();
    for (auto& [key, finding] : m_found) m_report.findings.push_back(finding);
    return m_report;
  }

 private:
  const SceneKeys& scene() const { return m_keys.scenes[m_scene]; }

  // Notes `amount` and, when it passes `limit`, the worst case of this check and thing.
  void note(const std::string& check, const std::string& what, double amount, double limit) {
    double& worst = m_report.worst.emplace(check, amount).first->second;
    worst = std::max(worst, amount);
    if (amount <= limit) return;
    AuditFinding& finding = m_found[check + " " + what];
    if (!finding.check.empty() && finding.amount >= amount) return;
    finding = {check, m_where, what, amount};
  }

  void setWhere(const std::string& phase, double fraction) {
    char text[128];
    std::snprintf(text, sizeof text, "%s at %.2f", phase.c_str(), fraction);
    m_where = (scene().part_id.empty() ? "" : scene().part_id + "/") + std::string(text);
  }

  void runScene() {
    Moment moment;
    moment.scene = m_scene;
    m_before.clear();
    setWhere("start", 0);
    frame(moment, 0);
    checkBalance(scene().start.goal, scene().start.posture);
    checkKeys();
    for (int phase = 0; phase < static_cast<int>(scene().phases.size()); ++phase) {
      for (const bool first : {true, false}) {
        // A later run differs only where the scene begins elsewhere.
        const bool goes_on = scene().phases[phase].goesRound() || length(scene().travel) > 0;
        if (!first && (phase > 0 || !goes_on)) continue;
        moment.phase = phase;
        moment.first_run = first;
        runPhase(moment);
      }
    }
    checkLoop();
  }

  void runPhase(Moment moment) {
    const PhaseKeys& phase = scene().phases[moment.phase];
    const double seconds = phase.goesRound() ? phase.round_s : usualSeconds(m_exercise, phase.id);
    const int frames = std::max(1, static_cast<int>(seconds * m_limits.frames_per_s));
    m_before.clear();
    for (int i = 0; i <= frames; ++i) {
      moment.fraction = static_cast<double>(i) / frames;
      setWhere(phase.id, moment.fraction);
      frame(moment, seconds / frames);
    }
    if (phase.frames.empty()) checkBalance(m_pose.goal, m_pose.posture);
  }

  void frame(const Moment& moment, double step_s) {
    ++m_report.frames;
    poseAt(m_keys, moment, m_pose);
    checkSegments();
    checkJoints();
    checkContacts(moment);
    checkSolids();
    checkGaps();
    checkSpeed(step_s);
  }

  void segment(const char* name, const Vec3& a, const Vec3& b, double expected) {
    note("segment", name, std::fabs(distance(a, b) - expected), m_limits.segment);
  }

  void checkSegments() {
    const Posture& p = m_pose.posture;
    segment("pelvis", p.hips, p.waist, kPelvis);
    segment("belly", p.waist, p.ribs, kBelly);
    segment("chest", p.ribs, p.neck, kChest);
    for (int side = 0; side < 2; ++side) {
      const LegPosture& leg = p.legs[side];
      const ArmPosture& arm = p.arms[side];
      segment("hip", p.hips, leg.hip, kHipHalf);
      segment("thigh", leg.hip, leg.knee, kThigh);
      segment("shank", leg.knee, leg.ankle, kShank);
      segment("heel", leg.ankle, leg.heel, std::hypot(kHeel, kFootHeight));
      segment("ball", leg.ankle, leg.ball, std::hypot(kBall, kFootHeight));
      segment("toe", leg.ball, leg.toe, kToe - kBall);
      segment("shoulder", p.neck, arm.shoulder, kShoulderHalf);
      segment("upper arm", arm.shoulder, arm.elbow, kUpperArm);
      segment("forearm", arm.elbow, arm.wrist, kForearm);
      segment("hand", arm.wrist, arm.tip, kHand);
    }
  }

  // A joint that is lost, or a device that has no such joint, has no range.
  bool hasJoint(int joint, int side) const {
    const LimbState& limb = m_keys.limbs[side];
    if (!limb.bare()) return true;
    const Remaining left = remainingOf(limb.level);
    if (joint >= kAnkleUp && joint <= kFootOut) return left.foot > 0;
    if (joint == kKneeFlexion || joint == kKneeExtension) return left.shank > 0;
    if (joint <= kHipOutward) return left.thigh > 0;
    return true;
  }

  void checkJoints() {
    for (int side = 0; side < 2; ++side) {
      const JointAngles angles = jointAngles(m_pose.posture, side);
      for (int joint = 0; joint < kJointCount; ++joint) {
        if (!hasJoint(joint, side)) continue;
        note("joint", std::string(rangeOf(static_cast<Joint>(joint)).name) + (side == kSideA ? " a" : " b"),
             angles[joint] - m_ranges[joint], m_limits.joint_deg);
      }
    }
  }

  const KeyPose* keyBefore(const Moment& moment, const KeyPose** after) const {
    const PhaseKeys& phase = scene().phases[moment.phase];
    const KeyPose* from = moment.first_run ? &phase.first_from : &phase.from;
    const double done = phase.goesRound() ? moment.fraction : personEase(moment.fraction);
    for (const KeyPose& key : phase.frames) {
      *after = &key;
      if (done <= key.at) return from;
      from = &key;
    }
    *after = from;
    return from;
  }

  void checkContacts(const Moment& moment) {
    const KeyPose* after = &scene().start;
    const KeyPose* from = moment.phase < 0 ? &scene().start : keyBefore(moment, &after);
    for (int side = 0; side < 2; ++side) {
      m_hand_on_body[side] =
          from->goal.arms[side].how == ArmHow::kTouch || after->goal.arms[side].how == ArmHow::kTouch;
      checkLegContact(from->goal.legs[side], after->goal.legs[side], side);
      checkHandContact(from->goal, after->goal, side);
    }
  }

  void checkLegContact(const LegGoal& from, const LegGoal& to, int side) {
    const LimbState& limb = m_keys.limbs[side];
    if (!standsThrough(from, to)) return;
    const LegPosture& leg = m_pose.posture.legs[side];
    const std::string name = side == kSideA ? " a" : " b";
    if (from.how == LegHow::kPrint && limb.hasFoot()) {
      LegGoal flat = from;
      flat.n[4] = 0;
      flat.n[6] = m_pose.goal.legs[side].n[6];  // a board tips with the feet on it
      const FootPlace place = placeFoot(flat, side);
      const Vec3 still = m_pose.goal.legs[side].n[4] > 0 ? leg.heel : leg.ball;
      const double along = m_pose.goal.legs[side].n[4] > 0 ? -kHeel : kBall;
      note("contact", "foot" + name, distance(still, place.ankle + place.flat * Vec3{along, 0, -kFootHeight}),
           m_limits.contact);
    }
    if (from.how == LegHow::kKneel && limb.canKneel()) {
      note("contact", "knee" + name, distance(leg.knee, {from.n[0], from.n[1], from.n[2]}), m_limits.contact);
    }
    if (from.how == LegHow::kRoll &&
        remainingOf(limb.bare() ? limb.level : v1::LIMB_LOSS_LEVEL_UNSPECIFIED).thigh > 0) {
      const Vec3 roll = m_pose.goal.props[from.prop];
      const double along = dot(roll - leg.hip, leg.knee - leg.hip) / (kThigh * kThigh);
      const double left = remainingOf(limb.bare() ? limb.level : v1::LIMB_LOSS_LEVEL_UNSPECIFIED).thigh;
      note("contact", "thigh on the roll" + name, std::max(0.0, along - left) * kThigh, 0.02);
    }
  }

  void checkHandContact(const Goal& from, const Goal& to, int side) {
    const ArmGoal& now = m_pose.goal.arms[side];
    const ArmPosture& arm = m_pose.posture.arms[side];
    const std::string name = side == kSideA ? " a" : " b";
    if (now.how == ArmHow::kPoint && now.prop >= 0) {
      const Vec3 touching = now.fist ? arm.grip : arm.wrist - arm.hand.z * kFingertip;
      note("contact", "hand" + name, distance(touching, {now.n[0], now.n[1], now.n[2]}), m_limits.contact);
    }
    if (now.how == ArmHow::kPlant && holdsThrough(from.arms[side], to.arms[side], from, to)) {
      const Vec3 palm{now.n[0], now.n[1], now.n[2] + (now.fist ? 0.01 : 0.02)};
      note("contact", "palm" + name, distance(arm.grip, palm), m_limits.contact);
    }
  }

  // Solid ground is the floor wherever nothing else is, unless stairs or a ramp take its place.
  bool onFloor() const {
    for (const SceneProp& prop : scene().props) {
      const v1::PropKind kind = prop.shape.kind;
      if (prop.shape.endless && (kind == v1::PROP_KIND_STAIRS || kind == v1::PROP_KIND_RAMP)) return false;
    }
    return true;
  }

  bool besideDescent(const Vec3& at) const {
    // Beyond the edge of a landing the ground is lower than the floor.
    for (std::size_t i = 0; i < scene().props.size(); ++i) {
      const SceneProp& prop = scene().props[i];
      const bool climbs = prop.shape.kind == v1::PROP_KIND_STAIRS || prop.shape.kind == v1::PROP_KIND_RAMP;
      if (climbs && prop.shape.rise < 0 && surfaceHeight(prop.shape, m_pose.goal.props[i], at.x, at.y) < 0)
        return true;
    }
    return false;
  }

  void checkSolids() {
    const bool floor = onFloor();
    for (const BodyBall& ball : m_shapes.balls(m_pose.posture)) {
      const double limit = ball.hard ? m_limits.hard : m_limits.soft_share * ball.radius;
      if (floor && !besideDescent(ball.at))
        note("solid", std::string(ball.name) + " in floor", ball.radius - ball.at.z, limit);
      for (std::size_t prop = 0; prop < scene().props.size(); ++prop) {
        const SceneProp& thing = scene().props[prop];
        const bool carried =
            thing.prop.to() != v1::BODY_POINT_UNSPECIFIED || thing.prop.from() != v1::BODY_POINT_UNSPECIFIED;
        if (!thing.there || carried) continue;
        const double depth = depthInside(thing.shape, m_pose.goal.props[prop], ball.at, ball.radius);
        if (depth > 0) note("solid", std::string(ball.name) + " in " + thing.prop.id(), depth, limit);
      }
    }
  }

  void checkGaps() {
    const auto& axes = m_shapes.axes(m_pose.posture, m_hand_on_body);
    for (std::size_t i = 0; i < axes.size(); ++i) {
      for (std::size_t j = i + 1; j < axes.size(); ++j) {
        if (axes[i].limb == axes[j].limb) continue;
        const double least = (axes[i].radius + axes[j].radius) * m_limits.limb_gap_share;
        const double gap = gapBetween(axes[i], axes[j]);
        if (gap < least * 2) note("gap", std::string(axes[i].name) + " and " + axes[j].name, least - gap, 0);
      }
    }
  }

  void checkSpeed(double step_s) {
    const Posture& p = m_pose.posture;
    std::vector<Vec3> now = {p.hips, p.neck, p.head};
    for (int side = 0; side < 2; ++side) {
      const LegPosture& leg = p.legs[side];
      const ArmPosture& arm = p.arms[side];
      for (const Vec3& at : {leg.knee, leg.ankle, leg.toe, arm.elbow, arm.wrist, arm.tip}) now.push_back(at);
    }
    if (step_s > 0 && m_before.size() == now.size()) {
      for (std::size_t i = 0; i < now.size(); ++i) {
        note("speed", i < 3 ? "trunk" : "limb " + std::to_string(i - 3),
             distance(now[i], m_before[i]) / step_s, m_limits.speed_per_s);
      }
    }
    m_before = std::move(now);
  }

  void checkBalance(const Goal& goal, const Posture& posture) {
    if (!scene().still_balance || !usualLevels()) return;
    const Vec3 centre = centreOfMass(posture, m_keys.limbs);
    const double margin = marginInside(carriers(scene(), m_keys.limbs, goal, posture), centre);
    char text[96];
    std::snprintf(text, sizeof text, "centre of mass at x %.3f y %.3f", centre.x, centre.y);
    note("balance", text, -margin, m_limits.balance);
  }

  // The exercise is not meant for other levels; their figures are drawn, but nobody says they balance.
  bool usualLevels() const {
    for (const LimbState& limb : m_keys.limbs) {
      const auto& usual = m_exercise.fit().usual_levels();
      if (limb.lost() && std::find(usual.begin(), usual.end(), limb.level) == usual.end()) return false;
    }
    return true;
  }

  // Every foot that stands has something under it.
  void checkKeys() {
    const auto one = [&](const KeyPose& key) {
      for (int side = 0; side < 2; ++side) {
        const LegGoal& leg = key.goal.legs[side];
        if (leg.how != LegHow::kPrint || leg.air) continue;
        double ground = onFloor() ? 0 : -1;
        for (std::size_t i = 0; i < scene().props.size(); ++i) {
          if (!scene().props[i].there) continue;
          const v1::PropKind kind = scene().props[i].shape.kind;
          if (kind == v1::PROP_KIND_CHAIR || kind == v1::PROP_KIND_ROLLING_CHAIR) continue;
          ground =
              std::max(ground, surfaceHeight(scene().props[i].shape, key.goal.props[i], leg.n[0], leg.n[1]));
        }
        note("ground", side == kSideA ? "foot a" : "foot b", std::fabs(leg.n[2] - ground), m_limits.contact);
      }
    };
    one(scene().start);
    for (const PhaseKeys& phase : scene().phases) {
      setWhere(phase.id, 1);
      for (const KeyPose& key : phase.frames) one(key);
    }
  }

  void checkLoop() {
    if (scene().phases.empty() || m_exercise.dose_kind() != v1::DOSE_KIND_SETS) return;
    setWhere("loop", 1);
    const Posture& first = scene().start.posture;
    const Posture& last = scene().phases.back().end().posture;
    const auto meet = [&](const char* name, const Vec3& a, const Vec3& b) {
      note("loop", name, distance(a, b), 1e-6);
    };
    meet("hips", first.hips, last.hips);
    meet("head", first.head, last.head);
    for (int side = 0; side < 2; ++side) {
      meet("knee", first.legs[side].knee, last.legs[side].knee);
      meet("toe", first.legs[side].toe, last.legs[side].toe);
      meet("elbow", first.arms[side].elbow, last.arms[side].elbow);
      meet("hand", first.arms[side].tip, last.arms[side].tip);
    }
  }

  const Choreography& m_keys;
  const v1::Exercise& m_exercise;
  AuditLimits m_limits;
  std::array<double, kJointCount> m_ranges{};
  BodyShapes m_shapes;
  std::array<bool, 2> m_hand_on_body{};
  int m_scene = 0;
  std::string m_where;
  Pose m_pose;
  std::vector<Vec3> m_before;
  AuditReport m_report;
  std::map<std::string, AuditFinding> m_found;
};

}  // namespace

AuditReport auditClip(const Choreography& keys, const v1::Clip& clip, const v1::Exercise& exercise,
                      const BodyShape& shape, const AuditLimits& limits) {
  return Auditor(keys, clip, exercise, shape, limits).run();
}

}  // namespace newel
