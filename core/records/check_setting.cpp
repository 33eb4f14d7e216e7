#include "core/records/check.h"
#include "core/records/check_parts.h"

namespace newel {

absl::Status check(const v1::SettingKind& kind) {
  FieldCheck check;
  check.key("id", kind.id());
  check.range("most", kind.most(), kind.least(), 1000);
  check.range("usual", kind.usual(), kind.least(), kind.most());
  check.key("unit", kind.unit());
  check.that(kind.words().contains("en"), "words[en]", "is missing");
  for (const auto& [language, words] : kind.words()) {
    FieldCheck at = check.at("words[" + language + "]");
    at.text("title", words.title(), 1, 120);
    at.text("help", words.help(), 1, 600);
  }
  checkStatedSources(check, kind.sources());
  return check.status();
}

absl::Status check(const v1::ClinicSettings& settings) {
  FieldCheck check;
  check.uuid("clinic_id", settings.clinic_id());
  for (const auto& [id, value] : settings.values()) {
    check.key("values", id);
    check.range("values[" + id + "]", value, 0, 1000);
  }
  return check.status();
}

}  // namespace newel
