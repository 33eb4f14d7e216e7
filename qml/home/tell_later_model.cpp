#include "qml/home/tell_later_model.h"

#include <algorithm>

#include "core/practice/compile.h"
#include "core/practice/told_later.h"
#include "core/safety/practice_history.h"
#include "core/time/local_day.h"
#include "qml/home/facts_for_pages.h"
#include "qml/home/phrasing.h"

namespace newel::home {
namespace {

const v1::Entry* entryIn(const std::vector<v1::Programme>& programmes, const UntoldOccasion& untold) {
  for (const v1::Programme& programme : programmes) {
    if (programme.number() != untold.programme_number) continue;
    for (const v1::Entry& entry : programme.entries()) {
      if (entry.id() == untold.occasion.ref.entry_id()) return &entry;
    }
  }
  return nullptr;
}

}  // namespace

TellLaterModel::TellLaterModel(const HomeParts& parts, QObject* parent) : QObject(parent), m_parts(parts) {}

void TellLaterModel::begin() {
  m_step = Step::Which;
  m_pain = -1;
  m_effort = -1;
  m_percent = 100;
  m_findings.clear();
  m_ends = false;
  m_error.clear();
  findRows();
  emit changed();
}

void TellLaterModel::findRows() {
  m_rows.clear();
  m_untold.clear();
  const std::optional<v1::Person> person = m_parts.engine->person();
  if (!person.has_value()) return;
  const std::vector<v1::Programme> programmes = m_parts.engine->programmes();
  const absl::CivilDay today = todayOf(m_parts);
  QString last_day;
  for (UntoldOccasion& untold :
       untoldOccasions(programmes, today, minuteOfDayAt(m_parts.clock->wall(), zoneOf(m_parts)),
                       doneOccasions(practicesThatCount(m_parts)))) {
    const v1::Entry* const entry = entryIn(programmes, untold);
    const auto day = parseLocalDay(untold.occasion.ref.local_day());
    if (entry == nullptr || !day.ok()) continue;
    const auto timeline = compileTimeline(*entry, *person, *m_parts.catalogue, person->language());
    if (!timeline.ok()) continue;  // nothing could be said about it either
    const QString day_words = *day == today       ? tr("Today")
                              : *day == today - 1 ? tr("Yesterday")
                                                  : dayWords(*day);
    // Where the whole day is the window there is nothing to tell apart.
    const bool all_day = untold.occasion.window.from_min() == 0 && untold.occasion.window.to_min() == 24 * 60;
    const QString window = all_day ? QString() : windowWords(untold.occasion.window);
    const QString dose = doseWords(entry->dose());
    m_rows << QVariantMap{{"day", day_words == last_day ? QString() : day_words},
                          {"dayWords", day_words},
                          {"title", text(timeline->title())},
                          {"window", window},
                          {"words", all_day ? dose : tr("%1, %2").arg(dose, window)}};
    last_day = day_words;
    m_untold.push_back(std::move(untold));
  }
}

void TellLaterModel::choose(int row) {
  if (m_step != Step::Which || row < 0 || row >= static_cast<int>(m_untold.size())) return;
  m_chosen = m_untold[static_cast<std::size_t>(row)];
  const QVariantMap shown = m_rows[row].toMap();
  m_title = shown["title"].toString();
  const QString window = shown["window"].toString();
  m_when = shown["dayWords"].toString();
  if (!window.isEmpty()) m_when = tr("%1, %2").arg(m_when, window);
  m_step = Step::HowMuch;
  emit changed();
}

void TellLaterModel::howMuch(int percent) {
  if (m_step != Step::HowMuch) return;
  m_percent = std::clamp(percent, 1, 100);
  m_step = Step::Pain;
  emit changed();
}

void TellLaterModel::givePain(int pain) {
  if (m_step != Step::Pain) return;
  m_pain = std::clamp(pain, 0, 10);
  m_step = Step::Effort;
  emit changed();
}

void TellLaterModel::giveEffort(int effort) {
  if (m_step != Step::Effort) return;
  m_effort = std::clamp(effort, 0, 10);
  m_step = Step::Happened;
  emit changed();
}

void TellLaterModel::happened(int reason) {
  if (m_step != Step::Happened) return;
  keep(static_cast<v1::StopReason>(reason));
  emit changed();
}

void TellLaterModel::keep(v1::StopReason happened) {
  const std::optional<v1::Person> person = m_parts.engine->person();
  const std::vector<v1::Programme> programmes = m_parts.engine->programmes();
  const auto programme = std::find_if(programmes.begin(), programmes.end(), [this](const auto& each) {
    return each.number() == m_chosen.programme_number;
  });
  if (!person.has_value() || programme == programmes.end()) return begin();
  const HomeEngine& engine = *m_parts.engine;
  ToldInput input;
  input.practice_id = m_parts.engine->newId();
  input.programme = *programme;
  input.person = *person;
  input.occasion = m_chosen.occasion.ref;
  input.done_percent = static_cast<std::uint32_t>(m_percent);
  input.pain_after_0_10 = static_cast<std::uint32_t>(std::max(0, m_pain));
  input.effort_0_10 = static_cast<std::uint32_t>(std::max(0, m_effort));
  input.happened = happened;
  input.zone = m_parts.zone();
  input.today = todayOf(m_parts);
  input.told_at = m_parts.clock->wall();
  input.language = person->language();
  input.app_version = kAppVersion;
  input.history = historyFacts(
      historyOf(*m_parts.rules, practicesThatCount(m_parts), input.today, clinicSpokeAt(engine)));
  auto result = tellLater(input, *m_parts.catalogue, *m_parts.rules);
  const absl::Status kept = result.ok() ? m_parts.engine->addToldLater(result->practice) : result.status();
  m_error = errorWords(kept);
  if (!kept.ok()) return;  // the answers stay, to be tried again
  m_findings = std::move(result->findings);
  m_ends = result->ends_practice;
  m_step = Step::Told;
  m_parts.engine->syncSoon();
  emit told();
}

bool TellLaterModel::back() {
  if (m_step == Step::Which || m_step == Step::Told) return false;
  m_step = static_cast<Step>(static_cast<int>(m_step) - 1);
  m_error.clear();
  emit changed();
  return true;
}

QVariantList TellLaterModel::reasons() const { return happenedReasons(); }

QStringList TellLaterModel::findings() const {
  QStringList lines;
  for (const v1::Finding& finding : m_findings) {
    if (!finding.person().empty()) lines << text(finding.person());
  }
  return lines;
}

bool TellLaterModel::emergencyFirst() const {
  return std::any_of(m_findings.begin(), m_findings.end(),
                     [](const v1::Finding& finding) { return finding.emergency_first(); });
}

}  // namespace newel::home
