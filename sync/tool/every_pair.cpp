#include <algorithm>
#include <set>
#include <tuple>

#include "sync/tool/everyone.h"

namespace newel::tool {
namespace {

struct Pair {
  std::size_t factor_a, value_a, factor_b, value_b;
  bool operator<(const Pair& other) const {
    return std::tie(factor_a, value_a, factor_b, value_b) <
           std::tie(other.factor_a, other.value_a, other.factor_b, other.value_b);
  }
};

Pair pairOf(std::size_t a, std::size_t value_a, std::size_t b, std::size_t value_b) {
  return a < b ? Pair{a, value_a, b, value_b} : Pair{b, value_b, a, value_a};
}

class Rows {
 public:
  explicit Rows(const std::vector<std::size_t>& values) : m_values(values) {
    for (std::size_t a = 0; a < values.size(); ++a) {
      for (std::size_t b = a + 1; b < values.size(); ++b) addPairs(a, b);
    }
  }

  std::vector<std::vector<std::size_t>> run() {
    std::vector<std::vector<std::size_t>> rows;
    while (!m_open.empty()) {
      rows.push_back(rowFrom(*m_open.begin()));
      close(rows.back());
    }
    return rows;
  }

 private:
  void addPairs(std::size_t a, std::size_t b) {
    for (std::size_t i = 0; i < m_values[a]; ++i) {
      for (std::size_t j = 0; j < m_values[b]; ++j) m_open.insert({a, i, b, j});
    }
  }

  std::vector<std::size_t> rowFrom(const Pair& first) const {
    std::vector<std::size_t> row(m_values.size(), 0);
    std::vector<std::size_t> set = {first.factor_a, first.factor_b};
    row[first.factor_a] = first.value_a;
    row[first.factor_b] = first.value_b;
    for (std::size_t factor = 0; factor < m_values.size(); ++factor) {
      if (std::find(set.begin(), set.end(), factor) != set.end()) continue;
      row[factor] = best(factor, row, set);
      set.push_back(factor);
    }
    return row;
  }

  std::size_t best(std::size_t factor, const std::vector<std::size_t>& row,
                   const std::vector<std::size_t>& set) const {
    std::size_t chosen = 0;
    std::size_t most = 0;
    for (std::size_t value = 0; value < m_values[factor]; ++value) {
      const auto covers =
          static_cast<std::size_t>(std::count_if(set.begin(), set.end(), [&](std::size_t other) {
            return m_open.contains(pairOf(factor, value, other, row[other]));
          }));
      if (covers <= most) continue;
      most = covers;
      chosen = value;
    }
    // Nothing left to gain: spread over the values rather than always the first.
    return most == 0 ? m_open.size() % m_values[factor] : chosen;
  }

  void close(const std::vector<std::size_t>& row) {
    for (std::size_t a = 0; a < row.size(); ++a) {
      for (std::size_t b = a + 1; b < row.size(); ++b) m_open.erase({a, row[a], b, row[b]});
    }
  }

  const std::vector<std::size_t>& m_values;
  std::set<Pair> m_open;
};

}  // namespace

std::vector<std::vector<std::size_t>> everyPair(const std::vector<std::size_t>& values) {
  return Rows(values).run();
}

}  // namespace newel::tool
