#include "sync/export/export_files.h"

#include <fcntl.h>
#include <unistd.h>

#include <filesystem>
#include <utility>

#include "core/time/local_day.h"
#include "sync/common/database.h"
#include "sync/export/calendar.h"
#include "sync/export/csv_tables.h"
#include "sync/export/fhir_bundle.h"

namespace newel {
namespace {

namespace fs = std::filesystem;

absl::StatusOr<std::vector<ExportFile>> single(absl::StatusOr<std::string> text) {
  if (!text.ok()) return text.status();
  return std::vector<ExportFile>{{"", *std::move(text)}};
}

absl::Status flush(const std::string& path) {
  const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  const bool flushed = file >= 0 && ::fsync(file) == 0;
  if (file >= 0) ::close(file);
  return flushed ? absl::OkStatus() : absl::ResourceExhaustedError("out: could not write all of " + path);
}

absl::Status writeOne(const std::string& path, const std::string& text) {
  absl::Status written = writePrivateFile(path, text);
  return written.ok() ? flush(path) : written;
}

absl::Status writeAll(const std::string& part, const std::vector<ExportFile>& files) {
  if (files.size() == 1 && files[0].name.empty()) return writeOne(part, files[0].text);
  absl::Status done = ensurePrivateFolder(part);
  for (const auto& file : files) {
    if (done.ok()) done = writeOne(part + "/" + file.name, file.text);
  }
  return done.ok() ? flush(part) : done;
}

absl::Status checkDay(const std::string& name, const std::string& text) {
  const auto day = parseLocalDay(text);
  if (day.ok()) return absl::OkStatus();
  return absl::InvalidArgumentError(name + ": " + std::string(day.status().message()));
}

}  // namespace

absl::StatusOr<ExportFormat> parseExportFormat(const std::string& word) {
  if (word == "fhir") return ExportFormat::Fhir;
  if (word == "ical") return ExportFormat::Calendar;
  if (word == "csv") return ExportFormat::Csv;
  return absl::InvalidArgumentError(std::string("format: ") + kExportFormats);
}

absl::StatusOr<std::vector<ExportFile>> makeExport(const PersonHistory& history, ExportFormat format,
                                                   const ExportOptions& options,
                                                   const ExportProgress& progress) {
  absl::Status good = checkHistory(history);
  if (!good.ok()) return good;
  switch (format) {
    case ExportFormat::Fhir:
      return single(fhirBundle(history, options, progress));
    case ExportFormat::Calendar: {
      absl::Status going = askProgress(progress, 0);
      return going.ok() ? single(calendarOf(history, options)) : going;
    }
    case ExportFormat::Csv:
      break;
  }
  auto tables = csvTables(history, options, progress);
  if (!tables.ok()) return tables.status();
  std::vector<ExportFile> files;
  for (auto& table : *tables) files.push_back({std::move(table.name), std::move(table.text)});
  return files;
}

std::string exportCare(const ExportOptions& options) {
  return options.with_words
             ? "Names may stand in what people wrote: keep it as you would the record."
             : "It holds no name, and still it is about somebody: keep it as you would the record.";
}

absl::Status setDays(const std::string& from, const std::string& to, PersonHistory& history) {
  absl::Status good = from.empty() ? absl::OkStatus() : checkDay("from", from);
  if (good.ok() && !to.empty()) good = checkDay("to", to);
  if (!good.ok()) return good;
  if (!from.empty()) history.first_day = from;
  if (!to.empty()) history.last_day = to;
  if (history.last_day < history.first_day) return absl::InvalidArgumentError("to: is before from");
  return absl::OkStatus();
}

absl::Status writeExport(const std::string& path, const std::vector<ExportFile>& files,
                         const std::function<absl::Status()>& before_it_counts) {
  if (path.empty()) return absl::InvalidArgumentError("out: is empty");
  std::error_code error;
  if (fs::exists(fs::symlink_status(path, error)))
    return absl::AlreadyExistsError("out: " + path + " is there already, and is left as it is");
  // 1. What an earlier attempt left goes. 2. All of it under another name, on the disk. 3.
  // `before_it_counts`.
  // 4. The name. A crash before 4 leaves a ".part" that nobody takes for an export.
  const std::string part = path + ".part";
  fs::remove_all(part, error);
  absl::Status done = writeAll(part, files);
  if (done.ok() && before_it_counts) done = before_it_counts();
  if (done.ok()) {
    fs::rename(part, path, error);
    if (!error) return absl::OkStatus();
    done = absl::PermissionDeniedError("out: " + path + ": " + error.message());
  }
  fs::remove_all(part, error);
  return done;
}

}  // namespace newel
