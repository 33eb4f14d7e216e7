// What the practices before this one mean for it: facts about the past, and whether a stop still stands.
// Not here: adherence and trends (core/progress).
#pragma once

#include <absl/time/civil_time.h>
#include <absl/time/time.h>

#include <optional>
#include <string>
#include <vector>

#include "core/records/practice.pb.h"
#include "core/safety/facts.h"
#include "core/safety/rule_book.h"

namespace newel {

// A stop by a rule that has not been lifted yet: no new practice may start.
struct OpenStop {
  std::string practice_id;
  std::string rule_id;  // may be one that this program does not know
  v1::Until until = v1::UNTIL_CLINIC_SAYS;
};

// A stop on the days on which it stands.
struct StandingStop {
  std::string practice_id;
  std::string rule_id;
  v1::Until until = v1::UNTIL_CLINIC_SAYS;
  absl::Time at;  // the practice's end
  std::optional<absl::CivilDay>
      last_day;  // it stands up to and with this day; nullopt: until the clinic says
};

// Every stop that may stand on some day, in the order of `practices`; parameters and rules as in openStop().
std::vector<StandingStop> standingStops(const RuleBook& rules, const std::vector<v1::Practice>& practices,
                                        std::optional<absl::Time> clinic_spoke_at);

// The strictest stop among `practices` that still stands on the local day `today`; nullopt when none does.
// `clinic_spoke_at`: when the clinic last wrote, signed a programme or lifted a hold; nullopt: never.
// UNTIL_NEXT_DAY stands on the practice's own day and, after travel westwards, on days before it;
// UNTIL_CLINIC_SAYS until the clinic spoke after the practice's end; UNTIL_ANSWER_CHANGES never stands here.
// A rule id that this program does not know stands until the clinic says, and so does a practice that ended
// as RED_FLAG without naming its rule.
std::optional<OpenStop> openStop(const RuleBook& rules, const std::vector<v1::Practice>& practices,
                                 absl::CivilDay today, std::optional<absl::Time> clinic_spoke_at);

// Facts about `practices` (any order, each id once). A practice that the ready check refused is not one that
// was done: it counts for red_flag_open only. Practices told for days after `today` count as 0 days ago.
PracticeHistory historyOf(const RuleBook& rules, const std::vector<v1::Practice>& practices,
                          absl::CivilDay today, std::optional<absl::Time> clinic_spoke_at);

}  // namespace newel
