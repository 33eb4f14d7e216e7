#include "qml/desk/find_model.h"

#include "qml/desk/problem_words.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

constexpr int kMostFound = 20;  // desk_service.proto

QString nameWords(const v1::FoundPerson& person) {
  return QStringLiteral("%1 %2")
      .arg(print::text(person.given_name()), print::text(person.family_name()))
      .trimmed();
}

}  // namespace

FindModel::FindModel(DeskContext& context, QObject* parent) : QObject(parent), m_context(context) {}

void FindModel::begin() {
  m_family_name.clear();
  m_name_problem.clear();
  m_found.clear();
  m_found_words.clear();
  m_asked_id.clear();
  m_reason_problem.clear();
  m_problem.clear();
  m_busy = false;
  emit changed();
  emit askedChanged();
}

void FindModel::setFamilyName(const QString& name) {
  m_family_name = name;
  m_name_problem.clear();
  emit changed();
}

QVariantList FindModel::found() const {
  QVariantList list;
  for (const auto& person : m_found) {
    list << QVariantMap{
        {QStringLiteral("id"), print::text(person.person_id())},
        {QStringLiteral("name"), nameWords(person)},
        {QStringLiteral("born"), person.birth_date().empty()
                                     ? tr("day of birth not given")
                                     : tr("born %1").arg(print::dayWords(person.birth_date()))},
        {QStringLiteral("open"), person.open()}};
  }
  return list;
}

const v1::FoundPerson* FindModel::foundById(const std::string& id) const {
  for (const auto& person : m_found) {
    if (person.person_id() == id) return &person;
  }
  return nullptr;
}

QString FindModel::nameOf(const QString& person_id) const {
  const v1::FoundPerson* person = foundById(person_id.toStdString());
  return person == nullptr ? QString() : nameWords(*person);
}

QString FindModel::asked() const { return nameOf(print::text(m_asked_id)); }

void FindModel::find() {
  if (m_busy) return;
  const QString name = m_family_name.trimmed();
  m_found.clear();
  m_found_words.clear();
  m_asked_id.clear();
  m_problem.clear();
  m_name_problem = name.size() < 2 ? tr("Type the whole family name, two letters at least.") : QString();
  m_busy = m_name_problem.isEmpty();
  emit changed();
  emit askedChanged();
  if (!m_busy) return;
  m_context.worker->run(
      this, tr("Looking for a person"),
      [family_name = name.toStdString()](DeskClient* client) -> absl::StatusOr<std::vector<v1::FoundPerson>> {
        if (client == nullptr) return absl::AbortedError("not signed in");
        return client->findPersons(family_name);
      },
      [this](absl::StatusOr<std::vector<v1::FoundPerson>> found) {
        m_busy = false;
        const absl::Status status = found.status();
        m_problem = problemWords(status, tr("look for a person"));
        if (status.ok()) {
          m_found = *std::move(found);
          const auto count = static_cast<int>(m_found.size());
          m_found_words = count == 0 ? tr("Nobody here has exactly this family name.")
                          : count < kMostFound
                              ? tr("%1 found.").arg(count)
                              : tr("%1 found, and there may be more. Ask for the day of birth.").arg(count);
        }
        emit changed();
        if (absl::IsUnauthenticated(status)) emit sessionEnded();
      });
}

void FindModel::ask(const QString& person_id) {
  m_asked_id = person_id.toStdString();
  m_reason_problem.clear();
  m_problem.clear();
  emit changed();
  emit askedChanged();
}

void FindModel::openFor(const QString& reason) {
  if (m_busy || m_asked_id.empty()) return;
  const std::string words = reason.trimmed().toStdString();
  // The hub's bounds (desk_service.proto).
  m_reason_problem = words.size() < 10    ? tr("Write in some words why it cannot wait.")
                     : words.size() > 500 ? tr("This is too long. Say it in one or two sentences.")
                                          : QString();
  m_busy = m_reason_problem.isEmpty();
  emit changed();
  if (!m_busy) return;
  m_context.worker->run(
      this, tr("Opening the record"),
      [id = m_asked_id, words](DeskClient* client) -> absl::Status {
        if (client == nullptr) return absl::AbortedError("not signed in");
        return client->breakGlass(id, words).status();
      },
      [this, id = m_asked_id](const absl::Status& status) {
        m_busy = false;
        // Open already: somebody assigned the person meanwhile, or it was opened in another window.
        if (status.ok() || absl::IsFailedPrecondition(status)) {
          m_asked_id.clear();
          emit changed();
          emit askedChanged();
          emit opened(print::text(id));
          return;
        }
        m_problem = problemWords(status, tr("open the record"));
        emit changed();
        if (absl::IsUnauthenticated(status)) emit sessionEnded();
      });
}

}  // namespace newel::desk
