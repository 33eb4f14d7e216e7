// What holds of every list of reminders, and of everything that was ever shown, whatever zones, clocks and
// people do.
#include <gtest/gtest.h>

#include <map>
#include <random>
#include <set>

#include "core/schedule/occasions.h"
#include "tests/core/schedule/reminder_phone.h"

namespace newel {
namespace {

using test::Phone;
using test::window;

// A year of somebody's life with a phone: zones, clocks, practices, answers and silence at random. What must
// hold of every list, and of everything that was ever shown.
class Life {
 public:
  explicit Life(unsigned seed)
      : m_random(seed), m_phone(schedule()), m_zones{"Europe/Berlin",       "America/Havana",
                                                     "Asia/Tokyo",          "Pacific/Honolulu",
                                                     "Australia/Lord_Howe", "Pacific/Apia",
                                                     "Africa/Cairo"} {
    if (m_random() % 2 == 0) test::addEntry(m_phone.m_programme, schedule());
    m_phone.at(2026, 3, 1, 7, 0);
    v1::ReminderSettings& settings = *m_phone.m_input.book.mutable_settings();
    settings.set_quiet_from_min(static_cast<std::uint32_t>(m_random() % 1440));
    settings.set_quiet_to_min(static_cast<std::uint32_t>(m_random() % 1440));
  }

  void live(int steps) {
    for (int i = 0; i < steps; ++i) {
      step();
      look();
    }
  }

 private:
  v1::Schedule schedule() {
    v1::Schedule made = m_random() % 3 == 0 ? test::timesPerWeek(1 + static_cast<int>(m_random() % 7))
                                            : test::randomWeekdays(m_random());
    made.clear_windows();
    std::uint32_t from = static_cast<std::uint32_t>(m_random() % 300);
    for (int i = 0; i < 1 + static_cast<int>(m_random() % 4); ++i) {
      const std::uint32_t to = from + 30 + static_cast<std::uint32_t>(m_random() % 240);
      *made.add_windows() = window(from, to);
      from = to + static_cast<std::uint32_t>(m_random() % 60);
    }
    return made;
  }

  void step() {
    ReminderInput& input = m_phone.m_input;
    switch (m_random() % 10) {
      case 0:
        m_phone.setZone(m_zones[m_random() % m_zones.size()]);
        break;
      case 1:  // the clock is set, by minutes mostly
        input.now += absl::Minutes(static_cast<int>(m_random() % 240) - 120);
        break;
      case 2: {
        const auto due = dueOn(m_phone.m_programme, localDayAt(input.now, input.zone), input.done);
        if (!due.empty()) input.done.push_back(due[m_random() % due.size()].ref);
        break;
      }
      case 3:
        noteOpened(input.book, input.now);
        break;
      case 4:
        input.now += absl::Hours(static_cast<int>(m_random() % 60));  // slept, or was off
        break;
      default:
        showNext();
    }
  }

  void showNext() {
    ReminderInput& input = m_phone.m_input;
    const auto list = armedReminders(input);
    if (list.empty()) {
      input.now += absl::Hours(5);
      return;
    }
    input.now = list.front().at;
    EXPECT_TRUE(m_shown.insert(list.front().id).second) << list.front().id << " was shown twice";
    noteShown(input.book, list.front().id, list.front().day, input.now);
    if (!list.front().id.ends_with('+')) {
      EXPECT_LE(++m_of_day[list.front().day], kMostRemindersADay);
    }
    if (m_random() % 2 == 0) return;
    const auto answer = static_cast<v1::ReminderAnswer>(1 + m_random() % 3);
    noteAnswer(input.book, list.front().id, answer, input.now + absl::Minutes(1));
  }

  void look() {
    const ReminderInput& input = m_phone.m_input;
    const auto list = armedReminders(input);
    ASSERT_EQ(check(input.book), absl::OkStatus());
    ASSERT_LE(list.size(), static_cast<std::size_t>(kMostReminders));
    std::set<std::string> ids;
    std::map<absl::CivilDay, int> of_day;
    absl::Time last = input.now;
    int unanswered = unansweredInARow(input.book);
    for (const ArmedReminder& each : list) {
      ASSERT_GE(each.at, last) << "in order, and none in the past";
      ASSERT_LE(each.at, input.now + absl::Hours(24 * kReminderDays));
      ASSERT_FALSE(isQuiet(input.book.settings(), minuteOfDayAt(each.at, input.zone))) << each.id;
      ASSERT_EQ(localDayAt(each.at, input.zone), each.day) << each.id;
      ASSERT_TRUE(ids.insert(each.id).second) << each.id;
      ASSERT_FALSE(dueOn(m_phone.m_programme, each.day, input.done).empty()) << "nothing to remind of";
      if (each.kind != ReminderKind::Later && ++of_day[each.day] > 1) {
        ASSERT_LT(unanswered, kUnansweredBecomeOne) << "a second one on " << formatLocalDay(each.day);
      }
      ++unanswered;
      last = each.at;
    }
    ASSERT_TRUE(armedReminders(input).size() == list.size()) << "the same facts give the same list";
  }

  std::mt19937 m_random;
  Phone m_phone;
  std::vector<std::string> m_zones;
  std::set<std::string> m_shown;
  std::map<absl::CivilDay, int> m_of_day;
};

TEST(ReminderProperties, holdForManyLivesOfZonesClocksPracticesAndSilence) {
  for (unsigned seed = 1; seed <= 200; ++seed) {
    Life life(seed);
    life.live(60);
    ASSERT_FALSE(testing::Test::HasFatalFailure() || testing::Test::HasNonfatalFailure()) << "seed " << seed;
  }
}

}  // namespace
}  // namespace newel
