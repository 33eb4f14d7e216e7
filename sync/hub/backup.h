// A copy of the clinic's store while it is being served, and its proof.
#pragma once

#include <absl/status/status.h>
#include <absl/time/time.h>

#include <optional>
#include <string>

#include "sync/hub/hub_store.h"

namespace newel {

// Copies the store at `store_path` to the new file `to` (0600; it holds everything, the keys too) with
// SQLite's online backup, checks every page and the audit chain of the copy, marks it as a backup, and only
// then gives it its name. kAlreadyExists: `to` is there. kDataLoss: the copy does not check. To restore, put
// the file in the place of an empty folder's store: the hub then begins a new generation, and phones offer
// again what the backup may lack.
absl::Status backupStore(const std::string& store_path, const std::string& to);

// When the last copy was made, for the clinic's page at the desk; the copy itself does not know of it.
void noteBackup(HubTransaction& transaction, absl::Time at);
std::optional<absl::Time> lastBackup(HubTransaction& transaction);  // nullopt: never

}  // namespace newel
