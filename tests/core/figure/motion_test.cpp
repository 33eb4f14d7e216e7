// The figure in time: what a timeline's beats show.
#include "core/figure/motion.h"

#include <gtest/gtest.h>

#include "tests/core/figure/figure_people.h"

namespace newel {
namespace {

v1::Beat beat(v1::BeatKind kind, const std::string& phase, std::int64_t start, std::int64_t length,
              v1::Side side) {
  v1::Beat b;
  b.set_kind(kind);
  b.set_phase_id(phase);
  b.set_part_id("reach");
  b.set_start_ms(start);
  b.set_length_ms(length);
  b.set_side(side);
  return b;
}

// Two repetitions of the all-fours reach: left, then right; 3 s out, 5 s hold, 6 s back.
v1::Timeline reachTimeline() {
  v1::Timeline timeline;
  timeline.set_exercise_id("opposite-arm-and-leg");
  std::int64_t at = 0;
  const auto add = [&](v1::BeatKind kind, const std::string& phase, std::int64_t length, v1::Side side) {
    *timeline.add_beats() = beat(kind, phase, at, length, side);
    at += length;
  };
  add(v1::BEAT_KIND_GET_READY, "", 15000, v1::SIDE_UNSPECIFIED);
  for (const v1::Side side : {v1::SIDE_LEFT, v1::SIDE_RIGHT}) {
    add(v1::BEAT_KIND_MOVE, "reach-out", 3000, side);
    add(v1::BEAT_KIND_HOLD, "hold-still", 5000, side);
    add(v1::BEAT_KIND_RETURN, "lower", 6000, side);
  }
  timeline.set_total_ms(at);
  return timeline;
}

class Reach : public testing::Test {
 protected:
  Reach()
      : m_figure(*Figure::make("opposite-arm-and-leg",
                               bodyWith(v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL, true))) {}

  Posture at(std::int64_t ms) {
    const Moment moment = m_figure.momentAt(m_timeline, ms);
    Pose pose;
    poseAt(m_figure.choreography(moment.side_a), moment, pose);
    return pose.posture;
  }

  Figure m_figure;
  v1::Timeline m_timeline = reachTimeline();
};

TEST_F(Reach, getReadyShowsTheStart) {
  const Moment moment = m_figure.momentAt(m_timeline, 4000);
  EXPECT_EQ(moment.phase, -1);
  EXPECT_EQ(moment.side_a, v1::SIDE_LEFT);
}

TEST_F(Reach, aHoldHoldsForAllItsTime) {
  const Vec3 first = at(18000).legs[kSideA].toe;
  for (int ms = 18000; ms < 23000; ms += 33) EXPECT_LT(distance(at(ms).legs[kSideA].toe, first), 1e-12) << ms;
}

TEST_F(Reach, aSlowReturnIsAsSlowAsItsBeat) {
  // Half-way through the 6 s beat the foot is half-way: the same height as half-way through the 3 s beat out.
  EXPECT_NEAR(at(26000).legs[kSideA].ankle.z, at(16500).legs[kSideA].ankle.z, 0.06);
  const double early = distance(at(23000).legs[kSideA].toe, at(24000).legs[kSideA].toe);
  const double whole = distance(at(23000).legs[kSideA].toe, at(29000).legs[kSideA].toe);
  EXPECT_LT(early, whole * 0.25);
}

TEST_F(Reach, beginsAndEndsAtRest) {
  const double step = distance(at(15000).legs[kSideA].toe, at(15033).legs[kSideA].toe);
  EXPECT_LT(step, 1e-3);
  const double last = distance(at(17966).legs[kSideA].toe, at(17999).legs[kSideA].toe);
  EXPECT_LT(last, 1e-3);
}

TEST_F(Reach, theOtherSideWorksInItsTurn) {
  EXPECT_EQ(m_figure.momentAt(m_timeline, 16000).side_a, v1::SIDE_LEFT);
  EXPECT_EQ(m_figure.momentAt(m_timeline, 30000).side_a, v1::SIDE_RIGHT);
}

TEST_F(Reach, beyondBothEndsTheEndsAreShown) {
  EXPECT_EQ(m_figure.momentAt(m_timeline, -500).phase, -1);
  const Moment last = m_figure.momentAt(m_timeline, 1000000);
  EXPECT_EQ(last.phase, 2);
  EXPECT_DOUBLE_EQ(last.fraction, 1.0);
}

// Least jerk (Flash and Hogan 1985): symmetric, speed 1.875 times the mean in the middle.
TEST(Ease, isAPersonsEase) {
  EXPECT_DOUBLE_EQ(personEase(0), 0);
  EXPECT_DOUBLE_EQ(personEase(1), 1);
  EXPECT_DOUBLE_EQ(personEase(0.5), 0.5);
  EXPECT_NEAR((personEase(0.5001) - personEase(0.4999)) / 0.0002, 1.875, 1e-4);
  EXPECT_NEAR(personEase(0.2) + personEase(0.8), 1, 1e-12);
}

TEST(Sides, theClipsSideFollowsTheBeat) {
  const v1::Side l = v1::SIDE_LEFT;
  const v1::Side r = v1::SIDE_RIGHT;
  EXPECT_EQ(sideAOf(v1::LIMB_ROLE_WORKING, v1::LIMB_ROLE_WORKING, r, l, l), r);
  // The beat names the leg that moves; where that is the other one, the working side is across.
  EXPECT_EQ(sideAOf(v1::LIMB_ROLE_WORKING, v1::LIMB_ROLE_OTHER, r, l, l), l);
  EXPECT_EQ(sideAOf(v1::LIMB_ROLE_WORKING, v1::LIMB_ROLE_BOTH, v1::SIDE_UNSPECIFIED, r, r), r);
  EXPECT_EQ(sideAOf(v1::LIMB_ROLE_WEAKER, v1::LIMB_ROLE_STRONGER, l, r, l), r);
  EXPECT_EQ(sideAOf(v1::LIMB_ROLE_STRONGER, v1::LIMB_ROLE_WEAKER, l, r, l), l);
}

// Check values, common practice, no source: one step at a time leads up with the sound limb and down with the
// prosthesis, the second foot to the same step; step over step leads up with the prosthesis, down with the
// sound.
struct StairCase {
  const char* exercise;
  const char* phase;
  bool prosthesis_leads;
  bool same_step;
};
class Stairs : public testing::TestWithParam<StairCase> {};

TEST_P(Stairs, theRightFootLeads) {
  const StairCase& c = GetParam();
  const auto figure =
      Figure::make(c.exercise, bodyWith(v1::SIDE_RIGHT, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL, true));
  ASSERT_TRUE(figure.ok());
  const Moment moment = *figure->momentOfPhase(c.phase, 1);
  // Side a is the weaker, the prosthetic one.
  EXPECT_EQ(moment.side_a, v1::SIDE_RIGHT);
  const SceneKeys& scene = figure->choreography(moment.side_a).scenes[moment.scene];
  const Posture& before = scene.phases[moment.phase].first_from.posture;
  const Posture& after = scene.phases[moment.phase].end().posture;
  const int leads = c.prosthesis_leads ? kSideA : kSideB;
  EXPECT_GT(std::fabs(after.legs[leads].heel.z - before.legs[leads].heel.z), 0.09);
  // The other foot stays on its step.
  EXPECT_LT(distance(after.legs[1 - leads].ball, before.legs[1 - leads].ball), 0.005);
}
INSTANTIATE_TEST_SUITE_P(All, Stairs,
                         testing::Values(StairCase{"stairs-one-at-a-time", "up-lead", false, true},
                                         StairCase{"stairs-one-at-a-time", "down-lead", true, true},
                                         StairCase{"stairs-step-over-step", "up-first", true, false},
                                         StairCase{"stairs-step-over-step", "down-first", false, false}));

TEST(StairsOneAtATime, secondFootComesToTheSameStep) {
  const auto figure =
      Figure::make("stairs-one-at-a-time", bodyWith(v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_TRANSFEMORAL, true));
  ASSERT_TRUE(figure.ok());
  for (const char* phase : {"up-follow", "down-follow"}) {
    const Moment moment = *figure->momentOfPhase(phase, 1);
    const Posture& end =
        figure->choreography(v1::SIDE_LEFT).scenes[moment.scene].phases[moment.phase].end().posture;
    EXPECT_NEAR(end.legs[kSideA].heel.z, end.legs[kSideB].heel.z, 1e-6) << phase;
    EXPECT_NEAR(end.legs[kSideA].heel.x, end.legs[kSideB].heel.x, 1e-6) << phase;
  }
}

// Check values, common practice, no source: heel first when the foot lands; a step as long as in walking.
TEST(StepThrough, landsHeelFirstAndStepsAsLongOnBothSides) {
  const auto figure =
      Figure::make("step-through", bodyWith(v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_TRANSFEMORAL, true));
  ASSERT_TRUE(figure.ok());
  const SceneKeys& scene = figure->choreography(v1::SIDE_LEFT).scenes[0];
  const KeyPose& landing = scene.phases[0].frames.front();
  EXPECT_NEAR(landing.posture.legs[kSideA].heel.z, 0, 1e-6);
  EXPECT_GT(landing.posture.legs[kSideA].toe.z, 0.03);
  const double first = scene.phases[0].end().goal.legs[kSideA].n[0] - scene.start.goal.legs[kSideA].n[0];
  const double second =
      scene.phases[1].end().goal.legs[kSideB].n[0] - scene.phases[0].end().goal.legs[kSideA].n[0];
  EXPECT_NEAR(first, second, 1e-9);
  // The exercise's walking step is 60 cm: for a person of 1.75 m that is .343 of height.
  EXPECT_NEAR(first * 175, figure->exercise().step_length_cm(), 3);
}

// Check value, common practice, no source: standing between chairs starts with two hands and feet at shoulder
// width.
TEST(EvenWeight, startsWithTwoHandsAndFeetAtShoulderWidth) {
  const auto figure =
      Figure::make("even-weight-standing", bodyWith(v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL, true));
  ASSERT_TRUE(figure.ok());
  const KeyPose& start = figure->choreography(v1::SIDE_LEFT).scenes[0].start;
  const double apart = start.posture.legs[kSideA].ankle.y - start.posture.legs[kSideB].ankle.y;
  EXPECT_NEAR(apart, 2 * lengths::kShoulderHalf, 0.01);
  for (int side = 0; side < 2; ++side) EXPECT_EQ(start.goal.arms[side].how, ArmHow::kPoint);
}

// ---- bouts of minutes: one round told over and over ----

class Round : public testing::Test {
 protected:
  Round()
      : m_figure(*Figure::make("walking-programme",
                               bodyWith(v1::SIDE_LEFT, v1::LIMB_LOSS_LEVEL_TRANSTIBIAL, true))) {
    m_round_ms = m_figure.clip().scenes(0).phases(0).round_s() * 1000;
    m_timeline.set_exercise_id("walking-programme");
    for (int minute = 0; minute < 3; ++minute) {
      *m_timeline.add_beats() =
          beat(v1::BEAT_KIND_HOLD, "walk-on", minute * 60000, 60000, v1::SIDE_UNSPECIFIED);
    }
    for (v1::Beat& piece : *m_timeline.mutable_beats()) piece.set_part_id("walk");
    m_timeline.set_total_ms(180000);
  }

  Pose at(double ms) {
    Pose pose;
    const Moment moment = m_figure.momentAt(m_timeline, static_cast<std::int64_t>(ms));
    poseAt(m_figure.choreography(moment.side_a), moment, pose);
    return pose;
  }
  // Seen by an eye that goes with the body.
  Vec3 seen(double ms) {
    const Pose pose = at(ms);
    return pose.posture.legs[kSideA].ankle - m_figure.choreography(v1::SIDE_LEFT).scenes[0].travel * pose.run;
  }

  Figure m_figure;
  v1::Timeline m_timeline;
  double m_round_ms = 0;
};

TEST_F(Round, everyRoundButTheFirstIsTheSame) {
  for (const double share : {0.1, 0.35, 0.6, 0.85}) {
    const Vec3 second = seen((1 + share) * m_round_ms);
    const Vec3 twentieth = seen((20 + share) * m_round_ms);
    EXPECT_LT(distance(second, twentieth), 2e-3) << share;
  }
}

TEST_F(Round, nothingJumpsAtASeamOrAtAMinute) {
  for (const double seam : {m_round_ms, 2 * m_round_ms, 60000.0, 120000.0}) {
    const Vec3 before = seen(seam - 10);
    const Vec3 after = seen(seam + 10);
    EXPECT_LT(distance(before, after), 0.04) << seam;
  }
}

TEST_F(Round, theBodyDoesNotStopBetweenTwoRounds) {
  const auto speed = [&](double ms) {
    const SceneKeys& scene = m_figure.choreography(v1::SIDE_LEFT).scenes[0];
    return distance(at(ms + 20).posture.hips, at(ms).posture.hips) / 0.02 /
           (length(scene.travel) / m_round_ms * 1000);
  };
  EXPECT_GT(speed(2 * m_round_ms - 25), 0.5);
  EXPECT_GT(speed(2 * m_round_ms + 5), 0.5);
}

// A foot is lifted on the way that says so and stands on the ways after it.
TEST(Feet, doNotHopWhereTheyStand) {
  for (const v1::Clip& clip : ClipBook::builtIn().clips()) {
    const v1::Exercise& exercise = *Catalogue::builtIn().find(clip.exercise_id());
    const Choreography keys = keysOf(clip, exercise, static_cast<v1::Support>(exercise.supports(0)), {});
    for (const SceneKeys& scene : keys.scenes) {
      for (const PhaseKeys& phase : scene.phases) {
        const KeyPose* before = &phase.first_from;
        for (const KeyPose& key : phase.frames) {
          for (int side = 0; side < 2; ++side) {
            const LegGoal& from = before->goal.legs[side];
            const LegGoal& to = key.goal.legs[side];
            if (from.how != LegHow::kPrint || to.how != LegHow::kPrint || from.n != to.n || to.air) continue;
            EXPECT_EQ(to.lift, 0) << clip.exercise_id() << " " << phase.id << " at " << key.at;
          }
          before = &key;
        }
      }
    }
  }
}

}  // namespace
}  // namespace newel
