#include "qml/home/practice_model.h"

#include <algorithm>

#include "core/library/wording.h"
#include "qml/home/facts_for_pages.h"
#include "qml/home/phrasing.h"
#include "qml/parts/picture_address.h"

namespace newel::home {
PracticeModel::PracticeModel(PracticeSession& session, const HomeParts& parts, QObject* parent)
    : QObject(parent), m_session(session), m_parts(parts), m_media(*parts.engine) {
  connect(&session, &PracticeSession::changed, this, [this] {
    showFigure();
    emit changed();
  });
  connect(&session, &PracticeSession::failed, this, [this](const QString& words) {
    m_error = words;
    emit changed();
  });
}

void PracticeModel::showFigure() {
  if (entry() == nullptr) return m_figure.clear();
  m_figure.show(
      parts::figureOf(run()->timeline(run()->entryIndex()), m_session.input().person, appearanceOf(m_parts)));
}

void PracticeModel::apply(const PracticeSession::Step& step) {
  m_error.clear();
  m_session.apply(step);
}

QString PracticeModel::question() const {
  const v1::ReadyQuestion* const asked = run() != nullptr ? run()->question() : nullptr;
  if (asked == nullptr) return QString();
  return text(wordsOf(*asked, m_session.input().language).question());
}

QString PracticeModel::questionHelp() const {
  const v1::ReadyQuestion* const asked = run() != nullptr ? run()->question() : nullptr;
  if (asked == nullptr) return QString();
  return text(wordsOf(*asked, m_session.input().language).help());
}

QString PracticeModel::questionPlace() const {
  if (run() == nullptr || run()->question() == nullptr) return QString();
  return tr("Before you start, %L1 of %L2").arg(run()->questionNumber()).arg(run()->questionCount());
}

QVariantList PracticeModel::choices() const {
  QVariantList rows;
  const v1::ReadyQuestion* const asked = run() != nullptr ? run()->question() : nullptr;
  if (asked == nullptr) return rows;
  for (const v1::ReadyChoice& choice : asked->choices()) {
    rows << QVariantMap{{"id", text(choice.id())},
                        {"words", text(wordsOf(choice, m_session.input().language))}};
  }
  return rows;
}

const v1::Entry* PracticeModel::entry() const {
  if (run() == nullptr || run()->entryIndex() >= run()->entryCount()) return nullptr;
  return &run()->entry(run()->entryIndex());
}

const v1::ExerciseWords* PracticeModel::words() const {
  const v1::Entry* const coming = entry();
  if (coming == nullptr) return nullptr;
  return m_parts.catalogue->words(coming->exercise_id(), run()->timeline(run()->entryIndex()).language(),
                                  coming->exercise_revision());
}

QString PracticeModel::resolved(const std::string& words) const {
  const v1::Entry* const coming = entry();
  if (coming == nullptr || words.empty()) return QString();
  const v1::Timeline& timeline = run()->timeline(run()->entryIndex());
  WordingContext context{m_parts.catalogue, &m_session.input().person, coming, timeline.language()};
  for (const v1::Beat& beat : timeline.beats()) {
    if (beat.side() == v1::SIDE_UNSPECIFIED) continue;
    context.working = beat.side();
    break;
  }
  const absl::StatusOr<std::string> own = resolveWords(words, context);
  return own.ok() ? text(*own) : QString();
}

QString PracticeModel::entryTitle() const {
  return entry() == nullptr ? QString() : text(run()->timeline(run()->entryIndex()).title());
}

QString PracticeModel::entryPlace() const {
  if (entry() == nullptr) return QString();
  return tr("Exercise %L1 of %L2").arg(run()->entryIndex() + 1).arg(run()->entryCount());
}

QString PracticeModel::entryDose() const {
  if (entry() == nullptr) return QString();
  const int minutes = minutesOf(run()->timeline(run()->entryIndex()).total_ms());
  return tr("%1, about %2").arg(doseWords(entry()->dose()), minutesWords(minutes));
}

QString PracticeModel::entryStart() const {
  return words() == nullptr ? QString() : resolved(words()->start());
}

QString PracticeModel::entryNote() const { return entry() == nullptr ? QString() : text(entry()->note()); }

QString PracticeModel::entryCaution() const {
  if (entry() == nullptr) return QString();
  const std::optional<v1::Finding> caution = run()->caution(run()->entryIndex());
  return caution.has_value() ? text(caution->person()) : QString();
}

bool PracticeModel::entryOtherLanguage() const {
  return entry() != nullptr && run()->timeline(run()->entryIndex()).fell_back();
}

QVariantMap PracticeModel::entryMedia() const {
  return entry() == nullptr ? QVariantMap() : m_media.rowOf(*entry());
}

QString PracticeModel::entryPicture() const {
  return entry() == nullptr ? QString() : parts::pictureAddress(pictureOf(*m_parts.engine, *entry()));
}

QString PracticeModel::support() const {
  if (entry() == nullptr) return QString();
  const v1::Timeline& timeline = run()->timeline(run()->entryIndex());
  if (!timeline.support_words().empty()) return text(timeline.support_words());
  return supportWords(*m_parts.catalogue, timeline.support(), timeline.language());
}

QStringList PracticeModel::things() const {
  if (entry() == nullptr) return {};
  return equipmentWords(*m_parts.catalogue, *entry(), run()->timeline(run()->entryIndex()).language());
}

QString PracticeModel::prosthesis() const {
  return entry() == nullptr ? QString() : prosthesisWords(entry()->prosthesis());
}

bool PracticeModel::lastEntry() const {
  return run() != nullptr && run()->entryIndex() + 1 >= run()->entryCount();
}

QVariantList PracticeModel::reasons() const { return happenedReasons(); }

QVariantList PracticeModel::skipReasons() const {
  return reasonRows({v1::STOP_REASON_TIRED, v1::STOP_REASON_PAIN, v1::STOP_REASON_UNSTEADY,
                     v1::STOP_REASON_PROSTHESIS, v1::STOP_REASON_NO_TIME, v1::STOP_REASON_OTHER});
}

QStringList PracticeModel::verdict() const {
  QStringList lines;
  const Verdict* const spoken = run() != nullptr ? run()->verdict() : nullptr;
  if (spoken == nullptr) return lines;
  for (const v1::Finding& finding : spoken->findings) {
    if (!finding.person().empty()) lines << text(finding.person());
  }
  return lines;
}

bool PracticeModel::verdictEnds() const {
  const Verdict* const spoken = run() != nullptr ? run()->verdict() : nullptr;
  return spoken != nullptr && spoken->ends_practice;
}

bool PracticeModel::emergencyFirst() const {
  const Verdict* const spoken = run() != nullptr ? run()->verdict() : nullptr;
  if (spoken == nullptr) return false;
  for (const v1::Finding& finding : spoken->findings) {
    if (finding.emergency_first()) return true;
  }
  return false;
}

QString PracticeModel::endWords() const {
  switch (m_session.record().end()) {
    case v1::PRACTICE_END_FINISHED:
      return tr("Done for now");
    case v1::PRACTICE_END_STOPPED:
      return tr("Stopped, and that is fine");
    case v1::PRACTICE_END_RED_FLAG:
      return tr("Stopped for your safety");
    case v1::PRACTICE_END_HELD:
      return tr("The clinic asked you to stop");
    case v1::PRACTICE_END_REFUSED:
      return tr("Not today");
    default:
      return tr("Closed");
  }
}

QVariantList PracticeModel::doneRows() const {
  QVariantList rows;
  for (const v1::EntryDone& entry : m_session.record().entries()) {
    const v1::ExerciseWords* words =
        wordsOrEnglish(*m_parts.catalogue, entry.exercise_id(), m_session.input().language);
    const bool begun = entry.done().active_ms() > 0;
    QString what;
    if (!begun) {
      what = entry.skipped() == v1::STOP_REASON_UNSPECIFIED
                 ? tr("not done")
                 : tr("not done: %1").arg(reasonWords(entry.skipped()));
    } else {
      const int asked = static_cast<int>(entry.asked().repetitions());
      what = tr("%L1 of %Ln time(s)", nullptr, asked).arg(entry.done().repetitions());
      if (entry.has_pain_after_0_10()) what += tr(", pain %L1 of %L2").arg(entry.pain_after_0_10()).arg(10);
      if (entry.has_effort_0_10()) what += tr(", effort %L1 of %L2").arg(entry.effort_0_10()).arg(10);
    }
    rows << QVariantMap{{"title", words == nullptr ? text(entry.exercise_id()) : text(words->title())},
                        {"words", what},
                        {"done", begun}};
  }
  return rows;
}

void PracticeModel::answer(const QString& choice) {
  apply([&choice](PracticeRun& run, absl::Time wall, absl::Duration now) {
    return run.answer(choice.toStdString(), wall, now);
  });
}

void PracticeModel::painBefore(int pain) {
  apply([pain](PracticeRun& run, absl::Time wall, absl::Duration now) {
    return run.painBefore(static_cast<std::uint32_t>(pain), wall, now);
  });
}

void PracticeModel::confirmSupportAndStart() {
  apply([](PracticeRun& run, absl::Time wall, absl::Duration now) {
    if (run.step() == RunStep::Support) {
      absl::Status status = run.confirmSupport(wall, now);
      if (!status.ok()) return status;
    }
    return run.startEntry(wall, now);
  });
}

void PracticeModel::stopReason(int reason) {
  apply([reason](PracticeRun& run, absl::Time wall, absl::Duration now) {
    return run.stopReason(static_cast<v1::StopReason>(reason), wall, now);
  });
}

void PracticeModel::skip(int reason) {
  apply([reason](PracticeRun& run, absl::Time wall, absl::Duration now) {
    return run.skipEntry(static_cast<v1::StopReason>(reason), std::string(), wall, now);
  });
}

void PracticeModel::rate(int pain, int effort) {
  apply([pain, effort](PracticeRun& run, absl::Time wall, absl::Duration now) {
    return run.rate(static_cast<std::uint32_t>(pain), static_cast<std::uint32_t>(effort), wall, now);
  });
}

// A receipt that could not be kept now is made when the order is shown on Today.
void PracticeModel::markHoldsSeen() {
  for (const v1::HoldOrder& hold : m_parts.engine->activeHolds()) {
    if (!m_parts.engine->markSeen(v1::RECEIPT_OF_HOLD_ORDER, hold.id(), hold.number()).ok()) return;
  }
  m_parts.engine->syncSoon();
}

void PracticeModel::acknowledge() {
  const Verdict* const read = run() != nullptr ? run()->verdict() : nullptr;
  const bool held = read != nullptr &&
                    std::any_of(read->findings.begin(), read->findings.end(), [](const v1::Finding& finding) {
                      return finding.rule_id() == kHoldOrderRule;
                    });
  if (held) markHoldsSeen();
  apply([](PracticeRun& run, absl::Time wall, absl::Duration now) { return run.acknowledge(wall, now); });
}

void PracticeModel::finishNow() {
  apply([](PracticeRun& run, absl::Time wall, absl::Duration now) { return run.close(false, wall, now); });
}

}  // namespace newel::home
