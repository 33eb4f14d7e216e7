// Parsing of rule files with the line of everything in them. For core/safety's loader alone.
#pragma once

#include <absl/status/statusor.h>
#include <google/protobuf/io/tokenizer.h>
#include <google/protobuf/text_format.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <memory>
#include <sstream>
#include <string>
#include <vector>

namespace newel::rule_files {

using google::protobuf::Message;
using google::protobuf::TextFormat;
using Tree = TextFormat::ParseInfoTree;

class FirstError : public google::protobuf::io::ErrorCollector {
 public:
  void AddError(int line, google::protobuf::io::ColumnNumber column, const std::string& message) override {
    // The parser counts from 0, people count from 1.
    if (m_text.empty()) m_text = std::to_string(line + 1) + ":" + std::to_string(column + 1) + ": " + message;
  }
  const std::string& text() const { return m_text; }

 private:
  std::string m_text;
};

// One file as parsed, with the line of everything in it.
template <typename File>
struct Parsed {
  std::string name;
  File content;
  Tree tree;
};

inline int lineOf(const Tree& tree, const Message& message, const std::string& field, int index = -1) {
  return tree.GetLocation(message.GetDescriptor()->FindFieldByName(field), index).line + 1;
}

inline Tree* below(const Tree& tree, const Message& message, const std::string& field, int index = -1) {
  return tree.GetTreeForNested(message.GetDescriptor()->FindFieldByName(field), index);
}

inline absl::Status fault(const std::string& file, int line, const std::string& reason) {
  return absl::InvalidArgumentError(file + ":" + std::to_string(line) + ": " + reason);
}

inline absl::StatusOr<std::vector<std::filesystem::path>> filesIn(const std::string& folder) {
  std::vector<std::filesystem::path> files;
  std::error_code error;
  for (std::filesystem::directory_iterator at(folder, error), end; !error && at != end; at.increment(error)) {
    if (at->path().extension() == ".textproto") files.push_back(at->path());
  }
  if (error) return absl::NotFoundError(folder + ": cannot be read: " + error.message());
  if (files.empty()) return absl::NotFoundError(folder + ": holds no .textproto file");
  std::sort(files.begin(), files.end());
  return files;
}

template <typename File>
absl::Status parseFile(const std::filesystem::path& path, Parsed<File>& parsed) {
  parsed.name = path.string();
  std::ifstream stream(path, std::ios::binary);
  std::ostringstream text;
  text << stream.rdbuf();
  if (!stream) return absl::NotFoundError(parsed.name + ": cannot be read");
  FirstError error;
  TextFormat::Parser parser;
  parser.RecordErrorsTo(&error);
  parser.WriteLocationsTo(&parsed.tree);
  if (!parser.ParseFromString(text.str(), &parsed.content)) {
    return absl::InvalidArgumentError(parsed.name + ":" + error.text());
  }
  return absl::OkStatus();
}

template <typename File>
absl::StatusOr<std::vector<std::unique_ptr<Parsed<File>>>> parseFolder(const std::string& folder) {
  const auto paths = filesIn(folder);
  if (!paths.ok()) return paths.status();
  std::vector<std::unique_ptr<Parsed<File>>> all;
  for (const auto& path : *paths) {
    all.push_back(std::make_unique<Parsed<File>>());
    absl::Status status = parseFile(path, *all.back());
    if (!status.ok()) return status;
  }
  return all;
}

}  // namespace newel::rule_files
