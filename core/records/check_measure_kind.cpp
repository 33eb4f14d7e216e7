#include <cmath>

#include "core/records/check.h"
#include "core/records/check_parts.h"

namespace newel {
namespace {

void checkNumber(const FieldCheck& check, const std::string& field, double value) {
  check.that(std::isfinite(value), field, "is not a number");
  check.that(std::abs(value) <= 1e6, field, "is out of all bounds");
}

void checkBand(const FieldCheck& check, const v1::NumberBand& band, double least, double most) {
  checkNumber(check, "low", band.low());
  check.that(band.low() >= least && band.low() <= most, "low", "is out of its bounds");
  if (!band.has_high()) return;
  checkNumber(check, "high", band.high());
  check.that(band.high() > band.low(), "high", "is not over low");
  check.that(band.high() <= most, "high", "is out of its bounds");
}

void checkError(const FieldCheck& check, const v1::MeasureError& error) {
  check.text("population", error.population(), 3, 300);
  if (error.has_reliability()) checkBand(check.at("reliability"), error.reliability(), 0, 1);
  if (error.has_deviation()) {
    checkNumber(check, "deviation", error.deviation());
    check.that(error.deviation() > 0, "deviation", "is not over 0");
  }
  // A detectable change of 0 would call every tremor of the hand an improvement.
  constexpr double kLeast = 1e-6;
  if (error.has_standard_error()) checkBand(check.at("standard_error"), error.standard_error(), kLeast, 1e6);
  if (error.has_detectable_90()) checkBand(check.at("detectable_90"), error.detectable_90(), kLeast, 1e6);
  if (error.has_detectable_95()) checkBand(check.at("detectable_95"), error.detectable_95(), kLeast, 1e6);
  const bool says = error.has_reliability() || error.has_standard_error() || error.has_detectable_90() ||
                    error.has_detectable_95();
  check.that(says, "reliability", "is missing: an error states at least one number");
  check.text("unit", error.unit(), 0, 40);
  check.text("note", error.note(), 0, 500);
  checkSource(check, error.has_source(), error.source());
}

void checkCutoff(const FieldCheck& check, const v1::Cutoff& cutoff) {
  switch (cutoff.bound_case()) {
    case v1::Cutoff::kAtLeast:
      checkNumber(check, "at_least", cutoff.at_least());
      break;
    case v1::Cutoff::kOver:
      checkNumber(check, "over", cutoff.over());
      break;
    case v1::Cutoff::kAtMost:
      checkNumber(check, "at_most", cutoff.at_most());
      break;
    case v1::Cutoff::kUnder:
      checkNumber(check, "under", cutoff.under());
      break;
    case v1::Cutoff::BOUND_NOT_SET:
      check.that(false, "bound", "is missing: at_least, over, at_most or under");
  }
  check.text("meaning", cutoff.meaning(), 3, 300);
  check.text("population", cutoff.population(), 3, 300);
  for (const auto& [field, given, value] :
       {std::tuple{"sensitivity_percent", cutoff.has_sensitivity_percent(), cutoff.sensitivity_percent()},
        std::tuple{"specificity_percent", cutoff.has_specificity_percent(), cutoff.specificity_percent()}}) {
    check.that(!given || (value >= 0 && value <= 100), field, "is not a share of 100");
  }
  checkSource(check, cutoff.has_source(), cutoff.source());
}

void checkReference(const FieldCheck& check, const v1::ReferenceValue& reference) {
  checkNumber(check, "low", reference.low());
  if (reference.has_high()) {
    checkNumber(check, "high", reference.high());
    check.that(reference.high() >= reference.low(), "high", "is under low");
  }
  if (reference.has_deviation()) {
    checkNumber(check, "deviation", reference.deviation());
    check.that(reference.deviation() > 0, "deviation", "is not over 0");
  }
  check.text("meaning", reference.meaning(), 1, 300);
  check.text("population", reference.population(), 3, 300);
  checkSource(check, reference.has_source(), reference.source());
}

void checkImportant(const FieldCheck& check, const v1::ImportantChange& change) {
  checkNumber(check, "change", change.change());
  check.that(change.change() > 0, "change", "is not over 0");
  check.text("meaning", change.meaning(), 3, 300);
  check.text("population", change.population(), 3, 300);
  checkSource(check, change.has_source(), change.source());
}

void checkWords(const FieldCheck& check, const v1::MeasureKind& kind) {
  check.that(kind.words().contains("en"), "words", "English is missing");
  for (const auto& [language, words] : kind.words()) {
    check.language("words[" + language + "]", language);
    FieldCheck at = check.at("words[" + language + "]");
    at.text("name", words.name(), 1, 80);
    at.text("protocol", words.protocol(), 10, 600);
  }
}

}  // namespace

absl::Status check(const v1::MeasureKind& kind) {
  FieldCheck check;
  check.key("id", kind.id());
  check.range("revision", kind.revision(), 1, 1000000);
  checkWords(check, kind);
  check.text("unit", kind.unit(), 1, 40);
  check.enums(kind);
  checkNumber(check, "least", kind.least());
  checkNumber(check, "most", kind.most());
  check.that(kind.least() < kind.most(), "most", "is not over least");
  check.range("decimals", kind.decimals(), 0, 3);
  for (int i = 0; i < kind.codes_size(); ++i) {
    FieldCheck at = check.at("codes", i);
    at.text("system", kind.codes(i).system(), 1, 200);
    at.text("code", kind.codes(i).code(), 1, 80);
    checkSource(at, kind.codes(i).has_source(), kind.codes(i).source());
  }
  for (int i = 0; i < kind.errors_size(); ++i) checkError(check.at("errors", i), kind.errors(i));
  for (int i = 0; i < kind.important_changes_size(); ++i)
    checkImportant(check.at("important_changes", i), kind.important_changes(i));
  for (int i = 0; i < kind.cutoffs_size(); ++i) checkCutoff(check.at("cutoffs", i), kind.cutoffs(i));
  for (int i = 0; i < kind.references_size(); ++i)
    checkReference(check.at("references", i), kind.references(i));
  checkStatedSources(check, kind.sources());
  check.text("note", kind.note(), 0, 1000);
  return check.status();
}

absl::Status check(const v1::ProgressionPreset& preset) {
  FieldCheck check;
  check.key("id", preset.id());
  check.range("revision", preset.revision(), 1, 1000000);
  check.that(preset.words().contains("en"), "words", "English is missing");
  for (const auto& [language, words] : preset.words()) {
    check.language("words[" + language + "]", language);
    FieldCheck at = check.at("words[" + language + "]");
    at.text("name", words.name(), 1, 80);
    at.text("says", words.says(), 10, 600);
  }
  check.that(preset.has_rule(), "rule", "is missing");
  checkProgression(check.at("rule"), preset.rule());
  check.enums(preset);
  checkStatedSources(check, preset.sources());
  return check.status();
}

}  // namespace newel
