#include "platform/paths.h"

#include <cstdlib>

namespace newel::platform {

std::string dataFolder(const std::string& program) {
  const char* data = std::getenv("XDG_DATA_HOME");
  if (data != nullptr && data[0] == '/') return std::string(data) + "/" + program;
  const char* home = std::getenv("HOME");
  return std::string(home != nullptr ? home : "/tmp") + "/.local/share/" + program;
}

}  // namespace newel::platform
