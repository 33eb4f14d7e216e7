#include <set>

#include "core/records/record_folder.h"
#include "core/review/cert.h"

namespace newel {

absl::StatusOr<v1::CertTable> loadCertTable(const std::string& folder) {
  auto files = readRecordFolder<v1::CertTable>(folder);
  if (!files.ok()) return files.status();
  if (files->size() > 1) return absl::InvalidArgumentError(files->at(1).file + ":1: a second table");
  v1::CertTable& table = files->front().record;
  std::set<std::uint32_t> items;
  for (const auto& line : table.lines()) items.insert(line.item());
  for (std::uint32_t item = 1; item <= 16; ++item) {
    if (!items.contains(item)) {
      return absl::InvalidArgumentError(files->front().file + ":1: lines: item " + std::to_string(item) +
                                        " is missing");
    }
  }
  return std::move(table);
}

}  // namespace newel
