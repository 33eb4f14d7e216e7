// The wear plan inside a programme: whose it is, and its number among the person's plans. A plan that the
// last one already was goes on as it is, with its number: only a changed one is a new word of the clinic,
// which ends what the skin stopped (core/schedule/wear_plan.h).
#pragma once

#include <absl/status/status.h>

#include <string>

#include "core/records/programme.pb.h"
#include "sync/hub/hub_store.h"

namespace newel {

// Without what only the hub may say.
v1::WearPlan strippedPlan(v1::WearPlan plan);

// The programme's person, clinic, zone, signer and time on its plan, with the first number.
void nameWearPlan(v1::Programme& programme, const std::string& new_id);

// In the transaction that keeps the programme: the plan kept before where it is the same, or the next number.
// kDataLoss when an earlier programme cannot be read.
absl::Status settleWearPlan(HubTransaction& transaction, v1::Programme& programme);

}  // namespace newel
