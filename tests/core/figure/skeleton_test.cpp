// The body's measures against the published tables.
#include "core/figure/skeleton.h"

#include <gtest/gtest.h>

#include "core/figure/balance.h"
#include "core/figure/joint_ranges.h"
#include "core/figure/solve.h"

namespace newel {
namespace {

// Drillis and Contini 1966, as in Winter figure 4.1.
TEST(Skeleton, lengthsAreTheTablesShares) {
  EXPECT_DOUBLE_EQ(lengths::kThigh, 0.245);
  EXPECT_DOUBLE_EQ(lengths::kShank, 0.246);
  EXPECT_DOUBLE_EQ(lengths::kFootHeight, 0.039);
  EXPECT_DOUBLE_EQ(lengths::kFootLength, 0.152);
  EXPECT_DOUBLE_EQ(lengths::kUpperArm, 0.186);
  EXPECT_DOUBLE_EQ(lengths::kForearm, 0.146);
  EXPECT_DOUBLE_EQ(lengths::kHand, 0.108);
  EXPECT_DOUBLE_EQ(lengths::kHeadAndNeck, 0.182);
  EXPECT_DOUBLE_EQ(lengths::kHeadHeight, 0.130);
  EXPECT_DOUBLE_EQ(lengths::kShoulderBreadth, 0.259);
  EXPECT_DOUBLE_EQ(lengths::kHipBreadth, 0.191);
}

// The same table's standing heights: hip .530, knee .285, ankle .039, shoulder .818, crown 1.
TEST(Skeleton, segmentsAddUpToTheStandingHeights) {
  using namespace lengths;
  EXPECT_NEAR(kFootHeight + kShank, kKneeHeight, 1e-9);
  EXPECT_NEAR(kFootHeight + kShank + kThigh, kHipHeight, 1e-9);
  EXPECT_NEAR(kHipHeight + kPelvis + kBelly + kChest, kShoulderHeight, 1e-9);
  EXPECT_NEAR(kShoulderHeight + kHeadAndNeck, 1, 1e-9);
  EXPECT_NEAR(kHeel + kToe, kFootLength, 1e-9);
}

TEST(Skeleton, jointCentresLieInsideTheMeasuredBreadths) {
  EXPECT_LT(2 * lengths::kHipHalf, lengths::kHipBreadth);
  EXPECT_LT(2 * lengths::kShoulderHalf, lengths::kShoulderBreadth);
}

// Dempster, as in Winter table 4.1: .081 + .497 + 2 (.050) + 2 (.161) = 1.
TEST(Skeleton, massesAreTheTablesAndAddUpToTheWholeBody) {
  using namespace masses;
  const double trunk = kThorax.mass + kAbdomen.mass + kPelvis.mass;
  const double arm = kUpperArm.mass + kForearm.mass + kHand.mass;
  const double leg = kThigh.mass + kShank.mass + kFoot.mass;
  EXPECT_NEAR(trunk, 0.497, 1e-9);
  EXPECT_NEAR(arm, 0.050, 1e-9);
  EXPECT_NEAR(leg, 0.161, 1e-9);
  EXPECT_NEAR(kHead.mass + trunk + 2 * arm + 2 * leg, 1.0, 1e-9);
}

// The same table's sums of segments: forearm and hand .022, foot and leg .061; trunk's centre at .50 of the
// way from hip to shoulder.
TEST(Skeleton, partialSumsAndTheTrunksCentreAreTheTables) {
  EXPECT_NEAR(masses::kForearm.mass + masses::kHand.mass, 0.022, 1e-9);
  EXPECT_NEAR(masses::kShank.mass + masses::kFoot.mass, 0.061, 1e-9);
  // The table gives each part's centre from its upper end.
  const double pelvis = lengths::kPelvis * (1 - masses::kPelvis.centre);
  const double abdomen = lengths::kPelvis + lengths::kBelly * (1 - masses::kAbdomen.centre);
  const double thorax = lengths::kTrunk - lengths::kChest * masses::kThorax.centre;
  const double centre =
      (masses::kPelvis.mass * pelvis + masses::kAbdomen.mass * abdomen + masses::kThorax.mass * thorax) /
      0.497;
  EXPECT_NEAR(centre / lengths::kTrunk, 0.50, 0.02);
}

// Osterkamp 1995 (from memory): share of body mass lost: foot 1.5 %, below the knee 5.9 %, whole leg 16 %.
TEST(Skeleton, massLostAgreesWithTheAmputationTable) {
  const auto lost = [](v1::LimbLossLevel level) {
    double left = 0;
    LimbState limb;
    limb.level = level;
    for (const PartMass& part : legMasses(limb)) left += part.own + part.device;
    return 0.161 - left;
  };
  EXPECT_NEAR(lost(v1::LIMB_LOSS_LEVEL_ANKLE_DISARTICULATION), 0.015, 0.001);
  EXPECT_NEAR(lost(v1::LIMB_LOSS_LEVEL_KNEE_DISARTICULATION), 0.059, 0.003);
  EXPECT_NEAR(lost(v1::LIMB_LOSS_LEVEL_HIP_DISARTICULATION), 0.16, 0.002);
}

// A prosthesis is lighter than what it replaces (common practice, no source).
TEST(Skeleton, prosthesisIsLighterThanWhatItReplaces) {
  LimbState limb;
  limb.level = v1::LIMB_LOSS_LEVEL_TRANSTIBIAL;
  limb.prosthesis_on = true;
  double device = 0;
  double own = 0;
  for (const PartMass& part : legMasses(limb)) {
    device += part.device;
    own += part.own;
  }
  EXPECT_GT(device, 0);
  EXPECT_LT(own + device, 0.161);
}

// American Academy of Orthopaedic Surgeons, as in Greene and Heckman 1994.
TEST(JointRanges, areTheTables) {
  const std::vector<std::pair<const char*, double>> table = {
      {"hip.flexion", 120},    {"hip.extension", 30},     {"hip.abduction", 45},
      {"hip.adduction", 30},   {"knee.flexion", 135},     {"knee.extension", 2},
      {"ankle.up", 20},        {"ankle.down", 50},        {"foot.in", 35},
      {"foot.out", 15},        {"shoulder.flexion", 180}, {"shoulder.extension", 60},
      {"shoulder.inward", 70}, {"shoulder.outward", 90},  {"elbow.flexion", 150},
      {"wrist.flexion", 80},   {"wrist.extension", 70},   {"neck.flexion", 45},
      {"neck.turn", 60},       {"spine.flexion", 80},     {"spine.extension", 25},
      {"spine.side", 35},      {"spine.turn", 45},        {"hip.outward", 45}};
  for (const auto& [name, degrees] : table) {
    const Joint joint = jointNamed(name);
    ASSERT_NE(joint, kJointCount) << name;
    EXPECT_DOUBLE_EQ(rangeOf(joint).limit_deg, degrees) << name;
  }
}

TEST(JointRanges, readBackWhatAnglesWereAsked) {
  Goal goal;
  goal.trunk.n[TrunkGoal::kZ] = 0.53;
  goal.legs[kSideA].n = {40, 12, 8, 65, -15};
  goal.legs[kSideB].n = {-10, 5, 0, 20, 10};
  goal.arms[kSideA].n = {70, 0, 0, 90, 0};
  const Posture posture = solve(goal, {}, {});
  const JointAngles a = jointAngles(posture, kSideA);
  EXPECT_NEAR(a[kHipFlexion], 40, 1e-6);
  EXPECT_NEAR(a[kHipAbduction], 12, 1e-6);
  EXPECT_NEAR(a[kHipOutward], 8, 1e-6);
  EXPECT_NEAR(a[kKneeFlexion], 65, 1e-6);
  EXPECT_NEAR(a[kAnkleDown], 15, 1e-6);
  EXPECT_NEAR(a[kShoulderFlexion], 70, 1e-6);
  EXPECT_NEAR(a[kElbowFlexion], 90, 1e-6);
  const JointAngles b = jointAngles(posture, kSideB);
  EXPECT_NEAR(b[kHipExtension], 10, 1e-6);
  EXPECT_NEAR(b[kHipAbduction], 5, 1e-6);
}

// Standing straight, the hips are as high as the table says, and the body is as tall as it is.
TEST(Solve, standsAtTheTablesHeights) {
  Goal goal;
  for (int side = 0; side < 2; ++side) {
    goal.legs[side].how = LegHow::kPrint;
    goal.legs[side].n[1] = outward(side) * lengths::kHipHalf;
  }
  goal.trunk.stands = true;
  goal.trunk.stand_deg = 0.01;
  const Posture posture = solve(goal, {}, {});
  EXPECT_NEAR(posture.hips.z, 0.530, 1e-4);
  EXPECT_NEAR(posture.legs[kSideA].knee.z, 0.285, 1e-3);
  EXPECT_NEAR(posture.neck.z, 0.818, 1e-4);
  EXPECT_NEAR(posture.head.z + lengths::kHeadHeight / 2, 1.0, 1e-4);
  EXPECT_NEAR(posture.legs[kSideA].heel.z, 0, 1e-6);
}

// Winter: the whole body's centre of mass stands a little above the hips, at .53 to .58 of height (from
// memory).
TEST(Balance, centreOfMassOfAStandingBodyIsAboveTheHips) {
  Goal goal;
  goal.trunk.n[TrunkGoal::kZ] = 0.53;
  const Vec3 centre = centreOfMass(solve(goal, {}, {}), {});
  EXPECT_GT(centre.z, 0.53);
  EXPECT_LT(centre.z, 0.58);
  EXPECT_NEAR(centre.y, 0, 1e-9);
}

TEST(Balance, aLostLegMovesTheCentreToTheOtherSide) {
  Goal goal;
  goal.trunk.n[TrunkGoal::kZ] = 0.53;
  const Posture posture = solve(goal, {}, {});
  std::array<LimbState, 2> limbs{};
  limbs[kSideA].level = v1::LIMB_LOSS_LEVEL_TRANSFEMORAL;
  const double bare = centreOfMass(posture, limbs).y;
  limbs[kSideA].prosthesis_on = true;
  const double worn = centreOfMass(posture, limbs).y;
  EXPECT_LT(bare, worn);
  EXPECT_LT(worn, 0);
}

TEST(Balance, marginIsTheDistanceToTheNearestEdge) {
  const std::vector<Vec3> square = {{0, 0, 0}, {1, 0, 0}, {1, 1, 0}, {0, 1, 0}, {0.5, 0.5, 0}};
  EXPECT_NEAR(marginInside(square, {0.5, 0.25, 3}), 0.25, 1e-9);
  EXPECT_NEAR(marginInside(square, {0.5, -0.1, 0}), -0.1, 1e-9);
}

}  // namespace
}  // namespace newel
