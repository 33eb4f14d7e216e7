#include "core/safety/facts.h"

#include <algorithm>

#include "core/records/check.h"

namespace newel {
namespace {

Fact word(const std::string& value) { return {{value}, std::nullopt}; }
Fact number(double value) { return {{}, value}; }
Fact yesNo(bool yes) { return word(yes ? "yes" : "no"); }

Fact answer(v1::Answer value) {
  // An answer that is missing is one nobody gave.
  return word(value == v1::ANSWER_UNSPECIFIED ? "not-known" : wordOf(*v1::Answer_descriptor(), value));
}

Fact mobility(v1::MobilityLevel level) {
  if (level == v1::MOBILITY_LEVEL_UNSPECIFIED) return {};
  return {{wordOf(*v1::MobilityLevel_descriptor(), level)},
          static_cast<double>(level - v1::MOBILITY_LEVEL_K0)};
}

bool needsToKnowTheStrongLeg(const v1::Exercise& exercise) {
  for (const auto& part : exercise.parts()) {
    for (const auto& phase : part.phases()) {
      switch (phase.moves()) {
        case v1::LIMB_ROLE_PROSTHETIC:
        case v1::LIMB_ROLE_SOUND:
        case v1::LIMB_ROLE_STRONGER:
        case v1::LIMB_ROLE_WEAKER:
          return true;
        default:
          break;
      }
    }
  }
  return false;
}

int chairsNeeded(const v1::Exercise& exercise) {
  int needed = 0;
  for (const int item : exercise.equipment()) {
    if (item == v1::EQUIPMENT_CHAIR) needed = std::max(needed, 1);
    if (item == v1::EQUIPMENT_TWO_CHAIRS) needed = std::max(needed, 2);
  }
  return needed;
}

// Rails are recorded as seen going up; going down they change hands.
std::string railGoingDown(const v1::Person& person) {
  switch (person.home().rails()) {
    case v1::RAILS_BOTH:
      return "both";
    case v1::RAILS_NONE:
    case v1::RAILS_NO_STAIRS:
      return "none";
    case v1::RAILS_LEFT_GOING_UP:
      return person.limbs(0).side() == v1::SIDE_RIGHT ? "prosthetic-side" : "sound-side";
    case v1::RAILS_RIGHT_GOING_UP:
      return person.limbs(0).side() == v1::SIDE_LEFT ? "prosthetic-side" : "sound-side";
    default:
      return "not-known";
  }
}

void addDose(RuleFacts& facts, const v1::Dose& dose) {
  switch (dose.kind_case()) {
    case v1::Dose::kSets:
      facts["entry.sets"] = number(dose.sets().sets());
      facts["entry.repetitions"] = number(dose.sets().repetitions());
      facts["entry.hold_s"] = number(dose.sets().hold_s());
      break;
    case v1::Dose::kMinutes:
      facts["entry.minutes"] = number(static_cast<double>(dose.minutes().minutes()) * dose.minutes().bouts());
      break;
    case v1::Dose::kPasses:
      facts["entry.passes"] = number(dose.passes().passes());
      break;
    case v1::Dose::KIND_NOT_SET:
      break;
  }
}

template <typename Values>
bool contains(const Values& values, int value) {
  return std::find(values.begin(), values.end(), value) != values.end();
}

template <typename Values>
Fact wordsOf(const Values& values, const google::protobuf::EnumDescriptor& type) {
  Fact fact;
  for (const int value : values) fact.words.insert(wordOf(type, value));
  return fact;
}

}  // namespace

RuleFacts factsOf(const v1::Person& person) {
  RuleFacts facts;
  for (const auto& limb : person.limbs()) {
    facts["person.level"].words.insert(wordOf(*v1::LimbLossLevel_descriptor(), limb.level()));
    facts["person.knee"].words.insert(wordOf(*v1::KneeKind_descriptor(), limb.knee()));
    facts["person.foot"].words.insert(wordOf(*v1::FootKind_descriptor(), limb.foot()));
    facts["person.has_prosthesis"].words.insert(limb.has_prosthesis() ? "yes" : "no");
  }
  facts["person.both_lost"] = yesNo(person.limbs_size() > 1);
  facts["person.strong_side"] = word(person.strong_side() == v1::SIDE_UNSPECIFIED
                                         ? "none"
                                         : wordOf(*v1::Side_descriptor(), person.strong_side()));
  facts["person.mobility"] = mobility(person.mobility());
  facts["person.condition"] = wordsOf(person.conditions(), *v1::Condition_descriptor());
  facts["person.aid"] = word(wordOf(*v1::WalkingAid_descriptor(), person.walking_aid()));
  const v1::Home& home = person.home();
  facts["person.rails"] = word(
      home.rails() == v1::RAILS_UNSPECIFIED ? "not-known" : wordOf(*v1::Rails_descriptor(), home.rails()));
  facts["person.chairs"] = number(home.sturdy_chairs());
  facts["person.ramp"] = answer(home.ramp());
  facts["person.counter"] = answer(home.counter());
  facts["person.rolling_chair"] = answer(home.rolling_chair());
  facts["person.floor_space"] = answer(home.floor_space());
  facts["person.someone_near"] = answer(home.someone_near());
  facts["person.can_get_up"] = answer(person.can_get_up_from_floor());
  facts["person.low_vision"] = answer(person.senses().low_vision());
  facts["person.hard_of_hearing"] = answer(person.senses().hard_of_hearing());
  return facts;
}

RuleFacts factsOf(const v1::Entry& entry, const v1::Exercise& exercise) {
  RuleFacts facts;
  facts["exercise.id"] = word(exercise.id());
  facts["exercise.tag"].words = {exercise.tags().begin(), exercise.tags().end()};
  facts["exercise.position"] = word(wordOf(*v1::Position_descriptor(), exercise.position()));
  facts["exercise.equipment"] = wordsOf(exercise.equipment(), *v1::Equipment_descriptor());
  facts["exercise.purpose"] = word(wordOf(*v1::Purpose_descriptor(), exercise.purpose()));
  facts["exercise.usual_level"] = wordsOf(exercise.fit().usual_levels(), *v1::LimbLossLevel_descriptor());
  facts["exercise.least_mobility"] = mobility(exercise.fit().least_mobility());
  facts["exercise.both_sides"] = word(wordOf(*v1::BothSides_descriptor(), exercise.both_sides()));
  facts["exercise.dose_kind"] = word(wordOf(*v1::DoseKind_descriptor(), exercise.dose_kind()));
  facts["exercise.leads"] = yesNo(needsToKnowTheStrongLeg(exercise));
  facts["exercise.own"] = yesNo(isOwnExerciseId(exercise.id()));
  facts["entry.support"] = word(wordOf(*v1::Support_descriptor(), entry.support()));
  facts["entry.prosthesis"] = word(wordOf(*v1::ProsthesisUse_descriptor(), entry.prosthesis()));
  facts["entry.side_policy"] = word(wordOf(*v1::SidePolicy_descriptor(), entry.side_policy()));
  addDose(facts, entry.dose());
  if (entry.has_thresholds()) {
    facts["entry.pain_stop"] = number(entry.thresholds().pain_stop_0_10());
    facts["entry.pain_rise"] = number(entry.thresholds().pain_rise_0_10());
  }
  return facts;
}

RuleFacts fitFacts(const v1::Person& person, const v1::Entry& entry, const v1::Exercise& exercise) {
  RuleFacts facts;
  bool usual = true;
  for (const auto& limb : person.limbs())
    usual = usual && contains(exercise.fit().usual_levels(), limb.level());
  facts["fit.usual_level"] = yesNo(usual);
  facts["fit.mobility_short"] = number(std::max(0, exercise.fit().least_mobility() - person.mobility()));
  facts["fit.chairs_short"] =
      number(std::max(0, chairsNeeded(exercise) - static_cast<int>(person.home().sturdy_chairs())));
  facts["fit.support_offered"] = yesNo(contains(exercise.supports(), entry.support()));
  facts["fit.prosthesis_offered"] = yesNo(exercise.prosthesis() == v1::PROSTHESIS_USE_EITHER ||
                                          exercise.prosthesis() == entry.prosthesis());
  facts["fit.side_policy_offered"] = yesNo(contains(exercise.side_policies(), entry.side_policy()));
  if (person.limbs_size() == 1) facts["fit.rail_going_down"] = word(railGoingDown(person));
  return facts;
}

RuleFacts todayFacts(const std::vector<v1::Entry>& entries, const Catalogue& catalogue) {
  RuleFacts facts;
  facts["today.entries"] = number(static_cast<double>(entries.size()));
  Fact& tags = facts["today.tag"];
  Fact& prosthesis = facts["today.prosthesis"];
  for (const auto& entry : entries) {
    prosthesis.words.insert(wordOf(*v1::ProsthesisUse_descriptor(), entry.prosthesis()));
    const v1::Exercise* exercise = catalogue.find(entry.exercise_id(), entry.exercise_revision());
    if (exercise != nullptr) tags.words.insert(exercise->tags().begin(), exercise->tags().end());
  }
  return facts;
}

RuleFacts stopFacts(v1::StopReason reason) {
  if (reason == v1::STOP_REASON_UNSPECIFIED) return {};
  return {{"stop.reason", word(wordOf(*v1::StopReason_descriptor(), reason))}};
}

RuleFacts ratingFacts(std::optional<std::uint32_t> pain_before, std::optional<std::uint32_t> pain_now,
                      std::optional<std::uint32_t> effort, const v1::StopThresholds& thresholds) {
  RuleFacts facts;
  facts["threshold.pain_stop"] = number(thresholds.pain_stop_0_10());
  facts["threshold.pain_rise"] = number(thresholds.pain_rise_0_10());
  if (effort) facts["rating.effort"] = number(*effort);
  if (pain_before) facts["rating.pain_before"] = number(*pain_before);
  if (pain_now) {
    facts["rating.pain"] = number(*pain_now);
    facts["rating.over_stop"] = yesNo(*pain_now > thresholds.pain_stop_0_10());
  }
  if (pain_before && pain_now) {
    const std::uint32_t rise = *pain_now > *pain_before ? *pain_now - *pain_before : 0;
    facts["rating.pain_rise"] = number(rise);
    // A threshold of 0 is not one that check() lets through; it must not turn "no rise" into a stop.
    facts["rating.over_rise"] = yesNo(rise > 0 && rise >= thresholds.pain_rise_0_10());
  }
  return facts;
}

const v1::StopThresholds& thresholdsOf(const v1::Programme& programme, const v1::Entry& entry) {
  return entry.has_thresholds() ? entry.thresholds() : programme.thresholds();
}

RuleFacts historyFacts(const PracticeHistory& history) {
  RuleFacts facts;
  if (history.days_since_last_practice) {
    facts["history.days_since_last_practice"] = number(*history.days_since_last_practice);
  }
  if (history.last_pain) facts["history.last_pain"] = number(*history.last_pain);
  facts["history.red_flag_open"] = yesNo(history.red_flag_open);
  facts["history.first_practice"] = yesNo(!history.days_since_last_practice.has_value());
  facts["history.fell_since_last"] = yesNo(history.fell_since_last);
  return facts;
}

RuleFacts answerFacts(const std::vector<v1::ReadyAnswer>& answers) {
  RuleFacts facts;
  for (const auto& given : answers) facts["answer." + given.question_id()] = word(given.answer_id());
  return facts;
}

RuleFacts merged(const std::vector<RuleFacts>& parts) {
  RuleFacts all;
  for (const auto& part : parts) {
    for (const auto& [name, fact] : part) all[name] = fact;
  }
  return all;
}

}  // namespace newel
