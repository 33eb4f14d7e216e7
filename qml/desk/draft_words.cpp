// What the programme page says about a draft, and the fields of the programme as a whole.
#include <algorithm>
#include <cmath>

#include "core/time/local_day.h"
#include "qml/desk/draft_model.h"
#include "qml/print/record_words.h"

namespace newel::desk {

QString DraftModel::name() const { return m_file ? print::fullName(m_file->identity) : QString(); }
QString DraftModel::givenName() const {
  return m_file ? print::text(m_file->identity.given_name()) : QString();
}
QString DraftModel::limbs() const { return m_file ? print::limbsWords(m_file->person) : QString(); }

QString DraftModel::basis() const {
  return m_draft.baseNumber() == 0 ? tr("the first programme")
                                   : tr("from programme %1").arg(m_draft.baseNumber());
}

QString DraftModel::advice() const { return print::text(m_draft.value().advice()); }
int DraftModel::painStop() const { return static_cast<int>(m_draft.value().thresholds().pain_stop_0_10()); }
int DraftModel::painRise() const { return static_cast<int>(m_draft.value().thresholds().pain_rise_0_10()); }

void DraftModel::takeDays() {
  m_effective_typed = print::text(m_draft.value().effective_day());
  m_end_typed = print::text(m_draft.value().end_day());
}

QString DraftModel::firstDayWords() const { return print::dayWords(m_draft.value().effective_day()); }
QString DraftModel::lastDayWords() const { return print::dayWords(m_draft.value().end_day()); }

QString DraftModel::effectiveDayProblem() const {
  return parseLocalDay(m_effective_typed.toStdString()).ok()
             ? QString()
             : tr("Type a day as 2026-11-25: year, month, day.");
}

QString DraftModel::endDayProblem() const {
  const auto end = parseLocalDay(m_end_typed.toStdString());
  if (!end.ok()) return tr("Type a day as 2026-11-25: year, month, day.");
  const auto first = parseLocalDay(m_effective_typed.toStdString());
  return first.ok() && *end < *first ? tr("The last day is before the first.") : QString();
}

void DraftModel::setEffectiveDay(const QString& day) {
  if (day == m_effective_typed) return;
  m_effective_typed = day;
  change("effective_day",
         [&day](v1::Programme& draft) { draft.set_effective_day(day.trimmed().toStdString()); });
}

void DraftModel::setEndDay(const QString& day) {
  if (day == m_end_typed) return;
  m_end_typed = day;
  change("end_day", [&day](v1::Programme& draft) { draft.set_end_day(day.trimmed().toStdString()); });
}

void DraftModel::setWeeks(int weeks) {
  const auto first = parseLocalDay(m_effective_typed.trimmed().toStdString());
  if (first.ok()) setEndDay(print::text(formatLocalDay(*first + absl::civil_diff_t{7} * weeks - 1)));
}

void DraftModel::setAdvice(const QString& advice) {
  change("advice", [&advice](v1::Programme& draft) { draft.set_advice(advice.toStdString()); });
}

void DraftModel::setPainStop(int value) {
  change("pain_stop", [value](v1::Programme& draft) {
    draft.mutable_thresholds()->set_pain_stop_0_10(static_cast<std::uint32_t>(value));
  });
}

void DraftModel::setPainRise(int value) {
  change("pain_rise", [value](v1::Programme& draft) {
    draft.mutable_thresholds()->set_pain_rise_0_10(static_cast<std::uint32_t>(value));
  });
}

void DraftModel::scheduleForAll(const v1::Schedule& schedule) {
  const v1::Schedule kept = schedule;
  change("", [&kept](v1::Programme& draft) {
    for (auto& entry : *draft.mutable_entries()) {
      const auto pauses = entry.schedule().pauses();
      *entry.mutable_schedule() = kept;
      *entry.mutable_schedule()->mutable_pauses() = pauses;
    }
  });
}

void DraftModel::setReason(const QString& rule_id, const QString& reason) {
  if (m_draft.value().entries().empty()) return;
  // An ask over the whole programme is answered in its first entry; see core/review/review.h.
  change("reason." + rule_id.toStdString(), [&](v1::Programme& draft) {
    auto& overrides = *draft.mutable_entries(0)->mutable_overrides();
    const auto found = std::find_if(overrides.begin(), overrides.end(), [&](const v1::Override& answered) {
      return answered.rule_id() == rule_id.toStdString();
    });
    if (found != overrides.end()) overrides.erase(found);
    if (reason.trimmed().isEmpty()) return;
    auto& answered = *overrides.Add();
    answered.set_rule_id(rule_id.toStdString());
    answered.set_reason(reason.trimmed().toStdString());
  });
}

QVariantList DraftModel::minutes() const {
  QVariantList list;
  if (!m_review.ok()) return {0, 0, 0, 0, 0, 0, 0};
  for (const double day : m_review->minutes_by_weekday) list << day;
  return list;
}

QString DraftModel::minutesWords() const {
  if (!m_review.ok()) return {};
  const double most =
      *std::max_element(m_review->minutes_by_weekday.begin(), m_review->minutes_by_weekday.end());
  QString now = tr("%1 min on the fullest day").arg(std::ceil(most));
  if (m_minutes_before < 0) return now;
  return tr("%1, was %2").arg(now).arg(std::ceil(m_minutes_before));
}

QVariantMap DraftModel::reasons() const {
  QVariantMap reasons;
  if (!m_review.ok()) return reasons;
  for (const auto& finding : m_review->programme_findings) {
    reasons[print::text(finding.rule_id())] = print::text(finding.overridden_reason());
  }
  return reasons;
}

QStringList DraftModel::changes() const {
  QStringList list;
  if (!m_review.ok()) return list;
  for (const auto& change : m_review->changes) list << print::text(change);
  if (list.isEmpty() && m_draft.baseNumber() > 0) list << tr("Nothing that the person does has changed.");
  if (m_draft.baseNumber() == 0) list << tr("The first programme: everything is new.");
  return list;
}

QString DraftModel::changesForPerson() const {
  if (!m_draft.value().changes().empty()) return print::text(m_draft.value().changes());
  const v1::Programme* last = m_file ? lastProgramme(*m_file) : nullptr;
  if (!m_review.ok() || last == nullptr) return {};
  // In the person's language, whatever the desk's.
  QStringList list;
  for (const auto& change :
       changesBetween(*last, m_draft.value(), *m_context.catalogue, m_file->person.language()))
    list << print::text(change);
  return list.join(QLatin1Char('\n'));
}

void DraftModel::setChangesForPerson(const QString& words) {
  if (words == changesForPerson()) return;
  change("changes", [&words](v1::Programme& draft) { draft.set_changes(words.toStdString()); });
}

bool DraftModel::maySign() const {
  return m_file && m_review.ok() && m_review->may_sign && effectiveDayProblem().isEmpty() &&
         endDayProblem().isEmpty();
}

// The first thing in the way, named with its exercise, so that it can be found.
QString DraftModel::whyNotEntry() const {
  for (std::size_t i = 0; i < m_review->entries.size(); ++i) {
    const EntryReview& entry = m_review->entries[i];
    const QString title = m_entries.titleAt(static_cast<int>(i));
    if (!entry.problem.empty()) return tr("%1: %2.").arg(title, print::text(entry.problem));
    for (const auto& finding : entry.findings) {
      if (finding.effect() == v1::EFFECT_BLOCK)
        return tr("%1 is blocked: %2").arg(title, print::text(finding.therapist()));
      if (finding.effect() == v1::EFFECT_ASK && finding.overridden_reason().empty()) {
        return tr("%1 needs your reason: %2").arg(title, print::text(finding.therapist()));
      }
    }
  }
  for (const auto& finding : m_review->programme_findings) {
    if (finding.effect() == v1::EFFECT_BLOCK)
      return tr("The programme is blocked: %1").arg(print::text(finding.therapist()));
    if (finding.effect() == v1::EFFECT_ASK && finding.overridden_reason().empty()) {
      return tr("The programme needs your reason: %1").arg(print::text(finding.therapist()));
    }
  }
  return tr("The rules do not allow it.");
}

QString DraftModel::whyNot() const {
  if (maySign() || !m_file) return {};
  if (m_draft.value().entries().empty()) return tr("There is no exercise in it yet.");
  if (!effectiveDayProblem().isEmpty()) return tr("First day: %1").arg(effectiveDayProblem());
  if (!endDayProblem().isEmpty()) return tr("Last day: %1").arg(endDayProblem());
  if (!m_review.ok()) return print::text(std::string(m_review.status().message()));
  return whyNotEntry();
}

}  // namespace newel::desk
