#include "sync/export/person_history.h"

#include <gtest/gtest.h>

#include "core/time/local_day.h"
#include "sync/export/record_words.h"
#include "tests/sync/export/history_maker.h"

namespace newel {
namespace {

TEST(PersonHistory, everyMadeHistoryPassesTheDoor) {
  for (std::uint64_t seed = 1; seed <= 1000; ++seed) {
    const absl::Status good = checkHistory(test::anyHistory(seed));
    ASSERT_TRUE(good.ok()) << seed << ": " << good;
  }
}

TEST(PersonHistory, anotherPersonsRecordIsNamed) {
  PersonHistory history = test::yearOfHistory(1);
  history.practices[3].set_person_id("0193a1c0-0000-7000-8000-000000000009");
  EXPECT_EQ(checkHistory(history).message(), "practices[3].person_id: is another person's");
}

TEST(PersonHistory, theFieldOfABadRecordIsNamed) {
  PersonHistory history = test::yearOfHistory(1);
  history.practices[2].mutable_entries(0)->set_effort_0_10(11);
  EXPECT_EQ(std::string(checkHistory(history).message()).rfind("practices[2].entries[0].effort_0_10", 0), 0U)
      << checkHistory(history);
}

TEST(PersonHistory, ofRevisionsTheLastCounts) {
  PersonHistory history = test::yearOfHistory(1);
  const std::size_t count = history.practices.size();
  v1::Practice again = history.practices.front();
  again.set_revision(2);
  again.set_note("again");
  history.practices.push_back(again);
  v1::Practice old = history.practices[1];
  history.practices[1].set_revision(7);
  history.practices.push_back(old);
  putInOrder(history);
  ASSERT_EQ(history.practices.size(), count);
  EXPECT_EQ(history.practices.front().note(), "again");
  EXPECT_EQ(history.practices[1].revision(), 7U);
}

class States : public testing::Test {
 protected:
  States() : m_history(test::yearOfHistory(1)) {
    v1::Programme& first = m_history.programmes[0].programme;
    first.set_effective_day("2026-01-05");
    first.set_end_day("2026-03-01");
    KeptProgramme next = m_history.programmes[0];
    next.programme.set_number(2);
    next.programme.set_effective_day("2026-02-02");
    next.programme.set_end_day("2026-02-28");
    m_history.programmes.push_back(next);
  }
  ProgrammeState stateOn(const std::string& day, std::size_t index) {
    m_history.as_of = absl::FromCivil(absl::CivilHour(*parseLocalDay(day)) + 12, absl::UTCTimeZone());
    return programmeState(m_history, index);
  }
  PersonHistory m_history;
};

TEST_F(States, followTheDays) {
  EXPECT_EQ(stateOn("2026-01-04", 0), ProgrammeState::NotBegun);
  EXPECT_EQ(stateOn("2026-01-05", 0), ProgrammeState::Active);
  EXPECT_EQ(stateOn("2026-02-01", 0), ProgrammeState::Active);
  EXPECT_EQ(stateOn("2026-02-02", 0), ProgrammeState::Replaced);
  EXPECT_EQ(stateOn("2026-02-01", 1), ProgrammeState::NotBegun);
  EXPECT_EQ(stateOn("2026-02-28", 1), ProgrammeState::Active);
  EXPECT_EQ(stateOn("2026-03-01", 1), ProgrammeState::Completed);
  EXPECT_EQ(formatLocalDay(lastCountingDay(m_history, 0)), "2026-02-01");
  EXPECT_EQ(programmeOn(m_history, "2026-02-01")->programme.number(), 1U);
  EXPECT_EQ(programmeOn(m_history, "2026-02-02")->programme.number(), 2U);
  EXPECT_EQ(programmeOn(m_history, "2026-03-01"), nullptr) << "the second one took over and is over";
}

// What was not heard of is not "not done", and days that are not told of change no state of the others.
TEST(PersonHistory, daysAreCutFromWhatIsToldAndNotFromWhatIsKnown) {
  PersonHistory history = test::yearOfHistory(2);
  const auto whole = adherenceIn(history);
  ASSERT_TRUE(whole.ok()) << whole.status();
  history.first_day = "2026-03-02";
  history.last_day = "2026-03-08";
  const auto week = adherenceIn(history);
  ASSERT_TRUE(week.ok()) << week.status();
  EXPECT_EQ(week->occasions.size(), 6U);
  EXPECT_EQ(week->all.due, whole->all.due);
  for (const auto& occasion : week->occasions) EXPECT_EQ(occasion.state, OccasionResult::State::Done);
}

// RFC 9562 appendix B.2: the DNS namespace and "www.example.com" (from memory, and recomputed by hashlib).
TEST(RecordWords, idsAreDerivedAsTheRfcsExample) {
  EXPECT_EQ(derivedId("6ba7b810-9dad-11d1-80b4-00c04fd430c8", "www.example.com"),
            "5c146b14-3c52-8afd-938a-375d0df1fbf6");
}

TEST(RecordWords, numbersNeedNoLocaleAndNoExponent) {
  EXPECT_EQ(plainNumber(3.6), "3.6");
  EXPECT_EQ(plainNumber(-0.05), "-0.05");
  EXPECT_EQ(plainNumber(1000000), "1000000");
  EXPECT_EQ(plainNumber(0.000001), "0.000001");
  EXPECT_EQ(secondsText(90500), "90.5");
  EXPECT_EQ(secondsText(0), "0");
  EXPECT_EQ(secondsText(1000), "1");
  EXPECT_EQ(clockMinute(1440), "24:00");
}

// ISO 8601; the offset of the day, not of today.
TEST(RecordWords, instantsCarryTheOffsetOfTheirDay) {
  const absl::Time winter = absl::FromCivil(absl::CivilSecond(2026, 1, 5, 8, 0, 0), absl::UTCTimeZone());
  EXPECT_EQ(isoInstant(winter), "2026-01-05T08:00:00Z");
  EXPECT_EQ(isoInstantIn(winter, "Europe/Berlin"), "2026-01-05T09:00:00+01:00");
  EXPECT_EQ(isoInstantIn(winter + absl::Hours(24 * 180), "Europe/Berlin"), "2026-07-04T10:00:00+02:00");
  EXPECT_EQ(isoInstantIn(winter, "Asia/Kathmandu"), "2026-01-05T13:45:00+05:45");
  EXPECT_EQ(isoInstantIn(winter, "no/such"), "2026-01-05T08:00:00Z");
}

}  // namespace
}  // namespace newel
