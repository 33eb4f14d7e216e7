// What a person says to have done away from the phone, made into a record of its own kind: nothing in it was
// timed. The same rules look at it as after a practice. Pure.
// Not here: which occasions may be told (core/schedule/untold.h).
#pragma once

#include <absl/status/statusor.h>
#include <absl/time/civil_time.h>
#include <absl/time/time.h>

#include <cstdint>
#include <string>
#include <vector>

#include "core/library/catalogue.h"
#include "core/records/person.pb.h"
#include "core/records/practice.pb.h"
#include "core/records/programme.pb.h"
#include "core/safety/rule_book.h"

namespace newel {

struct ToldInput {
  std::string practice_id;  // UUIDv7
  v1::Programme programme;  // the number that counted on that day
  v1::Person person;
  v1::OccasionRef occasion;
  std::uint32_t done_percent = 100;  // of the dose, 1 to 100
  std::uint32_t pain_after_0_10 = 0;
  std::uint32_t effort_0_10 = 0;
  v1::StopReason happened = v1::STOP_REASON_UNSPECIFIED;  // UNSPECIFIED: nothing did
  std::string zone;                                       // where the person tells it
  absl::CivilDay today;                                   // there
  absl::Time told_at;
  std::string language;
  std::string app_version;
  RuleFacts history;
};

struct ToldResult {
  v1::Practice practice;              // passes check(); origin TOLD_LATER
  std::vector<v1::Finding> findings;  // what the person is to read now, highest first
  bool ends_practice = false;         // a stop that stands from now on
};

// The record: local_day is the occasion's; started_at and ended_at are both the moment of telling, so that
// what the clinic wrote before it knew lifts no stop; elapsed_ms is 0. What was done is the dose asked for
// times the percentage, whole repetitions rounded down, one at least. end is RED_FLAG with the ids of its
// rules where a rule would have ended the practice, else STOPPED with a reason, else FINISHED. Findings about
// a day before `today`: only those that stand until the clinic says; "no more today" is past.
// kInvalidArgument: occasion not in the programme, today's day before the occasion's, numbers out of range, a
// reason that is not a person's. Errors of compileTimeline() where the entry has no meaning for the person.
absl::StatusOr<ToldResult> tellLater(const ToldInput& input, const Catalogue& catalogue,
                                     const RuleBook& rules);

}  // namespace newel
