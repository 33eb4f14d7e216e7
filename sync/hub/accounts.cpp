#include "sync/hub/accounts.h"

#include <utility>

#include "core/library/settings.h"
#include "core/time/local_day.h"
#include "sync/common/content_hash.h"
#include "sync/common/record_id.h"
#include "sync/common/text_codes.h"
#include "sync/hub/caller_facts.h"
#include "sync/hub/clinic_library.h"
#include "sync/hub/first_password.h"
#include "sync/hub/password.h"
#include "sync/hub/second_factor.h"

namespace newel {
namespace {

constexpr std::size_t kTokenBytes = 32;
constexpr std::size_t kMostTyped = 1000;
constexpr char kEnrolSetting[] = "second-factor-required";

absl::Status noEntry() { return absl::UnauthenticatedError("name or password is wrong"); }

bool isUserName(const std::string& name) {
  if (name.size() < 2 || name.size() > 60) return false;
  return name.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789.-_@") == std::string::npos;
}

bool fits(const AccountRow& account, const std::string& password) {
  return passwordFits(account.password_hash,
                      account.first_until.has_value() ? canonicalFirstPassword(password) : password);
}

bool holds(const SessionRow& session, absl::Time now) {
  return session.ends_at > now && session.last_used + kSessionIdle > now;
}

// Sets in the reply what the account still has to do before its session is good for more.
void addDuties(HubTransaction& transaction, const HubContext& hub, const AccountRow& account, bool factor,
               v1::SignInReply& reply) {
  const auto card = clinicCard(transaction);
  const bool required = card.ok() && settingValues(card->settings(), *hub.catalogue).at(kEnrolSetting) != 0;
  reply.set_must_change_password(account.first_until.has_value());
  reply.set_must_enrol(required && !factor);
}

bool hasDuties(HubTransaction& transaction, const HubContext& hub, const AccountRow& account) {
  const auto factor = transaction.secondFactor(account.id);
  v1::SignInReply reply;
  addDuties(transaction, hub, account, factor.has_value() && factor->confirmed, reply);
  return reply.must_change_password() || reply.must_enrol();
}

}  // namespace

v1::Therapist therapistOf(const AccountRow& row) {
  v1::Therapist therapist;
  therapist.set_id(row.id);
  therapist.set_user_name(row.user_name);
  therapist.set_display_name(row.display_name);
  therapist.set_role(row.role);
  return therapist;
}

absl::Status checkAccount(const std::string& user_name, const std::string& display_name, v1::Role role) {
  if (!isUserName(user_name)) {
    return absl::InvalidArgumentError("user_name: 2 to 60 of a-z, 0-9, dot, hyphen, underscore, @");
  }
  if (display_name.empty() || display_name.size() > 200) {
    return absl::InvalidArgumentError("display_name: 1 to 200 bytes");
  }
  if (role == v1::ROLE_UNSPECIFIED || !v1::Role_IsValid(role)) {
    return absl::InvalidArgumentError("role: is missing");
  }
  return absl::OkStatus();
}

bool roleMay(v1::Role role, CallKind kind) {
  switch (role) {
    case v1::ROLE_LEAD:
      return true;
    case v1::ROLE_THERAPIST:
      return kind != CallKind::Settings && kind != CallKind::Assign && kind != CallKind::Staff &&
             kind != CallKind::Accounts && kind != CallKind::Audit;
    case v1::ROLE_AUDITOR:
      return kind == CallKind::Own || kind == CallKind::Read || kind == CallKind::Phones ||
             kind == CallKind::Staff || kind == CallKind::Audit;
    case v1::ROLE_ADMINISTRATOR:
      return kind == CallKind::Own || kind == CallKind::Access || kind == CallKind::Phones ||
             kind == CallKind::Settings || kind == CallKind::Find || kind == CallKind::Assign ||
             kind == CallKind::Staff || kind == CallKind::Accounts;
    default:
      return false;
  }
}

absl::StatusOr<v1::Therapist> Accounts::add(const std::string& user_name, const std::string& display_name,
                                            v1::Role role, const std::string& password) {
  absl::Status good = checkAccount(user_name, display_name, role);
  if (good.ok()) good = checkPassword(password, user_name);
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
  if (request.user_name().size() > 200 || request.password().size() > kMostTyped) return noEntry();
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
  const bool right = account.has_value() ? fits(*account, request.password())
                                         : passwordFits(nobodysHash(), request.password());
  if (!account.has_value() || !right) {
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
  // A code that is only missing is no failure, and no success that would forgive earlier ones; nor is an
  // account that is switched off.
  if (!reply.ok()) return refusedFor(account->id, reply.status());
  return reply;
}

// The password fits: the code, when there is a second factor, and the session, in one transaction.
absl::StatusOr<v1::SignInReply> Accounts::admit(const AccountRow& account, const std::string& code) {
  const std::string token = toBase64Url(randomBytes(*m_hub->random, kTokenBytes));
  const absl::Time now = m_hub->clock->wall();
  const absl::Time ends = now + kSessionLife;
  if (account.disabled) return absl::FailedPreconditionError("account: is switched off");
  if (account.first_until.has_value() && *account.first_until <= now) {
    return absl::FailedPreconditionError("password: the first password is too old; ask for a new one");
  }
  v1::SignInReply reply;
  const absl::Status added = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    bool factor = false;
    absl::Status good = takeCode(transaction, account.id, code, now, factor);
    if (!good.ok()) return good;
    reply.set_second_factor(factor);
    addDuties(transaction, *m_hub, account, factor, reply);
    auto card = clinicCard(transaction);
    if (!card.ok()) return card.status();
    *reply.mutable_clinic() = *std::move(card);
    *reply.mutable_pins() = signedPins(transaction);
    transaction.dropSessions(now);
    transaction.addSession(sha256(token),
                           {account.id, ends, now, reply.must_change_password() || reply.must_enrol()});
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

absl::StatusOr<AccountRow> Accounts::prove(const DeskCaller& caller, const std::string& password,
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
  if (!account.has_value() || password.size() > kMostTyped || !fits(*account, password)) {
    m_throttle.failed(key);
    m_hub->audit->refusal(*m_hub->store, {.action = "account.refused", .who = caller.therapist.id()});
    return absl::UnauthenticatedError("password: wrong");
  }
  return *std::move(account);
}

// The password again: a desk that stands open must not give its finder a factor of their own.
absl::StatusOr<v1::BeginSecondFactorReply> Accounts::beginFactor(const DeskCaller& caller,
                                                                 const v1::BeginSecondFactorRequest& request,
                                                                 const std::string& peer) {
  const auto account = prove(caller, request.password(), peer);
  if (!account.ok()) return account.status();
  return beginSecondFactor(*m_hub, *account);
}

absl::StatusOr<v1::ChangePasswordReply> Accounts::changePassword(const DeskCaller& caller,
                                                                 const v1::ChangePasswordRequest& request,
                                                                 const std::string& peer) {
  const auto proven = prove(caller, request.old_password(), peer);
  if (!proven.ok()) return proven.status();
  const absl::Status good = checkPassword(request.new_password(), proven->user_name);
  if (!good.ok()) return good;
  if (fits(*proven, request.new_password())) {
    return absl::InvalidArgumentError("password: is the old one again");
  }
  const auto hash = hashPassword(request.new_password());
  if (!hash.ok()) return hash.status();
  std::vector<std::string> ended;
  const absl::Status changed = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    auto account = transaction.account(proven->id);
    // Somebody gave out a new first password meanwhile: that one counts.
    if (!account.has_value() || account->password_hash != proven->password_hash) {
      return absl::AbortedError("password: was changed meanwhile; sign in again");
    }
    account->password_hash = *hash;
    account->first_until.reset();
    transaction.putAccount(*account);
    transaction.setSessionLimited(caller.session_sha256, hasDuties(transaction, *m_hub, *account));
    ended = transaction.endSessionsOf(account->id, caller.session_sha256);
    m_hub->audit->add(transaction, {.action = "account.password", .who = account->id});
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
    const auto account = transaction.account(id);
    if (!account.has_value()) return absl::UnauthenticatedError("session: sign in again");
    transaction.setSessionLimited(caller.session_sha256, hasDuties(transaction, *m_hub, *account));
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
    auto account = transaction.accountByName(user_name);
    if (!account.has_value()) return absl::NotFoundError("name: there is no such account");
    account->password_hash = *hash;
    account->first_until.reset();
    transaction.putAccount(*account);
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
  std::optional<SessionRow> found;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) {
    account.reset();
    found = transaction.session(caller.session_sha256);
    if (found.has_value() && holds(*found, m_hub->clock->wall())) {
      account = transaction.account(found->account_id);
    }
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  if (!account.has_value() || account->disabled) {
    m_hub->audit->refusal(*m_hub->store, {.action = "desk.refused", .field = "session"});
    return absl::UnauthenticatedError("session: sign in again");
  }
  caller.therapist = therapistOf(*account);
  if (!roleMay(account->role, kind)) {
    m_hub->audit->refusal(*m_hub->store, {.action = "desk.refused", .who = account->id, .field = "role"});
    return refusedFor(account->id, absl::PermissionDeniedError("role: not with this account"));
  }
  if (found->limited && kind != CallKind::Own) {
    m_hub->audit->refusal(*m_hub->store, {.action = "desk.refused", .who = account->id, .field = "limited"});
    return absl::PermissionDeniedError("session: first a password of your own and the second factor");
  }
  noteUse(caller.session_sha256, *found);
  return caller;
}

// Failing to write it down is not an error of the call: the session then ends sooner.
void Accounts::noteUse(const std::string& session_sha256, const SessionRow& session) {
  const absl::Time now = m_hub->clock->wall();
  if (now - session.last_used < kNoteUseEvery) return;
  m_hub->store
      ->write([&](HubTransaction& transaction) {
        transaction.noteSessionUse(session_sha256, now);
        return absl::OkStatus();
      })
      .IgnoreError();
}

bool Accounts::sessionIsGood(const std::string& session_sha256) {
  bool good = false;
  const absl::Status read = m_hub->store->read([&](HubTransaction& transaction) {
    const auto found = transaction.session(session_sha256);
    good = found.has_value() && holds(*found, m_hub->clock->wall());
    return absl::OkStatus();
  });
  return good || !read.ok();
}

}  // namespace newel
