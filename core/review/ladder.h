// One rung up or down the ladder of an exercise, for an entry that its rule calls ready or too hard.
// Not here: whether it is (core/progress/progression.h), and whether it is signed.
#pragma once

#include <string>

#include "core/library/catalogue.h"
#include "core/records/person.pb.h"
#include "core/records/programme.pb.h"
#include "core/safety/rule_book.h"

namespace newel {

// The rung an entry stands on: the one it names, else the one with the same dose and support; -1: none.
int rungAt(const v1::Entry& entry, const v1::Exercise& exercise);

struct LadderStep {
  enum class What {
    Taken,      // `entry` is the next one
    NoLadder,   // the exercise has none, or the clinic has no such exercise any more
    OffLadder,  // the dose is the therapist's own: no rung is next
    AtItsEnd,   // there is no rung further that way
    Blocked,    // a rule refuses the next rung for this person; `words` are the rule's, for the therapist
  };
  What what = What::NoLadder;
  v1::Entry entry;  // as it was unless Taken; else dose, support and rung are the next ones, all else stays
  std::string words;
};

// `up`: the harder way. What a rule asks or warns of is taken, and is a finding of the draft as ever.
LadderStep stepOnLadder(const v1::Entry& entry, bool up, const v1::Person& person, const Catalogue& catalogue,
                        const RuleBook& rules);

}  // namespace newel
