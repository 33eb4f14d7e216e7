// The kinds of outcome measures, read from data: compiled in, or from a clinic's own folder. Adding one is
// adding a file; see core/records/measure_kind.proto.
// Not here: what a value means (measures.h).
#pragma once

#include <absl/status/status.h>
#include <absl/status/statusor.h>

#include <string>
#include <vector>

#include "core/records/measure.pb.h"
#include "core/records/measure_kind.pb.h"

namespace newel {

// Immutable after load; safe to read from any thread. Kinds in the order of their files' names.
class MeasureTable {
 public:
  // Compiled into the program. Always valid: the build fails otherwise.
  static const MeasureTable& builtIn();

  // Every "*.textproto" directly in `folder`, one MeasureKind a file, named after its id. kInvalidArgument
  // with
  // "<file>:<line>: <reason>" on the first fault; kNotFound when the folder is missing or empty.
  static absl::StatusOr<MeasureTable> load(const std::string& folder);

  // This table and another; of two kinds with one id the higher revision counts, and of equal revisions
  // `more`'s.
  MeasureTable with(const MeasureTable& more) const;

  const std::vector<v1::MeasureKind>& kinds() const { return m_kinds; }
  const v1::MeasureKind* find(const std::string& id) const;  // nullptr: there is none

 private:
  std::vector<v1::MeasureKind> m_kinds;
};

// Words in `language`, in its base language ("es" for "es-MX"), or in English.
const v1::MeasureWords& measureWords(const v1::MeasureKind& kind, const std::string& language);

// OK, or kNotFound when the table has no such kind, or kInvalidArgument beginning with the field: another
// unit, a value outside the kind's bounds, a missing or needless side. Besides check(), which knows no table.
absl::Status checkMeasure(const v1::Measure& measure, const MeasureTable& table);

}  // namespace newel
