// Reads the square (a QR code, ISO/IEC 18004) in a picture of the camera. Not here: what its text means
// (sync/common/pairing_ticket.h).
#pragma once

#include <optional>
#include <string>

#include "platform/camera.h"

namespace newel::home {

// The text of the square; nullopt: none is to be read. Turned, tilted and mirrored ones are read too.
// Milliseconds.
std::optional<std::string> readSquare(const platform::GreyPicture& picture);

}  // namespace newel::home
