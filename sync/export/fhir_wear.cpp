// The wear plan: a CarePlan that is part of the programmes that carry it, one activity a step. Where the
// person is in it comes from the same rule as everywhere else (core/schedule/wear_plan.h).
#include <absl/strings/str_cat.h>

#include <algorithm>
#include <cstddef>
#include <vector>

#include "core/schedule/wear_plan.h"
#include "core/time/local_day.h"
#include "sync/export/fhir_codes.h"
#include "sync/export/fhir_parts.h"
#include "sync/export/record_words.h"

namespace newel {
namespace {

// One plan with the programmes that carry it, by their places in the history.
struct Carried {
  const v1::WearPlan* plan = nullptr;
  std::vector<std::size_t> programmes;
  std::size_t last() const { return programmes.back(); }
};

std::vector<Carried> carriedPlans(const PersonHistory& history) {
  std::vector<Carried> plans;
  for (std::size_t i = 0; i < history.programmes.size(); ++i) {
    const v1::Programme& programme = history.programmes[i].programme;
    if (!programme.has_wear_plan()) continue;
    if (plans.empty() || plans.back().plan->id() != programme.wear_plan().id())
      plans.push_back({&programme.wear_plan(), {}});
    plans.back().programmes.push_back(i);
  }
  return plans;
}

// What became of the plan and where in it the person is; `over`: it counts no more.
struct Standing {
  std::string status;
  bool over = false;
  WearDay day;
};

Standing standingOf(const PersonHistory& history, const Carried& carried) {
  const ProgrammeState state = programmeState(history, carried.last());
  Standing standing;
  standing.over = state == ProgrammeState::Replaced || state == ProgrammeState::Completed;
  const absl::CivilDay today = *parseLocalDay(localDayOf(history, history.as_of));
  const absl::CivilDay on = standing.over ? std::min(today, lastCountingDay(history, carried.last())) : today;
  // A record that came from a file may hold blocks that the rule refuses; then nobody knows the step.
  standing.day = wearDay(*carried.plan, history.wear_blocks, on).value_or(WearDay{});
  standing.status = state == ProgrammeState::Replaced        ? "revoked"
                    : state == ProgrammeState::Completed     ? "completed"
                    : standing.day.gate == WearGate::StayOff ? "on-hold"
                                                             : "active";
  return standing;
}

// FHIR R4, value set care-plan-activity-status.
const char* stepStatus(const Standing& standing, const v1::WearPlan& plan, std::size_t step) {
  if (step < plan.first_step()) return "cancelled";  // the plan begins behind it
  if (standing.day.gate == WearGate::NotBegun) return standing.over ? "cancelled" : "not-started";
  if (step < standing.day.step) return "completed";
  const bool here = step == standing.day.step;
  if (standing.over) return here ? "stopped" : "cancelled";
  if (here) return standing.day.gate == WearGate::StayOff ? "on-hold" : "in-progress";
  // Nothing goes further until the clinic's next plan.
  const bool waits = standing.day.gate == WearGate::StayOff || standing.day.gate == WearGate::NoIncrease;
  return waits ? "on-hold" : "not-started";
}

std::string stepWords(const v1::WearStep& step) {
  std::string words = absl::StrCat("For ", step.days(), step.days() == 1 ? " good day: " : " good days: ");
  if (step.all_day()) return words + "all day, no limit";
  return absl::StrCat(words, step.blocks(), step.blocks() == 1 ? " time" : " times", " a day, ",
                      step.block_min(), " minutes each");
}

Json stepOf(const FhirWork& work, const Standing& standing, const v1::WearPlan& plan, int index) {
  const v1::WearStep& step = plan.steps(index);
  Json parts = Json::array({part("days", "valueInteger", step.days())});
  if (step.all_day()) {
    parts.push_back(part("all_day", "valueBoolean", true));
  } else {
    parts.push_back(part("blocks", "valueInteger", step.blocks()));
    parts.push_back(part("block_min", "valueInteger", step.block_min()));
  }
  Json detail;
  detail["extension"] = Json::array({partsExtension("wear-step", std::move(parts))});
  detail["code"] = codeConcept(codeSystemUrl("event"), "wear-step",
                               absl::StrCat("Wearing the prosthesis, step ", index + 1));
  detail["status"] = stepStatus(standing, plan, static_cast<std::size_t>(index));
  if (!step.all_day()) {
    detail["scheduledTiming"] = {{"repeat",
                                  {{"duration", step.block_min()},
                                   {"durationUnit", "min"},
                                   {"frequency", step.blocks()},
                                   {"period", 1},
                                   {"periodUnit", "d"}}}};
  }
  detail["performer"] = work.patients;
  const std::string activity = fhirText(freeWords(work, step.activity()));
  detail["description"] = activity.empty() ? stepWords(step) : absl::StrCat(stepWords(step), ". ", activity);
  return {{"detail", std::move(detail)}};
}

Json limitsOf(const v1::WearPlan& plan) {
  Json parts = Json::array();
  parts.push_back(part("first_step", "valueInteger", plan.first_step()));
  parts.push_back(part("off_min", "valueInteger", plan.off_min()));
  parts.push_back(part("grace_min", "valueInteger", plan.grace_min()));
  parts.push_back(part("redness_min", "valueInteger", plan.redness_min()));
  parts.push_back(
      part("redness_action", "valueCode", enumWord(v1::RednessAction_descriptor(), plan.redness_action())));
  parts.push_back(part("zone", "valueCode", plan.zone()));
  return partsExtension("wear-plan", std::move(parts));
}

void addPlan(FhirWork& work, const Carried& carried, const v1::WearPlan* before) {
  const v1::WearPlan& plan = *carried.plan;
  const Standing standing = standingOf(work.history, carried);
  Json json = resource("CarePlan", plan.id());
  json["meta"] = {{"versionId", std::to_string(plan.number())}};
  json["extension"] = Json::array({limitsOf(plan)});
  json["identifier"] = Json::array({identifier(identifierUrl("wear-plan"), plan.id())});
  if (before != nullptr) json["replaces"] = Json::array({reference(before->id())});
  Json whole = Json::array();
  for (const std::size_t i : carried.programmes)
    whole.push_back(reference(work.history.programmes[i].programme.id()));
  json["partOf"] = std::move(whole);
  json["status"] = standing.status;
  json["intent"] = "plan";
  json["title"] = absl::StrCat("Wear plan ", plan.number());
  json["subject"] = work.patient;
  json["period"] = {{"start", plan.effective_day()}};
  const std::string end = formatLocalDay(lastCountingDay(work.history, carried.last()));
  if (standing.over && end >= plan.effective_day()) json["period"]["end"] = end;
  json["created"] = isoInstant(toTime(plan.issued_at()));
  json["author"] = practitioner(plan.signer_id(), freeWords(work, plan.signer_name()));
  Json steps = Json::array();
  for (int i = 0; i < plan.steps_size(); ++i) steps.push_back(stepOf(work, standing, plan, i));
  json["activity"] = std::move(steps);
  const std::string note = fhirText(freeWords(work, plan.note()));
  if (!note.empty()) json["note"] = Json::array({annotation(note, toTime(plan.issued_at()))});
  work.bundle.add(json);
}

}  // namespace

void addWearPlans(FhirWork& work) {
  const v1::WearPlan* before = nullptr;
  for (const auto& carried : carriedPlans(work.history)) {
    addPlan(work, carried, before);
    before = carried.plan;
  }
}

}  // namespace newel
