#include "sync/hub/totp.h"

#include <openssl/evp.h>
#include <openssl/hmac.h>
#include <sodium.h>

#include <algorithm>
#include <array>

#include "sync/common/text_codes.h"

namespace newel {
namespace {

std::array<unsigned char, 8> bigEndian(std::uint64_t number) {
  std::array<unsigned char, 8> bytes{};
  for (std::size_t i = bytes.size(); i-- > 0; number >>= 8U)
    bytes.at(i) = static_cast<unsigned char>(number & 0xFFU);
  return bytes;
}

// RFC 4226 section 5.3.
std::uint32_t truncated(const unsigned char* mac, unsigned int size) {
  const unsigned int at = mac[size - 1] & 0x0FU;
  return ((mac[at] & 0x7FU) << 24U) | (static_cast<std::uint32_t>(mac[at + 1]) << 16U) |
         (static_cast<std::uint32_t>(mac[at + 2]) << 8U) | mac[at + 3];
}

// RFC 3986 section 2.3: what needs no percent.
bool isUnreserved(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' || c == '.' ||
         c == '_' || c == '~';
}

std::string percentEncoded(const std::string& text) {
  std::string encoded;
  for (const char c : text) {
    if (isUnreserved(c)) {
      encoded += c;
      continue;
    }
    std::string hex = toHex(std::string(1, c));
    std::transform(hex.begin(), hex.end(), hex.begin(), [](char d) { return d >= 'a' ? d - 'a' + 'A' : d; });
    encoded += "%" + hex;
  }
  return encoded;
}

std::string withoutSpaces(std::string code) {
  code.erase(std::remove(code.begin(), code.end(), ' '), code.end());
  return code;
}

}  // namespace

std::string hotpCode(const std::string& secret, std::uint64_t counter, int digits) {
  const auto message = bigEndian(counter);
  unsigned char mac[EVP_MAX_MD_SIZE] = {};
  unsigned int size = 0;
  HMAC(EVP_sha1(), secret.data(), static_cast<int>(secret.size()), message.data(), message.size(), mac,
       &size);
  std::uint32_t number = truncated(mac, size);
  std::string code(static_cast<std::size_t>(digits), '0');
  for (auto digit = code.rbegin(); digit != code.rend(); ++digit, number /= 10) {
    *digit = static_cast<char>('0' + number % 10);
  }
  return code;
}

std::uint64_t totpStepAt(absl::Time at) {
  const std::int64_t seconds = absl::ToUnixSeconds(at);
  return seconds <= 0 ? 0 : static_cast<std::uint64_t>(seconds / absl::ToInt64Seconds(kTotpStep));
}

std::optional<std::uint64_t> totpStepOf(const std::string& secret, const std::string& code, absl::Time now,
                                        std::uint64_t last_step) {
  const std::string typed = withoutSpaces(code);
  if (typed.size() != static_cast<std::size_t>(kTotpDigits)) return std::nullopt;
  const std::uint64_t present = std::max<std::uint64_t>(totpStepAt(now), 1);
  std::optional<std::uint64_t> found;
  for (std::uint64_t step = present - 1; step <= present + 1; ++step) {
    const std::string right = hotpCode(secret, step, kTotpDigits);
    const bool same = sodium_memcmp(right.data(), typed.data(), right.size()) == 0;
    if (same && step > last_step) found = step;
  }
  return found;
}

std::string totpUri(const std::string& secret, const std::string& issuer, const std::string& account) {
  return "otpauth://totp/" + percentEncoded(issuer) + ":" + percentEncoded(account) +
         "?secret=" + toBase32(secret) + "&issuer=" + percentEncoded(issuer) +
         "&algorithm=SHA1&digits=6&period=30";
}

}  // namespace newel
