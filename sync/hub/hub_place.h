// Where a command of newel-hub finds the clinic's store, and how it says that it failed.
#pragma once

#include <absl/status/statusor.h>

#include <memory>
#include <string>

#include "sync/hub/hub_commands.h"
#include "sync/hub/hub_store.h"

namespace newel {

inline constexpr char kHubStoreName[] = "hub.db";
std::string storePath(const std::string& place);

// One line on `err`; the exit code.
int failed(const HubMachine& machine, const absl::Status& status);

// `make`: a missing store is made; otherwise it is an error that says what to do. In a database that is
// nobody's yet the missing clinic is found when the hub opens.
absl::StatusOr<std::unique_ptr<HubStore>> openStore(const std::string& place, bool make);

}  // namespace newel
