// One person's history as a FHIR R4 (4.0.1) bundle of type collection: base R4, no profile, English.
//
//   person                      Patient: our id alone; no name, birth date, address
//   programme                   CarePlan (replaces the one before), Provenance with the clinic's signature
//   entry                       ServiceRequest, one a programme and entry; the exercise as ActivityDefinition
//   one run through an entry    Procedure: completed, stopped (begun, not finished) or not-done with its
//   reason occasion without a practice Procedure not-done once it is known, or excused; nothing where there
//   is no data dose done, pain, effort     Observations, partOf the Procedure; members of the practice's
//   Observation ready check                 Questionnaire, QuestionnaireResponse red flag, overridden ask
//   DetectedIssue fall                        AdverseEvent skin, open wound            Observation, Flag hold
//   order                  ServiceRequest on-hold, Flag, Communication (urgent) message Communication
//   measure, wear block         Observation (UCUM)
//
// Ids are the records' own or derived from them (record_words.h), so a second export says the same of the
// same. What FHIR has no element for stands in extensions of ours (fhir_codes.h) and in plain words. Left
// out: photos and clips, progression rules, cards of advice, goals (nothing here records one), devices,
// consent, and the hub's audit trail.
//
// With ExportOptions::us_profiles ServiceRequest, CarePlan and the activity Observations also claim the
// profiles of the HL7 Physical Activity guide 1.0.0. It wants a US Core Patient, with a name and a gender;
// the pseudonymous one here is none, and a receiver that checks says so.
#pragma once

#include <absl/status/statusor.h>

#include <string>

#include "sync/export/export_options.h"
#include "sync/export/person_history.h"

namespace newel {

// JSON, one resource a line. `history` passes checkHistory(). kInvalidArgument as adherenceIn(); kCancelled
// when `progress` ends it.
absl::StatusOr<std::string> fhirBundle(const PersonHistory& history, const ExportOptions& options,
                                       const ExportProgress& progress = {});

}  // namespace newel
