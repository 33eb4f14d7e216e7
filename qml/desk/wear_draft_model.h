// The wear plan in the draft: where it starts from, its steps, what ends it, and whether it goes on as the
// last one. What a plan means is core/schedule's; undo is the draft's.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QStringList>
#include <QtCore/QVariantList>

#include "core/schedule/wear_library.h"
#include "qml/desk/draft_model.h"

namespace newel::desk {

class WearDraftModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(bool planned READ planned NOTIFY changed)
  // Schedules to begin from: {id, name, when, sources}.
  Q_PROPERTY(QVariantList examples READ examples CONSTANT)
  // {days, blocks, minutes, allDay, activity, words, first}; first: the plan begins here.
  Q_PROPERTY(QVariantList steps READ steps NOTIFY changed)
  Q_PROPERTY(int offMinutes READ offMinutes NOTIFY changed)
  Q_PROPERTY(int rednessMinutes READ rednessMinutes NOTIFY changed)
  Q_PROPERTY(bool staysOff READ staysOff NOTIFY changed)  // when redness outlasts the minutes
  Q_PROPERTY(QString note READ note NOTIFY changed)
  Q_PROPERTY(QString state READ state NOTIFY changed)        // new, as before, changed: in words
  Q_PROPERTY(QStringList published READ published CONSTANT)  // what is published about redness
  // Outcome measures: {id, name, byDay}; byDay empty: not asked for.
  Q_PROPERTY(QVariantList measures READ measures NOTIFY changed)

 public:
  WearDraftModel(DeskContext& context, DraftModel& draft, QObject* parent = nullptr);

  bool planned() const;
  QVariantList examples() const;
  QVariantList steps() const;
  int offMinutes() const;
  int rednessMinutes() const;
  bool staysOff() const;
  QString note() const;
  QString state() const;
  QStringList published() const;
  QVariantList measures() const;

  Q_INVOKABLE void startFrom(const QString& example_id);
  Q_INVOKABLE void clear();
  Q_INVOKABLE void setDays(int step, int days);
  Q_INVOKABLE void setBlocks(int step, int blocks);
  Q_INVOKABLE void setMinutes(int step, int minutes);
  Q_INVOKABLE void setActivity(int step, const QString& words);
  Q_INVOKABLE void beginAt(int step);
  Q_INVOKABLE void removeStep(int step);
  Q_INVOKABLE void repeatStep(int step);  // the same once more behind it
  Q_INVOKABLE void setOffMinutes(int minutes);
  Q_INVOKABLE void setRednessMinutes(int minutes);
  Q_INVOKABLE void setStaysOff(bool stays);
  Q_INVOKABLE void setNote(const QString& note);
  // Asked for by the last day of the programme; once more: not.
  Q_INVOKABLE void toggleMeasure(const QString& kind);

 signals:
  void changed();

 private:
  const v1::WearPlan& plan() const { return m_draft.programme().wear_plan(); }
  void edit(const std::string& key, const std::function<void(v1::WearPlan&)>& change);
  void editStep(int step, const std::string& key, const std::function<void(v1::WearStep&)>& change);

  DeskContext& m_context;
  DraftModel& m_draft;
};

}  // namespace newel::desk
