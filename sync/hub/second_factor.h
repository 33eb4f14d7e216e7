// The second factor of an account: made, confirmed, asked for while signing in, taken away. Not here: the
// codes themselves (totp.h).
// The secret stands in the store as it is, beside the clinic's signing key: the hub has to compute codes from
// it, and who can read the store has all that the factor protects.
#pragma once

#include <absl/status/statusor.h>

#include <string>

#include "sync/hub/hub_context.h"
#include "sync/protocol/desk_service.pb.h"

namespace newel {

// A new secret in place of one that was never confirmed. kAlreadyExists: one is in use.
absl::StatusOr<v1::BeginSecondFactorReply> beginSecondFactor(const HubContext& hub,
                                                             const AccountRow& account);

// Inside a write transaction. kFailedPrecondition: none was begun, or it is in use already. kInvalidArgument:
// the code is not right.
absl::Status confirmSecondFactor(HubTransaction& transaction, const std::string& account_id,
                                 const std::string& code, absl::Time now);

// Inside the write transaction of a sign-in whose password fits: takes the code, so that it counts once.
// kPermissionDenied: a code is needed and `code` is empty. kUnauthenticated: not right, or used already.
// `in_use` says whether the account has one.
absl::Status takeCode(HubTransaction& transaction, const std::string& account_id, const std::string& code,
                      absl::Time now, bool& in_use);

}  // namespace newel
