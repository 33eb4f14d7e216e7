#include <filesystem>

#include "core/progress/progression_presets.h"
#include "core/records/record_folder.h"

namespace newel {

absl::StatusOr<std::vector<v1::ProgressionPreset>> loadProgressionPresets(const std::string& folder) {
  auto files = readRecordFolder<v1::ProgressionPreset>(folder);
  if (!files.ok()) return files.status();
  std::vector<v1::ProgressionPreset> presets;
  for (auto& filed : *files) {
    if (std::filesystem::path(filed.file).stem() != filed.record.id()) {
      return absl::InvalidArgumentError(filed.file + ":1: id: is not the file's name");
    }
    presets.push_back(std::move(filed.record));
  }
  return presets;
}

}  // namespace newel
