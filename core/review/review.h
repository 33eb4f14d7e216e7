// A whole programme looked at while prescribing: findings, minutes a day, the week's chart.
#pragma once

#include <absl/status/statusor.h>

#include <array>
#include <map>
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
  std::int64_t total_ms = 0;                 // one occasion, from the timeline
  v1::DoseCount asked;
  std::string problem;                       // why it cannot be compiled, empty when it can
};

struct Review {
  std::vector<EntryReview> entries;
  std::vector<v1::Finding> programme_findings;
  std::array<double, 7> minutes_by_weekday{};  // Monday first; rests between sets included
  bool may_sign = false;                       // nothing blocks, every ask has a reason, every entry compiles
  std::vector<std::string> changes;            // against `last`, in plain words
};

// `last` may be null (a first programme). kInvalidArgument names the field of a draft that cannot be read.
absl::StatusOr<Review> reviewProgramme(const v1::Programme& draft, const v1::Person& person,
                                       const v1::Programme* last, const Catalogue& catalogue,
                                       const RuleBook& rules, const std::string& language);

}  // namespace newel
