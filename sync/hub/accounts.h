// Therapists' accounts and sessions.
#pragma once

#include <absl/status/statusor.h>

#include <string>

#include "sync/hub/hub_context.h"
#include "sync/hub/throttle.h"
#include "sync/protocol/desk_service.pb.h"

namespace newel {

// What a call does, for the table of who may make it.
enum class CallKind {
  Own,       // about the caller's own session
  Read,      // looks at persons' records
  Clinical,  // changes what persons are to do, or writes to them
  Access,    // pairing and ending the access of phones
  Settings,  // changes what the clinic has set for all
  Find,      // looks whether somebody is known to the clinic
  Open,      // opens somebody else's person by a written reason
  Assign,    // says whose persons are whose
};

// True when an account of `role` may make such a call. Lead: all. Therapist: all but the clinic's settings
// and assignments. Auditor: reads. Administrator: access, settings and assignments, not what is in the
// records. About whom is another question: person_access.h.
bool roleMay(v1::Role role, CallKind kind);

// Thread-safe.
class Accounts {
 public:
  explicit Accounts(const HubContext* hub) : m_hub(hub), m_throttle(hub->clock) {}

  // kInvalidArgument names the field; kAlreadyExists: the name is taken.
  absl::StatusOr<v1::Therapist> add(const std::string& user_name, const std::string& display_name,
                                    v1::Role role, const std::string& password);

  // kUnauthenticated for a wrong name and a wrong password alike, after the same time. kResourceExhausted
  // when this name was tried too often from `peer` (an address without its port).
  // For an account with a second factor also kPermissionDenied: the rest is right, the code is needed;
  // kUnauthenticated with "code: ..." when it is not right.
  absl::StatusOr<v1::SignInReply> signIn(const v1::SignInRequest& request, const std::string& peer);
  absl::Status signOut(const DeskCaller& caller);

  // The caller's own second factor; desk_service.proto says what each answer means.
  absl::StatusOr<v1::BeginSecondFactorReply> beginFactor(const DeskCaller& caller,
                                                         const v1::BeginSecondFactorRequest& request,
                                                         const std::string& peer);
  absl::StatusOr<v1::ConfirmSecondFactorReply> confirmFactor(const DeskCaller& caller,
                                                             const v1::ConfirmSecondFactorRequest& request);
  absl::StatusOr<v1::ChangePasswordReply> changePassword(const DeskCaller& caller,
                                                         const v1::ChangePasswordRequest& request,
                                                         const std::string& peer);
  // For whoever runs the hub, when a password is forgotten: sets it and ends the account's sessions.
  // kNotFound: no such name. kInvalidArgument: password (password.h).
  absl::Status setPassword(const std::string& user_name, const std::string& password);
  // For whoever runs the hub, when the device with the codes is lost: takes the factor away and ends the
  // account's sessions. kNotFound: no such name. kFailedPrecondition: the account has none.
  absl::Status resetFactor(const std::string& user_name);

  // kUnauthenticated: no such session, or it has ended. kPermissionDenied: not with this role.
  absl::StatusOr<DeskCaller> authenticate(const std::string& session, CallKind kind);
  bool sessionIsGood(const std::string& session_sha256);

 private:
  absl::StatusOr<AccountRow> ownAccount(const DeskCaller& caller, const std::string& password,
                                        const std::string& peer);
  // kResourceExhausted, audited, while `key` has to wait.
  absl::Status mayTry(const std::string& key);
  absl::StatusOr<v1::SignInReply> admit(const AccountRow& account, const std::string& code);

  const HubContext* m_hub;
  Throttle m_throttle;
};

}  // namespace newel
