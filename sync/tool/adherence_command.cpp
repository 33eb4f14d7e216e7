#include <cstdio>
#include <map>
#include <ostream>

#include "core/progress/adherence.h"
#include "core/records/check.h"
#include "core/time/local_day.h"
#include "sync/tool/commands.h"
#include "sync/tool/tool_io.h"
#include "sync/tool/trade_io.h"

namespace newel::tool {
namespace {

std::string percent(std::optional<double> share) {
  if (!share) return "-";
  char text[16];
  std::snprintf(text, sizeof text, "%.1f %%", *share * 100);
  return text;
}

std::string number(std::optional<double> share) {
  if (!share) return "null";
  char text[32];
  std::snprintf(text, sizeof text, "%.6f", *share);
  return text;
}

std::string json(const Share& share) {
  return "{\"due\": " + std::to_string(share.due) + ", \"done\": " + std::to_string(share.done) +
         ", \"capped\": " + number(share.capped()) + ", \"raw\": " + number(share.raw()) +
         ", \"dose\": " + number(share.doseShare()) + "}";
}

std::string json(const std::map<std::string, Share>& shares) {
  std::string text;
  for (const auto& [key, share] : shares)
    text += (text.empty() ? "" : ", ") + ("\"" + key + "\": ") + json(share);
  return "{" + text + "}";
}

}  // namespace

absl::StatusOr<Adherence> adherenceFrom(const DoneOptions& options,
                                        const std::vector<v1::Programme>& programmes,
                                        const std::vector<v1::Practice>& practices) {
  std::vector<v1::HoldOrder> holds;
  if (auto status = readRecords(options.holds, holds); !status.ok()) return status;
  const std::string& today_text = options.today.empty() ? options.to : options.today;
  const auto from = dayOption("--from", options.from);
  const auto to = dayOption("--to", options.to);
  const auto today = dayOption("--today", today_text);
  const auto heard =
      dayOption("--heard-until", options.heard_until.empty() ? today_text : options.heard_until);
  for (const auto* day : {&from, &to, &today, &heard}) {
    if (!day->ok()) return day->status();
  }
  const auto zone = loadZone(options.zone);
  if (!zone.ok()) return absl::InvalidArgumentError("--zone: " + std::string(zone.status().message()));
  return adherenceOf(programmes, practices, *from, *to, *today, *heard, heldDaysOf(holds, *zone));
}

int runAdherence(const DoneOptions& options, Output output) {
  std::vector<v1::Programme> programmes;
  std::vector<v1::Practice> practices;
  for (const auto& status :
       {readRecords(options.programmes, programmes), readRecords(options.practices, practices)}) {
    if (!status.ok()) return complain(output.err, status);
  }
  const auto result = adherenceFrom(options, programmes, practices);
  if (!result.ok()) return complain(output.err, result.status());
  if (output.json) {
    output.out << "{\"all\": " << json(result->all) << ", \"by_entry\": " << json(result->by_entry)
               << ", \"by_week\": " << json(result->by_week) << "}\n";
    return kFine;
  }
  Table table({"what", "due", "done", "capped", "raw", "dose"});
  const auto add = [&](const std::string& what, const Share& share) {
    table.row({what, std::to_string(share.due), std::to_string(share.done), percent(share.capped()),
               percent(share.raw()), percent(share.doseShare())});
  };
  for (const auto& [entry, share] : result->by_entry) add("entry " + entry, share);
  for (const auto& [week, share] : result->by_week) add("week of " + week, share);
  add("all", result->all);
  table.print(output.out);
  output.out
      << "capped: min(done, due) / due; raw: done / due; dose: dose done / dose asked, each occasion at most "
         "1; excused days and days with no data are in neither\n";
  return kFine;
}

}  // namespace newel::tool
