// What an entry is to come to before its next step: the therapist's rule of progression as a Goal. Whether it
// was reached is a judgement that the record does not hold, so no achievementStatus is said.
#include <absl/strings/str_cat.h>

#include <cstdint>
#include <utility>

#include "sync/export/fhir_codes.h"
#include "sync/export/fhir_parts.h"
#include "sync/export/record_words.h"

namespace newel {
namespace {

// Of the last set, per side; 0: the dose counts no repetitions, and all of it is the goal.
std::uint32_t goalRepetitions(const v1::Entry& entry) {
  if (!entry.dose().has_sets()) return 0;
  const v1::ProgressionRule& rule = entry.progression();
  const std::uint32_t asked =
      rule.goal_repetitions() > 0 ? rule.goal_repetitions() : entry.dose().sets().repetitions();
  return asked + rule.repetitions_over_goal();
}

std::string goalWords(const std::string& title, const v1::Entry& entry) {
  const v1::ProgressionRule& rule = entry.progression();
  const std::uint32_t repetitions = goalRepetitions(entry);
  std::string words = repetitions > 0 ? absl::StrCat(title, ": ", repetitions, " repetitions in the last set")
                                      : absl::StrCat(title, ": all of the dose");
  absl::StrAppend(&words, ", effort at most ", rule.effort_at_most_0_10(),
                  " of 10, pain after at most pain before");
  if (rule.pain_rise_at_most_0_10() > 0) absl::StrAppend(&words, " and ", rule.pain_rise_at_most_0_10());
  absl::StrAppend(&words, "; ", rule.practices(),
                  rule.practices() == 1 ? " practice" : " practices in a row");
  if (rule.nothing_missed()) absl::StrAppend(&words, ", none missed");
  return words;
}

// FHIR R4, value set goal-status; "completed" is for a goal that is no longer sought, reached or not.
const char* lifecycleOf(ProgrammeState state, bool held) {
  if (state == ProgrammeState::NotBegun) return "planned";
  if (state == ProgrammeState::Active) return held ? "on-hold" : "active";
  return "completed";
}

}  // namespace

std::string goalId(const v1::Programme& programme, const v1::Entry& entry) {
  return derivedId(programme.id(), "goal/" + entry.id());
}

Json progressionExtension(const v1::ProgressionRule& rule) {
  Json parts = Json::array();
  const auto add = [&parts](const char* name, std::uint32_t value) {
    parts.push_back(part(name, "valueInteger", value));
  };
  add("practices", rule.practices());
  add("goal_repetitions", rule.goal_repetitions());
  add("repetitions_over_goal", rule.repetitions_over_goal());
  add("effort_at_most_0_10", rule.effort_at_most_0_10());
  add("pain_rise_at_most_0_10", rule.pain_rise_at_most_0_10());
  parts.push_back(part("nothing_missed", "valueBoolean", rule.nothing_missed()));
  add("step_back_practices", rule.step_back_practices());
  add("step_back_pain_rise_0_10", rule.step_back_pain_rise_0_10());
  add("step_back_done_percent", rule.step_back_done_percent());
  return partsExtension("progression", std::move(parts));
}

void addGoal(FhirWork& work, std::size_t index, const v1::Entry& entry, bool held) {
  const v1::Programme& programme = work.history.programmes[index].programme;
  Json json = resource("Goal", goalId(programme, entry));
  json["extension"] = Json::array({progressionExtension(entry.progression())});
  json["lifecycleStatus"] = lifecycleOf(programmeState(work.history, index), held);
  const std::string title = exerciseTitle(entry.exercise_id(), entry.exercise_revision(), &programme, "en");
  json["description"] = textConcept(goalWords(title, entry));
  json["subject"] = work.patient;
  json["startDate"] = programme.effective_day();
  const std::uint32_t repetitions = goalRepetitions(entry);
  if (repetitions > 0) {
    json["target"] = Json::array({{{"measure", codeConcept(codeSystemUrl("event"), "repetitions-last-set",
                                                           "Repetitions in the last set, each side")},
                                   {"detailQuantity", quantity(repetitions, "", "{#}")}}});
  }
  json["expressedBy"] = practitioner(programme.signer_id(), freeWords(work, programme.signer_name()));
  work.bundle.add(json);
}

}  // namespace newel
