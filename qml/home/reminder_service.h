// Keeps the reminders of this phone right: made anew at start, after each contact with the clinic, after a
// practice, when the person changes anything, and when clock or zone do; what became of each is kept in the
// phone's store. Decides nothing: core/schedule/reminders.h does. Nothing comes while a practice runs.
// UI thread only.
#pragma once

#include <QtCore/QObject>
#include <QtCore/QTimer>

#include "core/schedule/reminders.h"
#include "qml/home/engine_bridge.h"
#include "qml/home/home_parts.h"
#include "qml/home/practice_session.h"

namespace newel::home {

class ReminderService : public QObject, public platform::ReminderListener {
  Q_OBJECT

 public:
  // All outlive this; parts.reminders may be nullptr, where the system has none.
  ReminderService(PracticeSession& session, EngineBridge& bridge, const HomeParts& parts,
                  QObject* parent = nullptr);
  ~ReminderService() override;

  const v1::ReminderSettings& settings() const { return m_book.settings(); }
  // Kept, then in force. The status is the store's; on an error nothing is changed.
  absl::Status setSettings(const v1::ReminderSettings& settings);
  platform::ReminderPermission permission() const;
  // Whether they come though the window is closed: by the system, or because this program stays and is
  // started again after each log-in.
  bool comeWhenClosed() const;
  const std::vector<ArmedReminder>& armed() const { return m_armed; }

  // Newel is in front of the person.
  void opened();
  // Everything anew, now; on news it comes by itself a moment later.
  void rebuild();

  // From the system.
  void reminderShown(const std::string& id, absl::Time at) override;
  void reminderOpened(const std::string& id) override;
  void reminderLater(const std::string& id) override;
  void reminderDismissed(const std::string& id) override;
  void reminderPermissionChanged() override;
  void clockOrZoneChanged() override;

 signals:
  void changed();
  void openAsked();  // a reminder was pressed: Newel comes to the front
  void clockChanged();

 private:
  ReminderInput input() const;
  void load();
  void keep();
  void answered(const std::string& id, v1::ReminderAnswer answer);
  void practiceMoved();
  void setStay(bool stay);

  PracticeSession& m_session;
  const EngineBridge& m_bridge;
  const HomeParts& m_parts;
  v1::ReminderBook m_book;
  bool m_unkept = false;  // the store could not take the last change: this copy is the better one
  std::optional<v1::Programme> m_programme;
  std::vector<ArmedReminder> m_armed;
  QTimer m_soon;
  bool m_practising = false;
  std::optional<bool> m_stay_asked;  // what the system was last told about staying
  bool m_stays = false;
};

}  // namespace newel::home
