// Many values as one parameter of a statement: PostgreSQL's arrays in their binary form (PostgreSQL 15,
// array_recv in src/backend/utils/adt/arrayfuncs.c), for unnest().
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace newel {

class PgArray {
 public:
  static PgArray ofText() { return PgArray(kText); }
  static PgArray ofBytes() { return PgArray(kBytea); }
  static PgArray ofNumbers() { return PgArray(kBigint); }

  // For an array of text or of bytes.
  void add(std::string_view bytes);
  // For an array of numbers.
  void add(std::int64_t number);

  std::string bytes() const;

 private:
  // The object ids of the types, src/include/catalog/pg_type.dat: fixed, the same on every server.
  static constexpr std::uint32_t kBytea = 17;
  static constexpr std::uint32_t kBigint = 20;
  static constexpr std::uint32_t kText = 25;

  explicit PgArray(std::uint32_t type) : m_type(type) {}

  std::uint32_t m_type;
  std::uint32_t m_count = 0;
  std::string m_items;
};

}  // namespace newel
