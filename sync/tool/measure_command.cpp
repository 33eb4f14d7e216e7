#include <algorithm>
#include <map>
#include <ostream>
#include <utility>

#include "core/progress/measure_table.h"
#include "core/progress/measures.h"
#include "core/progress/symmetry.h"
#include "core/records/check.h"
#include "sync/tool/measure_text.h"
#include "sync/tool/trade_commands.h"
#include "sync/tool/trade_io.h"

namespace newel::tool {
namespace {

absl::StatusOr<MeasureTable> tableFrom(const std::string& folder) {
  if (folder.empty()) return MeasureTable::builtIn();
  const auto more = MeasureTable::load(folder);
  if (!more.ok()) return more.status();
  return MeasureTable::builtIn().with(*more);
}

absl::StatusOr<v1::MeasureKind> kindFrom(const std::string& folder, const std::string& id) {
  const auto table = tableFrom(folder);
  if (!table.ok()) return table.status();
  const auto* kind = table->find(id);
  if (kind != nullptr) return *kind;
  std::string ids;
  for (const auto& one : table->kinds()) ids += (ids.empty() ? "" : ", ") + one.id();
  return absl::NotFoundError("\"" + id + "\" is none of " + ids);
}

absl::Status withinBounds(const v1::MeasureKind& kind, double value) {
  if (value >= kind.least() && value <= kind.most()) return absl::OkStatus();
  return absl::InvalidArgumentError(shortNumber(value) + " is not between " + shortNumber(kind.least()) +
                                    " and " + shortNumber(kind.most()) + " " + kind.unit());
}

// Measures that can be compared: one kind, one side.
using Series = std::map<std::pair<std::string, int>, std::vector<v1::Measure>>;

void printSeries(const MeasureTable& table, const Series& series, std::ostream& out) {
  for (const auto& [key, measures] : series) {
    const v1::MeasureKind& kind = *table.find(key.first);
    out << measureWords(kind, "en").name();
    if (kind.per_side()) out << ", " << shortName(v1::Side_descriptor(), key.second);
    out << '\n';
    Table rows({"  day", "value", "unit", "aid"});
    for (const auto& measure : measures) {
      rows.row({"  " + measure.local_day(), numberText(measure.value(), static_cast<int>(kind.decimals())),
                kind.unit(), measure.walking_aid().empty() ? "-" : measure.walking_aid()});
    }
    rows.print(out);
    printCutoffs(kind, measures.back().value(), out);
    if (measures.size() < 2) continue;
    printChange(kind, changedBeyondError(kind, measures.front().value(), measures.back().value()),
                Sureness::Ninety, out);
    const std::string& first_aid = measures.front().walking_aid();
    const bool one_aid = std::all_of(measures.begin(), measures.end(), [&first_aid](const auto& measure) {
      return measure.walking_aid() == first_aid;
    });
    if (!one_aid) out << "  taken with different aids: compare with care\n";
  }
}

Json jsonOfSeries(const MeasureTable& table, const Series& series) {
  Json json = Json::array();
  for (const auto& [key, measures] : series) {
    const v1::MeasureKind& kind = *table.find(key.first);
    Json one = {{"kind", key.first}, {"unit", kind.unit()}};
    if (kind.per_side()) one["side"] = shortName(v1::Side_descriptor(), key.second);
    one["values"] = Json::array();
    for (const auto& measure : measures)
      one["values"].push_back({{"day", measure.local_day()}, {"value", measure.value()}});
    if (measures.size() > 1) {
      one["change"] = jsonOfChange(
          changedBeyondError(kind, measures.front().value(), measures.back().value()), Sureness::Ninety);
    }
    one["cutoffs"] = jsonOfCutoffs(kind, measures.back().value());
    json.push_back(std::move(one));
  }
  return json;
}

}  // namespace

int runMeasureList(const std::string& folder, const std::string& language, Output output) {
  const auto table = tableFrom(folder);
  if (!table.ok()) return complain(output.err, table.status());
  if (output.json) {
    Json json = Json::array();
    for (const auto& kind : table->kinds()) json.push_back(jsonOf(kind));
    printJson(json, output.out);
    return kFine;
  }
  Table rows({"measure", "name", "unit", "better", "from", "to", "detectable change (90 %)"});
  for (const auto& kind : table->kinds()) {
    std::string errors;
    for (const auto& error : knownErrors(kind))
      errors += (errors.empty() ? "" : "; ") + bandText(error.detectable_90);
    rows.row({kind.id(), measureWords(kind, language).name(), kind.unit(),
              kind.better() == v1::MEASURE_DIRECTION_LOWER_IS_BETTER ? "lower" : "higher",
              shortNumber(kind.least()), shortNumber(kind.most()), errors.empty() ? "not known" : errors});
  }
  rows.print(output.out);
  return kFine;
}

int runMeasureShow(const std::string& folder, const std::string& kind_id, const std::string& language,
                   Output output) {
  const auto kind = kindFrom(folder, kind_id);
  if (!kind.ok()) return complain(output.err, kind.status());
  if (output.json) {
    printJson(jsonOf(*kind), output.out);
  } else {
    printKind(*kind, language, output.out);
  }
  return kFine;
}

int runMeasureChange(const std::string& folder, const std::string& kind_id, double before, double after,
                     int sure, Output output) {
  const auto kind = kindFrom(folder, kind_id);
  if (!kind.ok()) return complain(output.err, kind.status());
  if (sure != 90 && sure != 95) {
    return complain(output.err, absl::InvalidArgumentError("--sure: is 90 or 95"));
  }
  for (const double value : {before, after}) {
    if (auto status = withinBounds(*kind, value); !status.ok()) return complain(output.err, status);
  }
  const Sureness sureness = sure == 95 ? Sureness::NinetyFive : Sureness::Ninety;
  const auto change = changedBeyondError(*kind, before, after, sureness);
  if (output.json) {
    printJson(jsonOfChange(change, sureness), output.out);
  } else {
    printChange(*kind, change, sureness, output.out);
  }
  return kFine;
}

int runMeasureRead(const std::string& folder, const std::vector<std::string>& files, Output output) {
  const auto table = tableFrom(folder);
  if (!table.ok()) return complain(output.err, table.status());
  Series series;
  for (const auto& file : files) {
    const auto measure = readRecord<v1::Measure>(file);
    if (!measure.ok()) return complain(output.err, measure.status());
    if (auto status = checkMeasure(*measure, *table); !status.ok()) {
      complain(output.err, absl::InvalidArgumentError(file + ": " + std::string(status.message())));
      return kSaysNo;
    }
    series[{measure->kind(), measure->side()}].push_back(*measure);
  }
  for (auto& [key, measures] : series) {
    std::stable_sort(measures.begin(), measures.end(), [](const auto& a, const auto& b) {
      return a.taken_at().seconds() < b.taken_at().seconds();
    });
  }
  if (output.json) {
    printJson(jsonOfSeries(*table, series), output.out);
  } else {
    printSeries(*table, series, output.out);
  }
  return kFine;
}

int runMeasureSymmetry(const std::vector<double>& values, Output output) {
  if (values.empty() || values.size() % 2 != 0) {
    return complain(output.err, absl::InvalidArgumentError("values: give pairs, first side and second side"));
  }
  std::vector<std::pair<double, double>> pairs;
  for (std::size_t i = 0; i < values.size(); i += 2) pairs.emplace_back(values[i], values[i + 1]);
  const auto mean = meanIndexSize(pairs);
  if (!mean.ok()) return complain(output.err, mean.status());
  Json json = {{"pairs", Json::array()}, {"mean_index_size_percent", *mean}};
  Table rows({"first", "second", "difference", "ratio", "of first %", "index %", "half index %", "share %",
              "angle %"});
  for (const auto& [a, b] : pairs) {
    const Symmetry symmetry = *symmetryOf(a, b);
    json["pairs"].push_back({{"first", a},
                             {"second", b},
                             {"difference", symmetry.difference},
                             {"ratio", symmetry.ratio},
                             {"of_first_percent", symmetry.of_first_percent},
                             {"index_percent", symmetry.index_percent},
                             {"half_index_percent", symmetry.half_index_percent},
                             {"share_percent", symmetry.share_percent},
                             {"angle_percent", symmetry.angle_percent}});
    rows.row({shortNumber(a), shortNumber(b), numberText(symmetry.difference, 2),
              numberText(symmetry.ratio, 3), numberText(symmetry.of_first_percent, 2),
              numberText(symmetry.index_percent, 2), numberText(symmetry.half_index_percent, 2),
              numberText(symmetry.share_percent, 2), numberText(symmetry.angle_percent, 2)});
  }
  if (output.json) {
    printJson(json, output.out);
    return kFine;
  }
  rows.print(output.out);
  output.out << "mean size of the index: " << numberText(*mean, 2)
             << " % (sizes, not signs: long steps left and right must not cancel)\n";
  return kFine;
}

int runMeasureError(double standard_error, double deviation, double reliability, Output output) {
  const bool from_spread = deviation > 0 && reliability >= 0 && reliability <= 1;
  if (standard_error <= 0 && !from_spread) {
    return complain(output.err,
                    absl::InvalidArgumentError("give --sem over 0, or --sd over 0 with --icc from 0 to 1"));
  }
  const double sem = standard_error > 0 ? standard_error : standardError(deviation, reliability);
  if (output.json) {
    printJson(
        {{"standard_error", sem}, {"detectable_90", detectable90(sem)}, {"detectable_95", detectable95(sem)}},
        output.out);
    return kFine;
  }
  Table rows({"SEM", "MDC90", "MDC95"});
  rows.row({numberText(sem, 4), numberText(detectable90(sem), 4), numberText(detectable95(sem), 4)});
  rows.print(output.out);
  return kFine;
}

}  // namespace newel::tool
