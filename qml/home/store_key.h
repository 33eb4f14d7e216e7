// The key that the phone's store is sealed with: from the system's secret store, or, where there is none and
// only when the person says so, from a file beside the data. Never a plain store, never a silent file.
#pragma once

#include <absl/status/statusor.h>

#include <functional>
#include <string>

#include "core/records/random.h"
#include "platform/secret_store.h"

namespace newel::home {

// `folder`: where the store is. `ask_for_file` is called when the system has no place for secrets; true: the
// person wants the key in a file. kCancelled when they do not; kUnavailable when a place that had the key is
// not there now (the store stays as it is); kDataLoss when what it holds is no key.
absl::StatusOr<std::string> storeKey(const std::string& folder, platform::SecretStore& secrets,
                                     Random& random, const std::function<bool()>& ask_for_file);

}  // namespace newel::home
