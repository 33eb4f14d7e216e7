#include "qml/desk/idle_watch.h"

namespace newel::desk {

void IdleWatch::begin(absl::Duration now, absl::Duration limit) {
  m_last = now;
  m_limit = limit;
}

bool IdleWatch::used(absl::Duration now) {
  if (due(now)) return false;
  m_last = now;
  return true;
}

}  // namespace newel::desk
