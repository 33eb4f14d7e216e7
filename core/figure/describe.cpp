#include "core/figure/describe.h"

#include <algorithm>
#include <cmath>

#include "core/figure/draw_props.h"
#include "core/library/wording.h"

namespace newel {
namespace {

class Describer {
 public:
  Describer(const Choreography& keys, const Moment& moment, const FigureBody& body,
            const v1::Exercise& exercise, const ClipBook& clips, const std::string& language)
      : m_keys(keys),
        m_scene(keys.scenes[moment.scene]),
        m_moment(moment),
        m_body(body),
        m_exercise(exercise),
        m_clips(clips),
        m_language(language) {}

  std::string text() const {
    std::string text;
    add(text, say(phraseKey("position", v1::Position_Name(m_exercise.position()), "POSITION_")));
    for (const v1::Side side : {v1::SIDE_LEFT, v1::SIDE_RIGHT}) add(text, limb(side));
    add(text, movement());
    add(text, hands());
    return text;
  }

 private:
  std::string say(const std::string& key) const { return m_clips.phrase(key, m_language); }
  static void add(std::string& text, const std::string& sentence) {
    if (sentence.empty()) return;
    if (!text.empty()) text += " ";
    text += sentence;
  }
  static std::string filled(std::string text, const std::string& mark, const std::string& value) {
    const std::size_t at = text.find(mark);
    return at == std::string::npos ? text : text.replace(at, mark.size(), value);
  }
  std::string sideName(v1::Side side) const {
    return say(side == v1::SIDE_LEFT ? "side.left" : "side.right");
  }
  // The person's side of a body point's letter.
  v1::Side personSide(int side) const {
    return side == kSideA ? m_moment.side_a : otherSide(m_moment.side_a);
  }

  std::string limb(v1::Side side) const {
    const LimbState& state = m_body.limb(side);
    if (!state.lost()) return {};
    const std::string level = phraseKey("level", v1::LimbLossLevel_Name(state.level), "LIMB_LOSS_LEVEL_");
    const std::string text = say(state.prosthesis_on ? "limb.prosthesis" : "limb.bare");
    return filled(filled(text, "{side}", sideName(side)), "{level}", say(level));
  }

  std::string pointName(v1::BodyPoint point) const {
    switch (point) {
      case v1::BODY_POINT_A_HAND:
        return filled(say("point.hand"), "{side}", sideName(personSide(kSideA)));
      case v1::BODY_POINT_B_HAND:
        return filled(say("point.hand"), "{side}", sideName(personSide(kSideB)));
      case v1::BODY_POINT_A_FOOT:
      case v1::BODY_POINT_A_KNEE:
      case v1::BODY_POINT_A_THIGH:
        return filled(say("point.leg"), "{side}", sideName(personSide(kSideA)));
      case v1::BODY_POINT_B_FOOT:
      case v1::BODY_POINT_B_KNEE:
      case v1::BODY_POINT_B_THIGH:
        return filled(say("point.leg"), "{side}", sideName(personSide(kSideB)));
      case v1::BODY_POINT_A_HIP:
        return filled(say("point.hip"), "{side}", sideName(personSide(kSideA)));
      case v1::BODY_POINT_B_HIP:
        return filled(say("point.hip"), "{side}", sideName(personSide(kSideB)));
      case v1::BODY_POINT_HEAD:
        return say("point.head");
      case v1::BODY_POINT_CHEST:
        return say("point.chest");
      case v1::BODY_POINT_BOTH_HANDS:
        return say("point.hands");
      default:
        return say("point.hips");
    }
  }

  // Which way the marked point goes in this phase, in the person's own directions.
  std::string way(const Vec3& from, const Vec3& to, const Posture& posture) const {
    constexpr double kLeast = 0.03;
    const Vec3 go = to - from;
    const bool upright = std::fabs(posture.pelvis.z.z) > 0.5;
    const Vec3 ahead = unit({posture.pelvis.x.x, posture.pelvis.x.y, 0}, {1, 0, 0});
    const Vec3 headward = unit({posture.pelvis.z.x, posture.pelvis.z.y, 0}, {1, 0, 0});
    const double first = dot(go, upright ? ahead : headward);
    const double aside = dot(go, cross({0, 0, 1}, ahead));
    const double most = std::max({std::fabs(first), std::fabs(aside), std::fabs(go.z), kLeast});
    std::string text;
    const auto append = [&](const std::string& key) {
      text += (text.empty() ? "" : say("way.and")) + say(key);
    };
    if (std::fabs(first) > most * 0.4) {
      const char* ahead_key = upright ? "way.forward" : "way.headward";
      append(first > 0 ? ahead_key : (upright ? "way.back" : "way.footward"));
    }
    if (upright && std::fabs(aside) > most * 0.4) {
      append(personSide(aside > 0 ? kSideA : kSideB) == v1::SIDE_LEFT ? "way.left" : "way.right");
    }
    if (std::fabs(go.z) > most * 0.4) append(go.z > 0 ? "way.up" : "way.down");
    return text;
  }

  std::string weight(const v1::Mark& mark) const {
    const bool both = mark.kind() == v1::MARK_KIND_WEIGHT && mark.point() == v1::BODY_POINT_PELVIS;
    return both ? say("moment.loads-both") : filled(say("moment.loads"), "{point}", pointName(mark.point()));
  }

  std::string movement() const {
    if (m_moment.phase < 0) return say("moment.start");
    const PhaseKeys& phase = m_scene.phases[m_moment.phase];
    const v1::Mark& mark = phase.mark;
    if (phase.goesRound()) {
      std::string text = marked(phase);
      if (text == say("moment.moves")) text.clear();
      add(text, say("moment.round"));
      return text;
    }
    if (phase.frames.empty()) {
      std::string text = say("moment.hold");
      if (mark.kind() == v1::MARK_KIND_WEIGHT || mark.kind() == v1::MARK_KIND_PRESS) add(text, weight(mark));
      return text;
    }
    return marked(phase);
  }

  std::string marked(const PhaseKeys& phase) const {
    const v1::Mark& mark = phase.mark;
    if (mark.kind() == v1::MARK_KIND_UNSPECIFIED) return say("moment.moves");
    const KeyPose& from = m_moment.first_run ? phase.first_from : phase.from;
    const Vec3 begin = pointOf(from.posture, m_keys.limbs, mark.point());
    const Vec3 end = mark.has_way() ? begin + Vec3{mark.way().x(), mark.way().y(), mark.way().z()}
                                    : pointOf(phase.end().posture, m_keys.limbs, mark.point());
    const std::string direction = way(begin, end, from.posture);
    if (mark.kind() == v1::MARK_KIND_WEIGHT || mark.kind() == v1::MARK_KIND_PRESS) return weight(mark);
    // Too little to name a direction for.
    if (direction.empty()) return say("moment.moves");
    std::string text = filled(say("moment.goes"), "{point}", pointName(mark.point()));
    text = filled(text, "{way}", direction);
    if (mark.kind() == v1::MARK_KIND_LEADS) add(text, say("moment.leads"));
    return text;
  }

  std::string handOn(int side, const Goal& goal) const {
    const ArmGoal& arm = goal.arms[side];
    std::string place;
    if (arm.how == ArmHow::kPoint && arm.prop >= 0) {
      const std::string kind = v1::PropKind_Name(m_scene.props[arm.prop].shape.kind);
      place = say(phraseKey("prop", kind, "PROP_KIND_"));
      if (!arm.fist) place = filled(say("hand.fingertips"), "{prop}", place);
    } else if (arm.how == ArmHow::kPlant) {
      place = say(underPalm(arm.n[2]));
    } else if (arm.how == ArmHow::kTouch &&
               (arm.part == v1::BODY_PART_LIMB_A || arm.part == v1::BODY_PART_LIMB_B)) {
      const int limb = arm.part == v1::BODY_PART_LIMB_A ? kSideA : kSideB;
      place = filled(say("point.leg"), "{side}", sideName(personSide(limb)));
    }
    return place;
  }

  // A planted palm lies on the floor, or on the bed when it is as high as one.
  std::string underPalm(double palm_z) const {
    constexpr double kNear = 0.03;
    const bool bed = std::any_of(m_scene.props.begin(), m_scene.props.end(), [&](const SceneProp& prop) {
      return prop.shape.kind == v1::PROP_KIND_BED && std::fabs(prop.shape.height - palm_z) < kNear;
    });
    return bed ? "prop.bed" : "prop.floor";
  }

  std::string hands() const {
    Pose pose;
    poseAt(m_keys, m_moment, pose);
    const std::string a = handOn(kSideA, pose.goal);
    const std::string b = handOn(kSideB, pose.goal);
    if (a.empty() && b.empty()) return say("hands.free");
    if (a == b) return filled(say("hands.both"), "{prop}", a);
    std::string text;
    for (const int side : {kSideA, kSideB}) {
      const std::string& place = side == kSideA ? a : b;
      if (place.empty()) continue;
      add(text, filled(filled(say("hands.one"), "{side}", sideName(personSide(side))), "{prop}", place));
    }
    return text;
  }

  const Choreography& m_keys;
  const SceneKeys& m_scene;
  const Moment& m_moment;
  const FigureBody& m_body;
  const v1::Exercise& m_exercise;
  const ClipBook& m_clips;
  const std::string& m_language;
};

}  // namespace

std::string describeMoment(const Choreography& keys, const Moment& moment, const FigureBody& body,
                           const v1::Exercise& exercise, const ClipBook& clips, const std::string& language) {
  return Describer(keys, moment, body, exercise, clips, language).text();
}

}  // namespace newel
