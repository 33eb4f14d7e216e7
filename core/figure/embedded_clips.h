// The clips' bytes as the build compiled them in. For core/figure alone.
#pragma once

#include <cstddef>

namespace newel {

struct EmbeddedClip {
  bool words;  // a PhraseFile, otherwise a Clip
  const char* bytes;
  std::size_t size;
};
const EmbeddedClip* embeddedClips();
std::size_t embeddedClipCount();

}  // namespace newel
