#include "core/library/settings.h"

namespace newel {

absl::Status fitsSettings(const v1::ClinicSettings& settings, const Catalogue& catalogue) {
  for (const auto& [id, value] : settings.values()) {
    const std::string path = "values[" + id + "]: ";
    const v1::SettingKind* kind = catalogue.setting(id);
    if (kind == nullptr) return absl::InvalidArgumentError(path + "there is no such setting");
    if (value < kind->least()) {
      return absl::InvalidArgumentError(path + std::to_string(value) + " is under " +
                                        std::to_string(kind->least()));
    }
    if (value > kind->most()) {
      return absl::InvalidArgumentError(path + std::to_string(value) + " is over " +
                                        std::to_string(kind->most()));
    }
  }
  return absl::OkStatus();
}

SettingValues settingValues(const v1::ClinicSettings& settings, const Catalogue& catalogue) {
  SettingValues values;
  for (const v1::SettingKind& kind : catalogue.settings()) {
    const auto set = settings.values().find(kind.id());
    const bool fits =
        set != settings.values().end() && set->second >= kind.least() && set->second <= kind.most();
    values[kind.id()] = fits ? set->second : kind.usual();
  }
  return values;
}

std::vector<std::string> settingsNamedIn(const std::string& text) {
  std::vector<std::string> names;
  for (std::size_t open = text.find('{'); open != std::string::npos; open = text.find('{', open + 1)) {
    const std::size_t close = text.find('}', open);
    names.push_back(text.substr(open + 1, close == std::string::npos ? close : close - open - 1));
  }
  return names;
}

std::string withSettings(std::string text, const SettingValues& values) {
  for (const std::string& name : settingsNamedIn(text)) {
    const auto found = values.find(name);
    const std::size_t at = text.find("{" + name + "}");
    if (found == values.end() || at == std::string::npos) continue;
    text.replace(at, name.size() + 2, std::to_string(found->second));
  }
  return text;
}

SettingValues usualSettings(const Catalogue& catalogue) {
  return settingValues(v1::ClinicSettings(), catalogue);
}

}  // namespace newel
