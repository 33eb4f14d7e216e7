// Photos and clips before they are kept or sent: what kind they are, that they are whole, and nothing in them
// of where, when, by whom or with what they were taken. Only what is needed to show them stays; whatever is
// not known is blanked or, where that cannot be done, refused. Not here: whether a picture decodes; what is
// to be seen in it.
#pragma once

#include <absl/status/statusor.h>

#include <string>

#include "core/records/media.pb.h"

namespace newel {

struct CleanMedia {
  v1::MediaType type = v1::MEDIA_TYPE_UNSPECIFIED;
  std::string content;
};

// The cleaned content; cleaning that again changes nothing. kInvalidArgument, in plain words: no kind that is
// taken, cut short, too large, or with something in it that cannot be cleaned.
//   JPEG: APPn segments and comments go, but for the two that say how colours are written; what follows the
//     picture goes. The turn noted in Exif goes too: turn the pixels first (the desk draws photos anew).
//   PNG: chunks beside the picture and its colours go.
//   MP4, QuickTime: boxes that are not needed to play become "free" and their bytes zero; so do tracks that
//     are neither picture nor sound (a camera's positions), with their samples; dates become zero.
//   WebM: elements that are not needed to play become "Void" and their bytes zero.
absl::StatusOr<CleanMedia> cleanMedia(const std::string& content);

// OK when `content` is exactly what cleanMedia() gives of it, and of this type. The errors are its.
absl::Status checkCleanMedia(const std::string& content, v1::MediaType type);

}  // namespace newel
