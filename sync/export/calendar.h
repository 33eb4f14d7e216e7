// One programme's practice times as an iCalendar file (RFC 5545), for a person's own calendar. One event for
// each window of the day, on the days on which anything is due in it; times a week stand on the days that
// core/schedule spreads them over. A calendar is seen by whoever looks at the screen: its words are neutral
// unless asked.
//
// A later programme's file replaces an earlier one's: the same window keeps its UID, SEQUENCE is the
// programme's number, and windows that are no more are cancelled. Times are local with the programme's TZID,
// so that they stay at their hour when clocks change; the zone's rules go along as VTIMEZONE, from the
// system's database.
#pragma once

#include <absl/status/statusor.h>
#include <absl/time/civil_time.h>
#include <absl/time/time.h>

#include <string>
#include <vector>

#include "sync/export/export_options.h"
#include "sync/export/person_history.h"

namespace newel {

// `history` passes checkHistory(). kNotFound: there is no such programme. The same history gives the same
// bytes.
absl::StatusOr<std::string> calendarOf(const PersonHistory& history, const ExportOptions& options);

// VTIMEZONE of an IANA zone for local times on the days [first, last]: the offset before them and every
// change since. kInvalidArgument: no such zone.
absl::StatusOr<std::string> timeZoneLines(const std::string& name, absl::CivilDay first, absl::CivilDay last);

// How a set of days is said: a rule and the days of it that are not among them. RDATE could say some sets
// shorter; it is not used, because of the readers tried one forgets its zone and another the first day.
struct DayRule {
  std::string rule;  // FREQ=DAILY or FREQ=WEEKLY with BYDAY; UNTIL the end of the last day, in UTC
  std::vector<absl::CivilDay> except;  // EXDATE
};
// `days`: at least one, in order, each once. One day needs no rule.
DayRule dayRuleOf(const std::vector<absl::CivilDay>& days, absl::TimeZone zone);

}  // namespace newel
