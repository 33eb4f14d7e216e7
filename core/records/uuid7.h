// UUID version 7 (RFC 9562 section 5.7): time-ordered ids, made where the thing is made.
#pragma once

#include <array>
#include <cstdint>
#include <string>

namespace newel {

// `unix_ms`: milliseconds since 1970 UTC, 48 bits used. `random`: ten random bytes from the caller.
// Returns 36 lower-case characters with hyphens.
std::string makeUuid7(std::int64_t unix_ms, const std::array<std::uint8_t, 10>& random);

// True for any RFC 9562 text form of version 7, lower case.
bool isUuid7(const std::string& text);

}  // namespace newel
