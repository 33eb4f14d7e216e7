#include "sync/tool/trade_io.h"

#include <cmath>
#include <cstdio>
#include <ostream>

#include "core/time/local_day.h"

namespace newel::tool {

std::string numberText(double value, int decimals) {
  char text[64];
  std::snprintf(text, sizeof text, "%.*f", decimals, value);
  return text;
}

std::string numberText(const std::optional<double>& value, int decimals) {
  return value ? numberText(*value, decimals) : "-";
}

std::string shortNumber(double value) {
  char text[64];
  std::snprintf(text, sizeof text, "%.6g", value);
  return text;
}

Json jsonOf(const std::optional<double>& value) { return value ? Json(*value) : Json(nullptr); }

Json jsonOf(const google::protobuf::Message& record) { return Json::parse(toJson(record)); }

Json jsonOf(const EvidenceLine& line) {
  Json json = {{"key", line.key}, {"good", line.good}};
  json["args"] = Json::object();
  for (const auto& [name, value] : line.args) json["args"][name] = value;
  return json;
}

std::string sourceText(const v1::Source& source) {
  switch (source.kind()) {
    case v1::SOURCE_KIND_PUBLISHED:
      return "published: " + source.text();
    case v1::SOURCE_KIND_FROM_MEMORY:
      return "from memory: " + source.text();
    default:
      return source.text();
  }
}

absl::StatusOr<absl::CivilDay> dayOption(const std::string& option, const std::string& text) {
  auto day = parseLocalDay(text);
  if (!day.ok()) return absl::InvalidArgumentError(option + ": " + std::string(day.status().message()));
  return day;
}

void printJson(const Json& json, std::ostream& out) { out << json.dump(2) << '\n'; }

}  // namespace newel::tool
