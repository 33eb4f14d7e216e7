// Numbers, days, sources and JSON for the commands of trade_commands.h.
#pragma once

#include <absl/status/statusor.h>
#include <absl/time/civil_time.h>

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "core/records/evidence.h"
#include "core/records/source.pb.h"
#include "sync/tool/tool_io.h"

namespace newel::tool {

// Keys in the order they were put.
using Json = nlohmann::ordered_json;

std::string numberText(double value, int decimals);
std::string numberText(const std::optional<double>& value, int decimals);  // "-" where there is none
// As few digits as say it: 3.6, 15, 0.05.
std::string shortNumber(double value);
Json jsonOf(const std::optional<double>& value);  // null where there is none
Json jsonOf(const google::protobuf::Message& record);
Json jsonOf(const EvidenceLine& line);

// "from memory: <text>", "published: <text>"; a common practice says so itself.
std::string sourceText(const v1::Source& source);

// kInvalidArgument beginning with the option's name.
absl::StatusOr<absl::CivilDay> dayOption(const std::string& option, const std::string& text);

template <typename Record>
absl::Status readRecords(const std::vector<std::string>& files, std::vector<Record>& records) {
  for (const auto& file : files) {
    auto record = readRecord<Record>(file);
    if (!record.ok()) return record.status();
    records.push_back(*std::move(record));
  }
  return absl::OkStatus();
}

void printJson(const Json& json, std::ostream& out);

}  // namespace newel::tool
