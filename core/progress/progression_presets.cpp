#include "core/progress/progression_presets.h"

#include <cstddef>

namespace newel {
namespace embedded {
extern const unsigned char kProgressionPresets[];
extern const std::size_t kProgressionPresetsSize;
}  // namespace embedded

const std::vector<v1::ProgressionPreset>& progressionPresets() {
  static const std::vector<v1::ProgressionPreset> kPresets = [] {
    v1::ProgressionPresetList list;
    // The build's own program wrote these bytes from records that passed every check.
    list.ParseFromArray(embedded::kProgressionPresets, static_cast<int>(embedded::kProgressionPresetsSize));
    return std::vector<v1::ProgressionPreset>(list.presets().begin(), list.presets().end());
  }();
  return kPresets;
}

}  // namespace newel
