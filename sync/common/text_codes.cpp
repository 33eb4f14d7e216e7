#include "sync/common/text_codes.h"

#include <cstdint>

namespace newel {
namespace {

constexpr char kHex[] = "0123456789abcdef";
constexpr char kBase64[] = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
constexpr char kBase32[] = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";
constexpr char kCrockford[] = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

int hexValue(char c) {
  if (c >= '0' && c <= '9') return c - '0';
  if (c >= 'a' && c <= 'f') return c - 'a' + 10;
  if (c >= 'A' && c <= 'F') return c - 'A' + 10;
  return -1;
}

int base64Value(char c) {
  if (c >= 'A' && c <= 'Z') return c - 'A';
  if (c >= 'a' && c <= 'z') return c - 'a' + 26;
  if (c >= '0' && c <= '9') return c - '0' + 52;
  if (c == '-') return 62;
  if (c == '_') return 63;
  return -1;
}

}  // namespace

std::string toHex(const std::string& bytes) {
  std::string text;
  text.reserve(bytes.size() * 2);
  for (const char c : bytes) {
    const auto byte = static_cast<std::uint8_t>(c);
    text += kHex[byte >> 4U];
    text += kHex[byte & 15U];
  }
  return text;
}

absl::StatusOr<std::string> fromHex(const std::string& text) {
  if (text.size() % 2 != 0) return absl::InvalidArgumentError("hex: odd length");
  std::string bytes;
  for (std::size_t i = 0; i < text.size(); i += 2) {
    const int high = hexValue(text[i]);
    const int low = hexValue(text[i + 1]);
    if (high < 0 || low < 0) return absl::InvalidArgumentError("hex: a character that is no digit");
    bytes += static_cast<char>(high * 16 + low);
  }
  return bytes;
}

std::string toBase64Url(const std::string& bytes) {
  std::string text;
  std::uint32_t buffer = 0;
  int bits = 0;
  for (const char c : bytes) {
    buffer = (buffer << 8U) | static_cast<std::uint8_t>(c);
    for (bits += 8; bits >= 6; bits -= 6) text += kBase64[(buffer >> static_cast<unsigned>(bits - 6)) & 63U];
  }
  if (bits > 0) text += kBase64[(buffer << static_cast<unsigned>(6 - bits)) & 63U];
  return text;
}

absl::StatusOr<std::string> fromBase64Url(const std::string& text) {
  std::string bytes;
  std::uint32_t buffer = 0;
  int bits = 0;
  for (const char c : text) {
    const int value = base64Value(c);
    if (value < 0) return absl::InvalidArgumentError("base64url: a character outside the alphabet");
    buffer = (buffer << 6U) | static_cast<std::uint32_t>(value);
    bits += 6;
    if (bits >= 8) {
      bits -= 8;
      bytes += static_cast<char>((buffer >> static_cast<unsigned>(bits)) & 255U);
    }
  }
  // Left-over bits must be fewer than a character's and zero, so that each text has one meaning.
  if (bits >= 6 || (buffer & ((1U << static_cast<unsigned>(bits)) - 1U)) != 0) {
    return absl::InvalidArgumentError("base64url: cut short");
  }
  return bytes;
}

std::string toBase32(const std::string& bytes) {
  std::string text;
  std::uint32_t buffer = 0;
  int bits = 0;
  for (const char c : bytes) {
    buffer = (buffer << 8U) | static_cast<std::uint8_t>(c);
    for (bits += 8; bits >= 5; bits -= 5) text += kBase32[(buffer >> static_cast<unsigned>(bits - 5)) & 31U];
  }
  if (bits > 0) text += kBase32[(buffer << static_cast<unsigned>(5 - bits)) & 31U];
  return text;
}

std::string randomBytes(Random& random, std::size_t size) {
  std::string bytes(size, '\0');
  random.fill(reinterpret_cast<std::uint8_t*>(bytes.data()), bytes.size());
  return bytes;
}

std::string randomCrockford(Random& random, std::size_t length) {
  std::string text = randomBytes(random, length);
  for (char& c : text) c = kCrockford[static_cast<std::uint8_t>(c) & 31U];
  return text;
}

bool isCrockford(char c) { return c != '\0' && std::string(kCrockford).find(c) != std::string::npos; }

}  // namespace newel
