// Passwords and short codes, kept as Argon2id (RFC 9106, libsodium) with their own salt.
#pragma once

#include <absl/status/status.h>
#include <absl/status/statusor.h>

#include <string>

namespace newel {

// Good enough to be used: 8 characters (OWASP ASVS 5.0 6.2.1, which advises 15) to 256 bytes (6.2.9 wants at
// least 64 characters allowed), and not guessed within 10^8 tries by who knows the ten thousand most common
// passwords (6.2.4 wants three thousand), common words and names, keyboards, dates, the user's name and what
// is usually done to them: zxcvbn's estimate. kInvalidArgument says which. No rule about kinds of characters
// (6.2.5), and nothing is cut off (6.2.8).
absl::Status checkPassword(const std::string& password, const std::string& user_name);

// 64 MiB and two passes; OWASP's least is 19 MiB and two passes. About 0.1 s. kResourceExhausted when there
// is not enough memory. At most two run at once in this process; others wait.
absl::StatusOr<std::string> hashPassword(const std::string& password);
// For codes that live ten minutes and stand beside others: 19 MiB, two passes.
absl::StatusOr<std::string> hashCode(const std::string& code);

bool passwordFits(const std::string& hash, const std::string& password);

// A hash that no password fits, of the same cost: checked for names that nobody has, so that the time taken
// does not tell.
const std::string& nobodysHash();

}  // namespace newel
