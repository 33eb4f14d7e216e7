#include <cstddef>

#include "core/schedule/wear_library.h"

namespace newel {
namespace embedded {
extern const unsigned char kWear[];
extern const std::size_t kWearSize;
}  // namespace embedded

const WearLibrary& WearLibrary::builtIn() {
  static const WearLibrary kLibrary = [] {
    v1::WearFile file;
    // The build's own program wrote these bytes from records that passed every check.
    file.ParseFromArray(embedded::kWear, static_cast<int>(embedded::kWearSize));
    return fromFile(file);
  }();
  return kLibrary;
}

}  // namespace newel
