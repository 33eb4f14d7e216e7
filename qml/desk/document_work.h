// One document of a person's record: what it is called, what it is made of, and how it gets onto the disk
// whole or not at all. Not here: who asks for it and where the audit trail's line comes from
// (documents_model.h, print_command.h).
#pragma once

#include <absl/status/statusor.h>
#include <absl/time/civil_time.h>

#include <string>
#include <vector>

#include "qml/desk/desk_context.h"
#include "qml/desk/person_file.h"
#include "qml/desk/sheets.h"
#include "sync/export/export_files.h"

namespace newel::desk {

enum class DocumentKind { Handout, Report, Card, Fhir, Calendar, Csv };

struct DocumentWish {
  DocumentKind kind = DocumentKind::Handout;
  SheetChoice sheet;     // of a sheet of paper
  absl::CivilDay first;  // of a report, both ends included
  absl::CivilDay last;
  std::string from;  // of FHIR and CSV, YYYY-MM-DD; empty: all
  std::string to;
  ExportOptions options;  // of FHIR, calendar and CSV
};

// As the hub's trail says it: "fhir", "ical", "csv", "handout", "report" or "card".
const char* formatWord(DocumentKind kind);
bool isSheet(DocumentKind kind);  // a PDF, with the person's name on it
// A path in `folder` that nothing has yet: the person's name in it for a sheet, and never for an export,
// which is pseudonymous. `folder` need not exist.
QString newDocumentPath(const QString& folder, DocumentKind kind, const SheetChoice& sheet,
                        const PersonFile& file, absl::CivilDay today);

// Any thread: `context` is the caller's copy, and what it points to stays. `path` names only where a sheet is
// drawn before it is taken back as bytes. kCancelled when `progress` ends it; otherwise as sheets.h and
// export_files.h.
absl::StatusOr<std::vector<ExportFile>> makeDocument(const DocumentWish& wish, const PersonFile& file,
                                                     const DeskContext& context, const QString& path,
                                                     const ExportProgress& progress);

}  // namespace newel::desk
