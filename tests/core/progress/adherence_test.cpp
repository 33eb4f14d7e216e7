#include "core/progress/adherence.h"

#include <gtest/gtest.h>

#include <random>

#include "core/progress/course.h"
#include "core/schedule/occasions.h"
#include "core/time/local_day.h"
#include "tests/core/schedule/programme_fixture.h"

namespace newel {
namespace {

using State = OccasionResult::State;
using test::addEntry;
using test::emptyProgramme;

const absl::CivilDay kMonday(2026, 11, 2);
constexpr int kAsked = 16;

v1::Practice practiceOf(absl::CivilDay day, int done = kAsked, int entry = 1, std::uint32_t window = 0) {
  v1::Practice practice;
  practice.set_id("practice-" + formatLocalDay(day));
  practice.set_local_day(formatLocalDay(day));
  practice.set_origin(v1::ORIGIN_TIMED_HERE);
  v1::EntryDone* one = practice.add_entries();
  one->mutable_occasion()->set_entry_id(test::idNumbered(100 + entry));
  one->mutable_occasion()->set_local_day(formatLocalDay(day));
  one->mutable_occasion()->set_window(window);
  one->mutable_asked()->set_repetitions(kAsked);
  one->mutable_done()->set_repetitions(static_cast<std::uint32_t>(done));
  return practice;
}

// Everything is over and heard of.
Adherence all(const std::vector<v1::Programme>& programmes, const std::vector<v1::Practice>& practices,
              absl::CivilDay first = kMonday, absl::CivilDay last = kMonday + 27) {
  const auto adherence = adherenceOf(programmes, practices, first, last, last + 30, last + 30, {});
  EXPECT_TRUE(adherence.ok()) << adherence.status();
  return *adherence;
}

// Three a week for four weeks: 12 due.
v1::Programme twelve() {
  v1::Programme programme = emptyProgramme("2026-11-02", "2026-11-29");
  addEntry(programme, test::weekdays({v1::WEEKDAY_MONDAY, v1::WEEKDAY_WEDNESDAY, v1::WEEKDAY_FRIDAY}));
  return programme;
}

std::vector<absl::CivilDay> twelveDays() {
  std::vector<absl::CivilDay> days;
  for (int week = 0; week < 4; ++week) {
    for (const int day : {0, 2, 4}) days.push_back(kMonday + 7 * week + day);
  }
  return days;
}

// Section 13 of the reference values: 9 of 12 = 75 %.
TEST(Adherence, nineOfTwelveAreThreeQuarters) {
  std::vector<v1::Practice> practices;
  const auto days = twelveDays();
  for (std::size_t i = 0; i < 9; ++i) practices.push_back(practiceOf(days[i]));
  const Adherence adherence = all({twelve()}, practices);
  EXPECT_EQ(adherence.all.due, 12);
  EXPECT_EQ(adherence.all.done, 9);
  EXPECT_DOUBLE_EQ(*adherence.all.capped(), 0.75);
  EXPECT_DOUBLE_EQ(*adherence.all.raw(), 0.75);
}

// 14 of 12 = 116.7 % raw, 100 % capped.
TEST(Adherence, fourteenOfTwelvePassOneRawAndNotCapped) {
  std::vector<v1::Practice> practices;
  for (const auto day : twelveDays()) practices.push_back(practiceOf(day));
  practices.push_back(practiceOf(kMonday + 1));
  practices.push_back(practiceOf(kMonday + 8));
  const Adherence adherence = all({twelve()}, practices);
  EXPECT_EQ(adherence.all.done, 14);
  EXPECT_NEAR(*adherence.all.raw() * 100, 116.7, 0.05);
  EXPECT_DOUBLE_EQ(*adherence.all.capped(), 1);
}

// Extra sessions in week 1 must not repair week 2.
TEST(Adherence, extraInOneWeekRepairsNoOther) {
  std::vector<v1::Practice> practices;
  for (int day = 0; day < 6; ++day) practices.push_back(practiceOf(kMonday + day));
  const Adherence adherence = all({twelve()}, practices, kMonday, kMonday + 13);
  EXPECT_EQ(adherence.all.due, 6);
  EXPECT_EQ(adherence.all.done, 6);
  EXPECT_DOUBLE_EQ(*adherence.all.raw(), 1);
  EXPECT_DOUBLE_EQ(*adherence.all.capped(), 0.5);
  EXPECT_DOUBLE_EQ(*adherence.by_week.at("2026-11-02").raw(), 2);
  EXPECT_DOUBLE_EQ(*adherence.by_week.at("2026-11-02").capped(), 1);
  EXPECT_DOUBLE_EQ(*adherence.by_week.at("2026-11-09").capped(), 0);
}

TEST(Adherence, extraOfOneEntryRepairsNoOther) {
  v1::Programme programme = twelve();
  addEntry(programme, test::weekdays({v1::WEEKDAY_MONDAY}));
  const Adherence adherence =
      all({programme}, {practiceOf(kMonday, kAsked, 2), practiceOf(kMonday + 1, kAsked, 2)}, kMonday,
          kMonday + 6);
  EXPECT_EQ(adherence.all.due, 4);
  EXPECT_EQ(adherence.all.done, 2);
  EXPECT_EQ(adherence.all.counted, 1);
  EXPECT_EQ(adherence.by_entry.at(programme.entries(0).id()).done, 0);
  EXPECT_DOUBLE_EQ(*adherence.by_entry.at(programme.entries(1).id()).raw(), 2);
}

TEST(Adherence, nothingDueIsNotZeroPercent) {
  const Adherence adherence = all({twelve()}, {}, kMonday + 5, kMonday + 6);
  EXPECT_EQ(adherence.all.due, 0);
  EXPECT_FALSE(adherence.all.capped().has_value());
  EXPECT_FALSE(adherence.all.raw().has_value());
  EXPECT_FALSE(adherence.all.doseShare().has_value());
  EXPECT_TRUE(all({}, {}).occasions.empty());
}

TEST(Adherence, excusedDaysAreOutOfBoth) {
  v1::Programme programme = twelve();
  v1::Pause* pause = programme.mutable_entries(0)->mutable_schedule()->add_pauses();
  pause->set_first_day("2026-11-02");
  pause->set_last_day("2026-11-03");
  const Adherence adherence =
      all({programme}, {practiceOf(kMonday), practiceOf(kMonday + 2)}, kMonday, kMonday + 6);
  EXPECT_EQ(adherence.all.due, 2);
  EXPECT_EQ(adherence.all.done, 1);
  EXPECT_EQ(adherence.occasions[0].state, State::Excused);
  EXPECT_EQ(adherence.occasions[0].practice_id, "practice-2026-11-02");
  EXPECT_EQ(adherence.occasions[1].state, State::Done);
  EXPECT_EQ(adherence.occasions[2].state, State::NotDone);
}

TEST(Adherence, doseIsCountedApartFromOccasions) {
  const Adherence adherence =
      all({twelve()}, {practiceOf(kMonday, 8), practiceOf(kMonday + 2, 40)}, kMonday, kMonday + 6);
  EXPECT_DOUBLE_EQ(*adherence.all.capped(), 2.0 / 3);
  EXPECT_DOUBLE_EQ(*adherence.all.doseShare(), 1.5 / 3) << "half of one, no more than all of another";
  EXPECT_EQ(adherence.occasions[0].state, State::Part);
  EXPECT_DOUBLE_EQ(adherence.occasions[0].dose, 0.5);
  EXPECT_EQ(adherence.occasions[1].state, State::Done);
}

TEST(Adherence, twoHalvesOfOneOccasionAreOne) {
  v1::Practice first = practiceOf(kMonday, 8);
  v1::Practice second = practiceOf(kMonday, 8);
  second.set_id("practice-later");
  second.set_origin(v1::ORIGIN_TOLD_LATER);
  const Adherence adherence = all({twelve()}, {first, second}, kMonday, kMonday);
  EXPECT_EQ(adherence.all.done, 1);
  EXPECT_EQ(adherence.occasions[0].state, State::Done);
  EXPECT_EQ(adherence.occasions[0].practice_id, "practice-later");
  EXPECT_FALSE(adherence.occasions[0].told_later) << "half of it was timed";
}

TEST(Adherence, timeUnderHoldCountsWhereNoRepetitionWasWhole) {
  v1::Practice practice = practiceOf(kMonday, 0);
  v1::EntryDone* entry = practice.mutable_entries(0);
  entry->mutable_asked()->set_repetitions(1);
  entry->mutable_asked()->set_active_ms(600000);
  entry->mutable_done()->set_active_ms(150000);
  const Adherence adherence = all({twelve()}, {practice}, kMonday, kMonday);
  EXPECT_EQ(adherence.occasions[0].state, State::Part);
  EXPECT_DOUBLE_EQ(adherence.occasions[0].dose, 0.25);
}

TEST(Adherence, toldLaterWithoutNumbersIsDoneUnlessItSaysWhyNot) {
  v1::Practice told = practiceOf(kMonday);
  told.set_origin(v1::ORIGIN_TOLD_LATER);
  told.mutable_entries(0)->clear_asked();
  told.mutable_entries(0)->clear_done();
  Adherence adherence = all({twelve()}, {told}, kMonday, kMonday);
  EXPECT_EQ(adherence.occasions[0].state, State::Done);
  EXPECT_TRUE(adherence.occasions[0].told_later);
  told.mutable_entries(0)->set_skipped(v1::STOP_REASON_TIRED);
  adherence = all({twelve()}, {told}, kMonday, kMonday);
  EXPECT_EQ(adherence.occasions[0].state, State::NotDone);
  EXPECT_EQ(adherence.occasions[0].skipped, v1::STOP_REASON_TIRED);
}

TEST(Adherence, skippedIsNotDoneAndSaysWhy) {
  v1::Practice practice = practiceOf(kMonday, 0);
  practice.mutable_entries(0)->set_skipped(v1::STOP_REASON_PAIN);
  const auto adherence = adherenceOf({twelve()}, {practice}, kMonday, kMonday, kMonday, kMonday, {});
  ASSERT_TRUE(adherence.ok());
  EXPECT_EQ(adherence->all.due, 1) << "known even while the day goes on";
  EXPECT_EQ(adherence->all.done, 0);
  EXPECT_EQ(adherence->occasions[0].state, State::NotDone);
  EXPECT_EQ(adherence->occasions[0].skipped, v1::STOP_REASON_PAIN);
  EXPECT_EQ(adherence->occasions[0].practice_id, "");
}

// Hazard H25: no contact, not done, done and not yet are four different things.
TEST(Adherence, noDataNotDoneDoneAndComingAreNeverConfused) {
  const absl::CivilDay today = kMonday + 9;        // Wednesday of week 2
  const absl::CivilDay heard_until = kMonday + 3;  // Thursday of week 1
  const auto adherence =
      adherenceOf({twelve()}, {practiceOf(kMonday)}, kMonday, kMonday + 13, today, heard_until, {});
  ASSERT_TRUE(adherence.ok());
  std::vector<State> states;
  for (const auto& occasion : adherence->occasions) states.push_back(occasion.state);
  EXPECT_EQ(states, (std::vector<State>{State::Done, State::NotDone, State::NoData, State::NoData,
                                        State::Coming, State::Coming}));
  EXPECT_EQ(adherence->all.due, 2) << "what nobody knows is not in the denominator";
  EXPECT_EQ(adherence->all.done, 1);
}

// Before a phone of theirs was paired nobody could tell, and what was told of an earlier day moves that back.
TEST(Adherence, daysBeforeThePhoneWasThereHaveNoData) {
  const absl::CivilDay paired = kMonday + 3;
  const absl::CivilDay today = kMonday + 9;
  EXPECT_EQ(heardFrom(paired, {}), paired);
  EXPECT_EQ(heardFrom(paired, {practiceOf(kMonday + 4)}), paired);
  EXPECT_EQ(heardFrom(paired, {practiceOf(kMonday)}), kMonday) << "told later";
  const auto adherence =
      adherenceOf({twelve()}, {}, kMonday, kMonday + 6, today, HeardDays(paired, today), {});
  ASSERT_TRUE(adherence.ok());
  std::vector<State> states;
  for (const auto& occasion : adherence->occasions) states.push_back(occasion.state);
  EXPECT_EQ(states, (std::vector<State>{State::NoData, State::NoData, State::NotDone}));
  EXPECT_EQ(adherence->all.due, 1);
  // The person's own pages count the same, by the same definition.
  const CourseCount count = courseWeeks(*adherence, kMonday, 1, paired)[0].count;
  EXPECT_EQ(count.due(), adherence->all.due);
  EXPECT_EQ(count.done + count.part, adherence->all.done);
}

TEST(Adherence, whatIsDoneTodayCountsAtOnceAndWhatIsNotIsComing) {
  const auto adherence =
      adherenceOf({twelve()}, {practiceOf(kMonday)}, kMonday, kMonday + 2, kMonday, kMonday, {});
  ASSERT_TRUE(adherence.ok());
  EXPECT_EQ(adherence->occasions[0].state, State::Done);
  EXPECT_EQ(adherence->all.due, 1);
  const auto not_yet = adherenceOf({twelve()}, {}, kMonday, kMonday, kMonday, kMonday, {});
  EXPECT_EQ(not_yet->occasions[0].state, State::Coming);
  EXPECT_FALSE(not_yet->all.capped().has_value());
}

TEST(Adherence, aTimesPerWeekEntryMayBeDoneOnAnyDayOfItsWeek) {
  v1::Programme programme = emptyProgramme("2026-11-02", "2026-11-29");
  addEntry(programme, test::timesPerWeek(2));
  const Adherence adherence =
      all({programme}, {practiceOf(kMonday + 5), practiceOf(kMonday + 6, 8), practiceOf(kMonday + 8)},
          kMonday, kMonday + 13);
  EXPECT_EQ(adherence.all.due, 4);
  EXPECT_EQ(adherence.all.done, 3);
  EXPECT_EQ(adherence.all.counted, 3);
  EXPECT_DOUBLE_EQ(adherence.all.dose, 2.5);
  EXPECT_EQ(adherence.occasions[0].state, State::Done);
  EXPECT_EQ(adherence.occasions[1].state, State::Part);
  EXPECT_EQ(adherence.occasions[2].state, State::Done);
  EXPECT_EQ(adherence.occasions[3].state, State::NotDone);
  EXPECT_TRUE(adherence.occasions[0].any_day_of_week);
}

TEST(Adherence, aTimesPerWeekOccasionIsOpenUntilItsSunday) {
  v1::Programme programme = emptyProgramme("2026-11-02", "2026-11-29");
  addEntry(programme, test::timesPerWeek(2));
  const auto at = [&programme](int today, int heard) {
    const auto adherence =
        adherenceOf({programme}, {}, kMonday, kMonday + 6, kMonday + today, kMonday + heard, {});
    EXPECT_TRUE(adherence.ok());
    return adherence->occasions[0].state;
  };
  EXPECT_EQ(at(6, 6), State::Coming) << "Monday's share on Sunday";
  EXPECT_EQ(at(7, 7), State::NotDone);
  EXPECT_EQ(at(7, 5), State::NoData);
}

TEST(Adherence, moreThanTheWeeksShareIsExtra) {
  v1::Programme programme = emptyProgramme("2026-11-02", "2026-11-29");
  addEntry(programme, test::timesPerWeek(1));
  const Adherence adherence =
      all({programme}, {practiceOf(kMonday + 1), practiceOf(kMonday + 3), practiceOf(kMonday + 4)}, kMonday,
          kMonday + 13);
  EXPECT_EQ(adherence.all.due, 2);
  EXPECT_EQ(adherence.all.done, 3);
  EXPECT_EQ(adherence.all.counted, 1);
}

TEST(Adherence, aLaterNumberTakesOverFromItsFirstDay) {
  v1::Programme first = emptyProgramme("2026-11-02", "2026-11-29", 1);
  addEntry(first, test::everyDay());
  v1::Programme second = emptyProgramme("2026-11-05", "2026-11-08", 2);
  addEntry(second, test::weekdays({v1::WEEKDAY_SUNDAY}));
  const Adherence adherence = all({second, first}, {}, kMonday, kMonday + 13);
  std::vector<std::string> days;
  for (const auto& occasion : adherence.occasions) days.push_back(occasion.ref.local_day());
  EXPECT_EQ(days, (std::vector<std::string>{"2026-11-02", "2026-11-03", "2026-11-04", "2026-11-08"}))
      << "nothing of the first after the second began, and nothing of the second after its end";
}

TEST(Adherence, aPracticeUnderTheOldNumberCountsForTheSameEntry) {
  v1::Programme first = emptyProgramme("2026-11-02", "2026-11-29", 1);
  addEntry(first, test::everyDay());
  v1::Programme second = emptyProgramme("2026-11-04", "2026-11-29", 2);
  addEntry(second, test::everyDay());
  v1::Practice practice = practiceOf(kMonday + 2);
  practice.set_programme_number(1);
  const Adherence adherence = all({first, second}, {practice}, kMonday, kMonday + 6);
  EXPECT_EQ(adherence.all.done, 1);
  EXPECT_EQ(adherence.occasions[2].state, State::Done);
}

TEST(Adherence, eachWindowIsAnOccasionOfItsOwn) {
  v1::Programme programme = twelve();
  v1::Window* evening = programme.mutable_entries(0)->mutable_schedule()->add_windows();
  evening->set_from_min(1000);
  evening->set_to_min(1100);
  const Adherence adherence = all({programme}, {practiceOf(kMonday, kAsked, 1, 1)}, kMonday, kMonday);
  EXPECT_EQ(adherence.all.due, 2);
  EXPECT_EQ(adherence.occasions[0].state, State::NotDone);
  EXPECT_EQ(adherence.occasions[1].state, State::Done);
}

TEST(Adherence, refusesWhatDoesNotPassTheDoor) {
  EXPECT_EQ(
      adherenceOf({emptyProgramme("2026-11-02", "2026-11-29")}, {}, kMonday, kMonday, kMonday, kMonday, {})
          .status()
          .code(),
      absl::StatusCode::kInvalidArgument);
  v1::Practice broken = practiceOf(kMonday);
  broken.mutable_entries(0)->mutable_occasion()->set_local_day("2026-02-30");
  const auto status = adherenceOf({twelve()}, {broken}, kMonday, kMonday, kMonday, kMonday, {}).status();
  EXPECT_EQ(status.code(), absl::StatusCode::kInvalidArgument);
  EXPECT_NE(std::string(status.message()).find("entries[0].occasion.local_day"), std::string::npos);
}

// Whatever was done: shares lie in their bounds, and the parts sum to the whole.
TEST(Adherence, ofAnyHistoryAddsUp) {
  std::mt19937 random(13);
  for (int round = 0; round < 200; ++round) {
    v1::Programme programme = emptyProgramme("2026-11-02", "2026-12-31");
    addEntry(programme, test::randomWeekdays(random()));
    addEntry(programme, test::timesPerWeek(1 + static_cast<int>(random() % 7)));
    std::vector<v1::Practice> practices;
    for (int day = 0; day < 28; ++day) {
      for (int entry = 1; entry <= 2; ++entry) {
        if (random() % 2 == 0) {
          practices.push_back(practiceOf(kMonday + day, static_cast<int>(random() % 20), entry));
        }
      }
    }
    const auto today = kMonday + static_cast<int>(random() % 35);
    const auto heard = today - static_cast<int>(random() % 10);
    const auto adherence = adherenceOf({programme}, practices, kMonday, kMonday + 27, today, heard, {});
    ASSERT_TRUE(adherence.ok());
    Share entries;
    Share weeks;
    for (const auto& [id, share] : adherence->by_entry) {
      entries.due += share.due;
      entries.done += share.done;
      entries.counted += share.counted;
    }
    for (const auto& [week, share] : adherence->by_week) {
      weeks.due += share.due;
      weeks.done += share.done;
      weeks.counted += share.counted;
    }
    for (const Share& sum : {entries, weeks}) {
      EXPECT_EQ(sum.due, adherence->all.due);
      EXPECT_EQ(sum.done, adherence->all.done);
      EXPECT_EQ(sum.counted, adherence->all.counted);
    }
    EXPECT_LE(adherence->all.counted, adherence->all.due);
    EXPECT_LE(adherence->all.counted, adherence->all.done);
    EXPECT_LE(adherence->all.dose, adherence->all.due + 1e-9);
    int states = 0;
    for (const auto& occasion : adherence->occasions) {
      const bool in =
          occasion.state == State::Done || occasion.state == State::Part || occasion.state == State::NotDone;
      states += in ? 1 : 0;
      EXPECT_EQ(occasion.state == State::Done || occasion.state == State::Part,
                !occasion.practice_id.empty());
    }
    EXPECT_EQ(states, adherence->all.due);
  }
}

v1::HoldOrder orderOn(absl::CivilDay day, const std::string& id, const std::string& lifts = "") {
  v1::HoldOrder order;
  order.set_id(id);
  order.set_lifts_id(lifts);
  // Noon in Auckland is still the day before in UTC: the person's zone decides.
  order.mutable_issued_at()->set_seconds(absl::ToUnixSeconds(
      absl::FromCivil(absl::CivilSecond(day) + 12 * 3600, *loadZone("Pacific/Auckland"))));
  return order;
}

std::vector<HeldDays> held(const std::vector<v1::HoldOrder>& orders) {
  return heldDaysOf(orders, *loadZone("Pacific/Auckland"));
}

TEST(Adherence, whatAHoldOrderForbadeIsExcused) {
  const absl::CivilDay today = kMonday + 28;
  const auto share = [&](const std::vector<v1::HoldOrder>& orders) {
    return adherenceOf({twelve()}, {practiceOf(kMonday), practiceOf(kMonday + 2, 3)}, kMonday, kMonday + 27,
                       today, today, held(orders))
        ->all;
  };
  EXPECT_EQ(share({}).due, 12);
  // From Wednesday on: the part done that day and the ten after it are out; Monday's stays.
  EXPECT_EQ(share({orderOn(kMonday + 2, "a")}).due, 1);
  EXPECT_EQ(share({orderOn(kMonday + 2, "a")}).done, 1);
  // Lifted on the Friday of the first week, which still was held in part.
  EXPECT_EQ(share({orderOn(kMonday + 2, "a"), orderOn(kMonday + 4, "b", "a")}).due, 10);
  // A day wholly done stays done, held or not.
  EXPECT_EQ(share({orderOn(kMonday, "a"), orderOn(kMonday, "b", "a")}).due, 12);
}

TEST(Adherence, anOrderForOneEntryExcusesThatEntryAlone) {
  v1::HoldOrder order = orderOn(kMonday, "a");
  order.add_entry_ids(test::idNumbered(999));
  const auto adherence =
      adherenceOf({twelve()}, {}, kMonday, kMonday + 6, kMonday + 7, kMonday + 7, held({order}));
  EXPECT_EQ(adherence->all.due, 3);
  order.add_entry_ids(twelve().entries(0).id());
  const auto other =
      adherenceOf({twelve()}, {}, kMonday, kMonday + 6, kMonday + 7, kMonday + 7, held({order}));
  EXPECT_EQ(other->all.due, 0);
  EXPECT_FALSE(other->all.capped().has_value());
}

TEST(Adherence, aHeldDayToComeIsStillToCome) {
  const auto adherence = adherenceOf({twelve()}, {}, kMonday, kMonday + 6, kMonday + 1, kMonday + 1,
                                     held({orderOn(kMonday, "a")}));
  EXPECT_EQ(adherence->occasions[0].state, OccasionResult::State::Excused);
  EXPECT_EQ(adherence->occasions[1].state, OccasionResult::State::Coming);
}

}  // namespace
}  // namespace newel
