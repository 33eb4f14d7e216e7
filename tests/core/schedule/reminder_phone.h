// What a phone knows when it makes its list of reminders, moved on by a test's hand. For tests alone.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "core/records/check.h"
#include "core/schedule/reminder_book.h"
#include "core/schedule/reminders.h"
#include "core/time/local_day.h"
#include "tests/core/schedule/programme_fixture.h"

namespace newel::test {

inline v1::Window window(std::uint32_t from_min, std::uint32_t to_min) {
  v1::Window made;
  made.set_from_min(from_min);
  made.set_to_min(to_min);
  return made;
}

inline v1::Schedule daily(const std::vector<v1::Window>& windows) {
  v1::Schedule schedule = everyDay();
  schedule.clear_windows();
  for (const v1::Window& each : windows) *schedule.add_windows() = each;
  return schedule;
}

class Phone {
 public:
  explicit Phone(const v1::Schedule& schedule, const std::string& zone = "Europe/Berlin")
      : m_programme(emptyProgramme("2011-01-01", "2030-01-01")) {
    addEntry(m_programme, schedule);
    m_input.programme = &m_programme;
    *m_input.book.mutable_settings() = usualReminderSettings();
    m_input.book.mutable_settings()->set_wanted(v1::REMINDERS_WANTED_YES);
    setZone(zone);
  }
  Phone(const Phone&) = delete;
  Phone& operator=(const Phone&) = delete;

  void setZone(const std::string& zone) {
    const auto loaded = loadZone(zone);
    EXPECT_TRUE(loaded.ok()) << zone;
    m_input.zone = *loaded;
  }
  void noQuietHours() { m_input.book.mutable_settings()->set_quiet_to_min(21 * 60); }
  void at(int year, int month, int day, int hour, int minute) {
    m_input.now = absl::FromCivil(absl::CivilMinute(year, month, day, hour, minute), m_input.zone);
  }
  std::vector<ArmedReminder> armed() const { return armedReminders(m_input); }
  // Local instants of the list, "11-25 09:00"; never empty, so that its first may be looked at.
  std::vector<std::string> local() const {
    std::vector<std::string> times;
    EXPECT_EQ(check(m_programme), absl::OkStatus());
    for (const auto& each : armed()) times.push_back(absl::FormatTime("%m-%d %H:%M", each.at, m_input.zone));
    if (times.empty()) times.emplace_back("none");
    return times;
  }
  // Shows the next one at its time.
  ArmedReminder showNext() {
    const auto list = armed();
    EXPECT_FALSE(list.empty());
    m_input.now = std::max(m_input.now, list.front().at);
    noteShown(m_input.book, list.front().id, list.front().day, m_input.now);
    return list.front();
  }
  void done(const std::string& day, std::uint32_t window_index = 0, int entry = 0) {
    v1::OccasionRef ref;
    ref.set_entry_id(m_programme.entries(entry).id());
    ref.set_local_day(day);
    ref.set_window(window_index);
    m_input.done.push_back(ref);
  }

  v1::Programme m_programme;
  ReminderInput m_input;
};

}  // namespace newel::test
