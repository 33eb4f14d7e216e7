#include <absl/strings/str_cat.h>

#include <algorithm>
#include <ostream>
#include <sstream>

#include "core/progress/load.h"
#include "core/records/check.h"
#include "core/time/local_day.h"
#include "sync/tool/trade_commands.h"
#include "sync/tool/trade_io.h"

namespace newel::tool {
namespace {

constexpr char kRule[] =
    "effort x minutes; a week is seven local days from Monday, days of rest count 0, SD of the population, "
    "no "
    "monotony where all days are equal or days are missing";

// Lines "YYYY-MM-DD effort minutes", parted by tabs or spaces; "#" begins a comment.
absl::StatusOr<std::vector<DayLoad>> readLoads(const std::string& file) {
  const auto text = readFile(file);
  if (!text.ok()) return text.status();
  std::vector<DayLoad> loads;
  std::istringstream lines(*text);
  std::string line;
  for (int number = 1; std::getline(lines, line); ++number) {
    if (line.empty() || line[0] == '#') continue;
    const auto fault = [&](const std::string& reason) {
      return absl::InvalidArgumentError(absl::StrCat(file, ":", number, ": ", reason));
    };
    std::istringstream cells(line);
    std::string day_text, rest;
    double effort = -1, minutes = -1;
    if (!(cells >> day_text >> effort >> minutes) || cells >> rest) return fault("not day, effort, minutes");
    const auto day = parseLocalDay(day_text);
    if (!day.ok()) return fault(std::string(day.status().message()));
    if (!(effort >= 0 && effort <= 10)) return fault("effort is not 0 to 10");
    if (!(minutes >= 0 && minutes <= 1440)) return fault("minutes are not 0 to 1440");
    loads.push_back({*day, sessionLoad(effort, minutes)});
  }
  if (loads.empty()) return absl::InvalidArgumentError(file + ": no loads in it");
  return loads;
}

Json jsonOfSpread(const LoadSpread& spread) {
  return {{"sum", spread.sum},
          {"mean", spread.mean},
          {"deviation", spread.deviation},
          {"monotony", jsonOf(spread.monotony)},
          {"strain", jsonOf(spread.strain)}};
}

int printSpread(const LoadSpread& spread, Output output) {
  if (output.json) {
    printJson(jsonOfSpread(spread), output.out);
    return kFine;
  }
  Table table({"sum", "mean", "SD", "monotony", "strain"});
  table.row({numberText(spread.sum, 1), numberText(spread.mean, 3), numberText(spread.deviation, 3),
             numberText(spread.monotony, 3), numberText(spread.strain, 1)});
  table.print(output.out);
  return kFine;
}

int printWeeks(const std::vector<WeekLoad>& weeks, Output output) {
  if (output.json) {
    Json json = Json::array();
    for (const WeekLoad& week : weeks) {
      Json one = {{"monday", formatLocalDay(week.monday)}, {"whole", week.whole}, {"days", week.days}};
      one.update(jsonOfSpread(week.spread));
      one["unrated_entries"] = week.unrated_entries;
      json.push_back(std::move(one));
    }
    printJson(json, output.out);
    return kFine;
  }
  Table table(
      {"week of", "Mo", "Tu", "We", "Th", "Fr", "Sa", "Su", "load", "monotony", "strain", "not rated"});
  for (const WeekLoad& week : weeks) {
    std::vector<std::string> row = {formatLocalDay(week.monday)};
    for (const double load : week.days) row.push_back(numberText(load, 1));
    row.push_back(numberText(week.spread.sum, 1));
    row.push_back(numberText(week.spread.monotony, 3));
    row.push_back(numberText(week.spread.strain, 1));
    row.push_back(std::to_string(week.unrated_entries));
    table.row(std::move(row));
  }
  table.print(output.out);
  output.out << kRule << '\n';
  return kFine;
}

struct Range {
  absl::CivilDay first, last;
};

// What was asked for, or from the first to the last of `days` (never empty).
absl::StatusOr<Range> rangeOf(const LoadOptions& options, const std::vector<absl::CivilDay>& days) {
  Range range = {days.front(), days.front()};
  for (const auto day : days) {
    range.first = std::min(range.first, day);
    range.last = std::max(range.last, day);
  }
  if (!options.from.empty()) {
    const auto day = dayOption("--from", options.from);
    if (!day.ok()) return day.status();
    range.first = *day;
  }
  if (!options.to.empty()) {
    const auto day = dayOption("--to", options.to);
    if (!day.ok()) return day.status();
    range.last = *day;
  }
  return range;
}

absl::StatusOr<std::vector<WeekLoad>> weeksOf(const LoadOptions& options) {
  std::vector<absl::CivilDay> days;
  if (!options.file.empty()) {
    const auto loads = readLoads(options.file);
    if (!loads.ok()) return loads.status();
    for (const auto& load : *loads) days.push_back(load.day);
    const auto range = rangeOf(options, days);
    if (!range.ok()) return range.status();
    return weeklyLoads(*loads, range->first, range->last);
  }
  std::vector<v1::Practice> practices;
  if (auto status = readRecords(options.practices, practices); !status.ok()) return status;
  for (const auto& practice : practices) {
    const auto day = parseLocalDay(practice.local_day());
    if (!day.ok()) return day.status();
    days.push_back(*day);
  }
  const auto range = rangeOf(options, days);
  if (!range.ok()) return range.status();
  return weeklyLoads(practices, range->first, range->last);
}

}  // namespace

int runLoad(const LoadOptions& options, Output output) {
  const int given =
      (options.loads.empty() ? 0 : 1) + (options.file.empty() ? 0 : 1) + (options.practices.empty() ? 0 : 1);
  if (given != 1) {
    return complain(output.err, absl::InvalidArgumentError("give one of --loads, --file and --practices"));
  }
  if (!options.loads.empty()) return printSpread(loadSpread(options.loads), output);
  const auto weeks = weeksOf(options);
  if (!weeks.ok()) return complain(output.err, weeks.status());
  return printWeeks(*weeks, output);
}

}  // namespace newel::tool
