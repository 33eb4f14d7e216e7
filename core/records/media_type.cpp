#include "core/records/media_type.h"

#include <array>

namespace newel {
namespace {

using namespace std::string_view_literals;

bool begins(std::string_view content, std::string_view with) {
  return content.substr(0, with.size()) == with;
}

// The brands of moving pictures; the still ones of the same family (HEIC, AVIF) are not among them.
constexpr std::array kClipBrands = {"isom"sv, "iso2"sv, "iso3"sv, "iso4"sv, "iso5"sv, "iso6"sv, "iso7"sv,
                                    "iso8"sv, "iso9"sv, "mp41"sv, "mp42"sv, "avc1"sv, "M4V "sv, "M4VH"sv,
                                    "M4VP"sv, "dash"sv, "3gp4"sv, "3gp5"sv, "3gp6"sv, "qt  "sv};

bool isMp4(std::string_view content) {
  constexpr std::size_t kType = 4;
  constexpr std::size_t kBrand = 8;
  if (content.size() < kBrand + 4 || content.substr(kType, 4) != "ftyp"sv) return false;
  const std::string_view brand = content.substr(kBrand, 4);
  for (const std::string_view known : kClipBrands) {
    if (brand == known) return true;
  }
  return false;
}

}  // namespace

v1::MediaType sniffMedia(std::string_view content) {
  if (begins(content, "\xFF\xD8\xFF"sv)) return v1::MEDIA_TYPE_JPEG;
  if (begins(content, "\x89PNG\r\n\x1A\n"sv)) return v1::MEDIA_TYPE_PNG;
  if (begins(content, "\x1A\x45\xDF\xA3"sv)) return v1::MEDIA_TYPE_WEBM;
  return isMp4(content) ? v1::MEDIA_TYPE_MP4 : v1::MEDIA_TYPE_UNSPECIFIED;
}

bool isPhoto(v1::MediaType type) { return type == v1::MEDIA_TYPE_JPEG || type == v1::MEDIA_TYPE_PNG; }
bool isClip(v1::MediaType type) { return type == v1::MEDIA_TYPE_MP4 || type == v1::MEDIA_TYPE_WEBM; }

std::uint64_t mostBytesOf(v1::MediaType type) {
  if (isPhoto(type)) return kMostPhotoBytes;
  return isClip(type) ? kMostClipBytes : 0;
}

std::vector<const v1::MediaRef*> mediaNamedBy(const v1::Programme& programme) {
  std::vector<const v1::MediaRef*> named;
  for (const v1::Entry& entry : programme.entries()) {
    if (entry.has_photo()) named.push_back(&entry.photo());
    if (entry.has_clip()) named.push_back(&entry.clip());
  }
  return named;
}

}  // namespace newel
