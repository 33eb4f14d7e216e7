// What every part of the hub works with; made once in Hub. Pointers outlive their users.
#pragma once

#include "core/library/catalogue.h"
#include "core/records/random.h"
#include "core/safety/rule_book.h"
#include "core/time/clock.h"
#include "sync/hub/audit_trail.h"
#include "sync/hub/clinic.h"
#include "sync/hub/hub_store.h"
#include "sync/hub/nudge_board.h"

namespace newel {

struct HubContext {
  HubStore* store = nullptr;
  const Clock* clock = nullptr;
  Random* random = nullptr;
  NudgeBoard* board = nullptr;
  AuditTrail* audit = nullptr;
  const Clinic* clinic = nullptr;
  const Catalogue* catalogue = nullptr;
  const RuleBook* rules = nullptr;
};

// An authenticated phone: what its token says, and nothing from its requests.
struct PhoneCaller {
  struct Contact {
    absl::Time at;
    PhoneSays says;
  };
  std::string device_id;
  std::string person_id;
  std::optional<Contact> contact{};  // still to be noted, with whatever the call writes
};

// An authenticated therapist.
struct DeskCaller {
  v1::Therapist therapist;
  std::string session_sha256;
};

// Puts `envelope` into the feed of `person_id` (empty: everybody) with the next sequence, which it returns.
std::uint64_t commitToFeed(HubTransaction& transaction, const HubContext& hub, const std::string& person_id,
                           v1::Envelope envelope, bool replace);

// The field at the beginning of a check's message, "entries[2].dose", without the value that may follow.
std::string fieldOf(const absl::Status& status);

}  // namespace newel
