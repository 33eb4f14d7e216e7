#include <algorithm>
#include <ostream>

#include "core/progress/progression.h"
#include "core/progress/progression_presets.h"
#include "core/progress/trend.h"
#include "core/records/check.h"
#include "core/time/local_day.h"
#include "sync/tool/evidence_words.h"
#include "sync/tool/trade_commands.h"
#include "sync/tool/trade_io.h"

namespace newel::tool {
namespace {

std::string adviceText(Advice advice) {
  switch (advice) {
    case Advice::NoRule:
      return "no rule";
    case Advice::Hold:
      return "hold";
    case Advice::Ready:
      return "ready";
    case Advice::StepBack:
      break;
  }
  return "step back";
}

// What was due, and so what was missed. Nothing when no days are given.
absl::StatusOr<std::vector<OccasionResult>> occasionsFrom(const ProgressOptions& options,
                                                          const std::vector<v1::Programme>& programmes,
                                                          const std::vector<v1::Practice>& practices) {
  if (options.from.empty() && options.to.empty()) return std::vector<OccasionResult>();
  auto adherence = adherenceFrom(options, programmes, practices);
  if (!adherence.ok()) return adherence.status();
  return std::move(adherence->occasions);
}

Json jsonOfCourse(const PainCourse& course) {
  Json json = {{"ratings", Json::array()}, {"slope_per_week", jsonOf(course.slope_per_week)}};
  for (const auto& rating : course.ratings)
    json["ratings"].push_back({{"day", formatLocalDay(rating.day)}, {"pain_0_10", rating.pain_0_10}});
  json["change"] = nullptr;
  if (course.change) {
    json["change"] = {{"points", course.change->points},
                      {"percent", jsonOf(course.change->percent)},
                      {"by_points", course.change->by_points},
                      {"by_percent", course.change->by_percent}};
  }
  return json;
}

std::string courseText(const PainCourse& course) {
  std::string text = std::to_string(course.ratings.size()) + " ratings of pain";
  if (course.slope_per_week) text += ", " + numberText(*course.slope_per_week, 2) + " points a week";
  if (!course.change) return text;
  text += "; last three against the three before: " + numberText(course.change->points, 1) + " points";
  if (course.change->percent) text += ", " + numberText(*course.change->percent, 0) + " %";
  return text + (course.change->by_points || course.change->by_percent ? ", matters" : ", may be chance");
}

}  // namespace

int runProgress(const ProgressOptions& options, Output output) {
  std::vector<v1::Programme> programmes;
  if (auto status = readRecords(options.programmes, programmes); !status.ok())
    return complain(output.err, status);
  std::vector<v1::Practice> practices;
  if (auto status = readRecords(options.practices, practices); !status.ok())
    return complain(output.err, status);
  const auto occasions = occasionsFrom(options, programmes, practices);
  if (!occasions.ok()) return complain(output.err, occasions.status());
  const auto last = std::max_element(programmes.begin(), programmes.end(),
                                     [](const auto& a, const auto& b) { return a.number() < b.number(); });
  if (last == programmes.end())
    return complain(output.err, absl::InvalidArgumentError("--programmes: none was given"));
  Json json = Json::array();
  for (const auto& entry : last->entries()) {
    const auto advice = adviseProgression(programmes, entry.id(), practices, *occasions);
    if (!advice.ok()) return complain(output.err, advice.status());
    const PainCourse course = painCourse(practices, entry.id());
    if (output.json) {
      Json one = {{"entry_id", entry.id()},
                  {"exercise_id", entry.exercise_id()},
                  {"advice", adviceText(advice->advice)},
                  {"good_in_a_row", advice->good_in_a_row},
                  {"too_hard_in_a_row", advice->too_hard_in_a_row},
                  {"evidence", Json::array()},
                  {"pain", jsonOfCourse(course)}};
      for (const auto& line : advice->evidence) one["evidence"].push_back(jsonOf(line));
      json.push_back(std::move(one));
      continue;
    }
    output.out << entry.exercise_id() << ": " << adviceText(advice->advice) << '\n';
    for (const auto& line : advice->evidence)
      output.out << (line.good ? "  + " : "  - ") << evidenceText(line) << '\n';
    output.out << "  " << courseText(course) << '\n';
  }
  if (output.json) {
    printJson(json, output.out);
  } else {
    output.out << "advice only: a dose changes with a therapist's signature\n";
  }
  return kFine;
}

int runProgressRules(const std::string& language, Output output) {
  if (output.json) {
    Json json = Json::array();
    for (const auto& preset : progressionPresets()) json.push_back(jsonOf(preset));
    printJson(json, output.out);
    return kFine;
  }
  for (const auto& preset : progressionPresets()) {
    const auto found = preset.words().find(language);
    const auto& words = found == preset.words().end() ? preset.words().at("en") : found->second;
    output.out << preset.id() << ": " << words.name() << '\n' << "  " << words.says() << '\n';
    for (const auto& source : preset.sources()) output.out << "  " << sourceText(source) << '\n';
  }
  return kFine;
}

}  // namespace newel::tool
