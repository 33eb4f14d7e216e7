// The kinds of media_clean.h, one function each. For sync/common alone.
#pragma once

#include <absl/status/status.h>
#include <absl/status/statusor.h>

#include <cstdint>
#include <string>
#include <string_view>

namespace newel {

// Errors as cleanMedia(); `content` begins as its kind does.
absl::StatusOr<std::string> cleanJpeg(std::string_view content);
absl::StatusOr<std::string> cleanPng(std::string_view content);
absl::Status cleanMp4(std::string& content);   // in place: no byte moves
absl::Status cleanWebm(std::string& content);  // in place

// Ours, no source: larger than any camera's photo or clip, small enough to unpack on a cheap phone.
inline constexpr std::uint32_t kMostPhotoSide = 8192;
inline constexpr std::uint64_t kMostPhotoPixels = 40'000'000;
inline constexpr std::uint32_t kMostClipSide = 4096;

absl::Status checkPhotoSize(std::uint32_t width, std::uint32_t height);
absl::Status checkClipSize(std::uint32_t width, std::uint32_t height);
absl::Status cutShort();

// Big-endian, of `bytes` from 1 to 8. The caller has looked that they are there.
inline std::uint64_t bigEndian(std::string_view from, std::size_t at, std::size_t bytes) {
  std::uint64_t value = 0;
  for (std::size_t i = 0; i < bytes; ++i) value = (value << 8U) | static_cast<unsigned char>(from[at + i]);
  return value;
}

}  // namespace newel
