#include "core/schedule/reminders.h"

#include <algorithm>
#include <map>
#include <utility>

#include "core/records/check.h"
#include "core/schedule/occasions.h"
#include "core/schedule/reminder_book.h"
#include "core/time/local_day.h"

namespace newel {
namespace {

// A reminder shown by a clock that was further ahead than this does not count as shown: that day is to come.
// Ours, no source.
constexpr absl::Duration kClockWasWrong = absl::Hours(24);

using Minutes = std::pair<std::uint32_t, std::uint32_t>;  // of a window
Minutes minutesOf(const v1::Window& window) { return {window.from_min(), window.to_min()}; }

std::string fourDigits(std::uint32_t minutes) {
  std::string digits = std::to_string(minutes);
  return std::string(4 - std::min<std::size_t>(4, digits.size()), '0') + digits;
}

std::string idOf(absl::CivilDay day, const v1::Window& window) {
  return formatLocalDay(day) + "/" + fourDigits(window.from_min()) + "-" + fourDigits(window.to_min());
}

// Windows of one day whose reminders come together.
struct Group {
  v1::Window window;  // the first
  absl::Time at;
  absl::Time open_until;  // the last end among them
};

class List {
 public:
  explicit List(const ReminderInput& input)
      : m_input(input),
        m_settings(input.book.settings()),
        m_today(localDayAt(input.now, input.zone)),
        m_unanswered(unansweredInARow(input.book)) {
    for (const v1::ReminderShown& shown : input.book.shown()) {
      if (toTime(shown.at()) > input.now + kClockWasWrong) continue;
      m_shown.insert({shown.id(), &shown});
    }
    // A phone whose clock was ahead when it was last opened has not been opened in the future.
    if (input.book.has_opened_at()) m_settled = std::min(toTime(input.book.opened_at()), input.now);
  }

  // Whether something due on `day` is among what a reminder at `at` was for.
  bool remindsOfAnything(absl::CivilDay day, absl::Time at) const {
    const auto windows = windowsDue(day);
    return std::any_of(windows.begin(), windows.end(), [&](const auto& window) {
      const auto instant = instantFor(day, window.second);
      return instant.has_value() && *instant < at + kRemindersTogether;
    });
  }

  std::vector<ArmedReminder> make() {
    for (int ahead = 0; ahead <= kReminderDays; ++ahead) addDay(m_today + ahead);
    std::stable_sort(m_list.begin(), m_list.end(),
                     [](const auto& left, const auto& right) { return left.at < right.at; });
    thin();
    return std::move(m_list);
  }

 private:
  bool wasShown(const std::string& id) const { return m_shown.contains(id); }

  bool isHeld(const std::string& entry_id) const {
    const auto& held = m_input.held_entry_ids;
    return std::find(held.begin(), held.end(), entry_id) != held.end();
  }

  // A times-a-week entry is due every day until done that often; that is no reason to remind every day.
  bool isDayFor(const Occasion& occasion, absl::CivilDay day) const {
    if (!occasion.any_day_of_week) return true;
    const auto& entries = m_input.programme->entries();
    const auto entry = std::find_if(entries.begin(), entries.end(), [&occasion](const v1::Entry& each) {
      return each.id() == occasion.ref.entry_id();
    });
    if (entry == entries.end()) return false;
    const int asked = static_cast<int>(entry->schedule().times_per_week());
    const std::vector<v1::Weekday> spread = spreadOverWeek(asked);
    if (std::find(spread.begin(), spread.end(), weekdayOf(day)) != spread.end()) return true;
    const absl::CivilDay monday = mondayOf(day);
    const auto done =
        std::count_if(m_input.done.begin(), m_input.done.end(), [&](const v1::OccasionRef& ref) {
          return ref.entry_id() == entry->id() && ref.window() == occasion.ref.window() &&
                 ref.local_day() >= formatLocalDay(monday) && ref.local_day() <= formatLocalDay(monday + 6);
        });
    return asked - done >= monday + 7 - day;
  }

  std::map<Minutes, v1::Window> windowsDue(absl::CivilDay day) const {
    std::map<Minutes, v1::Window> windows;
    if (m_input.practice_from.has_value() && day < *m_input.practice_from) return windows;
    for (const Occasion& occasion : dueOn(*m_input.programme, day, m_input.done)) {
      if (isHeld(occasion.ref.entry_id()) || !isDayFor(occasion, day)) continue;
      windows.insert({minutesOf(occasion.window), occasion.window});
    }
    return windows;
  }

  // nullopt: the quiet hours cover it, or the zone has no such day.
  std::optional<absl::Time> instantFor(absl::CivilDay day, const v1::Window& window) const {
    const absl::TimeZone zone = m_input.zone;
    const absl::Time at = instantOf(absl::CivilMinute(day) + wantedMinute(m_settings, window), zone);
    if (localDayAt(at, zone) != day) return std::nullopt;
    if (!isQuiet(m_settings, minuteOfDayAt(at, zone))) return at;
    const absl::Time end = instantOf(absl::CivilMinute(day) + m_settings.quiet_to_min(), zone);
    const int minute = minuteOfDayAt(end, zone);
    const bool on_time = end >= at && localDayAt(end, zone) == day &&
                         minute < static_cast<int>(window.to_min()) && !isQuiet(m_settings, minute);
    return on_time ? std::optional(end) : std::nullopt;
  }

  std::vector<Group> groupsOf(absl::CivilDay day, const std::map<Minutes, v1::Window>& windows) const {
    std::vector<Group> groups;
    for (const auto& [minutes, window] : windows) {
      const auto at = instantFor(day, window);
      if (!at.has_value()) continue;
      groups.push_back({window, *at, instantOf(absl::CivilMinute(day) + window.to_min(), m_input.zone)});
    }
    std::stable_sort(groups.begin(), groups.end(),
                     [](const Group& left, const Group& right) { return left.at < right.at; });
    std::vector<Group> together;
    for (const Group& group : groups) {
      if (!together.empty() && group.at < together.back().at + kRemindersTogether) {
        together.back().open_until = std::max(together.back().open_until, group.open_until);
      } else {
        together.push_back(group);
      }
    }
    return together;
  }

  // When to show what should have come at `at`; nullopt: it is over.
  std::optional<absl::Time> stillToCome(absl::Time at, absl::Time open_until) const {
    if (at >= m_input.now) return at;
    const bool late_is_useful = at > m_settled && m_input.now < open_until &&
                                !isQuiet(m_settings, minuteOfDayAt(m_input.now, m_input.zone));
    return late_is_useful ? std::optional(m_input.now) : std::nullopt;
  }

  void addDay(absl::CivilDay day) {
    const auto windows = windowsDue(day);
    if (windows.empty()) return;
    if (day == m_today) addLater();
    bool late = false;
    for (const Group& group : groupsOf(day, windows)) {
      ArmedReminder reminder;
      reminder.id = idOf(day, group.window);
      if (wasShown(reminder.id)) continue;
      const auto at = stillToCome(group.at, group.open_until);
      if (!at.has_value() || *at > m_input.now + absl::Hours(24 * kReminderDays)) continue;
      // All that was missed comes as one.
      if (*at != group.at && std::exchange(late, true)) continue;
      reminder.at = *at;
      reminder.day = day;
      reminder.window = group.window;
      m_list.push_back(std::move(reminder));
    }
  }

  // Asked for by the person, so it comes also when the window it was for has ended, but on that day alone.
  void addLater() {
    const absl::Time midnight = instantOf(absl::CivilMinute(m_today + 1), m_input.zone);
    for (const auto& [id, shown] : m_shown) {
      if (shown->answer() != v1::REMINDER_ANSWER_LATER || shown->local_day() != formatLocalDay(m_today))
        continue;
      ArmedReminder reminder;
      reminder.id = id + "+";
      if (wasShown(reminder.id)) continue;
      const auto at =
          stillToCome(toTime(shown->answered_at()) + absl::Minutes(m_settings.snooze_min()), midnight);
      if (!at.has_value() || localDayAt(*at, m_input.zone) != m_today ||
          isQuiet(m_settings, minuteOfDayAt(*at, m_input.zone)))
        continue;
      reminder.at = *at;
      reminder.day = m_today;
      reminder.kind = ReminderKind::Later;
      m_list.push_back(std::move(reminder));
    }
  }

  // At most so many a day; and one a day once three in a row went unanswered.
  void thin() {
    std::map<std::string, int> of_day;
    for (const auto& [id, shown] : m_shown) {
      if (!id.ends_with('+')) ++of_day[shown->local_day()];
    }
    std::vector<ArmedReminder> kept;
    for (ArmedReminder& reminder : m_list) {
      if (static_cast<int>(kept.size()) == kMostReminders) break;
      int& count = of_day[formatLocalDay(reminder.day)];
      if (reminder.kind != ReminderKind::Later) {
        const bool one_a_day = m_unanswered >= kUnansweredBecomeOne;
        if (count >= (one_a_day ? 1 : kMostRemindersADay)) continue;
        if (one_a_day) reminder.kind = ReminderKind::Daily;
        ++count;
      }
      ++m_unanswered;
      kept.push_back(std::move(reminder));
    }
    m_list = std::move(kept);
  }

  const ReminderInput& m_input;
  const v1::ReminderSettings& m_settings;
  const absl::CivilDay m_today;
  std::map<std::string, const v1::ReminderShown*> m_shown;
  absl::Time m_settled = absl::InfinitePast();
  int m_unanswered;
  std::vector<ArmedReminder> m_list;
};

bool mayRemind(const ReminderInput& input) {
  return input.book.settings().wanted() == v1::REMINDERS_WANTED_YES && input.programme != nullptr &&
         !input.held_all && !input.stopped && check(*input.programme).ok();
}

}  // namespace

std::vector<ArmedReminder> armedReminders(const ReminderInput& input) {
  return mayRemind(input) ? List(input).make() : std::vector<ArmedReminder>();
}

std::vector<std::string> remindersToClear(const ReminderInput& input) {
  std::vector<std::string> ids;
  const absl::CivilDay today = localDayAt(input.now, input.zone);
  const bool may = mayRemind(input);
  for (const v1::ReminderShown& shown : input.book.shown()) {
    if (shown.answer() != v1::REMINDER_ANSWER_UNSPECIFIED) continue;
    const bool still = may && shown.local_day() == formatLocalDay(today) &&
                       List(input).remindsOfAnything(today, toTime(shown.at()));
    if (!still) ids.push_back(shown.id());
  }
  return ids;
}

bool isQuiet(const v1::ReminderSettings& settings, int minute_of_day) {
  const int from = static_cast<int>(settings.quiet_from_min());
  const int to = static_cast<int>(settings.quiet_to_min());
  if (from == to) return false;
  if (from < to) return minute_of_day >= from && minute_of_day < to;
  return minute_of_day >= from || minute_of_day < to;
}

std::vector<v1::Window> windowsOf(const v1::Programme& programme) {
  std::map<Minutes, v1::Window> windows;
  for (const v1::Entry& entry : programme.entries()) {
    for (const v1::Window& window : entry.schedule().windows()) windows.insert({minutesOf(window), window});
  }
  std::vector<v1::Window> list;
  list.reserve(windows.size());
  for (const auto& [minutes, window] : windows) list.push_back(window);
  return list;
}

int wantedMinute(const v1::ReminderSettings& settings, const v1::Window& window) {
  for (const v1::ReminderTime& time : settings.times()) {
    if (minutesOf(time.window()) == minutesOf(window)) return static_cast<int>(time.at_min());
  }
  return static_cast<int>(window.from_min());
}

std::optional<int> reminderMinute(const v1::ReminderSettings& settings, const v1::Window& window) {
  const int wanted = wantedMinute(settings, window);
  if (!isQuiet(settings, wanted)) return wanted;
  const int end = static_cast<int>(settings.quiet_to_min());
  if (end < wanted || end >= static_cast<int>(window.to_min())) return std::nullopt;
  return end;
}

}  // namespace newel
