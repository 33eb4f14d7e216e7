// Everything the phone keeps about its person, as a document to read and print, in the person's language.
// Not here: the same for programs (HomeEngine::exportAll()), and where the file goes (take_along_model.h).
#pragma once

#include <absl/status/status.h>

#include <QtCore/QString>

#include "qml/home/home_parts.h"

namespace newel::home {

// The document's body as HTML, for the PDF and for tests. Empty where the phone belongs to nobody.
QString ownRecordHtml(const HomeParts& parts);

// kUnavailable when the file cannot be written, kFailedPrecondition when the phone belongs to nobody. UI
// thread.
absl::Status writeOwnRecord(const HomeParts& parts, const QString& file);

}  // namespace newel::home
