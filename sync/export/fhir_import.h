// What a FHIR R4 file from elsewhere says of a person and of what was asked for, as a beginning for the desk:
// who it is, and a draft that a therapist completes and signs. Nothing is guessed: what Newel has no place
// for, or what could be meant in more than one way, is listed by its path and left to the therapist. Taken:
// one Patient (name, birth date, phone, language) and ServiceRequests that are still to be done. A request
// becomes an entry of the draft only where it names an exercise of the catalogue by its canonical address and
// revision, as our own export does (fhir_codes.h); every other is shown in its own words.
#pragma once

#include <absl/status/statusor.h>

#include <string>
#include <vector>

#include "core/records/identity.pb.h"
#include "core/records/person.pb.h"
#include "core/records/programme.pb.h"

namespace newel {

// A larger file is refused: one person's wishes need less.
inline constexpr std::size_t kMostImportBytes = std::size_t{16} << 20;

struct ImportedRequest {
  std::string path;         // "entry[2].resource"
  std::string title;        // what is asked for, in the file's words
  std::string instruction;  // to the patient
  std::string reason;
  std::string body_site;
  std::string requester;
  std::string authored_on;  // as written
  std::vector<std::string> notes;
  int entry = -1;  // its place among the draft's entries; -1: the therapist chooses an exercise
};

struct FhirImport {
  // What the file states and no more: ids, body, home and zone are for the desk to add, and check() would
  // refuse these as they are.
  v1::Identity identity;
  v1::Person person;    // language alone
  v1::Programme draft;  // days, zone and entries, as far as they are stated
  std::vector<ImportedRequest> requests;
  // "Patient.address[0]: not taken over", each with its path.
  std::vector<std::string> not_taken;
  // What must be read before anything is begun: a request that says what is NOT to be done, a Patient who has
  // died.
  std::vector<std::string> warnings;
};

// `text`: a Patient, a ServiceRequest, or a Bundle with any resources in it. kInvalidArgument begins with the
// path of the field, "entry[1].resource.name[0].family: is no string": no JSON, no FHIR, a value of another
// form than R4's, two Patients, a request about somebody else than the Patient, too large a file.
absl::StatusOr<FhirImport> importFhir(const std::string& text);

}  // namespace newel
