#include "qml/home/reminder_model.h"

#include <algorithm>

#include "core/schedule/reminder_book.h"
#include "core/time/local_day.h"
#include "qml/home/facts_for_pages.h"
#include "qml/home/phrasing.h"

namespace newel::home {
namespace {

constexpr int kMinutesADay = 24 * 60;
constexpr int kStep = 60;  // from one time that can be chosen for a window to the next

}  // namespace

ReminderModel::ReminderModel(ReminderService& service, const HomeParts& parts, QObject* parent)
    : QObject(parent), m_service(service), m_parts(parts) {
  connect(&service, &ReminderService::changed, this, &ReminderModel::changed);
}

bool ReminderModel::on() const { return m_service.settings().wanted() == v1::REMINDERS_WANTED_YES; }
bool ReminderModel::asked() const {
  return m_service.settings().wanted() != v1::REMINDERS_WANTED_UNSPECIFIED;
}
int ReminderModel::quietFrom() const { return static_cast<int>(m_service.settings().quiet_from_min()); }
int ReminderModel::quietTo() const { return static_cast<int>(m_service.settings().quiet_to_min()); }
int ReminderModel::snooze() const { return static_cast<int>(m_service.settings().snooze_min()); }

void ReminderModel::keep(const v1::ReminderSettings& settings) {
  m_error = errorWords(m_service.setSettings(settings));
  emit changed();
}

void ReminderModel::setOn(bool on) {
  v1::ReminderSettings settings = m_service.settings();
  settings.set_wanted(on ? v1::REMINDERS_WANTED_YES : v1::REMINDERS_WANTED_NO);
  keep(settings);
}

void ReminderModel::setQuietFrom(int minute) {
  v1::ReminderSettings settings = m_service.settings();
  settings.set_quiet_from_min(static_cast<std::uint32_t>(std::clamp(minute, 0, kMinutesADay - 1)));
  keep(settings);
}

void ReminderModel::setQuietTo(int minute) {
  v1::ReminderSettings settings = m_service.settings();
  settings.set_quiet_to_min(static_cast<std::uint32_t>(std::clamp(minute, 0, kMinutesADay - 1)));
  keep(settings);
}

void ReminderModel::setSnooze(int minutes) {
  v1::ReminderSettings settings = m_service.settings();
  settings.set_snooze_min(static_cast<std::uint32_t>(std::clamp(minutes, 5, 180)));
  keep(settings);
}

void ReminderModel::setTime(int window, int minute) {
  const std::vector<v1::Window> list = windowList();
  if (window < 0 || window >= static_cast<int>(list.size())) return;
  v1::ReminderSettings settings = m_service.settings();
  chooseTime(settings, list[static_cast<std::size_t>(window)], minute);
  keep(settings);
}

std::vector<v1::Window> ReminderModel::windowList() const {
  const auto programme = m_parts.engine->programme();
  return programme.has_value() ? windowsOf(*programme) : std::vector<v1::Window>();
}

QString ReminderModel::clockWords(int minute) const { return home::clockWords(minute); }

// A step on from `minute`, or `minute` where the window or a quiet hour is in the way.
int ReminderModel::nextMinute(const v1::Window& window, int minute, int step) const {
  const int next = minute + step;
  const bool inside = next >= static_cast<int>(window.from_min()) && next < static_cast<int>(window.to_min());
  return inside && !isQuiet(m_service.settings(), next) ? next : minute;
}

QVariantList ReminderModel::windows() const {
  QVariantList rows;
  for (const v1::Window& window : windowList()) {
    const std::optional<int> comes = reminderMinute(m_service.settings(), window);
    const int minute = comes.value_or(wantedMinute(m_service.settings(), window));
    const QString note = comes.has_value() ? QString() : tr("Your quiet hours cover it: no reminder here.");
    rows << QVariantMap{{"words", windowWords(window)},
                        {"minute", minute},
                        {"from", nextMinute(window, minute, -kStep)},
                        {"to", nextMinute(window, minute, kStep)},
                        {"time", home::clockWords(minute)},
                        {"note", note}};
  }
  return rows;
}

QString ReminderModel::problem() const {
  if (!on()) return QString();
  switch (m_service.permission()) {
    case platform::ReminderPermission::Refused:
      return tr(
          "This phone does not let Newel show reminders. You can allow it in the phone's own settings. "
          "What is due is always on the page for today.");
    case platform::ReminderPermission::None:
      return tr(
          "This phone has nothing that shows reminders, so none will come. What is due is always on the "
          "page for today.");
    default:
      return QString();
  }
}

QString ReminderModel::reach() const {
  if (!on() || !problem().isEmpty()) return QString();
  return m_service.comeWhenClosed()
             ? tr("They come also when the window of Newel is closed.")
             : tr("They come only while Newel is open. It may lie behind other windows.");
}

QString ReminderModel::next() const {
  if (!on() || !problem().isEmpty()) return QString();
  if (m_service.armed().empty()) return tr("No reminder is due in the coming week.");
  const ArmedReminder& first = m_service.armed().front();
  const absl::CivilDay today = todayOf(m_parts);
  const absl::TimeZone zone = zoneOf(m_parts);
  return tr("Next: %1.")
      .arg(first.day == today + 1 ? tr("tomorrow at %1").arg(timeWords(first.at, zone))
                                  : momentWords(first.at, zone, today));
}

QString ReminderModel::state() const {
  if (!on()) return tr("No reminders.");
  const QString why = problem();
  return why.isEmpty() ? next() : why;
}

}  // namespace newel::home
