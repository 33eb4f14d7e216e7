// A person's export as files: which format, what it is made of, and how it gets onto the disk whole or not at
// all.
#pragma once

#include <absl/status/statusor.h>

#include <functional>
#include <string>
#include <vector>

#include "sync/export/export_options.h"
#include "sync/export/person_history.h"

namespace newel {

enum class ExportFormat {
  Fhir,      // one file, fhir_bundle.h
  Calendar,  // one file, calendar.h
  Csv,       // a folder, csv_tables.h
};
inline constexpr char kExportFormats[] = "fhir, ical or csv";
// kInvalidArgument "format: fhir, ical or csv".
absl::StatusOr<ExportFormat> parseExportFormat(const std::string& word);

struct ExportFile {
  std::string name;  // in the export's folder; empty: the export is this one file
  std::string text;
};

// Checks `history` at the door (checkHistory()), then writes. Errors as the three writers.
absl::StatusOr<std::vector<ExportFile>> makeExport(const PersonHistory& history, ExportFormat format,
                                                   const ExportOptions& options,
                                                   const ExportProgress& progress = {});

// What to tell whoever made one, in a sentence: how careful to be with it.
std::string exportCare(const ExportOptions& options);

// Takes "YYYY-MM-DD" for the days to tell of; empty: no bound. kInvalidArgument "from: ..." or "to: ...".
absl::Status setDays(const std::string& from, const std::string& to, PersonHistory& history);

// `path`: a file, or a folder where `files` have names; nobody else may read it. Nothing is ever replaced:
// kAlreadyExists when it is there. `before_it_counts` runs when all is on the disk under another name, and
// its error leaves nothing behind: what must be written down elsewhere before the export exists. Empty:
// nothing. kPermissionDenied, kResourceExhausted, kInternal: the disk.
absl::Status writeExport(const std::string& path, const std::vector<ExportFile>& files,
                         const std::function<absl::Status()>& before_it_counts);

}  // namespace newel
