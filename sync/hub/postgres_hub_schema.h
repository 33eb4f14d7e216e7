// The tables of the PostgreSQL store, step by step, in the schema "newel". Forward only: a step that has been
// shipped is never edited.
#pragma once

#include <vector>

#include "sync/common/database.h"

namespace newel {

const std::vector<Migration>& postgresHubMigrations();

}  // namespace newel
