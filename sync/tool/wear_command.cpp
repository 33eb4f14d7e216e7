#include <google/protobuf/text_format.h>

#include <ostream>

#include "core/library/catalogue.h"
#include "core/records/check.h"
#include "core/schedule/wear_library.h"
#include "core/schedule/wear_plan.h"
#include "core/time/local_day.h"
#include "sync/tool/evidence_words.h"
#include "sync/tool/trade_commands.h"
#include "sync/tool/trade_io.h"

namespace newel::tool {
namespace {

absl::StatusOr<WearLibrary> libraryFrom(const std::string& folder) {
  if (folder.empty()) return WearLibrary::builtIn();
  return WearLibrary::load(folder);
}

std::string nameOf(const v1::WearExample& example, const std::string& language) {
  const auto found = example.words().find(language);
  return (found == example.words().end() ? example.words().at("en") : found->second).name();
}

std::string stepText(const v1::WearStep& step) {
  if (step.all_day()) return "all day";
  return std::to_string(step.blocks()) + " x " + std::to_string(step.block_min()) + " min";
}

std::string gateText(WearGate gate) {
  switch (gate) {
    case WearGate::NotBegun:
      return "not-begun";
    case WearGate::Wear:
      return "wear";
    case WearGate::LookFirst:
      return "look-first";
    case WearGate::NoIncrease:
      return "no-increase";
    case WearGate::StayOff:
      break;
  }
  return "stay-off";
}

std::string rednessText(const v1::RednessRule& rule) {
  if (rule.over_min() == 0) return "under a minute";
  return "over " + std::to_string(rule.over_min()) +
         (rule.over_most_min() == 0 ? "" : " to " + std::to_string(rule.over_most_min())) + " min";
}

Json jsonOfDay(const WearDay& day) {
  Json json = {{"day", formatLocalDay(day.day)}, {"gate", gateText(day.gate)},
               {"call_clinic", day.call_clinic}, {"wearing", day.wearing},
               {"step", day.step + 1},           {"good_days", day.good_days},
               {"blocks_worn", day.blocks_worn}, {"worn_min", day.worn_min},
               {"blocks_left", day.blocks_left}, {"block_min", day.block_min}};
  json["reasons"] = Json::array();
  for (const auto& reason : day.reasons) json["reasons"].push_back(jsonOf(reason));
  return json;
}

void printDays(const std::vector<WearDay>& days, std::ostream& out) {
  Table table({"day", "may", "step", "good days", "worn", "left", "block", "call", "why"});
  for (const WearDay& day : days) {
    std::string why;
    for (const auto& reason : day.reasons) why += (why.empty() ? "" : "; ") + evidenceText(reason);
    table.row(
        {formatLocalDay(day.day), gateText(day.gate), std::to_string(day.step + 1),
         std::to_string(day.good_days), std::to_string(day.worn_min) + " min",
         std::to_string(day.blocks_left),
         day.blocks_left > 0 && day.block_min == 0 ? "no limit" : std::to_string(day.block_min) + " min",
         day.call_clinic ? "yes" : "-", why});
  }
  table.print(out);
}

// The build proves that the catalogue has every setting that rules name, this one among them.
const v1::SettingKind& rednessMinutes() { return *Catalogue::builtIn().setting("redness-minutes"); }

}  // namespace

int runWearExamples(const std::string& folder, const std::string& language, Output output) {
  const auto library = libraryFrom(folder);
  if (!library.ok()) return complain(output.err, library.status());
  if (output.json) {
    printJson(jsonOf(library->asFile()), output.out);
    return kFine;
  }
  for (const auto& example : library->examples()) {
    output.out << example.id() << ": " << nameOf(example, language) << '\n';
    Table table({"  step", "good days", "a day", "planned"});
    for (int i = 0; i < example.steps_size(); ++i) {
      const auto& step = example.steps(i);
      table.row({"  " + std::to_string(i + 1), std::to_string(step.days()), stepText(step),
                 step.all_day() ? "-" : shortNumber(plannedMinutes(step) / 60.0) + " h"});
    }
    table.print(output.out);
    for (const auto& source : example.sources()) output.out << "  " << sourceText(source) << '\n';
  }
  const auto& redness = library->redness();
  const v1::SettingKind& minutes = rednessMinutes();
  output.out << "redness: " << minutes.usual() << " min unless the clinic sets " << minutes.least() << " to "
             << minutes.most() << '\n';
  for (const auto& rule : redness.published()) {
    output.out << "  " << rednessText(rule) << ": " << rule.action() << " (" << sourceText(rule.source())
               << ")\n";
  }
  return kFine;
}

int runWearDraft(const std::string& folder, const std::string& example, Output output) {
  const auto library = libraryFrom(folder);
  if (!library.ok()) return complain(output.err, library.status());
  const auto* found = library->find(example);
  if (found == nullptr) {
    std::string ids;
    for (const auto& one : library->examples()) ids += (ids.empty() ? "" : ", ") + one.id();
    return complain(output.err, absl::NotFoundError("\"" + example + "\" is none of " + ids));
  }
  const v1::WearPlan plan = draftPlan(*found, library->redness(), rednessMinutes().usual());
  if (output.json) {
    printJson(jsonOf(plan), output.out);
    return kFine;
  }
  std::string text;
  google::protobuf::TextFormat::PrintToString(plan, &text);
  output.out << text;
  return kFine;
}

int runWearDays(const std::string& plan_file, const std::vector<std::string>& logs, const std::string& from,
                const std::string& to, Output output) {
  const auto plan = readRecord<v1::WearPlan>(plan_file);
  if (!plan.ok()) return complain(output.err, plan.status());
  std::vector<v1::WearLog> read;
  if (auto status = readRecords(logs, read); !status.ok()) return complain(output.err, status);
  std::vector<v1::WearBlock> blocks;
  for (const auto& log : read) blocks.insert(blocks.end(), log.blocks().begin(), log.blocks().end());
  const auto first = dayOption("--from", from);
  if (!first.ok()) return complain(output.err, first.status());
  const auto last = dayOption("--to", to);
  if (!last.ok()) return complain(output.err, last.status());
  if (*last < *first || *last - *first > 3660) {
    return complain(output.err,
                    absl::InvalidArgumentError("--to: is before --from, or over ten years after"));
  }
  std::vector<WearDay> days;
  for (auto day = *first; day <= *last; ++day) {
    auto answer = wearDay(*plan, blocks, day);
    if (!answer.ok()) return complain(output.err, answer.status());
    days.push_back(*std::move(answer));
  }
  if (output.json) {
    Json json = Json::array();
    for (const auto& day : days) json.push_back(jsonOfDay(day));
    printJson(json, output.out);
  } else {
    printDays(days, output.out);
  }
  return days.back().gate == WearGate::StayOff ? kSaysNo : kFine;
}

}  // namespace newel::tool
