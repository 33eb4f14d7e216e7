// The tables of the SQLite store, step by step. Forward only: a step that has been shipped is never edited.
#pragma once

#include <vector>

#include "sync/common/database.h"

namespace newel {

const std::vector<Migration>& hubMigrations();

}  // namespace newel
