#include "core/records/record_folder.h"

#include <google/protobuf/descriptor.h>
#include <google/protobuf/io/tokenizer.h>
#include <google/protobuf/text_format.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <memory>

#include "core/records/record_text.h"

namespace newel {
namespace {

using google::protobuf::FieldDescriptor;
using google::protobuf::TextFormat;

// The text was parsed before, with words for whoever wrote it; here its faults are nobody's news.
class Silent : public google::protobuf::io::ErrorCollector {
 public:
  void AddError(int, google::protobuf::io::ColumnNumber, const std::string&) override {}
};

struct PathStep {
  std::string field;
  std::string inside;  // of the brackets: an index, or the key of a map
};

std::vector<PathStep> stepsOf(const std::string& path) {
  std::vector<PathStep> steps;
  std::size_t at = 0;
  while (at < path.size()) {
    PathStep step;
    const std::size_t end = path.find_first_of("[.", at);
    step.field = path.substr(at, end - at);
    at = end == std::string::npos ? path.size() : end;
    if (at < path.size() && path[at] == '[') {
      const std::size_t close = path.find(']', at);
      if (close == std::string::npos) break;
      step.inside = path.substr(at + 1, close - at - 1);
      at = close + 1;
    }
    if (at < path.size() && path[at] == '.') ++at;
    steps.push_back(std::move(step));
  }
  return steps;
}

// Which of a map's entries, in the order of the file, has `key`: what was parsed has lost that order.
int placeOfKey(const TextFormat::ParseInfoTree& tree, const FieldDescriptor& map, const std::string& text,
               const std::string& key) {
  for (int i = 0;; ++i) {
    const int line = tree.GetLocation(&map, i).line;
    if (line < 0) return 0;
    std::size_t begin = 0;
    for (int n = 0; n < line; ++n) begin = text.find('\n', begin) + 1;
    const int next = tree.GetLocation(&map, i + 1).line;
    std::size_t end = begin;
    for (int n = line; next >= 0 && n < next; ++n) end = text.find('\n', end) + 1;
    if (text.substr(begin, next < 0 ? std::string::npos : end - begin).find('"' + key + '"') !=
        std::string::npos) {
      return i;
    }
  }
}

int placeOf(const TextFormat::ParseInfoTree& tree, const FieldDescriptor& field, const std::string& text,
            const std::string& inside) {
  if (!field.is_repeated()) return -1;
  if (field.is_map()) return placeOfKey(tree, field, text, inside);
  return inside.empty() ? 0 : std::atoi(inside.c_str());
}

}  // namespace

absl::StatusOr<std::vector<std::string>> recordFilesIn(const std::string& folder) {
  std::vector<std::string> files;
  std::error_code error;
  for (std::filesystem::directory_iterator at(folder, error), end; !error && at != end; at.increment(error)) {
    if (at->path().extension() == ".textproto") files.push_back(at->path().string());
  }
  if (error) return absl::NotFoundError(folder + ": cannot be read: " + error.message());
  if (files.empty()) return absl::NotFoundError(folder + ": holds no .textproto file");
  std::sort(files.begin(), files.end());
  return files;
}

int lineOfPath(const std::string& text, const google::protobuf::Message& prototype, const std::string& path) {
  const std::unique_ptr<google::protobuf::Message> message(prototype.New());
  TextFormat::ParseInfoTree tree;
  TextFormat::Parser parser;
  Silent silent;
  parser.RecordErrorsTo(&silent);
  parser.WriteLocationsTo(&tree);
  if (!parser.ParseFromString(text, message.get())) return 1;
  int line = 1;
  const TextFormat::ParseInfoTree* here = &tree;
  const google::protobuf::Descriptor* type = message->GetDescriptor();
  for (const PathStep& step : stepsOf(path)) {
    const FieldDescriptor* field = type == nullptr ? nullptr : type->FindFieldByName(step.field);
    if (field == nullptr || here == nullptr) break;
    const int place = placeOf(*here, *field, text, step.inside);
    const int found = here->GetLocation(field, place).line;
    if (found < 0) break;
    line = found + 1;
    const bool below = field->cpp_type() == FieldDescriptor::CPPTYPE_MESSAGE;
    here = below ? here->GetTreeForNested(field, place) : nullptr;
    type = below ? field->message_type() : nullptr;
    // Below a map's entry stand "key" and "value"; a path names the fields of the value.
    if (here == nullptr || !field->is_map()) continue;
    const FieldDescriptor* value = type->FindFieldByNumber(2);
    here =
        value->cpp_type() == FieldDescriptor::CPPTYPE_MESSAGE ? here->GetTreeForNested(value, -1) : nullptr;
    type = here == nullptr ? nullptr : value->message_type();
  }
  return line;
}

absl::Status readRecordFile(const std::string& file, google::protobuf::Message& record,
                            const std::function<absl::Status()>& check) {
  std::ifstream stream(file, std::ios::binary);
  if (!stream) return absl::NotFoundError(file + ": cannot be read");
  const std::string text((std::istreambuf_iterator<char>(stream)), std::istreambuf_iterator<char>());
  // "<file>:<line>:<column>: <reason>" already.
  if (absl::Status status = parseText(text, file, record); !status.ok()) return status;
  absl::Status status = check();
  if (status.ok()) return status;
  const std::string message(status.message());
  const int line = lineOfPath(text, record, message.substr(0, message.find(": ")));
  return absl::InvalidArgumentError(file + ":" + std::to_string(line) + ": " + message);
}

}  // namespace newel
