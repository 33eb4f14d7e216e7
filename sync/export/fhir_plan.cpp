// What was asked: Patient, exercises, programmes, entries, and who signed.
#include <absl/strings/escaping.h>
#include <absl/strings/str_cat.h>
#include <absl/strings/str_join.h>
#include <absl/strings/str_replace.h>

#include <algorithm>
#include <utility>

#include "core/library/dose_words.h"
#include "core/library/wording.h"
#include "core/progress/told_beside.h"
#include "core/time/local_day.h"
#include "sync/export/fhir_codes.h"
#include "sync/export/fhir_parts.h"
#include "sync/export/record_words.h"

namespace newel {
namespace {

// What ids of exercises are derived from; any fixed UUID would do.
constexpr char kExerciseNamespace[] = "0193a1c0-0000-7000-8000-4e6577656c01";

const v1::ExerciseWords* purposeOf(const std::string& id, std::uint32_t revision,
                                   const v1::Programme* programme) {
  if (programme != nullptr) {
    for (const auto& own : programme->own_exercises()) {
      if (own.exercise().id() == id && own.exercise().revision() == revision && !own.words().empty())
        return &own.words(0);
    }
  }
  return wordsOrEnglish(Catalogue::builtIn(), id, "en", revision);
}

void addExercise(FhirWork& work, const v1::Programme& programme, const v1::Entry& entry) {
  const Json json = exerciseDefinition(entry.exercise_id(), entry.exercise_revision(), &programme);
  if (work.exercises.insert(json.at("id").get<std::string>()).second) work.bundle.add(json);
}

const char* statusOf(ProgrammeState state, bool held) {
  if (state == ProgrammeState::Replaced) return "revoked";
  if (state == ProgrammeState::Completed) return "completed";
  return held ? "on-hold" : "active";
}

Json entryExtensions(const v1::Programme& programme, const v1::Entry& entry) {
  Json list = Json::array({doseExtension(entry.dose())});
  const auto code = [&list](const char* name, const std::string& word) {
    if (!word.empty()) list.push_back(extension(name, "valueCode", word));
  };
  code("side-policy", enumWord(v1::SidePolicy_descriptor(), entry.side_policy()));
  code("support", enumWord(v1::Support_descriptor(), entry.support()));
  code("prosthesis", enumWord(v1::ProsthesisUse_descriptor(), entry.prosthesis()));
  code("pacing", enumWord(v1::Pacing_descriptor(), entry.pacing()));
  code("rung", entry.rung_id());
  const v1::StopThresholds& stop = entry.has_thresholds() ? entry.thresholds() : programme.thresholds();
  list.push_back(
      partsExtension("stop", Json::array({part("pain_stop_0_10", "valueInteger", stop.pain_stop_0_10()),
                                          part("pain_rise_0_10", "valueInteger", stop.pain_rise_0_10())})));
  return list;
}

// "Left transtibial, right transfemoral limb loss": why this was asked for.
std::string reasonOf(const v1::Person& person) {
  const std::string limbs =
      absl::StrJoin(person.limbs(), ", ", [](std::string* out, const v1::LimbLoss& limb) {
        absl::StrAppend(out, enumWord(v1::Side_descriptor(), limb.side()), " ",
                        enumWord(v1::LimbLossLevel_descriptor(), limb.level()));
      });
  return absl::StrCat("Loss of lower limb: ", absl::StrReplaceAll(limbs, {{"-", " "}}));
}

std::string instructionOf(const FhirWork& work, const v1::Entry& entry) {
  const Catalogue& catalogue = Catalogue::builtIn();
  std::string words = doseWords(entry.dose(), entry.side_policy(), catalogue, "en");
  const std::string support =
      catalogue.phrase(phraseKey("support", v1::Support_Name(entry.support()), "SUPPORT_"), "en");
  if (!support.empty()) absl::StrAppend(&words, "; ", support);
  absl::StrAppend(&words,
                  entry.prosthesis() == v1::PROSTHESIS_USE_OFF ? "; prosthesis off" : "; prosthesis on");
  if (entry.schedule().rhythm_case() == v1::Schedule::kTimesPerWeek)
    absl::StrAppend(&words, "; on any ", entry.schedule().times_per_week(), " days of the week");
  const std::string note = freeWords(work, entry.note());
  return note.empty() ? words : absl::StrCat(words, ". ", note);
}

Json overrideNotes(const FhirWork& work, const v1::Programme& programme, const v1::Entry& entry) {
  Json notes = Json::array();
  for (const auto& reason : entry.overrides()) {
    const std::string words = fhirText(freeWords(work, reason.reason()));
    if (!words.empty())
      notes.push_back(annotation(absl::StrCat(reason.rule_id(), ": ", words), toTime(programme.issued_at())));
  }
  return notes;
}

void addRequest(FhirWork& work, std::size_t index, const v1::Entry& entry) {
  const v1::Programme& programme = work.history.programmes[index].programme;
  Json json = resource("ServiceRequest", requestId(programme, entry));
  json["extension"] = entryExtensions(programme, entry);
  if (entry.has_progression())
    json["extension"].push_back(
        {{"url", kPertainsToGoal}, {"valueReference", reference(goalId(programme, entry))}});
  json["identifier"] = Json::array({identifier(identifierUrl("entry"), entry.id())});
  json["instantiatesCanonical"] = Json::array({absl::StrCat(
      exerciseUrl(entry.exercise_id(), programme.clinic_id()), "|", entry.exercise_revision())});
  json["basedOn"] = Json::array({reference(programme.id())});
  if (index > 0) {
    const v1::Programme& before = work.history.programmes[index - 1].programme;
    const std::string replaced = requestIdOf(work, before.number(), entry.id());
    if (!replaced.empty()) json["replaces"] = Json::array({reference(replaced)});
  }
  json["status"] = statusOf(programmeState(work.history, index), heldNow(work, entry.id()));
  json["intent"] = "order";
  json["code"] = exerciseConcept(entry.exercise_id(), entry.exercise_revision(), &programme);
  json["subject"] = work.patient;
  json["occurrenceTiming"] = timingOf(programme, entry);
  json["authoredOn"] = isoInstant(toTime(programme.issued_at()));
  json["requester"] = practitioner(programme.signer_id(), freeWords(work, programme.signer_name()));
  json["performer"] = Json::array({work.patient});
  json["reasonCode"] = Json::array({textConcept(reasonOf(work.history.person))});
  const std::string side = sideWords(entry.side_policy(), work.history.person);
  if (!side.empty()) json["bodySite"] = Json::array({textConcept(side)});
  putList(json, "note", overrideNotes(work, programme, entry));
  putText(json, "patientInstruction", instructionOf(work, entry));
  work.bundle.add(json);
}

// A rule asked, and the therapist answered with a reason before signing.
void addOverrides(FhirWork& work, const v1::Programme& programme, const v1::Entry& entry) {
  for (const auto& given : entry.overrides()) {
    const v1::Rule* rule = work.rules.rule(given.rule_id());
    const std::string request = requestId(programme, entry);
    Json json = resource("DetectedIssue", derivedId(request, absl::StrCat("rule/", given.rule_id())));
    json["status"] = "final";
    json["code"] = codeConcept(codeSystemUrl("rule"), given.rule_id(), "");
    json["severity"] = "moderate";
    json["patient"] = work.patient;
    json["identifiedDateTime"] = isoInstant(toTime(programme.issued_at()));
    json["implicated"] = Json::array({reference(request)});
    if (rule != nullptr) putText(json, "detail", rule->words().at("en").therapist());
    const std::string reason = fhirText(freeWords(work, given.reason()));
    json["mitigation"] = Json::array(
        {{{"action",
           textConcept(reason.empty() ? "Prescribed with a written reason"
                                      : absl::StrCat("Prescribed with a written reason: ", reason))},
          {"date", isoInstant(toTime(programme.issued_at()))}}});
    work.bundle.add(json);
  }
}

Json planNotes(const FhirWork& work, const v1::Programme& programme) {
  Json notes = Json::array();
  for (const auto& words : {programme.advice(), programme.changes()}) {
    const std::string text = fhirText(freeWords(work, words));
    if (!text.empty()) notes.push_back(annotation(text, toTime(programme.issued_at())));
  }
  return notes;
}

void addSignature(FhirWork& work, const KeptProgramme& kept) {
  const v1::Programme& programme = kept.programme;
  const std::string at = isoInstant(toTime(programme.issued_at()));
  const Json who = practitioner(programme.signer_id(), freeWords(work, programme.signer_name()));
  Json json = resource("Provenance", derivedId(programme.id(), "signature"));
  json["target"] = Json::array({reference(programme.id())});
  json["recorded"] = at;
  json["agent"] = Json::array({{{"who", who}}});
  if (!kept.signature.empty()) {
    // Ed25519 over the programme as the clinic's hub keeps it, not over this file.
    Json signature;
    signature["extension"] = Json::array({extension("signing-key", "valueString", kept.key_id)});
    signature["type"] = Json::array({{{"system", kSignatureTypes}, {"code", kAuthorsSignature}}});
    signature["when"] = at;
    signature["who"] = who;
    signature["sigFormat"] = "application/octet-stream";
    signature["data"] = absl::Base64Escape(kept.signature);
    if (fhirText(kept.key_id).empty()) signature.erase("extension");
    json["signature"] = Json::array({std::move(signature)});
  }
  work.bundle.add(json);
}

// A name and a gender must be there, or it must be said why not: the hub keeps who it is apart ("masked", HL7
// data-absent-reason), and no record holds a gender.
void usPatient(Json& json) {
  json["meta"] = {{"profile", Json::array({kUsCorePatient})}};
  json["name"] =
      Json::array({{{"extension", Json::array({{{"url", kDataAbsent}, {"valueCode", "masked"}}})}}});
  json["gender"] = "unknown";
}

// The profile wants an author for each note, by a national number that no record here holds: a plan with
// notes claims nothing.
void usCarePlan(Json& json, const std::string& title, bool has_notes) {
  if (!has_notes) json["meta"]["profile"] = Json::array({usProfile("pa-careplan")});
  json["text"] = {{"status", "generated"},
                  {"div", absl::StrCat("<div xmlns=\"http://www.w3.org/1999/xhtml\">", title, "</div>")}};
  json["category"] = Json::array({codeConcept(kUsCarePlanCategory, "assess-plan", ""),
                                  codeConcept(kUsActivityCodes, "PhysicalActivity", "")});
}

// A measure that the clinic would like to take again, by its last day. Taken since: fulfilled.
Json askedMeasure(const FhirWork& work, const v1::Programme& programme, ProgrammeState state,
                  const v1::AskedMeasure& asked) {
  const auto wanted = measuresWanted(programme, work.history.measures);
  const bool open = std::any_of(wanted.begin(), wanted.end(),
                                [&](const MeasureDue& due) { return due.kind_id == asked.kind(); });
  const bool over = state == ProgrammeState::Replaced || state == ProgrammeState::Completed;
  Json detail;
  detail["code"] = measureConcept(asked.kind());
  detail["status"] = !open ? "completed" : over ? "cancelled" : "not-started";
  detail["scheduledPeriod"] = {{"end", asked.by_day()}};
  detail["description"] = "To be measured again at the clinic";
  return {{"detail", std::move(detail)}};
}

Json activitiesOf(const FhirWork& work, std::size_t index) {
  const v1::Programme& programme = work.history.programmes[index].programme;
  Json activity = Json::array();
  for (const auto& entry : programme.entries())
    activity.push_back({{"reference", reference(requestId(programme, entry))}});
  for (const auto& asked : programme.measures())
    activity.push_back(askedMeasure(work, programme, programmeState(work.history, index), asked));
  return activity;
}

Json goalsOf(const v1::Programme& programme) {
  Json goals = Json::array();
  for (const auto& entry : programme.entries()) {
    if (entry.has_progression()) goals.push_back(reference(goalId(programme, entry)));
  }
  return goals;
}

}  // namespace

Json doseExtension(const v1::Dose& dose) {
  Json parts = Json::array();
  const auto add = [&parts](const char* name, std::uint32_t value) {
    parts.push_back(part(name, "valueInteger", value));
  };
  if (dose.has_sets()) {
    parts.push_back(part("kind", "valueCode", "sets"));
    add("sets", dose.sets().sets());
    add("repetitions", dose.sets().repetitions());
    add("hold_s", dose.sets().hold_s());
    add("move_s", dose.sets().move_s());
    add("return_s", dose.sets().return_s());
    add("repetition_rest_s", dose.sets().repetition_rest_s());
    add("rest_s", dose.sets().rest_s());
  } else if (dose.has_minutes()) {
    parts.push_back(part("kind", "valueCode", "minutes"));
    add("minutes", dose.minutes().minutes());
    add("bouts", dose.minutes().bouts());
    add("rest_s", dose.minutes().rest_s());
  } else {
    parts.push_back(part("kind", "valueCode", "passes"));
    add("passes", dose.passes().passes());
    if (dose.passes().has_distance_m()) add("distance_m", dose.passes().distance_m());
    if (dose.passes().has_step_count()) add("step_count", dose.passes().step_count());
    add("step_s", dose.passes().step_s());
    add("rest_s", dose.passes().rest_s());
  }
  return partsExtension("dose", std::move(parts));
}

Json exerciseDefinition(const std::string& exercise_id, std::uint32_t revision,
                        const v1::Programme* programme) {
  const std::string version = std::to_string(revision);
  const std::string url = exerciseUrl(exercise_id, programme != nullptr ? programme->clinic_id() : "");
  Json json = resource("ActivityDefinition", derivedId(kExerciseNamespace, absl::StrCat(url, "|", version)));
  json["url"] = url;
  json["version"] = version;
  json["title"] = exerciseTitle(exercise_id, revision, programme, "en");
  json["status"] = "active";
  const auto* words = purposeOf(exercise_id, revision, programme);
  if (words != nullptr) putText(json, "description", words->purpose());
  json["kind"] = "ServiceRequest";
  json["code"] = exerciseConcept(exercise_id, revision, programme);
  return json;
}

bool heldNow(const FhirWork& work, const std::string& entry_id) {
  return std::any_of(work.history.holds.begin(), work.history.holds.end(), [&](const KeptHold& hold) {
    const auto& ids = hold.order.entry_ids();
    return standsNow(work.history, hold) &&
           (ids.empty() || std::find(ids.begin(), ids.end(), entry_id) != ids.end());
  });
}

bool heldWhole(const FhirWork& work) {
  return std::any_of(work.history.holds.begin(), work.history.holds.end(), [&](const KeptHold& hold) {
    return standsNow(work.history, hold) && hold.order.entry_ids().empty();
  });
}

std::string requestId(const v1::Programme& programme, const v1::Entry& entry) {
  return derivedId(programme.id(), "entry/" + entry.id());
}

const v1::Programme* programmeOf(const FhirWork& work, std::uint32_t number) {
  for (const auto& kept : work.history.programmes) {
    if (kept.programme.number() == number) return &kept.programme;
  }
  return nullptr;
}

std::string requestIdOf(const FhirWork& work, std::uint32_t programme_number, const std::string& entry_id) {
  const v1::Programme* programme = programmeOf(work, programme_number);
  if (programme == nullptr) return "";
  for (const auto& entry : programme->entries()) {
    if (entry.id() == entry_id) return requestId(*programme, entry);
  }
  return "";
}

std::string freeWords(const FhirWork& work, const std::string& words) {
  return work.options.with_words ? words : "";
}

Json exerciseConcept(const std::string& exercise_id, std::uint32_t revision, const v1::Programme* programme) {
  return codeConcept(codeSystemUrl("exercise"), exercise_id,
                     exerciseTitle(exercise_id, revision, programme, "en"));
}

void addPatient(FhirWork& work) {
  Json json = resource("Patient", work.history.person.id());
  json["identifier"] = Json::array({identifier(identifierUrl("person"), work.history.person.id())});
  if (work.options.us_profiles) usPatient(json);
  work.bundle.add(json);
}

void addProgramme(FhirWork& work, std::size_t index) {
  const KeptProgramme& kept = work.history.programmes[index];
  const v1::Programme& programme = kept.programme;
  for (const auto& entry : programme.entries()) addExercise(work, programme, entry);
  Json json = resource("CarePlan", programme.id());
  json["meta"] = {{"versionId", std::to_string(programme.number())}};
  const std::string title = absl::StrCat("Home programme ", programme.number());
  Json notes = planNotes(work, programme);
  if (work.options.us_profiles) usCarePlan(json, title, !notes.empty());
  json["identifier"] =
      Json::array({identifier(identifierUrl("programme"), programme.id()),
                   identifier(identifierUrl("programme-number"), std::to_string(programme.number()))});
  if (index > 0)
    json["replaces"] = Json::array({reference(work.history.programmes[index - 1].programme.id())});
  json["status"] = statusOf(programmeState(work.history, index), heldWhole(work));
  json["intent"] = "plan";
  json["title"] = title;
  json["subject"] = work.patient;
  json["period"] = {{"start", programme.effective_day()}, {"end", programme.end_day()}};
  json["created"] = isoInstant(toTime(programme.issued_at()));
  json["author"] = practitioner(programme.signer_id(), freeWords(work, programme.signer_name()));
  putList(json, "goal", goalsOf(programme));
  json["activity"] = activitiesOf(work, index);
  putList(json, "note", std::move(notes));
  work.bundle.add(json);
  for (const auto& entry : programme.entries()) {
    addRequest(work, index, entry);
    if (entry.has_progression()) addGoal(work, index, entry, heldNow(work, entry.id()));
    addOverrides(work, programme, entry);
  }
  addSignature(work, kept);
}

}  // namespace newel
