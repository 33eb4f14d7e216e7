// The password that the hub makes for a new account, or for somebody who has forgotten theirs: shown once,
// good for a few days, to be changed at the first sign-in (OWASP ASVS 5.0 6.4.1: random, and soon over).
#pragma once

#include <absl/time/time.h>

#include <string>

#include "core/records/random.h"

namespace newel {

inline constexpr absl::Duration kFirstPasswordLife = absl::Hours(72);  // over a week's end; ours, no source

// XXXX-XXXX-XXXX-XXXX of Crockford's base 32: 80 random bits.
std::string newFirstPassword(Random& random);
// What is hashed: upper case, hyphens and spaces out, O to 0, I and L to 1. Never longer than `typed`.
std::string canonicalFirstPassword(const std::string& typed);

}  // namespace newel
