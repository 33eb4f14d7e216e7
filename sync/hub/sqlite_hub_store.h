// The hub's store in one SQLite file: one writer, several readers, every commit on the disk before write()
// returns. Writers that wait share one commit (group_commit.h).
#pragma once

#include <absl/status/statusor.h>

#include <memory>
#include <string>

#include "sync/hub/hub_store.h"

namespace newel {

// Opens or makes `path` (0600). kFailedPrecondition when a newer program wrote it; kDataLoss when it cannot
// be read: it is left where it is, because an empty clinic in its place would hide the loss. `vfs`: SQLite's
// file layer by name, empty: the system's.
absl::StatusOr<std::unique_ptr<HubStore>> openSqliteHubStore(const std::string& path,
                                                             const std::string& vfs = "");

// After an erasure: rewrites the file and cuts its log, so that no deleted byte is left on the disk. Also
// while it is served; kUnavailable when readers did not let go, to be run again.
absl::Status scrubSqliteHubStore(const std::string& path);

}  // namespace newel
