// What a rule may look at: named facts, each a set of words and perhaps a number. A rule is given facts and
// never asks where they come from. The list of names is in facts.cpp, one table; a rule naming another fails
// the build.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/records/exercise.pb.h"
#include "core/records/person.pb.h"
#include "core/records/programme.pb.h"

namespace newel {

struct Fact {
  std::set<std::string> words;
  std::optional<double> number;
};
using RuleFacts = std::map<std::string, Fact>;

// person.level, person.knee, person.foot, person.mobility (number 0 to 4 and word "k2"), person.condition,
// person.aid, person.both_lost, person.rails, person.chairs (number), person.ramp, person.counter,
// person.rolling_chair, person.floor_space, person.someone_near, person.can_get_up, person.strong_side,
// person.has_prosthesis ... Answers are the words yes, no, not-known.
RuleFacts factsOf(const v1::Person& person);

// exercise.id, exercise.tag, exercise.position, exercise.equipment, exercise.purpose, exercise.usual_level,
// exercise.least_mobility, exercise.both_sides, entry.support, entry.prosthesis, entry.side_policy,
// entry.hold_s, entry.sets, entry.repetitions, entry.minutes, entry.passes (numbers).
RuleFacts factsOf(const v1::Entry& entry, const v1::Exercise& exercise);

// Later sets win; for putting person, entry, answers and history together.
RuleFacts merged(std::vector<RuleFacts> parts);

// Every name a rule may use.
const std::vector<std::string>& factNames();

}  // namespace newel
