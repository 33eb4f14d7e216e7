// What leaves and what comes in open formats: `newel export` and `newel import`. As in commands.h each is a
// function from options to text and an exit code; no clock is read.
#pragma once

#include <string>
#include <vector>

#include "sync/export/export_options.h"
#include "sync/tool/commands.h"

namespace newel::tool {

struct ExportFilesOptions {
  // Either what a phone gave its owner to take along, or records one by one.
  std::string record;
  std::string person;
  std::vector<std::string> programmes, practices, holds, messages, receipts, wear_logs, measures;
  std::string format, out, from, to;
  bool templates = false;   // the starting templates instead of a record: fhir alone
  std::string as_of;        // RFC 3339: what is due later is still to come
  std::string heard_until;  // last day the phone was heard from; empty: as_of
  ExportOptions options;
};
// One person's record in an open format (export_files.h), as a new file or folder; stopped on the way, it
// leaves neither it nor a part of it.
int runExport(const ExportFilesOptions& options, Output output);

// What a FHIR file gives the desk to begin with (fhir_import.h). kSaysNo: it is refused, or it has a warning
// that must be read first.
int runImport(const std::string& file, Output output);

}  // namespace newel::tool
