#include "core/review/week.h"

#include <algorithm>
#include <iterator>
#include <numeric>

#include "core/practice/compile.h"
#include "core/records/check.h"
#include "core/schedule/occasions.h"
#include "core/time/local_day.h"

namespace newel {
namespace {

constexpr double kMsPerMinute = 60000;
constexpr int kDaysOfWeek = 7;

// Over the week and into the next one.
int shortestGap(const std::set<std::size_t>& days) {
  int shortest = kDaysOfWeek;
  for (auto day = days.begin(); day != days.end(); ++day) {
    const auto next = std::next(day);
    const int to = static_cast<int>(next == days.end() ? *days.begin() + kDaysOfWeek : *next);
    shortest = std::min(shortest, to - static_cast<int>(*day));
  }
  return shortest;
}

Fact number(double value) { return {{}, value}; }

}  // namespace

std::vector<std::size_t> weekdaysOf(const v1::Schedule& schedule) {
  std::vector<std::size_t> days;
  if (schedule.rhythm_case() == v1::Schedule::kTimesPerWeek) {
    for (const auto day : spreadOverWeek(static_cast<int>(schedule.times_per_week()))) {
      days.push_back(static_cast<std::size_t>(day - v1::WEEKDAY_MONDAY));
    }
  } else {
    for (const int day : schedule.weekdays().days()) {
      days.push_back(static_cast<std::size_t>(day - v1::WEEKDAY_MONDAY));
    }
  }
  return days;
}

void Week::add(const v1::Entry& entry, std::int64_t total_ms, const Catalogue& catalogue) {
  const std::vector<std::size_t> days = weekdaysOf(entry.schedule());
  const double minutes_a_day = static_cast<double>(total_ms) * entry.schedule().windows_size() / kMsPerMinute;
  for (const std::size_t day : days) {
    minutes[day] += minutes_a_day;
    ++exercises[day];
  }
  const v1::Exercise* exercise = catalogue.find(entry.exercise_id(), entry.exercise_revision());
  if (exercise == nullptr || exercise->purpose() != v1::PURPOSE_STRENGTH) return;
  for (const std::string& muscle : exercise->muscles())
    strength_days[muscle].insert(days.begin(), days.end());
}

double Week::total() const { return std::accumulate(minutes.begin(), minutes.end(), 0.0); }

std::optional<int> Week::muscleGap() const {
  std::optional<int> gap;
  for (const auto& [muscle, days] : strength_days) {
    gap = std::min(gap.value_or(kDaysOfWeek), shortestGap(days));
  }
  return gap;
}

Week weekOf(const v1::Programme& programme, const std::vector<std::int64_t>& total_ms,
            const Catalogue& catalogue) {
  Week week;
  for (int i = 0; i < programme.entries_size(); ++i)
    week.add(programme.entries(i), total_ms[static_cast<std::size_t>(i)], catalogue);
  return week;
}

std::optional<Week> weekOf(const v1::Programme& programme, const v1::Person& person,
                           const Catalogue& catalogue) {
  Week week;
  for (const auto& entry : programme.entries()) {
    const auto timeline = compileTimeline(entry, person, catalogue, "en");
    if (!timeline.ok() || !check(entry.schedule()).ok()) return std::nullopt;
    week.add(entry, timeline->total_ms(), catalogue);
  }
  return week;
}

RuleFacts programmeFacts(const v1::Programme& programme, const Week& week, const std::optional<Week>& last) {
  RuleFacts facts;
  facts["programme.entries"] = number(programme.entries_size());
  facts["programme.exercises_per_day"] =
      number(*std::max_element(week.exercises.begin(), week.exercises.end()));
  facts["programme.minutes_per_day"] = number(*std::max_element(week.minutes.begin(), week.minutes.end()));
  facts["programme.days"] = number(static_cast<double>(*parseLocalDay(programme.end_day()) -
                                                       *parseLocalDay(programme.effective_day()) + 1));
  if (const auto gap = week.muscleGap()) facts["programme.muscle_gap_days"] = number(*gap);
  if (programme.has_thresholds()) {
    facts["programme.pain_stop"] = number(programme.thresholds().pain_stop_0_10());
    facts["programme.pain_rise"] = number(programme.thresholds().pain_rise_0_10());
  }
  if (last && last->total() > 0) {
    facts["programme.minutes_rise_percent"] = number((week.total() - last->total()) / last->total() * 100);
  }
  return facts;
}

}  // namespace newel
