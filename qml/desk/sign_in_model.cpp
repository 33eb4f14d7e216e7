#include "qml/desk/sign_in_model.h"

#include "qml/desk/problem_words.h"
#include "sync/common/pairing_ticket.h"

namespace newel::desk {

SignInModel::SignInModel(DeskContext& context, QObject* parent)
    : QObject(parent), m_context(context), m_try(context) {}

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
  // The code that was asked for is another account's.
  if (m_try.needsCode()) m_try.reset();
  emit changed();
}

bool SignInModel::fieldsAreFine() {
  m_address_problem = m_address.trimmed().isEmpty()
                          ? tr("Type the hub's address, for example hub.clinic.example:7443.")
                          : QString();
  const auto read = parseFingerprint(m_fingerprint.trimmed().toStdString());
  m_fingerprint_problem = read.ok() ? QString()
                                    : tr("This is not a hub's fingerprint: 64 letters and digits. Whoever "
                                         "runs the hub can read it there.");
  if (m_user_name.trimmed().isEmpty()) m_try.say(tr("Type your name and your password."));
  emit changed();
  return m_address_problem.isEmpty() && read.ok() && !m_user_name.trimmed().isEmpty();
}

DeskClient::Options SignInModel::connection() const {
  const auto parsed = parseFingerprint(m_fingerprint.trimmed().toStdString());
  DeskClient::Options options{m_address.trimmed().toStdString(), parsed.value_or(""), m_context.random};
  for (const QString& told : m_pins) {
    const auto known = parseFingerprint(told.toStdString());
    if (known.ok()) options.pins.push_back(*known);
  }
  return options;
}

void SignInModel::signIn(const QString& password, const QString& code) {
  if (!fieldsAreFine() || !m_try.begin(password, code)) return;
  const DeskClient::Options options = connection();
  m_context.worker->run(
      this, tr("Signing in"),
      [worker = m_context.worker, options, name = m_user_name.trimmed().toStdString(),
       secret = password.toStdString(), digits = code.toStdString()](DeskClient*) -> Answer {
        auto client = DeskClient::connect(options);
        if (!client.ok()) return {client.status(), client.status()};
        auto reply = (*client)->signIn(name, secret, digits);
        if (reply.ok()) worker->useClient(*std::move(client));
        return {absl::OkStatus(), std::move(reply)};
      },
      [this](const Answer& answer) {
        if (!answer.connected.ok()) {
          notConnected(answer.connected);
          return;
        }
        m_try.end(answer.reply.status(), tr("sign in"));
        if (answer.reply.ok()) emit signedIn(*answer.reply);
      });
}

void SignInModel::notConnected(const absl::Status& status) {
  m_try.endOtherwise();
  switch (status.code()) {
    case absl::StatusCode::kUnauthenticated:
      m_fingerprint_problem =
          tr("The hub at this address shows another fingerprint. Do not sign in until whoever runs "
             "the hub has told you why.");
      break;
    case absl::StatusCode::kUnavailable:
    case absl::StatusCode::kDeadlineExceeded:
      m_address_problem =
          tr("No hub answers at this address. Check the address and the network, then try again.");
      break;
    default:
      m_try.say(problemWords(status, tr("sign in")));
  }
  emit changed();
}

}  // namespace newel::desk
