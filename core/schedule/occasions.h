// When entries are due. An occasion is a local day and a window in it: it can neither vanish nor double when
// clocks change, and one that was missed never adds to a later day.
// Not here: what was done (core/progress), and how a reminder is shown (platform).
#pragma once

#include <absl/status/statusor.h>
#include <absl/time/civil_time.h>
#include <absl/time/time.h>

#include <string>
#include <vector>

#include "core/records/practice.pb.h"
#include "core/records/programme.pb.h"

namespace newel {

enum class OccasionState { Due, Excused };

struct Occasion {
  v1::OccasionRef ref;
  v1::Window window;
  OccasionState state = OccasionState::Due;  // Excused: inside a pause
  // times-per-week entries: any day of the week counts, so the week's share is due, not this very day.
  bool any_day_of_week = false;
};

// All occasions of `programme` on the local days [first, last], in order of day, window, entry. Days before
// effective_day or after end_day have none, and so has a range whose last day lies before its first. A
// times-per-week entry is due on every day of a week (Monday to Sunday) until done that often: here it yields
// its n occasions on the n days spread over the week by spreadOverWeek(). kInvalidArgument when the programme
// does not pass check().
absl::StatusOr<std::vector<Occasion>> occasionsOf(const v1::Programme& programme, absl::CivilDay first,
                                                  absl::CivilDay last);

// n of 7 days, as evenly as whole days allow: 1 Mo; 2 Mo Th; 3 Mo We Fr; 4 Mo Tu Th Fr; 5 Mo-Fr; 6 Mo-Sa;
// 7 all. 0 and less give no day, more than 7 give all.
std::vector<v1::Weekday> spreadOverWeek(int times);
v1::Weekday weekdayOf(absl::CivilDay day);
// The Monday of the week of `day`, which may be `day` itself.
absl::CivilDay mondayOf(absl::CivilDay day);

// What is due on `day`: its occasions less those in `done` (refs of practices that did them, in full or in
// part) and the excused, and for times-per-week entries those of the week not done yet, at most one a day,
// entry and window: two missed days never make two due on the third. Nothing for a programme that does not
// pass check().
std::vector<Occasion> dueOn(const v1::Programme& programme, absl::CivilDay day,
                            const std::vector<v1::OccasionRef>& done);

// Ids of the cards of advice to show on `day`, in the programme's order; none before its first day or after
// its last.
std::vector<std::string> cardsDueOn(const v1::Programme& programme, absl::CivilDay day);

// When a reminder of `occasion` may be shown to a person who is in `zone` now: the start of its window. A
// local time that `zone` skips shows later on the clock, one that comes twice is the first pass (RFC 5545
// section 3.3.5). InfiniteFuture for a day that cannot be read. A reminder only reminds: the occasion is due
// whether it is shown or not.
absl::Time reminderInstant(const Occasion& occasion, absl::TimeZone zone);

}  // namespace newel
