// Records kept as files: every "*.textproto" of a folder, each proved by its check() before anything may use
// it. For tables that are data (measures, wear examples, CERT lines): a new row is a new file.
// Not here: what must hold between the files of one table; the table knows.
#pragma once

#include <absl/status/status.h>
#include <absl/status/statusor.h>
#include <google/protobuf/message.h>

#include <functional>
#include <string>
#include <utility>
#include <vector>

#include "core/records/check.h"

namespace newel {

// Paths of the "*.textproto" files directly in `folder`, by name. kNotFound when the folder cannot be read or
// has none.
absl::StatusOr<std::vector<std::string>> recordFilesIn(const std::string& folder);

// Reads one file of protobuf text into an empty `record` and runs `check` on it. kInvalidArgument with
// "<file>:<line>: <reason>" on the first fault, lines from 1; kNotFound when the file cannot be read.
absl::Status readRecordFile(const std::string& file, google::protobuf::Message& record,
                            const std::function<absl::Status()>& check);

// The line (from 1) in `text` of the field that `path` names, "steps[2].block_min"; of the nearest field
// around it when that one is absent; 1 when nothing fits. `text` must parse as a message like `prototype`.
int lineOfPath(const std::string& text, const google::protobuf::Message& prototype, const std::string& path);

template <typename Record>
struct FiledRecord {
  std::string file;
  Record record;
};

// All of a folder; errors as above.
template <typename Record>
absl::StatusOr<std::vector<FiledRecord<Record>>> readRecordFolder(const std::string& folder) {
  const auto files = recordFilesIn(folder);
  if (!files.ok()) return files.status();
  std::vector<FiledRecord<Record>> all;
  for (const std::string& file : *files) {
    FiledRecord<Record> filed;
    filed.file = file;
    const absl::Status status = readRecordFile(file, filed.record, [&filed] { return check(filed.record); });
    if (!status.ok()) return status;
    all.push_back(std::move(filed));
  }
  return all;
}

}  // namespace newel
