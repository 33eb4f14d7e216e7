#include "core/records/uuid7.h"

namespace newel {

std::string makeUuid7(std::int64_t unix_ms, const std::array<std::uint8_t, 10>& random) {
  std::array<std::uint8_t, 16> bytes{};
  for (std::size_t i = 0; i < 6; ++i) {
    bytes[i] = static_cast<std::uint8_t>(static_cast<std::uint64_t>(unix_ms) >> (8 * (5 - i)));
  }
  for (std::size_t i = 0; i < 10; ++i) bytes[6 + i] = random[i];
  bytes[6] = static_cast<std::uint8_t>((bytes[6] & 0x0F) | 0x70);  // version 7
  bytes[8] = static_cast<std::uint8_t>((bytes[8] & 0x3F) | 0x80);  // variant of RFC 9562
  static constexpr char kHex[] = "0123456789abcdef";
  std::string text;
  text.reserve(36);
  for (std::size_t i = 0; i < 16; ++i) {
    if (i == 4 || i == 6 || i == 8 || i == 10) text += '-';
    text += kHex[bytes[i] >> 4];
    text += kHex[bytes[i] & 0x0F];
  }
  return text;
}

bool isUuid7(const std::string& text) {
  if (text.size() != 36) return false;
  for (std::size_t i = 0; i < 36; ++i) {
    const char c = text[i];
    const bool hyphen = i == 8 || i == 13 || i == 18 || i == 23;
    const bool hex = (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f');
    if (hyphen ? c != '-' : !hex) return false;
  }
  return text[14] == '7' && (text[19] == '8' || text[19] == '9' || text[19] == 'a' || text[19] == 'b');
}

}  // namespace newel
