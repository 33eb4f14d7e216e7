// Who has an account at this clinic: made, changed, switched off, helped when a password or a second factor
// is lost. Nobody changes their own account here, so one who may is always left. Not here: signing in
// (accounts.h).
#pragma once

#include <absl/status/statusor.h>

#include <string>

#include "sync/hub/hub_context.h"
#include "sync/protocol/desk_service.pb.h"

namespace newel {

// Thread-safe. Errors: desk_service.proto, and kNotFound for an id that no account has.
class AccountBook {
 public:
  explicit AccountBook(const HubContext* hub) : m_hub(hub) {}

  absl::StatusOr<v1::ListAccountsReply> list();
  // kInvalidArgument names the field; kAlreadyExists: the name is taken.
  absl::StatusOr<v1::AddAccountReply> add(const DeskCaller& caller, const v1::AddAccountRequest& request);
  absl::StatusOr<v1::ChangeAccountReply> change(const DeskCaller& caller,
                                                const v1::ChangeAccountRequest& request);
  absl::StatusOr<v1::NewFirstPasswordReply> newFirstPassword(const DeskCaller& caller,
                                                             const v1::NewFirstPasswordRequest& request);
  // kFailedPrecondition: there is none, not even one begun.
  absl::StatusOr<v1::TakeSecondFactorReply> takeFactor(const DeskCaller& caller,
                                                       const v1::TakeSecondFactorRequest& request);

 private:
  // Reads the account, lets `body` change it, keeps it, ends its sessions and writes `action` into the trail,
  // all in one transaction; then closes the account's streams.
  absl::Status changeOther(
      const DeskCaller& caller, const std::string& account_id, const char* action, v1::Account* kept,
      const std::function<absl::Status(HubTransaction& transaction, AccountRow& row)>& body);

  const HubContext* m_hub;
};

}  // namespace newel
