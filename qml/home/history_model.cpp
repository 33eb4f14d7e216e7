#include "qml/home/history_model.h"

#include <QtCore/QLocale>
#include <algorithm>

#include "core/progress/held_days.h"
#include "core/schedule/occasions.h"
#include "core/time/local_day.h"
#include "qml/home/facts_for_pages.h"
#include "qml/home/phrasing.h"
#include "qml/home/place_words.h"

namespace newel::home {
namespace {

constexpr absl::civil_diff_t kDays = absl::civil_diff_t{7} * HistoryModel::kWeeks;
// A record is made when a practice begins, in whatever zone; told later it is made later.
constexpr absl::Duration kMargin = absl::Hours(48);
// Two ratings further apart than this are not joined: nobody knows what lay between.
constexpr absl::civil_diff_t kJoinedDays = 8;

absl::CivilDay weekBegin(absl::CivilDay day) {
  // Qt counts days from Monday, 1, as ISO 8601 does.
  const int begins = QLocale().firstDayOfWeek();
  const auto since = static_cast<int>(day - mondayOf(day)) + 1 - begins;
  return day - (since + 7) % 7;
}

std::optional<int> valueOf(const CourseRating& rating, bool effort) {
  return effort ? rating.effort_0_10 : rating.pain_0_10;
}

}  // namespace

HistoryModel::HistoryModel(SettingsModel& settings, const HomeParts& parts, QObject* parent)
    : QObject(parent), m_settings(settings), m_parts(parts) {}

absl::CivilDay HistoryModel::first() const {
  return weekBegin(todayOf(m_parts)) - absl::civil_diff_t{7} * (kWeeks - 1) - kDays * m_back;
}

absl::CivilDay HistoryModel::last() const { return first() + kDays - 1; }

void HistoryModel::shown() {
  m_back = 0;
  noteKnownFrom();
  read();
}

void HistoryModel::earlier() {
  if (!hasEarlier()) return;
  ++m_back;
  read();
}

void HistoryModel::later() {
  if (!hasLater()) return;
  --m_back;
  read();
}

// Before it knew anything there is nothing to leaf to.
bool HistoryModel::hasEarlier() const { return first() > m_known_from; }

// Noted once: from then on no old practice has to be looked at for it.
void HistoryModel::noteKnownFrom() {
  const auto noted = parseLocalDay(m_settings.knownFrom().toStdString());
  if (noted.ok()) {
    m_known_from = *noted;
    return;
  }
  m_known_from = todayOf(m_parts);
  if (!m_parts.engine->state().paired) return;
  m_known_from = heardFrom(m_known_from, m_parts.engine->practices());
  m_settings.setKnownFrom(text(formatLocalDay(m_known_from)));
}

void HistoryModel::read() {
  m_error.clear();
  m_weeks.clear();
  m_ratings.clear();
  const absl::CivilDay today = todayOf(m_parts);
  const std::vector<v1::Programme> programmes = m_parts.engine->programmes();
  // Times a week are counted by weeks from Monday on, wherever the place's week begins.
  const absl::CivilDay from = mondayOf(first());
  const absl::CivilDay to = mondayOf(last()) + 6;
  const std::vector<v1::Practice> practices =
      m_parts.engine->practicesSince(absl::FromCivil(from, zoneOf(m_parts)) - kMargin);
  const auto adherence = adherenceOf(programmes, practices, from, to, today, today,
                                     heldDaysOf(m_parts.engine->holdOrders(), zoneOf(m_parts)));
  if (adherence.ok()) {
    m_weeks = courseWeeks(*adherence, first(), kWeeks, m_known_from);
    // Whole weeks before that would be signs for nothing.
    while (m_weeks.size() > 1 && m_weeks.front().first + 6 < m_known_from) m_weeks.erase(m_weeks.begin());
  } else {
    m_error = errorWords(adherence.status());
  }
  m_ratings = courseRatings(practices, first(), last());
  m_worn = wornCourse(m_parts.engine->wearBlocks(), first(), static_cast<int>(kDays));
  const std::vector<v1::Measure> measures = m_parts.engine->measures();
  m_measures = measureRows(
      measures, programmes.empty() ? std::vector<MeasureDue>() : measuresWanted(programmes.back(), measures),
      MeasureTable::builtIn(), languageOf(m_parts), today);
  emit changed();
}

bool HistoryModel::empty() const {
  return m_ratings.empty() && m_worn.points.isEmpty() &&
         std::all_of(m_weeks.begin(), m_weeks.end(), [](const auto& week) { return week.count.due() == 0; });
}

QString HistoryModel::span() const {
  return yearSpanWords(m_weeks.empty() ? first() : m_weeks.front().first, last());
}

QString HistoryModel::summary() const {
  CourseCount all;
  for (const CourseWeek& week : m_weeks) {
    all.done += week.count.done;
    all.part += week.count.part;
    all.not_done += week.count.not_done;
  }
  if (all.due() == 0) return tr("Of what was due until now this phone knows nothing yet.");
  // A part counts as done, here as at the clinic (core/progress/adherence.h).
  if (all.part > 0)
    return tr("Done: %L1 of %L2 that were due, %L3 of them in part.")
        .arg(all.done + all.part)
        .arg(all.due())
        .arg(all.part);
  return tr("Done: %L1 of %L2 that were due.").arg(all.done).arg(all.due());
}

QStringList HistoryModel::dayNames() const {
  QStringList names;
  const int begins = QLocale().firstDayOfWeek();
  for (int i = 0; i < 7; ++i) {
    names << QLocale().standaloneDayName((begins - 1 + i) % 7 + 1, QLocale::NarrowFormat);
  }
  return names;
}

QVariantList HistoryModel::weeks() const {
  QVariantList rows;
  for (auto week = m_weeks.rbegin(); week != m_weeks.rend(); ++week) {
    const CourseCount& count = week->count;
    QStringList words;
    if (count.done > 0) words << tr("done: %L1").arg(count.done);
    if (count.part > 0) words << tr("in part: %L1").arg(count.part);
    if (count.not_done > 0) words << tr("not done: %L1").arg(count.not_done);
    if (count.excused > 0) words << tr("excused: %L1").arg(count.excused);
    if (count.coming > 0) words << tr("to come: %L1").arg(count.coming);
    if (count.no_data > 0) words << tr("not known: %L1").arg(count.no_data);
    if (words.isEmpty()) words << tr("nothing due");
    QVariantList states;
    for (const CourseDay& day : week->days) {
      const auto state = day.state();
      states << QVariant(state.has_value() ? QVariantList{static_cast<int>(*state)} : QVariantList());
    }
    rows << QVariantMap{{"title", spanWords(week->first, week->first + 6)},
                        {"words", words.join(tr(", "))},
                        {"states", states}};
  }
  return rows;
}

QVariantList HistoryModel::points(bool effort) const {
  QVariantList dots;
  std::optional<absl::CivilDay> before;
  for (const CourseRating& rating : m_ratings) {
    const std::optional<int> value = valueOf(rating, effort);
    if (!value.has_value()) continue;
    const bool joined = before.has_value() && rating.day - *before <= kJoinedDays;
    dots << QVariantMap{{"at", static_cast<double>(rating.day - first()) / static_cast<double>(kDays - 1)},
                        {"value", *value},
                        {"joined", joined}};
    before = rating.day;
  }
  return dots;
}

QString HistoryModel::ratingWords(bool effort) const {
  std::optional<int> lowest, highest, latest;
  absl::CivilDay day;
  int days = 0;
  for (const CourseRating& rating : m_ratings) {
    const std::optional<int> value = valueOf(rating, effort);
    if (!value.has_value()) continue;
    lowest = std::min(lowest.value_or(*value), *value);
    highest = std::max(highest.value_or(*value), *value);
    latest = value;
    day = rating.day;
    ++days;
  }
  if (!latest.has_value()) return tr("No number was given in these weeks.");
  QString last = tr("Last: %L1, on %2.").arg(*latest).arg(shortDayWords(day));
  if (days == 1) return last;
  if (lowest == highest) return tr("Always %L1.").arg(*lowest) + QStringLiteral(" ") + last;
  return tr("Between %L1 and %L2.").arg(*lowest).arg(*highest) + QStringLiteral(" ") + last;
}

}  // namespace newel::home
