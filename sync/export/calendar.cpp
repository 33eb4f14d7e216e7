#include "sync/export/calendar.h"

#include <absl/strings/str_cat.h>
#include <absl/strings/str_join.h>

#include <algorithm>
#include <map>
#include <set>
#include <utility>

#include "core/library/catalogue.h"
#include "core/schedule/occasions.h"
#include "core/time/local_day.h"
#include "sync/export/calendar_text.h"
#include "sync/export/record_words.h"

namespace newel {
namespace {

constexpr char kProduct[] = "-//Newel//Home programme//EN";
constexpr std::uint32_t kDayMinutes = 1440;
using WindowKey = std::pair<std::uint32_t, std::uint32_t>;  // from, to

// What happens in one window of the day, over the whole programme.
struct WindowPlan {
  std::vector<absl::CivilDay> days;
  std::vector<std::string> titles;  // of its exercises, in the programme's order, each once
  bool any_day = true;              // everything in it may be done on another day of the week
};

std::string utcText(absl::Time at) { return absl::FormatTime("%Y%m%dT%H%M%SZ", at, absl::UTCTimeZone()); }

std::string localText(absl::CivilDay day, std::uint32_t minute) {
  const absl::CivilSecond at(absl::CivilMinute(day) + static_cast<int>(minute));
  return absl::FormatTime("%Y%m%dT%H%M%S", absl::FromCivil(at, absl::UTCTimeZone()), absl::UTCTimeZone());
}

// Skipped or shown twice on that day. Readers differ about such times, so one that stands alone is written in
// UTC.
bool isUnclear(absl::CivilDay day, std::uint32_t minute, absl::TimeZone zone) {
  return zone.At(absl::CivilSecond(absl::CivilMinute(day) + static_cast<int>(minute))).kind !=
         absl::TimeZone::TimeInfo::UNIQUE;
}

std::string phrase(const std::string& key, const std::string& language) {
  const Catalogue& catalogue = Catalogue::builtIn();
  std::string words = catalogue.phrase(key, language);
  if (words.empty()) words = catalogue.phrase(key, language.substr(0, language.find('-')));
  return words.empty() ? catalogue.phrase(key, "en") : words;
}

absl::StatusOr<std::map<WindowKey, WindowPlan>> windowsOf(const v1::Programme& programme,
                                                          const std::string& language) {
  const auto occasions =
      occasionsOf(programme, *parseLocalDay(programme.effective_day()), *parseLocalDay(programme.end_day()));
  if (!occasions.ok()) return occasions.status();
  std::map<WindowKey, WindowPlan> windows;
  std::set<std::pair<WindowKey, std::string>> titled;
  for (const auto& occasion : *occasions) {
    if (occasion.state != OccasionState::Due) continue;
    const WindowKey key{occasion.window.from_min(), occasion.window.to_min()};
    WindowPlan& plan = windows[key];
    const absl::CivilDay day = *parseLocalDay(occasion.ref.local_day());
    if (plan.days.empty() || plan.days.back() != day) plan.days.push_back(day);
    plan.any_day = plan.any_day && occasion.any_day_of_week;
    if (!titled.insert({key, occasion.ref.entry_id()}).second) continue;
    for (const auto& entry : programme.entries()) {
      if (entry.id() != occasion.ref.entry_id()) continue;
      plan.titles.push_back(
          exerciseTitle(entry.exercise_id(), entry.exercise_revision(), &programme, language));
    }
  }
  return windows;
}

// Stays the same from programme to programme, and says nothing about anybody.
std::string uidOf(const std::string& person_id, const WindowKey& window) {
  return derivedId(person_id, absl::StrCat("calendar/", window.first, "-", window.second));
}

struct EventInput {
  const v1::Programme& programme;
  std::string language;
  bool with_exercises = false;
  absl::TimeZone zone;
  std::string stamp;  // DTSTAMP
};

std::string eventHead(const EventInput& input, const WindowKey& window, std::uint32_t sequence) {
  return absl::StrCat("BEGIN:VEVENT\r\n", calendarLine("UID", uidOf(input.programme.person_id(), window)),
                      calendarLine("DTSTAMP", input.stamp), calendarLine("SEQUENCE", absl::StrCat(sequence)));
}

std::string summaryLine(const EventInput& input) {
  return calendarLine("SUMMARY", calendarText(phrase("calendar.practice", input.language)));
}

std::string timesOf(const EventInput& input, const WindowKey& window, absl::CivilDay day, bool goes_on) {
  const absl::CivilDay end = window.second == kDayMinutes ? day + 1 : day;
  const std::uint32_t end_min = window.second % kDayMinutes;
  if (!goes_on && (isUnclear(day, window.first, input.zone) || isUnclear(end, end_min, input.zone))) {
    const auto instant = [&input](absl::CivilDay on, std::uint32_t minute) {
      return utcText(instantOf(absl::CivilMinute(on) + static_cast<int>(minute), input.zone));
    };
    return absl::StrCat(calendarLine("DTSTART", instant(day, window.first)),
                        calendarLine("DTEND", instant(end, end_min)));
  }
  const std::string at = absl::StrCat(";TZID=", input.programme.zone());
  return absl::StrCat(calendarLine("DTSTART" + at, localText(day, window.first)),
                      calendarLine("DTEND" + at, localText(end, end_min)));
}

std::string daysOf(const EventInput& input, const WindowKey& window, const WindowPlan& plan) {
  const DayRule rule = dayRuleOf(plan.days, input.zone);
  std::string text = timesOf(input, window, plan.days.front(), !rule.rule.empty());
  if (!rule.rule.empty()) absl::StrAppend(&text, calendarLine("RRULE", rule.rule));
  if (rule.except.empty()) return text;
  const std::string days = absl::StrJoin(rule.except, ",", [&window](std::string* out, absl::CivilDay day) {
    absl::StrAppend(out, localText(day, window.first));
  });
  return absl::StrCat(text, calendarLine(absl::StrCat("EXDATE;TZID=", input.programme.zone()), days));
}

std::string event(const EventInput& input, const WindowKey& window, const WindowPlan& plan) {
  std::string text =
      absl::StrCat(eventHead(input, window, input.programme.number()), daysOf(input, window, plan));
  absl::StrAppend(&text, summaryLine(input));
  std::vector<std::string> lines;
  if (input.with_exercises) lines = plan.titles;
  if (plan.any_day) lines.push_back(phrase("calendar.any-day", input.language));
  if (!lines.empty())
    absl::StrAppend(&text, calendarLine("DESCRIPTION", calendarText(absl::StrJoin(lines, "\n"))));
  // A window is when to practise, not a time that is taken.
  return absl::StrCat(text, "CLASS:PRIVATE\r\nTRANSP:TRANSPARENT\r\nSTATUS:CONFIRMED\r\nEND:VEVENT\r\n");
}

std::string cancelled(const EventInput& input, const WindowKey& window, absl::CivilDay day) {
  return absl::StrCat(eventHead(input, window, input.programme.number()), timesOf(input, window, day, false),
                      summaryLine(input), "STATUS:CANCELLED\r\nEND:VEVENT\r\n");
}

// Windows of earlier programmes, each with a day that it stood on.
absl::StatusOr<std::map<WindowKey, absl::CivilDay>> formerWindows(const PersonHistory& history,
                                                                  std::size_t index) {
  std::map<WindowKey, absl::CivilDay> former;
  const std::string& begins = history.programmes[index].programme.effective_day();
  for (std::size_t i = 0; i < index; ++i) {
    const v1::Programme& programme = history.programmes[i].programme;
    // What was over by itself before this one began is history, and right as it stands.
    if (programme.end_day() < begins) continue;
    const auto windows = windowsOf(programme, "en");
    if (!windows.ok()) return windows.status();
    for (const auto& [key, plan] : *windows) former[key] = plan.days.front();
  }
  return former;
}

std::string byDay(const std::set<v1::Weekday>& days) {
  static constexpr const char* kNames[] = {"", "MO", "TU", "WE", "TH", "FR", "SA", "SU"};
  return absl::StrJoin(days, ",", [](std::string* out, v1::Weekday day) { *out += kNames[day]; });
}

absl::StatusOr<std::size_t> indexOf(const PersonHistory& history, std::uint32_t number) {
  for (std::size_t i = history.programmes.size(); i-- > 0;) {
    if (number == 0 || history.programmes[i].programme.number() == number) return i;
  }
  return absl::NotFoundError(number == 0 ? "programmes: there is none"
                                         : absl::StrCat("programme: there is no number ", number));
}

}  // namespace

DayRule dayRuleOf(const std::vector<absl::CivilDay>& days, absl::TimeZone zone) {
  DayRule found;
  if (days.size() == 1) return found;
  std::set<v1::Weekday> weekdays;
  for (const absl::CivilDay day : days) weekdays.insert(weekdayOf(day));
  auto next = days.begin();
  for (absl::CivilDay day = days.front(); day <= days.back(); ++day) {
    if (!weekdays.contains(weekdayOf(day))) continue;
    if (*next == day) {
      ++next;
    } else {
      found.except.push_back(day);
    }
  }
  // The end of the last day, not its instance: a reader that moves an hour where clocks change must not lose
  // it.
  const absl::Time until = instantOf(absl::CivilMinute(days.back() + 1) - 1, zone);
  found.rule =
      weekdays.size() == 7 ? std::string("FREQ=DAILY") : absl::StrCat("FREQ=WEEKLY;BYDAY=", byDay(weekdays));
  absl::StrAppend(&found.rule, ";UNTIL=", utcText(until));
  return found;
}

absl::StatusOr<std::string> calendarOf(const PersonHistory& history, const ExportOptions& options) {
  const auto index = indexOf(history, options.programme_number);
  if (!index.ok()) return index.status();
  const v1::Programme& programme = history.programmes[*index].programme;
  const auto zone = loadZone(programme.zone());
  if (!zone.ok()) return zone.status();
  const std::string language = options.language.empty() ? history.person.language() : options.language;
  const auto windows = windowsOf(programme, language);
  if (!windows.ok()) return windows.status();
  const auto former = formerWindows(history, *index);
  if (!former.ok()) return former.status();

  absl::CivilDay first = *parseLocalDay(programme.effective_day());
  for (const auto& [key, day] : *former) first = std::min(first, day);
  const auto zone_lines = timeZoneLines(programme.zone(), first, *parseLocalDay(programme.end_day()) + 1);
  if (!zone_lines.ok()) return zone_lines.status();
  const EventInput input{programme, language, options.with_exercises, *zone, utcText(history.as_of)};
  std::string text = absl::StrCat("BEGIN:VCALENDAR\r\nVERSION:2.0\r\n", calendarLine("PRODID", kProduct),
                                  "CALSCALE:GREGORIAN\r\nMETHOD:PUBLISH\r\n", *zone_lines);
  for (const auto& [key, plan] : *windows) absl::StrAppend(&text, event(input, key, plan));
  for (const auto& [key, day] : *former) {
    if (!windows->contains(key)) absl::StrAppend(&text, cancelled(input, key, day));
  }
  return absl::StrCat(text, "END:VCALENDAR\r\n");
}

}  // namespace newel
