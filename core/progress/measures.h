// What a measured value and a change of it mean: measurement error, cutoffs, changes that matter.
// Every number carries its source and its population, and says when it was not checked against the paper.
// Not here: how a measure is taken (measure_table.h), and any verdict about a person. No function here
// assigns a mobility level: a total score predicts K1 and K4 poorly, and the level is the practitioner's.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/records/measure_kind.pb.h"

namespace newel {

// Standard error of measurement = SD x sqrt(1 - ICC), and the smallest detectable change at 90 % and 95 %:
// 1.645 x sqrt(2) x SEM and 1.96 x sqrt(2) x SEM. Standard formulas; checked on the numbers printed by
// Sawers and others 2020, Physical Therapy. SD and SEM over 0, ICC 0 to 1.
double standardError(double deviation, double reliability);
double detectable90(double standard_error);
double detectable95(double standard_error);
double standardErrorFrom90(double detectable_90);
double standardErrorFrom95(double detectable_95);

// Low and high are equal where one number is known.
struct Band {
  double low = 0;
  double high = 0;
};

// One study's error with everything that follows from it by the formulas above.
struct KnownError {
  const v1::MeasureError* stated = nullptr;  // lives as long as the kind
  Band standard_error;
  Band detectable_90;
  Band detectable_95;
  bool printed_90 = false;  // the source prints it; false: by formula
  bool printed_95 = false;
};
// Those of the kind that can judge its values, in the kind's order. Left out: a study that gives only a
// correlation, and one in another unit.
std::vector<KnownError> knownErrors(const v1::MeasureKind& kind);

enum class Sureness { Ninety, NinetyFive };
enum class Beyond { Yes, No, CannotTell };
// Why it cannot be told.
enum class Doubt {
  None,
  NoErrorKnown,  // no study with a usable number
  WithinBand,    // the change lies inside what one source leaves open
  SourcesDiffer  // beyond the error by one study, within it by another
};

struct JudgedError {
  KnownError error;
  Band detectable;  // at the sureness asked for
  Beyond beyond = Beyond::CannotTell;
};

struct ReachedChange {
  const v1::ImportantChange* stated = nullptr;
  bool reached = false;  // as large as this or larger, and for the better
};

struct MeasuredChange {
  Beyond answer = Beyond::CannotTell;
  Doubt doubt = Doubt::None;
  double difference = 0;           // after - before
  bool better = false;             // in the kind's direction; false when nothing changed
  std::vector<JudgedError> known;  // every study that was asked
  std::vector<ReachedChange> important;
  bool from_memory = false;  // a study asked is marked as recalled, not checked against the paper
};

// Yes: the size of the change is over the detectable change of every study known. No: it is over none.
// Otherwise it cannot be told, and `doubt` says why. A change that equals the detectable change is not over
// it. `before` and `after` in the kind's unit, taken in the same way with the same aid and on the same side.
MeasuredChange changedBeyondError(const v1::MeasureKind& kind, double before, double after,
                                  Sureness sureness = Sureness::Ninety);

struct JudgedCutoff {
  const v1::Cutoff* stated = nullptr;
  bool met = false;
};
// Every cutoff of the kind with whether `value` meets it. Which population is this person's is for the
// therapist to say.
std::vector<JudgedCutoff> judgeCutoffs(const v1::MeasureKind& kind, double value);

}  // namespace newel
