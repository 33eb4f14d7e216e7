#include "core/progress/load.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

#include "core/schedule/occasions.h"
#include "core/time/local_day.h"

namespace newel {
namespace {

constexpr double kMsPerMinute = 60000;

bool allEqual(const std::vector<double>& values) {
  return std::all_of(values.begin(), values.end(), [&](double value) { return value == values.front(); });
}

std::vector<WeekLoad> emptyWeeks(absl::CivilDay first, absl::CivilDay last) {
  std::vector<WeekLoad> weeks;
  if (last < first) return weeks;
  for (absl::CivilDay monday = mondayOf(first); monday <= last; monday += 7) {
    WeekLoad week;
    week.monday = monday;
    week.whole = monday >= first && monday + 6 <= last;
    weeks.push_back(week);
  }
  return weeks;
}

}  // namespace

double sessionLoad(double effort_0_10, double minutes) { return effort_0_10 * minutes; }

LoadSpread loadSpread(const std::vector<double>& loads) {
  LoadSpread spread;
  if (loads.empty()) return spread;
  const auto count = static_cast<double>(loads.size());
  spread.sum = std::accumulate(loads.begin(), loads.end(), 0.0);
  spread.mean = spread.sum / count;
  // Asked of the values and not of the SD, which rounding can leave a hair over 0.
  if (allEqual(loads)) return spread;
  double squares = 0;
  for (const double load : loads) squares += (load - spread.mean) * (load - spread.mean);
  spread.deviation = std::sqrt(squares / count);
  spread.monotony = spread.mean / spread.deviation;
  spread.strain = spread.sum * *spread.monotony;
  return spread;
}

PracticeLoad practiceLoad(const v1::Practice& practice) {
  PracticeLoad load;
  for (const auto& entry : practice.entries()) {
    const auto work = static_cast<double>(entry.done().active_ms());
    if (work <= 0) continue;
    if (!entry.has_effort_0_10()) {
      ++load.unrated_entries;
      continue;
    }
    // Told afterwards, an entry may have no length of its own; its work then is the least it took.
    const double elapsed = std::max(static_cast<double>(entry.elapsed_ms()), work);
    const double counted = std::min(elapsed, kLongestShare * work);
    ++load.rated_entries;
    if (counted < elapsed) ++load.trimmed_entries;
    load.minutes += counted / kMsPerMinute;
    load.load += sessionLoad(entry.effort_0_10(), counted / kMsPerMinute);
  }
  return load;
}

std::vector<WeekLoad> weeklyLoads(const std::vector<DayLoad>& loads, absl::CivilDay first,
                                  absl::CivilDay last) {
  std::vector<WeekLoad> weeks = emptyWeeks(first, last);
  for (const DayLoad& load : loads) {
    if (load.day < first || load.day > last) continue;
    WeekLoad& week = weeks[static_cast<std::size_t>((mondayOf(load.day) - weeks.front().monday) / 7)];
    week.days[static_cast<std::size_t>(load.day - week.monday)] += load.load;
  }
  for (WeekLoad& week : weeks) {
    std::vector<double> days;
    for (int i = 0; i < 7; ++i) {
      if (week.monday + i >= first && week.monday + i <= last) days.push_back(week.days[i]);
    }
    week.spread = loadSpread(days);
    if (week.whole) continue;
    week.spread.monotony.reset();
    week.spread.strain.reset();
  }
  return weeks;
}

std::vector<WeekLoad> weeklyLoads(const std::vector<v1::Practice>& practices, absl::CivilDay first,
                                  absl::CivilDay last) {
  std::vector<DayLoad> loads;
  std::map<absl::CivilDay, int> unrated;
  for (const auto& practice : practices) {
    const auto day = parseLocalDay(practice.local_day());
    if (!day.ok()) continue;
    const PracticeLoad load = practiceLoad(practice);
    loads.push_back({*day, load.load});
    if (*day >= first && *day <= last) unrated[mondayOf(*day)] += load.unrated_entries;
  }
  std::vector<WeekLoad> weeks = weeklyLoads(loads, first, last);
  for (WeekLoad& week : weeks) week.unrated_entries = unrated[week.monday];
  return weeks;
}

}  // namespace newel
