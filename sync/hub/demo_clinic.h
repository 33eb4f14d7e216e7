// A clinic that nobody works in and people who do not exist, to look around with. It holds no practices:
// those come from running the phone.
#pragma once

#include <absl/status/status.h>

#include <string>

#include "core/records/random.h"
#include "core/time/clock.h"
#include "sync/hub/hub_store.h"

namespace newel {

inline constexpr char kDemoUserName[] = "demo.therapist";
// Known to everybody, so it opens the demo clinic only: `newel-hub serve` keeps that one on this machine
// unless told otherwise.
inline constexpr char kDemoPassword[] = "demo-clinic-only";

// Fills an empty store, or what an earlier try left out; with the demo there already nothing changes.
// kFailedPrecondition: a real clinic is in this store.
absl::Status fillDemoClinic(HubStore& store, const Clock& clock, Random& random);

}  // namespace newel
