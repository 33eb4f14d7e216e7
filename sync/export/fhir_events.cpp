// What happened beside the exercises: falls, red flags, skin, hold orders, messages.
#include <absl/strings/str_cat.h>

#include <algorithm>
#include <optional>
#include <utility>

#include "core/progress/told_signs.h"
#include "core/time/local_day.h"
#include "sync/export/fhir_codes.h"
#include "sync/export/fhir_parts.h"
#include "sync/export/record_words.h"

namespace newel {
namespace {

// The question of the ready check that skin is asked by; empty: none was answered.
std::string skinQuestionOf(const v1::Practice& practice, const std::string& answer) {
  for (const auto& given : practice.ready_answers()) {
    if (given.answer_id() == answer && given.question_id() != "fall") return given.question_id();
  }
  return "";
}

std::string answerWords(const FhirWork& work, const std::string& question_id, const std::string& answer_id) {
  const Json coding = answerCoding(work.rules, question_id, answer_id);
  return coding["valueCoding"].value("display", answer_id);
}

// When the clinic spoke after `at`; nullopt: not yet.
std::optional<absl::Time> spokenSince(const FhirWork& work, absl::Time at) {
  std::optional<absl::Time> first;
  const auto consider = [&](absl::Time spoke) {
    if (spoke > at && (!first || spoke < *first)) first = spoke;
  };
  for (const auto& kept : work.history.programmes) consider(toTime(kept.programme.issued_at()));
  for (const auto& kept : work.history.holds) {
    if (!kept.order.lifts_id().empty()) consider(toTime(kept.order.issued_at()));
  }
  for (const auto& kept : work.history.messages) {
    if (kept.message.sender() == v1::SENDER_CLINIC) consider(toTime(kept.message.written_at()));
  }
  return first;
}

// `end`: when it stopped to stand.
void addFlag(FhirWork& work, const std::string& id, Json code, std::optional<absl::Time> start,
             std::optional<absl::Time> end) {
  Json json = resource("Flag", id);
  json["status"] = end.has_value() ? "inactive" : "active";
  json["category"] = Json::array({codeConcept(kFlagCategory, "safety", "")});
  json["code"] = std::move(code);
  json["subject"] = work.patient;
  if (start.has_value()) {
    json["period"] = {{"start", isoInstant(*start)}};
    if (end.has_value()) json["period"]["end"] = isoInstant(std::max(*start, *end));
  }
  work.bundle.add(json);
}

void addFall(FhirWork& work, const v1::Practice& practice) {
  const std::string told = fallToldIn(practice);
  if (told.empty()) return;
  Json json = resource("AdverseEvent", derivedId(practice.id(), "fall"));
  json["actuality"] = "actual";
  // No severity: the person was not asked for one.
  json["event"] =
      codeConcept(codeSystemUrl("event"), "fall-" + told,
                  told == "stopped" ? "Fall during a practice" : "Fall: " + answerWords(work, "fall", told));
  json["subject"] = work.patient;
  // It happened before the check at which it was told, and nobody asked when.
  json["recordedDate"] = isoInstantIn(toTime(practice.started_at()), practice.zone());
  if (told == "stopped") json["date"] = isoInstantIn(toTime(practice.ended_at()), practice.zone());
  json["recorder"] = work.patient;
  work.bundle.add(json);
}

void addSkin(FhirWork& work, const v1::Practice& practice) {
  const std::string told = skinSignToldIn(practice);
  if (told.empty()) return;
  const std::string question = skinQuestionOf(practice, told);
  const std::string words =
      told == "stopped" ? "Stopped because of the skin" : answerWords(work, question, told);
  Json json = observation(work, derivedId(practice.id(), "skin"), "survey",
                          codeConcept(codeSystemUrl("event"), "skin", "Skin of the limb"));
  json["effectiveDateTime"] = isoInstantIn(toTime(practice.started_at()), practice.zone());
  json["performer"] = Json::array({work.patient});
  json["valueCodeableConcept"] = codeConcept(codeSystemUrl("answer"), told, words);
  work.bundle.add(json);
  if (told == "open")
    addOpenSkin(work, derivedId(practice.id(), "skin/flag"), words, toTime(practice.ended_at()));
}

void addRedFlag(FhirWork& work, const v1::Practice& practice, const std::string& rule_id) {
  Json json = resource("DetectedIssue", derivedId(practice.id(), "rule/" + rule_id));
  json["status"] = "final";
  json["code"] = codeConcept(codeSystemUrl("rule"), rule_id, "");
  json["severity"] = "high";
  json["patient"] = work.patient;
  json["identifiedDateTime"] = isoInstantIn(toTime(practice.ended_at()), practice.zone());
  if (!practice.ready_answers().empty()) {
    json["evidence"] =
        Json::array({{{"detail", Json::array({reference(derivedId(practice.id(), "ready-check"))})}}});
  }
  const v1::Rule* rule = work.rules.rule(rule_id);
  if (rule != nullptr) putText(json, "detail", rule->words().at("en").therapist());
  json["mitigation"] =
      Json::array({{{"action", textConcept(practice.end() == v1::PRACTICE_END_REFUSED
                                               ? "No practice was begun; the person was told what to do"
                                               : "The practice was ended; the person was told what to do")},
                    {"date", isoInstantIn(toTime(practice.ended_at()), practice.zone())}}});
  work.bundle.add(json);
}

Json communication(const FhirWork& work, const std::string& id, bool from_person, bool urgent,
                   absl::Time sent, const Receipts& receipts) {
  Json json = resource("Communication", id);
  if (receipts.seen_at.has_value())
    json["extension"] = Json::array({extension("seen", "valueDateTime", isoInstant(*receipts.seen_at))});
  json["status"] = "completed";
  json["priority"] = urgent ? "urgent" : "routine";
  json["subject"] = work.patient;
  json["sent"] = isoInstant(sent);
  if (receipts.arrived_at.has_value()) json["received"] = isoInstant(*receipts.arrived_at);
  if (!from_person) json["recipient"] = Json::array({work.patient});
  return json;
}

void putPayload(Json& json, const std::string& words) {
  const std::string text = fhirText(words);
  if (!text.empty()) json["payload"] = Json::array({{{"contentString", text}}});
}

}  // namespace

void addPracticeEvents(FhirWork& work, const v1::Practice& practice) {
  addFall(work, practice);
  addSkin(work, practice);
  std::vector<std::string> seen;
  for (const auto& rule_id : practice.red_flag_rule_ids()) {
    if (std::find(seen.begin(), seen.end(), rule_id) != seen.end()) continue;
    seen.push_back(rule_id);
    addRedFlag(work, practice, rule_id);
  }
}

void addOpenSkin(FhirWork& work, const std::string& id, const std::string& words, absl::Time told_at) {
  addFlag(work, id, codeConcept(codeSystemUrl("event"), "open-skin", "Open skin: " + words), told_at,
          spokenSince(work, told_at));
}

void addStandingWounds(FhirWork& work) {
  const auto& conditions = work.history.person.conditions();
  if (std::find(conditions.begin(), conditions.end(), v1::CONDITION_OPEN_WOUND) == conditions.end()) return;
  addFlag(work, derivedId(work.history.person.id(), "open-wound"),
          codeConcept(codeSystemUrl("event"), "open-wound", "Open wound, on the person's record"),
          std::nullopt, std::nullopt);
}

void addHold(FhirWork& work, const KeptHold& hold) {
  const v1::HoldOrder& order = hold.order;
  const bool lifts = !order.lifts_id().empty();
  const absl::Time at = toTime(order.issued_at());
  Json json = communication(work, derivedId(order.id(), "communication"), false, true, at, hold.receipts);
  json["sender"] = practitioner(order.signer_id(), freeWords(work, order.signer_name()));
  json["topic"] = codeConcept(codeSystemUrl("event"), lifts ? "hold-lifted" : "hold-order",
                              lifts ? "Hold order lifted" : "Hold order: stop doing this now");
  Json about = Json::array();
  for (const auto& kept : work.history.programmes) {
    for (const auto& entry_id : order.entry_ids()) {
      const std::string request = requestIdOf(work, kept.programme.number(), entry_id);
      if (!request.empty()) about.push_back(reference(request));
    }
  }
  putList(json, "about", std::move(about));
  putPayload(json, freeWords(work, order.reason()));
  work.bundle.add(json);
  if (lifts) return;
  addFlag(work, order.id(),
          codeConcept(codeSystemUrl("event"), "hold-order", "Hold order: stop doing this now"), at,
          liftedAt(work.history, hold));
}

void addMessage(FhirWork& work, const KeptMessage& kept) {
  const v1::Message& message = kept.message;
  const bool from_person = message.sender() == v1::SENDER_PERSON;
  Json json = communication(work, message.id(), from_person, message.urgent(), toTime(message.written_at()),
                            kept.receipts);
  json["sender"] = from_person ? work.patient : practitioner("", freeWords(work, message.sender_name()));
  putPayload(json, freeWords(work, message.text()));
  work.bundle.add(json);
}

}  // namespace newel
