#include "tests/sync/export/calendar_vectors.h"

#include "core/time/local_day.h"
#include "tests/sync/export/history_maker.h"

namespace newel::test {
namespace {

std::vector<v1::Weekday> all() {
  return {v1::WEEKDAY_MONDAY, v1::WEEKDAY_TUESDAY,  v1::WEEKDAY_WEDNESDAY, v1::WEEKDAY_THURSDAY,
          v1::WEEKDAY_FRIDAY, v1::WEEKDAY_SATURDAY, v1::WEEKDAY_SUNDAY};
}
std::vector<v1::Weekday> mondayWednesdayFriday() {
  return {v1::WEEKDAY_MONDAY, v1::WEEKDAY_WEDNESDAY, v1::WEEKDAY_FRIDAY};
}
std::vector<v1::Weekday> tuesdayThursday() { return {v1::WEEKDAY_TUESDAY, v1::WEEKDAY_THURSDAY}; }

// Every day between two of `days` is a pause: how a rhythm that is not weekly is said in a programme.
std::vector<std::pair<Day, Day>> between(const std::vector<Day>& days) {
  std::vector<std::pair<Day, Day>> off;
  for (std::size_t i = 1; i < days.size(); ++i) {
    if (days[i - 1] + 1 < days[i]) off.emplace_back(days[i - 1] + 1, days[i] - 1);
  }
  return off;
}

// `days` at 09:00 in New York, by the offsets that the RFC's examples name.
std::vector<std::string> nineInNewYork(const std::vector<Day>& days, Day summer_ends) {
  std::vector<std::string> instants;
  for (const Day day : days)
    instants.push_back(formatLocalDay(day) + (day < summer_ends ? "T13:00:00Z" : "T14:00:00Z"));
  return instants;
}

std::vector<Day> daysOf(int year, const std::vector<std::pair<int, std::vector<int>>>& months) {
  std::vector<Day> days;
  for (const auto& [month, numbers] : months) {
    for (const int day : numbers) days.emplace_back(year, month, day);
  }
  return days;
}

// RFC 5545 section 3.8.5.3, its own examples: daylight time ended on 26 October 1997 in New York. A
// programme's days are weekly, from a first to a last day, with pauses: R1, R2, R6, R8 and X1 are said as
// they are; every second week (R3, R4, R7), every tenth day (R5) and the 15th and 30th (R9) by pauses, and so
// go out as a weekly rule with exceptions.
std::vector<Plan> rfcExamples() {
  const std::string zone = "America/New_York";
  const Day winter(1997, 10, 26);
  const auto r2 = daysOf(1997, {{9, {2, 4, 9, 11, 16, 18, 23, 25, 30}}, {10, {2}}});
  const auto r3 = daysOf(1997, {{9, {1, 3, 5, 15, 17, 19, 29}},
                                {10, {1, 3, 13, 15, 17, 27, 29, 31}},
                                {11, {10, 12, 14, 24, 26, 28}},
                                {12, {8, 10, 12, 22}}});
  const auto r4 = daysOf(1997, {{9, {2, 4, 16, 18, 30}}, {10, {2, 14, 16}}});
  const auto r5 = daysOf(1997, {{9, {2, 12, 22}}, {10, {2, 12}}});
  const auto r6 = daysOf(1997, {{9, {2, 9, 16, 23, 30}}, {10, {7, 14, 21, 28}}, {11, {4}}});
  const auto r7a = daysOf(1997, {{8, {5, 10, 19, 24}}});
  const auto r7b = daysOf(1997, {{8, {5, 17, 19, 31}}});
  const auto r9 = daysOf(2007, {{1, {15, 30}}, {2, {15}}, {3, {15, 30}}});
  std::vector<Day> r1;
  for (int day = 2; day <= 11; ++day) r1.emplace_back(1997, 9, day);
  std::vector<Day> r8;
  for (Day day(1997, 9, 2); day <= Day(1997, 12, 23); ++day) r8.push_back(day);
  auto x1 = r2;
  x1.erase(x1.begin() + 2);
  // In 2007 daylight time began on 11 March.
  std::vector<std::string> r9_instants;
  for (const auto day : r9)
    r9_instants.push_back(formatLocalDay(day) + (day < Day(2007, 3, 11) ? "T14:00:00Z" : "T13:00:00Z"));
  const auto nine = [&](const std::vector<Day>& days) { return nineInNewYork(days, winter); };
  const std::vector<v1::Weekday> tuesday = {v1::WEEKDAY_TUESDAY};
  const std::vector<v1::Weekday> tuesday_sunday = {v1::WEEKDAY_TUESDAY, v1::WEEKDAY_SUNDAY};
  return {
      {"R1", zone, r1.front(), r1.back(), 540, all(), {}, "FREQ=DAILY;UNTIL=19970912T035900Z", nine(r1)},
      {"R2",
       zone,
       r2.front(),
       Day(1997, 10, 6),
       540,
       tuesdayThursday(),
       {},
       "FREQ=WEEKLY;UNTIL=19971003T035900Z;BYDAY=TU,TH",
       nine(r2)},
      {"R3", zone, r3.front(), r3.back(), 540, mondayWednesdayFriday(), between(r3),
       "FREQ=WEEKLY;UNTIL=19971223T045900Z;BYDAY=MO,WE,FR", nine(r3)},
      {"R4", zone, r4.front(), r4.back(), 540, tuesdayThursday(), between(r4),
       "FREQ=WEEKLY;UNTIL=19971017T035900Z;BYDAY=TU,TH", nine(r4)},
      {"R5", zone, r5.front(), r5.back(), 540, all(), between(r5),
       "FREQ=WEEKLY;UNTIL=19971013T035900Z;BYDAY=MO,TU,TH,FR,SU", nine(r5)},
      {"R6",
       zone,
       r6.front(),
       r6.back(),
       540,
       tuesday,
       {},
       "FREQ=WEEKLY;UNTIL=19971105T045900Z;BYDAY=TU",
       nine(r6)},
      {"R7a", zone, r7a.front(), r7a.back(), 540, tuesday_sunday, between(r7a),
       "FREQ=WEEKLY;UNTIL=19970825T035900Z;BYDAY=TU,SU", nine(r7a)},
      {"R7b", zone, r7b.front(), r7b.back(), 540, tuesday_sunday, between(r7b),
       "FREQ=WEEKLY;UNTIL=19970901T035900Z;BYDAY=TU,SU", nine(r7b)},
      {"R8", zone, r8.front(), r8.back(), 540, all(), {}, "FREQ=DAILY;UNTIL=19971224T045900Z", nine(r8)},
      {"R9", zone, r9.front(), r9.back(), 540, all(), between(r9),
       "FREQ=WEEKLY;UNTIL=20070331T035900Z;BYDAY=MO,TU,TH,FR", r9_instants},
      {"X1",
       zone,
       r2.front(),
       Day(1997, 10, 6),
       540,
       tuesdayThursday(),
       {{Day(1997, 9, 9), Day(1997, 9, 9)}},
       "FREQ=WEEKLY;UNTIL=19971003T035900Z;BYDAY=TU,TH",
       nine(x1)},
  };
}

// Where clocks change: D1 to D7 of our notes, computed with Python's zoneinfo on tzdata 2025b; D5 is in the
// RFC (3.3.5).
std::vector<Plan> clockChanges() {
  const std::string berlin = "Europe/Berlin";
  const std::string new_york = "America/New_York";
  return {
      {"D1",
       berlin,
       Day(2026, 3, 25),
       Day(2026, 4, 6),
       540,
       mondayWednesdayFriday(),
       {},
       "FREQ=WEEKLY;UNTIL=20260406T215900Z;BYDAY=MO,WE,FR",
       {"2026-03-25T08:00:00Z", "2026-03-27T08:00:00Z", "2026-03-30T07:00:00Z", "2026-04-01T07:00:00Z",
        "2026-04-03T07:00:00Z", "2026-04-06T07:00:00Z"}},
      {"D2",
       new_york,
       Day(2026, 10, 28),
       Day(2026, 11, 9),
       540,
       mondayWednesdayFriday(),
       {},
       "FREQ=WEEKLY;UNTIL=20261110T045900Z;BYDAY=MO,WE,FR",
       {"2026-10-28T13:00:00Z", "2026-10-30T13:00:00Z", "2026-11-02T14:00:00Z", "2026-11-04T14:00:00Z",
        "2026-11-06T14:00:00Z", "2026-11-09T14:00:00Z"}},
      {"D3",
       berlin,
       Day(2026, 3, 27),
       Day(2026, 3, 30),
       150,
       all(),
       {},
       "FREQ=WEEKLY;UNTIL=20260330T215900Z;BYDAY=MO,FR,SA,SU",
       {"2026-03-27T01:30:00Z", "2026-03-28T01:30:00Z", "2026-03-29T01:30:00Z", "2026-03-30T00:30:00Z"}},
      {"D4",
       berlin,
       Day(2026, 10, 24),
       Day(2026, 10, 26),
       150,
       all(),
       {},
       "FREQ=WEEKLY;UNTIL=20261026T225900Z;BYDAY=MO,SA,SU",
       {"2026-10-24T00:30:00Z", "2026-10-25T00:30:00Z", "2026-10-26T01:30:00Z"}},
      {"D5a", new_york, Day(2007, 11, 4), Day(2007, 11, 4), 90, all(), {}, "", {"2007-11-04T05:30:00Z"}},
      {"D5b", new_york, Day(2007, 3, 11), Day(2007, 3, 11), 150, all(), {}, "", {"2007-03-11T07:30:00Z"}},
      {"D6",
       "Australia/Lord_Howe",
       Day(2026, 10, 4),
       Day(2026, 10, 4),
       135,
       all(),
       {},
       "",
       {"2026-10-03T15:45:00Z"}},
      {"D7",
       "America/Santiago",
       Day(2026, 9, 6),
       Day(2026, 9, 6),
       30,
       all(),
       {},
       "",
       {"2026-09-06T04:30:00Z"}},
  };
}

}  // namespace

PersonHistory historyOf(const Plan& plan) {
  PersonHistory history = yearOfHistory(1);
  history.practices.clear();
  v1::Programme& programme = history.programmes[0].programme;
  programme.set_zone(plan.zone);
  programme.set_effective_day(formatLocalDay(plan.first));
  programme.set_end_day(formatLocalDay(plan.last));
  v1::Schedule& schedule = *programme.mutable_entries(0)->mutable_schedule();
  schedule.Clear();
  for (const auto day : plan.days) schedule.mutable_weekdays()->add_days(day);
  schedule.add_windows()->set_from_min(plan.from_min);
  schedule.mutable_windows(0)->set_to_min(plan.from_min + 60);
  for (const auto& [first, last] : plan.off) {
    v1::Pause& pause = *schedule.add_pauses();
    pause.set_first_day(formatLocalDay(first));
    pause.set_last_day(formatLocalDay(last));
    pause.set_reason("as the vector says");
  }
  return history;
}

std::vector<Plan> allVectors() {
  auto plans = rfcExamples();
  for (auto& plan : clockChanges()) plans.push_back(std::move(plan));
  return plans;
}

}  // namespace newel::test
