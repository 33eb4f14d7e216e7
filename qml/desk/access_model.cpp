#include "qml/desk/access_model.h"

#include <algorithm>

#include "core/time/local_day.h"
#include "qml/desk/problem_words.h"
#include "qml/print/record_words.h"

namespace newel::desk {

AccessModel::AccessModel(DeskContext& context, QObject* parent) : QObject(parent), m_context(context) {}

bool AccessModel::mayAssign() const {
  const v1::Role role = m_context.therapist.role();
  return role == v1::ROLE_LEAD || role == v1::ROLE_ADMINISTRATOR;
}

QVariantList AccessModel::therapists() const {
  QVariantList list;
  for (const auto& one : m_therapists) {
    list << QVariantMap{{QStringLiteral("id"), print::text(one.therapist_id())},
                        {QStringLiteral("name"), print::text(one.display_name())},
                        {QStringLiteral("assigned"), one.assigned()}};
  }
  return list;
}

int AccessModel::assignedCount() const {
  return static_cast<int>(std::count_if(m_therapists.begin(), m_therapists.end(),
                                        [](const v1::Assignment& one) { return one.assigned(); }));
}

QVariantMap AccessModel::rowOf(const v1::Device& device) const {
  const auto moment = [this](const google::protobuf::Timestamp& at) {
    return print::momentWords(toTime(at), m_context.zone);
  };
  return {{QStringLiteral("id"), print::text(device.id())},
          {QStringLiteral("name"), device.name().empty() ? tr("a phone") : print::text(device.name())},
          {QStringLiteral("paired"), moment(device.paired_at())},
          {QStringLiteral("contact"), device.has_last_contact() ? moment(device.last_contact()) : QString()},
          {QStringLiteral("version"), print::text(device.app_version())},
          {QStringLiteral("revoked"), device.revoked()}};
}

QVariantList AccessModel::phones() const {
  QVariantList list;
  for (const auto& device : m_phones) list << rowOf(device);
  return list;
}

QVariantMap AccessModel::asked() const {
  for (const auto& device : m_phones) {
    if (device.id() == m_asked_id) return rowOf(device);
  }
  return {};
}

void AccessModel::begin(const std::string& person_id, const QString& name) {
  end();
  m_person_id = person_id;
  m_name = name;
  emit changed();
  read();
}

void AccessModel::end() {
  m_person_id.clear();
  m_name.clear();
  m_therapists.clear();
  m_phones.clear();
  m_asked_id.clear();
  m_problem.clear();
  m_busy = false;
  emit changed();
}

void AccessModel::nudge(const std::string& person_id) {
  if (m_person_id.empty() || (!person_id.empty() && person_id != m_person_id)) return;
  m_problem.clear();
  read();
}

void AccessModel::read() {
  m_context.worker->run(
      this, tr("Reading who has access"),
      [id = m_person_id, who = mayAssign()](DeskClient* client) -> Facts {
        const absl::Status none = absl::AbortedError("not signed in");
        if (client == nullptr) return {none, none};
        Facts facts{std::vector<v1::Assignment>(), client->devices(id)};
        if (who) facts.therapists = client->assignments(id);
        return facts;
      },
      [this, id = m_person_id](Facts facts) {
        if (id == m_person_id) got(std::move(facts));
      });
}

void AccessModel::got(Facts facts) {
  const absl::Status status = facts.phones.ok() ? facts.therapists.status() : facts.phones.status();
  if (!status.ok()) m_problem = problemWords(status, tr("read who has access"));
  if (facts.therapists.ok()) m_therapists = *std::move(facts.therapists);
  if (facts.phones.ok()) m_phones = *std::move(facts.phones);
  emit changed();
  if (absl::IsUnauthenticated(status)) emit sessionEnded();
}

void AccessModel::run(const QString& words, const QString& doing,
                      std::function<absl::Status(DeskClient&)> call, std::function<void()> done) {
  if (m_busy) return;
  m_busy = true;
  m_problem.clear();
  emit changed();
  m_context.worker->run(
      this, words,
      [call = std::move(call)](DeskClient* client) -> absl::Status {
        if (client == nullptr) return absl::AbortedError("not signed in");
        return call(*client);
      },
      [this, doing, done = std::move(done), id = m_person_id](const absl::Status& status) {
        if (id != m_person_id) return;
        m_busy = false;
        m_problem = problemWords(status, doing);
        if (status.ok() && done) done();
        emit changed();
        if (absl::IsUnauthenticated(status)) {
          emit sessionEnded();
        } else {
          read();
        }
      });
}

void AccessModel::assign(const QString& therapist_id, bool assigned) {
  run(
      tr("Changing who looks after the person"), tr("change who looks after the person"),
      [id = m_person_id, who = therapist_id.toStdString(), assigned](DeskClient& client) {
        return client.assign(id, who, assigned);
      },
      nullptr);
}

void AccessModel::ask(const QString& device_id) {
  m_asked_id = device_id.toStdString();
  emit changed();
}

void AccessModel::revoke() {
  if (m_asked_id.empty()) return;
  const QString phone = asked().value(QStringLiteral("name")).toString();
  run(
      tr("Taking the phone's access away"), tr("take this phone's access away"),
      [id = m_asked_id](DeskClient& client) { return client.revokeDevice(id); },
      [this, phone] {
        m_asked_id.clear();
        emit revoked(phone);
      });
}

}  // namespace newel::desk
