// The clinic's accounts, for leads and administrators: who there is, making one, changing, switching off, and
// help for who has lost a password or the device with the codes.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantList>
#include <functional>
#include <vector>

#include "qml/desk/desk_context.h"
#include "qml/desk/hub_worker.h"

namespace newel::desk {

class AccountsModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the desk")
  // {id, name, userName, role, state, off, factor, mine}: state and role in words.
  Q_PROPERTY(QVariantList accounts READ accounts NOTIFY changed)
  Q_PROPERTY(QVariantList roles READ roles CONSTANT)  // {value, text}
  Q_PROPERTY(bool mayChange READ mayChange NOTIFY changed)
  Q_PROPERTY(bool writing READ writing NOTIFY changed)   // the form is open
  Q_PROPERTY(bool isNew READ isNew NOTIFY changed)       // for a new account
  Q_PROPERTY(bool isMine READ isMine NOTIFY changed)     // nobody changes their own
  Q_PROPERTY(QVariantMap open READ open NOTIFY changed)  // the row of the account in the form
  Q_PROPERTY(QString userName READ userName WRITE setUserName NOTIFY changed)
  Q_PROPERTY(QString displayName READ displayName WRITE setDisplayName NOTIFY changed)
  Q_PROPERTY(int role READ role WRITE setRole NOTIFY changed)
  Q_PROPERTY(bool busy READ busy NOTIFY changed)
  Q_PROPERTY(QString problem READ problem NOTIFY changed)
  Q_PROPERTY(QString userNameProblem READ userNameProblem NOTIFY changed)
  Q_PROPERTY(QString displayNameProblem READ displayNameProblem NOTIFY changed)
  // Shown this once: for whom, the password, and until when it is good.
  Q_PROPERTY(QString firstPassword READ firstPassword NOTIFY changed)
  Q_PROPERTY(QString firstPasswordWords READ firstPasswordWords NOTIFY changed)

 public:
  explicit AccountsModel(DeskContext& context, QObject* parent = nullptr);

  QVariantList accounts() const;
  static QVariantList roles();
  bool mayChange() const;
  bool writing() const { return m_writing; }
  bool isNew() const { return m_writing && m_id.empty(); }
  bool isMine() const { return m_id == m_context.therapist.id() && !m_id.empty(); }
  QVariantMap open() const;
  QString userName() const { return m_user_name; }
  void setUserName(const QString& name);
  QString displayName() const { return m_display_name; }
  void setDisplayName(const QString& name);
  int role() const { return m_role; }
  void setRole(int role);
  bool busy() const { return m_busy; }
  QString problem() const { return m_problem; }
  QString userNameProblem() const { return m_user_name_problem; }
  QString displayNameProblem() const { return m_display_name_problem; }
  QString firstPassword() const { return m_first_password; }
  QString firstPasswordWords() const { return m_first_password_words; }

  void begin();                               // reads the list
  void leave();                               // no first password stays on the screen
  Q_INVOKABLE void write(const QString& id);  // empty: a new one
  Q_INVOKABLE void close();
  Q_INVOKABLE void save();
  Q_INVOKABLE void setOff(bool off);
  Q_INVOKABLE void newFirstPassword();
  Q_INVOKABLE void takeFactor();

 signals:
  void changed();
  void saved(const QString& words);
  void sessionEnded();

 private:
  const v1::Account* find(const std::string& id) const;
  QVariantMap rowOf(const v1::Account& account) const;
  v1::ChangeAccountRequest change(bool off) const;
  struct Outcome {
    absl::Status status;
    v1::Account account;         // where it was made or changed
    std::string first_password;  // where one was made
  };
  void run(const QString& doing, const QString& done, std::function<Outcome(DeskClient&)> call);
  void finished(const Outcome& outcome, const QString& doing, const QString& done);
  QString stateWords(const v1::Account& account) const;
  void read();

  DeskContext& m_context;
  std::vector<v1::Account> m_accounts;
  bool m_writing = false;
  std::string m_id;
  QString m_user_name;
  QString m_display_name;
  int m_role = v1::ROLE_THERAPIST;
  bool m_busy = false;
  QString m_problem;
  QString m_user_name_problem;
  QString m_display_name_problem;
  QString m_first_password;
  QString m_first_password_words;
};

}  // namespace newel::desk
