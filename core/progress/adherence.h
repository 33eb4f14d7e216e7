// How much of what was asked was done: by occasion and by dose, per entry, week and programme.
// Definition (stated on every report): occasions done / occasions due, excused days out of both; capped at 1
// per period, and raw beside it. Sources: no single definition exists (Bailey 2020, BJSM 54:326); ours
// follows the commonest parameter, sessions done over prescribed.
#pragma once

#include <absl/status/statusor.h>
#include <absl/time/civil_time.h>

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/records/practice.pb.h"
#include "core/records/programme.pb.h"

namespace newel {

struct Share {
  int due = 0;      // occasions due, excused ones left out
  int done = 0;     // occasions with any practice, extra ones included
  double dose = 0;  // sum over due occasions of min(1, dose done / dose asked)
  // nullopt when nothing was due: "nothing due" is not 0 %.
  std::optional<double> capped() const;     // min(done, due) / due
  std::optional<double> raw() const;        // done / due, may pass 1
  std::optional<double> doseShare() const;  // dose / due
};

struct OccasionResult {
  v1::OccasionRef ref;
  enum class State { Done, Part, NotDone, Excused, Coming, NoData } state;
  double dose = 0;          // 0 to 1
  std::string practice_id;  // empty unless Done or Part
  bool told_later = false;
};

struct Adherence {
  Share all;
  std::map<std::string, Share> by_entry;  // entry id
  std::map<std::string, Share> by_week;   // Monday of the week, YYYY-MM-DD
  std::vector<OccasionResult> occasions;
};

// `programmes`: every number of one person, each counts from its effective_day until the day before the
// next one's (or its end_day). `practices`: all of that person, each id once with its last revision.
// Days after `today` are Coming; due days after `heard_until` (the last day the phone was heard from) with
// no practice are NoData, not NotDone, and stay out of the denominator.
absl::StatusOr<Adherence> adherenceOf(const std::vector<v1::Programme>& programmes,
                                      const std::vector<v1::Practice>& practices, absl::CivilDay first,
                                      absl::CivilDay last, absl::CivilDay today, absl::CivilDay heard_until);

}  // namespace newel
