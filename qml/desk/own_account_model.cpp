#include "qml/desk/own_account_model.h"

#include <QtCore/QCoreApplication>

#include "qml/desk/problem_words.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

// What is wrong with a new password, from the hub's own words for the field.
QString newPasswordWords(const std::string& message) {
  if (message.find("shorter") != std::string::npos)
    return QCoreApplication::translate(
        "OwnAccount",
        "The new password is too short: 8 characters at least, and 15 are better. Some words in a row are "
        "easy to keep in mind.");
  if (message.find("longer") != std::string::npos)
    return QCoreApplication::translate("OwnAccount", "The new password is too long: 256 bytes at most.");
  if (message.find("user name") != std::string::npos)
    return QCoreApplication::translate("OwnAccount", "The new password must not be your user name.");
  if (message.find("old one") != std::string::npos)
    return QCoreApplication::translate("OwnAccount", "The new password must not be the old one again.");
  if (message.find("repeated") != std::string::npos)
    return QCoreApplication::translate("OwnAccount", "The new password is one character repeated.");
  return QString::fromStdString(message);
}

}  // namespace

QString roleWords(v1::Role role) {
  switch (role) {
    case v1::ROLE_THERAPIST:
      return QCoreApplication::translate("OwnAccount", "Therapist");
    case v1::ROLE_LEAD:
      return QCoreApplication::translate("OwnAccount", "Lead");
    case v1::ROLE_ADMINISTRATOR:
      return QCoreApplication::translate("OwnAccount", "Administrator");
    case v1::ROLE_AUDITOR:
      return QCoreApplication::translate("OwnAccount", "Auditor");
    default:
      return QCoreApplication::translate("OwnAccount", "not known");
  }
}

OwnAccountModel::OwnAccountModel(DeskContext& context, QObject* parent)
    : QObject(parent), m_context(context), m_wait(context) {
  connect(&m_wait, &SignInTry::changed, this, &OwnAccountModel::changed);
}

QString OwnAccountModel::userName() const { return print::text(m_context.therapist.user_name()); }
QString OwnAccountModel::roleWords() const { return desk::roleWords(m_context.therapist.role()); }

void OwnAccountModel::signedInAs(const v1::SignInReply& reply) {
  m_must_change_password = reply.must_change_password();
  m_must_enrol = reply.must_enrol();
  m_has_factor = reply.second_factor();
  leave();
}

void OwnAccountModel::leave() {
  m_uri.clear();
  m_secret_text.clear();
  m_factor_problem.clear();
  m_code_problem.clear();
  m_password_problem.clear();
  m_busy = false;
  emit changed();
}

void OwnAccountModel::forget() {
  m_must_change_password = false;
  m_must_enrol = false;
  m_has_factor = false;
  leave();
}

void OwnAccountModel::start() {
  m_busy = true;
  m_factor_problem.clear();
  m_code_problem.clear();
  m_password_problem.clear();
  emit changed();
}

bool OwnAccountModel::tooOften(const absl::Status& status) {
  if (waitAsked(status) <= absl::ZeroDuration()) return false;
  m_wait.end(status, QString());
  return true;
}

void OwnAccountModel::beginFactor(const QString& password) {
  if (m_busy || !m_wait.mayTry()) return;
  if (password.isEmpty()) {
    m_factor_problem = tr("Type your password.");
    emit changed();
    return;
  }
  start();
  m_context.worker->run(
      this, tr("Making a second factor"),
      [secret = password.toStdString()](DeskClient* client) -> absl::StatusOr<v1::BeginSecondFactorReply> {
        if (client == nullptr) return absl::AbortedError("not signed in");
        return client->beginSecondFactor(secret);
      },
      [this](const absl::StatusOr<v1::BeginSecondFactorReply>& reply) { gotFactor(reply); });
}

void OwnAccountModel::gotFactor(const absl::StatusOr<v1::BeginSecondFactorReply>& reply) {
  if (!m_busy) return;  // the page was left meanwhile: no secret for nobody
  m_busy = false;
  const absl::Status& status = reply.status();
  if (reply.ok()) {
    m_uri = print::text(reply->uri());
    m_secret_text = print::text(reply->secret_text());
  } else if (absl::IsUnauthenticated(status) && status.message().substr(0, 9) == "password:") {
    m_factor_problem = tr("That is not your password.");
  } else if (absl::IsUnauthenticated(status)) {
    emit sessionEnded();
  } else if (absl::IsAlreadyExists(status)) {
    m_has_factor = true;
  } else if (!tooOften(status)) {
    m_factor_problem = problemWords(status, tr("make a second factor"));
  }
  emit changed();
}

void OwnAccountModel::confirmFactor(const QString& code) {
  if (m_busy || m_uri.isEmpty()) return;
  start();
  m_context.worker->run(
      this, tr("Checking the code"),
      [digits = code.trimmed().toStdString()](DeskClient* client) -> absl::Status {
        if (client == nullptr) return absl::AbortedError("not signed in");
        return client->confirmSecondFactor(digits);
      },
      [this](const absl::Status& status) {
        m_busy = false;
        if (status.ok()) {
          m_has_factor = true;
          m_must_enrol = false;
          leave();
          emit factorSet();
          return;
        }
        if (absl::IsUnauthenticated(status)) emit sessionEnded();
        m_code_problem = absl::IsInvalidArgument(status)
                             ? tr("This code is wrong or too late. Type the one that the app shows now. If "
                                  "it is wrong again, "
                                  "set the clock of that device by the network and try once more.")
                             : problemWords(status, tr("check the code"));
        emit changed();
      });
}

void OwnAccountModel::changePassword(const QString& old_password, const QString& new_password,
                                     const QString& again) {
  if (m_busy || !m_wait.mayTry()) return;
  m_password_problem = old_password.isEmpty() || new_password.isEmpty()
                           ? tr("Type the old password once and the new one twice.")
                       : new_password != again
                           ? tr("The new password was typed in two ways. Type it twice again.")
                           : QString();
  if (!m_password_problem.isEmpty()) {
    emit changed();
    return;
  }
  start();
  m_context.worker->run(
      this, tr("Changing the password"),
      [was = old_password.toStdString(),
       is = new_password.toStdString()](DeskClient* client) -> absl::Status {
        if (client == nullptr) return absl::AbortedError("not signed in");
        return client->changePassword(was, is);
      },
      [this](const absl::Status& status) { gotPassword(status); });
}

void OwnAccountModel::gotPassword(const absl::Status& status) {
  m_busy = false;
  if (status.ok()) {
    m_must_change_password = false;
    emit passwordSet();
  } else if (absl::IsUnauthenticated(status) && status.message().substr(0, 9) == "password:") {
    m_password_problem = tr("The old password is wrong.");
  } else if (absl::IsUnauthenticated(status)) {
    emit sessionEnded();
  } else if (absl::IsInvalidArgument(status)) {
    m_password_problem = newPasswordWords(std::string(status.message()));
  } else if (!tooOften(status)) {
    m_password_problem = problemWords(status, tr("change the password"));
  }
  emit changed();
}

}  // namespace newel::desk
