#include "qml/desk/timeline_model.h"

#include <algorithm>
#include <utility>

#include "core/progress/measure_table.h"
#include "core/review/review.h"
#include "core/time/local_day.h"
#include "qml/desk/file_words.h"
#include "qml/print/record_words.h"
#include "qml/print/report_extras.h"

namespace newel::desk {
namespace {

QString kindWords(int kind) {
  switch (kind) {
    case TimelineModel::Programmes:
      return TimelineModel::tr("Programmes");
    case TimelineModel::Holds:
      return TimelineModel::tr("Hold orders");
    case TimelineModel::Messages:
      return TimelineModel::tr("Messages");
    case TimelineModel::Measures:
      return TimelineModel::tr("Measures");
    default:
      return TimelineModel::tr("All of it");
  }
}

}  // namespace

void TimelineModel::show(std::shared_ptr<const PersonFile> file) {
  if (!m_file || m_file->person.id() != file->person.id()) m_wanted = Everything;
  m_file = std::move(file);
  emit changed();
}

QString TimelineModel::name() const { return m_file ? print::fullName(m_file->identity) : QString(); }

QVariantList TimelineModel::kinds() const {
  QVariantList list;
  for (int kind = Everything; kind <= Measures; ++kind)
    list << QVariantMap{{QStringLiteral("value"), kind}, {QStringLiteral("text"), kindWords(kind)}};
  return list;
}

void TimelineModel::setWanted(int kind) {
  m_wanted = std::clamp(kind, static_cast<int>(Everything), static_cast<int>(Measures));
  emit changed();
}

void TimelineModel::addProgrammes(std::vector<Row>& rows) const {
  for (std::size_t i = 0; i < m_file->programmes.size(); ++i) {
    const v1::Programme& programme = m_file->programmes[i];
    QStringList lines;
    if (i == 0) {
      for (const auto& entry : programme.entries())
        lines << print::titleOf(*m_context.catalogue, entry.exercise_id(), m_context.language);
    } else {
      for (const auto& change :
           changesBetween(m_file->programmes[i - 1], programme, *m_context.catalogue, m_context.language))
        lines << print::text(change);
    }
    rows.push_back({toTime(programme.issued_at()), Programmes,
                    tr("Programme %1, %2 to %3, signed by %4")
                        .arg(programme.number())
                        .arg(print::dayWords(programme.effective_day()), print::dayWords(programme.end_day()),
                             print::text(programme.signer_name())),
                    lines.join(QLatin1Char('\n')),
                    reachedBy(*m_file, v1::RECEIPT_OF_PROGRAMME, programme.id())});
  }
}

void TimelineModel::addHolds(std::vector<Row>& rows) const {
  for (const v1::HoldOrder& hold : m_file->holds) {
    const QString who = print::text(hold.signer_name());
    const QString title = hold.lifts_id().empty()
                              ? tr("Hold on %1, by %2").arg(heldWords(*m_file, hold, m_context), who)
                              : tr("Hold lifted by %1").arg(who);
    rows.push_back({toTime(hold.issued_at()), Holds, title, print::text(hold.reason()),
                    reachedBy(*m_file, v1::RECEIPT_OF_HOLD_ORDER, hold.id())});
  }
}

void TimelineModel::addMessages(std::vector<Row>& rows) const {
  for (const v1::Message& message : m_file->messages) {
    const bool ours = message.sender() == v1::SENDER_CLINIC;
    const QString from =
        ours ? print::text(message.sender_name()) : print::text(m_file->identity.given_name());
    Row row{toTime(message.written_at()), Messages,
            message.urgent() ? tr("Urgent message from %1").arg(from) : tr("Message from %1").arg(from),
            print::text(message.text()), std::nullopt};
    if (ours) row.reached = reachedBy(*m_file, v1::RECEIPT_OF_MESSAGE, message.id());
    rows.push_back(std::move(row));
  }
}

void TimelineModel::addMeasures(std::vector<Row>& rows) const {
  for (const v1::Measure& measure : m_file->measures) {
    const v1::MeasureKind* kind = MeasureTable::builtIn().find(measure.kind());
    if (measure.withdrawn() || kind == nullptr) continue;
    QString title = print::text(measureWords(*kind, m_context.language).name());
    if (measure.side() != v1::SIDE_UNSPECIFIED) title = tr("%1, %2").arg(title, print::words(measure.side()));
    rows.push_back({toTime(measure.taken_at()), Measures,
                    tr("%1: %2").arg(title, print::measuredWords(*kind, measure.value())),
                    print::text(measure.note()), std::nullopt});
  }
}

std::vector<TimelineModel::Row> TimelineModel::all() const {
  std::vector<Row> rows;
  if (!m_file) return rows;
  addProgrammes(rows);
  addHolds(rows);
  addMessages(rows);
  addMeasures(rows);
  std::stable_sort(rows.begin(), rows.end(),
                   [](const Row& one, const Row& other) { return one.at > other.at; });
  return rows;
}

QVariantList TimelineModel::rows() const {
  QVariantList list;
  if (!m_file) return list;
  const absl::TimeZone zone = zoneOf(*m_file);
  const auto moment = [&zone](const std::optional<absl::Time>& at) {
    return at ? print::momentWords(*at, zone) : QString();
  };
  QString day_before;
  for (const Row& row : all()) {
    if (m_wanted != Everything && row.kind != m_wanted) continue;
    const QString day = print::dayWords(localDayAt(row.at, zone));
    list << QVariantMap{{QStringLiteral("kind"), static_cast<int>(row.kind)},
                        {QStringLiteral("kindWords"), kindWords(row.kind)},
                        {QStringLiteral("title"), row.title},
                        {QStringLiteral("text"), row.text},
                        {QStringLiteral("day"), day},
                        {QStringLiteral("firstOfDay"), day != day_before},
                        {QStringLiteral("tracked"), row.reached.has_value()},
                        {QStringLiteral("sent"), moment(row.at)},
                        {QStringLiteral("arrived"), row.reached ? moment(row.reached->arrived) : QString()},
                        {QStringLiteral("seen"), row.reached ? moment(row.reached->seen) : QString()}};
    day_before = day;
  }
  return list;
}

}  // namespace newel::desk
