// Build-time program: proves the progression presets and writes them into one C++ file.
#include "core/progress/progression_presets.h"
#include "core/records/embedding.h"
#include "core/records/record_text.h"

int main(int argc, char** argv) {
  return newel::embedMain(argc, argv, "kProgressionPresets",
                          [](const std::string& folder) -> absl::StatusOr<std::string> {
                            const auto presets = newel::loadProgressionPresets(folder);
                            if (!presets.ok()) return presets.status();
                            newel::v1::ProgressionPresetList list;
                            for (const auto& preset : *presets) *list.add_presets() = preset;
                            return newel::toBytes(list);
                          });
}
