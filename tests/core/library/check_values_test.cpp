// What the trade says about the twelve, each with its source. A change here is a change of what people are
// told.
#include <gtest/gtest.h>

#include <algorithm>

#include "core/library/catalogue.h"

namespace newel {
namespace {

const v1::Exercise& exerciseOf(const std::string& id) { return *Catalogue::builtIn().find(id); }

const v1::Phase* phaseOf(const v1::Exercise& exercise, const std::string& id) {
  for (const v1::Part& part : exercise.parts()) {
    for (const v1::Phase& phase : part.phases()) {
      if (phase.id() == id) return &phase;
    }
  }
  return nullptr;
}

bool usualFor(const v1::Exercise& exercise, v1::LimbLossLevel level) {
  const auto& levels = exercise.fit().usual_levels();
  return std::find(levels.begin(), levels.end(), level) != levels.end();
}

const v1::Cue& cueOf(const std::string& id, const std::string& key) {
  return Catalogue::builtIn().words(id, "en")->cues().at(key);
}

// common practice, no source
TEST(CheckValues, allFoursReachHoldsThreeSecondsEachSideAlternatingWithRest) {
  const v1::Exercise& exercise = exerciseOf("opposite-arm-and-leg");
  EXPECT_EQ(exercise.default_dose().sets().hold_s(), 3U);
  EXPECT_EQ(exercise.side_policies(0), v1::SIDE_POLICY_ALTERNATING);
  EXPECT_GT(exercise.default_dose().sets().repetition_rest_s(), 0U);
}

// common practice, no source
TEST(CheckValues, curlUpHoldsFiveSeconds) {
  EXPECT_EQ(exerciseOf("curl-up-legs-lifted").default_dose().sets().hold_s(), 5U);
}

// common practice, no source
TEST(CheckValues, standingBetweenChairsStartsWithTwoHandsAndFeetAtShoulderWidth) {
  const v1::Exercise& exercise = exerciseOf("even-weight-standing");
  EXPECT_EQ(exercise.supports(0), v1::SUPPORT_TWO_HANDS);
  EXPECT_EQ(exercise.ladder(0).support(), v1::SUPPORT_TWO_HANDS);
  EXPECT_NE(cueOf("even-weight-standing", "get_ready").spoken().find("as wide as your shoulders"),
            std::string::npos);
}

// International Committee of the Red Cross, gait training booklet 2008, 1.1 to 1.4: two hands, one,
// fingertips, none.
TEST(CheckValues, standingLadderTakesSupportAwayInOrder) {
  const auto& ladder = exerciseOf("even-weight-standing").ladder();
  ASSERT_EQ(ladder.size(), 4);
  EXPECT_EQ(ladder[0].support(), v1::SUPPORT_TWO_HANDS);
  EXPECT_EQ(ladder[1].support(), v1::SUPPORT_ONE_HAND);
  EXPECT_EQ(ladder[2].support(), v1::SUPPORT_FINGERTIPS);
  EXPECT_EQ(ladder[3].support(), v1::SUPPORT_NO_HANDS);
}

// common practice, no source
TEST(CheckValues, stepOverStepLeadsUpWithTheProsthesisAndDownWithTheSoundLimb) {
  const v1::Exercise& exercise = exerciseOf("stairs-step-over-step");
  EXPECT_EQ(phaseOf(exercise, "up-first")->moves(), v1::LIMB_ROLE_WEAKER);
  EXPECT_EQ(phaseOf(exercise, "down-first")->moves(), v1::LIMB_ROLE_STRONGER);
  EXPECT_TRUE(usualFor(exercise, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL));
  EXPECT_FALSE(usualFor(exercise, v1::LIMB_LOSS_LEVEL_TRANSFEMORAL));
}

// amputee.co.nz: up with the sound leg, down with the prosthesis. Second foot to the same step, usual for
// transfemoral: common practice, no source.
TEST(CheckValues, oneStepAtATimeLeadsUpWithTheSoundLimbAndDownWithTheProsthesis) {
  const v1::Exercise& exercise = exerciseOf("stairs-one-at-a-time");
  EXPECT_EQ(phaseOf(exercise, "up-lead")->moves(), v1::LIMB_ROLE_STRONGER);
  EXPECT_EQ(phaseOf(exercise, "down-lead")->moves(), v1::LIMB_ROLE_WEAKER);
  EXPECT_NE(cueOf("stairs-one-at-a-time", "up-follow").spoken().find("same step"), std::string::npos);
  EXPECT_NE(cueOf("stairs-one-at-a-time", "down-follow").spoken().find("same step"), std::string::npos);
  EXPECT_TRUE(usualFor(exercise, v1::LIMB_LOSS_LEVEL_TRANSFEMORAL));
}

// common practice, no source (down with the prosthesis first: amputee.co.nz)
TEST(CheckValues, rampLeadsUpWithTheSoundLimbAndDownWithTheProsthesisInShortSteps) {
  const v1::Exercise& exercise = exerciseOf("ramp-up-down");
  EXPECT_EQ(phaseOf(exercise, "up-first")->moves(), v1::LIMB_ROLE_STRONGER);
  EXPECT_EQ(phaseOf(exercise, "down-first")->moves(), v1::LIMB_ROLE_WEAKER);
  EXPECT_LT(exercise.step_length_cm(), exerciseOf("step-through").step_length_cm());
}

// common practice, no source
TEST(CheckValues, prosthesisLandsHeelFirstAndStepsAreAsLongAsInWalking) {
  const v1::Cue& plant = cueOf("step-through", "plant");
  EXPECT_NE(plant.spoken().find("Heel first"), std::string::npos);
  EXPECT_NE(plant.spoken().find("Walking step"), std::string::npos);
  EXPECT_NE(plant.screen().find("walking step"), std::string::npos);
  const v1::Exercise& exercise = exerciseOf("step-through");
  // The planted leg bears while the other one steps past it.
  EXPECT_EQ(phaseOf(exercise, "plant")->moves(), v1::LIMB_ROLE_WORKING);
  EXPECT_EQ(phaseOf(exercise, "step-past")->moves(), v1::LIMB_ROLE_OTHER);
  EXPECT_EQ(exercise.side_policies(0), v1::SIDE_POLICY_PROSTHETIC);
  EXPECT_TRUE(std::count(exercise.tags().begin(), exercise.tags().end(), "prosthesis-load") == 1);
}

// Alberta Health Services: 5 to 10 minutes, several times a day. No pillow under the hips: common practice,
// no source.
TEST(CheckValues, faceDownLyingIsFiveToTenMinutesWithNoPillowUnderTheHips) {
  const v1::Exercise& exercise = exerciseOf("face-down-lying");
  EXPECT_GE(exercise.default_dose().minutes().minutes(), 5U);
  EXPECT_LE(exercise.default_dose().minutes().minutes(), 10U);
  EXPECT_NE(cueOf("face-down-lying", "get_ready").spoken().find("No pillow under your hips"),
            std::string::npos);
}

// University hospital above-knee programme (scribd 669980575): 10 repetitions, holds of 5 to 10 s.
TEST(CheckValues, bridgingIsTenRepetitionsWithHoldsOfFiveToTenSeconds) {
  const v1::SetsDose& dose = exerciseOf("bridge-over-roll").default_dose().sets();
  EXPECT_EQ(dose.repetitions(), 10U);
  EXPECT_GE(dose.hold_s(), 5U);
  EXPECT_LE(dose.hold_s(), 10U);
}

// American College of Sports Medicine 2009: 8 to 12 repetitions.
TEST(CheckValues, sitToStandIsWithinTheNoviceRange) {
  EXPECT_GE(exerciseOf("sit-to-stand").default_dose().sets().repetitions(), 8U);
  EXPECT_LE(exerciseOf("sit-to-stand").default_dose().sets().repetitions(), 12U);
}

}  // namespace
}  // namespace newel
