#include "qml/desk/hold_model.h"

#include "qml/desk/entry_list_model.h"
#include "qml/desk/problem_words.h"
#include "qml/print/record_words.h"

namespace newel::desk {

HoldModel::HoldModel(DeskContext& context, QObject* parent) : QObject(parent), m_context(context) {}

void HoldModel::begin(std::shared_ptr<const PersonFile> file) {
  m_file = std::move(file);
  m_lifts_id.clear();
  m_everything = true;
  m_chosen.clear();
  m_reason.clear();
  m_problem.clear();
  m_reviewing = false;
  m_sending = false;
}

void HoldModel::beginHold(std::shared_ptr<const PersonFile> file) {
  begin(std::move(file));
  emit changed();
}

void HoldModel::beginLift(std::shared_ptr<const PersonFile> file, const std::string& hold_id) {
  begin(std::move(file));
  m_lifts_id = hold_id;
  emit changed();
}

QVariantList HoldModel::entries() const {
  QVariantList list;
  const v1::Programme* last = m_file ? lastProgramme(*m_file) : nullptr;
  if (last == nullptr) return list;
  const QStringList titles = entryTitles(*last, *m_context.catalogue, m_context.language);
  for (int i = 0; i < last->entries_size(); ++i) {
    list << QVariantMap{{QStringLiteral("id"), print::text(last->entries(i).id())},
                        {QStringLiteral("title"), titles.value(i)}};
  }
  return list;
}

QString HoldModel::name() const { return m_file ? print::fullName(m_file->identity) : QString(); }
QString HoldModel::limbs() const { return m_file ? print::limbsWords(m_file->person) : QString(); }

void HoldModel::setEverything(bool everything) {
  m_everything = everything;
  emit changed();
}

void HoldModel::setReason(const QString& reason) {
  if (m_reason == reason) return;
  m_reason = reason;
  emit changed();
}

void HoldModel::toggle(const QString& entry_id) {
  if (!m_chosen.removeOne(entry_id)) m_chosen << entry_id;
  m_everything = false;
  emit changed();
}

QString HoldModel::what() const {
  if (m_everything) return tr("everything");
  QStringList titles;
  for (const QVariant& entry : entries()) {
    const QVariantMap map = entry.toMap();
    if (m_chosen.contains(map.value(QStringLiteral("id")).toString())) {
      titles << map.value(QStringLiteral("title")).toString();
    }
  }
  return titles.join(QStringLiteral(", "));
}

QString HoldModel::whyNot() const {
  if (!lifting() && !m_everything && m_chosen.isEmpty())
    return tr("Choose at least one exercise, or everything.");
  if (m_reason.trimmed().isEmpty()) {
    return lifting() ? tr("Write to them why it may go on.") : tr("Write to them why, in plain words.");
  }
  return {};
}

void HoldModel::review() {
  m_reviewing = whyNot().isEmpty();
  emit changed();
}

void HoldModel::change() {
  m_reviewing = false;
  emit changed();
}

void HoldModel::send() {
  if (m_sending || !m_file || !whyNot().isEmpty()) return;
  v1::IssueHoldRequest request;
  request.set_person_id(m_file->person.id());
  request.set_reason(m_reason.trimmed().toStdString());
  request.set_lifts_id(m_lifts_id);
  if (!lifting() && !m_everything) {
    for (const QString& id : m_chosen) request.add_entry_ids(id.toStdString());
  }
  m_sending = true;
  m_problem.clear();
  emit changed();
  m_context.worker->run(
      this, lifting() ? tr("Lifting the hold") : tr("Sending the hold order"),
      [request](DeskClient* client) -> absl::Status {
        if (client == nullptr) return absl::UnauthenticatedError("not signed in");
        return client->issueHold(request).status();
      },
      [this](const absl::Status& status) {
        m_sending = false;
        m_problem = problemWords(status, lifting() ? tr("lift the hold") : tr("send the hold order"));
        // A hold that may not have gone out is a matter for the telephone.
        if (!status.ok() && !lifting()) m_problem += tr(" If it is urgent, phone them now.");
        emit changed();
        if (status.ok()) emit sent();
      });
}

}  // namespace newel::desk
