#include <map>
#include <string>

#include "core/records/check_parts.h"
#include "core/records/media_type.h"

namespace newel {
namespace {

constexpr std::size_t kHashBytes = 32;
constexpr std::size_t kMostWords = 300;
constexpr std::size_t kMostCaptions = 2000;

void checkMedia(const FieldCheck& check, const v1::MediaRef& media) {
  check.that(media.sha256().size() == kHashBytes, "sha256", "is not 32 bytes");
  check.range("size_bytes", media.size_bytes(), 1, mostBytesOf(media.type()));
  check.text("words", media.words(), 1, kMostWords);
  check.that(media.words().find_first_not_of(" \t\r\n") != std::string::npos, "words",
             "say what it shows, for who does not see it");
  check.text("captions", media.captions(), 0, kMostCaptions);
}

}  // namespace

void checkPhoto(const FieldCheck& check, const v1::MediaRef& photo) {
  check.that(isPhoto(photo.type()), "type", "is neither JPEG nor PNG");
  check.that(photo.captions().empty(), "captions", "a photo says nothing");
  checkMedia(check, photo);
}

void checkClip(const FieldCheck& check, const v1::MediaRef& clip) {
  check.that(isClip(clip.type()), "type", "is neither MP4 nor WebM");
  checkMedia(check, clip);
}

void checkMediaTogether(const FieldCheck& check, const v1::Programme& programme) {
  std::map<std::string, std::uint64_t> sizes;  // one content named twice is there once
  for (const v1::MediaRef* media : mediaNamedBy(programme)) sizes[media->sha256()] = media->size_bytes();
  std::uint64_t together = 0;
  for (const auto& [hash, size] : sizes) together += size;
  check.that(together <= kMostProgrammeMediaBytes, "entries",
             "their photos and clips are more than 64 MiB together");
}

}  // namespace newel
