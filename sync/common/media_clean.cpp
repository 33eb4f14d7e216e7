#include "sync/common/media_clean.h"

#include <utility>

#include "core/records/media_type.h"
#include "sync/common/media_formats.h"

namespace newel {
namespace {

absl::StatusOr<std::string> cleaned(std::string content, v1::MediaType type) {
  absl::Status done;
  switch (type) {
    case v1::MEDIA_TYPE_JPEG:
      return cleanJpeg(content);
    case v1::MEDIA_TYPE_PNG:
      return cleanPng(content);
    case v1::MEDIA_TYPE_MP4:
      done = cleanMp4(content);
      break;
    case v1::MEDIA_TYPE_WEBM:
      done = cleanWebm(content);
      break;
    default:
      return absl::InvalidArgumentError(
          "content: this is neither a photo (JPEG, PNG) nor a clip (MP4, MOV, WebM)");
  }
  if (!done.ok()) return done;
  return content;
}

}  // namespace

absl::Status checkPhotoSize(std::uint32_t width, std::uint32_t height) {
  if (width == 0 || height == 0) return absl::InvalidArgumentError("content: the photo has no size");
  if (width > kMostPhotoSide || height > kMostPhotoSide || std::uint64_t{width} * height > kMostPhotoPixels) {
    return absl::InvalidArgumentError("content: the photo has more than 8192 pixels a side or 40 million");
  }
  return absl::OkStatus();
}

absl::Status checkClipSize(std::uint32_t width, std::uint32_t height) {
  if (width == 0 || height == 0) return absl::InvalidArgumentError("content: the clip's picture has no size");
  if (width > kMostClipSide || height > kMostClipSide) {
    return absl::InvalidArgumentError("content: the clip has more than 4096 pixels a side");
  }
  return absl::OkStatus();
}

absl::Status cutShort() { return absl::InvalidArgumentError("content: it is cut short or damaged"); }

absl::StatusOr<CleanMedia> cleanMedia(const std::string& content) {
  const v1::MediaType type = sniffMedia(content);
  const std::uint64_t most = mostBytesOf(type);
  if (most > 0 && content.size() > most) {
    return absl::InvalidArgumentError("content: a " + std::string(isPhoto(type) ? "photo" : "clip") +
                                      " may have " + std::to_string(most >> 20U) + " MiB at most");
  }
  auto clean = cleaned(content, type);
  if (!clean.ok()) return clean.status();
  return CleanMedia{type, *std::move(clean)};
}

absl::Status checkCleanMedia(const std::string& content, v1::MediaType type) {
  const auto clean = cleanMedia(content);
  if (!clean.ok()) return clean.status();
  if (clean->type != type) return absl::InvalidArgumentError("type: the content is of another kind");
  if (clean->content != content) {
    return absl::InvalidArgumentError("content: it says more than the picture, such as where it was taken");
  }
  return absl::OkStatus();
}

}  // namespace newel
