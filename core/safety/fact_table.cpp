#include <google/protobuf/descriptor.h>

#include <algorithm>

#include "core/safety/facts.h"

namespace newel {
namespace {

using google::protobuf::EnumDescriptor;

std::set<std::string> wordsOf(const EnumDescriptor* type) {
  std::set<std::string> words;
  for (int i = 0; i < type->value_count(); ++i) {
    if (type->value(i)->number() != 0) words.insert(wordOf(*type, type->value(i)->number()));
  }
  return words;
}

std::set<std::string> operator-(std::set<std::string> words, const std::string& word) {
  words.erase(word);
  return words;
}

struct FactKind {
  std::set<std::string> words;  // empty: the fact carries no words, unless any_key
  bool any_key = false;         // words are ids that this table cannot know
  bool number = false;
  bool tag = false;  // of an exercise: the catalogue knows which there are
};

FactKind words(std::set<std::string> list) { return {std::move(list), false, false, false}; }
FactKind wordsAndNumber(std::set<std::string> list) { return {std::move(list), false, true, false}; }
FactKind ids() { return {{}, true, false, false}; }
FactKind tags() { return {{}, true, false, true}; }
FactKind number() { return {{}, false, true, false}; }
FactKind yesNo() { return words({"yes", "no"}); }
FactKind answer() { return words({"yes", "no", "not-known"}); }

std::map<std::string, FactKind> personFacts() {
  return {
      {"person.level", words(wordsOf(v1::LimbLossLevel_descriptor()))},
      {"person.knee", words(wordsOf(v1::KneeKind_descriptor()))},
      {"person.foot", words(wordsOf(v1::FootKind_descriptor()))},
      {"person.mobility", wordsAndNumber(wordsOf(v1::MobilityLevel_descriptor()))},
      {"person.condition", words(wordsOf(v1::Condition_descriptor()))},
      {"person.aid", words(wordsOf(v1::WalkingAid_descriptor()))},
      {"person.both_lost", yesNo()},
      {"person.rails", words(wordsOf(v1::Rails_descriptor()))},
      {"person.chairs", number()},
      {"person.ramp", answer()},
      {"person.counter", answer()},
      {"person.rolling_chair", answer()},
      {"person.floor_space", answer()},
      {"person.someone_near", answer()},
      {"person.can_get_up", answer()},
      {"person.strong_side", words({"left", "right", "none"})},
      {"person.has_prosthesis", yesNo()},
      {"person.low_vision", answer()},
      {"person.hard_of_hearing", answer()},
  };
}

std::map<std::string, FactKind> entryFacts() {
  return {
      {"exercise.id", ids()},
      {"exercise.tag", tags()},
      {"exercise.position", words(wordsOf(v1::Position_descriptor()))},
      {"exercise.equipment", words(wordsOf(v1::Equipment_descriptor()))},
      {"exercise.purpose", words(wordsOf(v1::Purpose_descriptor()))},
      {"exercise.usual_level", words(wordsOf(v1::LimbLossLevel_descriptor()))},
      {"exercise.least_mobility", wordsAndNumber(wordsOf(v1::MobilityLevel_descriptor()))},
      {"exercise.both_sides", words(wordsOf(v1::BothSides_descriptor()))},
      {"exercise.dose_kind", words(wordsOf(v1::DoseKind_descriptor()))},
      {"exercise.leads", yesNo()},
      {"exercise.own", yesNo()},
      {"entry.support", words(wordsOf(v1::Support_descriptor()))},
      {"entry.prosthesis", words(wordsOf(v1::ProsthesisUse_descriptor()) - "either")},
      {"entry.side_policy", words(wordsOf(v1::SidePolicy_descriptor()))},
      {"entry.hold_s", number()},
      {"entry.sets", number()},
      {"entry.repetitions", number()},
      {"entry.minutes", number()},
      {"entry.passes", number()},
      {"entry.pain_stop", number()},
      {"entry.pain_rise", number()},
      {"fit.usual_level", yesNo()},
      {"fit.mobility_short", number()},
      {"fit.chairs_short", number()},
      {"fit.support_offered", yesNo()},
      {"fit.prosthesis_offered", yesNo()},
      {"fit.side_policy_offered", yesNo()},
      {"fit.rail_going_down", words({"prosthetic-side", "sound-side", "both", "none", "not-known"})},
  };
}

std::map<std::string, FactKind> practiceFacts() {
  return {
      {"today.tag", tags()},
      {"today.prosthesis", words(wordsOf(v1::ProsthesisUse_descriptor()) - "either")},
      {"today.entries", number()},
      {"stop.reason", words(wordsOf(v1::StopReason_descriptor()))},
      {"rating.pain", number()},
      {"rating.pain_before", number()},
      {"rating.pain_rise", number()},
      {"rating.effort", number()},
      {"rating.over_stop", yesNo()},
      {"rating.over_rise", yesNo()},
      {"threshold.pain_stop", number()},
      {"threshold.pain_rise", number()},
      {"history.days_since_last_practice", number()},
      {"history.last_pain", number()},
      {"history.red_flag_open", yesNo()},
      {"history.first_practice", yesNo()},
      {"history.fell_since_last", yesNo()},
      // Worked out by core/review over a whole programme.
      {"programme.entries", number()},
      {"programme.exercises_per_day", number()},
      {"programme.minutes_per_day", number()},
      {"programme.minutes_rise_percent", number()},
      {"programme.muscle_gap_days", number()},
      {"programme.days", number()},
      {"programme.pain_stop", number()},
      {"programme.pain_rise", number()},
  };
}

const std::map<std::string, FactKind>& table() {
  static const std::map<std::string, FactKind> facts = [] {
    std::map<std::string, FactKind> all = personFacts();
    all.merge(entryFacts());
    all.merge(practiceFacts());
    return all;
  }();
  return facts;
}

}  // namespace

std::string wordOf(const EnumDescriptor& type, int value) {
  const auto* descriptor = type.FindValueByNumber(value);
  if (descriptor == nullptr) return "unknown";
  // The zero value is "<PREFIX>UNSPECIFIED" by the protobuf style guide.
  const std::string& zero = type.value(0)->name();
  const std::size_t prefix = zero.size() - std::string("UNSPECIFIED").size();
  std::string word = descriptor->name().substr(prefix);
  std::transform(word.begin(), word.end(), word.begin(), [](char c) {
    if (c == '_') return '-';
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  });
  return word;
}

bool isTag(const std::string& word, const Catalogue& catalogue) {
  return !catalogue.phrase("tag." + word, "en").empty();
}

const std::vector<std::string>& factNames() {
  static const std::vector<std::string> names = [] {
    std::vector<std::string> list;
    for (const auto& [name, kind] : table()) list.push_back(name);
    return list;
  }();
  return names;
}

std::string whyNotWord(const std::string& fact, const std::string& word, const Catalogue& catalogue) {
  const auto found = table().find(fact);
  if (found == table().end()) return "there is no fact \"" + fact + "\"";
  const FactKind& kind = found->second;
  if (kind.tag && !isTag(word, catalogue)) return "there is no tag \"" + word + "\"";
  if (kind.any_key || kind.words.contains(word)) return "";
  if (kind.words.empty()) return "\"" + fact + "\" is a number and has no words";
  return "\"" + fact + "\" is never \"" + word + "\"";
}

std::string whyNotNumber(const std::string& fact) {
  const auto found = table().find(fact);
  if (found == table().end()) return "there is no fact \"" + fact + "\"";
  return found->second.number ? "" : "\"" + fact + "\" has no number";
}

}  // namespace newel
