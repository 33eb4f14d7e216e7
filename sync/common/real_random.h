// The real source of randomness: libsodium's. Made once in a program's main and passed on.
#pragma once

#include "core/records/random.h"

namespace newel {

class RealRandom : public Random {
 public:
  RealRandom();
  void fill(std::uint8_t* bytes, std::size_t size) override;
};

}  // namespace newel
