#include "tests/fuzz/target.h"

#include <cstdio>
#include <cstdlib>

namespace newel::fuzz {

Input split(const std::uint8_t* data, std::size_t size) {
  if (size == 0) return {};
  return {data[0], std::string(reinterpret_cast<const char*>(data) + 1, size - 1)};
}

void require(bool holds, const char* what) {
  if (holds) return;
  std::fprintf(stderr, "does not hold: %s\n", what);
  std::abort();
}

}  // namespace newel::fuzz
