#include "core/progress/attention.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/progress/pain_change.h"

namespace newel {
namespace {

const absl::Time kNow = absl::FromUnixSeconds(1795600000);
const absl::CivilDay kToday(2026, 11, 25);

// Nothing to say: heard an hour ago, all done, the programme runs for weeks.
AttentionFacts quiet(const std::string& id = "p1") {
  AttentionFacts facts;
  facts.person_id = id;
  facts.last_contact = kNow - absl::Hours(1);
  facts.paired = true;
  facts.programme_number = 2;
  facts.programme_end = kToday + 30;
  facts.share.due = 6;
  facts.share.done = 6;
  facts.share.counted = 6;
  return facts;
}

constexpr int kSilentDays = 7;  // the usual value of the clinic's setting

AttentionRow rowOf(const AttentionFacts& facts) {
  return attentionList({facts}, kNow, kToday, kSilentDays).front();
}

std::string firstOf(const AttentionFacts& facts) {
  const AttentionRow row = rowOf(facts);
  return std::string(row.urgency == Urgency::Now     ? "now"
                     : row.urgency == Urgency::Today ? "today"
                     : row.urgency == Urgency::Soon  ? "soon"
                                                     : "none") +
         " " + row.reasons.front().key;
}

TEST(Attention, aPersonWithNothingToSayStillHasARow) {
  EXPECT_EQ(firstOf(quiet()), "none attention.all-done");
  EXPECT_EQ(rowOf(quiet()).reasons.front().args.at("due"), "6");
  EXPECT_TRUE(attentionList({}, kNow, kToday, kSilentDays).empty());
}

// Hazard H25: done, not done, nothing due and no data are four keys.
TEST(Attention, noDataNotDoneNothingDueAndDoneAreNeverConfused) {
  AttentionFacts facts = quiet();
  facts.share.counted = 4;
  EXPECT_EQ(firstOf(facts), "none attention.some-done");
  facts.no_data = 2;
  EXPECT_EQ(firstOf(facts), "none attention.no-data");
  facts = quiet();
  facts.share = Share();
  EXPECT_EQ(firstOf(facts), "none attention.nothing-due");
}

TEST(Attention, aRedFlagIsNowAndALesserStopIsToday) {
  AttentionFacts facts = quiet();
  facts.flags.push_back({"stop-dizzy", false, kNow - absl::Hours(2)});
  EXPECT_EQ(firstOf(facts), "today attention.stopped");
  facts.flags.push_back({"stop-skin", true, kNow - absl::Hours(2)});
  EXPECT_EQ(firstOf(facts), "now attention.red-flag");
  EXPECT_EQ(rowOf(facts).reasons.front().args.at("rule"), "stop-skin");
  EXPECT_EQ(rowOf(facts).reasons.front().age, absl::Hours(2));
}

TEST(Attention, aHoldOrderThatHasNotArrivedIsNow) {
  AttentionFacts facts = quiet();
  facts.hold_waiting_since = kNow - absl::Minutes(1);
  EXPECT_EQ(firstOf(facts), "now attention.hold-not-arrived");
}

// Nothing is practised meanwhile, so nobody on hold is ever shown as all well.
TEST(Attention, aHoldOrderThatStandsIsSoon) {
  AttentionFacts facts = quiet();
  facts.on_hold_since = kNow - absl::Hours(5);
  EXPECT_EQ(firstOf(facts), "soon attention.on-hold");
  EXPECT_EQ(rowOf(facts).reasons.front().age, absl::Hours(5));
}

// Hazard H07: unseen after 24 h.
TEST(Attention, anUrgentMessageUnseenForADayIsNow) {
  AttentionFacts facts = quiet();
  facts.unseen_by_person.push_back({kNow - absl::Hours(24), true});
  EXPECT_EQ(firstOf(facts), "today attention.urgent-unseen");
  facts.unseen_by_person[0].written_at -= absl::Seconds(1);
  EXPECT_EQ(firstOf(facts), "now attention.urgent-unseen");
}

TEST(Attention, aPlainMessageUnseenForThreeDaysIsSoon) {
  AttentionFacts facts = quiet();
  facts.unseen_by_person.push_back({kNow - absl::Hours(72), false});
  EXPECT_EQ(firstOf(facts), "none attention.all-done");
  facts.unseen_by_person[0].written_at -= absl::Seconds(1);
  EXPECT_EQ(firstOf(facts), "soon attention.message-unseen");
}

TEST(Attention, aMessageFromThePersonIsTodayAndAnUrgentOneNow) {
  AttentionFacts facts = quiet();
  facts.unread_by_clinic.push_back({kNow - absl::Minutes(3), false});
  EXPECT_EQ(firstOf(facts), "today attention.message-unread");
  facts.unread_by_clinic[0].urgent = true;
  EXPECT_EQ(firstOf(facts), "now attention.message-unread");
}

TEST(Attention, aSilentPhoneRisesWithTheDays) {
  AttentionFacts facts = quiet();
  facts.last_contact = kNow - absl::Hours(24 * kStaleAfterDays);
  EXPECT_EQ(rowOf(facts).figures, Figures::Fresh);
  facts.last_contact = *facts.last_contact - absl::Seconds(1);
  EXPECT_EQ(firstOf(facts), "soon attention.stale");
  EXPECT_EQ(rowOf(facts).figures, Figures::Stale);
  facts.last_contact = kNow - absl::Hours(24 * 9);
  EXPECT_EQ(firstOf(facts), "today attention.silent");
  EXPECT_EQ(rowOf(facts).reasons.front().args.at("days"), "9");
  EXPECT_EQ(rowOf(facts).figures_age, absl::Hours(24 * 9));
}

TEST(Attention, neverHeardAndNotPairedAreSaidAndHaveNoAge) {
  AttentionFacts facts = quiet();
  facts.last_contact.reset();
  EXPECT_EQ(firstOf(facts), "soon attention.never-heard");
  EXPECT_EQ(rowOf(facts).figures, Figures::NeverHeard);
  EXPECT_FALSE(rowOf(facts).figures_age.has_value());
  facts.paired = false;
  EXPECT_EQ(firstOf(facts), "soon attention.not-paired");
}

TEST(Attention, aClockBehindTheHubGivesNoNegativeAge) {
  AttentionFacts facts = quiet();
  facts.last_contact = kNow + absl::Hours(5);
  EXPECT_EQ(rowOf(facts).figures_age, absl::ZeroDuration());
  EXPECT_EQ(rowOf(facts).figures, Figures::Fresh);
}

TEST(Attention, theProgrammesEndAndItsWayToThePhoneAreWatched) {
  AttentionFacts facts = quiet();
  facts.programme_end = kToday + kEndsWithinDays + 1;
  EXPECT_EQ(firstOf(facts), "none attention.all-done");
  facts.programme_end = kToday + kEndsWithinDays;
  EXPECT_EQ(firstOf(facts), "soon attention.programme-ending");
  facts.programme_end = kToday;
  EXPECT_EQ(rowOf(facts).reasons.front().args.at("days"), "0");
  facts.programme_end = kToday - 1;
  EXPECT_EQ(firstOf(facts), "today attention.programme-ended");
  facts = quiet();
  facts.programme_waiting_since = kNow - absl::Hours(kNotArrivedAfterHours);
  EXPECT_EQ(firstOf(facts), "none attention.all-done");
  facts.programme_waiting_since = kNow - absl::Hours(kNotArrivedAfterHours + 1);
  EXPECT_EQ(firstOf(facts), "today attention.programme-waiting");
  EXPECT_EQ(rowOf(facts).reasons.front().args.at("number"), "2");
  facts = quiet();
  facts.programme_number.reset();
  EXPECT_EQ(firstOf(facts), "soon attention.no-programme");
  facts = quiet();
  facts.programme_end.reset();
  EXPECT_EQ(firstOf(facts), "none attention.all-done");
}

// One a day, the last one today.
std::vector<PainRating> ratings(const std::vector<double>& values, absl::CivilDay last = kToday) {
  std::vector<PainRating> list;
  for (std::size_t i = 0; i < values.size(); ++i) {
    list.push_back({last - static_cast<absl::civil_diff_t>(values.size() - 1 - i), values[i]});
  }
  return list;
}

TEST(Attention, painThatRoseByTheMeasureIsTodayAndPainThatFellIsNot) {
  AttentionFacts facts = quiet();
  facts.pain_ratings = ratings({2, 2, 2, 4, 4, 4}, kToday - 2);
  EXPECT_EQ(firstOf(facts), "today attention.pain-rising");
  EXPECT_EQ(rowOf(facts).reasons.front().args.at("points"), "2.0");
  EXPECT_EQ(rowOf(facts).reasons.front().args.at("days"), "2") << "how old the figure is";
  facts.pain_ratings = ratings({4, 4, 4, 2, 2, 2});
  EXPECT_EQ(firstOf(facts), "none attention.all-done");
  facts.pain_ratings = ratings({2, 2, 4, 4, 4});
  EXPECT_EQ(firstOf(facts), "none attention.all-done") << "too few to call a trend";
  facts.pain_ratings = ratings({2, 2, 2, 3, 3, 3});
  EXPECT_EQ(firstOf(facts), "today attention.pain-rising") << "half as much again is over 30 %";
}

// Three bad days at the end of a fall that goes on everywhere else: the median of all slopes does not rise.
TEST(Attention, aRiseThatMostPairsOfRatingsDoNotShareIsNone) {
  AttentionFacts facts = quiet();
  facts.pain_ratings = ratings({9, 8, 7, 6, 5, 4, 3, 2, 1, 3, 3, 3});
  EXPECT_EQ(firstOf(facts), "none attention.all-done");
}

TEST(Attention, painThatRoseLongAgoOrByLittleIsNoNews) {
  AttentionFacts facts = quiet();
  facts.pain_ratings = ratings({2, 2, 2, 4, 4, 4}, kToday - kPainIsNewsDays);
  EXPECT_EQ(firstOf(facts), "today attention.pain-rising");
  facts.pain_ratings = ratings({2, 2, 2, 4, 4, 4}, kToday - kPainIsNewsDays - 1);
  EXPECT_EQ(firstOf(facts), "none attention.all-done");
  facts.pain_ratings = ratings({0, 0, 1, 0, 1, 1});
  EXPECT_EQ(firstOf(facts), "none attention.all-done") << "twice as much, and a third of a point";
}

TEST(Attention, littleDoneIsSoonAndOnlyWithEnoughDue) {
  AttentionFacts facts = quiet();
  facts.share.counted = 2;
  EXPECT_EQ(firstOf(facts), "soon attention.little-done");
  facts.share.counted = 3;
  EXPECT_EQ(firstOf(facts), "none attention.some-done") << "half is not little";
  facts.share.due = 3;
  facts.share.counted = 0;
  EXPECT_EQ(firstOf(facts), "none attention.some-done");
}

TEST(Attention, nothingDoneForAWeekIsTodayAndSaysSinceWhen) {
  AttentionFacts facts = quiet();
  facts.share.counted = 1;
  facts.missed_since_done = kFewestDue;
  facts.last_done = kToday - kNothingDoneDays + 1;
  EXPECT_EQ(firstOf(facts), "soon attention.little-done");
  facts.last_done = kToday - kNothingDoneDays;
  EXPECT_EQ(firstOf(facts), "today attention.nothing-done");
  EXPECT_EQ(rowOf(facts).reasons.front().args.at("days"), "7");
  EXPECT_EQ(rowOf(facts).reasons.size(), 1U) << "said once, not as little done too";
  facts.last_done.reset();
  EXPECT_EQ(firstOf(facts), "soon attention.never-done");
  // What nobody has heard of is not missed.
  facts.missed_since_done = 0;
  facts.share = Share();
  facts.no_data = 9;
  EXPECT_EQ(firstOf(facts), "none attention.no-data");
}

TEST(Attention, aFallAndSkinAreTodayUnlessAStopOfTheSamePracticeSaysSo) {
  AttentionFacts facts = quiet();
  facts.skin = ToldSign{kNow - absl::Hours(3), "red-stays"};
  EXPECT_EQ(firstOf(facts), "today attention.skin");
  facts.fall = ToldSign{kNow - absl::Hours(2), "not-hurt"};
  EXPECT_EQ(firstOf(facts), "today attention.fall");
  EXPECT_EQ(rowOf(facts).reasons.front().age, absl::Hours(2));
  facts.flags.push_back({"stop-fall", true, kNow - absl::Hours(2)});
  const AttentionRow row = rowOf(facts);
  ASSERT_EQ(row.reasons.size(), 2U);
  EXPECT_EQ(row.reasons[0].key, "attention.red-flag");
  EXPECT_EQ(row.reasons[1].key, "attention.skin");
}

TEST(Attention, readyTooHardAndMeasuresDueAreSoon) {
  AttentionFacts facts = quiet();
  facts.measure_due = MeasureDue{"two-minute-walk", kToday + 1};
  EXPECT_EQ(firstOf(facts), "none attention.all-done");
  facts.measure_due->due = kToday;
  EXPECT_EQ(firstOf(facts), "soon attention.measure-due");
  facts.ready = {"bridge", "sit-to-stand"};
  EXPECT_EQ(firstOf(facts), "soon attention.ready");
  EXPECT_EQ(rowOf(facts).reasons.front().args.at("count"), "2");
  facts.too_hard = {"step-up"};
  EXPECT_EQ(firstOf(facts), "soon attention.too-hard");
}

Snooze snoozeOf(const AttentionRow& row, absl::Time at = kNow - absl::Hours(1)) {
  Snooze snooze{at, kToday + 3, row.urgency, {}};
  for (const auto& reason : row.reasons) snooze.keys.insert(reason.key);
  return snooze;
}

TEST(AttentionSnooze, aRowWaitsUntilItsDayAndStandsBehindAllOthers) {
  AttentionFacts facts = quiet("p1");
  facts.share.counted = 1;
  EXPECT_TRUE(maySnooze(rowOf(facts)));
  facts.snooze = snoozeOf(rowOf(facts));
  EXPECT_TRUE(rowOf(facts).snoozed);
  const auto rows = attentionList({facts, quiet("p2")}, kNow, kToday, kSilentDays);
  EXPECT_EQ(rows.back().person_id, "p1");
  EXPECT_EQ(rows.back().urgency, Urgency::Soon) << "what it says is still said";
  facts.snooze->until = kToday - 1;
  EXPECT_FALSE(rowOf(facts).snoozed);
}

TEST(AttentionSnooze, endsAtOnceByWhatIsMoreUrgentOtherOrNewer) {
  AttentionFacts facts = quiet();
  facts.unread_by_clinic.push_back({kNow - absl::Hours(5), false});
  facts.snooze = snoozeOf(rowOf(facts));
  ASSERT_TRUE(rowOf(facts).snoozed);
  AttentionFacts more = facts;
  more.hold_waiting_since = kNow;
  EXPECT_FALSE(rowOf(more).snoozed) << "more urgent";
  more = facts;
  more.skin = ToldSign{kNow - absl::Minutes(1), "open"};
  EXPECT_FALSE(rowOf(more).snoozed) << "of another kind";
  more = facts;
  more.unread_by_clinic[0].last_at = kNow - absl::Minutes(1);
  more.unread_by_clinic[0].count = 2;
  EXPECT_FALSE(rowOf(more).snoozed) << "one more message";
  more.unread_by_clinic[0].last_at = kNow - absl::Hours(2);
  EXPECT_TRUE(rowOf(more).snoozed) << "that one was there already";
}

// A red flag and a fall go when the clinic has spoken to the person, and by nothing else.
TEST(AttentionSnooze, noRedFlagNoFallAndNothingThatIsNowMayWait) {
  AttentionFacts facts = quiet();
  EXPECT_FALSE(maySnooze(rowOf(facts))) << "there is nothing to wait for";
  facts.fall = ToldSign{kNow - absl::Hours(2), "not-hurt"};
  EXPECT_FALSE(maySnooze(rowOf(facts)));
  facts.snooze = snoozeOf(rowOf(facts));
  EXPECT_FALSE(rowOf(facts).snoozed) << "not even when something says so";
  facts = quiet();
  facts.flags.push_back({"stop-dizzy", true, kNow - absl::Hours(2)});
  EXPECT_FALSE(maySnooze(rowOf(facts)));
  facts = quiet();
  facts.hold_waiting_since = kNow;
  EXPECT_FALSE(maySnooze(rowOf(facts)));
}

TEST(Attention, theMostUrgentComesFirstThenTheLongestStandingThenTheId) {
  AttentionFacts flag_old = quiet("p1");
  flag_old.flags.push_back({"stop-skin", true, kNow - absl::Hours(30)});
  AttentionFacts flag_new = quiet("p2");
  flag_new.flags.push_back({"stop-fall", true, kNow - absl::Hours(1)});
  AttentionFacts hold = quiet("p3");
  hold.hold_waiting_since = kNow - absl::Hours(90);
  AttentionFacts message = quiet("p4");
  message.unread_by_clinic.push_back({kNow, false});
  AttentionFacts ending = quiet("p5");
  ending.programme_end = kToday + 2;
  const auto rows = attentionList({quiet("p7"), ending, message, quiet("p6"), hold, flag_new, flag_old}, kNow,
                                  kToday, kSilentDays);
  std::string order;
  for (const auto& row : rows) order += row.person_id + " ";
  EXPECT_EQ(order, "p1 p2 p3 p4 p5 p6 p7 ");
}

TEST(Attention, everyReasonIsKeptAndTheFirstGivesTheUrgency) {
  AttentionFacts facts = quiet();
  facts.flags.push_back({"stop-skin", true, kNow});
  facts.last_contact = kNow - absl::Hours(24 * 20);
  facts.programme_end = kToday - 4;
  facts.share.counted = 0;
  const AttentionRow row = rowOf(facts);
  ASSERT_EQ(row.reasons.size(), 4U);
  EXPECT_EQ(row.urgency, Urgency::Now);
  EXPECT_TRUE(std::is_sorted(row.reasons.begin(), row.reasons.end(),
                             [](const auto& a, const auto& b) { return a.urgency < b.urgency; }));
}

// Section 3 of the reference values: 6 to 4 is both, 9 to 7 only points, 3 to 2 only percent (Farrar 2001).
TEST(PainChange, agreesWithTheWorkedVectors) {
  const PainChange both = painChange(6, 4);
  EXPECT_DOUBLE_EQ(both.points, -2);
  EXPECT_NEAR(*both.percent, -33.3, 0.05);
  EXPECT_TRUE(both.by_points && both.by_percent);
  const PainChange points = painChange(9, 7);
  EXPECT_NEAR(*points.percent, -22.2, 0.05);
  EXPECT_TRUE(points.by_points);
  EXPECT_FALSE(points.by_percent);
  const PainChange percent = painChange(3, 2);
  EXPECT_FALSE(percent.by_points);
  EXPECT_TRUE(percent.by_percent);
}

TEST(PainChange, fromZeroHasNoPercent) {
  EXPECT_FALSE(painChange(0, 3).percent.has_value());
  EXPECT_TRUE(painChange(0, 3).by_points);
  EXPECT_FALSE(painChange(0, 1).by_points);
  EXPECT_FALSE(painChange(0, 1).by_percent);
}

TEST(PainChange, exactlyAtTheMeasureCounts) {
  EXPECT_TRUE(painChange(1, 1.3).by_percent);
  EXPECT_TRUE(painChange(10, 13).by_percent);
  EXPECT_FALSE(painChange(10, 11.9).by_points);
}

TEST(PainTrend, looksAtTheLastThreeAgainstTheThreeBefore) {
  EXPECT_FALSE(painTrend({}).has_value());
  EXPECT_FALSE(painTrend({1, 2, 3, 4, 5}).has_value());
  const auto trend = painTrend({9, 9, 1, 2, 3, 4, 5, 6});
  ASSERT_TRUE(trend.has_value());
  EXPECT_DOUBLE_EQ(trend->points, 3);
}

}  // namespace
}  // namespace newel
