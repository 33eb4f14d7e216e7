#include "tests/sync/common/test_media.h"

#include <fstream>
#include <iterator>

#include "core/records/media_type.h"
#include "sync/common/content_hash.h"

namespace newel::test {
namespace {

std::string big(std::uint32_t value) {
  std::string bytes;
  for (int shift = 24; shift >= 0; shift -= 8)
    bytes += static_cast<char>(value >> static_cast<unsigned>(shift));
  return bytes;
}

// PNG 5.5: CRC-32 over type and data.
std::uint32_t crcOf(const std::string& bytes) {
  std::uint32_t crc = 0xFFFFFFFFU;
  for (const char byte : bytes) {
    crc ^= static_cast<unsigned char>(byte);
    for (int bit = 0; bit < 8; ++bit) crc = (crc >> 1U) ^ ((crc & 1U) != 0 ? 0xEDB88320U : 0U);
  }
  return ~crc;
}

std::string chunk(const std::string& type, const std::string& data) {
  return big(static_cast<std::uint32_t>(data.size())) + type + data + big(crcOf(type + data));
}

// zlib (RFC 1950) with stored blocks (RFC 1951 section 3.2.4).
std::string stored(const std::string& data) {
  constexpr std::size_t kMost = 65535;
  std::string bytes("\x78\x01", 2);
  for (std::size_t at = 0; at < data.size(); at += kMost) {
    const std::string block = data.substr(at, kMost);
    const auto size = static_cast<unsigned>(block.size());
    bytes += static_cast<char>(at + kMost >= data.size() ? 1 : 0);
    for (const unsigned value : {size, ~size}) {
      bytes += static_cast<char>(value);
      bytes += static_cast<char>(value >> 8U);
    }
    bytes += block;
  }
  std::uint32_t a = 1;
  std::uint32_t b = 0;
  for (const char byte : data) {
    a = (a + static_cast<unsigned char>(byte)) % 65521;
    b = (b + a) % 65521;
  }
  return bytes + big((b << 16U) | a);
}

}  // namespace

std::string photoOfColour(std::uint32_t colour, std::size_t more) {
  const std::uint32_t side = more < 100'000 ? 8 : 128;
  const std::uint32_t rows = side + static_cast<std::uint32_t>(more / (1 + 3 * side));
  std::string pixels;
  std::uint32_t noise = colour;
  for (std::uint32_t row = 0; row < rows; ++row) {
    pixels += '\0';
    for (std::uint32_t i = 0; i < side; ++i) {
      noise = row < side ? colour : noise * 1664525U + 1013904223U;
      pixels += big(noise).substr(1);
    }
  }
  return "\x89PNG\r\n\x1A\n" + chunk("IHDR", big(side) + big(rows) + std::string("\x08\x02\0\0\0", 5)) +
         chunk("IDAT", stored(pixels)) + chunk("IEND", "");
}

v1::MediaRef refTo(const std::string& content, const std::string& words) {
  v1::MediaRef ref;
  ref.set_sha256(sha256(content));
  ref.set_type(sniffMedia(content));
  ref.set_size_bytes(content.size());
  ref.set_words(words);
  return ref;
}

std::string mediaFile(const std::string& name) {
  std::ifstream file(std::string(NEWEL_SOURCE_DIR) + "/tests/data/media/" + name, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

}  // namespace newel::test
