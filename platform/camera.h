// The phone's camera, for reading the square that the clinic shows. Only while the page for it is open;
// nothing of what it sees is kept or leaves the phone. UI thread.
#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace newel::platform {

// Brightness, row by row from the top, 0 black to 255 white; `pixels` is width x height bytes.
struct GreyPicture {
  int width = 0;
  int height = 0;
  std::vector<std::uint8_t> pixels;
};

class Camera {
 public:
  virtual ~Camera() = default;
  // Why there is nothing to see, as a text key, or empty: "camera.none" (no camera), "camera.refused" (the
  // person or the system does not let us), "camera.broken" (it gave up).
  virtual std::string whyNot() const = 0;
  // Opens the camera on the back where there is one, and hands over what it sees, some ten pictures a second,
  // until stop(). `changed` is called when whyNot() may have become another. Does nothing when whyNot() has a
  // reason.
  virtual void watch(std::function<void(const GreyPicture&)> seen, std::function<void()> changed) = 0;
  // Gives the camera back; nothing is called any more once this returns.
  virtual void stop() = 0;
};

// The system's own. Needs a running QGuiApplication on Linux.
std::unique_ptr<Camera> makeCamera();

}  // namespace newel::platform
