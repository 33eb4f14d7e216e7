// Instants of reminders, and days that travel cannot lose.
#include <gtest/gtest.h>

#include <set>

#include "core/schedule/occasions.h"
#include "core/time/local_day.h"
#include "tests/core/schedule/programme_fixture.h"

namespace newel {
namespace {

std::string utcOf(const std::string& day, std::uint32_t from_min, const std::string& zone) {
  Occasion occasion;
  occasion.ref.set_local_day(day);
  occasion.window.set_from_min(from_min);
  const auto loaded = loadZone(zone);
  EXPECT_TRUE(loaded.ok()) << zone;
  return absl::FormatTime("%Y-%m-%dT%H:%MZ", reminderInstant(occasion, *loaded), absl::UTCTimeZone());
}

// Vectors D1 and D2: recomputed with Python zoneinfo, tzdata 2025b; the days with RFC 5545 WEEKLY rules.
TEST(Reminder, keepsItsLocalTimeOverBothChangesOfTheClock) {
  EXPECT_EQ(utcOf("2026-03-25", 540, "Europe/Berlin"), "2026-03-25T08:00Z");
  EXPECT_EQ(utcOf("2026-03-27", 540, "Europe/Berlin"), "2026-03-27T08:00Z");
  EXPECT_EQ(utcOf("2026-03-30", 540, "Europe/Berlin"), "2026-03-30T07:00Z");
  EXPECT_EQ(utcOf("2026-04-06", 540, "Europe/Berlin"), "2026-04-06T07:00Z");
  EXPECT_EQ(utcOf("2026-10-30", 540, "America/New_York"), "2026-10-30T13:00Z");
  EXPECT_EQ(utcOf("2026-11-02", 540, "America/New_York"), "2026-11-02T14:00Z");
}

// D3: 02:30 does not exist on 29 March in Berlin; it takes the offset before the gap and shows 03:30.
TEST(Reminder, inAGapTakesTheOffsetBeforeIt) {
  EXPECT_EQ(utcOf("2026-03-28", 150, "Europe/Berlin"), "2026-03-28T01:30Z");
  EXPECT_EQ(utcOf("2026-03-29", 150, "Europe/Berlin"), "2026-03-29T01:30Z");
  EXPECT_EQ(utcOf("2026-03-30", 150, "Europe/Berlin"), "2026-03-30T00:30Z");
}

// D4: 02:30 comes twice on 25 October in Berlin; the first pass counts.
TEST(Reminder, ofATimeThatComesTwiceIsTheFirstPass) {
  EXPECT_EQ(utcOf("2026-10-24", 150, "Europe/Berlin"), "2026-10-24T00:30Z");
  EXPECT_EQ(utcOf("2026-10-25", 150, "Europe/Berlin"), "2026-10-25T00:30Z");
  EXPECT_EQ(utcOf("2026-10-26", 150, "Europe/Berlin"), "2026-10-26T01:30Z");
}

// D5: both in RFC 5545 section 3.3.5.
TEST(Reminder, agreesWithTheExamplesOfRfc5545) {
  EXPECT_EQ(utcOf("2007-11-04", 90, "America/New_York"), "2007-11-04T05:30Z");
  EXPECT_EQ(utcOf("2007-03-11", 150, "America/New_York"), "2007-03-11T07:30Z");
}

// D6 and D7: a gap of half an hour, and a day that begins at one o'clock.
TEST(Reminder, inOddGapsIsStillOnItsDay) {
  EXPECT_EQ(utcOf("2026-10-04", 135, "Australia/Lord_Howe"), "2026-10-03T15:45Z");
  EXPECT_EQ(utcOf("2026-09-06", 30, "America/Santiago"), "2026-09-06T04:30Z");
}

TEST(Reminder, ofADayThatCannotBeReadNeverComes) {
  Occasion occasion;
  occasion.ref.set_local_day("tomorrow");
  EXPECT_EQ(reminderInstant(occasion, absl::UTCTimeZone()), absl::InfiniteFuture());
}

// An occasion is a name on the calendar: the days are the same whatever the zone does to its clocks, also
// where a zone once left out a whole day (Pacific/Apia has no 2011-12-30).
TEST(Occasions, areTheSameDaysInEveryZone) {
  for (const std::string zone : {"Europe/Berlin", "Pacific/Apia", "Pacific/Kiritimati", "America/Santiago"}) {
    v1::Programme programme = test::emptyProgramme("2011-12-26", "2012-01-01");
    programme.set_zone(zone);
    test::addEntry(programme, test::everyDay());
    const auto occasions = occasionsOf(programme, absl::CivilDay(2011, 1, 1), absl::CivilDay(2012, 12, 31));
    ASSERT_TRUE(occasions.ok());
    std::set<std::string> days;
    for (const auto& occasion : *occasions) days.insert(occasion.ref.local_day());
    EXPECT_EQ(days.size(), 7U) << zone;
    EXPECT_EQ(occasions->size(), 7U) << zone;
  }
}

// Over the date line both ways: eastwards a day comes twice, westwards one is passed over. What was done on
// a day is done; what was passed over is missed and adds nothing to the next.
TEST(Occasions, overTheDateLineAreNeitherDoubledNorAdded) {
  v1::Programme programme = test::emptyProgramme("2026-11-02", "2026-11-15");
  test::addEntry(programme, test::everyDay());
  const auto auckland = loadZone("Pacific/Auckland");
  const auto honolulu = loadZone("Pacific/Honolulu");
  ASSERT_TRUE(auckland.ok() && honolulu.ok());
  // Leaves Auckland on the 10th at 20:00, lands in Honolulu on the 10th again.
  const absl::Time take_off = absl::FromCivil(absl::CivilMinute(2026, 11, 10, 20, 0), *auckland);
  const absl::CivilDay before = localDayAt(take_off, *auckland);
  const absl::CivilDay after = localDayAt(take_off + absl::Hours(9), *honolulu);
  ASSERT_EQ(before, after) << "the same date a second time";
  const auto due = dueOn(programme, before, {});
  ASSERT_EQ(due.size(), 1U);
  EXPECT_TRUE(dueOn(programme, after, {due.front().ref}).empty()) << "not asked for twice";
  // Back: from the 12th in Honolulu to the 14th in Auckland, the 13th was never seen.
  const absl::Time back = absl::FromCivil(absl::CivilMinute(2026, 11, 12, 20, 0), *honolulu);
  const absl::CivilDay landed = localDayAt(back + absl::Hours(9), *auckland);
  EXPECT_EQ(landed, absl::CivilDay(2026, 11, 14));
  EXPECT_EQ(dueOn(programme, landed, {due.front().ref}).size(), 1U) << "one, though the 13th was missed";
}

}  // namespace
}  // namespace newel
