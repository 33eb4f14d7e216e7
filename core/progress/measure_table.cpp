#include "core/progress/measure_table.h"

#include <cmath>
#include <filesystem>
#include <sstream>

#include "core/records/record_folder.h"

namespace newel {
namespace {

std::string asText(double value) {
  std::ostringstream text;
  text << value;
  return text.str();
}

}  // namespace

absl::StatusOr<MeasureTable> MeasureTable::load(const std::string& folder) {
  auto files = readRecordFolder<v1::MeasureKind>(folder);
  if (!files.ok()) return files.status();
  MeasureTable table;
  for (auto& filed : *files) {
    // One file, one id: no id can come twice.
    if (std::filesystem::path(filed.file).stem() != filed.record.id()) {
      return absl::InvalidArgumentError(filed.file + ":1: id: is not the file's name");
    }
    table.m_kinds.push_back(std::move(filed.record));
  }
  return table;
}

MeasureTable MeasureTable::with(const MeasureTable& more) const {
  MeasureTable both = *this;
  for (const auto& kind : more.m_kinds) {
    bool known = false;
    for (auto& mine : both.m_kinds) {
      if (mine.id() != kind.id()) continue;
      known = true;
      if (kind.revision() >= mine.revision()) mine = kind;
    }
    if (!known) both.m_kinds.push_back(kind);
  }
  return both;
}

const v1::MeasureKind* MeasureTable::find(const std::string& id) const {
  for (const auto& kind : m_kinds) {
    if (kind.id() == id) return &kind;
  }
  return nullptr;
}

const v1::MeasureWords& measureWords(const v1::MeasureKind& kind, const std::string& language) {
  for (const std::string& wanted : {language, language.substr(0, language.find('-'))}) {
    const auto found = kind.words().find(wanted);
    if (found != kind.words().end()) return found->second;
  }
  return kind.words().at("en");
}

absl::Status checkMeasure(const v1::Measure& measure, const MeasureTable& table) {
  const v1::MeasureKind* kind = table.find(measure.kind());
  if (kind == nullptr) return absl::NotFoundError("kind: there is no measure \"" + measure.kind() + "\"");
  if (measure.unit() != kind->unit()) {
    return absl::InvalidArgumentError("unit: \"" + measure.unit() + "\" is not \"" + kind->unit() + "\"");
  }
  if (!std::isfinite(measure.value())) return absl::InvalidArgumentError("value: is not a number");
  if (measure.value() < kind->least() || measure.value() > kind->most()) {
    return absl::InvalidArgumentError("value: " + asText(measure.value()) + " is not between " +
                                      asText(kind->least()) + " and " + asText(kind->most()));
  }
  const bool sided = measure.side() != v1::SIDE_UNSPECIFIED;
  if (sided != kind->per_side()) {
    return absl::InvalidArgumentError(sided ? "side: this measure has none" : "side: is missing");
  }
  return absl::OkStatus();
}

}  // namespace newel
