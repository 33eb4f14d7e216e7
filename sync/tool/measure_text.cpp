#include "sync/tool/measure_text.h"

#include <algorithm>
#include <ostream>

#include "core/progress/measure_table.h"

namespace newel::tool {
namespace {

std::string answerText(Beyond answer) {
  if (answer == Beyond::Yes) return "yes";
  return answer == Beyond::No ? "no" : "cannot tell";
}

std::string doubtText(Doubt doubt) {
  switch (doubt) {
    case Doubt::NoErrorKnown:
      return "no measurement error is known for it";
    case Doubt::WithinBand:
      return "it lies inside what the source leaves open";
    case Doubt::SourcesDiffer:
      return "the sources differ";
    case Doubt::None:
      break;
  }
  return "";
}

std::string boundText(const v1::Cutoff& cutoff) {
  switch (cutoff.bound_case()) {
    case v1::Cutoff::kAtLeast:
      return "at least " + shortNumber(cutoff.at_least());
    case v1::Cutoff::kOver:
      return "over " + shortNumber(cutoff.over());
    case v1::Cutoff::kAtMost:
      return "at most " + shortNumber(cutoff.at_most());
    case v1::Cutoff::kUnder:
      return "under " + shortNumber(cutoff.under());
    case v1::Cutoff::BOUND_NOT_SET:
      break;
  }
  return "-";
}

std::string inPeople(const std::string& population, std::uint32_t people) {
  return population + (people == 0 ? "" : ", n = " + std::to_string(people));
}

std::string shareText(const v1::Cutoff& cutoff) {
  if (!cutoff.has_sensitivity_percent()) return "";
  std::string text = " (sensitivity " + shortNumber(cutoff.sensitivity_percent()) + " %";
  if (cutoff.has_specificity_percent())
    text += ", specificity " + shortNumber(cutoff.specificity_percent()) + " %";
  return text + ")";
}

void printErrors(const v1::MeasureKind& kind, std::ostream& out) {
  Table table({"  SEM", "MDC90", "MDC95", "in", "source"});
  const auto known = knownErrors(kind);
  for (const auto& error : known) {
    table.row({"  " + bandText(error.standard_error),
               bandText(error.detectable_90) + (error.printed_90 ? "" : " *"),
               bandText(error.detectable_95) + (error.printed_95 ? "" : " *"),
               inPeople(error.stated->population(), error.stated->people()),
               sourceText(error.stated->source())});
  }
  out << "measurement error" << (known.empty() ? ": not known" : " (* by formula)") << '\n';
  if (!known.empty()) table.print(out);
  for (const auto& stated : kind.errors()) {
    const bool used = std::any_of(known.begin(), known.end(),
                                  [&](const KnownError& error) { return error.stated == &stated; });
    if (!used) out << "  not used: " << stated.note() << " (" << sourceText(stated.source()) << ")\n";
  }
}

}  // namespace

std::string bandText(const Band& band) {
  if (band.low == band.high) return numberText(band.low, 2);
  return numberText(band.low, 2) + " to " + numberText(band.high, 2);
}

void printKind(const v1::MeasureKind& kind, const std::string& language, std::ostream& out) {
  const auto& words = measureWords(kind, language);
  out << words.name() << " (" << kind.id() << ", revision " << kind.revision() << ")\n"
      << words.protocol() << '\n'
      << "unit " << kind.unit() << ", "
      << (kind.better() == v1::MEASURE_DIRECTION_LOWER_IS_BETTER ? "lower" : "higher") << " is better, "
      << shortNumber(kind.least()) << " to " << shortNumber(kind.most())
      << (kind.per_side() ? ", each side" : "") << (kind.aid_recorded() ? ", with the aid written down" : "")
      << '\n';
  printErrors(kind, out);
  for (const auto& change : kind.important_changes()) {
    out << "change of " << shortNumber(change.change()) << ": " << change.meaning() << "; in "
        << change.population() << "; " << sourceText(change.source()) << '\n';
  }
  for (const auto& cutoff : kind.cutoffs()) {
    out << boundText(cutoff) << ": " << cutoff.meaning() << shareText(cutoff) << "; in "
        << inPeople(cutoff.population(), cutoff.people()) << "; " << sourceText(cutoff.source()) << '\n';
  }
  for (const auto& value : kind.references()) {
    out << shortNumber(value.low()) << (value.has_high() ? " to " + shortNumber(value.high()) : "")
        << (value.has_deviation() ? " (SD " + shortNumber(value.deviation()) + ")" : "") << ": "
        << value.meaning() << "; in " << inPeople(value.population(), value.people()) << "; "
        << sourceText(value.source()) << '\n';
  }
  for (const auto& code : kind.codes())
    out << code.system() << " " << code.code() << "; " << sourceText(code.source()) << '\n';
  for (const auto& source : kind.sources()) out << sourceText(source) << '\n';
  if (!kind.note().empty()) out << kind.note() << '\n';
}

void printCutoffs(const v1::MeasureKind& kind, double value, std::ostream& out) {
  for (const auto& [stated, met] : judgeCutoffs(kind, value)) {
    out << "  " << shortNumber(value) << " is " << (met ? "" : "not ") << boundText(*stated) << ": "
        << stated->meaning() << "; in " << inPeople(stated->population(), stated->people()) << '\n';
  }
}

void printChange(const v1::MeasureKind& kind, const MeasuredChange& change, Sureness sureness,
                 std::ostream& out) {
  out << "changed by " << shortNumber(change.difference) << " " << kind.unit()
      << (change.difference == 0 ? ""
          : change.better        ? " (better)"
                                 : " (worse)")
      << "; beyond measurement error: " << answerText(change.answer);
  if (change.doubt != Doubt::None) out << ", " << doubtText(change.doubt);
  out << '\n';
  const char* name = sureness == Sureness::Ninety ? "MDC90 " : "MDC95 ";
  for (const auto& judged : change.known) {
    const bool printed = sureness == Sureness::Ninety ? judged.error.printed_90 : judged.error.printed_95;
    out << "  " << name << bandText(judged.detectable) << (printed ? "" : " by formula") << ": "
        << answerText(judged.beyond) << "; in "
        << inPeople(judged.error.stated->population(), judged.error.stated->people()) << "; "
        << sourceText(judged.error.stated->source()) << '\n';
  }
  for (const auto& [stated, reached] : change.important) {
    out << "  " << (reached ? "reaches " : "does not reach ") << shortNumber(stated->change()) << ": "
        << stated->meaning() << "; in " << stated->population() << "; " << sourceText(stated->source())
        << '\n';
  }
}

Json jsonOfChange(const MeasuredChange& change, Sureness sureness) {
  Json json = {{"difference", change.difference},
               {"better", change.better},
               {"beyond_error", answerText(change.answer)},
               {"why", doubtText(change.doubt)},
               {"sure_percent", sureness == Sureness::Ninety ? 90 : 95},
               {"from_memory", change.from_memory},
               {"known", Json::array()},
               {"important", Json::array()}};
  for (const auto& judged : change.known) {
    json["known"].push_back(
        {{"standard_error", {judged.error.standard_error.low, judged.error.standard_error.high}},
         {"detectable", {judged.detectable.low, judged.detectable.high}},
         {"beyond", answerText(judged.beyond)},
         {"population", judged.error.stated->population()},
         {"source", jsonOf(judged.error.stated->source())}});
  }
  for (const auto& [stated, reached] : change.important)
    json["important"].push_back({{"reached", reached}, {"stated", jsonOf(*stated)}});
  return json;
}

Json jsonOfCutoffs(const v1::MeasureKind& kind, double value) {
  Json json = Json::array();
  for (const auto& [stated, met] : judgeCutoffs(kind, value))
    json.push_back({{"met", met}, {"stated", jsonOf(*stated)}});
  return json;
}

}  // namespace newel::tool
