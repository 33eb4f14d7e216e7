// Every clip x way of support x prosthesis on or off x level x side x build, every frame at 30 Hz.
// Left and right are one solution seen in a mirror (drawing_test.cpp proves the mirror exact), so "side" here
// is side a lost, side b lost, both lost.
#include "core/figure/audit.h"

#include <gtest/gtest.h>

#include <cstdio>

#include "core/figure/clip_book.h"
#include "core/figure/motion.h"
#include "tests/core/figure/figure_people.h"

namespace newel {
namespace {

using Limbs = std::array<LimbState, 2>;

std::vector<Limbs> bodiesFor(const v1::Exercise& exercise) {
  std::vector<Limbs> bodies = {Limbs{}};
  for (const bool on : {true, false}) {
    if (on && exercise.prosthesis() == v1::PROSTHESIS_USE_OFF) continue;
    if (!on && exercise.prosthesis() == v1::PROSTHESIS_USE_ON) continue;
    for (const v1::LimbLossLevel level : allLevels()) {
      const LimbState lost = limbState(level, on);
      bodies.push_back({lost, LimbState{}});
      bodies.push_back({LimbState{}, lost});
      bodies.push_back({lost, lost});
    }
  }
  return bodies;
}

std::string nameOf(const Limbs& limbs, v1::Build build, v1::Support support) {
  std::string name = v1::Build_Name(build) + " " + v1::Support_Name(support);
  for (const LimbState& limb : limbs) {
    name += limb.lost() ? " " + v1::LimbLossLevel_Name(limb.level) + (limb.prosthesis_on ? " on" : " off")
                        : " sound";
  }
  return name;
}

class ClipAudit : public testing::TestWithParam<std::string> {};

TEST_P(ClipAudit, isCleanForEveryBodyAndSupport) {
  const v1::Exercise* exercise = Catalogue::builtIn().find(GetParam());
  const v1::Clip* clip = ClipBook::builtIn().find(GetParam());
  ASSERT_NE(exercise, nullptr);
  ASSERT_NE(clip, nullptr);
  int frames = 0;
  int bodies = 0;
  std::map<std::string, double> worst;
  for (const v1::Build build : {v1::BUILD_LIGHT, v1::BUILD_MEDIUM, v1::BUILD_HEAVY}) {
    for (const int support : exercise->supports()) {
      for (const Limbs& limbs : bodiesFor(*exercise)) {
        const Choreography keys = keysOf(*clip, *exercise, static_cast<v1::Support>(support), limbs);
        const AuditReport report = auditClip(keys, *clip, *exercise, bodyShape(build));
        frames += report.frames;
        ++bodies;
        for (const auto& [check, amount] : report.worst) {
          worst[check] = std::max(worst.emplace(check, amount).first->second, amount);
        }
        for (const AuditFinding& finding : report.findings) {
          ADD_FAILURE() << finding.check << ": " << finding.what << ", " << finding.where << ", "
                        << finding.amount << " [" << nameOf(limbs, build, static_cast<v1::Support>(support))
                        << "]";
        }
      }
    }
  }
  EXPECT_GT(frames, 500);
  std::printf("%s: %d frames of %d bodies; worst:", GetParam().c_str(), frames, bodies);
  for (const auto& [check, amount] : worst) std::printf(" %s %.4f", check.c_str(), amount);
  std::printf("\n");
}

std::vector<std::string> clipIds() {
  std::vector<std::string> ids;
  for (const v1::Clip& clip : ClipBook::builtIn().clips()) ids.push_back(clip.exercise_id());
  return ids;
}

INSTANTIATE_TEST_SUITE_P(All, ClipAudit, testing::ValuesIn(clipIds()), [](const auto& info) {
  std::string name = info.param;
  for (char& c : name) {
    if (c == '-') c = '_';
  }
  return name;
});

// The audit can fail: each fault is put into a good clip and must be found by its own check.
class AuditFinds : public testing::Test {
 protected:
  AuditFinds()
      : m_exercise(*Catalogue::builtIn().find("sit-to-stand")),
        m_clip(*ClipBook::builtIn().find("sit-to-stand")) {}

  std::string checks() {
    const Choreography keys = keysOf(m_clip, m_exercise, v1::SUPPORT_NO_HANDS, {});
    std::string found;
    for (const AuditFinding& finding :
         auditClip(keys, m_clip, m_exercise, bodyShape(v1::BUILD_MEDIUM)).findings) {
      if (found.find(finding.check) == std::string::npos) found += finding.check + " ";
    }
    return found;
  }
  v1::Pose& endOf(int phase) {
    auto& frames = *m_clip.mutable_scenes(0)->mutable_phases(phase)->mutable_frames();
    return *frames.rbegin()->mutable_pose();
  }

  v1::Exercise m_exercise;
  v1::Clip m_clip;
};

TEST_F(AuditFinds, nothingInTheGoodClip) { EXPECT_EQ(checks(), ""); }

TEST_F(AuditFinds, aNeckBentTooFar) {
  endOf(0).mutable_trunk()->set_nod_deg(80);
  EXPECT_NE(checks().find("joint"), std::string::npos);
}
TEST_F(AuditFinds, aSeatSunkInto) {
  m_clip.mutable_scenes(0)->mutable_start()->mutable_trunk()->set_z(0.24);
  EXPECT_NE(checks().find("solid"), std::string::npos);
}
TEST_F(AuditFinds, aFootThatCannotReachItsPrint) {
  m_clip.mutable_scenes(0)->mutable_start()->mutable_leg_a()->mutable_print()->set_x(0.5);
  EXPECT_NE(checks().find("contact"), std::string::npos);
}
TEST_F(AuditFinds, aFootOnNothing) {
  m_clip.mutable_scenes(0)->mutable_start()->mutable_leg_a()->mutable_print()->set_z(0.05);
  EXPECT_NE(checks().find("ground"), std::string::npos);
}
TEST_F(AuditFinds, standingBesideTheOwnFeet) {
  endOf(0).mutable_trunk()->set_x(-0.02);
  EXPECT_NE(checks().find("balance"), std::string::npos);
}
TEST_F(AuditFinds, anEndThatIsNotTheBeginning) {
  endOf(2).mutable_trunk()->set_x(-0.12);
  EXPECT_NE(checks().find("loop"), std::string::npos);
}
TEST_F(AuditFinds, aMovementTooFastForAPerson) {
  m_exercise.mutable_default_dose()->mutable_sets()->set_move_s(1);
  const Choreography keys = keysOf(m_clip, m_exercise, v1::SUPPORT_NO_HANDS, {});
  AuditLimits limits;
  limits.speed_per_s = 0.5;
  bool found = false;
  for (const auto& finding :
       auditClip(keys, m_clip, m_exercise, bodyShape(v1::BUILD_MEDIUM), limits).findings) {
    found = found || finding.check == "speed";
  }
  EXPECT_TRUE(found);
}
TEST_F(AuditFinds, aHandThroughTheOwnLeg) {
  auto& arms = *m_clip.mutable_scenes(0)->mutable_start()->mutable_arms(2);
  arms.mutable_a()->mutable_angles()->set_flex_deg(32);
  arms.mutable_a()->mutable_angles()->set_out_deg(-8);
  arms.mutable_a()->mutable_angles()->set_elbow_deg(0);
  EXPECT_NE(checks().find("gap"), std::string::npos);
}
TEST_F(AuditFinds, aStretchedBone) {
  Choreography keys = keysOf(m_clip, m_exercise, v1::SUPPORT_NO_HANDS, {});
  keys.scenes[0].start.posture.legs[kSideA].knee.z += 1e-5;
  const auto report = auditClip(keys, m_clip, m_exercise, bodyShape(v1::BUILD_MEDIUM));
  bool found = false;
  for (const auto& finding : report.findings) found = found || finding.check == "segment";
  EXPECT_TRUE(found);
}

}  // namespace
}  // namespace newel
