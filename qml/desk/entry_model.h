// The editor of the selected entry: every field of its dose and schedule, the findings of the rules, reasons.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantMap>

#include "core/review/fixes.h"
#include "qml/desk/draft_model.h"

namespace newel::desk {

class EntryModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(bool present READ present NOTIFY changed)
  Q_PROPERTY(QString entryId READ entryId NOTIFY changed)
  Q_PROPERTY(QString title READ title NOTIFY changed)
  Q_PROPERTY(QString purpose READ purpose NOTIFY changed)
  Q_PROPERTY(QString minutesWords READ minutesWords NOTIFY changed)
  Q_PROPERTY(QString problem READ problem NOTIFY changed)
  Q_PROPERTY(QVariantList doseFields READ doseFields NOTIFY changed)  // {key, label, unit, from, to, step}
  Q_PROPERTY(QVariantMap dose READ dose NOTIFY changed)               // key: value
  Q_PROPERTY(QVariantList supports READ supports NOTIFY changed)      // {value, text}
  Q_PROPERTY(int support READ support NOTIFY changed)
  Q_PROPERTY(QVariantList sidePolicies READ sidePolicies NOTIFY changed)
  Q_PROPERTY(int sidePolicy READ sidePolicy NOTIFY changed)
  Q_PROPERTY(QVariantList prosthesisUses READ prosthesisUses NOTIFY changed)
  Q_PROPERTY(int prosthesis READ prosthesis NOTIFY changed)
  Q_PROPERTY(int pacing READ pacing NOTIFY changed)
  Q_PROPERTY(bool onWeekdays READ onWeekdays NOTIFY changed)
  Q_PROPERTY(QVariantList days READ days NOTIFY changed)  // Weekday values that are chosen
  Q_PROPERTY(int timesPerWeek READ timesPerWeek NOTIFY changed)
  Q_PROPERTY(QVariantList windows READ windows NOTIFY changed)    // {from, to} as "HH:MM"
  Q_PROPERTY(QVariantList dayParts READ dayParts NOTIFY changed)  // {text, chosen}
  Q_PROPERTY(QString scheduleProblem READ scheduleProblem NOTIFY changed)
  Q_PROPERTY(QString note READ note NOTIFY changed)
  Q_PROPERTY(bool ownThresholds READ ownThresholds NOTIFY changed)
  Q_PROPERTY(int painStop READ painStop NOTIFY changed)
  Q_PROPERTY(int painRise READ painRise NOTIFY changed)
  Q_PROPERTY(QVariantList findings READ findings NOTIFY changed)  // findingList(), and "fixes": {text}
  Q_PROPERTY(QVariantMap reasons READ reasons NOTIFY changed)

 public:
  EntryModel(DraftModel& draft, const DeskContext& context, QObject* parent = nullptr);

  bool present() const { return m_draft.selectedEntry() != nullptr; }
  QString entryId() const;
  QString title() const { return m_draft.selectedTitle(); }
  QString purpose() const;
  QString minutesWords() const;
  QString problem() const;
  QVariantList doseFields() const;
  QVariantMap dose() const;
  QVariantList supports() const;
  int support() const;
  QVariantList sidePolicies() const;
  int sidePolicy() const;
  QVariantList prosthesisUses() const;
  int prosthesis() const;
  int pacing() const;
  bool onWeekdays() const;
  QVariantList days() const;
  int timesPerWeek() const;
  QVariantList windows() const;
  QVariantList dayParts() const;
  QString scheduleProblem() const;
  QString note() const;
  bool ownThresholds() const;
  int painStop() const;
  int painRise() const;
  QVariantList findings() const;
  QVariantMap reasons() const;

  Q_INVOKABLE void setDose(const QString& key, int value);
  Q_INVOKABLE void setSupport(int value);
  Q_INVOKABLE void setSidePolicy(int value);
  Q_INVOKABLE void setProsthesis(int value);
  Q_INVOKABLE void setPacing(int value);
  Q_INVOKABLE void setOnWeekdays(bool on);
  Q_INVOKABLE void toggleDay(int weekday);
  Q_INVOKABLE void setTimesPerWeek(int times);
  Q_INVOKABLE void toggleDayPart(int index);
  // "HH:MM"; what cannot be read is left as it was and scheduleProblem says so.
  Q_INVOKABLE void setWindow(int index, const QString& from, const QString& to);
  Q_INVOKABLE void setNote(const QString& note);
  Q_INVOKABLE void setOwnThresholds(bool own);
  Q_INVOKABLE void setPainStop(int value);
  Q_INVOKABLE void setPainRise(int value);
  Q_INVOKABLE void setReason(const QString& rule_id, const QString& reason);
  // One of the changes that findings offers under "fixes", as one step that can be undone.
  Q_INVOKABLE void applyFix(const QString& rule_id, int index);
  // The same days and times for every entry of the draft.
  Q_INVOKABLE void scheduleForAll();

 signals:
  void changed();

 private:
  const v1::Exercise* exercise() const;
  std::vector<Fix> fixesOf(const std::string& rule_id) const;
  QString fixWords(const Fix& fix) const;
  const v1::Entry& entry() const;  // a default one where none is selected

  DraftModel& m_draft;
  const DeskContext& m_context;
  QString m_window_problem;
};

}  // namespace newel::desk
