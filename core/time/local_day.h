// Local days and zones: a day is a name on a calendar, never 24 hours.
#pragma once

#include <absl/status/statusor.h>
#include <absl/time/civil_time.h>
#include <absl/time/time.h>
#include <google/protobuf/timestamp.pb.h>

#include <string>

namespace newel {

// "YYYY-MM-DD" to a civil day, years 1900 to 9999. kInvalidArgument on any other form or a day that
// does not exist (2026-02-30).
absl::StatusOr<absl::CivilDay> parseLocalDay(const std::string& text);
std::string formatLocalDay(absl::CivilDay day);

// An IANA zone from the system's database. kInvalidArgument when the name is unknown, so that a typing
// error never becomes UTC in silence.
absl::StatusOr<absl::TimeZone> loadZone(const std::string& name);

absl::CivilDay localDayAt(absl::Time instant, absl::TimeZone zone);
// Minutes after local midnight by the wall clock there, 0 to 1439.
int minuteOfDayAt(absl::Time instant, absl::TimeZone zone);

// The instant of a local time. A time that the zone skips takes the offset before the gap (it shows later
// on the clock); one that comes twice is the first pass (RFC 5545 section 3.3.5).
absl::Time instantOf(absl::CivilMinute local, absl::TimeZone zone);

google::protobuf::Timestamp toTimestamp(absl::Time instant);
absl::Time toTime(const google::protobuf::Timestamp& timestamp);

}  // namespace newel
