// What may still be told: never what is known, excused or to come, and by the programme of that day.
#include "core/schedule/untold.h"

#include <gtest/gtest.h>

#include "core/time/local_day.h"
#include "tests/core/schedule/programme_fixture.h"

namespace newel {
namespace {

const absl::CivilDay kWednesday(2026, 11, 25);

v1::Programme daily(const std::string& first, int number) {
  v1::Programme programme = test::emptyProgramme(first, "2026-12-31", number);
  test::addEntry(programme, test::everyDay());  // 09:00 to 12:00
  return programme;
}

TEST(Untold, coversSevenDaysNewestFirst) {
  const auto untold = untoldOccasions({daily("2026-11-01", 1)}, kWednesday, 600, {});
  ASSERT_EQ(untold.size(), 7U);
  EXPECT_EQ(untold.front().occasion.ref.local_day(), "2026-11-25");
  EXPECT_EQ(untold.back().occasion.ref.local_day(), "2026-11-19");
}

TEST(Untold, leavesOutWhatIsDoneExcusedOrToCome) {
  v1::Programme programme = daily("2026-11-01", 1);
  EXPECT_EQ(untoldOccasions({programme}, kWednesday, 539, {}).front().occasion.ref.local_day(), "2026-11-24")
      << "today's window has not begun";
  EXPECT_EQ(untoldOccasions({programme}, kWednesday, 540, {}).front().occasion.ref.local_day(), "2026-11-25");
  v1::OccasionRef done;
  done.set_entry_id(programme.entries(0).id());
  done.set_local_day("2026-11-24");
  v1::Pause& pause = *programme.mutable_entries(0)->mutable_schedule()->add_pauses();
  pause.set_first_day("2026-11-22");
  pause.set_last_day("2026-11-23");
  const auto untold = untoldOccasions({programme}, kWednesday, 600, {done});
  ASSERT_EQ(untold.size(), 4U);
  EXPECT_EQ(untold[1].occasion.ref.local_day(), "2026-11-21");
}

TEST(Untold, eachDayIsThatOfTheProgrammeThatCountedThen) {
  const auto untold = untoldOccasions({daily("2026-11-24", 2), daily("2026-11-01", 1)}, kWednesday, 600, {});
  ASSERT_EQ(untold.size(), 7U);
  EXPECT_EQ(untold[1].programme_number, 2U);
  EXPECT_EQ(untold[1].occasion.ref.local_day(), "2026-11-24");
  EXPECT_EQ(untold[2].programme_number, 1U);
  EXPECT_TRUE(untoldOccasions({daily("2026-11-26", 3)}, kWednesday, 600, {}).empty()) << "not begun yet";
  EXPECT_TRUE(untoldOccasions({}, kWednesday, 600, {}).empty());
}

TEST(Untold, aWeeksShareThatIsDoneIsNotOfferedAgain) {
  v1::Programme programme = test::emptyProgramme("2026-11-01", "2026-12-31");
  test::addEntry(programme, test::timesPerWeek(1));
  v1::OccasionRef done;
  done.set_entry_id(programme.entries(0).id());
  done.set_local_day("2026-11-23");  // Monday of this week
  const auto untold = untoldOccasions({programme}, kWednesday, 600, {done});
  for (const auto& each : untold) EXPECT_LT(each.occasion.ref.local_day(), "2026-11-23");
  EXPECT_EQ(untold.size(), 4U) << "Thursday to Sunday of the week before";
}

}  // namespace
}  // namespace newel
