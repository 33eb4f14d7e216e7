#include "tests/sim/stage.h"

#include <ostream>

namespace newel::sim {

void Stage::at(absl::Duration elapsed, std::function<void()> what) {
  m_next.emplace(std::make_pair(elapsed, ++m_count), std::move(what));
}

bool Stage::step(absl::Duration until) {
  if (m_next.empty() || m_next.begin()->first.first > until) return false;
  auto next = m_next.extract(m_next.begin());
  const absl::Duration left = next.key().first - clock.elapsed();
  if (left > absl::ZeroDuration()) clock.advance(left);
  next.mapped()();
  return true;
}

void Stage::say(const std::string& who, const std::string& what) {
  const std::string line =
      absl::FormatTime("%d %H:%M:%E3S ", clock.wall(), absl::UTCTimeZone()) + who + ": " + what;
  // FNV-1a, 64 bits (constants from memory; only equality between two runs matters).
  for (const char c : line) m_digest = (m_digest ^ static_cast<unsigned char>(c)) * 1099511628211U;
  if (m_trace != nullptr) *m_trace << line << '\n';
}

void Stage::violated(const std::string& what) {
  say("VIOLATED", what);
  if (m_violation.empty()) m_violation = what;
}

}  // namespace newel::sim
