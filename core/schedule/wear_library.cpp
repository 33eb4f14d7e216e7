#include "core/schedule/wear_library.h"

#include <set>

#include "core/records/record_folder.h"

namespace newel {

absl::StatusOr<WearLibrary> WearLibrary::load(const std::string& folder) {
  const auto files = readRecordFolder<v1::WearFile>(folder);
  if (!files.ok()) return files.status();
  WearLibrary library;
  std::set<std::string> ids;
  bool setting = false;
  for (const auto& [file, record] : *files) {
    for (const auto& example : record.examples()) {
      if (!ids.insert(example.id()).second)
        return absl::InvalidArgumentError(file + ":1: examples: \"" + example.id() + "\" is given twice");
      library.m_examples.push_back(example);
    }
    if (!record.has_redness()) continue;
    if (setting) return absl::InvalidArgumentError(file + ":1: redness: is given twice");
    setting = true;
    library.m_redness = record.redness();
  }
  if (!setting) return absl::InvalidArgumentError(folder + ":1: redness: is missing");
  return library;
}

const v1::WearExample* WearLibrary::find(const std::string& id) const {
  for (const auto& example : m_examples) {
    if (example.id() == id) return &example;
  }
  return nullptr;
}

v1::WearFile WearLibrary::asFile() const {
  v1::WearFile file;
  for (const auto& example : m_examples) *file.add_examples() = example;
  *file.mutable_redness() = m_redness;
  return file;
}

WearLibrary WearLibrary::fromFile(const v1::WearFile& file) {
  WearLibrary library;
  library.m_examples.assign(file.examples().begin(), file.examples().end());
  library.m_redness = file.redness();
  return library;
}

v1::WearPlan draftPlan(const v1::WearExample& example, const v1::RednessSetting& redness,
                       std::uint32_t redness_min) {
  v1::WearPlan plan;
  *plan.mutable_steps() = example.steps();
  plan.set_off_min(example.off_min());
  plan.set_grace_min(example.grace_min());
  plan.set_redness_min(redness_min);
  plan.set_redness_action(redness.default_action());
  return plan;
}

}  // namespace newel
