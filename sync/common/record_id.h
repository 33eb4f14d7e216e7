// A new UUIDv7 from a clock and a source of randomness.
#pragma once

#include <string>

#include "core/records/random.h"
#include "core/time/clock.h"

namespace newel {

std::string newRecordId(const Clock& clock, Random& random);

}  // namespace newel
