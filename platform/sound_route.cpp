#include "platform/sound_route.h"

#include <algorithm>

namespace newel::platform {

bool RouteWatch::changed(const std::vector<std::string>& there, const std::string& default_id) {
  const bool lost = !m_in_use.empty() && std::find(there.begin(), there.end(), m_in_use) == there.end();
  m_in_use = default_id;
  return lost;
}

}  // namespace newel::platform
