#include "sync/tool/tool_io.h"

#include <google/protobuf/descriptor.h>

#include <algorithm>
#include <cstdio>
#include <fstream>
#include <iostream>
#include <iterator>
#include <sstream>

namespace newel::tool {
namespace {

std::size_t characters(const std::string& text) {
  return static_cast<std::size_t>(std::count_if(
      text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

// "LIMB_LOSS_LEVEL_" of LIMB_LOSS_LEVEL_UNSPECIFIED.
std::string prefixOf(const google::protobuf::EnumDescriptor* type) {
  const std::string zero = type->FindValueByNumber(0)->name();
  return zero.substr(0, zero.size() - std::string("UNSPECIFIED").size());
}

}  // namespace

absl::StatusOr<std::string> readFile(const std::string& path) {
  if (path == "-") return std::string(std::istreambuf_iterator<char>(std::cin), {});
  std::ifstream file(path, std::ios::binary);
  if (!file) return absl::NotFoundError(path + ": cannot be read");
  return std::string(std::istreambuf_iterator<char>(file), {});
}

void Table::print(std::ostream& out) const {
  std::vector<std::size_t> widths(m_rows.front().size(), 0);
  for (const auto& row : m_rows) {
    for (std::size_t i = 0; i < row.size(); ++i) widths[i] = std::max(widths[i], characters(row[i]));
  }
  for (const auto& row : m_rows) {
    std::string line;
    for (std::size_t i = 0; i < row.size(); ++i) {
      line += row[i];
      if (i + 1 < row.size()) line += std::string(widths[i] - characters(row[i]) + 2, ' ');
    }
    out << line << '\n';
  }
}

int complain(std::ostream& err, const absl::Status& status) {
  err << "newel: " << std::string(status.message()) << '\n';
  return kBadInput;
}

std::string clockText(std::int64_t ms) {
  char text[32];
  std::snprintf(text, sizeof text, "%lld:%02lld.%lld", static_cast<long long>(ms / 60000),
                static_cast<long long>(ms / 1000 % 60), static_cast<long long>(ms % 1000 / 100));
  return text;
}

std::string shortName(const google::protobuf::EnumDescriptor* type, int value) {
  const auto* found = type->FindValueByNumber(value);
  if (found == nullptr) return std::to_string(value);
  if (value == 0) return "-";
  std::string name = found->name().substr(prefixOf(type).size());
  std::transform(name.begin(), name.end(), name.begin(), [](char c) {
    return c == '_' ? '-' : static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  });
  return name;
}

absl::StatusOr<int> fromShortName(const google::protobuf::EnumDescriptor* type, const std::string& option,
                                  const std::string& name) {
  std::string choices;
  for (int i = 0; i < type->value_count(); ++i) {
    const int value = type->value(i)->number();
    if (value == 0) continue;
    if (shortName(type, value) == name) return value;
    choices += (choices.empty() ? "" : ", ") + shortName(type, value);
  }
  return absl::InvalidArgumentError(option + ": \"" + name + "\" is none of " + choices);
}

}  // namespace newel::tool
