// The view models as one object, so that each page takes what it needs from one place. Owns nothing.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>

#include "qml/home/advice_model.h"
#include "qml/home/app_model.h"
#include "qml/home/first_run_model.h"
#include "qml/home/history_model.h"
#include "qml/home/messages_model.h"
#include "qml/home/pair_model.h"
#include "qml/home/player_model.h"
#include "qml/home/practice_model.h"
#include "qml/home/programme_model.h"
#include "qml/home/reminder_model.h"
#include "qml/home/scan_model.h"
#include "qml/home/settings_model.h"
#include "qml/home/take_along_model.h"
#include "qml/home/tell_later_model.h"
#include "qml/home/today_model.h"
#include "qml/home/wear_model.h"
#include "qml/parts/clip_player.h"

namespace newel::home {

class HomeModels : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made in main")
  Q_PROPERTY(newel::home::AppModel* app MEMBER app CONSTANT)
  Q_PROPERTY(newel::home::PairModel* pair MEMBER pair CONSTANT)
  Q_PROPERTY(newel::home::ScanModel* scan MEMBER scan CONSTANT)
  Q_PROPERTY(newel::home::TodayModel* today MEMBER today CONSTANT)
  Q_PROPERTY(newel::home::PracticeModel* practice MEMBER practice CONSTANT)
  Q_PROPERTY(newel::home::PlayerModel* player MEMBER player CONSTANT)
  Q_PROPERTY(newel::home::ProgrammeModel* programme MEMBER programme CONSTANT)
  Q_PROPERTY(newel::home::SettingsModel* settings MEMBER settings CONSTANT)
  Q_PROPERTY(newel::home::AdviceModel* advice MEMBER advice CONSTANT)
  Q_PROPERTY(newel::home::FirstRunModel* firstRun MEMBER firstRun CONSTANT)
  Q_PROPERTY(newel::home::HistoryModel* history MEMBER history CONSTANT)
  Q_PROPERTY(newel::home::MessagesModel* messages MEMBER messages CONSTANT)
  Q_PROPERTY(newel::home::ReminderModel* reminders MEMBER reminders CONSTANT)
  Q_PROPERTY(newel::home::TellLaterModel* tellLater MEMBER tell_later CONSTANT)
  Q_PROPERTY(newel::home::TakeAlongModel* takeAlong MEMBER take_along CONSTANT)
  Q_PROPERTY(newel::home::WearModel* wear MEMBER wear CONSTANT)
  Q_PROPERTY(newel::parts::ClipPlayer* clips MEMBER clips CONSTANT)

 public:
  using QObject::QObject;

  AppModel* app = nullptr;
  PairModel* pair = nullptr;
  ScanModel* scan = nullptr;
  TodayModel* today = nullptr;
  PracticeModel* practice = nullptr;
  PlayerModel* player = nullptr;
  ProgrammeModel* programme = nullptr;
  SettingsModel* settings = nullptr;
  AdviceModel* advice = nullptr;
  FirstRunModel* firstRun = nullptr;
  HistoryModel* history = nullptr;
  MessagesModel* messages = nullptr;
  ReminderModel* reminders = nullptr;
  TellLaterModel* tell_later = nullptr;
  TakeAlongModel* take_along = nullptr;
  WearModel* wear = nullptr;
  parts::ClipPlayer* clips = nullptr;
};

}  // namespace newel::home
