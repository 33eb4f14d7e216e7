#include <cstdio>
#include <map>
#include <ostream>

#include "core/progress/adherence.h"
#include "core/records/check.h"
#include "core/time/local_day.h"
#include "sync/tool/commands.h"
#include "sync/tool/tool_io.h"

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

// The day in an option, or the option's name in the error.
absl::StatusOr<absl::CivilDay> dayOption(const std::string& option, const std::string& text) {
  const auto day = parseLocalDay(text);
  if (!day.ok()) return absl::InvalidArgumentError(option + ": " + std::string(day.status().message()));
  return day;
}

template <typename Record>
absl::Status readAll(const std::vector<std::string>& files, std::vector<Record>& records) {
  for (const auto& file : files) {
    auto record = readRecord<Record>(file);
    if (!record.ok()) return record.status();
    records.push_back(*std::move(record));
  }
  return absl::OkStatus();
}

}  // namespace

int runAdherence(const std::vector<std::string>& programme_files,
                 const std::vector<std::string>& practice_files, const std::string& from,
                 const std::string& to, const std::string& today, const std::string& heard_until,
                 Output output) {
  std::vector<v1::Programme> programmes;
  if (auto status = readAll(programme_files, programmes); !status.ok()) return complain(output.err, status);
  std::vector<v1::Practice> practices;
  if (auto status = readAll(practice_files, practices); !status.ok()) return complain(output.err, status);
  const auto first = dayOption("--from", from);
  const auto last = dayOption("--to", to);
  const auto now = dayOption("--today", today);
  const auto heard = dayOption("--heard-until", heard_until);
  for (const auto* day : {&first, &last, &now, &heard}) {
    if (!day->ok()) return complain(output.err, day->status());
  }
  const auto result = adherenceOf(programmes, practices, *first, *last, *now, *heard);
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
