#include "qml/desk/file_words.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QStringList>

#include "qml/print/record_words.h"

namespace newel::desk {

QString titleOfEntry(const PersonFile& file, const std::string& entry_id, const DeskContext& context) {
  const v1::Entry* entry = entryOf(file, entry_id);
  return entry == nullptr ? QCoreApplication::translate("FileWords", "an earlier exercise")
                          : print::titleOf(*context.catalogue, entry->exercise_id(), context.language);
}

QString heldWords(const PersonFile& file, const v1::HoldOrder& hold, const DeskContext& context) {
  if (hold.entry_ids().empty()) return QCoreApplication::translate("FileWords", "everything");
  QStringList titles;
  for (const auto& id : hold.entry_ids()) titles << titleOfEntry(file, id, context);
  return titles.join(QStringLiteral(", "));
}

}  // namespace newel::desk
