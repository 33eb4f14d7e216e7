#include "core/library/source_lines.h"

#include <google/protobuf/descriptor.h>
#include <google/protobuf/text_format.h>

#include <algorithm>
#include <memory>
#include <sstream>
#include <vector>

namespace newel {
namespace {

using google::protobuf::FieldDescriptor;
using google::protobuf::TextFormat;

struct PathStep {
  std::string field;
  int index = -1;
  std::string key;  // of a map
};

std::vector<PathStep> stepsOf(const std::string& path) {
  std::vector<PathStep> steps;
  std::string rest = path;
  while (!rest.empty()) {
    const std::size_t bracket = rest.find('[');
    const std::size_t dot = rest.find('.');
    PathStep step;
    std::size_t end = std::min(dot, rest.size());
    if (bracket != std::string::npos && bracket < end) {
      const std::size_t close = rest.find(']', bracket);
      if (close == std::string::npos) break;
      const std::string inside = rest.substr(bracket + 1, close - bracket - 1);
      const bool digits = !inside.empty() && inside.find_first_not_of("0123456789") == std::string::npos;
      if (digits && inside.size() < 7) {
        step.index = std::stoi(inside);
      } else {
        step.key = inside;
      }
      end = close + 1;
    }
    step.field = rest.substr(0, std::min({bracket, dot, rest.size()}));
    steps.push_back(step);
    rest = end < rest.size() ? rest.substr(end + 1) : std::string();
  }
  return steps;
}

// A map's key is quoted on a line of its own entry.
int lineOfKey(const std::string& text, const std::string& key) {
  std::istringstream lines(text);
  std::string line;
  for (int number = 1; std::getline(lines, line); ++number) {
    if (line.find("key") != std::string::npos && line.find('"' + key + '"') != std::string::npos)
      return number;
  }
  return 1;
}

}  // namespace

int lineOfField(const std::string& text, const google::protobuf::Message& prototype,
                const std::string& path) {
  const std::unique_ptr<google::protobuf::Message> message(prototype.New());
  TextFormat::ParseInfoTree tree;
  TextFormat::Parser parser;
  parser.WriteLocationsTo(&tree);
  if (!parser.ParseFromString(text, message.get())) return 1;

  int line = 1;
  const TextFormat::ParseInfoTree* here = &tree;
  const google::protobuf::Descriptor* type = message->GetDescriptor();
  for (const PathStep& step : stepsOf(path)) {
    const FieldDescriptor* field = type == nullptr ? nullptr : type->FindFieldByName(step.field);
    if (field == nullptr || here == nullptr) break;
    if (!step.key.empty()) return std::max(line, lineOfKey(text, step.key));
    const int index = field->is_repeated() ? std::max(step.index, 0) : -1;
    const int found = here->GetLocation(field, index).line;
    if (found < 0) break;
    line = found + 1;
    const bool below = field->cpp_type() == FieldDescriptor::CPPTYPE_MESSAGE;
    here = below ? here->GetTreeForNested(field, index) : nullptr;
    type = below ? field->message_type() : nullptr;
  }
  return line;
}

}  // namespace newel
