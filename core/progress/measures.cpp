#include "core/progress/measures.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace newel {
namespace {

constexpr double kZ90 = 1.645;
constexpr double kZ95 = 1.96;
// Readings such as 12.3 - 8.7 must not pass a limit of 3.6 in the last binary digit.
constexpr double kSlack = 1e-9;

Band bandOf(const v1::NumberBand& band) { return {band.low(), band.has_high() ? band.high() : band.low()}; }

template <typename Formula>
Band through(const Band& band, Formula formula) {
  return {formula(band.low), formula(band.high)};
}

std::optional<Band> standardErrorOf(const v1::MeasureError& error) {
  if (error.has_standard_error()) return bandOf(error.standard_error());
  if (error.has_detectable_90()) return through(bandOf(error.detectable_90()), standardErrorFrom90);
  if (error.has_detectable_95()) return through(bandOf(error.detectable_95()), standardErrorFrom95);
  if (error.has_deviation() && error.has_reliability()) {
    const Band reliability = bandOf(error.reliability());
    // The better two readings agree, the smaller the error: the band turns round.
    return Band{standardError(error.deviation(), reliability.high),
                standardError(error.deviation(), reliability.low)};
  }
  return std::nullopt;
}

Beyond beyond(double size, const Band& detectable) {
  if (size > detectable.high + kSlack) return Beyond::Yes;
  if (size <= detectable.low + kSlack) return Beyond::No;
  return Beyond::CannotTell;
}

void decide(MeasuredChange& change) {
  const auto all = [&](Beyond wanted) {
    return std::all_of(change.known.begin(), change.known.end(),
                       [&](const JudgedError& judged) { return judged.beyond == wanted; });
  };
  const auto any = [&](Beyond wanted) {
    return std::any_of(change.known.begin(), change.known.end(),
                       [&](const JudgedError& judged) { return judged.beyond == wanted; });
  };
  if (change.known.empty()) {
    change.doubt = Doubt::NoErrorKnown;
  } else if (all(Beyond::Yes)) {
    change.answer = Beyond::Yes;
  } else if (all(Beyond::No)) {
    change.answer = Beyond::No;
  } else {
    const bool differ = any(Beyond::Yes) && any(Beyond::No);
    change.doubt = differ ? Doubt::SourcesDiffer : Doubt::WithinBand;
  }
}

bool meets(const v1::Cutoff& cutoff, double value) {
  switch (cutoff.bound_case()) {
    case v1::Cutoff::kAtLeast:
      return value >= cutoff.at_least() - kSlack;
    case v1::Cutoff::kOver:
      return value > cutoff.over() + kSlack;
    case v1::Cutoff::kAtMost:
      return value <= cutoff.at_most() + kSlack;
    case v1::Cutoff::kUnder:
      return value < cutoff.under() - kSlack;
    case v1::Cutoff::BOUND_NOT_SET:
      break;
  }
  return false;
}

}  // namespace

double standardError(double deviation, double reliability) { return deviation * std::sqrt(1 - reliability); }
double detectable90(double standard_error) { return kZ90 * std::numbers::sqrt2 * standard_error; }
double detectable95(double standard_error) { return kZ95 * std::numbers::sqrt2 * standard_error; }
double standardErrorFrom90(double detectable_90) { return detectable_90 / (kZ90 * std::numbers::sqrt2); }
double standardErrorFrom95(double detectable_95) { return detectable_95 / (kZ95 * std::numbers::sqrt2); }

std::vector<KnownError> knownErrors(const v1::MeasureKind& kind) {
  std::vector<KnownError> known;
  for (const auto& stated : kind.errors()) {
    if (!stated.unit().empty() && stated.unit() != kind.unit()) continue;
    const auto standard_error = standardErrorOf(stated);
    if (!standard_error) continue;
    KnownError error;
    error.stated = &stated;
    error.standard_error = *standard_error;
    error.printed_90 = stated.has_detectable_90();
    error.printed_95 = stated.has_detectable_95();
    error.detectable_90 =
        error.printed_90 ? bandOf(stated.detectable_90()) : through(*standard_error, detectable90);
    error.detectable_95 =
        error.printed_95 ? bandOf(stated.detectable_95()) : through(*standard_error, detectable95);
    known.push_back(error);
  }
  return known;
}

MeasuredChange changedBeyondError(const v1::MeasureKind& kind, double before, double after,
                                  Sureness sureness) {
  MeasuredChange change;
  change.difference = after - before;
  const bool lower = kind.better() == v1::MEASURE_DIRECTION_LOWER_IS_BETTER;
  const double gain = lower ? -change.difference : change.difference;
  change.better = gain > kSlack;
  for (const KnownError& error : knownErrors(kind)) {
    JudgedError judged;
    judged.error = error;
    judged.detectable = sureness == Sureness::Ninety ? error.detectable_90 : error.detectable_95;
    judged.beyond = beyond(std::abs(change.difference), judged.detectable);
    change.from_memory |= error.stated->source().kind() == v1::SOURCE_KIND_FROM_MEMORY;
    change.known.push_back(judged);
  }
  decide(change);
  for (const auto& stated : kind.important_changes()) {
    change.important.push_back({&stated, gain >= stated.change() - kSlack});
  }
  return change;
}

std::vector<JudgedCutoff> judgeCutoffs(const v1::MeasureKind& kind, double value) {
  std::vector<JudgedCutoff> judged;
  for (const auto& stated : kind.cutoffs()) judged.push_back({&stated, meets(stated, value)});
  return judged;
}

}  // namespace newel
