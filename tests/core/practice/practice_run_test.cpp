#include "core/practice/practice_run.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "core/records/check.h"
#include "tests/core/people/sample_people.h"
#include "tests/core/practice/run_fixture.h"

namespace newel {
namespace {

using test::RunFixture;

int countOf(const RunFixture& f, v1::JournalKind kind) {
  return static_cast<int>(std::count_if(f.journal().begin(), f.journal().end(),
                                        [kind](const v1::JournalLine& line) { return line.kind() == kind; }));
}

void expectWholeRecord(RunFixture& f) {
  for (const v1::JournalLine& line : f.journal()) {
    EXPECT_TRUE(check(line).ok()) << check(line) << line.DebugString();
  }
  const v1::Practice practice = f.run().practice();
  EXPECT_TRUE(check(practice).ok()) << check(practice);
  const auto folded = practiceFromJournal(f.journal(), f.timelines());
  ASSERT_TRUE(folded.ok()) << folded.status();
  EXPECT_EQ(folded->DebugString(), practice.DebugString());
}

class Run : public ::testing::Test {
 protected:
  void SetUp() override { ASSERT_TRUE(f.begin().ok()); }
  // Standing at the first beat of the first entry.
  void play() {
    ASSERT_TRUE(f.passReadyCheck().ok());
    ASSERT_TRUE(f.startEntry().ok());
    ASSERT_EQ(f.run().step(), RunStep::Playing);
  }
  RunFixture f;
};

TEST_F(Run, aWholePracticeIsLedAndRecorded) {
  EXPECT_EQ(f.run().step(), RunStep::Question);
  EXPECT_EQ(f.run().questionNumber(), 1);
  EXPECT_GE(f.run().questionCount(), 1);
  EXPECT_LE(f.run().questionCount(), 5);  // H17
  ASSERT_TRUE(f.passReadyCheck(3).ok());
  ASSERT_TRUE(f.finish().ok());
  expectWholeRecord(f);

  const v1::Practice practice = f.run().practice();
  EXPECT_EQ(practice.end(), v1::PRACTICE_END_FINISHED);
  EXPECT_EQ(practice.stop_reason(), v1::STOP_REASON_UNSPECIFIED);
  EXPECT_EQ(practice.ready_answers_size(), f.run().questionCount());
  ASSERT_EQ(practice.entries_size(), 3);
  EXPECT_EQ(practice.entries(0).pain_before_0_10(), 3U);
  EXPECT_FALSE(practice.entries(1).has_pain_before_0_10());  // asked once
  for (int i = 0; i < 3; ++i) {
    const v1::EntryDone& entry = practice.entries(i);
    EXPECT_EQ(entry.done().SerializeAsString(), entry.asked().SerializeAsString());
    EXPECT_EQ(entry.pain_after_0_10(), 2U);
    EXPECT_EQ(entry.effort_0_10(), 4U);
    EXPECT_EQ(entry.elapsed_ms(), f.run().timeline(static_cast<std::size_t>(i)).total_ms());
  }
  EXPECT_EQ(practice.entries(0).sets_size(), 2);
  EXPECT_EQ(practice.origin(), v1::ORIGIN_TIMED_HERE);
  EXPECT_TRUE(practice.doubts().empty());
  EXPECT_TRUE(f.run().over());
}

// H19
TEST_F(Run, anEntryWithSupportNeverStartsUnconfirmed) {
  ASSERT_TRUE(f.passReadyCheck().ok());
  EXPECT_EQ(f.run().step(), RunStep::Support);
  EXPECT_EQ(f.run().startEntry(f.wall(), f.now()).code(), absl::StatusCode::kFailedPrecondition);
  ASSERT_TRUE(f.run().confirmSupport(f.wall(), f.now()).ok());
  EXPECT_EQ(f.run().step(), RunStep::Ready);
  ASSERT_TRUE(f.startEntry().ok());
  ASSERT_TRUE(f.playOut().ok());
  ASSERT_TRUE(f.run().rate(1, 3, f.wall(), f.now()).ok());
  // The mat carries the second entry: nothing to confirm. The third has its own support to confirm.
  EXPECT_EQ(f.run().step(), RunStep::Ready);
  ASSERT_TRUE(f.startEntry().ok());
  ASSERT_TRUE(f.playOut().ok());
  ASSERT_TRUE(f.run().rate(1, 3, f.wall(), f.now()).ok());
  EXPECT_EQ(f.run().step(), RunStep::Support);
}

TEST_F(Run, aCallThatTheStepDoesNotTakeChangesNothing) {
  const std::size_t lines = f.journal().size();
  for (const absl::Status& status :
       {f.run().painBefore(1, f.wall(), f.now()), f.run().confirmSupport(f.wall(), f.now()),
        f.run().startEntry(f.wall(), f.now()), f.run().pause(f.wall(), f.now()),
        f.run().resume(f.wall(), f.now()), f.run().rate(1, 1, f.wall(), f.now()),
        f.run().acknowledge(f.wall(), f.now()), f.run().stopReason(v1::STOP_REASON_PAIN, f.wall(), f.now()),
        f.run().skipEntry(v1::STOP_REASON_TIRED, "", f.wall(), f.now())}) {
    EXPECT_EQ(status.code(), absl::StatusCode::kFailedPrecondition) << status;
  }
  EXPECT_EQ(f.run().answer("no-such-choice", f.wall(), f.now()).code(), absl::StatusCode::kInvalidArgument);
  EXPECT_EQ(f.journal().size(), lines);
  EXPECT_EQ(f.run().step(), RunStep::Question);
}

TEST_F(Run, aRatingOutOfRangeIsRefused) {
  play();
  ASSERT_TRUE(f.playOut().ok());
  EXPECT_EQ(f.run().rate(11, 1, f.wall(), f.now()).code(), absl::StatusCode::kInvalidArgument);
  EXPECT_EQ(f.run().rate(1, 11, f.wall(), f.now()).code(), absl::StatusCode::kInvalidArgument);
  EXPECT_EQ(f.run().step(), RunStep::Rating);
}

TEST_F(Run, stopActsAtOnceThenAsksWhyAndTheNextMayFollow) {
  play();
  ASSERT_TRUE(f.advance(absl::Seconds(14)).ok());
  ASSERT_TRUE(f.run().stopPressed(f.wall(), f.now()).ok());
  EXPECT_EQ(f.run().step(), RunStep::WhatHappened);
  EXPECT_EQ(f.run().player(), nullptr);
  EXPECT_EQ(f.run().stopReason(v1::STOP_REASON_UNSPECIFIED, f.wall(), f.now()).code(),
            absl::StatusCode::kInvalidArgument);
  ASSERT_TRUE(f.run().stopReason(v1::STOP_REASON_TIRED, f.wall(), f.now()).ok());
  ASSERT_EQ(f.run().step(), RunStep::Verdict);
  EXPECT_FALSE(f.run().verdict()->ends_practice);
  EXPECT_FALSE(f.run().over());
  ASSERT_TRUE(f.run().acknowledge(f.wall(), f.now()).ok());
  EXPECT_EQ(f.run().step(), RunStep::Rating);
  ASSERT_TRUE(f.finish().ok());
  expectWholeRecord(f);
  const v1::Practice practice = f.run().practice();
  EXPECT_EQ(practice.entries(0).skipped(), v1::STOP_REASON_TIRED);
  EXPECT_EQ(practice.entries(0).done().repetitions(), 0U);
  EXPECT_EQ(practice.entries(0).done().active_ms(), 3000);  // the move of 10 to 13 s
  EXPECT_EQ(practice.entries(1).skipped(), v1::STOP_REASON_UNSPECIFIED);
  EXPECT_EQ(practice.end(), v1::PRACTICE_END_FINISHED);
}

// heartonline.org.au: chest pain, stop; emergency number first.
TEST_F(Run, chestPainEndsThePracticeWithTheEmergencyNumberFirst) {
  play();
  ASSERT_TRUE(f.advance(absl::Seconds(20)).ok());
  ASSERT_TRUE(f.run().stopPressed(f.wall(), f.now()).ok());
  ASSERT_TRUE(f.run().stopReason(v1::STOP_REASON_CHEST_PAIN, f.wall(), f.now()).ok());
  ASSERT_EQ(f.run().step(), RunStep::Verdict);
  EXPECT_TRUE(f.run().verdict()->ends_practice);
  EXPECT_TRUE(f.run().verdict()->findings[0].emergency_first());
  // The record is complete before anybody reads the words.
  EXPECT_TRUE(f.run().over());
  EXPECT_EQ(f.run().practice().end(), v1::PRACTICE_END_RED_FLAG);
  EXPECT_EQ(f.run().practice().stop_reason(), v1::STOP_REASON_CHEST_PAIN);
  const std::size_t lines = f.journal().size();
  ASSERT_TRUE(f.run().acknowledge(f.wall(), f.now()).ok());
  EXPECT_EQ(f.run().step(), RunStep::Closed);
  EXPECT_EQ(f.journal().size(), lines);
  expectWholeRecord(f);
}

TEST_F(Run, aSkipForAReasonThatIsARedFlagIsOne) {
  ASSERT_TRUE(f.passReadyCheck().ok());
  ASSERT_TRUE(f.run().skipEntry(v1::STOP_REASON_CHEST_PAIN, "", f.wall(), f.now()).ok());
  EXPECT_EQ(f.run().step(), RunStep::Verdict);
  EXPECT_TRUE(f.run().over());
  EXPECT_EQ(f.run().practice().end(), v1::PRACTICE_END_RED_FLAG);
}

TEST_F(Run, aSkippedEntryKeepsThePersonsWordsAndTheNextComes) {
  ASSERT_TRUE(f.passReadyCheck().ok());
  ASSERT_TRUE(f.run().skipEntry(v1::STOP_REASON_NO_TIME, "the bus comes", f.wall(), f.now()).ok());
  EXPECT_EQ(f.run().entryIndex(), 1U);
  ASSERT_TRUE(f.finish().ok());
  EXPECT_EQ(f.run().practice().entries(0).skipped(), v1::STOP_REASON_NO_TIME);
  EXPECT_EQ(f.run().practice().entries(0).skipped_words(), "the bus comes");
  EXPECT_FALSE(f.run().practice().entries(0).has_pain_after_0_10());
  EXPECT_EQ(f.run().practice().end(), v1::PRACTICE_END_FINISHED);
  expectWholeRecord(f);
}

TEST_F(Run, skippingTheRestOfAnEntryKeepsWhatWasDoneOfIt) {
  play();
  ASSERT_TRUE(f.advance(absl::Seconds(19)).ok());  // one repetition is done at 18
  ASSERT_TRUE(f.run().skipEntry(v1::STOP_REASON_TIRED, "", f.wall(), f.now()).ok());
  ASSERT_TRUE(f.finish().ok());
  EXPECT_EQ(f.run().practice().entries(0).done().repetitions(), 1U);
  EXPECT_EQ(f.run().practice().entries(0).skipped(), v1::STOP_REASON_TIRED);
  expectWholeRecord(f);
}

// Threshold 5: a pain of 6 stops, 5 does not (Thomee 1997, from memory; the limit is the therapist's).
TEST_F(Run, painAboveTheSignedLimitEndsThePractice) {
  play();
  ASSERT_TRUE(f.playOut().ok());
  ASSERT_TRUE(f.run().rate(6, 4, f.wall(), f.now()).ok());
  ASSERT_EQ(f.run().step(), RunStep::Verdict);
  EXPECT_TRUE(f.run().verdict()->ends_practice);
  EXPECT_TRUE(f.run().over());
  EXPECT_EQ(f.run().practice().red_flag_rule_ids(0), "pain-over-stop");
  expectWholeRecord(f);
}

TEST_F(Run, painThatRoseIsToldAndThePracticeMayGoOn) {
  play();
  ASSERT_TRUE(f.playOut().ok());
  ASSERT_TRUE(f.run().rate(3, 4, f.wall(), f.now()).ok());  // from 1 to 3: by the signed 2
  ASSERT_EQ(f.run().step(), RunStep::Verdict);
  EXPECT_FALSE(f.run().verdict()->ends_practice);
  ASSERT_TRUE(f.run().acknowledge(f.wall(), f.now()).ok());
  EXPECT_EQ(f.run().entryIndex(), 1U);
}

TEST_F(Run, severePainBeforeTheFirstEntryEndsThePractice) {
  ASSERT_TRUE(f.passReadyCheck(9).ok());
  EXPECT_EQ(f.run().step(), RunStep::Verdict);
  EXPECT_TRUE(f.run().over());
  EXPECT_EQ(countOf(f, v1::JOURNAL_KIND_BEAT_BEGUN), 0);
}

TEST_F(Run, aProblemWithTheProsthesisLeavesOutWhatNeedsIt) {
  play();
  ASSERT_TRUE(f.run().stopPressed(f.wall(), f.now()).ok());
  ASSERT_TRUE(f.run().stopReason(v1::STOP_REASON_PROSTHESIS, f.wall(), f.now()).ok());
  ASSERT_EQ(f.run().step(), RunStep::Verdict);
  EXPECT_FALSE(f.run().verdict()->ends_practice);
  EXPECT_TRUE(f.run().entryLeftOut(2));   // stairs
  EXPECT_FALSE(f.run().entryLeftOut(1));  // on the floor without the prosthesis
  ASSERT_TRUE(f.finish().ok());
  EXPECT_EQ(f.run().practice().entries(2).skipped(), v1::STOP_REASON_OTHER);
  EXPECT_EQ(f.run().practice().entries(2).done().active_ms(), 0);
  EXPECT_GT(f.run().practice().entries(1).done().active_ms(), 0);
  expectWholeRecord(f);
}

// Every answer of the ready check has its rule's effect (H20), and none that ends leads to a beat (H04).
TEST(RunReadyCheck, everyAnswerHasItsEffect) {
  int ended = 0;
  int left_out = 0;
  RunFixture probe;
  ASSERT_TRUE(probe.begin().ok());
  const int questions = probe.run().questionCount();
  for (int q = 0; q < questions; ++q) {
    for (int c = 0;; ++c) {
      RunFixture f;
      ASSERT_TRUE(f.begin().ok());
      for (int i = 0; i < q; ++i) {
        ASSERT_TRUE(f.goOn().ok());
      }
      const v1::ReadyQuestion& question = *f.run().question();
      if (c >= question.choices_size()) break;
      const v1::ReadyChoice choice = question.choices(c);
      ASSERT_TRUE(f.run().answer(choice.id(), f.wall(), f.now()).ok());
      while (f.run().step() == RunStep::Question) {
        ASSERT_TRUE(f.goOn().ok());
      }
      if (choice.fine()) {
        EXPECT_EQ(f.run().step(), RunStep::PainBefore) << question.id() << " " << choice.id();
        continue;
      }
      ASSERT_EQ(f.run().step(), RunStep::Verdict) << question.id() << " " << choice.id();
      if (f.run().verdict()->ends_practice) {
        ++ended;
        EXPECT_TRUE(f.run().over());
        ASSERT_TRUE(f.finish().ok());
        EXPECT_EQ(countOf(f, v1::JOURNAL_KIND_BEAT_BEGUN), 0);
        EXPECT_TRUE(f.run().practice().end() == v1::PRACTICE_END_RED_FLAG ||
                    f.run().practice().end() == v1::PRACTICE_END_REFUSED);
      } else {
        for (std::size_t i = 0; i < 3; ++i) left_out += f.run().entryLeftOut(i) ? 1 : 0;
        ASSERT_TRUE(f.finish().ok());
      }
      expectWholeRecord(f);
    }
  }
  EXPECT_GT(ended, 5);
  EXPECT_GT(left_out, 2);
}

TEST(RunReadyCheck, aRedFlagEndsAtOnceWithoutTheOtherQuestions) {
  RunFixture f;
  ASSERT_TRUE(f.begin().ok());
  ASSERT_TRUE(f.run().answer("chest-pain", f.wall(), f.now()).ok());
  EXPECT_EQ(f.run().step(), RunStep::Verdict);
  EXPECT_EQ(f.run().practice().end(), v1::PRACTICE_END_RED_FLAG);
  EXPECT_EQ(f.run().practice().ready_answers_size(), 1);
}

TEST_F(Run, stopBeforeAnythingWasDoneClosesThePractice) {
  ASSERT_TRUE(f.run().stopPressed(f.wall(), f.now()).ok());
  ASSERT_TRUE(f.run().stopReason(v1::STOP_REASON_NO_TIME, f.wall(), f.now()).ok());
  ASSERT_TRUE(f.finish().ok());
  EXPECT_EQ(f.run().practice().end(), v1::PRACTICE_END_STOPPED);
  EXPECT_EQ(f.run().practice().stop_reason(), v1::STOP_REASON_NO_TIME);
  EXPECT_EQ(countOf(f, v1::JOURNAL_KIND_BEAT_BEGUN), 0);
  expectWholeRecord(f);
}

TEST_F(Run, stopBetweenEntriesSkipsTheComingOne) {
  play();
  ASSERT_TRUE(f.playOut().ok());
  ASSERT_TRUE(f.run().rate(1, 3, f.wall(), f.now()).ok());
  ASSERT_TRUE(f.run().stopPressed(f.wall(), f.now()).ok());
  ASSERT_TRUE(f.run().stopReason(v1::STOP_REASON_UNSTEADY, f.wall(), f.now()).ok());
  ASSERT_TRUE(f.run().acknowledge(f.wall(), f.now()).ok());
  EXPECT_EQ(f.run().entryIndex(), 2U);
  EXPECT_EQ(f.run().practice().entries(1).skipped(), v1::STOP_REASON_UNSTEADY);
  ASSERT_TRUE(f.finish().ok());
  expectWholeRecord(f);
}

TEST_F(Run, stopWhileRatingIsAskedAboutToo) {
  play();
  ASSERT_TRUE(f.playOut().ok());
  ASSERT_TRUE(f.run().stopPressed(f.wall(), f.now()).ok());
  ASSERT_TRUE(f.run().stopReason(v1::STOP_REASON_FALL, f.wall(), f.now()).ok());
  EXPECT_TRUE(f.run().over());
  EXPECT_EQ(f.run().practice().end(), v1::PRACTICE_END_RED_FLAG);
}

// H05: in every step.
TEST(RunHold, aHoldOnEverythingEndsThePracticeInAnyStep) {
  for (int acts = 0; acts < 60; ++acts) {
    RunFixture f;
    ASSERT_TRUE(f.begin().ok());
    for (int i = 0; i < acts && f.run().step() != RunStep::Closed; ++i) {
      ASSERT_TRUE(f.goOn().ok());
    }
    if (f.run().step() == RunStep::Closed) break;
    const int begun = countOf(f, v1::JOURNAL_KIND_BEAT_BEGUN);
    ASSERT_TRUE(f.run().holdOrder(test::holdOrder(), f.wall(), f.now()).ok());
    EXPECT_TRUE(f.run().over());
    EXPECT_EQ(f.run().step(), RunStep::Verdict);
    EXPECT_EQ(f.run().verdict()->findings[0].person(), "Please stop until we have talked.");
    EXPECT_EQ(f.run().practice().end(), v1::PRACTICE_END_HELD);
    ASSERT_TRUE(f.advance(absl::Seconds(30)).ok());
    EXPECT_EQ(countOf(f, v1::JOURNAL_KIND_BEAT_BEGUN), begun);
    ASSERT_TRUE(f.finish().ok());
    expectWholeRecord(f);
  }
}

TEST(RunHold, aHoldOnTheEntryUnderWayEndsItAndTheNextFollows) {
  RunFixture f;
  ASSERT_TRUE(f.begin().ok());
  ASSERT_TRUE(f.passReadyCheck().ok());
  ASSERT_TRUE(f.startEntry().ok());
  ASSERT_TRUE(f.advance(absl::Seconds(20)).ok());
  ASSERT_TRUE(f.run().holdOrder(test::holdOrder({test::idOf(101)}), f.wall(), f.now()).ok());
  EXPECT_EQ(f.run().step(), RunStep::Verdict);
  EXPECT_FALSE(f.run().over());
  ASSERT_TRUE(f.run().acknowledge(f.wall(), f.now()).ok());
  EXPECT_EQ(f.run().entryIndex(), 1U);
  EXPECT_TRUE(f.run().entryLeftOut(0));
  ASSERT_TRUE(f.finish().ok());
  EXPECT_EQ(f.run().practice().entries(0).skipped(), v1::STOP_REASON_HOLD_ORDER);
  EXPECT_EQ(f.run().practice().entries(0).done().repetitions(), 1U);
  EXPECT_EQ(f.run().practice().end(), v1::PRACTICE_END_FINISHED);
  expectWholeRecord(f);
}

TEST(RunHold, aHoldOnAllThatIsLeftEndsThePractice) {
  RunFixture f;
  ASSERT_TRUE(f.begin().ok());
  ASSERT_TRUE(f.passReadyCheck().ok());
  ASSERT_TRUE(f.startEntry().ok());
  ASSERT_TRUE(
      f.run()
          .holdOrder(test::holdOrder({test::idOf(101), test::idOf(102), test::idOf(103)}), f.wall(), f.now())
          .ok());
  EXPECT_TRUE(f.run().over());
  EXPECT_EQ(f.run().practice().end(), v1::PRACTICE_END_HELD);
}

TEST(RunHold, anOrderThatLiftsOrNamesOthersChangesNothing) {
  RunFixture f;
  ASSERT_TRUE(f.begin().ok());
  const std::size_t lines = f.journal().size();
  v1::HoldOrder lift = test::holdOrder();
  lift.set_lifts_id(test::idOf(899));
  ASSERT_TRUE(f.run().holdOrder(lift, f.wall(), f.now()).ok());
  ASSERT_TRUE(f.run().holdOrder(test::holdOrder({test::idOf(777)}), f.wall(), f.now()).ok());
  EXPECT_EQ(f.journal().size(), lines);
  EXPECT_EQ(f.run().step(), RunStep::Question);
}

TEST(RunHold, entriesThatAreHeldAtTheStartAreLeftOutAndRecordedSo) {
  RunFixture f;
  f.input().held_entry_ids = {test::idOf(103)};
  ASSERT_TRUE(f.begin().ok());
  EXPECT_TRUE(f.run().entryLeftOut(2));
  ASSERT_TRUE(f.finish().ok());
  EXPECT_EQ(f.run().practice().entries(2).skipped(), v1::STOP_REASON_HOLD_ORDER);
  EXPECT_EQ(f.run().practice().end(), v1::PRACTICE_END_FINISHED);
  expectWholeRecord(f);
}

TEST(RunHold, nothingBeginsWhenEverythingIsHeld) {
  RunFixture all;
  all.input().held_all = true;
  EXPECT_EQ(all.begin().code(), absl::StatusCode::kFailedPrecondition);
  RunFixture each;
  each.input().held_entry_ids = {test::idOf(101), test::idOf(102), test::idOf(103)};
  EXPECT_EQ(each.begin().code(), absl::StatusCode::kFailedPrecondition);
  EXPECT_TRUE(each.journal().empty());
}

// H03: the same rules again on the phone. No rails at home block stairs.
TEST(RunBlocked, whatARuleBlocksForThisPersonIsLeftOut) {
  RunFixture f;
  f.input().person.mutable_home()->set_rails(v1::RAILS_NONE);
  ASSERT_TRUE(f.begin().ok());
  EXPECT_TRUE(f.run().entryLeftOut(2));
  ASSERT_TRUE(f.finish().ok());
  EXPECT_EQ(f.run().practice().entries(2).done().active_ms(), 0);
  expectWholeRecord(f);
}

TEST(RunBegin, refusesWhatCannotBeLed) {
  RunFixture unknown;
  unknown.input().occasions[0].set_entry_id(test::idOf(777));
  EXPECT_EQ(unknown.begin().code(), absl::StatusCode::kInvalidArgument);
  RunFixture none;
  none.input().occasions.clear();
  EXPECT_EQ(none.begin().code(), absl::StatusCode::kInvalidArgument);
  RunFixture newer;
  newer.input().programme.mutable_entries(0)->set_exercise_revision(9);
  EXPECT_EQ(newer.begin().code(), absl::StatusCode::kFailedPrecondition);
}

TEST_F(Run, aWallClockThatIsSetIsDoubtedOnceAndTimesNothing) {
  play();
  ASSERT_TRUE(f.advance(absl::Seconds(5)).ok());
  f.clock().setWall(f.wall() + absl::Hours(24));
  ASSERT_TRUE(f.advance(absl::Seconds(2)).ok());
  f.clock().setWall(f.wall() - absl::Hours(72));
  ASSERT_TRUE(f.finish().ok());
  const v1::Practice practice = f.run().practice();
  ASSERT_EQ(practice.doubts_size(), 1);
  EXPECT_EQ(practice.doubts(0), v1::CLOCK_DOUBT_WALL_MOVED);
  EXPECT_EQ(practice.entries(0).elapsed_ms(), f.run().timeline(0).total_ms());
  expectWholeRecord(f);
}

TEST_F(Run, aChangeOfZoneIsNotedAndTheDayStays) {
  ASSERT_TRUE(f.run().zoneChanged("Europe/Berlin", f.wall(), f.now()).ok());
  ASSERT_TRUE(f.run().zoneChanged("Asia/Tokyo", f.wall(), f.now()).ok());
  ASSERT_TRUE(f.finish().ok());
  ASSERT_EQ(f.run().practice().doubts_size(), 1);
  EXPECT_EQ(f.run().practice().doubts(0), v1::CLOCK_DOUBT_ZONE_CHANGED);
  EXPECT_EQ(f.run().practice().zone(), "Europe/Berlin");
  EXPECT_EQ(f.run().practice().local_day(), "2026-11-25");
}

TEST_F(Run, leavingEarlyKeepsWhatWasDone) {
  play();
  ASSERT_TRUE(f.advance(absl::Seconds(20)).ok());
  ASSERT_TRUE(f.run().close(false, f.wall(), f.now()).ok());
  EXPECT_EQ(f.run().step(), RunStep::Closed);
  EXPECT_EQ(f.run().practice().end(), v1::PRACTICE_END_STOPPED);
  EXPECT_EQ(f.run().practice().entries(0).done().repetitions(), 1U);
  EXPECT_TRUE(f.run().close(false, f.wall(), f.now()).ok());
  expectWholeRecord(f);
}

TEST_F(Run, aPracticeThatNobodyTookUpClosesAsInterrupted) {
  play();
  ASSERT_TRUE(f.advance(absl::Seconds(20)).ok());
  ASSERT_TRUE(f.run().close(true, f.wall(), f.now()).ok());
  EXPECT_EQ(f.run().practice().end(), v1::PRACTICE_END_INTERRUPTED);
  EXPECT_EQ(f.run().practice().stop_reason(), v1::STOP_REASON_INTERRUPTED);
  expectWholeRecord(f);
}

TEST_F(Run, pauseByACallVoidsTheHoldAndItIsCounted) {
  play();
  ASSERT_TRUE(f.advance(absl::Seconds(14)).ok());  // in the hold of 13 to 15 s
  ASSERT_TRUE(f.run().pause(f.wall(), f.now()).ok());
  f.clock().advance(absl::Minutes(3));
  ASSERT_TRUE(f.finish().ok());
  EXPECT_EQ(f.run().practice().entries(0).voided_holds(), 1U);
  EXPECT_EQ(f.run().practice().entries(0).done().hold_ms(), f.run().practice().entries(0).asked().hold_ms());
  expectWholeRecord(f);
}

// A line that cannot be kept: what it would record does not happen.
TEST_F(Run, anAnswerThatCannotBeKeptWasNotGiven) {
  f.failAfter(0);
  const std::string asked = f.run().question()->id();
  EXPECT_EQ(f.run().answer(f.run().question()->choices(0).id(), f.wall(), f.now()).code(),
            absl::StatusCode::kResourceExhausted);
  EXPECT_EQ(f.run().step(), RunStep::Question);
  EXPECT_EQ(f.run().question()->id(), asked);
  f.failNever();
  ASSERT_TRUE(f.finish().ok());
  EXPECT_EQ(f.run().practice().ready_answers_size(), f.run().questionCount());
  expectWholeRecord(f);
}

TEST_F(Run, noBeatBeginsWhileTheDiskIsFull) {
  play();
  const std::uint32_t beat = f.run().player()->beat();
  f.failAfter(0);
  for (int i = 0; i < 150; ++i) {
    f.clock().advance(absl::Milliseconds(100));
    const absl::Status status = f.run().tick(f.wall(), f.now());
    if (!status.ok()) {
      EXPECT_EQ(status.code(), absl::StatusCode::kResourceExhausted);
    }
  }
  EXPECT_EQ(f.run().player()->beat(), beat);
  f.failNever();
  // Nobody knows what was done meanwhile: the person takes it up.
  ASSERT_TRUE(f.run().tick(f.wall(), f.now()).ok());
  EXPECT_EQ(f.run().player()->state(), PlayerState::Paused);
  ASSERT_TRUE(f.finish().ok());
  expectWholeRecord(f);
}

TEST_F(Run, aStopThatCannotBeKeptIsNotForgotten) {
  play();
  ASSERT_TRUE(f.advance(absl::Seconds(9)).ok());
  f.failAfter(0);
  EXPECT_FALSE(f.run().stopPressed(f.wall(), f.now()).ok());
  // Beats would have begun by now.
  for (int i = 0; i < 30; ++i) {
    f.clock().advance(absl::Seconds(1));
    EXPECT_FALSE(f.run().tick(f.wall(), f.now()).ok());
  }
  const int begun = countOf(f, v1::JOURNAL_KIND_BEAT_BEGUN);
  f.failNever();
  ASSERT_TRUE(f.run().tick(f.wall(), f.now()).ok());
  EXPECT_EQ(f.run().step(), RunStep::WhatHappened);
  EXPECT_EQ(countOf(f, v1::JOURNAL_KIND_BEAT_BEGUN), begun);
}

TEST_F(Run, aStopPressedWhileATickCannotBeKeptIsNotForgottenEither) {
  play();
  ASSERT_TRUE(f.advance(absl::Milliseconds(9900)).ok());
  f.failAfter(0);  // neither the get-ready's end nor the move's beginning
  f.clock().advance(absl::Milliseconds(200));
  EXPECT_FALSE(f.run().tick(f.wall(), f.now()).ok());
  EXPECT_FALSE(f.run().stopPressed(f.wall(), f.now()).ok());
  f.failNever();
  f.clock().advance(absl::Milliseconds(200));
  ASSERT_TRUE(f.run().tick(f.wall(), f.now()).ok());
  EXPECT_EQ(f.run().step(), RunStep::WhatHappened);
  ASSERT_TRUE(f.finish().ok());
  expectWholeRecord(f);
}

// Each write waits for the disk, and the cue waits for the write.
TEST_F(Run, aBeatsEndAndTheNextOnesBeginningAreOneWrite) {
  play();
  const int writes = f.writes();
  const std::size_t lines = f.journal().size();
  ASSERT_TRUE(f.advance(absl::Seconds(10)).ok());
  EXPECT_EQ(f.journal().size(), lines + 2);
  EXPECT_EQ(f.writes(), writes + 1);
}

TEST_F(Run, aHoldOrderThatCannotBeKeptIsNotForgotten) {
  play();
  f.failAfter(0);
  EXPECT_FALSE(f.run().holdOrder(test::holdOrder(), f.wall(), f.now()).ok());
  f.failNever();
  ASSERT_TRUE(f.run().tick(f.wall(), f.now()).ok());
  EXPECT_TRUE(f.run().over());
  EXPECT_EQ(f.run().practice().end(), v1::PRACTICE_END_HELD);
  expectWholeRecord(f);
}

TEST_F(Run, aRedFlagWhoseCloseCannotBeKeptStillEndsThePractice) {
  f.failAfter(1);  // the answer is kept, the flag is not
  EXPECT_FALSE(f.run().answer("chest-pain", f.wall(), f.now()).ok());
  f.failNever();
  // Another choice is not carried out: look again.
  EXPECT_EQ(f.run().answer("well", f.wall(), f.now()).code(), absl::StatusCode::kAborted);
  EXPECT_EQ(f.run().step(), RunStep::Verdict);
  EXPECT_TRUE(f.run().over());
  EXPECT_EQ(f.run().practice().ready_answers_size(), 1);
  expectWholeRecord(f);
}

TEST(RunCaution, atMostOneIsShown) {
  RunFixture f;
  ASSERT_TRUE(f.begin().ok());
  for (std::size_t i = 0; i < f.run().entryCount(); ++i) {
    const auto caution = f.run().caution(i);
    if (caution) {
      EXPECT_FALSE(caution->person().empty());
    }
  }
}

}  // namespace
}  // namespace newel
