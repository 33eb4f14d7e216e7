// The starting templates as PlanDefinitions.
#include "sync/export/fhir_templates.h"

#include <gtest/gtest.h>

#include <set>

#include "core/library/catalogue.h"
#include "sync/export/fhir_codes.h"
#include "tests/sync/export/fhir_fixture.h"
#include "tests/sync/export/outside_checks.h"

namespace newel {
namespace {

using nlohmann::json;
using test::ofType;

const absl::Time kNow = absl::FromUnixSeconds(1790000000);

json bundleOfAll() { return json::parse(fhirTemplates(Catalogue::builtIn().templates(), kNow)); }

// Every one with all of its entries, each leading to an exercise of the bundle.
TEST(FhirTemplates, everyTemplateIsThereWithItsExercises) {
  const json bundle = bundleOfAll();
  const auto& templates = Catalogue::builtIn().templates();
  const auto plans = ofType(bundle, "PlanDefinition");
  ASSERT_EQ(plans.size(), templates.size());
  std::set<std::string> known;
  for (const auto& exercise : ofType(bundle, "ActivityDefinition"))
    known.insert(std::string(exercise["url"]) + "|" + std::string(exercise["version"]));
  std::set<std::string> urls;
  for (std::size_t i = 0; i < plans.size(); ++i) {
    urls.insert(plans[i]["url"]);
    EXPECT_EQ(plans[i]["title"], templates[i].words().at("en").name());
    EXPECT_EQ(plans[i]["relatedArtifact"].size(), static_cast<std::size_t>(templates[i].sources_size()));
    ASSERT_EQ(plans[i]["action"].size(), static_cast<std::size_t>(templates[i].entries_size()));
    for (std::size_t a = 0; a < plans[i]["action"].size(); ++a) {
      const json& action = plans[i]["action"][a];
      EXPECT_TRUE(known.contains(action["definitionCanonical"])) << action["definitionCanonical"];
      const v1::TemplateEntry& entry = templates[i].entries(static_cast<int>(a));
      EXPECT_NE(std::string(action["definitionCanonical"]).find("/" + entry.exercise_id() + "|"),
                std::string::npos);
      EXPECT_EQ(action.dump().find("StructureDefinition/dose") != std::string::npos, entry.has_dose())
          << "what the rung says is not said twice";
      EXPECT_EQ(action["timingTiming"]["repeat"]["boundsDuration"]["value"], templates[i].weeks());
    }
  }
  EXPECT_EQ(urls.size(), templates.size());
  EXPECT_TRUE(ofType(bundle, "Patient").empty());
}

// The version follows what is said, and nothing else.
TEST(FhirTemplates, anotherTemplateIsAnotherVersion) {
  auto templates = Catalogue::builtIn().templates();
  const auto version = [&templates] {
    return ofType(json::parse(fhirTemplates(templates, kNow)), "PlanDefinition")[0]["version"]
        .get<std::string>();
  };
  const std::string before = version();
  EXPECT_EQ(version(), before);
  templates[0].set_weeks(templates[0].weeks() + 1);
  EXPECT_NE(version(), before);
}

TEST(FhirTemplates, passEveryCheckerAndFaultsDoNot) {
  NEWEL_NEEDS_OUTSIDE_CHECKS();
  const json right = bundleOfAll();
  const auto planIn = [](json& bundle) -> json& {
    for (auto& entry : bundle["entry"]) {
      if (entry["resource"]["resourceType"] == "PlanDefinition") return entry["resource"];
    }
    throw std::logic_error("no plan");
  };
  std::vector<std::string> lines = {right.dump()};
  json wrong = right;
  planIn(wrong).erase("status");
  lines.push_back(wrong.dump());
  wrong = right;
  planIn(wrong)["action"][0]["timingTiming"]["repeat"].erase("periodUnit");
  lines.push_back(wrong.dump());
  wrong = right;
  planIn(wrong)["action"][0]["definitionUri"] = "http://example.org/";
  lines.push_back(wrong.dump());
  wrong = right;
  planIn(wrong)["relatedArtifact"][0]["type"] = "hearsay";
  lines.push_back(wrong.dump());
  const auto found = test::outsideCheck("check_fhir.js", lines);
  for (const char* checker : {"fhir", "schema", "fhirpath", "own", "us"})
    EXPECT_TRUE(found[0][checker].empty()) << checker << ": " << found[0][checker].dump().substr(0, 600);
  EXPECT_FALSE(found[1]["fhir"].empty());
  EXPECT_FALSE(found[2]["fhirpath"].empty());
  EXPECT_FALSE(found[3]["own"].empty());
  EXPECT_FALSE(found[4]["own"].empty());
}

}  // namespace
}  // namespace newel
