#include "qml/desk/done_model.h"

#include <QtCore/QDate>
#include <QtCore/QLocale>
#include <algorithm>
#include <map>

#include "core/schedule/occasions.h"
#include "core/schedule/wear_plan.h"
#include "core/time/local_day.h"
#include "qml/desk/file_words.h"
#include "qml/desk/problem_words.h"
#include "qml/print/record_words.h"
#include "qml/print/wear_lines.h"

namespace newel::desk {
namespace {

using State = OccasionResult::State;

QString shareWords(const Share& share) {
  if (!share.capped()) return DoneModel::tr("nothing due with data");
  return DoneModel::tr("%1 of %2 · %3")
      .arg(share.counted)
      .arg(share.due)
      .arg(print::percentWords(share.capped()));
}

QString doseWords(const Share& share) {
  return share.doseShare() ? DoneModel::tr("dose %1").arg(print::percentWords(share.doseShare())) : QString();
}

QVariantMap shareMap(const QString& label, const Share& share) {
  return {{QStringLiteral("label"), label},
          {QStringLiteral("share"), shareWords(share)},
          {QStringLiteral("dose"), doseWords(share)}};
}

}  // namespace

DoneModel::DoneModel(DeskContext& context, QObject* parent) : QObject(parent), m_context(context) {}

void DoneModel::show(std::shared_ptr<const PersonFile> file) {
  m_file = std::move(file);
  refresh();
}

void DoneModel::setWeeks(int weeks) {
  if (m_weeks == weeks || weeks < 1 || weeks > 26) return;
  m_weeks = weeks;
  refresh();
}

void DoneModel::refresh() {
  m_days.clear();
  m_rows.clear();
  m_by_week.clear();
  m_by_programme.clear();
  m_practices.clear();
  m_problem.clear();
  m_adherence = Adherence();
  if (m_file) {
    const absl::CivilDay today = todayOf(*m_file, m_context.now());
    m_last = mondayOf(today) + 6;
    m_first = mondayOf(today) - absl::civil_diff_t{7} * (m_weeks - 1);
    auto adherence = adherenceOf(m_file->programmes, m_file->practices, m_first, m_last, today,
                                 heardDays(*m_file, m_first), heldDaysOf(m_file->holds, zoneOf(*m_file)));
    if (adherence.ok()) {
      m_adherence = *std::move(adherence);
    } else {
      m_problem = problemWords(adherence.status(), tr("count what was done"));
    }
    makeDays();
    makeRows();
    makeShares();
    makePractices();
  }
  emit changed();
}

QString DoneModel::period() const {
  return m_file ? tr("%1 to %2").arg(print::dayWords(m_first), print::dayWords(m_last)) : QString();
}

QString DoneModel::overall() const {
  if (!m_file) return {};
  if (!m_adherence.all.capped()) return tr("Nothing was due yet that anybody has data for.");
  return tr("%1 of %2 due done, %3. With extra: %4. Dose: %5.")
      .arg(m_adherence.all.counted)
      .arg(m_adherence.all.due)
      .arg(print::percentWords(m_adherence.all.capped()), print::percentWords(m_adherence.all.raw()),
           print::percentWords(m_adherence.all.doseShare()));
}

QString DoneModel::heard() const {
  if (!m_file) return {};
  const auto last = lastContact(*m_file);
  if (!last) return tr("The phone was never heard from: there is no data.");
  return tr("Phone last heard from %1, %2. Later days have no data.")
      .arg(print::momentWords(*last, m_context.zone),
           m_context.now() - *last < absl::Minutes(1)
               ? print::ageWords(absl::ZeroDuration())
               : tr("%1 ago").arg(print::ageWords(m_context.now() - *last)));
}

QString DoneModel::definition() const { return print::adherenceDefinition(); }

void DoneModel::makeDays() {
  const absl::CivilDay today = todayOf(*m_file, m_context.now());
  for (absl::CivilDay day = m_first; day <= m_last; ++day) {
    const QDate date(static_cast<int>(day.year()), day.month(), day.day());
    m_days << QVariantMap{
        {QStringLiteral("day"), print::dayWords(day)},
        {QStringLiteral("weekday"), QLocale().toString(date, QStringLiteral("ddd")).left(2)},
        {QStringLiteral("date"), QString::number(day.day())},
        {QStringLiteral("short"), QLocale().toString(date, QStringLiteral("d MMM"))},
        {QStringLiteral("monday"), weekdayOf(day) == v1::WEEKDAY_MONDAY},
        {QStringLiteral("today"), day == today}};
  }
}

// One row an entry, in the order of the newest programme that has it; one cell a day, its windows together.
void DoneModel::makeRows() {
  std::map<std::string, std::map<std::string, std::vector<const OccasionResult*>>> by_entry;
  for (const auto& occasion : m_adherence.occasions) {
    by_entry[occasion.ref.entry_id()][occasion.ref.local_day()].push_back(&occasion);
  }
  std::vector<std::string> order;
  for (auto programme = m_file->programmes.rbegin(); programme != m_file->programmes.rend(); ++programme) {
    for (const auto& entry : programme->entries()) {
      if (by_entry.contains(entry.id()) && std::find(order.begin(), order.end(), entry.id()) == order.end()) {
        order.push_back(entry.id());
      }
    }
  }
  for (const auto& id : order) {
    const QString title = titleOfEntry(*m_file, id, m_context);
    QVariantList cells;
    for (absl::CivilDay day = m_first; day <= m_last; ++day) {
      const auto found = by_entry[id].find(formatLocalDay(day));
      QVariantList states;
      QStringList words;
      if (found != by_entry[id].end()) {
        for (const OccasionResult* occasion : found->second) {
          states << static_cast<int>(occasion->state);
          QString said = print::words(occasion->state);
          if (occasion->state == State::Part)
            said += tr(", %1 of the dose").arg(print::percentWords(occasion->dose));
          if (occasion->told_later) said += tr(", told later");
          if (occasion->any_day_of_week) said += tr(", any day of the week counts");
          if (occasion->skipped != v1::STOP_REASON_UNSPECIFIED) {
            said += tr(", %1").arg(print::words(occasion->skipped));
          }
          words << said;
        }
      }
      cells << QVariantMap{
          {QStringLiteral("states"), states},
          {QStringLiteral("words"), words.isEmpty() ? tr("nothing due") : words.join(QStringLiteral("; "))}};
    }
    const Share& share = m_adherence.by_entry[id];
    m_rows << QVariantMap{{QStringLiteral("title"), title},
                          {QStringLiteral("share"), shareWords(share)},
                          {QStringLiteral("dose"), doseWords(share)},
                          {QStringLiteral("cells"), cells}};
  }
}

void DoneModel::makeShares() {
  for (const auto& [monday, share] : m_adherence.by_week) {
    m_by_week << shareMap(tr("Week of %1").arg(print::dayWords(monday)), share);
  }
  const absl::CivilDay today = todayOf(*m_file, m_context.now());
  for (auto programme = m_file->programmes.rbegin(); programme != m_file->programmes.rend(); ++programme) {
    const auto from = parseLocalDay(programme->effective_day());
    auto to = parseLocalDay(programme->end_day());
    if (!from.ok() || !to.ok()) continue;
    // It counts until the day before the next number's.
    if (programme != m_file->programmes.rbegin()) {
      const auto next = parseLocalDay(std::prev(programme)->effective_day());
      if (next.ok()) *to = std::min(*to, *next - 1);
    }
    if (*to < *from) continue;
    const auto adherence = adherenceOf(m_file->programmes, m_file->practices, *from, *to, today,
                                       heardDays(*m_file, *from), heldDaysOf(m_file->holds, zoneOf(*m_file)));
    if (!adherence.ok()) continue;
    m_by_programme << shareMap(tr("Programme %1, %2 to %3")
                                   .arg(programme->number())
                                   .arg(print::dayWords(*from), print::dayWords(*to)),
                               adherence->all);
  }
}

void DoneModel::makePractices() {
  for (auto practice = m_file->practices.rbegin(); practice != m_file->practices.rend(); ++practice) {
    const auto day = parseLocalDay(practice->local_day());
    if (!day.ok() || *day < m_first || *day > m_last) continue;
    m_practices << practiceMap(*practice, *m_file, m_context);
  }
}

QVariantList DoneModel::wear() const {
  QVariantList list;
  if (!m_file) return list;
  const absl::TimeZone zone = zoneOf(*m_file);
  // Held against the plan that counts now; without one, against the clinic's own minutes.
  v1::WearPlan plan;
  plan.set_redness_min(m_context.settings.at("redness-minutes"));
  for (const v1::Programme& programme : m_file->programmes)
    if (programme.has_wear_plan()) plan = programme.wear_plan();
  for (auto block = m_file->wear_blocks.rbegin(); block != m_file->wear_blocks.rend(); ++block) {
    const auto day = parseLocalDay(block->local_day());
    if (!day.ok() || *day < m_first || *day > m_last) continue;
    const SkinVerdict verdict = skinVerdict(*block, plan);
    list << QVariantMap{{"day", print::text(block->local_day())},
                        {"words", print::wearWords(*block, verdict, zone)},
                        {"bad", verdict == SkinVerdict::Harm || verdict == SkinVerdict::TooRed}};
  }
  return list;
}

}  // namespace newel::desk
