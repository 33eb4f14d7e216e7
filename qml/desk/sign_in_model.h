// The sign-in page's state: where the hub is, who signs in, what went wrong at which field.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>

#include "qml/desk/desk_context.h"
#include "qml/desk/hub_worker.h"

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
  Q_PROPERTY(QString problem READ problem NOTIFY changed)  // of the sign-in as a whole
  Q_PROPERTY(bool busy READ busy NOTIFY changed)

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
  QString problem() const { return m_problem; }
  bool busy() const { return m_busy; }

  // Shown on the page until the next try, for example after a session ended.
  void say(const QString& words);

  // Connects and signs in; signedIn() follows, or problems show. The password is not kept.
  Q_INVOKABLE void signIn(const QString& password);

 signals:
  void changed();
  void signedIn(const newel::v1::SignInReply& reply);

 private:
  void failed(const absl::Status& status);

  DeskContext& m_context;
  QString m_address;
  QString m_fingerprint;
  QStringList m_pins;
  QString m_user_name;
  QString m_address_problem;
  QString m_fingerprint_problem;
  QString m_problem;
  bool m_busy = false;
};

}  // namespace newel::desk
