#include "qml/desk/progress_model.h"

#include <algorithm>
#include <utility>

#include "qml/desk/evidence_words.h"
#include "qml/desk/problem_words.h"
#include "qml/print/record_words.h"
#include "qml/print/sheet_language.h"

namespace newel::desk {
namespace {

using What = LadderStep::What;

bool asksToMove(const ProgressionAdvice& advice) {
  return advice.advice == Advice::Ready || advice.advice == Advice::StepBack;
}

QString doseOf(const v1::Entry& entry) {
  return ProgressModel::tr("%1, %2").arg(print::words(entry.support()), print::doseWords(entry.dose()));
}

QString stepWords(const ProgressionAdvice& advice, const LadderStep& step) {
  if (!asksToMove(advice)) return {};
  switch (step.what) {
    case What::Taken:
      return advice.advice == Advice::Ready
                 ? ProgressModel::tr("In the draft: %1.").arg(doseOf(step.entry))
                 : ProgressModel::tr("In the draft, a step back: %1.").arg(doseOf(step.entry));
    case What::NoLadder:
      return ProgressModel::tr("This exercise has no ladder. The draft leaves its dose to you.");
    case What::OffLadder:
      return ProgressModel::tr("Its dose is your own, off the ladder. The draft leaves it to you.");
    case What::AtItsEnd:
      return advice.advice == Advice::Ready
                 ? ProgressModel::tr("It stands on the last step of its ladder. The draft leaves it to you.")
                 : ProgressModel::tr(
                       "It stands on the first step of its ladder. The draft leaves it to you.");
    case What::Blocked:
      return ProgressModel::tr("The next step is refused for this person: %1").arg(print::text(step.words));
  }
  return {};
}

QString matters(const PainChange& change) {
  if (!change.by_points && !change.by_percent) return ProgressModel::tr("that may be chance");
  if (change.by_points && change.by_percent)
    return ProgressModel::tr("that matters by both measures: 2 points, 30 %");
  return change.by_points ? ProgressModel::tr("that matters by the measure of 2 points")
                          : ProgressModel::tr("that matters by the measure of 30 %");
}

QString signedPoints(double points) {
  return (points > 0 ? QStringLiteral("+") : QString()) + print::sheetLocale().toString(points, 'f', 1);
}

QString painWords(const PainCourse& pain) {
  if (pain.ratings.empty()) return ProgressModel::tr("Pain was not rated.");
  QString words = pain.ratings.size() == 1
                      ? ProgressModel::tr("Pain afterwards: 1 rating")
                      : ProgressModel::tr("Pain afterwards: %1 ratings").arg(pain.ratings.size());
  if (pain.slope_per_week)
    words += ProgressModel::tr(", %1 points a week").arg(signedPoints(*pain.slope_per_week));
  if (pain.change)
    words += ProgressModel::tr("; the last three against the three before: %1 points, %2")
                 .arg(signedPoints(pain.change->points), matters(*pain.change));
  return words + QStringLiteral(".");
}

}  // namespace

void ProgressModel::show(std::shared_ptr<const PersonFile> file) {
  m_file = std::move(file);
  judge();
  emit changed();
}

QString ProgressModel::name() const { return m_file ? print::fullName(m_file->identity) : QString(); }

void ProgressModel::judge() {
  m_rows.clear();
  m_problem.clear();
  const v1::Programme* const last = lastProgramme(*m_file);
  if (last == nullptr) return;
  const auto due = recentAdherence(*m_file, m_context.now() + m_context.hub_ahead, kJudgedWeeks);
  if (!due.ok()) {
    m_problem = problemWords(due.status(), tr("judge what was done"));
    return;
  }
  for (const v1::Entry& entry : last->entries()) {
    auto advice = adviseProgression(m_file->programmes, entry.id(), m_file->practices, due->occasions);
    if (!advice.ok()) {
      m_problem = problemWords(advice.status(), tr("judge what was done"));
      return;
    }
    Row row{entry, *std::move(advice), painCourse(m_file->practices, entry.id()), {}};
    row.step.entry = entry;
    if (asksToMove(row.advice))
      row.step = stepOnLadder(entry, row.advice.advice == Advice::Ready, m_file->person, *m_context.catalogue,
                              *m_context.rules);
    m_rows.push_back(std::move(row));
  }
  std::stable_sort(m_rows.begin(), m_rows.end(),
                   [](const Row& a, const Row& b) { return asksToMove(a.advice) > asksToMove(b.advice); });
}

QString ProgressModel::about() const {
  const v1::Programme* const last = m_file ? lastProgramme(*m_file) : nullptr;
  if (last == nullptr) return tr("There is no programme yet, so there is nothing to judge.");
  const auto heard = heardUntil(*m_file);
  return heard ? tr("By the rules of programme %1, from practices that the phone told of until %2.")
                     .arg(last->number())
                     .arg(print::dayWords(*heard))
               : tr("By the rules of programme %1. No phone has told of a practice yet.").arg(last->number());
}

QVariantMap ProgressModel::rowOf(const Row& row) const {
  QVariantList evidence;
  for (const EvidenceLine& line : row.advice.evidence)
    evidence << QVariantMap{
        {QStringLiteral("good"), line.good},
        {QStringLiteral("words"), evidenceWords(line, *m_context.catalogue, m_context.language)}};
  const QString title = print::titleOf(*m_context.catalogue, row.entry.exercise_id(), m_context.language);
  return {{QStringLiteral("title"), title},
          {QStringLiteral("advice"), static_cast<int>(row.advice.advice)},
          {QStringLiteral("adviceWords"), adviceWords(row.advice.advice)},
          {QStringLiteral("dose"), doseOf(row.entry)},
          {QStringLiteral("evidence"), evidence},
          {QStringLiteral("pain"), painWords(row.pain)},
          {QStringLiteral("step"), stepWords(row.advice, row.step)},
          {QStringLiteral("moves"), row.moves()}};
}

QVariantList ProgressModel::rows() const {
  QVariantList rows;
  for (const Row& row : m_rows) rows << rowOf(row);
  return rows;
}

int ProgressModel::moving() const {
  return static_cast<int>(
      std::count_if(m_rows.begin(), m_rows.end(), [](const Row& row) { return row.moves(); }));
}

QString ProgressModel::draftWords() const {
  const int count = moving();
  if (count == 0) return tr("Write the next programme");
  return count == 1 ? tr("Make the draft: 1 exercise on the next step")
                    : tr("Make the draft: %1 exercises on the next step").arg(count);
}

v1::Programme ProgressModel::follow(v1::Programme draft) const {
  for (v1::Entry& entry : *draft.mutable_entries()) {
    const auto row = std::find_if(m_rows.begin(), m_rows.end(),
                                  [&entry](const Row& each) { return each.entry.id() == entry.id(); });
    if (row != m_rows.end() && row->moves()) entry = row->step.entry;
  }
  return draft;
}

}  // namespace newel::desk
