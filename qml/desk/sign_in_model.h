// The sign-in page's state: where the hub is, who signs in, what went wrong at which field.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>

#include "qml/desk/desk_context.h"
#include "qml/desk/hub_worker.h"
#include "qml/desk/sign_in_try.h"

namespace newel::desk {

class SignInModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  Q_PROPERTY(QString address READ address WRITE setAddress NOTIFY changed)
  Q_PROPERTY(QString fingerprint READ fingerprint WRITE setFingerprint NOTIFY changed)
  Q_PROPERTY(QString userName READ userName WRITE setUserName NOTIFY changed)
  Q_PROPERTY(QString addressProblem READ addressProblem NOTIFY changed)
  Q_PROPERTY(QString fingerprintProblem READ fingerprintProblem NOTIFY changed)
  Q_PROPERTY(newel::desk::SignInTry* attempt READ attempt CONSTANT)

 public:
  explicit SignInModel(DeskContext& context, QObject* parent = nullptr);

  QString address() const { return m_address; }
  void setAddress(const QString& address);
  QString fingerprint() const { return m_fingerprint; }
  void setFingerprint(const QString& fingerprint);
  // What a hub of that fingerprint told earlier; they go when another fingerprint is typed.
  void setPins(const QStringList& pins) { m_pins = pins; }
  QString userName() const { return m_user_name; }
  void setUserName(const QString& name);
  QString addressProblem() const { return m_address_problem; }
  QString fingerprintProblem() const { return m_fingerprint_problem; }
  SignInTry* attempt() { return &m_try; }
  bool asksCode() const { return m_try.needsCode(); }

  // Where the fields lead to, with every certificate that hub may show.
  DeskClient::Options connection() const;

  // Shown on the page until the next try, for example after a session ended.
  void say(const QString& words) { m_try.say(words); }

  // Connects and signs in; signedIn() follows, or problems show. Password and code are not kept. `code`
  // counts once attempt.needsCode.
  Q_INVOKABLE void signIn(const QString& password, const QString& code = QString());

 signals:
  void changed();
  void signedIn(const newel::v1::SignInReply& reply);

 private:
  struct Answer {
    absl::Status connected;  // kUnauthenticated: the hub shows another certificate
    absl::StatusOr<v1::SignInReply> reply;
  };
  bool fieldsAreFine();
  void notConnected(const absl::Status& status);

  DeskContext& m_context;
  SignInTry m_try;
  QString m_address;
  QString m_fingerprint;
  QStringList m_pins;
  QString m_user_name;
  QString m_address_problem;
  QString m_fingerprint_problem;
};

}  // namespace newel::desk
