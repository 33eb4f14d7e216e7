// PNG (W3C Recommendation, third edition) section 5; which chunks stay: 11.2 and, for colours, 11.3.
#include <array>

#include "sync/common/media_formats.h"

namespace newel {
namespace {

using namespace std::string_view_literals;

constexpr std::size_t kSignatureBytes = 8;
constexpr std::size_t kAroundBytes = 12;  // length, type, CRC
constexpr std::array kKept = {"IHDR"sv, "PLTE"sv, "tRNS"sv, "gAMA"sv, "cHRM"sv,
                              "sRGB"sv, "pHYs"sv, "IDAT"sv, "IEND"sv};

bool isKept(std::string_view type) {
  for (const std::string_view kept : kKept) {
    if (type == kept) return true;
  }
  return false;
}

bool isCritical(std::string_view type) { return (static_cast<unsigned char>(type[0]) & 0x20U) == 0; }

}  // namespace

absl::StatusOr<std::string> cleanPng(std::string_view content) {
  std::string out(content.substr(0, kSignatureBytes));
  std::size_t at = kSignatureBytes;
  bool pixels = false;
  while (content.size() - at >= kAroundBytes) {
    const std::uint64_t length = bigEndian(content, at, 4);
    if (length > content.size() - at - kAroundBytes) return cutShort();
    const std::string_view type = content.substr(at + 4, 4);
    const std::string_view whole = content.substr(at, kAroundBytes + length);
    if (at == kSignatureBytes) {
      if (type != "IHDR"sv || length != 13) return cutShort();
      const absl::Status size = checkPhotoSize(static_cast<std::uint32_t>(bigEndian(content, at + 8, 4)),
                                               static_cast<std::uint32_t>(bigEndian(content, at + 12, 4)));
      if (!size.ok()) return size;
    } else if (type == "IHDR"sv) {
      return cutShort();
    }
    at += whole.size();
    if (isKept(type)) {
      out += whole;
    } else if (isCritical(type)) {
      return absl::InvalidArgumentError("content: a rare kind of PNG; save it again");
    }
    pixels = pixels || type == "IDAT"sv;
    if (type == "IEND"sv) {
      if (length != 0 || !pixels) return cutShort();
      return out;
    }
  }
  return cutShort();
}

}  // namespace newel
