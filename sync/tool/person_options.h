// A person from a file, or one made up from a side and a level for looking at what the catalogue does.
#pragma once

#include <absl/status/statusor.h>

#include "core/records/person.pb.h"
#include "sync/tool/commands.h"

namespace newel::tool {

// Errors name the option or the file's field.
absl::StatusOr<v1::Person> personFrom(const PersonOptions& options);

}  // namespace newel::tool
