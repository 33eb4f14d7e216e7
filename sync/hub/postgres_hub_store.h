// The hub's store in a PostgreSQL database that several hub processes may share. Writers of all of them take
// turns by one lock, so that what is told of the sequence in hub_store.h holds across processes; readers wait
// for nobody.
#pragma once

#include <absl/status/statusor.h>

#include <memory>
#include <string>

#include "sync/hub/hub_store.h"

namespace newel {

// Connects, and makes or migrates the tables in the schema "newel". `address`: postgres://user@host/database;
// what it leaves out comes from the usual PG environment and password file. Errors as PgSession::open() and
// migrate() give them; none of them repeats the address.
absl::StatusOr<std::unique_ptr<HubStore>> openPostgresHubStore(const std::string& address);

}  // namespace newel
