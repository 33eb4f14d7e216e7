#include "sync/hub/account_book.h"

#include <utility>

#include "core/time/local_day.h"
#include "sync/common/record_id.h"
#include "sync/hub/accounts.h"
#include "sync/hub/first_password.h"
#include "sync/hub/password.h"

namespace newel {
namespace {

v1::Account shown(HubTransaction& transaction, const AccountRow& row) {
  v1::Account account;
  *account.mutable_therapist() = therapistOf(row);
  const auto factor = transaction.secondFactor(row.id);
  account.set_second_factor(factor.has_value() && factor->confirmed);
  account.set_disabled(row.disabled);
  if (row.first_until.has_value()) {
    *account.mutable_first_password_until() = toTimestamp(*row.first_until);
  }
  return account;
}

// Looked at again inside the transaction: two who switch each other off at the same moment must not both
// succeed.
absl::Status stillMay(HubTransaction& transaction, const DeskCaller& caller) {
  const auto account = transaction.account(caller.therapist.id());
  if (!account.has_value() || account->disabled || !roleMay(account->role, CallKind::Accounts)) {
    return absl::PermissionDeniedError("role: not with this account");
  }
  return absl::OkStatus();
}

struct FirstPassword {
  std::string text;
  std::string hash;
};

absl::StatusOr<FirstPassword> makeFirstPassword(Random& random) {
  FirstPassword password{newFirstPassword(random), ""};
  auto hash = hashPassword(canonicalFirstPassword(password.text));
  if (!hash.ok()) return hash.status();
  password.hash = *std::move(hash);
  return password;
}

}  // namespace

absl::StatusOr<v1::ListAccountsReply> AccountBook::list() {
  v1::ListAccountsReply reply;
  absl::Status read = m_hub->store->read([&](HubTransaction& transaction) {
    reply.Clear();
    for (const auto& row : transaction.accounts()) *reply.add_accounts() = shown(transaction, row);
    return absl::OkStatus();
  });
  if (!read.ok()) return read;
  return reply;
}

absl::StatusOr<v1::AddAccountReply> AccountBook::add(const DeskCaller& caller,
                                                     const v1::AddAccountRequest& request) {
  const absl::Status good = checkAccount(request.user_name(), request.display_name(), request.role());
  if (!good.ok()) return good;
  const auto password = makeFirstPassword(*m_hub->random);
  if (!password.ok()) return password.status();
  AccountRow row{newRecordId(*m_hub->clock, *m_hub->random), request.user_name(), request.display_name(),
                 request.role(), password->hash};
  row.first_until = m_hub->clock->wall() + kFirstPasswordLife;
  v1::AddAccountReply reply;
  const absl::Status added = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    absl::Status may = stillMay(transaction, caller);
    if (!may.ok()) return may;
    if (transaction.accountByName(row.user_name).has_value()) {
      return absl::AlreadyExistsError("user_name: is taken");
    }
    transaction.addAccount(row);
    m_hub->audit->add(transaction, {.action = "account.add", .who = caller.therapist.id(), .record = row.id});
    *reply.mutable_account() = shown(transaction, row);
    return absl::OkStatus();
  });
  if (!added.ok()) return added;
  reply.set_first_password(password->text);
  return reply;
}

absl::Status AccountBook::changeOther(
    const DeskCaller& caller, const std::string& account_id, const char* action, v1::Account* kept,
    const std::function<absl::Status(HubTransaction& transaction, AccountRow& row)>& body) {
  if (account_id == caller.therapist.id()) {
    return absl::FailedPreconditionError("account_id: nobody changes their own account; ask another");
  }
  std::vector<std::string> ended;
  absl::Status changed = m_hub->store->write([&](HubTransaction& transaction) -> absl::Status {
    absl::Status may = stillMay(transaction, caller);
    if (!may.ok()) return may;
    auto row = transaction.account(account_id);
    if (!row.has_value()) return absl::NotFoundError("account_id: there is no such account");
    absl::Status done = body(transaction, *row);
    if (!done.ok()) return done;
    transaction.putAccount(*row);
    ended = transaction.endSessionsOf(account_id, "");
    m_hub->audit->add(transaction, {.action = action, .who = caller.therapist.id(), .record = account_id});
    if (kept != nullptr) *kept = shown(transaction, *row);
    return absl::OkStatus();
  });
  if (!changed.ok()) return changed;
  for (const auto& session : ended) m_hub->board->closeSession(session);
  return absl::OkStatus();
}

absl::StatusOr<v1::ChangeAccountReply> AccountBook::change(const DeskCaller& caller,
                                                           const v1::ChangeAccountRequest& request) {
  const absl::Status good = checkAccount("any.name", request.display_name(), request.role());
  if (!good.ok()) return good;
  v1::ChangeAccountReply reply;
  absl::Status changed =
      changeOther(caller, request.account_id(), request.disabled() ? "account.off" : "account.change",
                  reply.mutable_account(), [&](HubTransaction& /*transaction*/, AccountRow& row) {
                    row.display_name = request.display_name();
                    row.role = request.role();
                    row.disabled = request.disabled();
                    return absl::OkStatus();
                  });
  if (!changed.ok()) return changed;
  return reply;
}

absl::StatusOr<v1::NewFirstPasswordReply> AccountBook::newFirstPassword(
    const DeskCaller& caller, const v1::NewFirstPasswordRequest& request) {
  const auto password = makeFirstPassword(*m_hub->random);
  if (!password.ok()) return password.status();
  const absl::Time until = m_hub->clock->wall() + kFirstPasswordLife;
  v1::NewFirstPasswordReply reply;
  absl::Status changed =
      changeOther(caller, request.account_id(), "account.first_password", reply.mutable_account(),
                  [&](HubTransaction& /*transaction*/, AccountRow& row) {
                    row.password_hash = password->hash;
                    row.first_until = until;
                    return absl::OkStatus();
                  });
  if (!changed.ok()) return changed;
  reply.set_first_password(password->text);
  return reply;
}

absl::StatusOr<v1::TakeSecondFactorReply> AccountBook::takeFactor(
    const DeskCaller& caller, const v1::TakeSecondFactorRequest& request) {
  absl::Status taken =
      changeOther(caller, request.account_id(), "account.factor_reset", nullptr,
                  [](HubTransaction& transaction, AccountRow& row) {
                    return transaction.dropSecondFactor(row.id)
                               ? absl::OkStatus()
                               : absl::FailedPreconditionError("account_id: has no second factor");
                  });
  if (!taken.ok()) return taken;
  return v1::TakeSecondFactorReply();
}

}  // namespace newel
