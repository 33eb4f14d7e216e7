#include "core/time/local_day.h"

#include <cstdio>

namespace newel {
namespace {

bool digits(const std::string& text, std::size_t from, std::size_t count) {
  for (std::size_t i = from; i < from + count; ++i) {
    if (text[i] < '0' || text[i] > '9') return false;
  }
  return true;
}

}  // namespace

absl::StatusOr<absl::CivilDay> parseLocalDay(const std::string& text) {
  const bool form = text.size() == 10 && text[4] == '-' && text[7] == '-' && digits(text, 0, 4) &&
                    digits(text, 5, 2) && digits(text, 8, 2);
  if (form) {
    const int year = std::stoi(text.substr(0, 4));
    const int month = std::stoi(text.substr(5, 2));
    const int day = std::stoi(text.substr(8, 2));
    const absl::CivilDay civil(year, month, day);
    // Civil arithmetic carries 30 February over into March; a day that moved did not exist.
    if (year >= 1900 && civil.month() == month && civil.day() == day) return civil;
  }
  return absl::InvalidArgumentError("\"" + text + "\" is not a day of the form YYYY-MM-DD");
}

std::string formatLocalDay(absl::CivilDay day) {
  char text[16];
  std::snprintf(text, sizeof text, "%04d-%02d-%02d", static_cast<int>(day.year() % 10000), day.month(),
                day.day());
  return text;
}

absl::StatusOr<absl::TimeZone> loadZone(const std::string& name) {
  absl::TimeZone zone;
  if (!name.empty() && absl::LoadTimeZone(name, &zone)) return zone;
  return absl::InvalidArgumentError("\"" + name + "\" is not a time zone this machine knows");
}

absl::CivilDay localDayAt(absl::Time instant, absl::TimeZone zone) { return absl::ToCivilDay(instant, zone); }

int minuteOfDayAt(absl::Time instant, absl::TimeZone zone) {
  const absl::CivilMinute minute = absl::ToCivilMinute(instant, zone);
  return minute.hour() * 60 + minute.minute();
}

absl::Time instantOf(absl::CivilMinute local, absl::TimeZone zone) {
  // "pre" is the offset before a change: the first pass of a repeated time, and for a skipped one the instant
  // that shows later on the clock.
  return zone.At(absl::CivilSecond(local)).pre;
}

google::protobuf::Timestamp toTimestamp(absl::Time instant) {
  google::protobuf::Timestamp timestamp;
  const std::int64_t seconds = absl::ToUnixSeconds(instant);
  timestamp.set_seconds(seconds);
  timestamp.set_nanos(
      static_cast<std::int32_t>((instant - absl::FromUnixSeconds(seconds)) / absl::Nanoseconds(1)));
  return timestamp;
}

absl::Time toTime(const google::protobuf::Timestamp& timestamp) {
  return absl::FromUnixSeconds(timestamp.seconds()) + absl::Nanoseconds(timestamp.nanos());
}

}  // namespace newel
