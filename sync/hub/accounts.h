// Who signs in, and with what: passwords, second factors, sessions. Not here: who has an account
// (account_book.h), and whose records it may open (person_access.h).
#pragma once

#include <absl/status/statusor.h>
#include <absl/time/time.h>

#include <string>

#include "sync/hub/hub_context.h"
#include "sync/hub/throttle.h"
#include "sync/protocol/desk_service.pb.h"

namespace newel {

// NIST SP 800-63B 4.2.2 and 4.2.3 (AAL2): signed in again after 12 hours whatever happens, and after 30
// minutes without use; OWASP ASVS 5.0 7.3.1, 7.3.2 ask for both. The desk locks itself sooner and keeps a
// session in use while somebody works at it.
inline constexpr absl::Duration kSessionLife = absl::Hours(12);
inline constexpr absl::Duration kSessionIdle = absl::Minutes(30);
// A use is written down when the last one lies this far back, so that reading does not mean writing.
inline constexpr absl::Duration kNoteUseEvery = absl::Minutes(1);

// What a call does, for the table of who may make it.
enum class CallKind {
  Own,       // about the caller's own session
  Read,      // looks at persons' records
  Clinical,  // changes what persons are to do, or writes to them
  Access,    // pairing and ending the access of phones
  Phones,    // looks which phones a person has
  Settings,  // changes what the clinic has set for all
  Find,      // looks whether somebody is known to the clinic
  Open,      // opens somebody else's person by a written reason
  Assign,    // says whose persons are whose
  Staff,     // looks at the clinic's accounts
  Accounts,  // makes and changes them
  Audit,     // looks at the audit trail
};

// True when an account of `role` may make such a call. Lead: all. Therapist: all but the clinic's settings,
// assignments, accounts and trail. Auditor: reads, the trail too. Administrator: access, settings,
// assignments and accounts, not what is in the records. About whom is another question: person_access.h.
bool roleMay(v1::Role role, CallKind kind);

v1::Therapist therapistOf(const AccountRow& row);

// kInvalidArgument names the field.
absl::Status checkAccount(const std::string& user_name, const std::string& display_name, v1::Role role);

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

  // kUnauthenticated: no such session, or it has ended. kPermissionDenied: not with this role, or not before
  // the account has a password of its own and the second factor that the clinic asks for. Counts as a use.
  absl::StatusOr<DeskCaller> authenticate(const std::string& session, CallKind kind);
  bool sessionIsGood(const std::string& session_sha256);

 private:
  // kResourceExhausted, audited, while `key` has to wait.
  absl::Status mayTry(const std::string& key);
  absl::StatusOr<v1::SignInReply> admit(const AccountRow& account, const std::string& code);
  // The caller's account, when `password` is its own; tried too often is kResourceExhausted.
  absl::StatusOr<AccountRow> prove(const DeskCaller& caller, const std::string& password,
                                   const std::string& peer);
  void noteUse(const std::string& session_sha256, const SessionRow& session);

  const HubContext* m_hub;
  Throttle m_throttle;
};

}  // namespace newel
