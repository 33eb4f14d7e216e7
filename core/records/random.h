// Where randomness comes in. The real source is libsodium's (sync/common); tests pass a seeded one.
#pragma once

#include <cstddef>
#include <cstdint>

namespace newel {

class Random {
 public:
  virtual ~Random() = default;
  // Fills `size` bytes. Called from any thread; never fails.
  virtual void fill(std::uint8_t* bytes, std::size_t size) = 0;
};

}  // namespace newel
