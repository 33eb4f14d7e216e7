// An error in words for a therapist: what happened, what it means, what to do.
#pragma once

#include <absl/status/status.h>

#include <QtCore/QString>

namespace newel::desk {

// `doing` completes "Could not ...", for example "send the message". Empty for OK.
QString problemWords(const absl::Status& status, const QString& doing);

}  // namespace newel::desk
