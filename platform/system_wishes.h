// What the owner has asked of the whole system, for their eyes: less movement, more contrast. Where the
// system cannot say, nothing is asked. UI thread.
#pragma once

#include <functional>
#include <memory>

namespace newel::platform {

class SystemWishes {
 public:
  virtual ~SystemWishes() = default;
  virtual bool lessMotion() const = 0;
  virtual bool moreContrast() const = 0;
  // Called when either has changed, also when the system's first answer comes in.
  virtual void onChange(std::function<void()> changed) = 0;
};

// A running QCoreApplication is needed. On Linux: the desktop's portal (org.freedesktop.portal.Settings; keys
// "contrast" and "reduced-motion" of org.freedesktop.appearance), and what desktops answered there before
// these two had a name: org.gnome.desktop.interface "enable-animations", org.gnome.desktop.a11y.interface
// "high-contrast". Asked once, not waited for; later changes arrive by themselves.
std::unique_ptr<SystemWishes> makeSystemWishes();

}  // namespace newel::platform
