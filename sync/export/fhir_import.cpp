#include "sync/export/fhir_import.h"

#include <absl/strings/str_cat.h>
#include <absl/strings/str_join.h>

#include <algorithm>
#include <functional>
#include <map>
#include <utility>

#include "core/records/check.h"
#include "core/time/local_day.h"
#include "sync/export/fhir_import_parts.h"
#include "sync/export/fhir_reader.h"

namespace newel {
namespace {

constexpr int kDeepest = 64;
constexpr char kAnyId[] = "0193a1c0-0000-7000-8000-000000000001";

// Deeper than any FHIR resource: such a file is meant to break its reader.
bool isTooDeep(const std::string& text) {
  int depth = 0;
  bool in_string = false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (in_string) {
      if (c == '\\') ++i;
      if (c == '"') in_string = false;
    } else if (c == '"') {
      in_string = true;
    } else if (c == '{' || c == '[') {
      if (++depth > kDeepest) return true;
    } else if (c == '}' || c == ']') {
      --depth;
    }
  }
  return false;
}

// The one to use of several: the only one, or the only one that `preferred` says; nullptr: nobody can tell.
const FhirNode* theOne(const std::vector<FhirNode>& nodes,
                       const std::function<bool(const FhirNode&)>& preferred) {
  if (nodes.size() == 1) return nodes.data();
  const FhirNode* found = nullptr;
  for (const auto& node : nodes) {
    if (!preferred(node)) continue;
    if (found != nullptr) return nullptr;
    found = &node;
  }
  return found;
}

void takeName(const FhirNode& patient, FhirImport& import) {
  const auto names = patient.list("name");
  const FhirNode* name =
      theOne(names, [](const FhirNode& one) { return one.at("use").peekText() == "official"; });
  if (name == nullptr) return;
  const std::string use = name->at("use").peekText();
  if (use == "old" || use == "maiden") return;
  std::vector<std::string> given;
  for (const auto& one : name->list("given")) given.push_back(one.text());
  import.identity.set_given_name(absl::StrJoin(given, " "));
  import.identity.set_family_name(name->at("family").text());
  name->at("use").take();
}

void takePhone(const FhirNode& patient, FhirImport& import) {
  std::vector<FhirNode> phones;
  for (const auto& contact : patient.list("telecom")) {
    const std::string use = contact.at("use").peekText();
    if (contact.at("system").peekText() == "phone" && use != "old") phones.push_back(contact);
  }
  const FhirNode* phone = theOne(phones, [](const FhirNode& one) { return one.at("rank").peekWhole() == 1; });
  if (phone == nullptr) return;
  import.identity.set_phone(phone->at("value").text());
  for (const char* key : {"system", "use", "rank"}) phone->at(key).take();
}

void takeLanguage(const FhirNode& patient, FhirImport& import) {
  const auto spoken = patient.list("communication");
  const FhirNode* one =
      theOne(spoken, [](const FhirNode& node) { return node.at("preferred").peekYes() == true; });
  if (one == nullptr) return;
  const auto codings = one->at("language").list("coding");
  if (codings.size() != 1) return;
  import.person.set_language(codings[0].at("code").text());
  codings[0].at("system").take();
  codings[0].at("display").take();
  one->at("preferred").take();
}

void takeBirthDate(const FhirNode& patient, FhirImport& import) {
  // A year or a month alone is right in FHIR and no day; it is listed.
  const std::string day = patient.at("birthDate").peekText();
  if (day.size() != 10) return;
  if (!parseLocalDay(day).ok()) return patient.at("birthDate").refuse("is no day");
  import.identity.set_birth_date(patient.at("birthDate").text());
}

// What changes the meaning of everything else and is not known here: R4 forbids going on.
bool hasModifier(const FhirNode& resource) {
  return resource.has("modifierExtension") || resource.has("implicitRules");
}

void takePatient(const FhirNode& patient, FhirImport& import) {
  if (hasModifier(patient))
    return patient.refuse("has a modifier (modifierExtension, implicitRules) that is not known here");
  if (patient.at("deceasedBoolean").yes() == true || patient.has("deceasedDateTime"))
    import.warnings.push_back(patient.path() + ": says that this person has died");
  if (patient.at("active").yes() == false)
    import.warnings.push_back(patient.path() + ": says that this record is not in use");
  takeName(patient, import);
  takeBirthDate(patient, import);
  takePhone(patient, import);
  takeLanguage(patient, import);
  // What the file states has to fit the record; what it leaves open is the desk's to ask.
  v1::Identity whole = import.identity;
  whole.set_person_id(kAnyId);
  if (whole.given_name().empty()) whole.set_given_name("-");
  const absl::Status good = check(whole);
  if (!good.ok()) patient.refuse(std::string(good.message()));
}

struct Found {
  std::vector<FhirNode> patients;
  std::vector<std::string> patient_urls;
  std::vector<FhirNode> requests;
  std::map<std::string, int> others;  // resources of other types, by type
};

void sortOut(const FhirNode& resource, const std::string& url, Found& found) {
  const std::string type = resource.at("resourceType").text();
  if (type.empty()) return resource.refuse("has no resourceType, so it is no FHIR resource");
  resource.at("id").take();
  if (type == "Patient") {
    found.patients.push_back(resource);
    const std::string id = resource.at("id").peekText();
    found.patient_urls = {url, absl::StrCat("Patient/", id), absl::StrCat("urn:uuid:", id)};
  } else if (type == "ServiceRequest") {
    found.requests.push_back(resource);
  } else {
    ++found.others[type];
    resource.take();
  }
}

Found sortedOut(const FhirNode& file) {
  Found found;
  if (file.at("resourceType").peekText() != "Bundle") {
    sortOut(file, "", found);
    return found;
  }
  for (const char* key : {"resourceType", "id", "meta", "type", "timestamp", "identifier", "link", "total"})
    file.at(key).take();
  for (const auto& entry : file.list("entry")) {
    const std::string url = entry.at("fullUrl").text();
    if (entry.has("resource")) sortOut(entry.at("resource"), url, found);
  }
  return found;
}

// A request about somebody else must never become this person's.
void checkSubject(const FhirNode& request, const Found& found) {
  const std::string subject = request.at("subject").at("reference").text();
  if (found.patients.empty() || subject.empty()) return;
  if (std::find(found.patient_urls.begin(), found.patient_urls.end(), subject) == found.patient_urls.end())
    request.at("subject").refuse("is not the Patient of this file");
}

}  // namespace

absl::StatusOr<FhirImport> importFhir(const std::string& text) {
  if (text.size() > kMostImportBytes) return absl::InvalidArgumentError("the file: is larger than 16 MiB");
  if (isTooDeep(text)) return absl::InvalidArgumentError("the file: is nested too deep");
  const nlohmann::json json = nlohmann::json::parse(text, nullptr, /*allow_exceptions=*/false);
  if (!json.is_object()) return absl::InvalidArgumentError("the file: is no JSON object");
  FhirNode::File state;
  const FhirNode file(&json, "", &state);
  const Found found = sortedOut(file);
  FhirImport import;
  if (found.patients.size() > 1) found.patients[1].refuse("is a second Patient; a file is about one");
  if (found.patients.empty() && found.requests.empty())
    file.refuse("holds neither a Patient nor a ServiceRequest");
  if (!found.patients.empty()) takePatient(found.patients[0], import);
  for (const auto& request : found.requests) {
    checkSubject(request, found);
    if (state.status.ok()) takeRequest(request, import);
  }
  if (!state.status.ok()) return state.status;
  std::vector<std::string> paths;
  file.listNotTaken(paths);
  for (const auto& path : paths) import.not_taken.push_back(path + ": not taken over");
  for (const auto& [type, count] : found.others)
    import.not_taken.push_back(absl::StrCat(type, ": ", count, " of them, not taken over"));
  return import;
}

}  // namespace newel
