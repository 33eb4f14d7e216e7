#include "core/records/field_check.h"

#include <algorithm>
#include <array>

#include "core/records/enum_check.h"
#include "core/records/uuid7.h"

namespace newel {
namespace {

bool isDigit(char c) { return c >= '0' && c <= '9'; }
bool isLower(char c) { return c >= 'a' && c <= 'z'; }
bool isUpper(char c) { return c >= 'A' && c <= 'Z'; }

int digits(const std::string& value, std::size_t from, std::size_t count) {
  int number = 0;
  for (std::size_t i = from; i < from + count; ++i) number = number * 10 + (value[i] - '0');
  return number;
}

bool isDay(const std::string& value) {
  if (value.size() != 10 || value[4] != '-' || value[7] != '-') return false;
  for (const std::size_t i : {0, 1, 2, 3, 5, 6, 8, 9}) {
    if (!isDigit(value[i])) return false;
  }
  const int year = digits(value, 0, 4);
  const int month = digits(value, 5, 2);
  const int day = digits(value, 8, 2);
  if (year < 1900 || month < 1 || month > 12 || day < 1) return false;
  static constexpr std::array<int, 12> kLengths = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
  return day <= kLengths[static_cast<std::size_t>(month - 1)] + (month == 2 && leap ? 1 : 0);
}

}  // namespace

FieldCheck FieldCheck::below(const char* literal, int index) const {
  FieldCheck deeper = *this;
  if (deeper.m_depth == m_steps.size()) {
    deeper.m_start = path();
    deeper.m_depth = 0;
  }
  deeper.m_steps[deeper.m_depth++] = {literal, index};
  return deeper;
}

FieldCheck FieldCheck::at(const std::string& field) const {
  FieldCheck deeper = *this;
  deeper.m_start = path() + field + ".";
  deeper.m_depth = 0;
  return deeper;
}

std::string FieldCheck::path() const {
  std::string text = m_start;
  for (std::size_t i = 0; i < m_depth; ++i) {
    text += m_steps[i].field;
    if (m_steps[i].index != kNoIndex) text += "[" + std::to_string(m_steps[i].index) + "]";
    text += ".";
  }
  return text;
}

void FieldCheck::fail(std::string_view field, std::string_view reason) const {
  if (m_error->empty()) *m_error = path() + std::string(field) + ": " + std::string(reason);
}

void FieldCheck::uuid(std::string_view field, const std::string& value) const {
  that(isUuid7(value), field, value.empty() ? "is missing" : "is not a UUID version 7 in lower case");
}

void FieldCheck::day(std::string_view field, const std::string& value) const {
  if (isDay(value)) return;
  fail(field, value.empty() ? "is missing" : "\"" + value + "\" is not a day of the form YYYY-MM-DD");
}

void FieldCheck::zone(std::string_view field, const std::string& value) const {
  const bool form =
      !value.empty() && value.size() <= 64 && isUpper(value[0]) &&
      std::all_of(value.begin(), value.end(), [](char c) {
        return isDigit(c) || isLower(c) || isUpper(c) || c == '/' || c == '_' || c == '-' || c == '+';
      });
  that(form, field, value.empty() ? "is missing" : "is not the name of a time zone");
}

void FieldCheck::language(std::string_view field, const std::string& value) const {
  const bool form = value.size() >= 2 && value.size() <= 35 && isLower(value[0]) && isLower(value[1]) &&
                    std::all_of(value.begin(), value.end(),
                                [](char c) { return isDigit(c) || isLower(c) || isUpper(c) || c == '-'; });
  that(form, field, value.empty() ? "is missing" : "is not a language tag (BCP 47)");
}

void FieldCheck::key(std::string_view field, const std::string& value) const {
  const bool form =
      !value.empty() && value.size() <= 80 && isLower(value[0]) && value.back() != '-' &&
      std::all_of(value.begin(), value.end(), [](char c) { return isDigit(c) || isLower(c) || c == '-'; });
  that(form, field, value.empty() ? "is missing" : "must be lower-case words joined by hyphens");
}

void FieldCheck::range(std::string_view field, std::uint64_t value, std::uint64_t least,
                       std::uint64_t most) const {
  if (value < least) fail(field, std::to_string(value) + " is under " + std::to_string(least));
  if (value > most) fail(field, std::to_string(value) + " is over " + std::to_string(most));
}

void FieldCheck::text(std::string_view field, const std::string& value, std::size_t least,
                      std::size_t most) const {
  if (value.size() < least) fail(field, value.empty() ? "is missing" : "is too short");
  if (value.size() > most) fail(field, "is longer than " + std::to_string(most) + " bytes");
}

void FieldCheck::enums(const google::protobuf::Message& message) const {
  if (!ok()) return;
  const std::string problem = enumProblemIn(message);
  if (problem.empty()) return;
  const std::size_t colon = problem.find(": ");
  fail(problem.substr(0, colon), problem.substr(colon + 2));
}

absl::Status FieldCheck::status() const {
  return ok() ? absl::OkStatus() : absl::InvalidArgumentError(*m_error);
}

}  // namespace newel
