// A person's file as sheets of paper: fills what qml/print needs from what the desk has.
#pragma once

#include <absl/status/statusor.h>

#include <QtGui/QPageSize>

#include "qml/desk/desk_context.h"
#include "qml/desk/person_file.h"

namespace newel::desk {

struct SheetChoice {
  double body_pt = 0;  // 0: the sheet's own
  QPageSize::PageSizeId size = QPageSize::A4;
  bool with_name = true;
};

// The last programme's handout; returns the pages. kFailedPrecondition when there is no programme; otherwise
// as print::writeHandout().
absl::StatusOr<int> saveHandoutSheet(const PersonFile& file, const DeskContext& context,
                                     const SheetChoice& choice, const QString& name);
absl::StatusOr<int> saveHandoutSheet(const PersonFile& file, const DeskContext& context, bool large_print,
                                     const QString& name);
// The progress report of [first, last]; as print::writeReport().
absl::StatusOr<int> saveReportSheet(const PersonFile& file, const DeskContext& context, absl::CivilDay first,
                                    absl::CivilDay last, const QString& name, const SheetChoice& choice = {});

}  // namespace newel::desk
