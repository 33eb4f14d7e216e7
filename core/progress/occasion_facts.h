// What the record tells of each occasion, whatever day it is looked at; and what that means on one day. For
// adherence.h and attention_digest.h: the one place that knows when an occasion is done, missed or unknown.
#pragma once

#include <absl/status/statusor.h>
#include <absl/time/civil_time.h>

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/progress/adherence.h"

namespace newel {

struct OccasionFact {
  enum class Told { Nothing, Skipped, Part, Done, Excused } told = Told::Nothing;
  OccasionResult result;  // all but its state
  absl::CivilDay over;    // its day, or the Sunday of a times-per-week occasion
  bool held = false;      // the clinic forbade it on the day it was over
};

struct OccasionFacts {
  std::vector<OccasionFact> occasions;  // in the order of core/schedule
  // How often an entry was done in a week (its Monday) without having been due.
  std::map<std::pair<std::string, std::string>, int> extra;
};

// Parameters and errors as in adherenceOf(). A week stands for itself: a range of other whole weeks tells the
// same of it.
absl::StatusOr<OccasionFacts> occasionFacts(const std::vector<v1::Programme>& programmes,
                                            const std::vector<v1::Practice>& practices, absl::CivilDay first,
                                            absl::CivilDay last, const std::vector<HeldDays>& held);

// How much of what was asked one run through an entry did, 0 to 1: by repetitions or by time under load,
// whichever is more. Told later without numbers: 1 unless it says why not.
double doseShareOf(const v1::EntryDone& entry);

OccasionResult::State stateOn(const OccasionFact& fact, absl::CivilDay today, const HeardDays& heard);

// The last day for which any dose of an entry is told; nullopt: none. Days that cannot be read count for
// nothing.
std::optional<absl::CivilDay> lastDoneDay(const std::vector<v1::Practice>& practices);

// The Monday of the week of `day`, both YYYY-MM-DD.
std::string weekOf(const std::string& day);

}  // namespace newel
