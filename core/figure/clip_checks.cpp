#include <cmath>
#include <map>
#include <set>

#include "core/figure/clip_book.h"
#include "core/figure/joint_ranges.h"
#include "core/figure/props.h"

namespace newel {
namespace {

std::string at(const std::string& path, const std::string& field, int index = -1) {
  const std::string name = index < 0 ? field : field + "[" + std::to_string(index) + "]";
  return path.empty() ? name : path + "." + name;
}

class ClipCheck {
 public:
  ClipCheck(const v1::Clip& clip, const v1::Exercise& exercise) : m_clip(clip), m_exercise(exercise) {}

  std::vector<ClipProblem> run() {
    const v1::LimbRole a = m_clip.side_a();
    that(a == v1::LIMB_ROLE_WORKING || a == v1::LIMB_ROLE_WEAKER || a == v1::LIMB_ROLE_STRONGER, "side_a",
         "must be WORKING, WEAKER or STRONGER");
    checkNumbers(m_clip, "");
    checkExceptions();
    that(!m_clip.sources().empty(), "sources", "is missing");
    if (m_clip.scenes_size() == 1 && m_clip.scenes(0).part_id().empty()) {
      std::vector<const v1::Phase*> phases;
      for (const auto& part : m_exercise.parts()) {
        for (const auto& phase : part.phases()) phases.push_back(&phase);
      }
      checkScene(m_clip.scenes(0), "scenes[0]", phases);
      return m_problems;
    }
    that(m_clip.scenes_size() == m_exercise.parts_size(), "scenes",
         "there must be one for each part of the exercise");
    for (int i = 0; i < std::min(m_clip.scenes_size(), m_exercise.parts_size()); ++i) {
      const std::string path = at("", "scenes", i);
      const v1::Part& part = m_exercise.parts(i);
      that(m_clip.scenes(i).part_id() == part.id(), at(path, "part_id"), "must be \"" + part.id() + "\"");
      std::vector<const v1::Phase*> phases;
      for (const auto& phase : part.phases()) phases.push_back(&phase);
      checkScene(m_clip.scenes(i), path, phases);
    }
    return m_problems;
  }

 private:
  void that(bool good, const std::string& path, const std::string& reason) {
    if (!good) m_problems.push_back({path, reason});
  }

  // Every number anywhere: places within a few body heights, angles within a turn.
  void checkNumbers(const google::protobuf::Message& message, const std::string& path) {
    const auto* reflection = message.GetReflection();
    std::vector<const google::protobuf::FieldDescriptor*> fields;
    reflection->ListFields(message, &fields);
    for (const auto* field : fields) {
      using Field = google::protobuf::FieldDescriptor;
      if (field->cpp_type() == Field::CPPTYPE_DOUBLE && !field->is_repeated()) {
        const double value = reflection->GetDouble(message, field);
        const bool degrees = field->name().find("_deg") != std::string::npos;
        const double most = degrees ? 200 : 5;
        if (field->name() == "round_s") continue;
        that(std::isfinite(value) && std::fabs(value) <= most, at(path, field->name()),
             degrees ? "is over 200 degrees" : "is over 5 body heights");
      } else if (field->cpp_type() == Field::CPPTYPE_MESSAGE && field->is_repeated()) {
        for (int i = 0; i < reflection->FieldSize(message, field); ++i) {
          checkNumbers(reflection->GetRepeatedMessage(message, field, i), at(path, field->name(), i));
        }
      } else if (field->cpp_type() == Field::CPPTYPE_MESSAGE) {
        checkNumbers(reflection->GetMessage(message, field), at(path, field->name()));
      }
    }
  }

  void checkExceptions() {
    for (int i = 0; i < m_clip.exceptions_size(); ++i) {
      const auto& exception = m_clip.exceptions(i);
      const std::string path = at("", "exceptions", i);
      const Joint joint = jointNamed(exception.joint());
      that(joint != kJointCount, at(path, "joint"), "there is no such joint");
      that(joint == kJointCount || exception.limit_deg() > rangeOf(joint).limit_deg, at(path, "limit_deg"),
           "does not pass the table");
      that(!exception.reason().empty(), at(path, "reason"), "is missing");
    }
  }

  void checkScene(const v1::Scene& scene, const std::string& path,
                  const std::vector<const v1::Phase*>& phases) {
    m_props.clear();
    that(scene.props_size() <= kMostProps, at(path, "props"), "are more than " + std::to_string(kMostProps));
    for (int i = 0; i < scene.props_size(); ++i) {
      const auto& prop = scene.props(i);
      const std::string here = at(path, "props", i);
      that(!prop.id().empty() && m_props.emplace(prop.id(), prop.kind()).second, at(here, "id"),
           "is missing or given twice");
      that(prop.kind() != v1::PROP_KIND_UNSPECIFIED && v1::PropKind_IsValid(prop.kind()), at(here, "kind"),
           "is missing");
    }
    that(std::fabs(scene.view().elevation_deg() - 30) <= 30, at(path, "view.elevation_deg"),
         "must be 0 to 60");
    checkStart(scene.start(), at(path, "start"));
    that(scene.phases_size() == static_cast<int>(phases.size()), at(path, "phases"),
         "there must be one for each phase of the part");
    for (int i = 0; i < scene.phases_size() && i < static_cast<int>(phases.size()); ++i) {
      checkPhase(scene.phases(i), at(path, "phases", i), *phases[i]);
    }
  }

  void checkStart(const v1::Pose& pose, const std::string& path) {
    const auto& trunk = pose.trunk();
    that(trunk.has_x() && trunk.has_y(), at(path, "trunk"), "the start needs x and y");
    that(trunk.has_z() != trunk.has_stand_deg() || pose.leg_a().has_kneel() || pose.leg_b().has_kneel(),
         at(path, "trunk"), "the start needs z or stand_deg, one of them");
    that(pose.has_leg_a() && pose.has_leg_b(), path, "the start needs both legs");
    that(!pose.arms().empty(), path, "the start needs arms");
    checkPose(pose, path);
  }

  void checkPhase(const v1::KeyPhase& phase, const std::string& path, const v1::Phase& asked) {
    that(phase.phase_id() == asked.id(), at(path, "phase_id"), "must be \"" + asked.id() + "\"");
    const bool rounds = phase.round_s() != 0;
    if (rounds) {
      that(asked.length() == v1::PHASE_LENGTH_BOUT, at(path, "round_s"), "only a bout of minutes goes round");
      that(phase.round_s() >= 0.6 && phase.round_s() <= 20, at(path, "round_s"), "must be 0.6 to 20");
      that(phase.frames_size() >= 2, at(path, "frames"), "a round has two or more");
    }
    if (asked.kind() == v1::PHASE_KIND_HOLD && !rounds) {
      that(phase.frames().empty(), at(path, "frames"), "a hold has none");
    } else {
      that(!phase.frames().empty() && phase.frames().rbegin()->at() == 1, at(path, "frames"),
           "the last must be at 1");
    }
    double before = 0;
    for (int i = 0; i < phase.frames_size(); ++i) {
      const std::string here = at(path, "frames", i);
      that(phase.frames(i).at() > before && phase.frames(i).at() <= 1, at(here, "at"),
           "must grow, from over 0 to 1");
      before = phase.frames(i).at();
      checkPose(phase.frames(i).pose(), at(here, "pose"));
    }
    const bool marked = phase.mark().kind() != v1::MARK_KIND_UNSPECIFIED;
    that(!marked || phase.mark().point() != v1::BODY_POINT_UNSPECIFIED, at(path, "mark"), "needs a point");
  }

  void checkPose(const v1::Pose& pose, const std::string& path) {
    that(!(pose.trunk().has_z() && pose.trunk().has_stand_deg()), at(path, "trunk"),
         "z and stand_deg exclude each other");
    if (pose.has_leg_a()) checkLeg(pose.leg_a(), at(path, "leg_a"));
    if (pose.has_leg_b()) checkLeg(pose.leg_b(), at(path, "leg_b"));
    if (pose.has_leg_a_bare()) checkLeg(pose.leg_a_bare(), at(path, "leg_a_bare"));
    if (pose.has_leg_b_bare()) checkLeg(pose.leg_b_bare(), at(path, "leg_b_bare"));
    for (int i = 0; i < pose.arms_size(); ++i) {
      const std::string here = at(path, "arms", i);
      that(pose.arms(i).has_a() && pose.arms(i).has_b(), here, "needs both arms");
      checkArm(pose.arms(i).a(), at(here, "a"));
      checkArm(pose.arms(i).b(), at(here, "b"));
      for (const int support : pose.arms(i).supports()) {
        const auto& known = m_exercise.supports();
        that(std::find(known.begin(), known.end(), support) != known.end(), at(here, "supports"),
             "the exercise has no such support");
      }
    }
    for (int i = 0; i < pose.props_size(); ++i) {
      that(m_props.count(pose.props(i).prop()) > 0, at(at(path, "props", i), "prop"),
           "there is no such prop");
    }
  }

  void checkLeg(const v1::Leg& leg, const std::string& path) {
    that(leg.how_case() != v1::Leg::HOW_NOT_SET, path, "says nothing");
    if (!leg.has_over_roll()) return;
    const auto found = m_props.find(leg.over_roll().prop());
    that(found != m_props.end() && found->second == v1::PROP_KIND_ROLL, at(path, "over_roll.prop"),
         "there is no such roll");
  }

  void checkArm(const v1::Arm& arm, const std::string& path) {
    that(arm.how_case() != v1::Arm::HOW_NOT_SET, path, "says nothing");
    that(!arm.has_touch() || arm.touch().part() != v1::BODY_PART_UNSPECIFIED, at(path, "touch.part"),
         "is missing");
    if (!arm.has_hold()) return;
    const auto found = m_props.find(arm.hold().prop());
    that(found != m_props.end(), at(path, "hold.prop"), "there is no such prop");
    that(found == m_props.end() || hasGrip(found->second, arm.hold().grip()), at(path, "hold.grip"),
         "the prop cannot be held so");
  }

  const v1::Clip& m_clip;
  const v1::Exercise& m_exercise;
  std::map<std::string, v1::PropKind> m_props;
  std::vector<ClipProblem> m_problems;
};

}  // namespace

std::vector<ClipProblem> problemsOf(const v1::Clip& clip, const v1::Exercise& exercise) {
  return ClipCheck(clip, exercise).run();
}

}  // namespace newel
