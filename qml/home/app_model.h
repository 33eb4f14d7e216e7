// Which page is in front, and what every page needs: whom to call, the test clock's banner.
// The page follows from the state of engine and practice; only the pages beside the way (programme, help,
// settings, leaving an exercise out) are chosen here.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QJsonObject>
#include <QtCore/QObject>

#include "qml/home/engine_bridge.h"
#include "qml/home/first_run_model.h"
#include "qml/home/practice_session.h"
#include "qml/home/today_model.h"

namespace newel::home {

class AppModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made in main")
  Q_PROPERTY(Page page READ page NOTIFY pageChanged)
  Q_PROPERTY(QString pageName READ pageName NOTIFY pageChanged)  // its file is <pageName>Page.qml
  Q_PROPERTY(QString banner READ banner CONSTANT)
  Q_PROPERTY(bool rightToLeft READ rightToLeft NOTIFY changed)
  Q_PROPERTY(bool paired READ paired NOTIFY changed)
  Q_PROPERTY(QString clinicName READ clinicName NOTIFY changed)
  Q_PROPERTY(QString clinicPhone READ clinicPhone NOTIFY changed)
  Q_PROPERTY(QString clinicHours READ clinicHours NOTIFY changed)
  Q_PROPERTY(QString emergencyNumber READ emergencyNumber NOTIFY changed)
  Q_PROPERTY(QString contact READ contact NOTIFY changed)
  // Of the practice that has just ended, as sync/home/delivery.h counts; it changes when the clinic's answer
  // comes.
  Q_PROPERTY(int delivery READ delivery NOTIFY changed)
  Q_PROPERTY(QString deliveryWords READ deliveryWords NOTIFY changed)
  Q_PROPERTY(QString greetingName READ greetingName NOTIFY changed)
  // Of the clinic's computer, to be compared with what the desk shows: "AB12 CD34 EF56 0718".
  Q_PROPERTY(QString fingerprint READ fingerprint NOTIFY changed)

 public:
  enum class Page {
    Pair,
    Scan,
    Paired,
    Today,
    Unfinished,
    Question,
    Pain,
    GetReady,
    Practice,
    WhatHappened,
    Rating,
    Verdict,
    Close,
    LeaveOut,
    Programme,
    Advice,
    Help,
    Settings,
    Drawn,
    Language,
    TextSize,
    SoundCheck,
    AskReminders,
    Calls,
    About,
    HowItGoes,
    Write,
    Reminders,
    TellLater,
    Wear,
    TakeAlong,
    Erase
  };
  Q_ENUM(Page)

  // `banner`: shown on every page; empty outside tests.
  AppModel(PracticeSession& session, TodayModel& today, FirstRunModel& first_run, EngineBridge& bridge,
           const HomeParts& parts, const QString& banner, QObject* parent = nullptr);

  Page page() const;
  QString pageName() const;
  QString banner() const { return m_banner; }
  bool rightToLeft() const;
  bool paired() const;
  QString clinicName() const;
  QString clinicPhone() const;
  QString clinicHours() const;
  QString emergencyNumber() const;
  QString contact() const;
  int delivery() const;
  QString deliveryWords() const;
  QString greetingName() const;
  QString fingerprint() const;

  // A page beside the way (Help, Settings, Programme ...) over what is in front; anything else is ignored.
  // Pair only for a phone that a new code would help.
  Q_INVOKABLE void show(newel::home::AppModel::Page page);
  // To the page that this one was opened from; on the first run to the step before.
  Q_INVOKABLE void back();
  // A pairing has just succeeded: its own page first.
  void pairedNow();
  // The close page was read: back to today.
  Q_INVOKABLE void leavePractice();
  // Puts any page in front whatever the state, for the self-test alone; no rule is passed by it, since a page
  // without a practice behind it can do nothing.
  void showForTest(Page page);

  // Key facts for the driver: "page", "paired", "programme", "due", "queued", "entry", "beat", "player" ...
  QJsonObject facts() const;

 signals:
  void pageChanged();
  void changed();

 private:
  void follow();
  bool mayShow(Page page) const;
  Page onTheWay() const;

  PracticeSession& m_session;
  TodayModel& m_today;
  FirstRunModel& m_first_run;
  const HomeParts& m_parts;
  const QString m_banner;
  Page m_page = Page::Pair;
  QList<Page> m_aside;  // opened over the way, the one in front last
};

}  // namespace newel::home
