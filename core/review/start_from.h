// Where a programme begins: a template put to one person, and the exercises that nothing speaks against.
// Not here: the draft itself and its ids (qml/desk), what the whole says once it is written (review.h).
#pragma once

#include <string>
#include <vector>

#include "core/library/catalogue.h"
#include "core/records/person.pb.h"
#include "core/records/programme.pb.h"
#include "core/records/template.pb.h"
#include "core/safety/rule_book.h"

namespace newel {

// An exercise of a template that was not taken for this person.
struct LeftOut {
  enum class Why {
    Blocked,    // a rule refuses it; `words` are the rule's, for the therapist
    NoMeaning,  // it cannot be done by this body: no sound limb, no prosthesis
    NotThere,   // the clinic has no such exercise any more, or it has changed its kind of dose or support
  };
  std::string exercise_id;
  Why why = Why::NotThere;
  std::string words;
};

struct Beginning {
  std::vector<v1::Entry> entries;  // in the template's order; no ids
  std::vector<LeftOut> left_out;   // in the template's order
};

// What blocks is left out; what asks or warns is taken, and is a finding of the draft as ever. Nothing is
// made lighter or heavier on the way.
Beginning beginFrom(const v1::ProgrammeTemplate& programme_template, const v1::Person& person,
                    const Catalogue& catalogue, const RuleBook& rules);

// Exercises for this person with defaultEntry(): usual for the level, within the mobility level, and neither
// blocked nor in need of a written reason. In the catalogue's order, which is by purpose; of a clinic's own
// the newest revision.
std::vector<const v1::Exercise*> suggestedFor(const v1::Person& person, const Catalogue& catalogue,
                                              const RuleBook& rules);

}  // namespace newel
