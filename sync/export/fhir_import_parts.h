// The inside of fhir_import.h: one ServiceRequest. For sync/export alone.
#pragma once

#include "sync/export/fhir_import.h"
#include "sync/export/fhir_reader.h"

namespace newel {

void takeRequest(const FhirNode& request, FhirImport& import);

// When it is due, from occurrenceTiming or occurrencePeriod. All of a timing is understood, or nothing of it
// is taken.
void takeTiming(const FhirNode& request, v1::Entry& entry, v1::Programme& draft);

}  // namespace newel
