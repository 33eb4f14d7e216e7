#include "sync/export/fhir_templates.h"

#include <absl/strings/str_cat.h>
#include <absl/strings/str_join.h>

#include <set>
#include <utility>

#include "core/library/templates.h"
#include "sync/common/content_hash.h"
#include "sync/common/text_codes.h"
#include "sync/export/fhir_codes.h"
#include "sync/export/fhir_parts.h"
#include "sync/export/record_words.h"

namespace newel {
namespace {

// What ids of templates are derived from; any fixed UUID would do.
constexpr char kTemplateNamespace[] = "0193a1c0-0000-7000-8000-4e6577656c02";
constexpr std::size_t kVersionDigits = 12;

// A starting template has no revision: its version is what it says.
std::string versionOf(const v1::ProgrammeTemplate& from) {
  if (from.revision() > 0) return std::to_string(from.revision());
  v1::ProgrammeTemplate said = from;
  said.clear_words();  // a map has no order
  const v1::TemplateWords* words = wordsOf(from, "en");
  const std::string title = words == nullptr ? "" : absl::StrCat(words->name(), "\n", words->for_whom());
  return toHex(sha256(absl::StrCat(said.SerializeAsString(), title))).substr(0, kVersionDigits);
}

Json fitExtension(const v1::TemplateFit& fit) {
  Json parts = Json::array();
  for (const int level : fit.levels())
    parts.push_back(part("level", "valueCode", enumWord(v1::LimbLossLevel_descriptor(), level)));
  const auto code = [&parts](const char* name, const std::string& word) {
    if (!word.empty()) parts.push_back(part(name, "valueCode", word));
  };
  code("least_mobility", enumWord(v1::MobilityLevel_descriptor(), fit.least_mobility()));
  code("most_mobility", enumWord(v1::MobilityLevel_descriptor(), fit.most_mobility()));
  code("phase", enumWord(v1::TemplatePhase_descriptor(), fit.phase()));
  parts.push_back(part("both_lost", "valueBoolean", fit.both_lost()));
  return partsExtension("fit", std::move(parts));
}

Json actionOf(const v1::TemplateEntry& entry, const v1::Exercise& exercise, std::uint32_t weeks) {
  Json extensions = Json::array();
  if (entry.has_dose()) extensions.push_back(doseExtension(entry.dose()));
  const auto code = [&extensions](const char* name, const std::string& word) {
    if (!word.empty()) extensions.push_back(extension(name, "valueCode", word));
  };
  code("side-policy", enumWord(v1::SidePolicy_descriptor(), entry.side_policy()));
  code("support", enumWord(v1::Support_descriptor(), entry.support()));
  code("prosthesis", enumWord(v1::ProsthesisUse_descriptor(), entry.prosthesis()));
  code("pacing", enumWord(v1::Pacing_descriptor(), entry.pacing()));
  code("rung", entry.rung_id());
  if (entry.has_progression()) extensions.push_back(progressionExtension(entry.progression()));
  Json action;
  putList(action, "extension", std::move(extensions));
  putText(action, "title", exerciseTitle(exercise.id(), exercise.revision(), nullptr, "en"));
  if (entry.has_schedule()) action["timingTiming"] = templateTimingOf(entry.schedule(), weeks);
  action["definitionCanonical"] = absl::StrCat(exerciseUrl(exercise.id(), ""), "|", exercise.revision());
  return action;
}

Json sourcesOf(const v1::ProgrammeTemplate& from) {
  Json sources = Json::array();
  for (const auto& source : from.sources())
    sources.push_back({{"type", "citation"}, {"citation", fhirText(source.text())}});
  return sources;
}

Json planOf(const v1::ProgrammeTemplate& from) {
  const std::string version = versionOf(from);
  Json json =
      resource("PlanDefinition", derivedId(kTemplateNamespace, absl::StrCat(from.id(), "|", version)));
  Json extensions = Json::array({extension("weeks", "valueInteger", from.weeks())});
  if (from.has_fit()) extensions.push_back(fitExtension(from.fit()));
  json["extension"] = std::move(extensions);
  json["url"] = absl::StrCat(kFhirBase, "PlanDefinition/", from.id());
  json["version"] = version;
  const v1::TemplateWords* words = wordsOf(from, "en");
  if (words != nullptr) putText(json, "title", words->name());
  json["status"] = "active";
  if (words != nullptr) putText(json, "description", words->for_whom());
  putList(json, "relatedArtifact", sourcesOf(from));
  Json actions = Json::array();
  for (const auto& entry : from.entries()) {
    const v1::Exercise* exercise = Catalogue::builtIn().find(entry.exercise_id());
    if (exercise != nullptr) actions.push_back(actionOf(entry, *exercise, from.weeks()));
  }
  putList(json, "action", std::move(actions));
  return json;
}

}  // namespace

std::string fhirTemplates(const std::vector<v1::ProgrammeTemplate>& templates, absl::Time made_at) {
  BundleText bundle;
  std::set<std::string> exercises;
  for (const auto& from : templates) {
    for (const auto& entry : from.entries()) {
      const v1::Exercise* exercise = Catalogue::builtIn().find(entry.exercise_id());
      if (exercise == nullptr || !exercises.insert(exercise->id()).second) continue;
      bundle.add(exerciseDefinition(exercise->id(), exercise->revision(), nullptr));
    }
    bundle.add(planOf(from));
  }
  return bundle.finish(made_at, derivedId(kTemplateNamespace, "bundle/" + isoInstant(made_at)));
}

}  // namespace newel
