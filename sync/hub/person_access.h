// Whose records an account may open: a therapist's own persons, those of anybody to leads and auditors, and,
// with a written reason and for a bounded time, somebody else's person when it cannot wait. What a role may
// do at all is in accounts.h.
#pragma once

#include <absl/status/statusor.h>

#include <string>

#include "sync/hub/hub_context.h"
#include "sync/protocol/desk_service.pb.h"

namespace newel {

// How long a record stays open by a reason, and how long those who look after the person are shown it. Ours,
// no source: a visit or a call; and over a week's end.
inline constexpr absl::Duration kOpeningLife = absl::Hours(1);
inline constexpr absl::Duration kOpeningShown = absl::Hours(24 * 7);

// Inside a transaction: may this account open this person's record at `now`?
bool mayOpen(HubTransaction& transaction, const v1::Therapist& therapist, const std::string& person_id,
             absl::Time now);

// True for roles whose caseload is their own persons only.
bool seesOnlyOwn(v1::Role role);

// Thread-safe.
class PersonAccess {
 public:
  explicit PersonAccess(const HubContext* hub) : m_hub(hub) {}

  // kPermissionDenied, audited, for somebody else's person. OK for an id that nobody has: the call itself
  // says so.
  absl::Status check(const DeskCaller& caller, const std::string& person_id);
  // The same without a line in the trail, for what an open stream may say.
  bool mayHear(const v1::Therapist& therapist, const std::string& person_id);

  // kNotFound: no such person.
  absl::StatusOr<v1::ListAssignmentsReply> assignments(const std::string& person_id);
  // kNotFound: no such person or therapist. Again is not an error.
  absl::StatusOr<v1::PutAssignmentReply> assign(const DeskCaller& caller,
                                                const v1::PutAssignmentRequest& request);
  // By the whole family name, in any case of the letters; at most 20. kInvalidArgument: shorter than two
  // letters.
  absl::StatusOr<v1::FindPersonsReply> find(const DeskCaller& caller, const v1::FindPersonsRequest& request);
  // kInvalidArgument: no reason. kNotFound: no such person. kFailedPrecondition: it is open to the caller
  // already.
  absl::StatusOr<v1::BreakGlassReply> breakGlass(const DeskCaller& caller,
                                                 const v1::BreakGlassRequest& request);

 private:
  const HubContext* m_hub;
};

// What was opened by a reason lately, for who may see the person: newest first. An account that is gone has
// an empty name.
void addOpenings(HubTransaction& transaction, const std::string& person_id, absl::Time now,
                 google::protobuf::RepeatedPtrField<v1::Opening>& list);

}  // namespace newel
