// VTIMEZONE (RFC 5545 section 3.6.5), read off the system's zone database through Abseil.
#include <absl/strings/str_cat.h>
#include <absl/strings/str_format.h>

#include <cstdlib>

#include "core/time/local_day.h"
#include "sync/export/calendar.h"
#include "sync/export/calendar_text.h"

namespace newel {
namespace {

// "+0100", "-0330"; with seconds where the offset has them.
std::string offsetText(int seconds) {
  const int size = std::abs(seconds);
  std::string text = absl::StrFormat("%c%02d%02d", seconds < 0 ? '-' : '+', size / 3600, size / 60 % 60);
  if (size % 60 != 0) absl::StrAppendFormat(&text, "%02d", size % 60);
  return text;
}

// `start`: the local time by the offset before.
std::string observance(const absl::TimeZone::CivilInfo& info, absl::CivilSecond start, int offset_before) {
  const char* kind = info.is_dst ? "DAYLIGHT" : "STANDARD";
  std::string at =
      absl::FormatTime("%Y%m%dT%H%M%S", absl::FromCivil(start, absl::UTCTimeZone()), absl::UTCTimeZone());
  return absl::StrCat("BEGIN:", kind, "\r\n", calendarLine("DTSTART", at),
                      calendarLine("TZOFFSETFROM", offsetText(offset_before)),
                      calendarLine("TZOFFSETTO", offsetText(info.offset)),
                      calendarLine("TZNAME", calendarText(info.zone_abbr)), "END:", kind, "\r\n");
}

}  // namespace

absl::StatusOr<std::string> timeZoneLines(const std::string& name, absl::CivilDay first,
                                          absl::CivilDay last) {
  const auto zone = loadZone(name);
  if (!zone.ok()) return zone.status();
  std::string text = absl::StrCat("BEGIN:VTIMEZONE\r\n", calendarLine("TZID", name));
  // Two days before, so that the first day has its offset whatever the zone.
  const absl::Time from = absl::FromCivil(absl::CivilSecond(first - 2), *zone);
  const absl::Time until = absl::FromCivil(absl::CivilSecond(last + 2), *zone);
  absl::TimeZone::CivilInfo before = zone->At(from);
  absl::StrAppend(&text, observance(before, before.cs, before.offset));
  absl::TimeZone::CivilTransition change;
  for (absl::Time at = from; zone->NextTransition(at, &change);) {
    const absl::Time next = zone->At(change.to).trans;
    if (next >= until) break;
    const absl::TimeZone::CivilInfo after = zone->At(next);
    absl::StrAppend(&text, observance(after, change.from, before.offset));
    before = after;
    at = next;
  }
  return absl::StrCat(text, "END:VTIMEZONE\r\n");
}

}  // namespace newel
