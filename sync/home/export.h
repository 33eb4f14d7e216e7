// Everything that the phone keeps about its person, as text that the person can read and take along.
#pragma once

#include <string>

#include "sync/common/database.h"

namespace newel {

// One JSON object; records with the field names of core/records. Tokens and keys are left out. Inside a read
// of DeviceStore; throws as Database does.
std::string exportStore(Database& database);

}  // namespace newel
