// A photo or a clip from a file on this desk, made fit to travel.
#pragma once

#include <absl/status/statusor.h>

#include <QtCore/QString>
#include <string>

#include "sync/common/media_clean.h"

namespace newel::desk {

// JPEG of at most 48 KiB and 640 pixels a side, drawn anew from the pixels: nothing else of the file (place,
// time, camera) goes along. kInvalidArgument in words for people: no picture, or not to be made small enough.
absl::StatusOr<std::string> smallPicture(const QString& file);

// For an entry: a clip as it is, cleaned; anything else that is a picture as a JPEG of at most 1280 pixels a
// side, drawn anew. `file` is a path or a file: address. kInvalidArgument in words for people.
absl::StatusOr<CleanMedia> mediaFrom(const QString& file);

}  // namespace newel::desk
