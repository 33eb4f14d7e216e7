#include "core/schedule/occasions.h"

#include <algorithm>
#include <iterator>
#include <tuple>

#include "core/records/check.h"
#include "core/time/local_day.h"

namespace newel {
namespace {

// The rhythm of one entry, read once.
struct Rhythm {
  std::vector<v1::Weekday> days;
  bool any_day = false;
};

Rhythm rhythmOf(const v1::Schedule& schedule) {
  Rhythm rhythm;
  if (schedule.rhythm_case() == v1::Schedule::kTimesPerWeek) {
    rhythm.any_day = true;
    rhythm.days = spreadOverWeek(static_cast<int>(schedule.times_per_week()));
  } else {
    for (const int day : schedule.weekdays().days()) rhythm.days.push_back(static_cast<v1::Weekday>(day));
  }
  return rhythm;
}

bool paused(const v1::Schedule& schedule, const std::string& day) {
  // Days of the form YYYY-MM-DD sort as text.
  return std::any_of(schedule.pauses().begin(), schedule.pauses().end(), [&day](const v1::Pause& pause) {
    return pause.first_day() <= day && day <= pause.last_day();
  });
}

Occasion occasionOf(const v1::Entry& entry, int window, const std::string& day, bool any_day) {
  Occasion occasion;
  occasion.ref.set_entry_id(entry.id());
  occasion.ref.set_local_day(day);
  occasion.ref.set_window(static_cast<std::uint32_t>(window));
  occasion.window = entry.schedule().windows(window);
  occasion.any_day_of_week = any_day;
  occasion.state = paused(entry.schedule(), day) ? OccasionState::Excused : OccasionState::Due;
  return occasion;
}

bool earlier(const Occasion& left, const Occasion& right) {
  return std::make_tuple(left.window.from_min(), left.window.to_min()) <
         std::make_tuple(right.window.from_min(), right.window.to_min());
}

struct Span {
  absl::CivilDay first;
  absl::CivilDay last;
};

// The part of [first, last] on which the programme counts; its days were checked before.
Span within(const v1::Programme& programme, absl::CivilDay first, absl::CivilDay last) {
  return {std::max(first, *parseLocalDay(programme.effective_day())),
          std::min(last, *parseLocalDay(programme.end_day()))};
}

// The occasions of `entry` in the week of `day`, that day's programme permitting.
std::vector<Occasion> weekOf(const v1::Programme& programme, const v1::Entry& entry, absl::CivilDay day) {
  const Span span = within(programme, mondayOf(day), mondayOf(day) + 6);
  const Rhythm rhythm = rhythmOf(entry.schedule());
  std::vector<Occasion> week;
  for (absl::CivilDay at = span.first; at <= span.last; ++at) {
    if (std::find(rhythm.days.begin(), rhythm.days.end(), weekdayOf(at)) == rhythm.days.end()) continue;
    for (int window = 0; window < entry.schedule().windows_size(); ++window) {
      week.push_back(occasionOf(entry, window, formatLocalDay(at), rhythm.any_day));
    }
  }
  return week;
}

// Of a times-per-week entry: one occasion today for each window whose week still has some left.
std::vector<Occasion> leftOfWeek(const v1::Programme& programme, const v1::Entry& entry, absl::CivilDay day,
                                 const std::vector<v1::OccasionRef>& done) {
  const std::string today = formatLocalDay(day);
  const std::string monday = formatLocalDay(mondayOf(day));
  const std::string sunday = formatLocalDay(mondayOf(day) + 6);
  const std::vector<Occasion> week = weekOf(programme, entry, day);
  std::vector<Occasion> left;
  for (int window = 0; window < entry.schedule().windows_size(); ++window) {
    const auto asked = std::count_if(week.begin(), week.end(), [window](const Occasion& occasion) {
      return occasion.state == OccasionState::Due && static_cast<int>(occasion.ref.window()) == window;
    });
    std::ptrdiff_t done_this_week = 0;
    bool done_today = false;
    for (const auto& ref : done) {
      if (ref.entry_id() != entry.id() || static_cast<int>(ref.window()) != window) continue;
      if (ref.local_day() < monday || ref.local_day() > sunday) continue;
      ++done_this_week;
      done_today = done_today || ref.local_day() == today;
    }
    if (!done_today && done_this_week < asked) left.push_back(occasionOf(entry, window, today, true));
  }
  return left;
}

bool isDone(const Occasion& occasion, const std::vector<v1::OccasionRef>& done) {
  return std::any_of(done.begin(), done.end(), [&occasion](const v1::OccasionRef& ref) {
    return ref.entry_id() == occasion.ref.entry_id() && ref.local_day() == occasion.ref.local_day() &&
           ref.window() == occasion.ref.window();
  });
}

}  // namespace

std::vector<v1::Weekday> spreadOverWeek(int times) {
  using v1::WEEKDAY_FRIDAY;
  using v1::WEEKDAY_MONDAY;
  using v1::WEEKDAY_SATURDAY;
  using v1::WEEKDAY_SUNDAY;
  using v1::WEEKDAY_THURSDAY;
  using v1::WEEKDAY_TUESDAY;
  using v1::WEEKDAY_WEDNESDAY;
  if (times <= 0) return {};
  switch (times) {
    case 1:
      return {WEEKDAY_MONDAY};
    case 2:
      return {WEEKDAY_MONDAY, WEEKDAY_THURSDAY};
    case 3:
      return {WEEKDAY_MONDAY, WEEKDAY_WEDNESDAY, WEEKDAY_FRIDAY};
    case 4:
      return {WEEKDAY_MONDAY, WEEKDAY_TUESDAY, WEEKDAY_THURSDAY, WEEKDAY_FRIDAY};
    case 5:
      return {WEEKDAY_MONDAY, WEEKDAY_TUESDAY, WEEKDAY_WEDNESDAY, WEEKDAY_THURSDAY, WEEKDAY_FRIDAY};
    case 6:
      return {WEEKDAY_MONDAY,   WEEKDAY_TUESDAY, WEEKDAY_WEDNESDAY,
              WEEKDAY_THURSDAY, WEEKDAY_FRIDAY,  WEEKDAY_SATURDAY};
    default:
      return {WEEKDAY_MONDAY, WEEKDAY_TUESDAY,  WEEKDAY_WEDNESDAY, WEEKDAY_THURSDAY,
              WEEKDAY_FRIDAY, WEEKDAY_SATURDAY, WEEKDAY_SUNDAY};
  }
}

v1::Weekday weekdayOf(absl::CivilDay day) {
  switch (absl::GetWeekday(day)) {
    case absl::Weekday::monday:
      return v1::WEEKDAY_MONDAY;
    case absl::Weekday::tuesday:
      return v1::WEEKDAY_TUESDAY;
    case absl::Weekday::wednesday:
      return v1::WEEKDAY_WEDNESDAY;
    case absl::Weekday::thursday:
      return v1::WEEKDAY_THURSDAY;
    case absl::Weekday::friday:
      return v1::WEEKDAY_FRIDAY;
    case absl::Weekday::saturday:
      return v1::WEEKDAY_SATURDAY;
    case absl::Weekday::sunday:
      break;
  }
  return v1::WEEKDAY_SUNDAY;
}

absl::CivilDay mondayOf(absl::CivilDay day) { return day - (weekdayOf(day) - v1::WEEKDAY_MONDAY); }

absl::StatusOr<std::vector<Occasion>> occasionsOf(const v1::Programme& programme, absl::CivilDay first,
                                                  absl::CivilDay last) {
  const absl::Status status = check(programme);
  if (!status.ok()) return status;
  std::vector<Rhythm> rhythms;
  for (const auto& entry : programme.entries()) rhythms.push_back(rhythmOf(entry.schedule()));
  const Span span = within(programme, first, last);
  std::vector<Occasion> all;
  for (absl::CivilDay day = span.first; day <= span.last; ++day) {
    const std::string name = formatLocalDay(day);
    const auto begin = static_cast<std::ptrdiff_t>(all.size());
    for (int i = 0; i < programme.entries_size(); ++i) {
      const Rhythm& rhythm = rhythms[static_cast<std::size_t>(i)];
      if (std::find(rhythm.days.begin(), rhythm.days.end(), weekdayOf(day)) == rhythm.days.end()) continue;
      const v1::Entry& entry = programme.entries(i);
      for (int window = 0; window < entry.schedule().windows_size(); ++window) {
        all.push_back(occasionOf(entry, window, name, rhythm.any_day));
      }
    }
    std::stable_sort(all.begin() + begin, all.end(), earlier);
  }
  return all;
}

std::vector<Occasion> dueOn(const v1::Programme& programme, absl::CivilDay day,
                            const std::vector<v1::OccasionRef>& done) {
  std::vector<Occasion> due;
  if (!check(programme).ok()) return due;
  const Span span = within(programme, day, day);
  if (span.first > span.last) return due;
  for (const auto& entry : programme.entries()) {
    std::vector<Occasion> mine = entry.schedule().rhythm_case() == v1::Schedule::kTimesPerWeek
                                     ? leftOfWeek(programme, entry, day, done)
                                     : weekOf(programme, entry, day);
    for (auto& occasion : mine) {
      const bool today = occasion.ref.local_day() == formatLocalDay(day);
      if (today && occasion.state == OccasionState::Due && !isDone(occasion, done)) {
        due.push_back(std::move(occasion));
      }
    }
  }
  std::stable_sort(due.begin(), due.end(), earlier);
  return due;
}

std::vector<std::string> cardsDueOn(const v1::Programme& programme, absl::CivilDay day) {
  std::vector<std::string> ids;
  const auto first = parseLocalDay(programme.effective_day());
  const auto last = parseLocalDay(programme.end_day());
  if (!first.ok() || !last.ok() || day < *first || day > *last) return ids;
  for (const v1::AdviceEntry& card : programme.cards()) {
    const auto& days = card.days().days();
    if (std::find(days.begin(), days.end(), weekdayOf(day)) != days.end()) ids.push_back(card.card_id());
  }
  return ids;
}

absl::Time reminderInstant(const Occasion& occasion, absl::TimeZone zone) {
  const auto day = parseLocalDay(occasion.ref.local_day());
  if (!day.ok()) return absl::InfiniteFuture();
  return instantOf(absl::CivilMinute(*day) + occasion.window.from_min(), zone);
}

}  // namespace newel
