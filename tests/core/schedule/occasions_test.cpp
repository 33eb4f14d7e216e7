#include "core/schedule/occasions.h"

#include <gtest/gtest.h>

#include <map>
#include <random>
#include <set>

#include "core/time/local_day.h"
#include "tests/core/schedule/programme_fixture.h"

namespace newel {
namespace {

using test::addEntry;
using test::emptyProgramme;
using test::weekdays;

std::vector<std::string> daysOf(const v1::Programme& programme, absl::CivilDay first, absl::CivilDay last) {
  const auto occasions = occasionsOf(programme, first, last);
  EXPECT_TRUE(occasions.ok()) << occasions.status();
  std::vector<std::string> days;
  for (const auto& occasion : *occasions) days.push_back(occasion.ref.local_day());
  return days;
}

using Days = std::vector<std::string>;

TEST(SpreadOverWeek, isAsEvenAsWholeDaysAllow) {
  using V = std::vector<v1::Weekday>;
  constexpr auto kMo = v1::WEEKDAY_MONDAY, kTu = v1::WEEKDAY_TUESDAY, kWe = v1::WEEKDAY_WEDNESDAY,
                 kTh = v1::WEEKDAY_THURSDAY, kFr = v1::WEEKDAY_FRIDAY, kSa = v1::WEEKDAY_SATURDAY,
                 kSu = v1::WEEKDAY_SUNDAY;
  EXPECT_EQ(spreadOverWeek(0), V{});
  EXPECT_EQ(spreadOverWeek(-1), V{});
  EXPECT_EQ(spreadOverWeek(1), V{kMo});
  EXPECT_EQ(spreadOverWeek(2), (V{kMo, kTh}));
  EXPECT_EQ(spreadOverWeek(3), (V{kMo, kWe, kFr}));
  EXPECT_EQ(spreadOverWeek(4), (V{kMo, kTu, kTh, kFr}));
  EXPECT_EQ(spreadOverWeek(5), (V{kMo, kTu, kWe, kTh, kFr}));
  EXPECT_EQ(spreadOverWeek(6), (V{kMo, kTu, kWe, kTh, kFr, kSa}));
  EXPECT_EQ(spreadOverWeek(7), (V{kMo, kTu, kWe, kTh, kFr, kSa, kSu}));
  EXPECT_EQ(spreadOverWeek(99), spreadOverWeek(7));
}

// 2026-11-23 is a Monday (any calendar).
TEST(WeekdayOf, goesThroughTheWeekFromMonday) {
  const absl::CivilDay monday(2026, 11, 23);
  for (int i = 0; i < 7; ++i) {
    EXPECT_EQ(weekdayOf(monday + i), static_cast<v1::Weekday>(v1::WEEKDAY_MONDAY + i));
    EXPECT_EQ(mondayOf(monday + i), monday);
  }
  EXPECT_EQ(mondayOf(monday - 1), monday - 7);
}

TEST(Occasions, ofWeekdaysFallOnThoseDaysAndNoOthers) {
  v1::Programme programme = emptyProgramme("2026-11-02", "2026-11-29");
  addEntry(programme, weekdays({v1::WEEKDAY_MONDAY, v1::WEEKDAY_WEDNESDAY, v1::WEEKDAY_FRIDAY}));
  EXPECT_EQ(daysOf(programme, absl::CivilDay(2026, 11, 9), absl::CivilDay(2026, 11, 15)),
            (Days{"2026-11-09", "2026-11-11", "2026-11-13"}));
}

TEST(Occasions, liveBetweenTheFirstAndTheLastDayOfTheProgrammeBothIncluded) {
  v1::Programme programme = emptyProgramme("2026-11-04", "2026-11-06");
  addEntry(programme, test::everyDay());
  EXPECT_EQ(daysOf(programme, absl::CivilDay(2026, 1, 1), absl::CivilDay(2027, 1, 1)),
            (Days{"2026-11-04", "2026-11-05", "2026-11-06"}));
  EXPECT_EQ(daysOf(programme, absl::CivilDay(2026, 11, 7), absl::CivilDay(2026, 11, 20)), Days{});
  EXPECT_EQ(daysOf(programme, absl::CivilDay(2026, 11, 6), absl::CivilDay(2026, 11, 4)), Days{});
}

TEST(Occasions, ofAProgrammeThatDoesNotPassTheDoorAreRefused) {
  v1::Programme programme = emptyProgramme("2026-11-04", "2026-11-06");
  EXPECT_EQ(occasionsOf(programme, absl::CivilDay(2026, 11, 4), absl::CivilDay(2026, 11, 6)).status().code(),
            absl::StatusCode::kInvalidArgument);
  EXPECT_TRUE(dueOn(programme, absl::CivilDay(2026, 11, 4), {}).empty());
}

TEST(Occasions, comeInTheOrderOfDayThenWindowThenEntry) {
  v1::Programme programme = emptyProgramme("2026-11-02", "2026-11-03");
  v1::Schedule twice = test::everyDay();
  twice.mutable_windows(0)->set_from_min(480);
  twice.mutable_windows(0)->set_to_min(600);
  v1::Window* evening = twice.add_windows();
  evening->set_from_min(1080);
  evening->set_to_min(1200);
  addEntry(programme, twice);
  addEntry(programme, test::everyDay());  // 09:00 to 12:00
  const auto occasions = occasionsOf(programme, absl::CivilDay(2026, 11, 2), absl::CivilDay(2026, 11, 3));
  ASSERT_TRUE(occasions.ok());
  ASSERT_EQ(occasions->size(), 6U);
  const std::vector<std::uint32_t> starts = {480, 540, 1080, 480, 540, 1080};
  for (std::size_t i = 0; i < starts.size(); ++i) {
    EXPECT_EQ((*occasions)[i].window.from_min(), starts[i]);
    EXPECT_EQ((*occasions)[i].ref.local_day(), i < 3 ? "2026-11-02" : "2026-11-03");
  }
  EXPECT_EQ((*occasions)[2].ref.window(), 1U);
}

TEST(Occasions, insideAPauseAreExcusedBothEndsIncluded) {
  v1::Programme programme = emptyProgramme("2026-11-02", "2026-11-08");
  v1::Schedule schedule = test::everyDay();
  v1::Pause* pause = schedule.add_pauses();
  pause->set_first_day("2026-11-04");
  pause->set_last_day("2026-11-05");
  addEntry(programme, schedule);
  const auto occasions = occasionsOf(programme, absl::CivilDay(2026, 11, 2), absl::CivilDay(2026, 11, 8));
  ASSERT_TRUE(occasions.ok());
  for (const auto& occasion : *occasions) {
    const bool inside = occasion.ref.local_day() == "2026-11-04" || occasion.ref.local_day() == "2026-11-05";
    EXPECT_EQ(occasion.state == OccasionState::Excused, inside) << occasion.ref.local_day();
  }
  EXPECT_TRUE(dueOn(programme, absl::CivilDay(2026, 11, 4), {}).empty());
  EXPECT_EQ(dueOn(programme, absl::CivilDay(2026, 11, 6), {}).size(), 1U);
}

TEST(Occasions, ofTimesPerWeekAreSpreadOverTheWeek) {
  v1::Programme programme = emptyProgramme("2026-11-02", "2026-11-15");
  addEntry(programme, test::timesPerWeek(2));
  EXPECT_EQ(daysOf(programme, absl::CivilDay(2026, 11, 2), absl::CivilDay(2026, 11, 15)),
            (Days{"2026-11-02", "2026-11-05", "2026-11-09", "2026-11-12"}));
}

v1::OccasionRef refOf(const v1::Programme& programme, const std::string& day, std::uint32_t window = 0) {
  v1::OccasionRef ref;
  ref.set_entry_id(programme.entries(0).id());
  ref.set_local_day(day);
  ref.set_window(window);
  return ref;
}

TEST(DueOn, leavesOutWhatWasDone) {
  v1::Programme programme = emptyProgramme("2026-11-02", "2026-11-15");
  addEntry(programme, test::everyDay());
  addEntry(programme, test::everyDay());
  const absl::CivilDay day(2026, 11, 3);
  EXPECT_EQ(dueOn(programme, day, {}).size(), 2U);
  EXPECT_EQ(dueOn(programme, day, {refOf(programme, "2026-11-02")}).size(), 2U);
  const auto left = dueOn(programme, day, {refOf(programme, "2026-11-03")});
  ASSERT_EQ(left.size(), 1U);
  EXPECT_EQ(left[0].ref.entry_id(), programme.entries(1).id());
  EXPECT_TRUE(dueOn(programme, absl::CivilDay(2026, 12, 1), {}).empty());
}

TEST(DueOn, offersATimesPerWeekEntryEveryDayUntilTheWeekHasItsShare) {
  v1::Programme programme = emptyProgramme("2026-11-02", "2026-11-15");
  addEntry(programme, test::timesPerWeek(2));
  const absl::CivilDay wednesday(2026, 11, 4);
  ASSERT_EQ(dueOn(programme, wednesday, {}).size(), 1U);
  EXPECT_TRUE(dueOn(programme, wednesday, {}).front().any_day_of_week);
  EXPECT_EQ(dueOn(programme, wednesday, {}).front().ref.local_day(), "2026-11-04");
  EXPECT_TRUE(dueOn(programme, wednesday, {refOf(programme, "2026-11-04")}).empty()) << "done today";
  EXPECT_EQ(dueOn(programme, wednesday, {refOf(programme, "2026-11-03")}).size(), 1U);
  EXPECT_TRUE(
      dueOn(programme, wednesday, {refOf(programme, "2026-11-02"), refOf(programme, "2026-11-03")}).empty());
  EXPECT_EQ(
      dueOn(programme, wednesday, {refOf(programme, "2026-10-31"), refOf(programme, "2026-11-01")}).size(),
      1U)
      << "another week's practice does not count";
  EXPECT_EQ(dueOn(programme, absl::CivilDay(2026, 11, 8), {}).size(), 1U) << "one on Sunday, not two";
}

TEST(DueOn, offersNoneOfATimesPerWeekEntryInAPause) {
  v1::Programme programme = emptyProgramme("2026-11-02", "2026-11-15");
  v1::Schedule schedule = test::timesPerWeek(3);
  v1::Pause* pause = schedule.add_pauses();
  pause->set_first_day("2026-11-02");
  pause->set_last_day("2026-11-03");
  addEntry(programme, schedule);
  EXPECT_TRUE(dueOn(programme, absl::CivilDay(2026, 11, 3), {}).empty());
  EXPECT_EQ(dueOn(programme, absl::CivilDay(2026, 11, 4), {}).size(), 1U);
  EXPECT_TRUE(dueOn(programme, absl::CivilDay(2026, 11, 7),
                    {refOf(programme, "2026-11-04"), refOf(programme, "2026-11-05")})
                  .empty())
      << "Monday was excused: two are left of three";
}

// Hazard H21: whatever was missed or done before, no day asks for more than its own schedule does.
TEST(DueOn, neverAddsWhatWasMissedToALaterDay) {
  std::mt19937 random(20261125);
  for (int round = 0; round < 400; ++round) {
    v1::Programme programme = emptyProgramme("2026-03-02", "2026-05-31");
    const int entries = 1 + static_cast<int>(random() % 4);
    for (int i = 0; i < entries; ++i) {
      v1::Schedule schedule = random() % 2 == 0 ? test::timesPerWeek(1 + static_cast<int>(random() % 7))
                                                : test::randomWeekdays(random());
      if (random() % 2 == 0) {
        v1::Window* second = schedule.add_windows();
        second->set_from_min(1000);
        second->set_to_min(1100);
      }
      addEntry(programme, schedule);
    }
    std::vector<v1::OccasionRef> done;
    for (absl::CivilDay day(2026, 3, 2); day <= absl::CivilDay(2026, 3, 22); ++day) {
      std::set<std::string> seen;
      std::map<std::string, int> a_week;
      for (const auto& occasion : dueOn(programme, day, done)) {
        ASSERT_EQ(occasion.ref.local_day(), formatLocalDay(day));
        ASSERT_TRUE(
            seen.insert(occasion.ref.entry_id() + "/" + std::to_string(occasion.ref.window())).second);
        if (random() % 3 == 0) done.push_back(occasion.ref);
      }
      for (const auto& ref : done) {
        if (*parseLocalDay(ref.local_day()) >= mondayOf(day)) ++a_week[ref.entry_id()];
      }
      for (const auto& entry : programme.entries()) {
        const auto& schedule = entry.schedule();
        const int most = static_cast<int>(schedule.times_per_week()) * schedule.windows_size();
        if (schedule.times_per_week() > 0) {
          ASSERT_LE(a_week[entry.id()], most);
        }
      }
    }
  }
}

TEST(DueOn, isForFixedDaysTheDaysOccasionsLessTheDone) {
  std::mt19937 random(7);
  for (int round = 0; round < 100; ++round) {
    v1::Programme programme = emptyProgramme("2026-03-02", "2026-05-31");
    addEntry(programme, test::randomWeekdays(random()));
    addEntry(programme, test::randomWeekdays(random()));
    for (absl::CivilDay day(2026, 3, 1); day <= absl::CivilDay(2026, 3, 12); ++day) {
      const auto all = occasionsOf(programme, day, day);
      ASSERT_TRUE(all.ok());
      EXPECT_EQ(dueOn(programme, day, {}).size(), all->size());
    }
  }
}

// However a range is cut in two, the occasions are the same.
TEST(Occasions, ofARangeAreThoseOfItsParts) {
  v1::Programme programme = emptyProgramme("2026-01-01", "2026-12-31");
  addEntry(programme, test::timesPerWeek(4));
  addEntry(programme, weekdays({v1::WEEKDAY_SUNDAY, v1::WEEKDAY_TUESDAY}));
  const absl::CivilDay first(2026, 2, 1);
  const absl::CivilDay last(2026, 4, 30);
  const Days whole = daysOf(programme, first, last);
  for (absl::CivilDay cut = first; cut < last; cut += 5) {
    Days parts = daysOf(programme, first, cut);
    const Days rest = daysOf(programme, cut + 1, last);
    parts.insert(parts.end(), rest.begin(), rest.end());
    ASSERT_EQ(parts, whole) << formatLocalDay(cut);
  }
}

}  // namespace
}  // namespace newel
