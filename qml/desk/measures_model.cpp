#include "qml/desk/measures_model.h"

#include <QtCore/QLocale>
#include <algorithm>
#include <cmath>
#include <utility>

#include "core/progress/measures.h"
#include "core/records/check.h"
#include "core/time/local_day.h"
#include "qml/desk/hub_worker.h"
#include "qml/desk/problem_words.h"
#include "qml/print/record_words.h"
#include "qml/print/report_extras.h"
#include "sync/common/record_id.h"

namespace newel::desk {
namespace {

// Usual for smallest detectable changes in rehabilitation; the studies print it most often.
constexpr Sureness kSure = Sureness::Ninety;

QString signedWords(const v1::MeasureKind& kind, double value) {
  return (value > 0 ? QStringLiteral("+") : QString()) + print::measuredWords(kind, value);
}

}  // namespace

// Values of one kind and side, the earliest first.
struct MeasuresModel::Series {
  const v1::MeasureKind* kind = nullptr;
  v1::Side side = v1::SIDE_UNSPECIFIED;
  std::vector<const v1::Measure*> values;
};

MeasuresModel::MeasuresModel(DeskContext& context, QObject* parent) : QObject(parent), m_context(context) {}

void MeasuresModel::begin(std::shared_ptr<const PersonFile> file) {
  m_file = std::move(file);
  m_kind = MeasureTable::builtIn().kinds().empty() ? "" : MeasureTable::builtIn().kinds().front().id();
  m_id.clear();
  m_value.clear();
  m_note.clear();
  m_aid.clear();
  m_side = v1::SIDE_UNSPECIFIED;
  m_day = print::text(formatLocalDay(todayOf(*m_file, m_context.now())));
  m_problem.clear();
  m_saving = false;
  emit changed();
  emit formChanged();
}

void MeasuresModel::follow(std::shared_ptr<const PersonFile> file) {
  m_file = std::move(file);
  emit changed();
}

QString MeasuresModel::name() const { return m_file ? print::fullName(m_file->identity) : QString(); }
QString MeasuresModel::limbs() const { return m_file ? print::limbsWords(m_file->person) : QString(); }

QVariantList MeasuresModel::kinds() const {
  QVariantList list;
  for (const v1::MeasureKind& kind : MeasureTable::builtIn().kinds()) {
    list << QVariantMap{{"id", print::text(kind.id())},
                        {"name", print::text(measureWords(kind, m_context.language).name())}};
  }
  return list;
}

std::vector<MeasuresModel::Series> MeasuresModel::series() const {
  std::vector<Series> all;
  if (!m_file) return all;
  for (const v1::MeasureKind& kind : MeasureTable::builtIn().kinds()) {
    for (const v1::Side side : {v1::SIDE_UNSPECIFIED, v1::SIDE_LEFT, v1::SIDE_RIGHT}) {
      Series one{&kind, side, {}};
      for (const v1::Measure& measure : m_file->measures) {
        if (measure.kind() == kind.id() && measure.side() == side && !measure.withdrawn())
          one.values.push_back(&measure);
      }
      std::stable_sort(one.values.begin(), one.values.end(), [](const v1::Measure* a, const v1::Measure* b) {
        return toTime(a->taken_at()) < toTime(b->taken_at());
      });
      if (!one.values.empty()) all.push_back(std::move(one));
    }
  }
  return all;
}

QVariantMap MeasuresModel::rowOf(const Series& series) const {
  const v1::MeasureKind& kind = *series.kind;
  QString title = print::text(measureWords(kind, m_context.language).name());
  if (series.side != v1::SIDE_UNSPECIFIED) title = tr("%1, %2").arg(title, print::words(series.side));
  const v1::Measure& first = *series.values.front();
  const v1::Measure& last = *series.values.back();
  QVariantMap row{
      {"title", title},
      {"last", tr("%1 on %2").arg(print::measuredWords(kind, last.value()), print::text(last.local_day()))}};
  QVariantList band;
  QStringList studies;
  if (series.values.size() > 1) {
    const MeasuredChange change = changedBeyondError(kind, first.value(), last.value(), kSure);
    row["change"] =
        tr("%1 since %2").arg(signedWords(kind, change.difference), print::text(first.local_day()));
    row["verdict"] = print::verdictWords(change);
    double widest = 0;
    for (const JudgedError& judged : change.known) {
      widest = std::max(widest, judged.detectable.high);
      studies << tr("smallest detectable change (90 %) %1, in %2. %3%4")
                     .arg(print::measuredWords(kind, judged.detectable.high),
                          print::text(judged.error.stated->population()),
                          print::text(judged.error.stated->source().text()),
                          judged.error.printed_90 ? QString() : tr(" (worked out by formula)"));
    }
    for (const ReachedChange& reached : change.important) {
      studies << tr("%1 (%2, in %3): %4. %5")
                     .arg(print::measuredWords(kind, reached.stated->change()),
                          print::text(reached.stated->meaning()), print::text(reached.stated->population()),
                          reached.reached ? tr("reached") : tr("not reached"),
                          print::text(reached.stated->source().text()));
    }
    if (widest > 0) band = {first.value() - widest, first.value() + widest};
  }
  QStringList cutoffs;
  for (const JudgedCutoff& cutoff : judgeCutoffs(kind, last.value())) {
    cutoffs << tr("%1: %2, in %3. %4")
                   .arg(cutoff.met ? tr("met") : tr("not met"), print::text(cutoff.stated->meaning()),
                        print::text(cutoff.stated->population()),
                        print::text(cutoff.stated->source().text()));
  }
  double low = band.isEmpty() ? first.value() : band[0].toDouble();
  double high = band.isEmpty() ? first.value() : band[1].toDouble();
  QVariantList points;
  QVariantList values;
  const absl::Time from = toTime(first.taken_at());
  const double span = std::max(1.0, absl::ToDoubleSeconds(toTime(last.taken_at()) - from));
  for (const v1::Measure* measure : series.values) {
    low = std::min(low, measure->value());
    high = std::max(high, measure->value());
    points << QVariantMap{
        {"at",
         series.values.size() == 1 ? 0.5 : absl::ToDoubleSeconds(toTime(measure->taken_at()) - from) / span},
        {"value", measure->value()},
        {"joined", !points.isEmpty()}};
    QString words =
        tr("%1: %2").arg(print::text(measure->local_day()), print::measuredWords(kind, measure->value()));
    if (!measure->walking_aid().empty()) words += tr(", with %1").arg(print::text(measure->walking_aid()));
    if (!measure->note().empty()) words += QStringLiteral(". ") + print::text(measure->note());
    values.prepend(QVariantMap{{"id", print::text(measure->id())}, {"words", words}});
  }
  row["band"] = band;
  row["studies"] = studies;
  row["cutoffs"] = cutoffs;
  row["points"] = points;
  row["values"] = values;
  row["least"] = std::max(0.0, std::floor(low - std::max(1.0, (high - low) * 0.1)));
  row["most"] = std::ceil(high + std::max(1.0, (high - low) * 0.1));
  return row;
}

QVariantList MeasuresModel::taken() const {
  QVariantList list;
  for (const Series& one : series()) list << rowOf(one);
  return list;
}

void MeasuresModel::setKind(const QString& kind) {
  if (MeasureTable::builtIn().find(kind.toStdString()) == nullptr || m_saving) return;
  m_kind = kind.toStdString();
  m_side = v1::SIDE_UNSPECIFIED;
  m_id.clear();
  m_value.clear();
  m_problem.clear();
  emit formChanged();
}

QString MeasuresModel::protocol() const {
  return current() == nullptr ? QString()
                              : print::text(measureWords(*current(), m_context.language).protocol());
}
QString MeasuresModel::unit() const {
  if (current() == nullptr) return {};
  return current()->unit() == "{score}" ? tr("points") : print::text(current()->unit());
}
bool MeasuresModel::perSide() const { return current() != nullptr && current()->per_side(); }
bool MeasuresModel::aidRecorded() const { return current() != nullptr && current()->aid_recorded(); }

void MeasuresModel::setValue(const QString& value) {
  m_value = value;
  emit formChanged();
}
void MeasuresModel::setDay(const QString& day) {
  m_day = day;
  emit formChanged();
}
void MeasuresModel::setAid(const QString& aid) {
  m_aid = aid;
  emit formChanged();
}
void MeasuresModel::setSide(int side) {
  m_side = side;
  emit formChanged();
}
void MeasuresModel::setNote(const QString& note) {
  m_note = note;
  emit formChanged();
}

std::optional<double> MeasuresModel::number() const {
  bool good = false;
  const QString typed = m_value.trimmed();
  double value = QLocale().toDouble(typed, &good);
  if (!good) value = QLocale::c().toDouble(QString(typed).replace(QLatin1Char(','), QLatin1Char('.')), &good);
  return good && std::isfinite(value) ? std::optional(value) : std::nullopt;
}

QString MeasuresModel::valueProblem() const {
  if (m_value.trimmed().isEmpty() || current() == nullptr) return {};
  const auto value = number();
  if (!value.has_value()) return tr("Type a number.");
  if (*value < current()->least() || *value > current()->most())
    return tr("Between %1 and %2.")
        .arg(print::measuredWords(*current(), current()->least()),
             print::measuredWords(*current(), current()->most()));
  return {};
}

QString MeasuresModel::dayProblem() const {
  const auto day = parseLocalDay(m_day.trimmed().toStdString());
  if (!day.ok()) return tr("Year-month-day, for example 2026-11-25.");
  return m_file && *day > todayOf(*m_file, m_context.now()) ? tr("That day is still to come.") : QString();
}

QString MeasuresModel::preview() const {
  const auto value = number();
  if (current() == nullptr || !value.has_value() || !valueProblem().isEmpty()) return {};
  for (const Series& one : series()) {
    if (one.kind != current() || one.side != m_side) continue;
    const MeasuredChange change = changedBeyondError(*current(), one.values.front()->value(), *value, kSure);
    return tr("%1 against the first one; %2.")
        .arg(signedWords(*current(), change.difference), change.answer == Beyond::Yes ? tr("beyond error")
                                                         : change.answer == Beyond::No
                                                             ? tr("within error")
                                                             : tr("cannot be told"));
  }
  return tr("The first of its kind.");
}

bool MeasuresModel::maySave() const {
  return m_file && !m_saving && number().has_value() && valueProblem().isEmpty() && dayProblem().isEmpty() &&
         perSide() == (m_side != v1::SIDE_UNSPECIFIED);
}

v1::Measure MeasuresModel::formed() const {
  v1::Measure measure;
  measure.set_id(m_id);
  measure.set_person_id(m_file->person.id());
  measure.set_kind(m_kind);
  measure.set_value(*number());
  measure.set_unit(current()->unit());
  measure.set_local_day(m_day.trimmed().toStdString());
  const absl::CivilDay day = *parseLocalDay(measure.local_day());
  // Of an earlier day the hour is not known: noon, so that no zone moves it to another day.
  const absl::Time at = day == todayOf(*m_file, m_context.now())
                            ? m_context.now()
                            : absl::FromCivil(absl::CivilHour(day) + 12, zoneOf(*m_file));
  *measure.mutable_taken_at() = toTimestamp(absl::FromUnixSeconds(absl::ToUnixSeconds(at)));
  if (aidRecorded()) measure.set_walking_aid(m_aid.trimmed().toStdString());
  measure.set_side(static_cast<v1::Side>(m_side));
  measure.set_note(m_note.trimmed().toStdString());
  return measure;
}

void MeasuresModel::save() {
  if (!maySave()) return;
  if (m_id.empty()) m_id = newRecordId(*m_context.clock, *m_context.random);
  v1::PutMeasureRequest request;
  *request.mutable_measure() = formed();
  put(request, true);
}

void MeasuresModel::withdraw(const QString& id) {
  if (!m_file || m_saving) return;
  for (const v1::Measure& measure : m_file->measures) {
    if (measure.id() != id.toStdString()) continue;
    v1::PutMeasureRequest request;
    *request.mutable_measure() = measure;
    request.mutable_measure()->set_withdrawn(true);
    request.set_base_revision(measure.revision());
    put(request, false);
    return;
  }
}

void MeasuresModel::put(const v1::PutMeasureRequest& request, bool from_form) {
  m_saving = true;
  m_problem.clear();
  emit formChanged();
  m_context.worker->run(
      this, tr("Saving the measure"),
      [request](DeskClient* client) -> absl::Status {
        if (client == nullptr) return absl::UnauthenticatedError("not signed in");
        return client->putMeasure(request).status();
      },
      [this, from_form](const absl::Status& status) {
        m_saving = false;
        m_problem = problemWords(status, tr("save the measure"));
        if (status.ok() && from_form) {
          m_id.clear();
          m_value.clear();
          m_note.clear();
        }
        emit formChanged();
        if (status.ok()) emit saved();
      });
}

}  // namespace newel::desk
