// DraftModel: findings over the whole programme, and the changes that would answer them.
#include "core/review/programme_fixes.h"
#include "core/time/local_day.h"
#include "qml/desk/draft_model.h"
#include "qml/print/record_words.h"

namespace newel::desk {

std::vector<ProgrammeFix> DraftModel::fixesOf(const std::string& rule_id) const {
  if (!m_file || !m_review.ok()) return {};
  return programmeFixesFor(m_draft.value(), *m_review, rule_id, m_file->person, lastProgramme(*m_file),
                           *m_context.catalogue, *m_context.rules);
}

QString DraftModel::fixWords(const ProgrammeFix& fix) const {
  const v1::Entry* changed = nullptr;
  for (const v1::Entry& entry : fix.programme.entries()) {
    if (entry.id() == fix.entry_id) changed = &entry;
  }
  QString title;
  for (int row = 0; row < m_draft.value().entries_size(); ++row) {
    if (m_draft.value().entries(row).id() == fix.entry_id) title = m_entries.titleAt(row);
  }
  switch (fix.kind) {
    case ProgrammeFix::Kind::PainStop:
      return tr("Stop above %1 of 10").arg(fix.programme.thresholds().pain_stop_0_10());
    case ProgrammeFix::Kind::EndDay:
      return tr("Last day: %1").arg(print::dayWords(fix.programme.end_day()));
    case ProgrammeFix::Kind::Days:
      if (changed != nullptr) return tr("%1: %2").arg(title, print::scheduleWords(changed->schedule()));
      break;
    case ProgrammeFix::Kind::Dose:
      if (changed != nullptr) return tr("%1: %2").arg(title, print::doseWords(changed->dose()));
      break;
    case ProgrammeFix::Kind::Without:
      return tr("Leave out: %1").arg(title);
  }
  return {};
}

QVariantList DraftModel::findings() const {
  if (!m_review.ok()) return {};
  return findingList(m_review->programme_findings, [this](const std::string& rule_id) {
    QStringList words;
    for (const ProgrammeFix& fix : fixesOf(rule_id)) words << fixWords(fix);
    return words;
  });
}

void DraftModel::applyFix(const QString& rule_id, int index) {
  const auto fixes = fixesOf(rule_id.toStdString());
  if (index < 0 || index >= static_cast<int>(fixes.size())) return;
  const v1::Programme& fixed = fixes[static_cast<std::size_t>(index)].programme;
  change("", [&fixed](v1::Programme& draft) { draft = fixed; });
  takeDays();
  emit changed();
}

}  // namespace newel::desk
