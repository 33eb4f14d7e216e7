// Random walks over everything a practice can be told, with a full disk, kills, sleeps and clocks that are
// set. The one law: once a red flag, a NOT_TODAY or a hold on everything is on record, no beat begins (H04,
// H05).
#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

#include "core/records/check.h"
#include "tests/core/people/sample_people.h"
#include "tests/core/people/sample_random.h"
#include "tests/core/practice/run_fixture.h"

namespace newel {
namespace {

using test::RunFixture;
using test::SampleRandom;
using Call = std::function<absl::Status(RunFixture&, SampleRandom&)>;

v1::StopReason anyReason(SampleRandom& random) { return static_cast<v1::StopReason>(random.between(0, 16)); }

// Every call there is; the tick comes often, since time never stands still.
const std::vector<Call>& calls() {
  static const std::vector<Call> all = {
      [](RunFixture& f, SampleRandom& r) {
        const v1::ReadyQuestion* question = f.run().question();
        if (question == nullptr) return f.run().answer("well", f.wall(), f.now());
        // Mostly fine, so that walks get beyond the questions.
        const auto& choices = question->choices();
        for (const v1::ReadyChoice& choice : choices) {
          if (choice.fine() && r.chance(90)) return f.run().answer(choice.id(), f.wall(), f.now());
        }
        const auto last = static_cast<std::uint32_t>(choices.size()) - 1;
        return f.run().answer(choices[static_cast<int>(r.between(0, last))].id(), f.wall(), f.now());
      },
      [](RunFixture& f, SampleRandom& r) {
        return f.run().painBefore(r.chance(90) ? r.between(0, 4) : r.between(0, 11), f.wall(), f.now());
      },
      [](RunFixture& f, SampleRandom&) { return f.run().confirmSupport(f.wall(), f.now()); },
      [](RunFixture& f, SampleRandom&) { return f.run().startEntry(f.wall(), f.now()); },
      [](RunFixture& f, SampleRandom& r) { return f.advance(absl::Milliseconds(r.between(1, 9000))); },
      [](RunFixture& f, SampleRandom& r) { return f.advance(absl::Milliseconds(r.between(1, 30000))); },
      [](RunFixture& f, SampleRandom&) { return f.run().pause(f.wall(), f.now()); },
      [](RunFixture& f, SampleRandom&) { return f.run().resume(f.wall(), f.now()); },
      [](RunFixture& f, SampleRandom&) { return f.run().resume(f.wall(), f.now()); },
      [](RunFixture& f, SampleRandom&) { return f.run().tapDone(f.wall(), f.now()); },
      [](RunFixture& f, SampleRandom&) { return f.run().repeatBeat(f.wall(), f.now()); },
      [](RunFixture& f, SampleRandom&) { return f.run().skipBeat(f.wall(), f.now()); },
      [](RunFixture& f, SampleRandom& r) {
        return f.run().lengthenRest(absl::Seconds(r.between(0, 60)), f.wall(), f.now());
      },
      [](RunFixture& f, SampleRandom& r) {
        return r.chance(15) ? f.run().stopPressed(f.wall(), f.now()) : absl::OkStatus();
      },
      [](RunFixture& f, SampleRandom& r) { return f.run().stopReason(anyReason(r), f.wall(), f.now()); },
      [](RunFixture& f, SampleRandom& r) {
        return r.chance(10) ? f.run().skipEntry(anyReason(r), "words", f.wall(), f.now()) : absl::OkStatus();
      },
      [](RunFixture& f, SampleRandom& r) {
        return f.run().rate(r.chance(90) ? r.between(0, 2) : r.between(0, 11), r.between(0, 11), f.wall(),
                            f.now());
      },
      [](RunFixture& f, SampleRandom&) { return f.run().acknowledge(f.wall(), f.now()); },
      [](RunFixture& f, SampleRandom& r) {
        if (!r.chance(5)) return absl::OkStatus();
        std::vector<std::string> ids;
        if (r.chance(60)) ids.push_back(test::idOf(r.between(101, 104)));
        return f.run().holdOrder(test::holdOrder(ids), f.wall(), f.now());
      },
      [](RunFixture& f, SampleRandom&) { return f.run().zoneChanged("Asia/Tokyo", f.wall(), f.now()); },
      [](RunFixture& f, SampleRandom& r) {
        return r.chance(3) ? f.run().close(r.chance(50), f.wall(), f.now()) : absl::OkStatus();
      },
  };
  return all;
}

// The index from which no beat may begin; the journal's size when there is none.
std::size_t endOfBeats(const std::vector<v1::JournalLine>& journal) {
  for (std::size_t i = 0; i < journal.size(); ++i) {
    if (journal[i].kind() == v1::JOURNAL_KIND_RED_FLAG || journal[i].kind() == v1::JOURNAL_KIND_CLOSED)
      return i;
  }
  return journal.size();
}

void expectLaw(RunFixture& f) {
  const auto& journal = f.journal();
  for (std::size_t i = endOfBeats(journal); i < journal.size(); ++i) {
    ASSERT_NE(journal[i].kind(), v1::JOURNAL_KIND_BEAT_BEGUN);
    ASSERT_NE(journal[i].kind(), v1::JOURNAL_KIND_ENTRY_BEGUN);
  }
  if (endOfBeats(journal) < journal.size()) {
    ASSERT_EQ(f.run().player(), nullptr);
  }
  for (const v1::JournalLine& line : journal) ASSERT_TRUE(check(line).ok()) << check(line);
  const auto folded = practiceFromJournal(journal, f.timelines());
  ASSERT_TRUE(folded.ok()) << folded.status();
  ASSERT_EQ(folded->DebugString(), f.run().practice().DebugString());
  for (const v1::EntryDone& entry : folded->entries()) {
    ASSERT_LE(entry.done().active_ms(), entry.asked().active_ms());
    ASSERT_LE(entry.done().repetitions(), entry.asked().repetitions());
  }
  if (f.run().over()) {
    ASSERT_TRUE(check(*folded).ok()) << check(*folded);
  }
}

void disturb(RunFixture& f, SampleRandom& random) {
  if (random.chance(6)) f.failAfter(static_cast<int>(random.between(0, 2)));
  if (random.chance(40)) f.failNever();
  if (random.chance(4)) f.clock().advance(absl::Seconds(random.between(1, 4000)));
  if (random.chance(2)) f.clock().setWall(f.wall() + absl::Seconds(random.between(0, 7200)) - absl::Hours(1));
}

TEST(PracticeModel, noWalkBreaksTheLaw) {
  int finished = 0;
  int flagged = 0;
  int held = 0;
  int killed = 0;
  for (std::uint64_t seed = 1; seed <= 400; ++seed) {
    SCOPED_TRACE("seed " + std::to_string(seed));
    SampleRandom random(seed);
    RunInput input = test::shortInput();
    if (random.chance(30)) input.programme.mutable_entries(0)->set_pacing(v1::PACING_BY_PERSON);
    RunFixture f(input);
    ASSERT_TRUE(f.begin().ok());
    for (int act = 0; act < 250; ++act) {
      disturb(f, random);
      const auto& all = calls();
      const absl::Status status =
          all[random.between(0, static_cast<std::uint32_t>(all.size()) - 1)](f, random);
      ASSERT_TRUE(status.ok() || status.code() == absl::StatusCode::kFailedPrecondition ||
                  status.code() == absl::StatusCode::kInvalidArgument ||
                  status.code() == absl::StatusCode::kAborted ||
                  status.code() == absl::StatusCode::kResourceExhausted)
          << status;
      if (random.chance(3) && !f.run().over()) {
        f.failNever();
        ASSERT_TRUE(f.takeUp(f.journal().size()).ok());
        ++killed;
      }
      if (act % 10 == 0) {
        ASSERT_NO_FATAL_FAILURE(expectLaw(f));
      }
    }
    f.failNever();
    ASSERT_TRUE(f.run().close(false, f.wall(), f.now()).ok());
    ASSERT_NO_FATAL_FAILURE(expectLaw(f));
    ASSERT_TRUE(f.run().over());
    finished += f.run().practice().end() == v1::PRACTICE_END_FINISHED ? 1 : 0;
    flagged += f.run().practice().red_flag_rule_ids().empty() ? 0 : 1;
    held += f.run().practice().end() == v1::PRACTICE_END_HELD ? 1 : 0;
  }
  // The walks went everywhere.
  EXPECT_GT(finished, 5);
  EXPECT_GT(flagged, 100);
  EXPECT_GT(held, 10);
  EXPECT_GT(killed, 500);
}

// Each way into an end, then every pair of calls: the state cannot be left but by reading the verdict.
void expectNoWayOut(const std::function<void(RunFixture&)>& end) {
  RunFixture f;
  ASSERT_TRUE(f.begin().ok());
  end(f);
  ASSERT_TRUE(f.run().over());
  const std::size_t lines = f.journal().size();
  SampleRandom random(7);
  for (const Call& first : calls()) {
    for (const Call& second : calls()) {
      static_cast<void>(first(f, random));
      static_cast<void>(second(f, random));
      ASSERT_TRUE(f.run().step() == RunStep::Verdict || f.run().step() == RunStep::Closed);
      ASSERT_EQ(f.run().player(), nullptr);
    }
  }
  ASSERT_EQ(f.journal().size(), lines);
}

TEST(PracticeModel, noPairOfCallsLeadsOutOfARedFlagOrAHold) {
  const auto playing = [](RunFixture& f) {
    ASSERT_TRUE(f.passReadyCheck().ok());
    ASSERT_TRUE(f.startEntry().ok());
    ASSERT_TRUE(f.advance(absl::Seconds(12)).ok());
  };
  int ends = 0;
  for (int reason = 1; reason <= v1::StopReason_MAX; ++reason) {
    if (reason == v1::STOP_REASON_HOLD_ORDER) continue;  // no person's reason
    RunFixture probe;
    ASSERT_TRUE(probe.begin().ok());
    playing(probe);
    ASSERT_TRUE(probe.run().stopPressed(probe.wall(), probe.now()).ok());
    ASSERT_TRUE(probe.run().stopReason(static_cast<v1::StopReason>(reason), probe.wall(), probe.now()).ok());
    if (!probe.run().over()) continue;
    ++ends;
    ASSERT_NO_FATAL_FAILURE(expectNoWayOut([&](RunFixture& f) {
      playing(f);
      ASSERT_TRUE(f.run().stopPressed(f.wall(), f.now()).ok());
      ASSERT_TRUE(f.run().stopReason(static_cast<v1::StopReason>(reason), f.wall(), f.now()).ok());
    })) << reason;
  }
  EXPECT_GE(ends, 6);
  ASSERT_NO_FATAL_FAILURE(expectNoWayOut([&](RunFixture& f) {
    playing(f);
    ASSERT_TRUE(f.run().holdOrder(test::holdOrder(), f.wall(), f.now()).ok());
  }));
  ASSERT_NO_FATAL_FAILURE(expectNoWayOut([&](RunFixture& f) {
    playing(f);
    ASSERT_TRUE(f.playOut().ok());
    ASSERT_TRUE(f.run().rate(9, 5, f.wall(), f.now()).ok());
  }));
  ASSERT_NO_FATAL_FAILURE(expectNoWayOut(
      [&](RunFixture& f) { ASSERT_TRUE(f.run().answer("chest-pain", f.wall(), f.now()).ok()); }));
}

}  // namespace
}  // namespace newel
