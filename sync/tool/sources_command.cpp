#include <google/protobuf/descriptor.h>

#include <algorithm>
#include <map>
#include <ostream>
#include <set>
#include <tuple>

#include "core/library/catalogue.h"
#include "core/progress/measure_table.h"
#include "core/progress/progression_presets.h"
#include "core/review/cert.h"
#include "core/safety/rule_book.h"
#include "core/schedule/wear_library.h"
#include "sync/tool/trade_commands.h"
#include "sync/tool/trade_io.h"

namespace newel::tool {
namespace {

using google::protobuf::FieldDescriptor;
using google::protobuf::Message;

struct Key {
  v1::SourceKind kind = v1::SOURCE_KIND_UNSPECIFIED;
  std::string text;
  friend bool operator<(const Key& a, const Key& b) {
    return std::tie(a.kind, a.text) < std::tie(b.kind, b.text);
  }
};
// Who rests on a source: "exercises: sit-to-stand".
using Uses = std::map<Key, std::set<std::pair<std::string, std::string>>>;

class Collector {
 public:
  // Every Source in `record`, however deep, so that none can be forgotten.
  void add(const std::string& of, const std::string& id, const Message& record) {
    const auto* reflection = record.GetReflection();
    std::vector<const FieldDescriptor*> fields;
    reflection->ListFields(record, &fields);
    for (const auto* field : fields) {
      if (field->cpp_type() != FieldDescriptor::CPPTYPE_MESSAGE) continue;
      const int count = field->is_repeated() ? reflection->FieldSize(record, field) : 1;
      for (int i = 0; i < count; ++i) {
        const Message& below = field->is_repeated() ? reflection->GetRepeatedMessage(record, field, i)
                                                    : reflection->GetMessage(record, field);
        if (const auto* source = dynamic_cast<const v1::Source*>(&below)) {
          m_uses[{source->kind(), source->text()}].insert({of, id});
        } else {
          add(of, id, below);
        }
      }
    }
  }
  const Uses& uses() const { return m_uses; }

 private:
  Uses m_uses;
};

const std::vector<std::string>& parts() {
  static const std::vector<std::string> kParts = {"exercises",   "rules", "questions", "measures",
                                                  "progression", "wear",  "report"};
  return kParts;
}

Collector everything() {
  Collector all;
  for (const auto& exercise : Catalogue::builtIn().exercises()) all.add("exercises", exercise.id(), exercise);
  for (const auto& card : Catalogue::builtIn().cards()) all.add("cards", card.id(), card);
  for (const auto& setting : Catalogue::builtIn().settings()) all.add("settings", setting.id(), setting);
  for (const auto& rule : RuleBook::builtIn().rules()) all.add("rules", rule.id(), rule);
  for (const auto& question : RuleBook::builtIn().questions()) all.add("questions", question.id(), question);
  for (const auto& kind : MeasureTable::builtIn().kinds()) all.add("measures", kind.id(), kind);
  for (const auto& preset : progressionPresets()) all.add("progression", preset.id(), preset);
  for (const auto& example : WearLibrary::builtIn().examples()) all.add("wear", example.id(), example);
  all.add("wear", "redness", WearLibrary::builtIn().redness());
  all.add("report", "cert", certTable());
  return all;
}

std::string usersText(const std::set<std::pair<std::string, std::string>>& users, const std::string& of) {
  std::string text;
  for (const auto& [part, id] : users) {
    if (!of.empty() && part != of) continue;
    text += (text.empty() ? "" : ", ") + id;
  }
  return text;
}

}  // namespace

int runSources(const std::string& kind, const std::string& of, Output output) {
  int wanted = 0;
  if (!kind.empty()) {
    const auto value = fromShortName(v1::SourceKind_descriptor(), "--kind", kind);
    if (!value.ok()) return complain(output.err, value.status());
    wanted = *value;
  }
  if (!of.empty() && std::find(parts().begin(), parts().end(), of) == parts().end()) {
    std::string names;
    for (const auto& part : parts()) names += (names.empty() ? "" : ", ") + part;
    return complain(output.err, absl::InvalidArgumentError("--of: \"" + of + "\" is none of " + names));
  }
  const Collector all = everything();
  Json json = Json::array();
  Table table({"kind", "source", "used by"});
  int listed = 0;
  for (const auto& [key, users] : all.uses()) {
    const std::string used_by = usersText(users, of);
    if ((wanted != 0 && key.kind != wanted) || used_by.empty()) continue;
    ++listed;
    const std::string name = shortName(v1::SourceKind_descriptor(), key.kind);
    table.row({name, key.text, used_by});
    Json one = {{"kind", name}, {"text", key.text}, {"used_by", Json::array()}};
    for (const auto& [part, id] : users) {
      if (of.empty() || part == of) one["used_by"].push_back({{"of", part}, {"id", id}});
    }
    json.push_back(std::move(one));
  }
  if (output.json) {
    printJson(json, output.out);
    return kFine;
  }
  table.print(output.out);
  output.out << listed
             << " sources; \"from memory\": the publication is named, the value was not checked against it\n";
  return kFine;
}

}  // namespace newel::tool
