// Which lines of the reporting template for exercise programmes (CERT) a programme states, and which are
// missing: as data, for the desk and the report.
// Not here: whether a programme is good. A line that is stated can still be badly chosen.
#pragma once

#include <absl/status/statusor.h>

#include <optional>
#include <string>
#include <vector>

#include "core/library/catalogue.h"
#include "core/records/cert.pb.h"
#include "core/records/evidence.h"
#include "core/records/person.pb.h"
#include "core/records/practice.pb.h"
#include "core/records/programme.pb.h"

namespace newel {

// The template's lines: compiled in, the build fails on a bad one. Safe from any thread.
const v1::CertTable& certTable();
// From the one "*.textproto" in `folder`. kInvalidArgument with "<file>:<line>: <reason>", also when an item
// of the 16 has no line; kNotFound when the folder is missing or holds no file.
absl::StatusOr<v1::CertTable> loadCertTable(const std::string& folder);

// What was done, counted by whoever has the practices.
struct CertCounts {
  int practices = 0;
  int due = 0;   // occasions, excused ones left out
  int done = 0;  // of them
  // Practices with such an event; one stop can stand in several entries of its practice.
  int red_flags = 0;
  int falls = 0;
  int stops_for_pain = 0;
  int stops_for_skin = 0;
  int other_stops = 0;  // dizziness, unsteadiness, breath and whatever else lies in the body
};
// The events of `practices`; `due` and `done` stay 0, they come from adherenceOf() (core/progress).
CertCounts countEvents(const std::vector<v1::Practice>& practices);

enum class CertState {
  Stated,
  Missing,
  NotYet  // nothing has happened that could be reported: no practice, no programme before this one
};

struct CertResult {
  v1::CertLine line;
  CertState state = CertState::Missing;
  std::string statement;            // the clinic's words, or the line's "by_design"; may be empty
  std::vector<EvidenceLine> found;  // what states it (good) and what it lacks; keys: see certKeys()
};

struct CertInput {
  v1::Programme programme;  // a draft will do: what it lacks is missing, not an error
  v1::Person person;
  v1::CertStatements statements;     // of the clinic; a line with a statement is stated
  std::optional<CertCounts> counts;  // nullopt: nobody has counted
};

// One result a line of `table`, in its order.
std::vector<CertResult> certOf(const CertInput& input, const Catalogue& catalogue,
                               const v1::CertTable& table);

struct CertSummary {
  int stated = 0;
  int missing = 0;
  int not_yet = 0;
};
CertSummary summaryOf(const std::vector<CertResult>& results);

// Every key that `found` may carry, for whoever makes words of them.
const std::vector<std::string>& certKeys();

}  // namespace newel
