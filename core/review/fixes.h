// What would answer a finding: one thing of the entry changed, tried against the same rules. Nothing here is
// guessed: a change is offered because with it the rule no longer speaks and no other speaks louder.
// Not here: whether it is what this person needs; a therapist chooses and signs.
#pragma once

#include <string>
#include <vector>

#include "core/library/catalogue.h"
#include "core/records/person.pb.h"
#include "core/records/programme.pb.h"
#include "core/safety/rule_book.h"

namespace newel {

struct Fix {
  enum class Kind {
    Support,     // another support that the exercise has
    Rung,        // another step of its ladder, support and dose together
    Prosthesis,  // on in place of off, or off in place of on
    Sides,       // other sides
  };
  Kind kind = Kind::Support;
  v1::Entry entry;  // as it would be; id, days, notes and reasons as they were
};

// For reading, not for choosing from a wall of chips. Ours, no source.
inline constexpr std::size_t kMostFixes = 3;

// At most kMostFixes: supports with most support first, then the ladder from its lowest step, then prosthesis
// and sides. Each compiles for this person, takes away the finding of `rule_id`, and brings no block, and no
// ask that was not there before. Empty when no one change does, when the exercise is not in `catalogue`, or
// when the rule says nothing about the entry.
std::vector<Fix> fixesFor(const v1::Entry& entry, const std::string& rule_id, const v1::Person& person,
                          const Catalogue& catalogue, const RuleBook& rules);

}  // namespace newel
