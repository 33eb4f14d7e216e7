// Bytes as text and back: hex, base64url (RFC 4648 section 5, no padding), base 32 (section 6, no padding)
// and Crockford's base 32.
#pragma once

#include <absl/status/statusor.h>

#include <string>

#include "core/records/random.h"

namespace newel {

std::string toHex(const std::string& bytes);  // lower case
// kInvalidArgument on an odd length or another character; either case is read.
absl::StatusOr<std::string> fromHex(const std::string& text);

std::string toBase64Url(const std::string& bytes);
// kInvalidArgument on padding, another alphabet or a length that no bytes give.
absl::StatusOr<std::string> fromBase64Url(const std::string& text);

// RFC 4648 section 6, no padding: what one-time code apps read. Not Crockford's alphabet.
std::string toBase32(const std::string& bytes);

// `length` characters of Crockford's base 32, five random bits each.
std::string randomCrockford(Random& random, std::size_t length);
bool isCrockford(char c);  // of the canonical upper-case alphabet

// `size` random bytes.
std::string randomBytes(Random& random, std::size_t size);

}  // namespace newel
