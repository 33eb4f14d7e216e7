// Files in, tables or JSON out, for the commands of `newel`.
#pragma once

#include <absl/status/status.h>
#include <absl/status/statusor.h>
#include <google/protobuf/message.h>

#include <iosfwd>
#include <string>
#include <vector>

#include "core/records/record_text.h"

namespace newel::tool {

// Exit codes of every command.
inline constexpr int kFine = 0;
inline constexpr int kSaysNo = 1;    // the answer is no: a block, an invalid record
inline constexpr int kBadInput = 2;  // a file, field or option that cannot be used

// Whole file; "-" is standard input. kNotFound with the file's name.
absl::StatusOr<std::string> readFile(const std::string& path);

// Protobuf text or JSON, then check(); errors begin with the file's name and name the field.
template <typename Record>
absl::StatusOr<Record> readRecord(const std::string& path) {
  const auto text = readFile(path);
  if (!text.ok()) return text.status();
  Record record;
  if (auto status = parseTextOrJson(*text, path, record); !status.ok()) return status;
  if (auto status = check(record); !status.ok()) {
    return absl::InvalidArgumentError(path + ": " + std::string(status.message()));
  }
  return record;
}

// Rows under a head, columns as wide as their widest cell (counted in characters, not bytes).
class Table {
 public:
  explicit Table(std::vector<std::string> head) : m_rows{std::move(head)} {}
  void row(std::vector<std::string> cells) { m_rows.push_back(std::move(cells)); }
  void print(std::ostream& out) const;

 private:
  std::vector<std::vector<std::string>> m_rows;
};

// "newel: <message>" on one line; returns kBadInput.
int complain(std::ostream& err, const absl::Status& status);

// 90500 ms -> "1:30.5"
std::string clockText(std::int64_t ms);

// "SIDE_LEFT" -> "left": an enumeration value as a person would write it, and back.
std::string shortName(const google::protobuf::EnumDescriptor* type, int value);
// kInvalidArgument lists what it could have been.
absl::StatusOr<int> fromShortName(const google::protobuf::EnumDescriptor* type, const std::string& option,
                                  const std::string& name);

}  // namespace newel::tool
