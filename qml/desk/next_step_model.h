// The next step of the selected entry: its ladder, the rule by which it may be ready, and what the practices
// so far say by that rule. Only a click of the therapist changes anything. Not here: judging
// (core/progress/progression.h).
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantList>
#include <memory>
#include <optional>
#include <vector>

#include "core/progress/adherence.h"
#include "core/progress/progression.h"
#include "qml/desk/draft_model.h"

namespace newel::desk {

class NextStepModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  // {value, text}: the ladder from its lowest step; empty where the exercise has none.
  Q_PROPERTY(QVariantList rungs READ rungs NOTIFY changed)
  Q_PROPERTY(QString rung READ rung NOTIFY changed)  // id; empty: off the ladder
  // {value, text} of each preset, first "none"; "own" where the rule is none of them.
  Q_PROPERTY(QVariantList presets READ presets NOTIFY changed)
  Q_PROPERTY(QString preset READ preset NOTIFY changed)
  Q_PROPERTY(QString ruleWords READ ruleWords NOTIFY changed)  // the rule in a sentence
  Q_PROPERTY(QVariantList fields READ fields NOTIFY changed)   // {key, label, from, to}
  Q_PROPERTY(QVariantMap values READ values NOTIFY changed)    // key: value
  Q_PROPERTY(bool nothingMissed READ nothingMissed NOTIFY changed)
  // By the rule of the programme that counts now, not of the draft.
  Q_PROPERTY(int advice READ advice NOTIFY changed)  // Advice; 0 where nobody asked
  Q_PROPERTY(QString adviceWords READ adviceWords NOTIFY changed)
  Q_PROPERTY(QVariantList evidence READ evidence NOTIFY changed)  // {good, words}
  Q_PROPERTY(QString stepWords READ stepWords NOTIFY changed)  // what the one click would do; empty: nothing

 public:
  NextStepModel(DraftModel& draft, const DeskContext& context, QObject* parent = nullptr);

  QVariantList rungs() const;
  QString rung() const;
  QVariantList presets() const;
  QString preset() const;
  QString ruleWords() const;
  QVariantList fields() const;
  QVariantMap values() const;
  bool nothingMissed() const;
  int advice() const { return static_cast<int>(m_advice.advice); }
  QString adviceWords() const;
  QVariantList evidence() const;
  QString stepWords() const;

  Q_INVOKABLE void setRung(const QString& rung_id);
  Q_INVOKABLE void setPreset(const QString& preset_id);  // "none" takes the rule away
  Q_INVOKABLE void setField(const QString& key, int value);
  Q_INVOKABLE void setNothingMissed(bool nothing);
  Q_INVOKABLE void takeStep();  // the ladder's next step up when ready, down when it was too hard

 signals:
  void changed();

 private:
  void refresh();
  const v1::Exercise* exercise() const;
  std::optional<v1::Entry> step() const;  // where takeStep() leads; nullopt: nowhere

  DraftModel& m_draft;
  const DeskContext& m_context;
  ProgressionAdvice m_advice;
  std::string m_judged_entry;                 // whose advice it is
  const PersonFile* m_judged_file = nullptr;  // and from which file
};

}  // namespace newel::desk
