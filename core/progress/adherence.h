// How much of what was asked was done: by occasion and by dose, per entry, week and programme.
// Definition (stated on every report): occasions done / occasions due, excused days out of both; capped per
// entry and week, and raw beside it. Sources: no single definition exists (Bailey 2020, BJSM 54:326); ours
// follows the commonest parameter, sessions done over prescribed.
// Not here: whether that is good (a therapist says so), and pain or effort.
#pragma once

#include <absl/status/statusor.h>
#include <absl/time/civil_time.h>

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/progress/held_days.h"
#include "core/records/practice.pb.h"
#include "core/records/programme.pb.h"

namespace newel {

struct Share {
  int due = 0;      // occasions due, without the excused, the coming and those without data
  int done = 0;     // occasions with any practice, extra ones included
  int counted = 0;  // sum over entries and weeks of min(done, due): extra in one week repairs no other
  double dose = 0;  // sum over due occasions of min(1, dose done / dose asked)
  // nullopt when nothing was due: "nothing due" is not 0 %.
  std::optional<double> capped() const;     // counted / due, at most 1
  std::optional<double> raw() const;        // done / due, may pass 1
  std::optional<double> doseShare() const;  // dose / due, at most 1
};

struct OccasionResult {
  v1::OccasionRef ref;
  // Done: its whole dose. Part: some of it. NotDone: the phone was heard from later and told of no practice,
  // or the person skipped it. NoData: nobody knows yet. Coming: not over yet.
  enum class State { Done, Part, NotDone, Excused, Coming, NoData } state = State::NoData;
  double dose = 0;               // 0 to 1
  std::string practice_id;       // the last one that did some of it; empty when none did
  bool told_later = false;       // every practice of it was typed in afterwards
  bool any_day_of_week = false;  // ref's day is only where the week's share was put, see core/schedule
  v1::StopReason skipped = v1::STOP_REASON_UNSPECIFIED;  // why, where the person skipped or stopped it
};

struct Adherence {
  Share all;
  std::map<std::string, Share> by_entry;  // entry id
  std::map<std::string, Share> by_week;   // Monday of the week, YYYY-MM-DD
  std::vector<OccasionResult> occasions;  // in the order of core/schedule; extra ones are not among them
};

// The days on which a phone of the person could have told: from the day it was paired until it was heard from
// last.
struct HeardDays {
  // NOLINTNEXTLINE(google-explicit-constructor): most who ask know only the last one.
  HeardDays(absl::CivilDay last) : until(last) {}
  HeardDays(absl::CivilDay first, absl::CivilDay last) : from(first), until(last) {}
  absl::CivilDay from = absl::CivilDay::min();
  absl::CivilDay until;
};
// `paired`: the day on which the first phone of the person was; what is told of an earlier day counts from
// there.
absl::CivilDay heardFrom(absl::CivilDay paired, const std::vector<v1::Practice>& practices);

// `programmes`: every number of one person, each counts from its effective_day until the day before the
// next number's effective_day (or its end_day). `practices`: all of that person, each id once with its last
// revision. What was done on [first, last] counts; for times-per-week entries give whole weeks.
// What is not done on `today` or later is Coming; due days outside of `heard` with no practice are NoData,
// not NotDone, and stay out of the denominator. A times-per-week occasion is open until its Sunday. A
// practice on an excused day is Excused with its dose, and out of both. `held`: what is not wholly done on a
// day the clinic forbade it is Excused too (a times-per-week occasion when its Sunday is held).
// kInvalidArgument when a programme does not pass check() or a practice names a day that is none.
absl::StatusOr<Adherence> adherenceOf(const std::vector<v1::Programme>& programmes,
                                      const std::vector<v1::Practice>& practices, absl::CivilDay first,
                                      absl::CivilDay last, absl::CivilDay today, const HeardDays& heard,
                                      const std::vector<HeldDays>& held);

}  // namespace newel
