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

class ClipAudit : public testing::TestWithParam<std::string> {};

TEST_P(ClipAudit, isCleanForEveryBodyAndSupport) {
  const v1::Exercise* exercise = Catalogue::builtIn().find(GetParam());
  const v1::Clip* clip = ClipBook::builtIn().find(GetParam());
  ASSERT_NE(exercise, nullptr);
  ASSERT_NE(clip, nullptr);
  const AuditReport report = auditEveryBody(*clip, *exercise);
  for (const AuditFinding& finding : report.findings) {
    ADD_FAILURE() << finding.check << ": " << finding.what << ", " << finding.where << ", " << finding.amount;
  }
  // One phase for one level without prosthesis has the fewest: every build, side and support was walked.
  EXPECT_GT(report.frames, 400);
  std::printf("%s: %d frames; worst:", GetParam().c_str(), report.frames);
  for (const auto& [check, amount] : report.worst) std::printf(" %s %.4f", check.c_str(), amount);
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
