// Words about what stands in a person's file, as several pages say them.
#pragma once

#include <QtCore/QString>
#include <string>

#include "qml/desk/desk_context.h"
#include "qml/desk/person_file.h"

namespace newel::desk {

// The title of the entry's exercise; of one that no programme of the file has: that it is an earlier one.
QString titleOfEntry(const PersonFile& file, const std::string& entry_id, const DeskContext& context);
// What the order holds: everything, or titles with commas.
QString heldWords(const PersonFile& file, const v1::HoldOrder& hold, const DeskContext& context);

}  // namespace newel::desk
