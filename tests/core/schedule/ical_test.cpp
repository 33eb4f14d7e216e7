// Weekly rules held against libical, a reference that we did not write. Local dates only.
#include <gtest/gtest.h>
#include <libical/ical.h>

#include <algorithm>
#include <random>

#include "core/schedule/occasions.h"
#include "core/time/local_day.h"
#include "tests/core/schedule/programme_fixture.h"

namespace newel {
namespace {

// YYYYMMDD, a date without a time.
std::string compact(absl::CivilDay day) {
  std::string text = formatLocalDay(day);
  text.erase(std::remove(text.begin(), text.end(), '-'), text.end());
  return text;
}

std::vector<std::string> icalDays(const std::string& rule, absl::CivilDay first, absl::CivilDay last) {
  const icalrecurrencetype recurrence = icalrecurrencetype_from_string(rule.c_str());
  const icaltimetype begin = icaltime_from_string(compact(first).c_str());
  std::vector<std::string> days;
  icalrecur_iterator* iterator = icalrecur_iterator_new(recurrence, begin);
  for (icaltimetype at = icalrecur_iterator_next(iterator); !icaltime_is_null_time(at);
       at = icalrecur_iterator_next(iterator)) {
    const absl::CivilDay day(at.year, at.month, at.day);
    if (day > last) break;
    days.push_back(formatLocalDay(day));
  }
  icalrecur_iterator_free(iterator);
  return days;
}

std::vector<std::string> ourDays(const v1::Schedule& schedule, absl::CivilDay first, absl::CivilDay last) {
  v1::Programme programme = test::emptyProgramme(formatLocalDay(first), formatLocalDay(last));
  test::addEntry(programme, schedule);
  const auto occasions = occasionsOf(programme, first, last);
  EXPECT_TRUE(occasions.ok()) << occasions.status();
  std::vector<std::string> days;
  for (const auto& occasion : *occasions) days.push_back(occasion.ref.local_day());
  return days;
}

std::string byDay(const v1::Schedule& schedule) {
  static const char* const kNames[] = {"", "MO", "TU", "WE", "TH", "FR", "SA", "SU"};
  std::string days;
  for (const int day : schedule.weekdays().days())
    days += (days.empty() ? "" : ",") + std::string(kNames[day]);
  return "FREQ=WEEKLY;BYDAY=" + days;
}

// R2 of RFC 5545's own examples, and R8's daily rule as every day of the week.
TEST(AgainstLibical, theExamplesOfRfc5545AgreeOnBothSides) {
  const absl::CivilDay first(1997, 9, 2);
  const std::vector<std::string> r2 = {"1997-09-02", "1997-09-04", "1997-09-09", "1997-09-11", "1997-09-16",
                                       "1997-09-18", "1997-09-23", "1997-09-25", "1997-09-30", "1997-10-02"};
  const v1::Schedule schedule = test::weekdays({v1::WEEKDAY_TUESDAY, v1::WEEKDAY_THURSDAY});
  EXPECT_EQ(ourDays(schedule, first, absl::CivilDay(1997, 10, 6)), r2);
  EXPECT_EQ(icalDays("FREQ=WEEKLY;COUNT=10;BYDAY=TU,TH", first, absl::CivilDay(1997, 12, 31)), r2);
  EXPECT_EQ(ourDays(test::everyDay(), first, absl::CivilDay(1997, 12, 23)).size(), 113U);
  EXPECT_EQ(icalDays("FREQ=DAILY", first, absl::CivilDay(1997, 12, 23)).size(), 113U);
}

TEST(AgainstLibical, anyWeekdaysOverAnyRangeFallOnTheSameDates) {
  std::mt19937 random(5545);
  for (int round = 0; round < 300; ++round) {
    const v1::Schedule schedule = test::randomWeekdays(random());
    const absl::CivilDay first = absl::CivilDay(2024, 1, 1) + static_cast<int>(random() % 1500);
    const absl::CivilDay last = first + static_cast<int>(random() % 120);
    ASSERT_EQ(ourDays(schedule, first, last), icalDays(byDay(schedule), first, last))
        << byDay(schedule) << " from " << formatLocalDay(first) << " to " << formatLocalDay(last);
  }
}

TEST(AgainstLibical, timesPerWeekAreTheWeekdaysTheyAreSpreadOver) {
  for (int times = 1; times <= 7; ++times) {
    const absl::CivilDay first(2027, 12, 27);
    const absl::CivilDay last(2028, 3, 5);  // over a 29 February
    ASSERT_EQ(ourDays(test::timesPerWeek(times), first, last),
              icalDays(byDay(test::weekdays(spreadOverWeek(times))), first, last));
  }
}

}  // namespace
}  // namespace newel
