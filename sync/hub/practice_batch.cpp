#include "sync/hub/practice_batch.h"

#include <algorithm>
#include <utility>

namespace newel {

PracticeBatch::PracticeBatch(HubTransaction& transaction, const std::vector<LookedAt>& records)
    : m_transaction(&transaction), m_records(&records), m_place(records.size()) {
  std::vector<PracticeKey> keys;
  for (std::size_t i = 0; i < records.size(); ++i) {
    const v1::Envelope& envelope = *records[i].envelope;
    if (!records[i].good.ok() || envelope.kind() != v1::RECORD_KIND_PRACTICE) continue;
    m_place[i] = keys.size();
    keys.push_back({envelope.id(), envelope.revision()});
  }
  m_rows.reserve(keys.size());
  m_kept = transaction.practicesKept(keys);
}

PracticeKept PracticeBatch::keptOf(std::size_t place) const {
  const v1::Envelope& envelope = *(*m_records)[place].envelope;
  PracticeKept kept = m_kept[m_place[place]];
  const auto [from, to] = m_by_id.equal_range(envelope.id());
  for (auto at = from; at != to; ++at) {
    const PracticeRow& row = m_rows[at->second];
    kept.person_id = row.person_id;
    kept.revision = std::max(kept.revision, row.envelope.revision());
    if (row.envelope.revision() == envelope.revision()) kept.sha256 = row.envelope.sha256();
  }
  return kept;
}

void PracticeBatch::keep(PracticeRow row) {
  m_by_id.emplace(row.envelope.id(), m_rows.size());
  m_rows.push_back(std::move(row));
}

void PracticeBatch::finish() { m_transaction->addPractices(m_rows); }

}  // namespace newel
