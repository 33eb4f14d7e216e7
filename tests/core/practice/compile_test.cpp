#include "core/practice/compile.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/core/people/sample_people.h"

namespace newel {
namespace {

using ::testing::HasSubstr;

absl::StatusOr<v1::Timeline> compiled(const v1::Entry& entry, const v1::Person& person,
                                      const std::string& language = "en") {
  return compileTimeline(entry, person, Catalogue::builtIn(), language);
}

std::vector<v1::Beat> beatsOf(const v1::Timeline& timeline, v1::BeatKind kind) {
  std::vector<v1::Beat> beats;
  for (const v1::Beat& beat : timeline.beats()) {
    if (beat.kind() == kind) beats.push_back(beat);
  }
  return beats;
}

void expectError(const v1::Entry& entry, const v1::Person& person, absl::StatusCode code,
                 const std::string& words) {
  const auto timeline = compiled(entry, person);
  ASSERT_FALSE(timeline.ok());
  EXPECT_EQ(timeline.status().code(), code) << timeline.status();
  EXPECT_THAT(std::string(timeline.status().message().data(), timeline.status().message().size()),
              HasSubstr(words));
}

// 8 s ready + 2 sets of 8 times (move 3, hold 2, return 3) + 7 short rests of 2 s a set + 60 s between.
TEST(Compile, minutesAddUpByHand) {
  const v1::Person person = test::transfemoralLeft();
  const auto timeline = compiled(test::entryOf("sit-to-stand", person), person);
  ASSERT_TRUE(timeline.ok()) << timeline.status();
  EXPECT_EQ(timeline->total_ms(), (10 + 2 * (8 * 8 + 7 * 2) + 60) * 1000);
  EXPECT_EQ(timeline->asked().repetitions(), 16U);
  EXPECT_EQ(timeline->asked().hold_ms(), 32 * 1000);
  EXPECT_EQ(timeline->asked().active_ms(), 128 * 1000);
}

TEST(Compile, alternatingCountsARepetitionPerSideAndBeginsWithTheSoundOne) {
  const v1::Person person = test::transfemoralLeft();
  const auto timeline = compiled(test::entryOf("opposite-arm-and-leg", person), person);
  ASSERT_TRUE(timeline.ok());
  const auto holds = beatsOf(*timeline, v1::BEAT_KIND_HOLD);
  ASSERT_EQ(holds.size(), 20U);
  for (std::size_t i = 0; i < holds.size(); ++i) {
    EXPECT_EQ(holds[i].side(), i % 2 == 0 ? v1::SIDE_RIGHT : v1::SIDE_LEFT);
    EXPECT_EQ(holds[i].role(), i % 2 == 0 ? v1::LIMB_ROLE_SOUND : v1::LIMB_ROLE_PROSTHETIC);
    EXPECT_EQ(holds[i].length_ms(), 3000);
  }
  EXPECT_THAT(timeline->beats(1).spoken(), HasSubstr("Right leg back, left arm forward"));
}

TEST(Compile, lastOneIsSaidBeforeTheLastRepetitionOfEachSet) {
  const v1::Person person = test::transfemoralLeft();
  const auto timeline = compiled(test::entryOf("opposite-arm-and-leg", person), person);
  ASSERT_TRUE(timeline.ok());
  std::vector<std::uint32_t> sets;
  for (const v1::Beat& beat : timeline->beats()) {
    if (!beat.last_of_set()) continue;
    sets.push_back(beat.set());
    EXPECT_EQ(beat.kind(), v1::BEAT_KIND_MOVE);
    EXPECT_EQ(beat.repetition(), 5U);
  }
  EXPECT_EQ(sets, (std::vector<std::uint32_t>{1, 2}));
}

TEST(Compile, oneRepetitionIsNoLastOne) {
  const v1::Person person = test::transfemoralLeft();
  v1::Entry entry = test::entryOf("curl-up-legs-lifted", person);
  entry.mutable_dose()->mutable_sets()->set_repetitions(1);
  const auto timeline = compiled(entry, person);
  ASSERT_TRUE(timeline.ok());
  for (const v1::Beat& beat : timeline->beats()) {
    EXPECT_FALSE(beat.last_of_set());
  }
}

TEST(Compile, holdOfZeroIsLeftOut) {
  const v1::Person person = test::transfemoralLeft();
  v1::Entry entry = test::entryOf("sit-to-stand", person);
  entry.mutable_dose()->mutable_sets()->set_hold_s(0);
  const auto timeline = compiled(entry, person);
  ASSERT_TRUE(timeline.ok());
  EXPECT_TRUE(beatsOf(*timeline, v1::BEAT_KIND_HOLD).empty());
}

TEST(Compile, aLongRestEndsWithGetReadyAndStaysAsLong) {
  const v1::Person person = test::transfemoralLeft();
  v1::Entry entry = test::entryOf("sit-to-stand", person);
  const auto timeline = compiled(entry, person);
  ASSERT_TRUE(timeline.ok());
  const auto ready = beatsOf(*timeline, v1::BEAT_KIND_GET_READY);
  ASSERT_EQ(ready.size(), 2U);
  const v1::Beat& rest = timeline->beats(static_cast<int>(ready[1].index()) - 1);
  EXPECT_EQ(rest.kind(), v1::BEAT_KIND_REST);
  EXPECT_EQ(rest.length_ms() + ready[1].length_ms(), 60000);
  // Too short to sit down: the person stays in place.
  entry.mutable_dose()->mutable_sets()->set_rest_s(12);
  const auto brief = compiled(entry, person);
  ASSERT_TRUE(brief.ok());
  EXPECT_EQ(beatsOf(*brief, v1::BEAT_KIND_GET_READY).size(), 1U);
}

TEST(Compile, setsWithNoRestBetweenBeginWithGetReady) {
  const v1::Person person = test::transfemoralLeft();
  v1::Entry entry = test::entryOf("sit-to-stand", person);
  entry.mutable_dose()->mutable_sets()->set_rest_s(0);
  const auto timeline = compiled(entry, person);
  ASSERT_TRUE(timeline.ok());
  EXPECT_EQ(beatsOf(*timeline, v1::BEAT_KIND_GET_READY).size(), 2U);
}

// H02: who leads comes from the record, per direction.
TEST(Compile, stairsLeadWithTheRightLegForEachPerson) {
  const auto leads = [](const std::string& exercise, const v1::Person& person) {
    const auto timeline = compiled(test::entryOf(exercise, person), person);
    EXPECT_TRUE(timeline.ok()) << timeline.status();
    std::vector<v1::Side> sides;
    for (const char* part : {"up", "down"}) {
      for (const v1::Beat& beat : timeline->beats()) {
        if (beat.part_id() != part || beat.step() != 1) continue;
        sides.push_back(beat.side());
        break;
      }
    }
    return sides;
  };
  using Sides = std::vector<v1::Side>;
  // One at a time: up with the sound limb, down with the prosthesis (amputee.co.nz).
  EXPECT_EQ(leads("stairs-one-at-a-time", test::transfemoralLeft()), (Sides{v1::SIDE_RIGHT, v1::SIDE_LEFT}));
  EXPECT_EQ(leads("stairs-one-at-a-time", test::transtibialRight()), (Sides{v1::SIDE_LEFT, v1::SIDE_RIGHT}));
  EXPECT_EQ(leads("stairs-one-at-a-time", test::bothTranstibial()), (Sides{v1::SIDE_RIGHT, v1::SIDE_LEFT}));
  EXPECT_EQ(leads("stairs-one-at-a-time", test::bothTransfemoral()), (Sides{v1::SIDE_LEFT, v1::SIDE_RIGHT}));
  // Step over step: up with the prosthesis, down with the sound limb (common practice, no source).
  EXPECT_EQ(leads("stairs-step-over-step", test::transtibialRight()), (Sides{v1::SIDE_RIGHT, v1::SIDE_LEFT}));
  // Ramp: up with the sound limb, down with the prosthesis.
  EXPECT_EQ(leads("ramp-up-down", test::transfemoralLeft()), (Sides{v1::SIDE_RIGHT, v1::SIDE_LEFT}));
}

TEST(Compile, oneAtATimePutsBothFeetOnEachStep) {
  const v1::Person person = test::transfemoralLeft();
  const auto timeline = compiled(test::entryOf("stairs-one-at-a-time", person), person);
  ASSERT_TRUE(timeline.ok());
  // Per step two beats, the second foot to the same step.
  for (int i = 0; i + 1 < timeline->beats_size(); ++i) {
    const v1::Beat& beat = timeline->beats(i);
    if (beat.step() == 0 || beat.phase_id().find("lead") == std::string::npos) continue;
    EXPECT_EQ(timeline->beats(i + 1).step(), beat.step());
    EXPECT_NE(timeline->beats(i + 1).side(), beat.side());
  }
}

TEST(Compile, distanceBecomesStepsOfTheExercisesLength) {
  const v1::Person person = test::transfemoralLeft();
  v1::Entry entry = test::entryOf("ramp-up-down", person);
  entry.mutable_dose()->mutable_passes()->set_passes(1);
  entry.mutable_dose()->mutable_passes()->set_distance_m(5);  // 12.5 steps of 40 cm: 13
  const auto timeline = compiled(entry, person);
  ASSERT_TRUE(timeline.ok());
  int up = 0;
  for (const v1::Beat& beat : timeline->beats()) up += beat.part_id() == "up" ? 1 : 0;
  EXPECT_EQ(up, 13);
}

TEST(Compile, aBoutIsARowOfMinutesWithTheMiddleBetweenTwoBeats) {
  const v1::Person person = test::transfemoralLeft();
  v1::Entry entry = test::entryOf("face-down-lying", person);
  entry.mutable_dose()->mutable_minutes()->set_minutes(5);
  const auto timeline = compiled(entry, person);
  ASSERT_TRUE(timeline.ok());
  const auto holds = beatsOf(*timeline, v1::BEAT_KIND_HOLD);
  std::vector<std::int64_t> lengths;
  for (const v1::Beat& beat : holds) lengths.push_back(beat.length_ms() / 1000);
  EXPECT_EQ(lengths, (std::vector<std::int64_t>{60, 60, 30, 30, 60, 60}));
  EXPECT_EQ(holds[3].spoken(), "Half way.");
  EXPECT_EQ(holds[5].spoken(), "Last minute.");
  EXPECT_EQ(holds[1].spoken(), "");
  EXPECT_EQ(holds[1].screen(), holds[0].screen());
  EXPECT_EQ(timeline->asked().repetitions(), 1U);
  EXPECT_EQ(timeline->asked().hold_ms(), 300 * 1000);
  EXPECT_EQ(timeline->total_ms(), (30 + 300) * 1000);
}

TEST(Compile, aLanguageThatIsMissingFallsBackWholeToEnglish) {
  const v1::Person person = test::transfemoralLeft();
  const v1::Entry entry = test::entryOf("sit-to-stand", person);
  const auto other = compiled(entry, person, "xx");
  ASSERT_TRUE(other.ok());
  EXPECT_TRUE(other->fell_back());
  EXPECT_EQ(other->language(), "en");
  const auto regional = compiled(entry, person, "en-GB");
  ASSERT_TRUE(regional.ok());
  EXPECT_FALSE(regional->fell_back());
}

TEST(Compile, isPure) {
  const v1::Person person = test::bothTranstibial();
  for (const v1::Exercise& exercise : Catalogue::builtIn().exercises()) {
    const v1::Entry entry = test::entryOf(exercise.id(), person);
    const auto once = compiled(entry, person);
    const auto twice = compiled(entry, person);
    ASSERT_EQ(once.ok(), twice.ok());
    if (once.ok()) {
      EXPECT_EQ(once->SerializeAsString(), twice->SerializeAsString());
    }
  }
}

TEST(Compile, namesTheFieldThatIsWrong) {
  const v1::Person person = test::transfemoralLeft();
  v1::Entry entry = test::entryOf("sit-to-stand", person);

  v1::Entry changed = entry;
  changed.set_exercise_revision(7);
  expectError(changed, person, absl::StatusCode::kNotFound, "exercise_id: no sit-to-stand revision 7");
  changed = entry;
  changed.set_side_policy(v1::SIDE_POLICY_ALTERNATING);
  expectError(changed, person, absl::StatusCode::kInvalidArgument, "side_policy: ");
  changed = entry;
  changed.set_support(v1::SUPPORT_LYING);
  expectError(changed, person, absl::StatusCode::kInvalidArgument, "support: ");
  changed = entry;
  changed.set_prosthesis(v1::PROSTHESIS_USE_OFF);
  expectError(changed, person, absl::StatusCode::kInvalidArgument, "prosthesis: ");
  changed = entry;
  changed.mutable_dose()->mutable_minutes()->set_minutes(5);
  changed.mutable_dose()->mutable_minutes()->set_bouts(1);
  expectError(changed, person, absl::StatusCode::kInvalidArgument, "dose.kind: ");
  changed = entry;
  changed.mutable_dose()->mutable_sets()->set_hold_s(400);
  expectError(changed, person, absl::StatusCode::kInvalidArgument, "dose.sets.hold_s");
  changed = test::entryOf("stairs-one-at-a-time", person);
  changed.mutable_dose()->mutable_passes()->set_distance_m(3);
  expectError(changed, person, absl::StatusCode::kInvalidArgument, "dose.passes.distance_m: ");
}

TEST(Compile, saysWhenAnExerciseHasNoMeaningForAPerson) {
  const v1::Person both = test::bothTranstibial();
  expectError(test::entryOf("stairs-step-over-step", both), both, absl::StatusCode::kFailedPrecondition,
              "exercise_id: ");
  v1::Entry sided = test::entryOf("step-through", both);
  sided.set_side_policy(v1::SIDE_POLICY_PROSTHETIC);
  expectError(sided, both, absl::StatusCode::kFailedPrecondition, "side_policy: ");
  v1::Person undecided = both;
  undecided.clear_strong_side();
  expectError(test::entryOf("stairs-one-at-a-time", undecided), undecided,
              absl::StatusCode::kFailedPrecondition, "strong_side: ");
  // Words for two lost limbs that name no stronger leg need none to be chosen.
  EXPECT_TRUE(compiled(test::entryOf("sit-to-stand", undecided), undecided).ok());
  const v1::Person none = test::transfemoralRightNoProsthesis();
  expectError(test::entryOf("sit-to-stand", none), none, absl::StatusCode::kFailedPrecondition,
              "prosthesis: ");
}

TEST(Compile, countsOnlyWhatWasDone) {
  const v1::Person person = test::transfemoralLeft();
  const auto timeline = compiled(test::entryOf("opposite-arm-and-leg", person), person);
  ASSERT_TRUE(timeline.ok());
  std::vector<bool> done(static_cast<std::size_t>(timeline->beats_size()), false);
  EXPECT_EQ(countDose(*timeline, done).repetitions(), 0U);
  // Get-ready, move, hold: held, but no repetition is complete.
  done[0] = done[1] = done[2] = true;
  EXPECT_EQ(countDose(*timeline, done).repetitions(), 0U);
  EXPECT_EQ(countDose(*timeline, done).hold_ms(), 3000);
  EXPECT_EQ(countDose(*timeline, done).active_ms(), 6000);
  done[3] = true;
  EXPECT_EQ(countDose(*timeline, done).repetitions(), 1U);
  const auto sets = countSets(*timeline, done);
  ASSERT_EQ(sets.size(), 1U);
  EXPECT_EQ(sets[0].set(), 1U);
  EXPECT_EQ(sets[0].side(), v1::SIDE_UNSPECIFIED);
}

}  // namespace
}  // namespace newel
