// Names and codes of the FHIR files: our own code systems and extensions, and the few codes of others, in one
// table. Codes of others carry no display, so that none can differ from its owner's.
// LOINC: numbers are used under its licence, whose notice (kLoincNotice) goes wherever they go: it stands in
// every bundle. No SNOMED CT code is in this repository: whoever ships one needs a licence; bodies and sides
// are text.
#pragma once

#include <string>

namespace newel {

// Of everything that is ours in a FHIR file. A name nobody can ever own (RFC 2606), because these are names
// and not places: nothing is to be fetched there.
inline constexpr char kFhirBase[] = "http://newel.invalid/fhir/";

// kFhirBase + "StructureDefinition/" + name
std::string extensionUrl(const std::string& name);
// kFhirBase + "CodeSystem/" + name: exercise, event, question, rule, reason, measure, skin-sign ...
std::string codeSystemUrl(const std::string& name);
// kFhirBase + "identifier/" + name: person, programme, programme-number, entry, account
std::string identifierUrl(const std::string& name);
// The canonical address of an exercise, without its version. A clinic's own has its clinic in it.
std::string exerciseUrl(const std::string& exercise_id, const std::string& clinic_id);
// The other way: the exercise's id; empty: no address of a catalogue's exercise.
std::string exerciseOfUrl(const std::string& url);
inline constexpr char kReadyCheckUrl[] = "http://newel.invalid/fhir/Questionnaire/ready-check";

inline constexpr char kLoinc[] = "http://loinc.org";
inline constexpr char kUcum[] = "http://unitsofmeasure.org";
inline constexpr char kObservationCategory[] = "http://terminology.hl7.org/CodeSystem/observation-category";
inline constexpr char kFlagCategory[] = "http://terminology.hl7.org/CodeSystem/flag-category";
// Events in the life of a record, ISO 21089, as FHIR's value set audit-event-type lists them.
inline constexpr char kLifeCycle[] = "http://terminology.hl7.org/CodeSystem/iso-21089-lifecycle";
// An extension of FHIR's own: which goal something is for.
inline constexpr char kPertainsToGoal[] = "http://hl7.org/fhir/StructureDefinition/resource-pertainsToGoal";
// Signature types of ASTM E1762-95, as FHIR's value set names them.
inline constexpr char kSignatureTypes[] = "urn:iso-astm:E1762-95:2013";
inline constexpr char kAuthorsSignature[] = "1.2.840.10065.1.12.1.1";

// LOINC numbers. Sources: LOINC, Regenstrief Institute, its page of each number.
inline constexpr char kLoincPain[] = "72514-3";      // pain severity 0 to 10, reported; sent as a number
inline constexpr char kLoincEffort[] = "82289-0";    // perceived exertion 0 to 10
inline constexpr char kLoincDuration[] = "55411-3";  // exercise duration

// The HL7 Physical Activity guide 1.0.0 and what it takes from US Core.
inline constexpr char kUsActivityCodes[] =
    "http://hl7.org/fhir/us/physical-activity/CodeSystem/pa-temporary-codes";
inline constexpr char kUsCarePlanCategory[] = "http://hl7.org/fhir/us/core/CodeSystem/careplan-category";
inline constexpr char kUsCorePatient[] = "http://hl7.org/fhir/us/core/StructureDefinition/us-core-patient";
inline constexpr char kDataAbsent[] = "http://hl7.org/fhir/StructureDefinition/data-absent-reason";
std::string usProfile(const std::string& name);  // "pa-careplan" and so on

// Section 10 of the LOINC licence asks for it (from memory; compare with loinc.org/license before a release).
inline constexpr char kLoincNotice[] =
    "This material contains content from LOINC (http://loinc.org). LOINC is copyright (c) Regenstrief "
    "Institute, "
    "Inc. and the Logical Observation Identifiers Names and Codes (LOINC) Committee and is available at no "
    "cost "
    "under the license at http://loinc.org/license. LOINC(R) is a registered United States trademark of "
    "Regenstrief Institute, Inc.";

}  // namespace newel
