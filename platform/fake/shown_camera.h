// A camera that sees what a test shows it. Not thread-safe.
#pragma once

#include <string>
#include <utility>

#include "platform/camera.h"

namespace newel::platform {

class ShownCamera : public Camera {
 public:
  std::string whyNot() const override { return m_why_not; }
  void watch(std::function<void(const GreyPicture&)> seen, std::function<void()> changed) override {
    if (!m_why_not.empty()) return;
    m_seen = std::move(seen);
    m_changed = std::move(changed);
  }
  void stop() override {
    m_seen = nullptr;
    m_changed = nullptr;
  }

  bool isOn() const { return m_seen != nullptr; }
  void show(const GreyPicture& picture) {
    // The one who sees may stop the camera while it is being told.
    if (const auto seen = m_seen) seen(picture);
  }
  void breakWith(const std::string& why_not) {
    m_why_not = why_not;
    if (const auto changed = m_changed) changed();
  }

 private:
  std::string m_why_not;
  std::function<void(const GreyPicture&)> m_seen;
  std::function<void()> m_changed;
};

}  // namespace newel::platform
