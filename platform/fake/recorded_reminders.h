// Reminders that show nothing: they remember what was armed, and a test shows and answers them.
#pragma once

#include <algorithm>
#include <set>

#include "platform/reminders.h"

namespace newel::platform {

class RecordedReminders : public Reminders {
 public:
  void setListener(ReminderListener* listener) override { m_listener = listener; }
  ReminderPermission permission() const override { return m_permission; }
  void ask() override {
    ++m_asked;
    if (m_permission == ReminderPermission::Asking) setPermission(m_answer);
  }
  void arm(const std::vector<Reminder>& reminders, const ReminderWords& words) override {
    m_armed = reminders;
    m_words = words;
    ++m_arms;
  }
  void clear(const std::string& id) override {
    std::erase_if(m_armed, [&id](const Reminder& reminder) { return reminder.id == id; });
    m_on_screen.erase(id);
  }
  void clearAll() override {
    m_armed.clear();
    m_on_screen.clear();
  }
  bool comeWhenClosed() const override { return false; }

  // For tests: the system's side.
  void answerAskingWith(ReminderPermission answer) { m_answer = answer; }
  void setPermission(ReminderPermission permission) {
    m_permission = permission;
    if (m_listener != nullptr) m_listener->reminderPermissionChanged();
  }
  // Shows every reminder whose time has come; the number of them.
  int showUntil(absl::Time now) {
    int shown = 0;
    while (!m_armed.empty() && m_armed.front().at <= now) {
      const Reminder due = m_armed.front();
      m_armed.erase(m_armed.begin());
      m_on_screen.insert(due.id);
      ++shown;
      if (m_listener != nullptr) m_listener->reminderShown(due.id, now);
    }
    return shown;
  }
  void open(const std::string& id) {
    m_on_screen.erase(id);
    m_listener->reminderOpened(id);
  }
  void later(const std::string& id) {
    m_on_screen.erase(id);
    m_listener->reminderLater(id);
  }
  void dismiss(const std::string& id) {
    m_on_screen.erase(id);
    m_listener->reminderDismissed(id);
  }
  void changeClockOrZone() { m_listener->clockOrZoneChanged(); }

  const std::vector<Reminder>& armed() const { return m_armed; }
  const std::set<std::string>& onScreen() const { return m_on_screen; }
  const ReminderWords& words() const { return m_words; }
  int asked() const { return m_asked; }
  int arms() const { return m_arms; }

 private:
  ReminderListener* m_listener = nullptr;
  ReminderPermission m_permission = ReminderPermission::Asking;
  ReminderPermission m_answer = ReminderPermission::Granted;
  std::vector<Reminder> m_armed;
  std::set<std::string> m_on_screen;
  ReminderWords m_words;
  int m_asked = 0;
  int m_arms = 0;
};

}  // namespace newel::platform
