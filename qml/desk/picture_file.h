// A photo from a file on this desk, made fit to travel with an exercise.
#pragma once

#include <absl/status/statusor.h>

#include <QtCore/QString>
#include <string>

namespace newel::desk {

// JPEG of at most 48 KiB and 640 pixels a side, drawn anew from the pixels: nothing else of the file (place,
// time, camera) goes along. kInvalidArgument in words for people: no picture, or not to be made small enough.
absl::StatusOr<std::string> smallPicture(const QString& file);

}  // namespace newel::desk
