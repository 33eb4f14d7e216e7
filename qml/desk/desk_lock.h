// The idle lock: a desk that nobody touches for a time that the clinic sets covers everything until the same
// account signs in again. Keys, pointer and touch of the whole program count as a touch, and while it is
// locked no shortcut of a covered page does anything. Not here: what becomes of the pages and the session
// (DeskModel).
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QPointF>
#include <QtCore/QTimer>

#include "qml/desk/hub_worker.h"
#include "qml/desk/idle_watch.h"
#include "qml/desk/sign_in_try.h"

namespace newel::desk {

class DeskLock : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(bool locked READ locked NOTIFY changed)
  Q_PROPERTY(QString who READ who NOTIFY changed)          // whose desk it is
  Q_PROPERTY(QString reason READ reason NOTIFY changed)    // why it is locked
  Q_PROPERTY(QString warning READ warning NOTIFY changed)  // in the last seconds before
  Q_PROPERTY(newel::desk::SignInTry* attempt READ attempt CONSTANT)

 public:
  explicit DeskLock(DeskContext& context, QObject* parent = nullptr);
  ~DeskLock() override;

  bool locked() const { return m_locked; }
  QString who() const { return m_who; }
  QString reason() const { return m_reason; }
  QString warning() const { return m_warning; }
  SignInTry* attempt() { return &m_try; }
  bool asksCode() const { return m_try.needsCode(); }

  // How long at most, whatever the clinic has set; zero: as the clinic says. For a desk in an open place.
  void setSooner(absl::Duration sooner) { m_sooner = sooner; }
  // Somebody is signed in: from now on it is watched.
  void watch(const DeskClient::Options& hub);
  // The clinic's number may be another one now.
  void takeSettings();
  void cover(const QString& reason);
  // Nobody is signed in any more; nothing is watched, nothing covered.
  void end();

  // unlocked() follows, or attempt says what was wrong. `code` counts once attempt.needsCode.
  Q_INVOKABLE void unlock(const QString& password, const QString& code);
  // Somebody else wants to sign in.
  Q_INVOKABLE void giveUp();

  bool eventFilter(QObject* object, QEvent* event) override;
  void tick();  // what the timer does; for tests

 signals:
  void changed();
  void due();        // the time is over
  void stillUsed();  // now and then while somebody works, so that the hub hears of it
  void unlocked(const newel::v1::SignInReply& reply);
  void givenUp();

 private:
  absl::Duration limit() const;
  bool isTouch(QEvent* event);

  DeskContext& m_context;
  SignInTry m_try;
  IdleWatch m_idle;
  DeskClient::Options m_hub;
  absl::Duration m_sooner;
  absl::Duration m_told;  // when the hub last heard, on the elapsed clock
  bool m_watching = false;
  bool m_locked = false;
  QString m_who;
  QString m_reason;
  QString m_warning;
  QPointF m_pointer;
  QTimer m_tick;
};

}  // namespace newel::desk
