// A photo or clip as somebody sends it: told by its content, cleaned, or refused.
#include "core/records/media_type.h"
#include "sync/common/media_clean.h"
#include "tests/fuzz/target.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace newel;
  const std::string content(reinterpret_cast<const char*>(data), size);
  const v1::MediaType type = sniffMedia(content);
  const auto clean = cleanMedia(content);
  if (!clean.ok()) {
    fuzz::require(!clean.status().message().empty(), "a refusal says why");
    return 0;
  }
  fuzz::require(clean->type == type, "it stays what it is");
  fuzz::require(sniffMedia(clean->content) == type, "and is told as that again");
  fuzz::require(!isClip(type) || clean->content.size() == content.size(), "no byte of a clip moves");
  fuzz::require(checkCleanMedia(clean->content, type).ok(), "cleaning twice changes nothing");
  return 0;
}
