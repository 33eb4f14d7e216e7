#include "core/records/check_parts.h"

namespace newel {
namespace {

const char kCommonPractice[] = "common practice, no source";

void checkStated(const FieldCheck& check, const v1::Source& source) {
  check.text("text", source.text(), 1, 500);
  check.that(source.kind() != v1::SOURCE_KIND_UNSPECIFIED, "kind", "SOURCE_KIND_UNSPECIFIED is not a value");
  check.that(source.kind() != v1::SOURCE_KIND_COMMON_PRACTICE || source.text().rfind(kCommonPractice, 0) == 0,
             "text", "a common practice begins with \"" + std::string(kCommonPractice) + "\"");
}

}  // namespace

void checkSource(const FieldCheck& check, bool given, const v1::Source& source) {
  check.that(given, "source", "is missing");
  checkStated(check.at("source"), source);
}

void checkStatedSources(const FieldCheck& check,
                        const google::protobuf::RepeatedPtrField<v1::Source>& sources) {
  check.that(!sources.empty(), "sources", "is missing");
  for (int i = 0; i < sources.size(); ++i) checkStated(check.at("sources", i), sources[i]);
}

}  // namespace newel
