// What would answer a finding over a whole programme: one thing of it changed, tried against the same rules,
// and never more asked of the person than before. As for one entry (core/review/fixes.h) nothing is guessed.
// Not here: whether it is what this person needs; a therapist chooses and signs.
#pragma once

#include <string>
#include <vector>

#include "core/library/catalogue.h"
#include "core/records/person.pb.h"
#include "core/records/programme.pb.h"
#include "core/review/review.h"
#include "core/safety/rule_book.h"

namespace newel {

struct ProgrammeFix {
  enum class Kind {
    PainStop,  // a lower limit of pain
    EndDay,    // an earlier last day
    Days,      // other days, or fewer, for one entry
    Dose,      // one set, bout or pass fewer of one entry
    Without,   // one entry less
  };
  Kind kind = Kind::PainStop;
  std::string entry_id;     // whose days or dose, or which is left out; else empty
  v1::Programme programme;  // as it would be; everything else as it was
};

// At most kMostFixes (core/review/fixes.h), the smallest change first, of entries the last one first: it is
// what was added last. Each compiles for this person, takes away the finding of `rule_id`, and brings no
// block and no ask that was not there before. `review` is what reviewProgramme() says of this draft beside
// this `last`, which may be null (a first programme). Empty when no one change does, or when the rule says
// nothing about the programme.
std::vector<ProgrammeFix> programmeFixesFor(const v1::Programme& draft, const Review& review,
                                            const std::string& rule_id, const v1::Person& person,
                                            const v1::Programme* last, const Catalogue& catalogue,
                                            const RuleBook& rules);

}  // namespace newel
