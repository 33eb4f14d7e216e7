// When the selected entry is due: days, times a week, parts of the day, times.
#include <QtCore/QRegularExpression>
#include <algorithm>
#include <optional>

#include "core/records/check.h"
#include "qml/desk/entry_model.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

// Parts of a day to start from; the times can be changed. Source: common practice, no source.
struct DayPart {
  const char* text;
  std::uint32_t from;
  std::uint32_t to;
};
constexpr DayPart kDayParts[] = {{QT_TRANSLATE_NOOP("newel::desk::EntryModel", "Any time"), 0, 1440},
                                 {QT_TRANSLATE_NOOP("newel::desk::EntryModel", "Morning"), 360, 720},
                                 {QT_TRANSLATE_NOOP("newel::desk::EntryModel", "Afternoon"), 720, 1080},
                                 {QT_TRANSLATE_NOOP("newel::desk::EntryModel", "Evening"), 1080, 1320}};

bool is(const v1::Window& window, const DayPart& part) {
  return window.from_min() == part.from && window.to_min() == part.to;
}

QString clockTime(std::uint32_t minutes) {
  return QStringLiteral("%1:%2")
      .arg(minutes / 60, 2, 10, QLatin1Char('0'))
      .arg(minutes % 60, 2, 10, QLatin1Char('0'));
}

std::optional<std::uint32_t> minutesOf(const QString& typed) {
  static const QRegularExpression kTime(QStringLiteral("^\\s*(\\d{1,2})(?:[:.](\\d{2}))?\\s*$"));
  const auto match = kTime.match(typed);
  if (!match.hasMatch()) return std::nullopt;
  const std::uint32_t minutes = match.captured(1).toUInt() * 60 + match.captured(2).toUInt();
  if (match.captured(2).toUInt() > 59 || minutes > 1440) return std::nullopt;
  return minutes;
}

void sortWindows(v1::Schedule& schedule) {
  std::sort(
      schedule.mutable_windows()->begin(), schedule.mutable_windows()->end(),
      [](const v1::Window& left, const v1::Window& right) { return left.from_min() < right.from_min(); });
}

}  // namespace

bool EntryModel::onWeekdays() const {
  return entry().schedule().rhythm_case() != v1::Schedule::kTimesPerWeek;
}

QVariantList EntryModel::days() const {
  QVariantList list;
  for (const int day : entry().schedule().weekdays().days()) list << day;
  return list;
}

int EntryModel::timesPerWeek() const { return static_cast<int>(entry().schedule().times_per_week()); }

void EntryModel::setOnWeekdays(bool on) {
  if (on == onWeekdays()) return;
  m_draft.editSelected("", [on](v1::Entry& entry) {
    v1::Schedule& schedule = *entry.mutable_schedule();
    if (on) {
      for (const auto day : {v1::WEEKDAY_MONDAY, v1::WEEKDAY_WEDNESDAY, v1::WEEKDAY_FRIDAY}) {
        schedule.mutable_weekdays()->add_days(day);
      }
    } else {
      schedule.set_times_per_week(static_cast<std::uint32_t>(std::max(1, schedule.weekdays().days_size())));
    }
  });
}

void EntryModel::toggleDay(int weekday) {
  const auto& chosen = entry().schedule().weekdays().days();
  const bool there = std::find(chosen.begin(), chosen.end(), weekday) != chosen.end();
  if (there && chosen.size() == 1) {
    m_window_problem = tr("One day at least.");
    emit changed();
    return;
  }
  m_window_problem.clear();
  m_draft.editSelected("", [weekday, there](v1::Entry& entry) {
    auto& days = *entry.mutable_schedule()->mutable_weekdays()->mutable_days();
    if (there) {
      days.erase(std::remove(days.begin(), days.end(), weekday), days.end());
    } else {
      days.Add(weekday);
      std::sort(days.begin(), days.end());
    }
  });
}

void EntryModel::setTimesPerWeek(int times) {
  m_draft.editSelected("times", [times](v1::Entry& entry) {
    entry.mutable_schedule()->set_times_per_week(static_cast<std::uint32_t>(times));
  });
}

QVariantList EntryModel::windows() const {
  QVariantList list;
  for (const auto& window : entry().schedule().windows()) {
    list << QVariantMap{{QStringLiteral("from"), clockTime(window.from_min())},
                        {QStringLiteral("to"), clockTime(window.to_min())}};
  }
  return list;
}

QVariantList EntryModel::dayParts() const {
  QVariantList list;
  for (const DayPart& part : kDayParts) {
    const auto& windows = entry().schedule().windows();
    const bool chosen = std::any_of(windows.begin(), windows.end(),
                                    [&part](const v1::Window& window) { return is(window, part); });
    list << QVariantMap{{QStringLiteral("text"), tr(part.text)}, {QStringLiteral("chosen"), chosen}};
  }
  return list;
}

void EntryModel::toggleDayPart(int index) {
  if (index < 0 || index >= static_cast<int>(std::size(kDayParts))) return;
  const DayPart& part = kDayParts[index];
  v1::Schedule schedule = entry().schedule();
  auto& windows = *schedule.mutable_windows();
  const auto found = std::find_if(windows.begin(), windows.end(),
                                  [&part](const v1::Window& window) { return is(window, part); });
  if (found != windows.end()) {
    if (windows.size() > 1) windows.erase(found);
  } else {
    // A part of the day takes the place of what it overlaps, "any time" above all.
    windows.erase(std::remove_if(windows.begin(), windows.end(),
                                 [&part](const v1::Window& window) {
                                   return window.from_min() < part.to && window.to_min() > part.from;
                                 }),
                  windows.end());
    auto& added = *windows.Add();
    added.set_from_min(part.from);
    added.set_to_min(part.to);
    sortWindows(schedule);
  }
  m_window_problem.clear();
  m_draft.editSelected("", [&schedule](v1::Entry& entry) { *entry.mutable_schedule() = schedule; });
}

void EntryModel::setWindow(int index, const QString& from, const QString& to) {
  if (index < 0 || index >= entry().schedule().windows_size()) return;
  const auto first = minutesOf(from);
  const auto last = minutesOf(to);
  v1::Schedule schedule = entry().schedule();
  m_window_problem.clear();
  if (!first || !last) {
    m_window_problem = tr("Type times as 07:30. What is shown above is what counts.");
  } else {
    schedule.mutable_windows(index)->set_from_min(*first);
    schedule.mutable_windows(index)->set_to_min(*last);
    sortWindows(schedule);
    if (!check(schedule).ok()) m_window_problem = tr("Times must follow one another and not overlap.");
  }
  if (!m_window_problem.isEmpty()) {
    emit changed();
    return;
  }
  if (schedule.windows(index).from_min() == entry().schedule().windows(index).from_min() &&
      schedule.windows(index).to_min() == entry().schedule().windows(index).to_min()) {
    emit changed();
    return;
  }
  m_draft.editSelected("", [&schedule](v1::Entry& entry) { *entry.mutable_schedule() = schedule; });
}

QString EntryModel::scheduleProblem() const { return m_window_problem; }

void EntryModel::scheduleForAll() {
  if (!present()) return;
  m_draft.scheduleForAll(entry().schedule());
}

}  // namespace newel::desk
