// One's own account: the password, and the second factor from the secret on the screen to its first code.
// What the hub asks for before anything else is asked for here too.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>

#include "qml/desk/desk_context.h"
#include "qml/desk/hub_worker.h"
#include "qml/desk/sign_in_try.h"

namespace newel::desk {

class OwnAccountModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(QString userName READ userName NOTIFY changed)
  Q_PROPERTY(QString roleWords READ roleWords NOTIFY changed)
  Q_PROPERTY(bool mustChangePassword READ mustChangePassword NOTIFY changed)
  Q_PROPERTY(bool mustEnrol READ mustEnrol NOTIFY changed)
  Q_PROPERTY(bool hasFactor READ hasFactor NOTIFY changed)
  Q_PROPERTY(QString uri READ uri NOTIFY changed)                // to show as a picture; empty: not begun
  Q_PROPERTY(QString secretText READ secretText NOTIFY changed)  // the same to type
  Q_PROPERTY(bool busy READ busy NOTIFY changed)
  Q_PROPERTY(QString factorProblem READ factorProblem NOTIFY changed)
  Q_PROPERTY(QString codeProblem READ codeProblem NOTIFY changed)
  Q_PROPERTY(QString passwordProblem READ passwordProblem NOTIFY changed)
  Q_PROPERTY(QString waitWords READ waitWords NOTIFY changed)

 public:
  explicit OwnAccountModel(DeskContext& context, QObject* parent = nullptr);

  QString userName() const;
  QString roleWords() const;
  bool mustChangePassword() const { return m_must_change_password; }
  bool mustEnrol() const { return m_must_enrol; }
  bool hasDuties() const { return m_must_change_password || m_must_enrol; }
  bool hasFactor() const { return m_has_factor; }
  QString uri() const { return m_uri; }
  QString secretText() const { return m_secret_text; }
  bool busy() const { return m_busy; }
  QString factorProblem() const { return m_factor_problem; }
  QString codeProblem() const { return m_code_problem; }
  QString passwordProblem() const { return m_password_problem; }
  QString waitWords() const { return m_wait.waitWords(); }

  void signedInAs(const v1::SignInReply& reply);
  // The page is left: no secret stays on the screen or in memory.
  void leave();
  void forget();

  Q_INVOKABLE void beginFactor(const QString& password);
  Q_INVOKABLE void confirmFactor(const QString& code);
  Q_INVOKABLE void changePassword(const QString& old_password, const QString& new_password,
                                  const QString& again);

 signals:
  void changed();
  void factorSet();
  void passwordSet();
  void sessionEnded();

 private:
  void start();
  bool tooOften(const absl::Status& status);
  void gotFactor(const absl::StatusOr<v1::BeginSecondFactorReply>& reply);
  void gotPassword(const absl::Status& status);

  DeskContext& m_context;
  SignInTry m_wait;  // for its countdown only
  bool m_must_change_password = false;
  bool m_must_enrol = false;
  bool m_has_factor = false;
  bool m_busy = false;
  QString m_uri;
  QString m_secret_text;
  QString m_factor_problem;
  QString m_code_problem;
  QString m_password_problem;
};

// "Therapist", "Lead" ...
QString roleWords(v1::Role role);

}  // namespace newel::desk
