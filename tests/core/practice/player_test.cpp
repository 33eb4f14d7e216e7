#include "core/practice/player.h"

#include <gtest/gtest.h>

#include <map>

#include "core/practice/compile.h"
#include "tests/core/people/sample_people.h"

namespace newel {
namespace {

using absl::Milliseconds;
using absl::Minutes;
using absl::Seconds;

v1::Timeline timelineOf(const std::string& exercise, v1::Pacing pacing = v1::PACING_TIMED) {
  const v1::Person person = test::transfemoralLeft();
  v1::Entry entry = test::entryOf(exercise, person);
  entry.set_pacing(pacing);
  return *compileTimeline(entry, person, Catalogue::builtIn(), "en");
}

// Ticks ten times a second, as a screen does.
std::vector<PlayerEvent> runTo(Player& player, absl::Duration from, absl::Duration to) {
  std::vector<PlayerEvent> events;
  for (absl::Duration now = from; now <= to; now += Milliseconds(100)) {
    for (const PlayerEvent& event : player.tick(now)) events.push_back(event);
  }
  return events;
}

std::vector<v1::JournalKind> kindsOf(const std::vector<PlayerEvent>& events) {
  std::vector<v1::JournalKind> kinds;
  for (const PlayerEvent& event : events) kinds.push_back(event.kind);
  return kinds;
}

// opposite-arm-and-leg: ready 15, then move 3, hold 3, return 2, rest 2 ...
class ReachPlayer : public ::testing::Test {
 protected:
  Player m_player{timelineOf("opposite-arm-and-leg")};
};

TEST_F(ReachPlayer, leadsThroughAllBeatsOnTime) {
  m_player.start(Seconds(100));
  const absl::Duration total = Milliseconds(m_player.timeline().total_ms());
  const std::vector<PlayerEvent> events = runTo(m_player, Seconds(100), Seconds(100) + total + Seconds(1));
  EXPECT_EQ(m_player.state(), PlayerState::Ended);
  EXPECT_EQ(events.back().kind, v1::JOURNAL_KIND_ENTRY_ENDED);
  EXPECT_EQ(events.back().at, Seconds(100) + total);
  for (const PlayerEvent& event : events) {
    const v1::Beat& beat = m_player.timeline().beats(static_cast<int>(event.beat));
    if (event.kind == v1::JOURNAL_KIND_BEAT_BEGUN) {
      EXPECT_EQ(event.at, Seconds(100) + Milliseconds(beat.start_ms()));
    }
  }
  EXPECT_EQ(countDose(m_player.timeline(), m_player.done()).SerializeAsString(),
            m_player.timeline().asked().SerializeAsString());
}

TEST_F(ReachPlayer, unevenTicksDoNotDrift) {
  m_player.start(absl::ZeroDuration());
  absl::Duration now;
  std::uint64_t jitter = 1;
  absl::Duration end;
  while (m_player.state() == PlayerState::Running) {
    jitter = jitter * 6364136223846793005ULL + 1442695040888963407ULL;
    now += Milliseconds(1 + static_cast<std::int64_t>((jitter >> 33) % 1500));
    for (const PlayerEvent& event : m_player.tick(now)) end = event.at;
  }
  EXPECT_EQ(end, Milliseconds(m_player.timeline().total_ms()));
}

TEST_F(ReachPlayer, pauseInAHoldVoidsItAndResumeRepeatsItAfterTimeToTakeUpThePosition) {
  m_player.start(absl::ZeroDuration());
  runTo(m_player, absl::ZeroDuration(), Seconds(20));  // two seconds into the hold at 18
  ASSERT_EQ(m_player.beat(), 2U);
  EXPECT_EQ(kindsOf(m_player.pause(Seconds(20))),
            (std::vector<v1::JournalKind>{v1::JOURNAL_KIND_BEAT_VOIDED, v1::JOURNAL_KIND_PAUSED}));
  EXPECT_EQ(m_player.voidedHolds(), 1U);
  EXPECT_EQ(m_player.leftInBeat(Seconds(300)), Seconds(3));
  EXPECT_EQ(m_player.nextDeadline(), std::nullopt);

  EXPECT_EQ(kindsOf(m_player.resume(Seconds(300))), std::vector<v1::JournalKind>{v1::JOURNAL_KIND_RESUMED});
  // Get-ready lasts 15 s, the lead-in at most 10.
  EXPECT_EQ(m_player.leadInLeft(Seconds(300)), Seconds(10));
  EXPECT_EQ(m_player.leftInBeat(Seconds(305)), Seconds(3));
  const std::vector<PlayerEvent> events = runTo(m_player, Seconds(300), Seconds(313));
  ASSERT_GE(events.size(), 2U);
  EXPECT_EQ(events[0].kind, v1::JOURNAL_KIND_BEAT_BEGUN);
  EXPECT_EQ(events[0].at, Seconds(310));
  EXPECT_EQ(events[1].kind, v1::JOURNAL_KIND_BEAT_ENDED);
  EXPECT_EQ(events[1].beat, 2U);
  // A hold that counts was held for all of its length.
  EXPECT_EQ(events[1].at - events[0].at, Seconds(3));
}

// Ready 15, then move 3, hold 3, return 2, rest 2: at half as long again a round takes 2.5 s more.
TEST_F(ReachPlayer, slowerStretchesMovementsAndNothingElse) {
  m_player.start(absl::ZeroDuration());
  for (int i = 0; i < 5; ++i) m_player.slower(Seconds(1));
  EXPECT_EQ(m_player.pacePercent(), kSlowestPacePercent);
  EXPECT_EQ(m_player.leftInBeat(Seconds(1)), Seconds(14)) << "time to get ready is not stretched";
  const auto events = runTo(m_player, Seconds(1), Minutes(30));
  EXPECT_EQ(m_player.state(), PlayerState::Ended);
  std::map<std::uint32_t, absl::Duration> begun;
  for (const PlayerEvent& event : events) {
    const v1::Beat& beat = m_player.timeline().beats(static_cast<int>(event.beat));
    if (event.kind == v1::JOURNAL_KIND_BEAT_BEGUN) begun[event.beat] = event.at;
    if (event.kind != v1::JOURNAL_KIND_BEAT_ENDED || !begun.contains(event.beat)) continue;
    const bool moves = beat.kind() == v1::BEAT_KIND_MOVE || beat.kind() == v1::BEAT_KIND_RETURN;
    EXPECT_EQ(event.at - begun[event.beat], Milliseconds(beat.length_ms()) * (moves ? 1.5 : 1.0));
  }
  EXPECT_EQ(countDose(m_player.timeline(), m_player.done()).SerializeAsString(),
            m_player.timeline().asked().SerializeAsString())
      << "slower changes no dose";
}

TEST_F(ReachPlayer, slowerInTheMiddleOfAMovementKeepsWhatIsLeftAndItsLengthTogether) {
  m_player.start(absl::ZeroDuration());
  runTo(m_player, absl::ZeroDuration(), Seconds(16));  // one second into the first movement of three
  ASSERT_EQ(m_player.intoBeat(Seconds(16)), Seconds(1));
  m_player.slower(Seconds(16));
  EXPECT_EQ(m_player.intoBeat(Seconds(16)), Seconds(1));
  EXPECT_EQ(m_player.leftInBeat(Seconds(16)), Milliseconds(2750));
  EXPECT_EQ(m_player.nextDeadline(), Milliseconds(18750));
  m_player.pause(Seconds(17));
  EXPECT_EQ(m_player.leftInBeat(Seconds(17)), m_player.beatLength());
  m_player.slower(Seconds(17));
  EXPECT_EQ(m_player.leftInBeat(Seconds(17)), Milliseconds(4500));
}

TEST_F(ReachPlayer, pauseInARestKeepsWhatWasLeft) {
  m_player.start(absl::ZeroDuration());
  runTo(m_player, absl::ZeroDuration(), Seconds(24));  // one second into the rest of 2 s at 23
  ASSERT_EQ(m_player.timeline().beats(4).kind(), v1::BEAT_KIND_REST);
  ASSERT_EQ(m_player.beat(), 4U);
  EXPECT_EQ(kindsOf(m_player.pause(Seconds(24))), std::vector<v1::JournalKind>{v1::JOURNAL_KIND_PAUSED});
  EXPECT_EQ(m_player.leftInBeat(Seconds(999)), Seconds(1));
  m_player.resume(Seconds(1000));
  EXPECT_EQ(m_player.nextDeadline(), Seconds(1001));
  EXPECT_EQ(m_player.voidedHolds(), 0U);
}

// Two to many ends of beats between ticks, never two seconds apart.
TEST_F(ReachPlayer, aHundredPausesAndResumesAtOddInstantsDoNotDrift) {
  Player player(timelineOf("face-down-lying"));  // get-ready of 30 s first
  absl::Duration now = Milliseconds(900);
  player.start(now);
  absl::Duration active;
  for (int i = 0; i < 100; ++i) {
    now += Milliseconds(237);
    active += Milliseconds(237);
    player.tick(now);
    player.pause(now);
    now += Milliseconds(12345);
    player.resume(now);
  }
  EXPECT_EQ(player.state(), PlayerState::Running);
  EXPECT_EQ(player.intoBeat(now), active);
  EXPECT_EQ(*player.nextDeadline() - now, Seconds(30) - active);
}

// A phone that slept for five minutes in a hold: interrupted, and asks to repeat.
TEST_F(ReachPlayer, aHoldThatSleptIsVoidAndWaitsForThePerson) {
  m_player.start(absl::ZeroDuration());
  runTo(m_player, absl::ZeroDuration(), Seconds(19));
  const std::vector<PlayerEvent> events = m_player.tick(Seconds(19) + Minutes(5));
  EXPECT_EQ(kindsOf(events),
            (std::vector<v1::JournalKind>{v1::JOURNAL_KIND_BEAT_VOIDED, v1::JOURNAL_KIND_PAUSED}));
  EXPECT_EQ(m_player.state(), PlayerState::Paused);
  EXPECT_EQ(m_player.beat(), 2U);
  EXPECT_FALSE(m_player.done()[2]);
  EXPECT_EQ(m_player.voidedHolds(), 1U);
  EXPECT_TRUE(m_player.tick(Minutes(20)).empty());
}

TEST_F(ReachPlayer, aRestThatSleptIsOverAndNothingBeginsByItself) {
  m_player.start(absl::ZeroDuration());
  runTo(m_player, absl::ZeroDuration(), Milliseconds(23500));
  ASSERT_EQ(m_player.beat(), 4U);
  const std::vector<PlayerEvent> events = m_player.tick(Minutes(6));
  EXPECT_EQ(kindsOf(events),
            (std::vector<v1::JournalKind>{v1::JOURNAL_KIND_BEAT_ENDED, v1::JOURNAL_KIND_PAUSED}));
  EXPECT_EQ(events[0].at, Seconds(25));
  EXPECT_EQ(m_player.state(), PlayerState::Paused);
  EXPECT_EQ(m_player.beat(), 5U);
  EXPECT_TRUE(m_player.tick(Minutes(60)).empty());
}

TEST_F(ReachPlayer, aRestThatSleptButIsNotOverWaitsToo) {
  m_player.start(absl::ZeroDuration());
  runTo(m_player, absl::ZeroDuration(), Seconds(5));
  EXPECT_EQ(kindsOf(m_player.tick(Seconds(9))), std::vector<v1::JournalKind>{v1::JOURNAL_KIND_PAUSED});
  EXPECT_EQ(m_player.leftInBeat(Seconds(50)), Seconds(6));
}

TEST_F(ReachPlayer, anyCallAfterASleepCatchesUpFirst) {
  for (const int call : {0, 1, 2, 3}) {
    Player player(timelineOf("opposite-arm-and-leg"));
    player.start(absl::ZeroDuration());
    runTo(player, absl::ZeroDuration(), Seconds(19));
    const absl::Duration later = Minutes(10);
    if (call == 0) player.pause(later);
    if (call == 1) player.repeatBeat(later);
    if (call == 2) player.skipBeat(later);
    if (call == 3) player.lengthenRest(later, Seconds(10));
    EXPECT_EQ(player.state(), PlayerState::Paused) << call;
    EXPECT_EQ(player.voidedHolds(), 1U) << call;
  }
}

TEST_F(ReachPlayer, stopActsAtOnceAndNothingFollows) {
  m_player.start(absl::ZeroDuration());
  runTo(m_player, absl::ZeroDuration(), Seconds(19));
  const std::vector<PlayerEvent> events = m_player.stop(Seconds(19), v1::STOP_REASON_PAIN);
  EXPECT_EQ(kindsOf(events), std::vector<v1::JournalKind>{v1::JOURNAL_KIND_STOPPED});
  EXPECT_EQ(events[0].reason, v1::STOP_REASON_PAIN);
  EXPECT_TRUE(m_player.tick(Seconds(30)).empty());
  EXPECT_TRUE(m_player.resume(Seconds(31)).empty());
  EXPECT_TRUE(m_player.start(Seconds(32)).empty());
  EXPECT_TRUE(m_player.skipBeat(Seconds(33)).empty());
  EXPECT_TRUE(m_player.repeatBeat(Seconds(34)).empty());
  EXPECT_TRUE(m_player.hold(Seconds(35)).empty());
  EXPECT_EQ(m_player.state(), PlayerState::Stopped);
}

TEST_F(ReachPlayer, whatEndedBeforeTheStopStillCounts) {
  m_player.start(absl::ZeroDuration());
  runTo(m_player, absl::ZeroDuration(), Milliseconds(20900));
  const std::vector<PlayerEvent> events = m_player.stop(Milliseconds(21300), v1::STOP_REASON_TIRED);
  EXPECT_EQ(kindsOf(events),
            (std::vector<v1::JournalKind>{v1::JOURNAL_KIND_BEAT_ENDED, v1::JOURNAL_KIND_BEAT_BEGUN,
                                          v1::JOURNAL_KIND_STOPPED}));
  EXPECT_TRUE(m_player.done()[2]);
}

TEST_F(ReachPlayer, repeatingAHoldStartsItAnew) {
  m_player.start(absl::ZeroDuration());
  runTo(m_player, absl::ZeroDuration(), Seconds(20));
  EXPECT_EQ(kindsOf(m_player.repeatBeat(Seconds(20))),
            (std::vector<v1::JournalKind>{v1::JOURNAL_KIND_BEAT_VOIDED, v1::JOURNAL_KIND_BEAT_BEGUN}));
  EXPECT_EQ(m_player.nextDeadline(), Seconds(23));
}

TEST_F(ReachPlayer, onlyRestsCanBeSkippedOrLengthened) {
  m_player.start(absl::ZeroDuration());
  EXPECT_EQ(kindsOf(m_player.skipBeat(Seconds(1))),
            (std::vector<v1::JournalKind>{v1::JOURNAL_KIND_BEAT_ENDED, v1::JOURNAL_KIND_BEAT_BEGUN}));
  EXPECT_TRUE(m_player.skipBeat(Seconds(2)).empty());  // a move
  EXPECT_TRUE(m_player.lengthenRest(Seconds(2), Seconds(30)).empty());
  EXPECT_EQ(m_player.nextDeadline(), Seconds(4));
  runTo(m_player, Seconds(2), Seconds(10));  // move to 4, hold to 7, return to 9, rest to 11
  ASSERT_EQ(m_player.beat(), 4U);
  m_player.lengthenRest(Seconds(10), Seconds(30));
  EXPECT_EQ(m_player.nextDeadline(), Seconds(41));
  EXPECT_EQ(m_player.intoBeat(Seconds(10)), absl::ZeroDuration());
}

TEST_F(ReachPlayer, timeThatGoesBackCountsAsStandingStill) {
  m_player.start(Seconds(10));
  m_player.tick(Seconds(11));
  EXPECT_TRUE(m_player.tick(Seconds(5)).empty());
  EXPECT_EQ(m_player.nextDeadline(), Seconds(25));
}

TEST(Player, aMoveByThePersonWaitsForTheTap) {
  Player player(timelineOf("sit-to-stand", v1::PACING_BY_PERSON));
  player.start(absl::ZeroDuration());
  runTo(player, absl::ZeroDuration(), Seconds(14));
  EXPECT_EQ(player.state(), PlayerState::WaitingTap);
  EXPECT_TRUE(player.tick(Minutes(3)).empty());
  const std::vector<PlayerEvent> events = player.tapDone(Minutes(3));
  EXPECT_EQ(kindsOf(events),
            (std::vector<v1::JournalKind>{v1::JOURNAL_KIND_BEAT_ENDED, v1::JOURNAL_KIND_BEAT_BEGUN}));
  // The hold after it is timed again.
  EXPECT_EQ(player.nextDeadline(), Minutes(3) + Seconds(2));
  EXPECT_TRUE(player.tapDone(Minutes(3) + Seconds(1)).empty());
}

TEST(Player, aTapBeforeTheTimeIsOverGoesOnToo) {
  Player player(timelineOf("sit-to-stand", v1::PACING_BY_PERSON));
  player.start(absl::ZeroDuration());
  runTo(player, absl::ZeroDuration(), Seconds(11));
  EXPECT_EQ(player.tapDone(Seconds(11)).size(), 2U);
  EXPECT_EQ(player.beat(), 2U);
}

TEST(Player, aTapMeansNothingWhereTheProgramKeepsTime) {
  Player player(timelineOf("sit-to-stand"));
  player.start(absl::ZeroDuration());
  runTo(player, absl::ZeroDuration(), Seconds(11));
  EXPECT_TRUE(player.tapDone(Seconds(11)).empty());
}

TEST(Player, takenUpWaitsBeforeTheBeatThatWasCut) {
  auto timeline = std::make_shared<const v1::Timeline>(timelineOf("opposite-arm-and-leg"));
  std::vector<bool> done(static_cast<std::size_t>(timeline->beats_size()), false);
  done[0] = done[1] = true;
  Player player = Player::takenUp(timeline, 2, done, 1, Seconds(5));
  EXPECT_EQ(player.state(), PlayerState::Paused);
  EXPECT_TRUE(player.tick(Minutes(5)).empty());
  EXPECT_EQ(player.leftInBeat(Minutes(5)), Seconds(3));
  EXPECT_EQ(player.voidedHolds(), 1U);
  player.resume(Minutes(6));
  EXPECT_EQ(player.nextDeadline(), Minutes(6) + Seconds(10));
}

TEST(Player, leftInPhaseIsWhatIsLeftOfABout) {
  Player player(timelineOf("face-down-lying"));
  player.start(absl::ZeroDuration());
  runTo(player, absl::ZeroDuration(), Seconds(45));  // 15 s into ten minutes
  EXPECT_EQ(player.leftInBeat(Seconds(45)), Seconds(45));
  EXPECT_EQ(player.leftInPhase(Seconds(45)), Minutes(10) - Seconds(15));
}

TEST(Player, aBoutThatSleptLosesAMinuteAtMost) {
  Player player(timelineOf("face-down-lying"));
  player.start(absl::ZeroDuration());
  runTo(player, absl::ZeroDuration(), Seconds(200));
  player.tick(Minutes(30));
  EXPECT_EQ(player.state(), PlayerState::Paused);
  EXPECT_EQ(countDose(player.timeline(), player.done()).hold_ms(), 120000);
}

}  // namespace
}  // namespace newel
