// A person's file as the exports take it (sync/export/person_history.h). Not here: who the person is, which
// no export has; signatures, which the desk never gets.
#pragma once

#include <absl/time/time.h>

#include "qml/desk/person_file.h"
#include "sync/export/person_history.h"

namespace newel::desk {

// As of `now`: what is due later is still to come.
PersonHistory historyOf(const PersonFile& file, absl::Time now);

}  // namespace newel::desk
