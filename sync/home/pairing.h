// Making this phone one person's: what a spent code brings, checked and kept in one transaction.
#pragma once

#include <absl/status/status.h>

#include <string>

#include "sync/home/device_store.h"
#include "sync/home/hub_link.h"

namespace newel {

// kInvalidArgument names what is missing or wrong in the hub's answer; nothing is kept then.
absl::Status checkPairReply(const v1::PairReply& reply);

// Keeps the answer. A phone whose access was ended and that is paired again for the same person keeps
// everything and offers it again; for another person every byte of the former one goes first.
// Inside a transaction of DeviceStore; throws as Database does.
void keepPairing(Database& database, const PairedHub& paired, const std::string& app_version, absl::Time now);

}  // namespace newel
