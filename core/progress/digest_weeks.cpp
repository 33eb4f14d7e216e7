#include "core/progress/digest_weeks.h"

#include <algorithm>
#include <map>
#include <utility>

#include "core/schedule/occasions.h"
#include "core/time/local_day.h"

namespace newel {
namespace {

using Told = OccasionFact::Told;

constexpr int kWeekdays = 7;

// Without and with extra: the latter by entry.
struct WeekInWork {
  v1::WeekTally plain;
  std::map<std::string, v1::WeekTally> own;
};

int weekdayNumber(absl::CivilDay day) { return static_cast<int>(day - mondayOf(day)); }

void addHeld(const OccasionFact& fact, v1::WeekTally& tally) {
  const auto over = static_cast<std::uint32_t>(weekdayNumber(fact.over));
  v1::HeldOccasions* held = nullptr;
  for (auto& there : *tally.mutable_held()) {
    if (there.over() == over) held = &there;
  }
  if (held == nullptr) held = tally.add_held();
  held->set_over(over);
  held->set_count(held->count() + 1);
  if (fact.told == Told::Nothing) return;
  held->set_due(held->due() + 1);
  if (fact.told == Told::Part) held->set_done(held->done() + 1);
  held->set_dose(held->dose() + fact.result.dose);
}

void addOpen(const OccasionFact& fact, v1::WeekTally& tally) {
  const int weekday = weekdayNumber(fact.over);
  while (tally.open_size() <= weekday) tally.add_open(0);
  tally.set_open(weekday, tally.open(weekday) + 1);
}

void addOccasion(const OccasionFact& fact, v1::WeekTally& tally) {
  if (fact.told == Told::Excused) return;
  if (fact.held && fact.told != Told::Done) return addHeld(fact, tally);
  if (fact.told == Told::Nothing) return addOpen(fact, tally);
  tally.set_due(tally.due() + 1);
  tally.set_dose(tally.dose() + fact.result.dose);
  if (fact.told != Told::Skipped) tally.set_done(tally.done() + 1);
}

bool isEmpty(const v1::WeekTally& tally) { return tally.ByteSizeLong() == 0; }

bool alike(const v1::TalliedWeeks& weeks, const std::vector<v1::WeekTally>& tallies) {
  if (static_cast<std::size_t>(weeks.tallies_size()) != tallies.size()) return false;
  return std::equal(tallies.begin(), tallies.end(), weeks.tallies().begin(),
                    [](const v1::WeekTally& a, const v1::WeekTally& b) {
                      return a.SerializeAsString() == b.SerializeAsString();
                    });
}

void addWeek(absl::CivilDay monday, const WeekInWork& week, v1::AttentionDigest& digest) {
  std::vector<v1::WeekTally> tallies;
  if (!isEmpty(week.plain)) tallies.push_back(week.plain);
  for (const auto& [entry_id, tally] : week.own) tallies.push_back(tally);
  if (tallies.empty()) return;
  if (digest.weeks_size() > 0) {
    v1::TalliedWeeks& last = *digest.mutable_weeks(digest.weeks_size() - 1);
    const absl::CivilDay next =
        dayOfNumber(last.monday()) + kWeekdays * static_cast<absl::civil_diff_t>(last.weeks());
    if (next == monday && alike(last, tallies)) {
      last.set_weeks(last.weeks() + 1);
      return;
    }
  }
  v1::TalliedWeeks& weeks = *digest.add_weeks();
  weeks.set_monday(dayNumber(monday));
  weeks.set_weeks(1);
  for (auto& tally : tallies) *weeks.add_tallies() = std::move(tally);
}

struct Look {
  absl::CivilDay monday;
  absl::CivilDay today;
  absl::CivilDay heard_until;
  absl::CivilDay since;
};

void addFigures(const v1::WeekTally& tally, const Look& look, WeekFigures& figures) {
  Share share;
  share.due = static_cast<int>(tally.due());
  share.done = static_cast<int>(tally.done() + tally.extra());
  share.dose = tally.dose();
  for (int weekday = 0; weekday < tally.open_size(); ++weekday) {
    const int open = static_cast<int>(tally.open(weekday));
    const absl::CivilDay over = look.monday + weekday;
    if (over >= look.today || open == 0) continue;
    if (over > look.heard_until) {
      figures.no_data += open;
      continue;
    }
    share.due += open;
    if (over > look.since) figures.missed += open;
  }
  for (const auto& held : tally.held()) {
    if (look.monday + static_cast<absl::civil_diff_t>(held.over()) <= look.today) continue;
    share.due += static_cast<int>(held.due());
    share.done += static_cast<int>(held.done());
    share.dose += held.dose();
  }
  figures.share.due += share.due;
  figures.share.done += share.done;
  figures.share.counted += std::min(share.done, share.due);
  figures.share.dose += share.dose;
}

}  // namespace

std::int32_t dayNumber(absl::CivilDay day) {
  return static_cast<std::int32_t>(day - absl::CivilDay(1970, 1, 1));
}

// From a day near those that are asked about: the way from 1970 takes several times as long, and a caseload
// asks a hundred thousand times.
absl::CivilDay dayOfNumber(std::int32_t number) {
  constexpr std::int32_t kNear = 20454;  // days from 1970-01-01 to 2026-01-01
  return absl::CivilDay(2026, 1, 1) + (absl::civil_diff_t{number} - kNear);
}

void tallyWeeks(const OccasionFacts& facts, absl::CivilDay first, absl::CivilDay last,
                v1::AttentionDigest& digest) {
  digest.set_first_day(dayNumber(first));
  digest.set_last_day(dayNumber(last));
  std::map<absl::CivilDay, WeekInWork> weeks;
  const auto isIn = [&](absl::CivilDay monday) { return monday >= first && monday <= last; };
  for (const auto& [place, times] : facts.extra) {
    const absl::CivilDay monday = *parseLocalDay(place.second);
    if (isIn(monday)) weeks[monday].own[place.first].set_extra(static_cast<std::uint32_t>(times));
  }
  for (const auto& fact : facts.occasions) {
    const absl::CivilDay monday = mondayOf(fact.over);
    if (!isIn(monday)) continue;
    WeekInWork& week = weeks[monday];
    const auto own = week.own.find(fact.result.ref.entry_id());
    addOccasion(fact, own == week.own.end() ? week.plain : own->second);
  }
  for (const auto& [monday, week] : weeks) addWeek(monday, week, digest);
}

WeekFigures figuresOf(const v1::AttentionDigest& digest, absl::CivilDay first, int weeks,
                      absl::CivilDay today, absl::CivilDay heard_until, absl::CivilDay since) {
  WeekFigures figures;
  const absl::CivilDay end = first + kWeekdays * static_cast<absl::civil_diff_t>(weeks);
  for (const auto& alike : digest.weeks()) {
    absl::CivilDay monday = dayOfNumber(alike.monday());
    for (std::uint32_t i = 0; i < alike.weeks(); ++i, monday += kWeekdays) {
      if (monday >= end) break;
      if (monday < first) continue;
      for (const auto& tally : alike.tallies()) {
        addFigures(tally, {monday, today, heard_until, since}, figures);
      }
    }
  }
  return figures;
}

}  // namespace newel
