// The FHIR bundle of a history as JSON, for tests.
#pragma once

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <string>
#include <utility>
#include <vector>

#include "sync/export/fhir_bundle.h"

namespace newel::test {

inline std::string bundleOf(const PersonHistory& history, const ExportOptions& options = {}) {
  auto bundle = fhirBundle(history, options);
  EXPECT_TRUE(bundle.ok()) << bundle.status();
  return bundle.ok() ? *std::move(bundle) : "{}";
}

inline std::vector<nlohmann::json> ofType(const nlohmann::json& bundle, const std::string& type) {
  std::vector<nlohmann::json> found;
  for (const auto& entry : bundle["entry"]) {
    if (entry["resource"]["resourceType"] == type) found.push_back(entry["resource"]);
  }
  return found;
}

}  // namespace newel::test
