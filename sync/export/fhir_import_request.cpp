// One ServiceRequest of a file from elsewhere.
#include <absl/strings/numbers.h>
#include <absl/strings/str_cat.h>
#include <google/protobuf/descriptor.h>

#include <algorithm>
#include <array>
#include <utility>

#include "core/library/catalogue.h"
#include "core/records/check.h"
#include "sync/export/fhir_codes.h"
#include "sync/export/fhir_import_parts.h"
#include "sync/export/record_words.h"

namespace newel {
namespace {

// "CodeableConcept" in words: its text, or a coding's display.
std::string wordsOf(const FhirNode& concept_node) {
  std::string words = concept_node.at("text").text();
  for (const auto& coding : concept_node.list("coding")) {
    if (words.empty()) words = coding.at("display").text();
  }
  return words;
}

std::string firstWords(const std::vector<FhirNode>& nodes) {
  std::string words;
  for (const auto& node : nodes) {
    if (words.empty()) words = wordsOf(node);
  }
  return words;
}

// The extension of that name; not there: nothing.
FhirNode extensionOf(const FhirNode& node, const std::string& name) {
  for (const auto& one : node.list("extension")) {
    if (one.at("url").peekText() != extensionUrl(name)) continue;
    one.at("url").take();
    return one;
  }
  return node.at("no such extension");
}

// A value of an enumeration by our word for it; 0: none of them.
int valueOf(const google::protobuf::EnumDescriptor* type, const std::string& word) {
  for (int i = 0; i < type->value_count(); ++i) {
    const int number = type->value(i)->number();
    if (number != 0 && enumWord(type, number) == word) return number;
  }
  return 0;
}

template <typename Enum>
Enum codeExtension(const FhirNode& request, const std::string& name,
                   const google::protobuf::EnumDescriptor* type) {
  const FhirNode value = extensionOf(request, name).at("valueCode");
  const std::string word = value.peekText();
  const int number = word.empty() ? 0 : valueOf(type, word);
  if (!word.empty() && number == 0) value.refuse("is no " + name + " that is known here");
  if (number != 0) value.take();
  return static_cast<Enum>(number);
}

// Part `name` of an extension into the field of the same name.
void takePart(const FhirNode& part, google::protobuf::Message& dose) {
  const std::string name = part.at("url").text();
  const auto* field = dose.GetDescriptor()->FindFieldByName(name);
  const auto value = part.at("valueInteger").whole();
  if (field == nullptr || !value.has_value()) return part.refuse("is no part that is known here");
  if (*value < 0 || *value > UINT32_MAX) return part.at("valueInteger").refuse("is out of all bounds");
  dose.GetReflection()->SetUInt32(&dose, field, static_cast<std::uint32_t>(*value));
}

void takeDose(const FhirNode& request, v1::Entry& entry) {
  const FhirNode extension = extensionOf(request, "dose");
  if (!extension.there()) return;
  google::protobuf::Message* dose = nullptr;
  for (const auto& part : extension.list("extension")) {
    if (part.at("url").peekText() != "kind") continue;
    part.at("url").take();
    const std::string kind = part.at("valueCode").text();
    if (kind == "sets") dose = entry.mutable_dose()->mutable_sets();
    if (kind == "minutes") dose = entry.mutable_dose()->mutable_minutes();
    if (kind == "passes") dose = entry.mutable_dose()->mutable_passes();
  }
  if (dose == nullptr) return extension.refuse("is a dose of no kind that is known here");
  for (const auto& part : extension.list("extension")) {
    if (part.at("url").peekText() != "kind") takePart(part, *dose);
  }
  const absl::Status good = check(entry.dose());
  if (!good.ok()) extension.refuse(std::string(good.message()));
}

// When to stop: numbers outside the record's range are no guess of ours to mend.
void takeThresholds(const FhirNode& request, v1::Entry& entry) {
  const FhirNode extension = extensionOf(request, "stop");
  if (!extension.there()) return;
  v1::StopThresholds& stop = *entry.mutable_thresholds();
  for (const auto& part : extension.list("extension")) takePart(part, stop);
  const auto within = [](std::uint32_t pain) { return pain >= 1 && pain <= 10; };
  if (!within(stop.pain_stop_0_10()) || !within(stop.pain_rise_0_10()))
    extension.refuse("is not within 1 and 10");
}

// The exercise that a canonical address names; nullptr: none that this program has.
const v1::Exercise* exerciseOf(const FhirNode& request) {
  const auto addresses = request.list("instantiatesCanonical");
  if (addresses.size() != 1) return nullptr;
  const std::string whole = addresses[0].peekText();
  const std::size_t bar = whole.find('|');
  std::uint32_t revision = 0;
  if (bar == std::string::npos || !absl::SimpleAtoi(whole.substr(bar + 1), &revision) || revision == 0)
    return nullptr;
  const v1::Exercise* exercise = Catalogue::builtIn().find(exerciseOfUrl(whole.substr(0, bar)), revision);
  if (exercise != nullptr) addresses[0].take();
  return exercise;
}

v1::Entry entryOf(const FhirNode& request, const v1::Exercise& exercise, v1::Programme& draft) {
  v1::Entry entry;
  entry.set_exercise_id(exercise.id());
  entry.set_exercise_revision(exercise.revision());
  entry.set_side_policy(codeExtension<v1::SidePolicy>(request, "side-policy", v1::SidePolicy_descriptor()));
  entry.set_support(codeExtension<v1::Support>(request, "support", v1::Support_descriptor()));
  entry.set_prosthesis(
      codeExtension<v1::ProsthesisUse>(request, "prosthesis", v1::ProsthesisUse_descriptor()));
  entry.set_pacing(codeExtension<v1::Pacing>(request, "pacing", v1::Pacing_descriptor()));
  takeDose(request, entry);
  takeThresholds(request, entry);
  takeTiming(request, entry, draft);
  return entry;
}

// A request that is over, or was never one, is not begun here.
bool isToBeDone(const FhirNode& request, FhirImport& import) {
  const std::string status = request.at("status").text();
  if (status.empty()) request.at("status").refuse("is missing");
  if (status == "active" || status == "draft" || status == "on-hold") {
    if (status == "on-hold")
      import.warnings.push_back(request.path() + ".status: on-hold: not to be done now");
    return true;
  }
  import.not_taken.push_back(absl::StrCat(request.path(), ": its status is ", status));
  request.take();
  return false;
}

bool mayBeUnderstood(const FhirNode& request, FhirImport& import) {
  if (request.at("doNotPerform").yes() == true) {
    import.warnings.push_back(
        absl::StrCat(request.path(), ": says that \"", wordsOf(request.at("code")), "\" is NOT to be done"));
    request.take();
    return false;
  }
  if (!request.has("modifierExtension") && !request.has("implicitRules")) return true;
  import.warnings.push_back(request.path() +
                            ": has a modifier that is not known here, so none of it was taken");
  request.take();
  return false;
}

}  // namespace

void takeRequest(const FhirNode& request, FhirImport& import) {
  if (!isToBeDone(request, import) || !mayBeUnderstood(request, import)) return;
  if (request.at("intent").text().empty()) return request.at("intent").refuse("is missing");
  ImportedRequest taken;
  taken.path = request.path();
  taken.title = wordsOf(request.at("code"));
  taken.instruction = request.at("patientInstruction").text();
  taken.reason = firstWords(request.list("reasonCode"));
  taken.body_site = firstWords(request.list("bodySite"));
  taken.requester = request.at("requester").at("display").text();
  taken.authored_on = request.at("authoredOn").text();
  for (const auto& note : request.list("note")) taken.notes.push_back(note.at("text").text());
  if (const v1::Exercise* exercise = exerciseOf(request)) {
    taken.entry = import.draft.entries_size();
    *import.draft.add_entries() = entryOf(request, *exercise, import.draft);
  }
  import.requests.push_back(std::move(taken));
}

}  // namespace newel
