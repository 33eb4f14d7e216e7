// A person's file as sheets of paper: fills what qml/print needs from what the desk has.
#pragma once

#include <absl/status/statusor.h>

#include <QtGui/QPageSize>
#include <string>

#include "qml/desk/desk_context.h"
#include "qml/desk/person_file.h"

namespace newel::desk {

struct SheetChoice {
  double body_pt = 0;  // 0: the sheet's own
  QPageSize::PageSizeId size = QPageSize::A4;
  bool with_name = true;
  bool compact = false;  // a handout's layout
  std::string language;  // BCP 47; empty: the person's for what they take home, the desk's for the record
};

// The last programme's handout; returns the pages. kFailedPrecondition when there is no programme; otherwise
// as print::writeHandout().
absl::StatusOr<int> saveHandoutSheet(const PersonFile& file, const DeskContext& context,
                                     const SheetChoice& choice, const QString& name);
// The card for the wallet, with the pain limits of the last programme where there is one; as
// print::writeCard().
absl::StatusOr<int> saveCardSheet(const PersonFile& file, const DeskContext& context,
                                  const SheetChoice& choice, const QString& name);
// The progress report of [first, last]; as print::writeReport().
absl::StatusOr<int> saveReportSheet(const PersonFile& file, const DeskContext& context, absl::CivilDay first,
                                    absl::CivilDay last, const QString& name, const SheetChoice& choice = {});

}  // namespace newel::desk
