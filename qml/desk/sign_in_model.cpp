#include "qml/desk/sign_in_model.h"

#include "qml/desk/problem_words.h"
#include "sync/common/pairing_ticket.h"

namespace newel::desk {

SignInModel::SignInModel(DeskContext& context, QObject* parent) : QObject(parent), m_context(context) {}

void SignInModel::setAddress(const QString& address) {
  if (m_address == address) return;
  m_address = address;
  m_address_problem.clear();
  emit changed();
}

void SignInModel::setFingerprint(const QString& fingerprint) {
  if (m_fingerprint == fingerprint) return;
  m_fingerprint = fingerprint;
  m_pins.clear();
  m_fingerprint_problem.clear();
  emit changed();
}

void SignInModel::setUserName(const QString& name) {
  if (m_user_name == name) return;
  m_user_name = name;
  emit changed();
}

void SignInModel::say(const QString& words) {
  m_problem = words;
  emit changed();
}

void SignInModel::signIn(const QString& password) {
  if (m_busy) return;
  m_problem.clear();
  m_address_problem = m_address.trimmed().isEmpty()
                          ? tr("Type the hub's address, for example hub.clinic.example:7443.")
                          : QString();
  const auto pin = parseFingerprint(m_fingerprint.trimmed().toStdString());
  m_fingerprint_problem = pin.ok() ? QString()
                                   : tr("This is not a hub's fingerprint: 64 letters and digits. Whoever "
                                        "runs the hub can read it there.");
  if (m_user_name.trimmed().isEmpty() || password.isEmpty())
    m_problem = tr("Type your name and your password.");
  if (!m_address_problem.isEmpty() || !pin.ok() || !m_problem.isEmpty()) {
    emit changed();
    return;
  }
  m_busy = true;
  emit changed();
  DeskClient::Options options{m_address.trimmed().toStdString(), *pin, m_context.random};
  for (const QString& told : m_pins) {
    const auto known = parseFingerprint(told.toStdString());
    if (known.ok()) options.pins.push_back(*known);
  }
  m_context.worker->run(
      this, tr("Signing in"),
      [worker = m_context.worker, options, name = m_user_name.trimmed().toStdString(),
       secret = password.toStdString()](DeskClient*) -> absl::StatusOr<v1::SignInReply> {
        auto client = DeskClient::connect(options);
        if (!client.ok()) {
          // The one wrong thing a person at the desk can mend is told apart from a wrong password.
          return client.status().code() == absl::StatusCode::kUnauthenticated
                     ? absl::FailedPreconditionError("another certificate")
                     : client.status();
        }
        auto reply = (*client)->signIn(name, secret);
        if (reply.ok()) worker->useClient(*std::move(client));
        return reply;
      },
      [this](const absl::StatusOr<v1::SignInReply>& reply) {
        m_busy = false;
        if (!reply.ok()) {
          failed(reply.status());
          return;
        }
        emit changed();
        emit signedIn(*reply);
      });
}

void SignInModel::failed(const absl::Status& status) {
  switch (status.code()) {
    case absl::StatusCode::kFailedPrecondition:
      m_fingerprint_problem =
          tr("The hub at this address shows another fingerprint. Do not sign in until whoever runs "
             "the hub has told you why.");
      break;
    case absl::StatusCode::kUnauthenticated:
      m_problem = tr("Name or password is wrong. Type both again.");
      break;
    case absl::StatusCode::kUnavailable:
    case absl::StatusCode::kDeadlineExceeded:
      m_address_problem =
          tr("No hub answers at this address. Check the address and the network, then try again.");
      break;
    default:
      m_problem = problemWords(status, tr("sign in"));
  }
  emit changed();
}

}  // namespace newel::desk
