// The first page: what is due, what stands in the way, what waits to be sent. Reads core/schedule and the
// engine; decides nothing.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QTimer>
#include <QtCore/QVariantList>

#include "core/schedule/occasions.h"
#include "qml/home/engine_bridge.h"
#include "qml/home/practice_session.h"
#include "qml/home/settings_model.h"

namespace newel::home {

class TodayModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made in main")
  Q_PROPERTY(QString day READ day NOTIFY changed)
  Q_PROPERTY(QString heading READ heading NOTIFY changed)  // "3 to do, 22 minutes"
  // From the bottom of the rail up, done ones first: maps "title", "words", "minutes", "done", "held".
  Q_PROPERTY(QVariantList rows READ rows NOTIFY changed)
  Q_PROPERTY(int at READ at NOTIFY changed)  // rows done, where the hand is
  Q_PROPERTY(int dueCount READ dueCount NOTIFY changed)
  Q_PROPERTY(bool mayStart READ mayStart NOTIFY changed)
  Q_PROPERTY(QString whyNot READ whyNot NOTIFY changed)  // why not, in words, where there is something due
  Q_PROPERTY(QString error READ error NOTIFY changed)
  // Orders and messages, most urgent first: maps "kind" (Notice.Kind), "title", "words", "id", "mustRead"
  // and, where the phone may be connected anew, "newCode". What is wrong with the contact comes before
  // messages.
  Q_PROPERTY(QVariantList notices READ notices NOTIFY changed)
  Q_PROPERTY(QStringList things READ things NOTIFY changed)  // to have ready for what is due, each once
  Q_PROPERTY(QString contact READ contact NOTIFY changed)
  Q_PROPERTY(bool hasProgramme READ hasProgramme NOTIFY changed)
  // A practice that was cut off.
  Q_PROPERTY(bool unfinished READ unfinished NOTIFY changed)
  Q_PROPERTY(QString unfinishedWords READ unfinishedWords NOTIFY changed)

 public:
  TodayModel(PracticeSession& session, EngineBridge& bridge, SettingsModel& settings, const HomeParts& parts,
             QObject* parent = nullptr);

  QString day() const;
  QString heading() const;
  QVariantList rows() const { return m_rows; }
  int at() const { return m_at; }
  int dueCount() const { return static_cast<int>(m_due.size()); }
  bool mayStart() const;
  QString whyNot() const;
  QString error() const { return m_error; }
  QVariantList notices() const { return m_notices; }
  QStringList things() const { return m_things; }
  QString contact() const;
  bool hasProgramme() const { return m_has_programme; }
  bool unfinished() const { return !m_unfinished_words.isEmpty(); }
  QString unfinishedWords() const { return m_unfinished_words; }

  Q_INVOKABLE void start();
  // The person has read this message.
  Q_INVOKABLE void markRead(const QString& id);
  Q_INVOKABLE void goOn();     // the unfinished practice
  Q_INVOKABLE void closeIt();  // ends it as interrupted: what was done counts
  // Everything anew from the engine; also on its news.
  Q_INVOKABLE void refresh();
  // The notices are in front of the person: orders count as seen. Messages count only when read.
  Q_INVOKABLE void shown();

 signals:
  void changed();

 private:
  void findDue();
  void findNotices();
  void findUnfinished();
  void waitForMidnight();
  QVariantMap rowOf(const v1::Entry& entry, bool done, bool held) const;
  QString nothingDueWords() const;
  static QString withMedia(const v1::Message& message);

  PracticeSession& m_session;
  SettingsModel& m_settings;
  const HomeParts& m_parts;
  QTimer m_midnight;            // another local day, another list
  std::vector<Occasion> m_due;  // those that may be practised now
  QVariantList m_rows;
  QVariantList m_notices;
  QStringList m_things;
  QString m_unfinished_words;
  QString m_error;
  QString m_nothing_words;
  std::int64_t m_total_ms = 0;
  int m_at = 0;
  bool m_has_programme = false;
  bool m_must_read = false;
  bool m_all_held = false;
  bool m_keep_off = false;
  QString m_stop_words;  // a stop that still stands
};

}  // namespace newel::home
