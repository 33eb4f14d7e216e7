#include "qml/desk/remarks_model.h"

#include <algorithm>

#include "core/records/record_text.h"
#include "core/time/local_day.h"
#include "qml/desk/hub_worker.h"
#include "qml/desk/import_model.h"
#include "qml/desk/problem_words.h"
#include "qml/print/record_words.h"
#include "sync/common/record_id.h"

namespace newel::desk {
namespace {

constexpr int kMostRemarkBytes = 1000;  // check_practice.cpp

}  // namespace

void RemarksModel::show(std::shared_ptr<const PersonFile> file) {
  m_file = std::move(file);
  ++m_version;
  emit changed();
}

QString RemarksModel::today() const {
  return m_file ? print::text(formatLocalDay(todayOf(*m_file, m_context.now()))) : QString();
}

QVariantMap RemarksModel::rowOf(const v1::Remark& remark) const {
  const bool mine = remark.written_by() == m_context.therapist.id();
  const QString when = print::momentWords(toTime(remark.written_at()), m_context.zone);
  return {{QStringLiteral("id"), print::text(remark.id())},
          {QStringLiteral("words"),
           mine ? tr("You, %1").arg(when) : tr("%1, %2").arg(print::text(remark.writer_name()), when)},
          {QStringLiteral("day"), print::dayWords(remark.local_day())},
          {QStringLiteral("text"), print::text(remark.text())},
          {QStringLiteral("mine"), mine}};
}

QVariantList RemarksModel::about(const QString& practice_id) const {
  QVariantList rows;
  if (!m_file) return rows;
  for (const v1::Remark& remark : m_file->remarks) {
    if (!remark.withdrawn() && remark.practice_id() == practice_id.toStdString()) rows << rowOf(remark);
  }
  return rows;
}

QVariantList RemarksModel::ofDays() const {
  if (!m_file) return {};
  std::vector<const v1::Remark*> days;
  for (const v1::Remark& remark : m_file->remarks) {
    if (!remark.withdrawn() && remark.practice_id().empty()) days.push_back(&remark);
  }
  std::stable_sort(days.begin(), days.end(),
                   [](const auto* a, const auto* b) { return a->local_day() > b->local_day(); });
  QVariantList rows;
  for (const v1::Remark* const remark : days) rows << rowOf(*remark);
  return rows;
}

v1::PutRemarkRequest RemarksModel::noteAbout(const std::string& person_id, const std::string& day,
                                             QString text) const {
  text = text.trimmed();
  while (text.toUtf8().size() > kMostRemarkBytes) text.chop(1);
  v1::PutRemarkRequest request;
  v1::Remark& remark = *request.mutable_remark();
  remark.set_id(newRecordId(*m_context.clock, *m_context.random));
  remark.set_person_id(person_id);
  remark.set_local_day(day);
  remark.set_text(text.toStdString());
  *remark.mutable_written_at() = toTimestamp(m_context.now() + m_context.hub_ahead);
  return request;
}

void RemarksModel::write(const QString& practice_id, const QString& day, const QString& text) {
  if (!m_file || m_saving) return;
  v1::PutRemarkRequest request = noteAbout(m_file->person.id(), day.trimmed().toStdString(), text);
  request.mutable_remark()->set_practice_id(practice_id.toStdString());
  put({std::move(request)});
}

void RemarksModel::keepAsked(const std::string& person_id, const FhirImport& asked) {
  const std::string today = formatLocalDay(localDayAt(m_context.now(), m_context.zone));
  std::vector<v1::PutRemarkRequest> notes;
  for (const std::string& warning : asked.warnings)
    notes.push_back(noteAbout(person_id, today, print::text(warning)));
  for (const ImportedRequest& request : asked.requests) {
    const std::string written_on = request.authored_on.substr(0, today.size());
    const QVariantMap row = requestRow(request);
    notes.push_back(noteAbout(
        person_id, parseLocalDay(written_on).ok() ? written_on : today,
        tr("Asked for: %1. %2")
            .arg(row[QStringLiteral("title")].toString(), row[QStringLiteral("details")].toString())));
  }
  if (!notes.empty()) put(std::move(notes));
}

void RemarksModel::takeBack(const QString& id) {
  if (!m_file || m_saving) return;
  for (const v1::Remark& kept : m_file->remarks) {
    if (kept.id() != id.toStdString()) continue;
    v1::PutRemarkRequest request;
    *request.mutable_remark() = kept;
    request.mutable_remark()->set_withdrawn(true);
    request.set_base_revision(kept.revision());
    return put({request});
  }
}

void RemarksModel::put(std::vector<v1::PutRemarkRequest> requests) {
  m_saving = true;
  m_problem.clear();
  emit changed();
  m_context.worker->run(
      this, tr("Keeping the note"),
      [requests = std::move(requests)](DeskClient* client) -> absl::Status {
        if (client == nullptr) return absl::UnauthenticatedError("not signed in");
        for (const v1::PutRemarkRequest& request : requests) {
          if (absl::Status kept = client->putRemark(request).status(); !kept.ok()) return kept;
        }
        return absl::OkStatus();
      },
      [this](const absl::Status& status) {
        m_saving = false;
        m_problem = problemWords(status, tr("keep the note"));
        emit changed();
        if (status.ok()) emit saved();
      });
}

}  // namespace newel::desk
