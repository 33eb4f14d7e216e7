// Local times that do not exist or come twice. Source of the rule: RFC 5545 section 3.3.5; of the instants:
// the IANA zone data (2025b), computed with Python's zoneinfo.
#include "core/time/local_day.h"

#include <gtest/gtest.h>

#include <string>
#include <utility>
#include <vector>

namespace newel {
namespace {

std::string utc(absl::CivilMinute local, const std::string& zone) {
  return absl::FormatTime("%Y-%m-%dT%H:%MZ", instantOf(local, loadZone(zone).value()), absl::UTCTimeZone());
}

TEST(InstantOf, aSkippedTimeTakesTheOffsetBeforeTheGap) {
  EXPECT_EQ(utc(absl::CivilMinute(2026, 3, 29, 2, 30), "Europe/Berlin"), "2026-03-29T01:30Z");
  EXPECT_EQ(utc(absl::CivilMinute(2007, 3, 11, 2, 30), "America/New_York"),
            "2007-03-11T07:30Z");  // in the RFC
  EXPECT_EQ(utc(absl::CivilMinute(2026, 10, 4, 2, 15), "Australia/Lord_Howe"), "2026-10-03T15:45Z");
}

TEST(InstantOf, aRepeatedTimeIsItsFirstPass) {
  EXPECT_EQ(utc(absl::CivilMinute(2026, 10, 25, 2, 30), "Europe/Berlin"), "2026-10-25T00:30Z");
  EXPECT_EQ(utc(absl::CivilMinute(2007, 11, 4, 1, 30), "America/New_York"),
            "2007-11-04T05:30Z");  // in the RFC
}

TEST(InstantOf, aGapAtMidnightNeverFallsOnTheDayBefore) {
  const std::vector<std::pair<std::string, absl::CivilDay>> cases = {
      {"America/Santiago", absl::CivilDay(2026, 9, 6)},
      {"America/Havana", absl::CivilDay(2026, 3, 8)},
      {"Africa/Cairo", absl::CivilDay(2026, 4, 24)}};
  for (const auto& [zone, day] : cases) {
    const auto tz = loadZone(zone).value();
    const absl::Time instant = instantOf(absl::CivilMinute(day), tz);
    EXPECT_EQ(localDayAt(instant, tz), day) << zone;
    EXPECT_EQ(minuteOfDayAt(instant, tz), 60) << zone;
  }
}

TEST(LoadZone, anUnknownZoneIsAnErrorNotUtc) {
  EXPECT_FALSE(loadZone("Europe/Berlim").ok());
  EXPECT_FALSE(loadZone("").ok());
}

TEST(LocalDay, readsAndWritesIsoDays) {
  EXPECT_EQ(formatLocalDay(parseLocalDay("2028-02-29").value()), "2028-02-29");
  for (const char* bad : {"2026-02-29", "2026-2-09", "26-02-09", "2026-13-01", "2026-00-10", "2026-01-32", "",
                          "2026-01-01 ", "1899-12-31"}) {
    EXPECT_FALSE(parseLocalDay(bad).ok()) << bad;
  }
}

TEST(LocalDay, aDayThatAZoneNeverHadIsStillADayOnTheCalendar) {
  // Samoa went from 29 to 31 December 2011; the record of a day does not depend on the zone having had it.
  EXPECT_TRUE(parseLocalDay("2011-12-30").ok());
}

TEST(Timestamp, roundTripsToTheNanosecond) {
  const absl::Time instant = absl::FromUnixSeconds(-3) + absl::Nanoseconds(7);
  EXPECT_EQ(toTime(toTimestamp(instant)), instant);
  EXPECT_GE(toTimestamp(instant).nanos(), 0);
}

}  // namespace
}  // namespace newel
