// One person's history as a FHIR R4 (4.0.1) bundle of type collection: base R4, no profile, English.
//
//   person                 Patient: our id alone; no name, birth date, address
//   programme              CarePlan (replaces the one before; a measure asked for is an activity of it),
//                          Provenance with the clinic's signature
//   entry                  ServiceRequest, one a programme and entry; the exercise as ActivityDefinition
//   rule of progression    Goal of the entry; the whole rule in an extension
//   wear plan              CarePlan, part of the programmes that carry it; one activity a step, and how far
//   it is one run of an entry    Procedure: completed, stopped (begun, not finished) or not-done with its
//   reason no practice            Procedure not-done once it is known, or excused; nothing where there is no
//   data dose, pain, effort     Observations, partOf the Procedure; members of the practice's Observation
//   ready check            Questionnaire, QuestionnaireResponse
//   red flag, override     DetectedIssue
//   fall                   AdverseEvent
//   skin, open wound       Observation, Flag
//   hold order             ServiceRequest on-hold, Flag, Communication (urgent)
//   message                Communication
//   measure, wear block    Observation (UCUM)
//   paired phone           Device, without a serial number; its name with words alone
//   audit trail            AuditEvent, ids alone; phones and trail are the hub's, and not in `newel export`
//
// Ids are the records' own or derived from them (record_words.h), so a second export says the same of the
// same. What FHIR has no element for stands in extensions of ours (fhir_codes.h) and in plain words. Left
// out: photos and clips, cards of advice, and Consent, which no record of ours holds. A template is no part
// of anybody's record, and no programme says which one it began from, so there is no PlanDefinition here
// (fhir_templates.h).
//
// With ExportOptions::us_profiles some resources also claim a profile (United States), as far as they meet
// it; tests/sync/export/checks/us_profiles.js holds each claim to what the profile asks for:
//   Patient      US Core Patient: name and gender are said to be masked and unknown
//   CarePlan     PA Care Plan 1.0.0 where it has no notes (those want an author's national number)
//   Observation  PA Observation Activity Measure 1.0.0: time exercised, where its period has both ends
// Not claimed: PA Service Request (wants a requester's national number and SNOMED CT codes), PA Activity
// Group (wants all of its members to be activity measures), PA Goal (its measures are those of
// physical activity).

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
