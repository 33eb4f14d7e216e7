// One try after another to get in, at the sign-in page and at a locked desk: whether the code of a second
// factor is asked for, what was wrong, and how long to wait after too many tries. The call itself is its
// owner's.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QTimer>

#include "qml/desk/desk_context.h"

namespace newel::desk {

class SignInTry : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(QString problem READ problem NOTIFY changed)          // of the try as a whole
  Q_PROPERTY(QString codeProblem READ codeProblem NOTIFY changed)  // at the field for the code
  Q_PROPERTY(bool needsCode READ needsCode NOTIFY changed)         // name and password are right
  Q_PROPERTY(bool busy READ busy NOTIFY changed)
  Q_PROPERTY(QString waitWords READ waitWords NOTIFY changed)  // counts down; empty: a try may be made
  Q_PROPERTY(bool mayTry READ mayTry NOTIFY changed)

 public:
  explicit SignInTry(const DeskContext& context, QObject* parent = nullptr);

  QString problem() const { return m_problem; }
  QString codeProblem() const { return m_code_problem; }
  bool needsCode() const { return m_needs_code; }
  bool busy() const { return m_busy; }
  int secondsToWait() const;
  QString waitWords() const;
  bool mayTry() const { return !m_busy && secondsToWait() == 0; }

  // Forgets everything but a wait.
  void reset();
  void say(const QString& problem);
  // False: not now, or there is something to type first, which is said.
  bool begin(const QString& password, const QString& code);
  // Puts the hub's answer into words. `doing` as in problemWords().
  void end(const absl::Status& status, const QString& doing);
  // Nothing to do with name, password or code; the owner says what.
  void endOtherwise();

 signals:
  void changed();

 private:
  const DeskContext& m_context;
  QString m_problem;
  QString m_code_problem;
  bool m_needs_code = false;
  bool m_busy = false;
  absl::Duration m_wait_until;  // on the elapsed clock
  QTimer m_repaint;
};

}  // namespace newel::desk
