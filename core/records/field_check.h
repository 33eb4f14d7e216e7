// The small tools of check.h: remember the first thing wrong and the path of the field it is in.
// For core/records alone.
#pragma once

#include <absl/status/status.h>
#include <google/protobuf/message.h>

#include <cstdint>
#include <string>

namespace newel {

class FieldCheck {
 public:
  FieldCheck() : m_error(&m_own_error) {}

  // The same check one level down: at("dose"), at("entries", 2).
  FieldCheck at(const std::string& field) const { return FieldCheck(m_error, m_path + field + "."); }
  FieldCheck at(const std::string& field, int index) const {
    return at(field + "[" + std::to_string(index) + "]");
  }

  void that(bool good, const std::string& field, const std::string& reason);
  void uuid(const std::string& field, const std::string& value);
  void day(const std::string& field, const std::string& value);
  // The form of an IANA name; whether the system knows it is core/time's business.
  void zone(const std::string& field, const std::string& value);
  void language(const std::string& field, const std::string& value);
  // Lower-case words joined by hyphens.
  void key(const std::string& field, const std::string& value);
  void range(const std::string& field, std::uint64_t value, std::uint64_t least, std::uint64_t most);
  // Bytes of UTF-8.
  void text(const std::string& field, const std::string& value, std::size_t least, std::size_t most);
  // Every enumeration in `message` and below, by reflection, so that none can be forgotten: UNSPECIFIED and
  // unknown values are refused, save in the fields that the .proto calls absent at times (one table).
  void enums(const google::protobuf::Message& message);

  bool ok() const { return m_error->empty(); }
  absl::Status status() const;

 private:
  FieldCheck(std::string* error, std::string path) : m_error(error), m_path(std::move(path)) {}
  void enumsBelow(const google::protobuf::Message& message, const std::string& path);
  void fail(const std::string& path, const std::string& reason);

  std::string m_own_error;
  std::string* m_error;
  std::string m_path;
};

}  // namespace newel
