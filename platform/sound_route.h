// Tells when what sound went to is gone: headphones pulled out, a hearing aid's link broken. Sound would then
// come from somewhere else, aloud.
#pragma once

#include <functional>
#include <string>
#include <vector>

namespace newel::platform {

class SoundRoute {
 public:
  virtual ~SoundRoute() = default;
  // `lost` is called on the UI thread, each time; an empty one: nobody listens.
  virtual void whenLost(std::function<void()> lost) = 0;
};

// The rule behind it: of the devices that are there, the default one is in use.
class RouteWatch {
 public:
  // To be told after every change of devices; ids as the system has them. True when the device that was in
  // use is not among them any more. A new device that takes over beside the old one is no loss.
  bool changed(const std::vector<std::string>& there, const std::string& default_id);

 private:
  std::string m_in_use;
};

}  // namespace newel::platform
