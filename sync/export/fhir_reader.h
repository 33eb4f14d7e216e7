// Reads JSON by path, and remembers what was read, so that all the rest can be listed. For sync/export alone.
#pragma once

#include <absl/status/status.h>

#include <nlohmann/json.hpp>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace newel {

// A place in the file. Reading what is not there is no error and gives nothing; what is there in another form
// is, and the first such is kept in the file's status.
class FhirNode {
 public:
  struct File {
    absl::Status status;         // the first thing wrong
    std::set<std::string> read;  // paths of values that were taken
  };

  // `json` and `file` outlive this.
  FhirNode(const nlohmann::json* json, std::string path, File* file)
      : m_json(json), m_path(std::move(path)), m_file(file) {}

  bool there() const { return m_json != nullptr; }
  const std::string& path() const { return m_path; }
  FhirNode at(const std::string& key) const;
  std::vector<FhirNode> list(const std::string& key) const;  // empty: not there
  bool has(const std::string& key) const { return at(key).there(); }
  // Every key of an object.
  std::vector<std::string> keys() const;

  // The value, which then counts as taken. peek...: it does not.
  std::string text() const;  // empty: not there
  std::optional<std::int64_t> whole() const;
  std::optional<bool> yes() const;
  std::string peekText() const;
  std::optional<std::int64_t> peekWhole() const;
  std::optional<bool> peekYes() const;
  void take() const;  // all of it

  // Keeps "<path>: <reason>" as the file's status, if it is the first.
  void refuse(const std::string& reason) const;
  // Paths under this of what was not taken, as high up as nothing below was.
  void listNotTaken(std::vector<std::string>& paths) const;

 private:
  const nlohmann::json* m_json;
  std::string m_path;
  File* m_file;
};

}  // namespace newel
