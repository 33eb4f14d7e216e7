#include "sync/hub/accounts.h"

#include <utility>

#include "core/time/local_day.h"
#include "sync/common/content_hash.h"
#include "sync/common/record_id.h"
#include "sync/common/text_codes.h"
#include "sync/hub/caller_facts.h"
#include "sync/hub/clinic_library.h"
#include "sync/hub/password.h"
#include "sync/hub/second_factor.h"

namespace newel {
namespace {

// A working day; the desk signs in again the next. Ours, no source.
constexpr absl::Duration kSessionLife = absl::Hours(12);
constexpr std::size_t kTokenBytes = 32;

absl::Status noEntry() { return absl::UnauthenticatedError("name or password is wrong"); }

bool isUserName(const std::string& name) {
  if (name.size() < 2 || name.size() > 60) return false;
  return name.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789.-_@") == std::string::npos;
}

v1::Therapist therapistOf(const AccountRow& row) {
  v1::Therapist therapist;
  therapist.set_id(row.id);
  therapist.set_user_name(row.user_name);
  therapist.set_display_name(row.display_name);
  therapist.set_role(row.role);
  return therapist;
}

}  // namespace

bool roleMay(v1::Role role, CallKind kind) {
  switch (role) {
    case v1::ROLE_LEAD:
      return true;
    case v1::ROLE_THERAPIST:
      return kind != CallKind::Settings && kind != CallKind::Assign;
    case v1::ROLE_AUDITOR:
      return kind == CallKind::Own || kind == CallKind::Read;
    case v1::ROLE_ADMINISTRATOR:
      return kind == CallKind::Own || kind == CallKind::Access || kind == CallKind::Settings ||
             kind == CallKind::Find || kind == CallKind::Assign;
    default:
      return false;
  }
}

absl::StatusOr<v1::Therapist> Accounts::add(const std::string& user_name, const std::string& display_name,
                                            v1::Role role, const std::string& password) {
  if (!isUserName(user_name)) {
    return absl::InvalidArgumentError("user_name: 2 to 60 of a-z, 0-9, dot, hyphen, underscore, @");
  }
  if (display_name.empty() || display_name.size() > 200) {
    return absl::InvalidArgumentError("display_name: 1 to 200 bytes");
  }
  if (role == v1::ROLE_UNSPECIFIED || !v1::Role_IsValid(role)) {
    return absl::InvalidArgumentError("role: is missing");
  }
  const absl::Status good = checkPassword(password, user_name);
  if (!good.ok()) return good;
  const auto hash = hashPassword(password);
  if (!hash.ok()) return hash.status();
  const AccountRow row{newRecordId(*m_hub->clock, *m_hub->random), user_name, display_name, role, *hash};
  const absl::Status added = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    if (transaction.accountByName(user_name).has_value()) {
      return absl::AlreadyExistsError("user_name: is taken");
    }
    transaction.addAccount(row);
    m_hub->audit->add(transaction, {.action = "account.add", .record = row.id});
    return absl::OkStatus();
  });
  if (!added.ok()) return added;
  return therapistOf(row);
}

absl::Status Accounts::mayTry(const std::string& key) {
  const absl::Duration wait = m_throttle.waitFor(key);
  if (wait <= absl::ZeroDuration()) return absl::OkStatus();
  m_hub->audit->refusal(*m_hub->store, {.action = "account.too_many"});
  const std::int64_t seconds = absl::ToInt64Seconds(wait) + 1;
  return absl::ResourceExhaustedError("tried too often; wait " + std::to_string(seconds) + " seconds");
}

absl::StatusOr<v1::SignInReply> Accounts::signIn(const v1::SignInRequest& request, const std::string& peer) {
  if (request.user_name().size() > 200 || request.password().size() > 1000) return noEntry();
  const std::string key = request.user_name() + "\n" + peer;
  const absl::Status may = mayTry(key);
  if (!may.ok()) return may;
  std::optional<AccountRow> account;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) {
    account = transaction.accountByName(request.user_name());
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  // The same work for a name that nobody has.
  const bool fits =
      passwordFits(account.has_value() ? account->password_hash : nobodysHash(), request.password());
  if (!account.has_value() || !fits) {
    m_throttle.failed(key);
    // Never the name as typed: it may be a password in the wrong field.
    m_hub->audit->refusal(*m_hub->store,
                          {.action = "account.refused", .who = account.has_value() ? account->id : ""});
    return refusedFor(account.has_value() ? account->id : "", noEntry());
  }
  auto reply = admit(*account, request.code());
  if (reply.ok()) {
    m_throttle.succeeded(key);
  } else if (absl::IsUnauthenticated(reply.status())) {
    m_throttle.failed(key);
    m_hub->audit->refusal(*m_hub->store, {.action = "account.refused", .who = account->id, .field = "code"});
  }
  // A code that is only missing is no failure, and no success that would forgive earlier ones.
  if (!reply.ok()) return refusedFor(account->id, reply.status());
  return reply;
}

// The password fits: the code, when there is a second factor, and the session, in one transaction.
absl::StatusOr<v1::SignInReply> Accounts::admit(const AccountRow& account, const std::string& code) {
  const std::string token = toBase64Url(randomBytes(*m_hub->random, kTokenBytes));
  const absl::Time now = m_hub->clock->wall();
  const absl::Time ends = now + kSessionLife;
  v1::SignInReply reply;
  const absl::Status added = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    bool factor = false;
    absl::Status good = takeCode(transaction, account.id, code, now, factor);
    if (!good.ok()) return good;
    reply.set_second_factor(factor);
    auto card = clinicCard(transaction);
    if (!card.ok()) return card.status();
    *reply.mutable_clinic() = *std::move(card);
    *reply.mutable_pins() = signedPins(transaction);
    transaction.dropSessions(now);
    transaction.addSession(sha256(token), {account.id, ends});
    m_hub->audit->add(transaction, {.action = "account.sign_in", .who = account.id});
    return absl::OkStatus();
  });
  if (!added.ok()) return added;
  reply.set_session(token);
  *reply.mutable_therapist() = therapistOf(account);
  *reply.mutable_hub_time() = toTimestamp(now);
  *reply.mutable_ends_at() = toTimestamp(ends);
  return reply;
}

absl::Status Accounts::signOut(const DeskCaller& caller) {
  absl::Status ended = m_hub->store->write([&](HubTransaction& transaction) {
    transaction.endSession(caller.session_sha256);
    m_hub->audit->add(transaction, {.action = "account.sign_out", .who = caller.therapist.id()});
    return absl::OkStatus();
  });
  if (ended.ok()) m_hub->board->closeSession(caller.session_sha256);
  return ended;
}

// The password again: a desk that stands open must not give its finder the account.
absl::StatusOr<AccountRow> Accounts::ownAccount(const DeskCaller& caller, const std::string& password,
                                                const std::string& peer) {
  const std::string key = caller.therapist.user_name() + "\n" + peer;
  const absl::Status may = mayTry(key);
  if (!may.ok()) return may;
  std::optional<AccountRow> account;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) {
    account = transaction.account(caller.therapist.id());
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  if (!account.has_value() || password.size() > 1000 || !passwordFits(account->password_hash, password)) {
    m_throttle.failed(key);
    m_hub->audit->refusal(*m_hub->store, {.action = "account.refused", .who = caller.therapist.id()});
    return absl::UnauthenticatedError("password: wrong");
  }
  return *account;
}

absl::StatusOr<v1::BeginSecondFactorReply> Accounts::beginFactor(const DeskCaller& caller,
                                                                 const v1::BeginSecondFactorRequest& request,
                                                                 const std::string& peer) {
  const auto account = ownAccount(caller, request.password(), peer);
  if (!account.ok()) return account.status();
  return beginSecondFactor(*m_hub, *account);
}

absl::StatusOr<v1::ChangePasswordReply> Accounts::changePassword(const DeskCaller& caller,
                                                                 const v1::ChangePasswordRequest& request,
                                                                 const std::string& peer) {
  const auto account = ownAccount(caller, request.password(), peer);
  if (!account.ok()) return account.status();
  absl::Status good = checkPassword(request.new_password(), account->user_name);
  if (!good.ok()) return good;
  const auto hash = hashPassword(request.new_password());
  if (!hash.ok()) return hash.status();
  std::vector<std::string> ended;
  absl::Status changed = m_hub->store->write([&](HubTransaction& transaction) {
    transaction.setPasswordHash(account->id, *hash);
    ended = transaction.endSessionsOf(account->id, caller.session_sha256);
    m_hub->audit->add(transaction, {.action = "account.password_change", .who = account->id});
    return absl::OkStatus();
  });
  if (!changed.ok()) return changed;
  for (const auto& session : ended) m_hub->board->closeSession(session);
  return v1::ChangePasswordReply();
}

absl::StatusOr<v1::ConfirmSecondFactorReply> Accounts::confirmFactor(
    const DeskCaller& caller, const v1::ConfirmSecondFactorRequest& request) {
  std::vector<std::string> ended;
  const absl::Status confirmed = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    const std::string& id = caller.therapist.id();
    absl::Status good = confirmSecondFactor(transaction, id, request.code(), m_hub->clock->wall());
    if (!good.ok()) return good;
    ended = transaction.endSessionsOf(id, caller.session_sha256);
    m_hub->audit->add(transaction, {.action = "account.factor_confirm", .who = id});
    return absl::OkStatus();
  });
  if (!confirmed.ok()) return confirmed;
  for (const auto& session : ended) m_hub->board->closeSession(session);
  return v1::ConfirmSecondFactorReply();
}

absl::Status Accounts::setPassword(const std::string& user_name, const std::string& password) {
  absl::Status good = checkPassword(password, user_name);
  if (!good.ok()) return good;
  const auto hash = hashPassword(password);
  if (!hash.ok()) return hash.status();
  std::vector<std::string> ended;
  absl::Status set = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    const auto account = transaction.accountByName(user_name);
    if (!account.has_value()) return absl::NotFoundError("name: there is no such account");
    transaction.setPasswordHash(account->id, *hash);
    ended = transaction.endSessionsOf(account->id, "");
    m_hub->audit->add(transaction, {.action = "account.password_set", .record = account->id});
    return absl::OkStatus();
  });
  for (const auto& session : ended) m_hub->board->closeSession(session);
  return set;
}

absl::Status Accounts::resetFactor(const std::string& user_name) {
  std::vector<std::string> ended;
  absl::Status reset = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    const auto account = transaction.accountByName(user_name);
    if (!account.has_value()) return absl::NotFoundError("name: there is no such account");
    if (!transaction.dropSecondFactor(account->id)) {
      return absl::FailedPreconditionError("name: that account has no second factor");
    }
    ended = transaction.endSessionsOf(account->id, "");
    m_hub->audit->add(transaction, {.action = "account.factor_reset", .record = account->id});
    return absl::OkStatus();
  });
  for (const auto& session : ended) m_hub->board->closeSession(session);
  return reset;
}

absl::StatusOr<DeskCaller> Accounts::authenticate(const std::string& session, CallKind kind) {
  if (session.empty() || session.size() > 200) return absl::UnauthenticatedError("authorization: no session");
  DeskCaller caller;
  caller.session_sha256 = sha256(session);
  std::optional<AccountRow> account;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) {
    const auto found = transaction.session(caller.session_sha256);
    if (found.has_value() && found->ends_at > m_hub->clock->wall()) {
      account = transaction.account(found->account_id);
    }
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  if (!account.has_value()) {
    m_hub->audit->refusal(*m_hub->store, {.action = "desk.refused", .field = "session"});
    return absl::UnauthenticatedError("session: sign in again");
  }
  caller.therapist = therapistOf(*account);
  if (!roleMay(account->role, kind)) {
    m_hub->audit->refusal(*m_hub->store, {.action = "desk.refused", .who = account->id, .field = "role"});
    return refusedFor(account->id, absl::PermissionDeniedError("role: not with this account"));
  }
  return caller;
}

bool Accounts::sessionIsGood(const std::string& session_sha256) {
  bool good = false;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) {
    const auto found = transaction.session(session_sha256);
    good = found.has_value() && found->ends_at > m_hub->clock->wall();
    return absl::OkStatus();
  });
  return good || !read.ok();
}

}  // namespace newel
