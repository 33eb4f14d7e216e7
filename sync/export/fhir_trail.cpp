// What the hub keeps beside the records: the paired phones, and who saw and changed what.
#include <absl/strings/match.h>
#include <absl/strings/str_cat.h>

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

#include "sync/export/fhir_codes.h"
#include "sync/export/fhir_parts.h"
#include "sync/export/record_words.h"

namespace newel {
namespace {

// What the last word of an action is in FHIR: its life-cycle event (ISO 21089, as the value set
// audit-event-type lists them) and what was done (audit-event-action). Words that are not here say neither.
struct Verb {
  std::string_view word;
  const char* event;
  const char* action;
};
constexpr std::array<Verb, 24> kVerbs = {{
    {"see", "access", "R"},      {"find", "access", "R"},     {"export", "disclose", "R"},
    {"add", "originate", "C"},   {"send", "originate", "C"},  {"invite", "originate", "C"},
    {"done", "originate", "C"},  {"issue", "originate", "C"}, {"put", "originate", "C"},
    {"write", "originate", "C"}, {"sign", "attest", "C"},     {"reissue", "attest", "C"},
    {"change", "amend", "U"},    {"assign", "amend", "U"},    {"unassign", "amend", "U"},
    {"snooze", "amend", "U"},    {"unsnooze", "amend", "U"},  {"lift", "amend", "U"},
    {"withdraw", "amend", "U"},  {"revoke", "amend", "U"},    {"break_glass", "access", "R"},
    {"password", "amend", "U"},  {"erase", "destroy", "D"},   {"off", "amend", "U"},
}};

const Verb* verbOf(const std::string& action) {
  const std::string_view word = std::string_view(action).substr(action.rfind('.') + 1);
  const auto* found =
      std::find_if(kVerbs.begin(), kVerbs.end(), [&](const Verb& verb) { return verb.word == word; });
  return found == kVerbs.end() ? nullptr : found;
}

bool isRefusal(const std::string& action) {
  return absl::EndsWith(action, ".refused") || absl::EndsWith(action, ".too_many");
}

Json phoneReference(const FhirWork& work, const std::string& id) {
  for (const auto& phone : work.history.phones) {
    if (phone.id == id) return reference(id);
  }
  return {{"type", "Device"}, {"identifier", identifier(identifierUrl("phone"), id)}};
}

Json agentOf(const FhirWork& work, const AuditLine& line) {
  Json agent;
  switch (line.who_is) {
    case AuditLine::Who::Nobody:
      break;
    case AuditLine::Who::Account:
      agent["who"] = practitioner(line.who, "");
      break;
    case AuditLine::Who::Phone:
      agent["who"] = phoneReference(work, line.who);
      break;
    case AuditLine::Who::Unknown:
      agent["altId"] = fhirText(line.who);
      break;
  }
  agent["requestor"] = true;
  return agent;
}

Json entitiesOf(const FhirWork& work, const AuditLine& line) {
  Json entities = Json::array({{{"what", work.patient}}});
  const std::string field = fhirText(line.field);
  Json record;
  if (!fhirText(line.record).empty())
    record["what"] = {{"identifier", identifier(identifierUrl("record"), fhirText(line.record))}};
  if (!field.empty()) record["detail"] = Json::array({{{"type", "field"}, {"valueString", field}}});
  if (!record.is_null()) entities.push_back(std::move(record));
  return entities;
}

}  // namespace

void addPhone(FhirWork& work, const PairedPhone& phone) {
  Json json = resource("Device", phone.id);
  Json list = Json::array({extension("paired", "valueDateTime", isoInstant(phone.paired_at))});
  if (phone.last_contact.has_value())
    list.push_back(extension("last-contact", "valueDateTime", isoInstant(*phone.last_contact)));
  json["extension"] = std::move(list);
  json["identifier"] = Json::array({identifier(identifierUrl("phone"), phone.id)});
  json["status"] = phone.revoked ? "inactive" : "active";
  const std::string name = fhirText(freeWords(work, phone.name));
  if (!name.empty()) json["deviceName"] = Json::array({{{"name", name}, {"type", "user-friendly-name"}}});
  json["type"] = codeConcept(codeSystemUrl("event"), "phone", "The person's phone");
  const std::string version = fhirText(phone.app_version);
  if (!version.empty()) json["version"] = Json::array({{{"value", version}}});
  json["patient"] = work.patient;
  work.bundle.add(json);
}

void addAuditLine(FhirWork& work, const AuditLine& line) {
  Json json = resource("AuditEvent", derivedId(work.history.person.id(), absl::StrCat("audit/", line.n)));
  const Verb* verb = verbOf(line.action);
  if (verb != nullptr) {
    json["type"] = {{"system", kLifeCycle}, {"code", verb->event}};
    json["subtype"] = Json::array({{{"system", codeSystemUrl("audit")}, {"code", line.action}}});
    json["action"] = verb->action;
  } else {
    json["type"] = {{"system", codeSystemUrl("audit")}, {"code", line.action}};
  }
  json["recorded"] = isoInstant(line.at);
  // Audit-event-outcome: 0 success, 4 minor failure. Only what was refused stands there beside what was done.
  json["outcome"] = isRefusal(line.action) ? "4" : "0";
  json["agent"] = Json::array({agentOf(work, line)});
  json["source"] = {{"observer", {{"display", "newel-hub"}}}};
  json["entity"] = entitiesOf(work, line);
  work.bundle.add(json);
}

}  // namespace newel
