// StartModel: a beginning from what a file from elsewhere asks for. Each request is put to the safety rules
// as a template's exercise is; days and limits are taken where the file states them.
#include "core/library/templates.h"
#include "core/time/local_day.h"
#include "qml/desk/import_model.h"
#include "qml/desk/start_model.h"

namespace newel::desk {
namespace {

v1::TemplateEntry templateEntryOf(const v1::Entry& asked) {
  v1::TemplateEntry entry;
  entry.set_exercise_id(asked.exercise_id());
  if (asked.has_dose()) *entry.mutable_dose() = asked.dose();
  entry.set_support(asked.support());
  entry.set_side_policy(asked.side_policy());
  entry.set_prosthesis(asked.prosthesis());
  if (asked.has_schedule()) *entry.mutable_schedule() = asked.schedule();
  entry.set_pacing(asked.pacing());
  return entry;
}

// The days that the file states, unless they are over; a day before today is no first day.
void takeDays(const v1::Programme& asked, v1::Programme& draft) {
  const auto today = parseLocalDay(draft.effective_day());
  const auto first = parseLocalDay(asked.effective_day());
  const auto last = parseLocalDay(asked.end_day());
  if (!today.ok()) return;
  if (first.ok() && *first > *today) draft.set_effective_day(asked.effective_day());
  if (last.ok() && *last > *parseLocalDay(draft.effective_day())) draft.set_end_day(asked.end_day());
}

}  // namespace

void StartModel::offer(const std::string& person_id, std::shared_ptr<const FhirImport> import) {
  m_import_person = person_id;
  m_import = std::move(import);
  emit choicesChanged();
}

const FhirImport* StartModel::askedFor() const {
  const PersonFile* file = m_draft.file();
  return m_import != nullptr && file != nullptr && file->person.id() == m_import_person ? m_import.get()
                                                                                        : nullptr;
}

QVariantList StartModel::asks() const {
  QVariantList rows;
  const FhirImport* import = askedFor();
  if (import == nullptr) return rows;
  for (const auto& request : import->requests) rows << requestRow(request);
  return rows;
}

QString StartModel::asksWords() const {
  const FhirImport* import = askedFor();
  if (import == nullptr || import->draft.entries().empty()) return {};
  return tr("%1 of %2 name an exercise of the catalogue, with what the file says of dose and days.")
      .arg(import->draft.entries_size())
      .arg(import->requests.size());
}

void StartModel::startFromAsked() {
  const FhirImport* import = askedFor();
  if (import == nullptr) return;
  v1::Programme draft = m_draft.startingPoint();
  draft.clear_entries();
  takeDays(import->draft, draft);
  QVariantList left_out;
  for (const auto& asked : import->draft.entries()) {
    v1::ProgrammeTemplate one;
    *one.add_entries() = templateEntryOf(asked);
    Beginning beginning = beginFrom(one, m_draft.file()->person, *m_context.catalogue, *m_context.rules);
    for (const auto& left : beginning.left_out) left_out << leftOutRow(left);
    for (auto& entry : beginning.entries) {
      if (asked.has_thresholds()) *entry.mutable_thresholds() = asked.thresholds();
      *draft.add_entries() = std::move(entry);
    }
  }
  const int taken = draft.entries_size();
  m_draft.beginWith(std::move(draft));
  tell(tr("Begun from the file: %1 of %2 requests taken.").arg(taken).arg(import->requests.size()), left_out);
  emit started();
}

}  // namespace newel::desk
