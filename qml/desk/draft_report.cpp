// DraftModel: what lies behind and around the draft: how hard the last weeks were, and what a report would
// lack.
#include <cmath>

#include "core/progress/load.h"
#include "core/schedule/occasions.h"
#include "core/time/local_day.h"
#include "qml/desk/draft_model.h"
#include "qml/desk/evidence_words.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

constexpr int kLoadWeeks = 4;
constexpr int kCountedWeeks = 4;
constexpr int kChangesShown = 6;

}  // namespace

// A number without a limit: it is compared with the same person's other weeks and with nothing else.
QString DraftModel::loadWords() const {
  if (!m_file || m_file->practices.empty()) return {};
  const absl::CivilDay today = todayOf(*m_file, m_context.now());
  const absl::CivilDay first = mondayOf(today) - absl::civil_diff_t{7} * (kLoadWeeks - 1);
  QStringList weeks;
  int unrated = 0;
  for (const WeekLoad& week : weeklyLoads(m_file->practices, first, today)) {
    const QString load = QString::number(std::lround(week.spread.sum));
    weeks << (week.monday == mondayOf(today) ? tr("%1 so far").arg(load) : load);
    unrated += week.unrated_entries;
  }
  QString words = tr("Effort × minutes, week by week: %1.").arg(weeks.join(QStringLiteral(" · ")));
  if (unrated > 0)
    words += QLatin1Char(' ') + tr("%1 times nobody rated the effort; these are not in it.").arg(unrated);
  return words;
}

QString DraftModel::changesBrief() const {
  const QStringList all = changes();
  QStringList lines = all.mid(0, kChangesShown);
  const auto more = all.size() - lines.size();
  if (more > 0) lines << tr("and %1 more, under Dates, advice, limits").arg(more);
  return lines.join(QLatin1Char('\n'));
}

std::vector<CertResult> DraftModel::reportLines() const {
  if (!m_file) return {};
  CertInput input;
  input.programme = m_draft.value();
  input.programme.set_number(m_draft.baseNumber() + 1);
  input.programme.set_changes(changesForPerson().toStdString());
  input.person = m_file->person;
  if (!m_file->practices.empty()) {
    input.counts = countEvents(m_file->practices);
    const auto recent = recentAdherence(*m_file, m_context.now(), kCountedWeeks);
    if (recent.ok()) {
      input.counts->due = recent->all.due;
      input.counts->done = recent->all.done;
    }
  }
  return certOf(input, *m_context.catalogue, certTable());
}

QString DraftModel::reportWords() const {
  const auto lines = reportLines();
  const CertSummary summary = summaryOf(lines);
  return tr("%1 of %2 lines of the reporting template are stated, %3 are missing, %4 cannot be known yet.")
      .arg(summary.stated)
      .arg(lines.size())
      .arg(summary.missing)
      .arg(summary.not_yet);
}

QVariantList DraftModel::reportLacks() const {
  QVariantList list;
  const auto& entries = m_draft.value().entries();
  const auto add = [&list](const QString& words, const QString& lacks, int row) {
    list << QVariantMap{
        {QStringLiteral("words"), words}, {QStringLiteral("lacks"), lacks}, {QStringLiteral("row"), row}};
  };
  for (const CertResult& result : reportLines()) {
    if (result.state != CertState::Missing) continue;
    const QString words = certLineWords(result.line.id());
    if (result.line.from() == v1::CERT_FROM_CLINIC) {
      add(words, tr("Only the clinic can say it."), -1);
      continue;
    }
    for (const EvidenceLine& line : result.found) {
      if (line.good) continue;
      const auto exercise = line.args.find("exercise");
      int row = -1;
      for (int i = 0; exercise != line.args.end() && i < entries.size(); ++i)
        if (row < 0 && entries[i].exercise_id() == exercise->second) row = i;
      add(words, evidenceWords(line, *m_context.catalogue, m_context.language), row);
    }
  }
  return list;
}

}  // namespace newel::desk
