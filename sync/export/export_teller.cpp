#include "sync/export/export_teller.h"

#include <ostream>
#include <utility>

namespace newel {

ExportTeller::ExportTeller(std::ostream& out, std::function<absl::Duration()> elapsed,
                           std::function<bool()> asked_to_stop)
    : m_out(out), m_elapsed(std::move(elapsed)), m_asked_to_stop(std::move(asked_to_stop)) {
  if (m_elapsed) m_said = m_elapsed();
}

ExportProgress ExportTeller::part(int from, int to) {
  return [this, from, to](int percent) { return at(from + (to - from) * percent / 100); };
}

bool ExportTeller::at(int percent) {
  if (m_asked_to_stop && m_asked_to_stop()) return false;
  if (!m_elapsed) return true;
  const absl::Duration now = m_elapsed();
  if (now - m_said >= absl::Seconds(1)) {
    m_said = now;
    m_out << percent << " % done\n" << std::flush;
  }
  return true;
}

}  // namespace newel
