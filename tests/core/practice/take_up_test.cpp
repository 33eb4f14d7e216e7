// Kill -9 at every journal line of a scripted practice: nothing is lost, nothing is doubled.
#include <gtest/gtest.h>

#include <map>
#include <set>

#include "core/records/check.h"
#include "tests/core/people/sample_people.h"
#include "tests/core/practice/run_fixture.h"

namespace newel {
namespace {

using test::RunFixture;

// Whole and undisturbed.
void plainPractice(RunFixture& f) {
  EXPECT_TRUE(f.begin().ok());
  EXPECT_TRUE(f.finish().ok());
}

// With a pause in a hold, a sleep, a repeat, a stop with its reason, a skip, a wall clock that is set, a
// rating that a rule speaks about.
void eventfulPractice(RunFixture& f) {
  EXPECT_TRUE(f.begin().ok());
  EXPECT_TRUE(f.passReadyCheck().ok());
  EXPECT_TRUE(f.startEntry().ok());
  EXPECT_TRUE(f.advance(absl::Seconds(14)).ok());
  EXPECT_TRUE(f.run().pause(f.wall(), f.now()).ok());
  f.clock().advance(absl::Seconds(45));
  EXPECT_TRUE(f.run().resume(f.wall(), f.now()).ok());
  EXPECT_TRUE(f.advance(absl::Seconds(11)).ok());
  EXPECT_TRUE(f.run().repeatBeat(f.wall(), f.now()).ok());
  EXPECT_TRUE(f.advance(absl::Seconds(5)).ok());
  f.clock().advance(absl::Minutes(5));  // the phone slept
  EXPECT_TRUE(f.run().tick(f.wall(), f.now()).ok());
  f.clock().setWall(f.wall() + absl::Hours(1));
  EXPECT_TRUE(f.run().resume(f.wall(), f.now()).ok());
  EXPECT_TRUE(f.playOut().ok());
  EXPECT_TRUE(f.run().rate(4, 5, f.wall(), f.now()).ok());  // rose by 3
  EXPECT_TRUE(f.run().acknowledge(f.wall(), f.now()).ok());
  EXPECT_TRUE(f.startEntry().ok());
  EXPECT_TRUE(f.advance(absl::Seconds(24)).ok());
  EXPECT_TRUE(f.run().stopPressed(f.wall(), f.now()).ok());
  EXPECT_TRUE(f.run().stopReason(v1::STOP_REASON_TIRED, f.wall(), f.now()).ok());
  EXPECT_TRUE(f.run().acknowledge(f.wall(), f.now()).ok());
  EXPECT_TRUE(f.run().rate(2, 7, f.wall(), f.now()).ok());
  EXPECT_TRUE(f.run().skipEntry(v1::STOP_REASON_NO_TIME, "late", f.wall(), f.now()).ok());
  EXPECT_EQ(f.run().step(), RunStep::Closed);
}

// Ends by a red flag, its rules' lines included.
void flaggedPractice(RunFixture& f) {
  EXPECT_TRUE(f.begin().ok());
  EXPECT_TRUE(f.passReadyCheck().ok());
  EXPECT_TRUE(f.startEntry().ok());
  EXPECT_TRUE(f.advance(absl::Seconds(30)).ok());
  EXPECT_TRUE(f.run().stopPressed(f.wall(), f.now()).ok());
  EXPECT_TRUE(f.run().stopReason(v1::STOP_REASON_CHEST_PAIN, f.wall(), f.now()).ok());
  EXPECT_TRUE(f.run().over());
}

void expectNothingDoubled(const std::vector<v1::JournalLine>& journal) {
  std::set<std::pair<std::uint32_t, std::uint32_t>> ended;
  std::set<std::uint32_t> begun;
  std::set<std::uint32_t> rated;
  std::set<std::string> answered;
  std::set<std::string> flags;
  for (std::size_t i = 0; i < journal.size(); ++i) {
    const v1::JournalLine& line = journal[i];
    ASSERT_EQ(line.sequence(), i + 1);
    ASSERT_TRUE(check(line).ok()) << check(line);
    if (line.kind() == v1::JOURNAL_KIND_BEAT_ENDED) {
      ASSERT_TRUE(ended.insert({line.entry(), line.beat()}).second) << "beat counted twice";
    }
    if (line.kind() == v1::JOURNAL_KIND_ENTRY_BEGUN) {
      ASSERT_TRUE(begun.insert(line.entry()).second);
    }
    if (line.has_pain_after_0_10()) {
      ASSERT_TRUE(rated.insert(line.entry()).second);
    }
    if (line.kind() == v1::JOURNAL_KIND_READY_ANSWER) {
      ASSERT_TRUE(answered.insert(line.answer().question_id()).second);
    }
    if (line.kind() == v1::JOURNAL_KIND_RED_FLAG) {
      ASSERT_TRUE(flags.insert(line.detail_id()).second);
    }
  }
}

// Everything that `before` says was done is in `after` too.
void expectNothingLost(const v1::Practice& before, const v1::Practice& after) {
  ASSERT_EQ(before.entries_size(), after.entries_size());
  for (int i = 0; i < before.entries_size(); ++i) {
    const v1::EntryDone& was = before.entries(i);
    const v1::EntryDone& is = after.entries(i);
    EXPECT_GE(is.done().repetitions(), was.done().repetitions());
    EXPECT_GE(is.done().hold_ms(), was.done().hold_ms());
    EXPECT_GE(is.done().active_ms(), was.done().active_ms());
    EXPECT_LE(is.done().active_ms(), is.asked().active_ms());
    EXPECT_GE(is.voided_holds(), was.voided_holds());
    EXPECT_GE(is.elapsed_ms(), was.elapsed_ms());
    if (was.has_pain_after_0_10()) {
      EXPECT_EQ(is.pain_after_0_10(), was.pain_after_0_10());
    }
    if (was.has_pain_before_0_10()) {
      EXPECT_EQ(is.pain_before_0_10(), was.pain_before_0_10());
    }
    if (was.skipped() != v1::STOP_REASON_UNSPECIFIED) {
      EXPECT_EQ(is.skipped(), was.skipped());
    }
  }
  ASSERT_LE(before.ready_answers_size(), after.ready_answers_size());
  for (int i = 0; i < before.ready_answers_size(); ++i) {
    EXPECT_EQ(before.ready_answers(i).DebugString(), after.ready_answers(i).DebugString());
  }
  for (const std::string& id : before.red_flag_rule_ids()) {
    EXPECT_NE(std::find(after.red_flag_rule_ids().begin(), after.red_flag_rule_ids().end(), id),
              after.red_flag_rule_ids().end());
  }
}

void expectSoundAfterKill(RunFixture& f, const v1::Practice& before) {
  ASSERT_NO_FATAL_FAILURE(expectNothingDoubled(f.journal()));
  const v1::Practice after = f.run().practice();
  ASSERT_TRUE(check(after).ok()) << check(after);
  expectNothingLost(before, after);
  const auto folded = practiceFromJournal(f.journal(), f.timelines());
  ASSERT_TRUE(folded.ok()) << folded.status();
  EXPECT_EQ(folded->DebugString(), after.DebugString());
}

TEST(TakeUp, afterAKillAtEveryLineOfAPlainPracticeTheRecordIsTheSame) {
  RunFixture whole;
  plainPractice(whole);
  const v1::Practice expected = *practiceFromJournal(whole.journal(), whole.timelines());
  ASSERT_GT(whole.journal().size(), 60U);
  for (std::size_t lines = 1; lines < whole.journal().size(); ++lines) {
    SCOPED_TRACE("killed after line " + std::to_string(lines));
    RunFixture f;
    const std::vector<v1::JournalLine> prefix(whole.journal().begin(),
                                              whole.journal().begin() + static_cast<std::ptrdiff_t>(lines));
    ASSERT_TRUE(f.takeUpFrom(prefix).ok());
    const v1::Practice before = *practiceFromJournal(prefix, f.timelines());
    // No beat runs until the person says so.
    if (f.run().step() == RunStep::Playing) {
      EXPECT_EQ(f.run().player()->state(), PlayerState::Paused);
      ASSERT_TRUE(f.advance(absl::Seconds(20)).ok());
      EXPECT_EQ(f.run().player()->state(), PlayerState::Paused);
    }
    ASSERT_TRUE(f.finish().ok());
    ASSERT_NO_FATAL_FAILURE(expectSoundAfterKill(f, before));

    const v1::Practice after = f.run().practice();
    EXPECT_EQ(after.resumed(), 1U);
    EXPECT_EQ(after.end(), expected.end());
    ASSERT_EQ(after.doubts_size(), 1);
    EXPECT_EQ(after.doubts(0), v1::CLOCK_DOUBT_RESTARTED);
    for (int i = 0; i < expected.entries_size(); ++i) {
      const v1::EntryDone& is = after.entries(i);
      const v1::EntryDone& should = expected.entries(i);
      EXPECT_EQ(is.done().DebugString(), should.done().DebugString());
      EXPECT_EQ(is.pain_after_0_10(), should.pain_after_0_10());
      EXPECT_EQ(is.effort_0_10(), should.effort_0_10());
      ASSERT_EQ(is.sets_size(), should.sets_size());
      for (int s = 0; s < is.sets_size(); ++s) {
        EXPECT_EQ(is.sets(s).DebugString(), should.sets(s).DebugString());
      }
    }
  }
}

TEST(TakeUp, afterAKillAtEveryLineOfAnEventfulPracticeNothingIsLostOrDoubled) {
  RunFixture whole;
  eventfulPractice(whole);
  for (std::size_t lines = 1; lines <= whole.journal().size(); ++lines) {
    SCOPED_TRACE("killed after line " + std::to_string(lines));
    RunFixture f;
    const std::vector<v1::JournalLine> prefix(whole.journal().begin(),
                                              whole.journal().begin() + static_cast<std::ptrdiff_t>(lines));
    ASSERT_TRUE(f.takeUpFrom(prefix).ok());
    const v1::Practice before = *practiceFromJournal(prefix, f.timelines());
    ASSERT_TRUE(f.finish().ok());
    ASSERT_NO_FATAL_FAILURE(expectSoundAfterKill(f, before));
  }
}

TEST(TakeUp, afterAKillAtEveryLineOfAFlaggedPracticeNoBeatFollowsTheReason) {
  RunFixture whole;
  flaggedPractice(whole);
  const auto is_reason = [](const v1::JournalLine& line) {
    return line.reason() == v1::STOP_REASON_CHEST_PAIN;
  };
  const auto reason = std::find_if(whole.journal().begin(), whole.journal().end(), is_reason);
  ASSERT_NE(reason, whole.journal().end());
  for (std::size_t lines = 1; lines <= whole.journal().size(); ++lines) {
    SCOPED_TRACE("killed after line " + std::to_string(lines));
    RunFixture f;
    const std::vector<v1::JournalLine> prefix(whole.journal().begin(),
                                              whole.journal().begin() + static_cast<std::ptrdiff_t>(lines));
    ASSERT_TRUE(f.takeUpFrom(prefix).ok());
    const v1::Practice before = *practiceFromJournal(prefix, f.timelines());
    const bool told = std::any_of(prefix.begin(), prefix.end(), is_reason);
    if (told) {
      EXPECT_TRUE(f.run().over());
      EXPECT_TRUE(f.run().step() == RunStep::Verdict || lines == whole.journal().size());
    }
    ASSERT_TRUE(f.finish().ok());
    ASSERT_NO_FATAL_FAILURE(expectSoundAfterKill(f, before));
    if (told) {
      EXPECT_EQ(f.run().practice().end(), v1::PRACTICE_END_RED_FLAG);
    }
  }
}

TEST(TakeUp, twoKillsInOnePractice) {
  RunFixture whole;
  plainPractice(whole);
  for (std::size_t first = 3; first < whole.journal().size(); first += 7) {
    RunFixture f;
    const std::vector<v1::JournalLine> prefix(whole.journal().begin(),
                                              whole.journal().begin() + static_cast<std::ptrdiff_t>(first));
    ASSERT_TRUE(f.takeUpFrom(prefix).ok());
    for (int i = 0; i < 9; ++i) {
      ASSERT_TRUE(f.goOn().ok());
    }
    const std::size_t lines = f.journal().size();
    const v1::Practice before = *practiceFromJournal(f.journal(), f.timelines());
    ASSERT_TRUE(f.takeUp(lines).ok());
    ASSERT_TRUE(f.finish().ok());
    ASSERT_NO_FATAL_FAILURE(expectSoundAfterKill(f, before));
    EXPECT_LE(f.run().practice().resumed(), 2U);
  }
}

TEST(TakeUp, aHoldThatCameMeanwhileTakesEffectBeforeAnything) {
  RunFixture whole;
  plainPractice(whole);
  for (std::size_t lines = 1; lines < whole.journal().size(); lines += 3) {
    RunFixture f;
    f.input().held_all = true;
    ASSERT_TRUE(
        f.takeUpFrom({whole.journal().begin(), whole.journal().begin() + static_cast<std::ptrdiff_t>(lines)})
            .ok());
    EXPECT_TRUE(f.run().over());
    EXPECT_EQ(f.run().practice().end(), v1::PRACTICE_END_HELD);
    EXPECT_EQ(f.run().step(), RunStep::Closed);
  }
}

TEST(TakeUp, aHoldOnOneEntryThatCameMeanwhileTakesOutThatOne) {
  RunFixture whole;
  plainPractice(whole);
  RunFixture f;
  f.input().held_entry_ids = {test::idOf(101)};
  // In the middle of the first entry.
  ASSERT_TRUE(f.takeUpFrom({whole.journal().begin(), whole.journal().begin() + 12}).ok());
  EXPECT_EQ(f.run().entryIndex(), 1U);
  ASSERT_TRUE(f.finish().ok());
  EXPECT_EQ(f.run().practice().entries(0).skipped(), v1::STOP_REASON_HOLD_ORDER);
}

TEST(TakeUp, occasionsMayBeLeftToTheJournal) {
  RunFixture whole;
  plainPractice(whole);
  RunFixture f;
  const auto occasions = f.input().occasions;
  f.input().occasions.clear();
  ASSERT_TRUE(f.takeUpFrom({whole.journal().begin(), whole.journal().begin() + 20}).ok());
  EXPECT_EQ(f.run().entryCount(), occasions.size());
}

TEST(TakeUp, linesThatNoPracticeCouldHaveWrittenAreDataLoss) {
  RunFixture whole;
  plainPractice(whole);
  const std::vector<v1::JournalLine>& good = whole.journal();
  const auto takenUp = [](const std::vector<v1::JournalLine>& lines) {
    RunFixture f;
    return f.takeUpFrom(lines).code();
  };
  EXPECT_EQ(takenUp({}), absl::StatusCode::kDataLoss);
  std::vector<v1::JournalLine> lines(good.begin(), good.begin() + 20);
  lines.erase(lines.begin() + 10);
  EXPECT_EQ(takenUp(lines), absl::StatusCode::kDataLoss);  // a gap
  lines.assign(good.begin(), good.begin() + 20);
  lines.push_back(good[19]);
  EXPECT_EQ(takenUp(lines), absl::StatusCode::kDataLoss);  // twice
  lines.assign(good.begin() + 1, good.begin() + 20);
  EXPECT_EQ(takenUp(lines), absl::StatusCode::kDataLoss);  // no beginning
  lines.assign(good.begin(), good.begin() + 20);
  lines.back().set_sequence(25);
  EXPECT_EQ(takenUp(lines), absl::StatusCode::kDataLoss);  // a line that fits, but others went before it
  lines.assign(good.begin(), good.begin() + 20);
  lines[15].set_practice_id(test::idOf(501));
  EXPECT_EQ(takenUp(lines), absl::StatusCode::kDataLoss);  // another practice's line
  lines.assign(good.begin(), good.end());
  lines.push_back(good.back());
  lines.back().set_sequence(static_cast<std::uint32_t>(lines.size()));
  EXPECT_EQ(takenUp(lines), absl::StatusCode::kDataLoss);  // after the close
  lines.assign(good.begin(), good.begin() + 20);
  lines.back().set_beat(lines.back().beat() + 5);
  EXPECT_EQ(takenUp(lines), absl::StatusCode::kDataLoss);  // a beat that was not due
}

TEST(TakeUp, aJournalThatGoesOnAfterARedFlagIsDataLoss) {
  RunFixture flagged;
  flaggedPractice(flagged);
  std::vector<v1::JournalLine> lines = flagged.journal();
  lines.pop_back();  // the close
  ASSERT_EQ(lines.back().kind(), v1::JOURNAL_KIND_RED_FLAG);
  v1::JournalLine next = lines.back();
  next.set_kind(v1::JOURNAL_KIND_ENTRY_BEGUN);
  next.set_entry(1);
  next.set_sequence(next.sequence() + 1);
  lines.push_back(next);
  RunFixture f;
  EXPECT_EQ(f.takeUpFrom(lines).code(), absl::StatusCode::kDataLoss);
}

TEST(TakeUp, ofAnotherPracticeOrProgrammeIsDataLoss) {
  RunFixture whole;
  plainPractice(whole);
  RunFixture other;
  other.input().practice_id = test::idOf(501);
  EXPECT_EQ(other.takeUpFrom(whole.journal()).code(), absl::StatusCode::kDataLoss);
  RunFixture newer;
  newer.input().programme.set_number(2);
  EXPECT_EQ(newer.takeUpFrom(whole.journal()).code(), absl::StatusCode::kDataLoss);
}

}  // namespace
}  // namespace newel
