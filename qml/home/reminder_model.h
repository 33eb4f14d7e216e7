// The page of reminders: whether, when, and what this phone can do. Reads and sets through the service.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantList>

#include "qml/home/reminder_service.h"

namespace newel::home {

class ReminderModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made in main")
  Q_PROPERTY(bool on READ on WRITE setOn NOTIFY changed)
  Q_PROPERTY(bool asked READ asked NOTIFY changed)         // the person has said yes or no
  Q_PROPERTY(QString problem READ problem NOTIFY changed)  // why none can be shown though wanted; empty: fine
  Q_PROPERTY(QString reach READ reach NOTIFY changed)      // when they come and when not
  Q_PROPERTY(QString next READ next NOTIFY changed)        // the next one, in words
  Q_PROPERTY(QString state READ state NOTIFY changed)      // one line for the settings
  // Maps "words" ("from 08:00 to 12:00"), "minute", "from", "to" (last minute that can be chosen), "time"
  // (the minute in words), "note" (why it comes at another time or not at all).
  Q_PROPERTY(QVariantList windows READ windows NOTIFY changed)
  Q_PROPERTY(int quietFrom READ quietFrom WRITE setQuietFrom NOTIFY changed)  // minutes of the day
  Q_PROPERTY(int quietTo READ quietTo WRITE setQuietTo NOTIFY changed)
  Q_PROPERTY(int snooze READ snooze WRITE setSnooze NOTIFY changed)  // minutes
  Q_PROPERTY(QString error READ error NOTIFY changed)

 public:
  ReminderModel(ReminderService& service, const HomeParts& parts, QObject* parent = nullptr);

  bool on() const;
  void setOn(bool on);
  bool asked() const;
  QString problem() const;
  QString reach() const;
  QString next() const;
  QString state() const;
  QVariantList windows() const;
  int quietFrom() const;
  void setQuietFrom(int minute);
  int quietTo() const;
  void setQuietTo(int minute);
  int snooze() const;
  void setSnooze(int minutes);
  QString error() const { return m_error; }

  Q_INVOKABLE void setTime(int window, int minute);
  // Of the day, by the person's locale: "18:30".
  Q_INVOKABLE QString clockWords(int minute) const;

 signals:
  void changed();

 private:
  void keep(const v1::ReminderSettings& settings);
  std::vector<v1::Window> windowList() const;
  int nextMinute(const v1::Window& window, int minute, int step) const;

  ReminderService& m_service;
  const HomeParts& m_parts;
  QString m_error;
};

}  // namespace newel::home
