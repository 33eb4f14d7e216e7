// The parts of fhir_bundle.h, each writing its resources. For sync/export alone.
#pragma once

#include <map>
#include <set>
#include <string>
#include <tuple>

#include "core/safety/rule_book.h"
#include "sync/export/export_options.h"
#include "sync/export/fhir_json.h"
#include "sync/export/person_history.h"

namespace newel {

using OccasionKey = std::tuple<std::string, std::string, std::uint32_t>;  // entry, local day, window

struct FhirWork {
  const PersonHistory& history;
  const ExportOptions& options;
  const RuleBook& rules;
  Json patient;   // a reference, written()
  Json patients;  // a list of it alone
  BundleText bundle{};
  std::set<std::string> exercises{};   // ids of ActivityDefinitions that are there
  std::map<std::string, Json> kept{};  // concepts, written()
  std::set<OccasionKey> practised{};   // occasions that a practice tells of, whatever came of them
};

// The id of an entry's ServiceRequest in one programme.
std::string requestId(const v1::Programme& programme, const v1::Entry& entry);
// The same by a practice's words; empty: no such programme or entry is here.
std::string requestIdOf(const FhirWork& work, std::uint32_t programme_number, const std::string& entry_id);
// `words`, or nothing where free words were not asked for.
std::string freeWords(const FhirWork& work, const std::string& words);
// An exercise as ActivityDefinition; `programme` has the clinic's own ones, and may be nullptr.
Json exerciseDefinition(const std::string& exercise_id, std::uint32_t revision,
                        const v1::Programme* programme);
Json doseExtension(const v1::Dose& dose);
Json exerciseConcept(const std::string& exercise_id, std::uint32_t revision, const v1::Programme* programme);
const v1::Programme* programmeOf(const FhirWork& work, std::uint32_t number);

// fhir_timing.cpp: occurrenceTiming of an entry.
Json timingOf(const v1::Programme& programme, const v1::Entry& entry);
// The same with no day to begin on, for so many weeks.
Json templateTimingOf(const v1::Schedule& schedule, std::uint32_t weeks);

// Whether a hold order that stands now holds everything, or this entry.
bool heldWhole(const FhirWork& work);
bool heldNow(const FhirWork& work, const std::string& entry_id);

void addPatient(FhirWork& work);
void addProgramme(FhirWork& work,
                  std::size_t index);  // CarePlan, ServiceRequests, Goals, Provenance, overridden asks
// fhir_goals.cpp; `entry` has a rule of progression.
std::string goalId(const v1::Programme& programme, const v1::Entry& entry);
Json progressionExtension(const v1::ProgressionRule& rule);
void addGoal(FhirWork& work, std::size_t index, const v1::Entry& entry, bool held);
void addQuestionnaire(FhirWork& work);
void addPractice(FhirWork& work, const v1::Practice& practice);
// After every practice: what nobody did.
absl::Status addMissed(FhirWork& work);
void addPracticeEvents(FhirWork& work, const v1::Practice& practice);  // falls, red flags, skin
// A warning that stands until the clinic speaks.
void addOpenSkin(FhirWork& work, const std::string& id, const std::string& words, absl::Time told_at);
void addStandingWounds(FhirWork& work);
void addHold(FhirWork& work, const KeptHold& hold);
void addMessage(FhirWork& work, const KeptMessage& message);
void addMeasure(FhirWork& work, const v1::Measure& measure);
void addWearBlock(FhirWork& work, const v1::WearBlock& block);
void addWearPlans(FhirWork& work);
void addPhone(FhirWork& work, const PairedPhone& phone);
void addAuditLine(FhirWork& work, const AuditLine& line);
// A measure's kind: the open code where one is known, and ours beside it.
Json measureConcept(const std::string& id);

// The version of the ready check's questions, by their content.
std::string readyCheckVersion(const RuleBook& rules);
// A person's answer as FHIR has it: {"valueCoding": ...}
Json answerCoding(const RuleBook& rules, const std::string& question_id, const std::string& answer_id);

// An event's concept of ours, written(), with `loinc` before it where that is not empty.
const Json& eventConcept(FhirWork& work, const std::string& code, const std::string& words,
                         const std::string& loinc = "");

// An Observation with its head: id, status, category, code, subject.
Json observation(FhirWork& work, const std::string& id, const char* category, Json code);

}  // namespace newel
