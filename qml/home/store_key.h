// The key that the phone's store is sealed with: from the system's secret store, or, where there is none and
// only when the person says so, from a file beside the data. Never a plain store, never a silent file.
#pragma once

#include <absl/status/statusor.h>

#include <functional>
#include <memory>
#include <optional>
#include <string>

#include "core/records/random.h"
#include "platform/secret_store.h"
#include "sync/home/home_engine.h"

namespace newel::home {

// `folder`: where the store is. `ask_for_file` is called when the system has no place for secrets; true: the
// person wants the key in a file. kCancelled when they do not; kUnavailable when a place that had the key is
// not there now (the store stays as it is); kDataLoss when what it holds is no key.
absl::StatusOr<std::string> storeKey(const std::string& folder, platform::SecretStore& secrets,
                                     Random& random, const std::function<bool()>& ask_for_file);

// Opens the phone's store with the key from storeKey(). Where a change of the key was cut off, at any moment,
// the key that fits is found and the other one goes. Errors as storeKey() and HomeEngine::open().
absl::StatusOr<std::unique_ptr<HomeEngine>> openWithKey(HomeEngine::Options options,
                                                        platform::SecretStore& secrets,
                                                        const std::function<bool()>& ask_for_file);

// How long a key is used. NIST SP 800-57 part 1 allows two years for encrypting data (from memory).
inline constexpr absl::Duration kStoreKeyLife = absl::Hours(24 * 365);
// Whether the store of `engine` has had its key for that long; a store whose key was never changed counts
// from its oldest practice.
bool keyIsOld(const HomeEngine& engine, absl::Time now);

// Seals the store of `engine`, which lies in `folder`, with a new key:
//   1. the new key is kept beside the old one; 2. the store is sealed with it, in one transaction; 3. it
//   takes the old one's place; 4. the copy beside goes.
// Ended after 1 the old key fits, after 2 the one beside; openWithKey() finds out which. kFailedPrecondition:
// an earlier change was cut off since the store was opened.
absl::Status changeKey(HomeEngine& engine, const std::string& folder, platform::SecretStore& secrets,
                       Random& random);

}  // namespace newel::home
