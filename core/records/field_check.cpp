#include "core/records/field_check.h"

#include <google/protobuf/descriptor.h>

#include <algorithm>
#include <array>
#include <set>

#include "core/records/uuid7.h"

namespace newel {
namespace {

using google::protobuf::FieldDescriptor;
using google::protobuf::Message;

// Enumerations that say something by being absent. Everything else must be set.
const std::set<std::string>& mayBeAbsent() {
  static const std::set<std::string> fields = {
      "newel.v1.Person.strong_side", "newel.v1.Beat.side",          "newel.v1.Beat.role",
      "newel.v1.SetDone.side",       "newel.v1.EntryDone.skipped",  "newel.v1.Practice.stop_reason",
      "newel.v1.Practice.end",       "newel.v1.JournalLine.reason", "newel.v1.JournalLine.end",
      "newel.v1.JournalLine.doubt",  "newel.v1.Measure.side",       "newel.v1.Rule.until",
      "newel.v1.Finding.until",
  };
  return fields;
}

bool isDigit(char c) { return c >= '0' && c <= '9'; }
bool isLower(char c) { return c >= 'a' && c <= 'z'; }
bool isUpper(char c) { return c >= 'A' && c <= 'Z'; }

bool isDay(const std::string& value) {
  if (value.size() != 10 || value[4] != '-' || value[7] != '-') return false;
  for (const std::size_t i : {0, 1, 2, 3, 5, 6, 8, 9}) {
    if (!isDigit(value[i])) return false;
  }
  const int year = std::stoi(value.substr(0, 4));
  const int month = std::stoi(value.substr(5, 2));
  const int day = std::stoi(value.substr(8, 2));
  if (year < 1900 || month < 1 || month > 12 || day < 1) return false;
  static constexpr std::array<int, 12> kLengths = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
  return day <= kLengths[static_cast<std::size_t>(month - 1)] + (month == 2 && leap ? 1 : 0);
}

std::string enumProblem(const FieldDescriptor& field, int value) {
  if (value == 0) return field.enum_type()->value(0)->name() + " is not a value";
  return "unknown value " + std::to_string(value);
}

}  // namespace

void FieldCheck::fail(const std::string& path, const std::string& reason) {
  if (m_error->empty()) *m_error = path + ": " + reason;
}

void FieldCheck::that(bool good, const std::string& field, const std::string& reason) {
  if (!good) fail(m_path + field, reason);
}

void FieldCheck::uuid(const std::string& field, const std::string& value) {
  that(isUuid7(value), field, value.empty() ? "is missing" : "is not a UUID version 7 in lower case");
}

void FieldCheck::day(const std::string& field, const std::string& value) {
  that(isDay(value), field,
       value.empty() ? "is missing" : "\"" + value + "\" is not a day of the form YYYY-MM-DD");
}

void FieldCheck::zone(const std::string& field, const std::string& value) {
  const bool form =
      !value.empty() && value.size() <= 64 && isUpper(value[0]) &&
      std::all_of(value.begin(), value.end(), [](char c) {
        return isDigit(c) || isLower(c) || isUpper(c) || c == '/' || c == '_' || c == '-' || c == '+';
      });
  that(form, field, value.empty() ? "is missing" : "is not the name of a time zone");
}

void FieldCheck::language(const std::string& field, const std::string& value) {
  const bool form = value.size() >= 2 && value.size() <= 35 && isLower(value[0]) && isLower(value[1]) &&
                    std::all_of(value.begin(), value.end(),
                                [](char c) { return isDigit(c) || isLower(c) || isUpper(c) || c == '-'; });
  that(form, field, value.empty() ? "is missing" : "is not a language tag (BCP 47)");
}

void FieldCheck::key(const std::string& field, const std::string& value) {
  const bool form =
      !value.empty() && value.size() <= 80 && isLower(value[0]) && value.back() != '-' &&
      std::all_of(value.begin(), value.end(), [](char c) { return isDigit(c) || isLower(c) || c == '-'; });
  that(form, field, value.empty() ? "is missing" : "must be lower-case words joined by hyphens");
}

void FieldCheck::range(const std::string& field, std::uint64_t value, std::uint64_t least,
                       std::uint64_t most) {
  that(value >= least, field, std::to_string(value) + " is under " + std::to_string(least));
  that(value <= most, field, std::to_string(value) + " is over " + std::to_string(most));
}

void FieldCheck::text(const std::string& field, const std::string& value, std::size_t least,
                      std::size_t most) {
  that(value.size() >= least, field, value.empty() ? "is missing" : "is too short");
  that(value.size() <= most, field, "is longer than " + std::to_string(most) + " bytes");
}

void FieldCheck::enums(const Message& message) { enumsBelow(message, m_path); }

void FieldCheck::enumsBelow(const Message& message, const std::string& path) {
  const auto* reflection = message.GetReflection();
  const auto* descriptor = message.GetDescriptor();
  for (int i = 0; i < descriptor->field_count() && ok(); ++i) {
    const FieldDescriptor* field = descriptor->field(i);
    const int count = field->is_repeated() ? reflection->FieldSize(message, field) : 1;
    for (int item = 0; item < count && ok(); ++item) {
      const std::string name =
          path + field->name() + (field->is_repeated() ? "[" + std::to_string(item) + "]" : "");
      if (field->cpp_type() == FieldDescriptor::CPPTYPE_ENUM) {
        const int value = field->is_repeated() ? reflection->GetRepeatedEnumValue(message, field, item)
                                               : reflection->GetEnumValue(message, field);
        const bool absent = value == 0 && !field->is_repeated() &&
                            (mayBeAbsent().contains(field->full_name()) ||
                             (field->has_presence() && !reflection->HasField(message, field)));
        const bool known = value != 0 && field->enum_type()->FindValueByNumber(value) != nullptr;
        if (!absent && !known) fail(name, enumProblem(*field, value));
      } else if (field->cpp_type() == FieldDescriptor::CPPTYPE_MESSAGE) {
        if (field->is_repeated()) {
          enumsBelow(reflection->GetRepeatedMessage(message, field, item), name + ".");
        } else if (reflection->HasField(message, field)) {
          enumsBelow(reflection->GetMessage(message, field), name + ".");
        }
      }
    }
  }
}

absl::Status FieldCheck::status() const {
  return ok() ? absl::OkStatus() : absl::InvalidArgumentError(*m_error);
}

}  // namespace newel
