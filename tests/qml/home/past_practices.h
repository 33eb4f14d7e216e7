// A history on the phone: one practice a day, gone through the engine as a real one would, with days left
// out, days done in part and ratings that go up and down. The same for the same number of days.
#pragma once

#include <gtest/gtest.h>

#include <array>

#include "core/records/uuid7.h"
#include "core/time/local_day.h"
#include "tests/qml/home/home_world.h"

namespace newel::tests {

inline v1::Practice pastPractice(const v1::Programme& programme, absl::CivilDay day, int number) {
  const absl::Time begun = absl::FromCivil(absl::CivilHour(day) + 9, *loadZone("Europe/Berlin"));
  v1::Practice practice;
  std::array<std::uint8_t, 10> bytes{};
  for (std::size_t i = 0; i < bytes.size(); ++i) bytes[i] = static_cast<std::uint8_t>(number >> (i % 4 * 8));
  practice.set_id(makeUuid7(absl::ToUnixMillis(begun), bytes));
  practice.set_revision(1);
  practice.set_person_id(programme.person_id());
  practice.set_programme_number(programme.number());
  practice.set_zone("Europe/Berlin");
  practice.set_local_day(formatLocalDay(day));
  *practice.mutable_started_at() = toTimestamp(begun);
  *practice.mutable_ended_at() = toTimestamp(begun + absl::Minutes(20));
  practice.set_elapsed_ms(20 * 60'000);
  practice.set_end(v1::PRACTICE_END_FINISHED);
  practice.set_origin(v1::ORIGIN_TIMED_HERE);
  practice.set_app_version("0.1.0");
  for (const v1::Entry& entry : programme.entries()) {
    v1::EntryDone& done = *practice.add_entries();
    done.mutable_occasion()->set_entry_id(entry.id());
    done.mutable_occasion()->set_local_day(formatLocalDay(day));
    done.set_exercise_id(entry.exercise_id());
    done.set_exercise_revision(entry.exercise_revision());
    done.mutable_asked()->set_repetitions(8);
    done.mutable_done()->set_repetitions(number % 6 == 4 ? 5 : 8);
    done.set_pain_after_0_10(static_cast<std::uint32_t>((number * 7) % 5));
    done.set_effort_0_10(static_cast<std::uint32_t>(3 + number % 4));
    done.set_elapsed_ms(5 * 60'000);
  }
  return practice;
}

// The last `days` days before today, every seventh of them left out.
inline void keepPastPractices(HomeWorld& world, int days) {
  const absl::CivilDay today = localDayAt(world.clock().wall(), *loadZone("Europe/Berlin"));
  const auto programme = world.program().engine->programme();
  ASSERT_TRUE(programme.has_value());
  for (int back = days; back > 0; --back) {
    if (back % 7 == 3) continue;
    const absl::Status kept =
        world.program().engine->closePractice(pastPractice(*programme, today - back, back));
    ASSERT_TRUE(kept.ok()) << kept;
  }
  emit world.program().bridge->news();
}

}  // namespace newel::tests
