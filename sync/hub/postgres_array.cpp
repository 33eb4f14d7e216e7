#include "sync/hub/postgres_array.h"

namespace newel {
namespace {

constexpr std::uint32_t kOneDimension = 1;
constexpr std::uint32_t kNoNulls = 0;
constexpr std::uint32_t kFirstIndex = 1;

// Most significant byte first.
template <typename Number>
void put(std::string& out, Number number) {
  for (std::size_t shift = sizeof(Number) * 8; shift > 0; shift -= 8) {
    out += static_cast<char>(number >> (shift - 8) & 0xffU);
  }
}

}  // namespace

void PgArray::add(std::string_view bytes) {
  ++m_count;
  put(m_items, static_cast<std::uint32_t>(bytes.size()));
  m_items += bytes;
}

void PgArray::add(std::int64_t number) {
  ++m_count;
  put(m_items, std::uint32_t{sizeof(number)});
  put(m_items, static_cast<std::uint64_t>(number));
}

std::string PgArray::bytes() const {
  std::string all;
  for (const std::uint32_t word : {kOneDimension, kNoNulls, m_type, m_count, kFirstIndex}) put(all, word);
  return all + m_items;
}

}  // namespace newel
