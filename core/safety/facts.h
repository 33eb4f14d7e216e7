// What a rule may look at: named facts, each a set of words and perhaps a number. A rule is given facts and
// never asks where they come from. The list of names is in fact_table.cpp, one table; a rule naming another,
// or a word that the fact can never carry, fails the build.
// Not here: what follows from a fact. That is in the rules (core/safety/rules).
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/library/catalogue.h"
#include "core/records/exercise.pb.h"
#include "core/records/person.pb.h"
#include "core/records/practice.pb.h"
#include "core/records/programme.pb.h"

namespace newel {

struct Fact {
  std::set<std::string> words;
  std::optional<double> number;
};
using RuleFacts = std::map<std::string, Fact>;

// Words of an enumeration value in rules: lower case, hyphens, without the enumeration's prefix
// (LIMB_LOSS_LEVEL_PARTIAL_FOOT is "partial-foot"). A value this program does not know is "unknown".
std::string wordOf(const google::protobuf::EnumDescriptor& type, int value);

// person.level, person.knee, person.foot, person.mobility (number 0 to 4 and word "k2"), person.condition,
// person.aid, person.both_lost, person.rails, person.chairs (number), person.ramp, person.counter,
// person.rolling_chair, person.floor_space, person.someone_near, person.can_get_up, person.strong_side,
// person.has_prosthesis (yes: a lost limb has one; no: a lost limb has none; both words may hold),
// person.low_vision, person.hard_of_hearing. Answers are the words yes, no, not-known.
RuleFacts factsOf(const v1::Person& person);

// exercise.id, exercise.tag, exercise.position, exercise.equipment, exercise.purpose, exercise.usual_level,
// exercise.least_mobility (number and word), exercise.both_sides, exercise.dose_kind, exercise.leads (yes: a
// phase needs to know which leg is sound or stronger), exercise.own (yes: written by the clinic),
// entry.support, entry.prosthesis, entry.side_policy, entry.hold_s, entry.sets, entry.repetitions,
// entry.minutes, entry.passes, entry.pain_stop, entry.pain_rise (numbers; absent where the dose or the entry
// has none).
RuleFacts factsOf(const v1::Entry& entry, const v1::Exercise& exercise);

// How entry and person fit, where a rule would have to compare two facts: fit.usual_level (yes when every
// lost limb's level is usual for the exercise), fit.mobility_short (levels missing, 0 when enough),
// fit.chairs_short (sturdy chairs missing, 0 when enough), fit.support_offered, fit.prosthesis_offered,
// fit.side_policy_offered (yes when the exercise lists what the entry asks for), fit.rail_going_down
// (prosthetic-side, sound-side, both, none, not-known; for a person who lost one limb).
RuleFacts fitFacts(const v1::Person& person, const v1::Entry& entry, const v1::Exercise& exercise);

// The entries of one practice together: today.tag, today.prosthesis, today.entries. An entry whose exercise
// is not in `catalogue` adds its prosthesis only.
RuleFacts todayFacts(const std::vector<v1::Entry>& entries, const Catalogue& catalogue);

// stop.reason, the enumeration's word, for example "chest-pain". Nothing for UNSPECIFIED.
RuleFacts stopFacts(v1::StopReason reason);

// rating.pain, rating.pain_before, rating.pain_rise (0 when pain fell), rating.effort, threshold.pain_stop,
// threshold.pain_rise, and what rules read: rating.over_stop (pain passes pain_stop: 5 stops at 6, not at 5)
// and rating.over_rise (pain rose by pain_rise or more). What was not rated gives no fact, so neither word.
// For pain before the first exercise, give the same number as before and now.
RuleFacts ratingFacts(std::optional<std::uint32_t> pain_before, std::optional<std::uint32_t> pain_now,
                      std::optional<std::uint32_t> effort, const v1::StopThresholds& thresholds);

// The thresholds that count for an entry: its own, or the programme's.
const v1::StopThresholds& thresholdsOf(const v1::Programme& programme, const v1::Entry& entry);

// What is known of the practices before this one. Nothing known leaves the numbers out.
struct PracticeHistory {
  std::optional<int> days_since_last_practice;  // nullopt: no practice yet
  std::optional<std::uint32_t> last_pain;       // the highest rating of the last practice, 0 to 10
  bool red_flag_open = false;                   // see core/safety/practice_history.h
  bool fell_since_last = false;                 // told outside a practice
};
// history.days_since_last_practice, history.last_pain, history.red_flag_open, history.first_practice,
// history.fell_since_last.
RuleFacts historyFacts(const PracticeHistory& history);

// answer.<question id>: the choice, for each answer given.
RuleFacts answerFacts(const std::vector<v1::ReadyAnswer>& answers);

// Later sets win; for putting person, entry, answers and history together.
RuleFacts merged(const std::vector<RuleFacts>& parts);

// Every name a rule may use, in alphabetical order. Besides these, "answer.<question id>" for every question
// of the rule book.
const std::vector<std::string>& factNames();

// Empty when a rule may look for `word` in `fact`; otherwise why not. `fact` is not an answer.
std::string whyNotWord(const std::string& fact, const std::string& word, const Catalogue& catalogue);
// Empty when a rule may compare the number of `fact`; otherwise why not.
std::string whyNotNumber(const std::string& fact);

// True when exercises can be tagged so: the catalogue has a phrase "tag.<word>" for it. A tag is data.
bool isTag(const std::string& word, const Catalogue& catalogue);

}  // namespace newel
