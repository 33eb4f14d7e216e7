// The small tools of check.h: remember the first thing wrong and the path of the field it is in.
// For core/records alone.
#pragma once

#include <absl/status/status.h>
#include <google/protobuf/message.h>

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace newel {

// Cheap while all is well: paths and reasons are put into words for the first thing wrong alone.
class FieldCheck {
 public:
  FieldCheck() : m_error(&m_own_error) {}

  // The same check one level down: at("dose"), at("entries", 2).
  template <std::size_t kSize>
  FieldCheck at(const char (&literal)[kSize], int index = kNoIndex) const {
    return below(literal, index);
  }
  FieldCheck at(const std::string& field) const;

  void that(bool good, std::string_view field, std::string_view reason) const {
    if (!good) fail(field, reason);
  }
  void uuid(std::string_view field, const std::string& value) const;
  void day(std::string_view field, const std::string& value) const;
  // The form of an IANA name; whether the system knows it is core/time's business.
  void zone(std::string_view field, const std::string& value) const;
  void language(std::string_view field, const std::string& value) const;
  // Lower-case words joined by hyphens.
  void key(std::string_view field, const std::string& value) const;
  void range(std::string_view field, std::uint64_t value, std::uint64_t least, std::uint64_t most) const;
  // Bytes of UTF-8.
  void text(std::string_view field, const std::string& value, std::size_t least, std::size_t most) const;
  // Every enumeration in `message` and below, by reflection, so that none can be forgotten: UNSPECIFIED and
  // unknown values are refused, save in the fields that the .proto calls absent at times (one table).
  void enums(const google::protobuf::Message& message) const;

  bool ok() const { return m_error->empty(); }
  absl::Status status() const;

 private:
  static constexpr int kNoIndex = -1;
  struct Step {
    const char* field = nullptr;  // a literal
    int index = kNoIndex;
  };

  FieldCheck below(const char* literal, int index) const;
  std::string path() const;
  void fail(std::string_view field, std::string_view reason) const;

  std::string m_own_error;
  std::string* m_error;
  std::string m_start;  // the path as far as it is in words; mostly empty
  std::array<Step, 6> m_steps;
  std::size_t m_depth = 0;
};

}  // namespace newel
