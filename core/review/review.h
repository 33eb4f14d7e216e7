// A whole programme looked at while prescribing: findings, minutes a day, the week's chart, what is new.
// Not here: signing (sync/hub), and how it is shown (qml/desk).
#pragma once

#include <absl/status/statusor.h>

#include <array>
#include <cstdint>
#include <string>
#include <vector>

#include "core/library/catalogue.h"
#include "core/records/person.pb.h"
#include "core/records/programme.pb.h"
#include "core/records/timeline.pb.h"
#include "core/safety/rule_book.h"

namespace newel {

struct EntryReview {
  std::string entry_id;
  std::vector<v1::Finding> findings;
  std::int64_t total_ms = 0;  // one occasion, from the timeline; 0 with a problem
  v1::DoseCount asked;
  std::string problem;  // why it cannot be compiled, empty when it can
};

struct Review {
  std::vector<EntryReview> entries;
  std::vector<v1::Finding> programme_findings;
  std::array<double, 7> minutes_by_weekday{};  // Monday first; rests between sets included
  bool may_sign = false;                       // nothing blocks, every ask has a reason, every entry compiles
  std::vector<std::string> changes;            // against `last`, in `language`
};

// `draft` need not be signed yet: numbers, ids of clinic and signer and the instant may be missing. `last`
// may be null (a first programme). `language` (BCP 47): of `changes`, as changesBetween(). A
// times-per-week entry counts on the days of spreadOverWeek(). An entry that cannot be compiled adds no
// minutes and says why in `problem`; it is not an error. An ASK over the whole programme is answered by an
// override of that rule in any entry.
// kInvalidArgument names the field: a person or a schedule that does not pass check(), days that are none, an
// end before the beginning, no entries, more than 20, an entry id given twice.
absl::StatusOr<Review> reviewProgramme(const v1::Programme& draft, const v1::Person& person,
                                       const v1::Programme* last, const Catalogue& catalogue,
                                       const RuleBook& rules, const std::string& language);

// What is new in `draft` against `last`, one sentence a change, entries in the order of `draft`, then what is
// gone. Whole in `language` or its base language where the catalogue has it, else in English; titles of what
// is not in it are English. Empty when nothing that the person does has changed. Used by reviewProgramme();
// an entry is the same one when its id is.
std::vector<std::string> changesBetween(const v1::Programme& last, const v1::Programme& draft,
                                        const Catalogue& catalogue, const std::string& language);

}  // namespace newel
