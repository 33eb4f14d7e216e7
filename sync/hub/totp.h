// One-time codes by time: RFC 6238 over RFC 4226, with SHA-1, six digits and steps of 30 s, which every code
// app reads. Pure: the time comes in.
#pragma once

#include <absl/time/time.h>

#include <cstdint>
#include <optional>
#include <string>

namespace newel {

inline constexpr std::size_t kTotpSecretBytes = 20;  // RFC 4226 section 4, R6: 160 bits are advised
inline constexpr int kTotpDigits = 6;
inline constexpr absl::Duration kTotpStep = absl::Seconds(30);

// The code of `counter`, with zeros in front. `digits`: 6 to 9.
std::string hotpCode(const std::string& secret, std::uint64_t counter, int digits);

// The step that `at` is in; 0 before 1970.
std::uint64_t totpStepAt(absl::Time at);

// The step that `code` is right for: the present one, the one before or the one after (RFC 6238 section 5.2,
// for clocks that differ and for typing), and later than `last_step`, because a code counts once. Spaces in
// `code` are passed over. All three are always compared, each without telling where it differs.
std::optional<std::uint64_t> totpStepOf(const std::string& secret, const std::string& code, absl::Time now,
                                        std::uint64_t last_step);

// What a code app reads from a picture: otpauth://totp/<issuer>:<account>?secret=... From memory: the key URI
// form that code apps share; no standard.
std::string totpUri(const std::string& secret, const std::string& issuer, const std::string& account);

}  // namespace newel
