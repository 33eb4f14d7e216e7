// Invented programmes that pass check(), for tests of days and counts.
#pragma once

#include <string>
#include <vector>

#include "core/records/programme.pb.h"

namespace newel::test {

// 09:00 to 12:00.
inline v1::Window morning() {
  v1::Window window;
  window.set_from_min(540);
  window.set_to_min(720);
  return window;
}

inline v1::Schedule weekdays(const std::vector<v1::Weekday>& days) {
  v1::Schedule schedule;
  for (const auto day : days) schedule.mutable_weekdays()->add_days(day);
  *schedule.add_windows() = morning();
  return schedule;
}

inline v1::Schedule everyDay() {
  return weekdays({v1::WEEKDAY_MONDAY, v1::WEEKDAY_TUESDAY, v1::WEEKDAY_WEDNESDAY, v1::WEEKDAY_THURSDAY,
                   v1::WEEKDAY_FRIDAY, v1::WEEKDAY_SATURDAY, v1::WEEKDAY_SUNDAY});
}

// At least one of the seven days, by the bits of `random`.
inline v1::Schedule randomWeekdays(unsigned long random) {
  std::vector<v1::Weekday> days;
  for (int i = 0; i < 7; ++i) {
    if ((random >> i) % 2 == 1) days.push_back(static_cast<v1::Weekday>(v1::WEEKDAY_MONDAY + i));
  }
  if (days.empty()) days.push_back(v1::WEEKDAY_THURSDAY);
  return weekdays(days);
}

inline v1::Schedule timesPerWeek(int times) {
  v1::Schedule schedule;
  schedule.set_times_per_week(static_cast<std::uint32_t>(times));
  *schedule.add_windows() = morning();
  return schedule;
}

inline std::string idNumbered(int number) {
  std::string digits = std::to_string(number);
  return "01890000-0000-7000-8000-" + std::string(12 - digits.size(), '0') + digits;
}

// No entries yet, which check() refuses.
inline v1::Programme emptyProgramme(const std::string& effective_day, const std::string& end_day,
                                    int number = 1) {
  v1::Programme programme;
  programme.set_id(idNumbered(1000 + number));
  programme.set_number(static_cast<std::uint32_t>(number));
  programme.set_person_id(idNumbered(1));
  programme.set_clinic_id(idNumbered(2));
  programme.set_signer_id(idNumbered(3));
  programme.set_signer_name("R. Okafor");
  programme.mutable_issued_at()->set_seconds(1790000000);
  programme.set_effective_day(effective_day);
  programme.set_end_day(end_day);
  programme.set_zone("Europe/Berlin");
  programme.mutable_thresholds()->set_pain_stop_0_10(5);
  programme.mutable_thresholds()->set_pain_rise_0_10(2);
  return programme;
}

// Entry n of a programme has the id idNumbered(100 + n), so that the same place is the same entry.
inline v1::Entry& addEntry(v1::Programme& programme, const v1::Schedule& schedule) {
  v1::Entry& entry = *programme.add_entries();
  entry.set_id(idNumbered(100 + programme.entries_size()));
  entry.set_exercise_id("sit-to-stand");
  entry.set_exercise_revision(1);
  entry.set_side_policy(v1::SIDE_POLICY_WHOLE_BODY);
  entry.mutable_dose()->mutable_sets()->set_sets(2);
  entry.mutable_dose()->mutable_sets()->set_repetitions(8);
  entry.mutable_dose()->mutable_sets()->set_move_s(3);
  entry.mutable_dose()->mutable_sets()->set_return_s(3);
  entry.set_support(v1::SUPPORT_TWO_HANDS);
  entry.set_prosthesis(v1::PROSTHESIS_USE_ON);
  entry.set_pacing(v1::PACING_TIMED);
  *entry.mutable_schedule() = schedule;
  return entry;
}

}  // namespace newel::test
