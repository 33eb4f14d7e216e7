#include <functional>
#include <map>
#include <ostream>

#include "core/library/own_exercises.h"
#include "core/library/settings.h"
#include "core/records/check.h"
#include "sync/tool/commands.h"
#include "sync/tool/tool_io.h"

namespace newel::tool {
namespace {

// Fine, or the first thing wrong.
using Validate = std::function<absl::Status(const std::string& file)>;

template <typename Record>
absl::Status validate(const std::string& file) {
  return readRecord<Record>(file).status();
}

// Records that are good only beside the catalogue.
absl::Status validateOwn(const std::string& file) {
  const auto own = readRecord<v1::OwnExercise>(file);
  return own.ok() ? checkOwn(*own, Catalogue::builtIn()) : own.status();
}

absl::Status validateSettings(const std::string& file) {
  const auto settings = readRecord<v1::ClinicSettings>(file);
  return settings.ok() ? fitsSettings(*settings, Catalogue::builtIn()) : settings.status();
}

const std::map<std::string, Validate>& validators() {
  static const std::map<std::string, Validate> kAll = {
      {"person", validate<v1::Person>},
      {"entry", validate<v1::Entry>},
      {"programme", validate<v1::Programme>},
      {"practice", validate<v1::Practice>},
      {"hold-order", validate<v1::HoldOrder>},
      {"message", validate<v1::Message>},
      {"receipt", validate<v1::Receipt>},
      {"measure", validate<v1::Measure>},
      {"exercise", validate<v1::Exercise>},
      {"words", validate<v1::ExerciseWords>},
      {"rule", validate<v1::Rule>},
      {"dose", validate<v1::Dose>},
      {"schedule", validate<v1::Schedule>},
      {"measure-kind", validate<v1::MeasureKind>},
      {"progression", validate<v1::ProgressionPreset>},
      {"wear-plan", validate<v1::WearPlan>},
      {"wear-log", validate<v1::WearLog>},
      {"cert-statements", validate<v1::CertStatements>},
      {"advice-card", validate<v1::AdviceCard>},
      {"clinic-settings", validateSettings},
      {"own-exercise", validateOwn},
  };
  return kAll;
}

}  // namespace

int runValidate(const std::string& kind, const std::string& file, Output output) {
  const auto found = validators().find(kind);
  if (found == validators().end()) {
    std::string kinds;
    for (const auto& [name, unused] : validators()) kinds += (kinds.empty() ? "" : ", ") + name;
    return complain(output.err, absl::InvalidArgumentError("\"" + kind + "\" is none of " + kinds));
  }
  const auto status = found->second(file);
  if (absl::IsNotFound(status)) return complain(output.err, status);
  if (!status.ok()) {
    complain(output.err, status);
    return kSaysNo;
  }
  output.out << file << ": a good " << kind << '\n';
  return kFine;
}

}  // namespace newel::tool
