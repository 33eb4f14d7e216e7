// The way from a new phone to the first day: one thing a page, in this order. Where it is, is kept at once,
// so that who leaves in the middle goes on there; done once. The same pages can be looked at again from
// Settings. Not here: what each page changes (settings_model.h, pair_model.h). UI thread only.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantList>

#include "qml/home/engine_bridge.h"
#include "qml/home/settings_model.h"

namespace newel::home {

class FirstRunModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made in main")
  Q_PROPERTY(bool running READ running NOTIFY changed)
  Q_PROPERTY(QString place READ place NOTIFY changed)  // "Step 2 of 7"
  // Nothing lies before the first step, and a code that was spent cannot be spent again.
  Q_PROPERTY(bool canGoBack READ canGoBack NOTIFY changed)
  Q_PROPERTY(QVariantList languages READ languages CONSTANT)  // maps "id" ("es"), "name" (in that language)
  Q_PROPERTY(QString language READ language NOTIFY changed)   // in use, one of the ids

 public:
  enum class Step { Language, TextSize, SoundCheck, Pair, AskReminders, Calls, About, Done };
  Q_ENUM(Step)

  // A phone that has a clinic and has kept no step was set up before there were steps: Done.
  FirstRunModel(SettingsModel& settings, const HomeParts& parts, QObject* parent = nullptr);

  Step step() const;
  bool running() const { return step() != Step::Done; }
  QString place() const;
  bool canGoBack() const;
  QVariantList languages() const;
  QString language() const;

  // To the next step; Pair is left by pairing alone. Does nothing when all is done.
  Q_INVOKABLE void next();
  Q_INVOKABLE void back();

 signals:
  void changed();

 private:
  void keep(Step step);

  SettingsModel& m_settings;
  const HomeParts& m_parts;
};

}  // namespace newel::home
