// Reminders through the desktop's notification service. See platform/reminders.h.
#pragma once

#include <QtCore/QFileSystemWatcher>
#include <QtCore/QObject>
#include <QtCore/QStringList>
#include <QtDBus/QDBusPendingCallWatcher>
#include <QtDBus/QDBusServiceWatcher>
#include <map>

#include "platform/linux/wall_alarm.h"
#include "platform/reminders.h"

namespace newel::platform {

class DbusReminders : public QObject, public Reminders {
  Q_OBJECT

 public:
  DbusReminders(const Clock& clock, const std::string& program, const std::string& zone_file);
  ~DbusReminders() override;

  void setListener(ReminderListener* listener) override { m_listener = listener; }
  ReminderPermission permission() const override { return m_permission; }
  void ask() override;
  void arm(const std::vector<Reminder>& reminders, const ReminderWords& words) override;
  void clear(const std::string& id) override;
  void clearAll() override;
  bool comeWhenClosed() const override { return false; }

 private slots:
  void actionInvoked(quint32 number, const QString& action);
  void notificationClosed(quint32 number, quint32 reason);

 private:
  void waitForNext();
  void showDue();
  void show(const Reminder& reminder);
  void shown(const std::string& id, QDBusPendingCallWatcher* call);
  void takeOff(quint32 number);
  void setPermission(ReminderPermission permission);
  void lookForZone();
  void tellClockOrZone();
  std::string idOf(quint32 number) const;

  const Clock& m_clock;
  const QString m_program;
  const QString m_zone_file;
  QString m_zone;  // as last seen
  ReminderListener* m_listener = nullptr;
  ReminderPermission m_permission = ReminderPermission::Asking;
  QStringList m_capabilities;
  std::vector<Reminder> m_armed;
  ReminderWords m_words;
  std::map<std::string, quint32> m_on_screen;  // 0: sent, and not answered yet
  WallAlarm m_alarm;
  QFileSystemWatcher m_zone_watch;
  QDBusServiceWatcher m_service_watch;
};

}  // namespace newel::platform
