// What a camera sees of a square (a QR code made by libqrencode) on a screen: turned, tilted, far away, in
// bad light.
#pragma once

#include <string>

#include "platform/camera.h"

namespace newel::tests {

struct Seen {
  double turned_deg = 0;
  double module_px = 6;  // size of one module
  double tilt = 0;       // how much shorter the far edge is, 0 to 0.5
  double contrast = 1;   // 1: black on white
  double noise = 0;      // standard deviation of the brightness, of 255
  bool mirrored = false;
};

// 720 x 720, the square in the middle on grey.
platform::GreyPicture greySquare(const std::string& text, const Seen& seen = {});

}  // namespace newel::tests
