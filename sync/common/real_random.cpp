#include "sync/common/real_random.h"

#include <sodium.h>

#include <cstdlib>

namespace newel {

RealRandom::RealRandom() {
  // Fails only when the system gives no randomness at all; going on would make guessable secrets.
  if (sodium_init() < 0) std::abort();
}

void RealRandom::fill(std::uint8_t* bytes, std::size_t size) { randombytes_buf(bytes, size); }

}  // namespace newel
