#include "platform/offset_clock.h"

#include <cstdlib>

namespace newel::platform {

absl::Duration wallOffsetAskedFor() {
  const char* text = std::getenv("NEWEL_WALL_OFFSET_S");
  if (text == nullptr) return absl::ZeroDuration();
  char* end = nullptr;
  const long long seconds = std::strtoll(text, &end, 10);
  return end != text && *end == '\0' ? absl::Seconds(seconds) : absl::ZeroDuration();
}

}  // namespace newel::platform
