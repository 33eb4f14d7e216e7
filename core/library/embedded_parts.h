// The catalogue's bytes as the build compiled them in. For core/library alone.
#pragma once

#include <cstddef>

#include "core/library/catalogue_builder.h"

namespace newel {

struct EmbeddedPart {
  CatalogueFileKind kind;
  const char* bytes;
  std::size_t size;
};
const EmbeddedPart* embeddedParts();
std::size_t embeddedPartCount();

}  // namespace newel
