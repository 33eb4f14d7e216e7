// Everything the phone keeps about its person, as a document to read and print, in the person's language.
// Not here: the same for programs (HomeEngine::exportAll()), and where the file goes (take_along_model.h).
#pragma once

#include <absl/status/status.h>

#include <QtCore/QString>
#include <QtCore/QStringList>

#include "qml/home/home_parts.h"

namespace newel::home {

// The document in parts that a page may break between; each is HTML. No blocks where the phone belongs to
// nobody.
struct OwnRecordText {
  QString title;
  QString foot;
  QStringList blocks;
};
OwnRecordText ownRecord(const HomeParts& parts);  // UI thread

// kUnavailable when the file cannot be written, kFailedPrecondition when there is nothing to write. Any
// thread; years of practices take seconds.
absl::Status writeOwnRecord(const OwnRecordText& record, const QString& file);

}  // namespace newel::home
