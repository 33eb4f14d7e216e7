#include "qml/desk/accounts_model.h"

#include "core/time/local_day.h"
#include "qml/desk/own_account_model.h"
#include "qml/desk/problem_words.h"
#include "qml/print/record_words.h"

namespace newel::desk {

AccountsModel::AccountsModel(DeskContext& context, QObject* parent) : QObject(parent), m_context(context) {}

QVariantList AccountsModel::roles() {
  QVariantList list;
  for (const v1::Role role : {v1::ROLE_THERAPIST, v1::ROLE_LEAD, v1::ROLE_ADMINISTRATOR, v1::ROLE_AUDITOR}) {
    list << QVariantMap{{QStringLiteral("value"), static_cast<int>(role)},
                        {QStringLiteral("text"), roleWords(role)}};
  }
  return list;
}

bool AccountsModel::mayChange() const {
  const v1::Role role = m_context.therapist.role();
  return role == v1::ROLE_LEAD || role == v1::ROLE_ADMINISTRATOR;
}

QString AccountsModel::stateWords(const v1::Account& account) const {
  if (account.disabled()) return tr("switched off");
  if (!account.has_first_password_until()) return tr("in use");
  const absl::Time until = toTime(account.first_password_until());
  return until <= m_context.now() + m_context.hub_ahead
             ? tr("first password too old")
             : tr("first password, good until %1").arg(print::momentWords(until, m_context.zone));
}

QVariantMap AccountsModel::rowOf(const v1::Account& account) const {
  const v1::Therapist& who = account.therapist();
  return {{QStringLiteral("id"), print::text(who.id())},
          {QStringLiteral("name"), print::text(who.display_name())},
          {QStringLiteral("userName"), print::text(who.user_name())},
          {QStringLiteral("role"), roleWords(who.role())},
          {QStringLiteral("state"), stateWords(account)},
          {QStringLiteral("off"), account.disabled()},
          {QStringLiteral("factor"), account.second_factor()},
          {QStringLiteral("mine"), who.id() == m_context.therapist.id()}};
}

QVariantList AccountsModel::accounts() const {
  QVariantList list;
  for (const auto& account : m_accounts) list << rowOf(account);
  return list;
}

const v1::Account* AccountsModel::find(const std::string& id) const {
  for (const auto& account : m_accounts) {
    if (account.therapist().id() == id) return &account;
  }
  return nullptr;
}

QVariantMap AccountsModel::open() const {
  const v1::Account* account = find(m_id);
  return account == nullptr ? QVariantMap() : rowOf(*account);
}

void AccountsModel::setUserName(const QString& name) {
  m_user_name = name;
  m_user_name_problem.clear();
  emit changed();
}

void AccountsModel::setDisplayName(const QString& name) {
  m_display_name = name;
  m_display_name_problem.clear();
  emit changed();
}

void AccountsModel::setRole(int role) {
  m_role = role;
  emit changed();
}

void AccountsModel::begin() {
  close();
  read();
}

void AccountsModel::leave() {
  m_accounts.clear();
  close();
}

void AccountsModel::read() {
  m_context.worker->run(
      this, tr("Reading the accounts"),
      [](DeskClient* client) -> absl::StatusOr<std::vector<v1::Account>> {
        if (client == nullptr) return absl::AbortedError("not signed in");
        return client->accounts();
      },
      [this](absl::StatusOr<std::vector<v1::Account>> accounts) {
        if (absl::IsUnauthenticated(accounts.status())) emit sessionEnded();
        if (accounts.ok()) {
          m_accounts = *std::move(accounts);
        } else {
          m_problem = problemWords(accounts.status(), tr("read the accounts"));
        }
        emit changed();
      });
}

void AccountsModel::write(const QString& id) {
  close();
  const v1::Account* account = find(id.toStdString());
  m_id = account == nullptr ? std::string() : id.toStdString();
  m_user_name = account == nullptr ? QString() : print::text(account->therapist().user_name());
  m_display_name = account == nullptr ? QString() : print::text(account->therapist().display_name());
  m_role = account == nullptr ? static_cast<int>(v1::ROLE_THERAPIST) : account->therapist().role();
  m_writing = true;
  emit changed();
}

void AccountsModel::close() {
  m_writing = false;
  m_id.clear();
  m_problem.clear();
  m_user_name_problem.clear();
  m_display_name_problem.clear();
  m_first_password.clear();
  m_first_password_words.clear();
  emit changed();
}

void AccountsModel::run(const QString& doing, const QString& done, std::function<Outcome(DeskClient&)> call) {
  if (m_busy) return;
  m_busy = true;
  m_problem.clear();
  m_user_name_problem.clear();
  m_display_name_problem.clear();
  m_first_password.clear();
  m_first_password_words.clear();
  emit changed();
  m_context.worker->run(
      this, tr("Changing the account"),
      [call = std::move(call)](DeskClient* client) -> Outcome {
        if (client == nullptr) return {absl::AbortedError("not signed in"), {}, {}};
        return call(*client);
      },
      [this, doing, done](const Outcome& outcome) { finished(outcome, doing, done); });
}

void AccountsModel::finished(const Outcome& outcome, const QString& doing, const QString& done) {
  m_busy = false;
  const std::string message(outcome.status.message());
  if (outcome.status.ok()) {
    if (!outcome.first_password.empty()) {
      m_id = outcome.account.therapist().id();
      m_first_password = print::text(outcome.first_password);
      m_first_password_words =
          tr("First password for %1. It is shown only now: tell it or write it down for them. Good until %2; "
             "at "
             "the first sign-in they choose their own.")
              .arg(print::text(outcome.account.therapist().display_name()),
                   print::momentWords(toTime(outcome.account.first_password_until()), m_context.zone));
    }
    emit saved(done);
    read();
  } else if (absl::IsUnauthenticated(outcome.status)) {
    emit sessionEnded();
  } else if (message.rfind("user_name", 0) == 0) {
    m_user_name_problem = absl::IsAlreadyExists(outcome.status)
                              ? tr("Somebody has this user name already. Choose another.")
                              : tr("2 to 60 small letters, digits, dots, hyphens, underscores or @.");
  } else if (message.rfind("display_name", 0) == 0) {
    m_display_name_problem = tr("Type the name that colleagues see.");
  } else {
    m_problem = problemWords(outcome.status, doing);
  }
  emit changed();
}

v1::ChangeAccountRequest AccountsModel::change(bool off) const {
  v1::ChangeAccountRequest request;
  request.set_account_id(m_id);
  request.set_display_name(m_display_name.trimmed().toStdString());
  request.set_role(static_cast<v1::Role>(m_role));
  request.set_disabled(off);
  return request;
}

void AccountsModel::save() {
  const v1::Account* account = find(m_id);
  if (account != nullptr) {
    run(tr("change this account"), tr("Account changed. It has to sign in again."),
        [request = change(account->disabled())](DeskClient& client) -> Outcome {
          const auto kept = client.changeAccount(request);
          return {kept.status(), kept.value_or(v1::Account()), {}};
        });
    return;
  }
  v1::AddAccountRequest request;
  request.set_user_name(m_user_name.trimmed().toStdString());
  request.set_display_name(m_display_name.trimmed().toStdString());
  request.set_role(static_cast<v1::Role>(m_role));
  run(tr("make this account"), tr("Account made."), [request](DeskClient& client) -> Outcome {
    const auto added = client.addAccount(request);
    if (!added.ok()) return {added.status(), {}, {}};
    return {absl::OkStatus(), added->account(), added->first_password()};
  });
}

void AccountsModel::setOff(bool off) {
  run(off ? tr("switch this account off") : tr("switch this account on"),
      off ? tr("Account switched off.") : tr("Account switched on."),
      [request = change(off)](DeskClient& client) -> Outcome {
        const auto kept = client.changeAccount(request);
        return {kept.status(), kept.value_or(v1::Account()), {}};
      });
}

void AccountsModel::newFirstPassword() {
  run(tr("make a first password"), tr("A new first password is made; the old password is no longer good."),
      [id = m_id](DeskClient& client) -> Outcome {
        const auto made = client.newFirstPassword(id);
        if (!made.ok()) return {made.status(), {}, {}};
        return {absl::OkStatus(), made->account(), made->first_password()};
      });
}

void AccountsModel::takeFactor() {
  run(tr("take the second factor away"), tr("The second factor is taken away."),
      [id = m_id](DeskClient& client) -> Outcome {
        return {client.takeSecondFactor(id), {}, {}};
      });
}

}  // namespace newel::desk
