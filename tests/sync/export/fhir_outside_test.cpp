// The FHIR bundle against five checkers that know nothing of our code (checks/fhir_checks.js says which), and
// the checkers against faults.
#include <gtest/gtest.h>

#include <functional>
#include <map>
#include <set>
#include <stdexcept>
#include <tuple>

#include "tests/sync/export/fhir_fixture.h"
#include "tests/sync/export/history_maker.h"
#include "tests/sync/export/outside_checks.h"

namespace newel {
namespace {

using nlohmann::json;
using test::bundleOf;
using test::ofType;

constexpr const char* kCheckers[] = {"fhir", "schema", "fhirpath", "own", "us"};

std::string oneLine(std::string text) {
  std::erase(text, '\n');  // between resources alone: in JSON's strings they are escaped
  return text;
}

ExportOptions optionsOf(std::uint64_t seed) {
  ExportOptions options;
  options.with_words = seed % 2 == 0;
  options.us_profiles = seed % 7 == 0;
  return options;
}

// "Procedure completed", "step in-progress", "claim pa-careplan".
void countStates(const json& resource, std::map<std::string, int>& states) {
  const std::string type = resource["resourceType"];
  for (const char* key : {"status", "lifecycleStatus"}) {
    if (resource.contains(key)) ++states[type + " " + std::string(resource[key])];
  }
  if (type == "CarePlan") {
    for (const auto& activity : resource["activity"]) {
      if (activity.contains("detail") && activity["detail"].contains("extension"))
        ++states["step " + std::string(activity["detail"]["status"])];
    }
  }
  if (!resource.contains("meta") || !resource["meta"].contains("profile")) return;
  for (const std::string profile : resource["meta"]["profile"])
    ++states["claim " + profile.substr(profile.rfind('/') + 1)];
}

TEST(FhirOutside, aThousandHistoriesPassEveryChecker) {
  NEWEL_NEEDS_OUTSIDE_CHECKS();
  std::vector<std::string> bundles;
  std::map<std::string, int> types;
  std::map<std::string, int> states;
  for (std::uint64_t seed = 1; seed <= 1000; ++seed) {
    const std::string text = bundleOf(test::anyHistory(seed), optionsOf(seed));
    const json bundle = json::parse(text);
    for (const auto& entry : bundle["entry"]) {
      ++types[entry["resource"]["resourceType"]];
      countStates(entry["resource"], states);
    }
    bundles.push_back(oneLine(text));
  }
  // Otherwise nothing was checked of them.
  for (const char* type :
       {"Patient", "ActivityDefinition", "CarePlan", "ServiceRequest", "Provenance", "Procedure",
        "Observation", "Questionnaire", "QuestionnaireResponse", "DetectedIssue", "AdverseEvent", "Flag",
        "Communication", "Goal", "Device", "AuditEvent"}) {
    EXPECT_GE(types[type], 50) << type;
  }
  for (const char* state : {"Procedure completed",
                            "Procedure stopped",
                            "Procedure not-done",
                            "CarePlan revoked",
                            "CarePlan completed",
                            "CarePlan active",
                            "CarePlan on-hold",
                            "ServiceRequest on-hold",
                            "Flag active",
                            "Flag inactive",
                            "Observation entered-in-error",
                            "Observation preliminary",
                            "Device active",
                            "Device inactive",
                            "Goal planned",
                            "Goal active",
                            "Goal on-hold",
                            "Goal completed",
                            "step completed",
                            "step in-progress",
                            "step not-started",
                            "step on-hold",
                            "step stopped",
                            "step cancelled",
                            "claim us-core-patient",
                            "claim pa-careplan",
                            "claim pa-observation-activity-measure"}) {
    EXPECT_GE(states[state], 10) << state;
  }
  const auto found = test::outsideCheck("check_fhir.js", bundles);
  int shown = 0;
  for (std::size_t i = 0; i < found.size() && shown < 10; ++i) {
    for (const char* checker : kCheckers) {
      if (found[i].is_object() && found[i][checker].empty()) continue;
      ADD_FAILURE() << "seed " << i + 1 << ", " << checker << ": " << found[i].dump().substr(0, 1500);
      ++shown;
    }
  }
}

// One fault each in a bundle that is right. `by`: who must catch it. Table 1.6 of our notes on validators:
// what the two packages catch, tried again here; what both miss, invariants or our own walk catch.
struct Fault {
  const char* name;
  std::function<void(json& bundle)> put;
  std::set<std::string> by;
};

json& first(json& bundle, const std::string& type, const std::string& key = "") {
  for (auto& entry : bundle["entry"]) {
    json& resource = entry["resource"];
    if (resource["resourceType"] == type && (key.empty() || resource.contains(key))) return resource;
  }
  throw std::logic_error("none of type " + type);
}

json& repeatIn(json& bundle) {
  for (auto& entry : bundle["entry"]) {
    json& resource = entry["resource"];
    if (resource["resourceType"] == "ServiceRequest" && resource["occurrenceTiming"].contains("repeat") &&
        resource["occurrenceTiming"]["repeat"].contains("dayOfWeek"))
      return resource["occurrenceTiming"]["repeat"];
  }
  throw std::logic_error("no repeat");
}

// The first step of a wear plan with a limit.
json& stepIn(json& bundle) {
  for (auto& entry : bundle["entry"]) {
    json& resource = entry["resource"];
    if (resource["resourceType"] != "CarePlan") continue;
    for (auto& activity : resource["activity"]) {
      if (activity.contains("detail") && activity["detail"].contains("scheduledTiming"))
        return activity["detail"];
    }
  }
  throw std::logic_error("no step");
}

std::vector<Fault> faults() {
  return {
      {"missing status", [](json& b) { first(b, "CarePlan").erase("status"); }, {"fhir", "own"}},
      {"status outside its set", [](json& b) { first(b, "CarePlan")["status"] = "nope"; }, {"fhir", "own"}},
      {"intent outside its set",
       [](json& b) { first(b, "ServiceRequest")["intent"] = "nope"; },
       {"fhir", "own"}},
      {"reference to a wrong type",
       [](json& b) {
         json& request = first(b, "ServiceRequest");
         request["subject"]["reference"] = "urn:uuid:" + std::string(request["id"]);
       },
       {"own"}},
      {"reference to a wrong type by its name",
       [](json& b) { first(b, "ServiceRequest")["subject"]["reference"] = "Observation/1"; },
       {"fhir", "own"}},
      {"reference to nothing",
       [](json& b) {
         first(b, "ServiceRequest")["subject"]["reference"] = "urn:uuid:0193a1c0-0000-7000-8000-00";
       },
       {"own"}},
      {"item without linkId",
       [](json& b) { first(b, "QuestionnaireResponse")["item"][0].erase("linkId"); },
       {"fhir", "own"}},
      {"missing subject", [](json& b) { first(b, "CarePlan").erase("subject"); }, {"fhir", "schema", "own"}},
      {"missing code", [](json& b) { first(b, "Observation").erase("code"); }, {"fhir", "schema", "own"}},
      {"unknown property", [](json& b) { first(b, "Patient")["shoe"] = 43; }, {"fhir", "schema", "own"}},
      {"null", [](json& b) { first(b, "CarePlan")["title"] = nullptr; }, {"schema", "own"}},
      {"string for a number",
       [](json& b) { first(b, "Observation", "valueQuantity")["valueQuantity"]["value"] = "3"; },
       {"schema", "own"}},
      {"object where a list belongs",
       [](json& b) {
         json& performer = first(b, "Observation", "performer")["performer"];
         performer = json(performer[0]);
       },
       {"schema", "own"}},
      {"dateTime without a zone",
       [](json& b) { first(b, "QuestionnaireResponse")["authored"] = "2026-09-07T08:05:00"; },
       {"schema", "own"}},
      {"dateTime in another order",
       [](json& b) { first(b, "QuestionnaireResponse")["authored"] = "07.09.2026"; },
       {"schema", "own"}},
      {"bad id", [](json& b) { first(b, "Flag")["id"] = "a_b"; }, {"schema", "own"}},
      {"empty string", [](json& b) { first(b, "CarePlan")["title"] = ""; }, {"schema", "own"}},
      {"wrong dayOfWeek", [](json& b) { repeatIn(b)["dayOfWeek"][0] = "monday"; }, {"own"}},
      {"tim-1", [](json& b) { repeatIn(b)["duration"] = 20; }, {"fhirpath"}},
      {"tim-2", [](json& b) { repeatIn(b).erase("periodUnit"); }, {"fhirpath"}},
      {"tim-10", [](json& b) { repeatIn(b)["when"] = json::array({"MORN"}); }, {"fhirpath"}},
      {"frequency 0", [](json& b) { repeatIn(b)["frequency"] = 0; }, {"own"}},
      {"two value[x]",
       [](json& b) { first(b, "Observation", "valueQuantity")["valueString"] = "3"; },
       {"own"}},
      {"empty list", [](json& b) { first(b, "CarePlan")["note"] = json::array(); }, {"own"}},
      {"cpl-3",
       [](json& b) {
         first(b, "CarePlan")["activity"][0]["detail"] = {{"status", "in-progress"}};
       },
       {"fhirpath"}},
      {"obs-6",
       [](json& b) {
         first(b, "Observation", "valueQuantity")["dataAbsentReason"] = {{"text", "x"}};
       },
       {"fhirpath"}},
      {"a period that ends before it begins",
       [](json& b) { first(b, "CarePlan")["period"]["end"] = "2020-01-01"; },
       {"fhirpath"}},
      {"a unit's code without its system",
       [](json& b) { first(b, "Observation", "valueQuantity")["valueQuantity"].erase("system"); },
       {"fhirpath"}},
      {"an extension with a value and parts",
       [](json& b) { first(b, "Procedure")["extension"][0]["valueString"] = "x"; },
       {"own"}},
      {"a goal without a subject",
       [](json& b) { first(b, "Goal").erase("subject"); },
       {"fhir", "schema", "own"}},
      {"a goal's state outside its set",
       [](json& b) { first(b, "Goal")["lifecycleStatus"] = "reached"; },
       {"fhir", "own"}},
      {"gol-1", [](json& b) { first(b, "Goal", "target")["target"][0].erase("measure"); }, {"fhirpath"}},
      {"an audit event without a time",
       [](json& b) { first(b, "AuditEvent").erase("recorded"); },
       {"fhir", "own"}},
      {"an audit event's time without a zone",
       [](json& b) { first(b, "AuditEvent")["recorded"] = "2026-09-07T08:05:00"; },
       {"schema", "own"}},
      {"an audit event that nobody saw",
       [](json& b) { first(b, "AuditEvent").erase("source"); },
       {"fhir", "schema", "own"}},
      {"an agent who may or may not have asked",
       [](json& b) { first(b, "AuditEvent")["agent"][0].erase("requestor"); },
       {"own"}},
      {"an action outside its set",
       [](json& b) { first(b, "AuditEvent", "action")["action"] = "X"; },
       {"own"}},
      {"a phone's state outside its set",
       [](json& b) { first(b, "Device")["status"] = "lost"; },
       {"fhir", "own"}},
      {"a phone of nobody in the bundle",
       [](json& b) { first(b, "Device")["patient"]["reference"] = "urn:uuid:0193a1c0-0000-7000-8000-00"; },
       {"own"}},
      {"a step's state outside its set", [](json& b) { stepIn(b)["status"] = "begun"; }, {"own"}},
      {"a step without its unit of time",
       [](json& b) { stepIn(b)["scheduledTiming"]["repeat"].erase("durationUnit"); },
       {"fhirpath"}},
      {"a wear plan that is part of a goal",
       [](json& b) {
         first(b, "CarePlan", "partOf")["partOf"][0]["reference"] =
             "urn:uuid:" + std::string(first(b, "Goal")["id"]);
       },
       {"own"}},
      {"the same resource twice", [](json& b) { b["entry"].push_back(b["entry"][0]); }, {"own", "fhirpath"}},
  };
}

// A history with everything in it, and what its bundle is.
json fullBundle() {
  for (std::uint64_t seed = 1; seed < 1000; ++seed) {
    json bundle = json::parse(bundleOf(test::anyHistory(seed)));
    bool whole = true;
    for (const char* type : {"CarePlan", "QuestionnaireResponse", "Flag", "DetectedIssue", "Communication",
                             "Goal", "Device", "AuditEvent"})
      whole = whole && !ofType(bundle, type).empty();
    if (!whole) continue;
    try {
      repeatIn(bundle);
      stepIn(bundle);
      first(bundle, "Goal", "target");
      first(bundle, "AuditEvent", "action");
      return bundle;
    } catch (const std::logic_error&) {
    }
  }
  ADD_FAILURE() << "no seed made a history with everything";
  return {};
}

TEST(FhirOutside, everyFaultThatValidatorsAreKnownForIsCaught) {
  NEWEL_NEEDS_OUTSIDE_CHECKS();
  const json right = fullBundle();
  std::vector<std::string> lines = {right.dump()};
  const std::vector<Fault> all = faults();
  for (const auto& fault : all) {
    json wrong = right;
    fault.put(wrong);
    lines.push_back(wrong.dump());
  }
  const auto found = test::outsideCheck("check_fhir.js", lines);
  for (const char* checker : kCheckers) EXPECT_TRUE(found[0][checker].empty()) << found[0].dump();
  for (std::size_t i = 0; i < all.size(); ++i) {
    for (const auto& checker : all[i].by)
      EXPECT_FALSE(found[i + 1][checker].empty()) << all[i].name << " by " << checker << ": " << found[i + 1];
  }
}

// Each claim of a profile falls when what the profile asks for is taken away.
TEST(FhirOutside, everyClaimFallsWithWhatItAsksFor) {
  NEWEL_NEEDS_OUTSIDE_CHECKS();
  ExportOptions options;
  options.us_profiles = true;
  const json right = json::parse(bundleOf(test::yearOfHistory(1), options));
  const auto claiming = [](json& bundle, const std::string& profile) -> json& {
    for (auto& entry : bundle["entry"]) {
      json& resource = entry["resource"];
      if (resource.contains("meta") && resource["meta"].contains("profile") &&
          resource["meta"]["profile"].dump().find("/" + profile + "\"") != std::string::npos)
        return resource;
    }
    throw std::logic_error("nothing claims " + profile);
  };
  using Take = std::function<void(json&)>;
  const std::vector<std::tuple<std::string, std::string, Take>> taken = {
      {"us-core-patient", "name", [](json& r) { r.erase("name"); }},
      {"us-core-patient", "us-core-6", [](json& r) { r["name"][0]["family"] = "Invented"; }},
      {"us-core-patient", "gender", [](json& r) { r.erase("gender"); }},
      {"us-core-patient", "identifier", [](json& r) { r["identifier"][0].erase("system"); }},
      {"us-core-patient", "subject", [](json& r) { r.erase("meta"); }},
      {"pa-careplan", "text.status", [](json& r) { r["text"]["status"] = "extensions"; }},
      {"pa-careplan", "text.div", [](json& r) { r["text"]["div"] = "<div>x</div>"; }},
      {"pa-careplan", "assess-plan", [](json& r) { r["category"].erase(0); }},
      {"pa-careplan", "PhysicalActivity", [](json& r) { r["category"].erase(1); }},
      {"pa-careplan", "intent", [](json& r) { r["intent"] = "order"; }},
      {"pa-careplan", "notes",
       [](json& r) {
         r["note"] = json::array({{{"text", "x"}}});
       }},
      {"pa-observation-activity-measure", "PhysicalActivity", [](json& r) { r["category"].erase(1); }},
      {"pa-observation-activity-measure", "effective", [](json& r) { r["effectivePeriod"].erase("end"); }},
      {"pa-observation-activity-measure", "minutes", [](json& r) { r["valueQuantity"]["code"] = "s"; }},
      {"pa-observation-activity-measure", "status", [](json& r) { r["status"] = "preliminary"; }},
      {"pa-observation-activity-measure", "performer",
       [](json& r) {
         r["performer"] = json::array({{{"display", "x"}}});
       }},
  };
  std::vector<std::string> lines = {right.dump()};
  for (const auto& [profile, what, take] : taken) {
    json wrong = right;
    take(claiming(wrong, profile));
    lines.push_back(wrong.dump());
  }
  json foreign = right;
  claiming(foreign, "pa-careplan")["meta"]["profile"][0] = "http://example.org/any";
  lines.push_back(foreign.dump());
  const auto found = test::outsideCheck("check_fhir.js", lines);
  EXPECT_TRUE(found[0]["us"].empty()) << found[0]["us"];
  for (std::size_t i = 0; i < taken.size(); ++i) {
    const std::string said = found[i + 1]["us"].dump();
    EXPECT_NE(said.find(std::get<1>(taken[i])), std::string::npos)
        << std::get<0>(taken[i]) << " " << std::get<1>(taken[i]) << ": " << said.substr(0, 400);
  }
  EXPECT_NE(found.back()["us"].dump().find("nobody checks"), std::string::npos);
}

}  // namespace
}  // namespace newel
