#include "sync/export/fhir_codes.h"

#include <absl/strings/match.h>
#include <absl/strings/str_cat.h>

#include "core/records/check.h"

namespace newel {
namespace {

constexpr char kExercise[] = "ActivityDefinition/";

}  // namespace

std::string extensionUrl(const std::string& name) {
  return absl::StrCat(kFhirBase, "StructureDefinition/", name);
}

std::string codeSystemUrl(const std::string& name) { return absl::StrCat(kFhirBase, "CodeSystem/", name); }

std::string identifierUrl(const std::string& name) { return absl::StrCat(kFhirBase, "identifier/", name); }

std::string exerciseUrl(const std::string& exercise_id, const std::string& clinic_id) {
  if (!isOwnExerciseId(exercise_id)) return absl::StrCat(kFhirBase, kExercise, exercise_id);
  return absl::StrCat(kFhirBase, kExercise, clinic_id, "/", exercise_id);
}

std::string exerciseOfUrl(const std::string& url) {
  const std::string start = absl::StrCat(kFhirBase, kExercise);
  if (!absl::StartsWith(url, start)) return "";
  const std::string id = url.substr(start.size());
  return id.find('/') == std::string::npos ? id : "";
}

std::string usProfile(const std::string& name) {
  return absl::StrCat("http://hl7.org/fhir/us/physical-activity/StructureDefinition/", name);
}

}  // namespace newel
