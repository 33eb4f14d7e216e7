// Templates that programmes begin from, as a FHIR R4 bundle of type collection: a PlanDefinition each, one
// action an entry, and an ActivityDefinition for every exercise that one of them names. About nobody;
// English. What an entry leaves to its rung, its exercise or the person is left out here too. Left out: cards
// of advice.
#pragma once

#include <absl/time/time.h>

#include <string>
#include <vector>

#include "core/records/template.pb.h"

namespace newel {

// JSON, one resource a line. `templates` fit the catalogue compiled in (core/library/templates.h); `made_at`
// stands in the bundle alone.
std::string fhirTemplates(const std::vector<v1::ProgrammeTemplate>& templates, absl::Time made_at);

}  // namespace newel
