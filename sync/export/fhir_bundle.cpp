#include "sync/export/fhir_bundle.h"

#include <algorithm>

#include "core/time/local_day.h"
#include "sync/export/fhir_parts.h"
#include "sync/export/record_words.h"

namespace newel {
namespace {

absl::Status addPractices(FhirWork& work, const ExportProgress& progress) {
  const auto& practices = work.history.practices;
  bool asked = false;
  for (std::size_t i = 0; i < practices.size(); ++i) {
    absl::Status going = askProgress(progress, static_cast<int>(10 + i * 70 / practices.size()));
    if (!going.ok()) return going;
    // What a practice of another day did still counts for an occasion of a day that is told of.
    if (!tellsOf(work.history, practices[i].local_day())) continue;
    if (!asked && !practices[i].ready_answers().empty()) {
      addQuestionnaire(work);
      asked = true;
    }
    addPractice(work, practices[i]);
    addPracticeEvents(work, practices[i]);
  }
  absl::Status going = askProgress(progress, 80);
  return going.ok() ? addMissed(work) : going;
}

}  // namespace

absl::StatusOr<std::string> fhirBundle(const PersonHistory& history, const ExportOptions& options,
                                       const ExportProgress& progress) {
  const Json patient = reference(history.person.id());
  FhirWork work{history, options, RuleBook::builtIn(), written(patient), written(Json::array({patient}))};
  absl::Status going = askProgress(progress, 0);
  if (!going.ok()) return going;
  addPatient(work);
  for (std::size_t i = 0; i < history.programmes.size(); ++i) addProgramme(work, i);
  addWearPlans(work);
  addStandingWounds(work);
  for (const auto& hold : history.holds) addHold(work, hold);
  going = addPractices(work, progress);
  if (!going.ok()) return going;
  for (const auto& measure : history.measures) {
    if (tellsOf(history, measure.local_day())) addMeasure(work, measure);
  }
  for (const auto& block : history.wear_blocks) {
    if (tellsOf(history, block.local_day())) addWearBlock(work, block);
  }
  for (const auto& message : history.messages) {
    if (tellsOf(history, localDayOf(history, toTime(message.message.written_at()))))
      addMessage(work, message);
  }
  for (const auto& phone : history.phones) addPhone(work, phone);
  for (const auto& line : history.audit) {
    if (tellsOf(history, localDayOf(history, line.at))) addAuditLine(work, line);
  }
  going = askProgress(progress, 100);
  if (!going.ok()) return going;
  return work.bundle.finish(history.as_of,
                            derivedId(history.person.id(), "bundle/" + isoInstant(history.as_of)));
}

}  // namespace newel
