#include "qml/desk/person_model.h"

#include <cmath>

#include "core/time/local_day.h"
#include "qml/desk/attention_words.h"
#include "qml/desk/file_words.h"
#include "qml/desk/problem_words.h"
#include "qml/print/record_words.h"
#include "sync/common/record_id.h"

namespace newel::desk {
namespace {

constexpr int kWeeks = 8;
constexpr int kAdherenceWeeks = 4;

}  // namespace

PersonModel::PersonModel(DeskContext& context, QObject* parent) : QObject(parent), m_context(context) {}

void PersonModel::open(const std::string& person_id) {
  close();
  m_id = person_id;
  reload();
}

void PersonModel::close() {
  m_id.clear();
  m_file.reset();
  m_record.clear();
  m_problem.clear();
  m_send_problem.clear();
  m_message_id.clear();
  emit changed();
  emit sendingChanged();
}

void PersonModel::reload() {
  if (m_id.empty()) return;
  if (m_reading) {
    m_read_again = true;
    return;
  }
  m_reading = true;
  m_context.worker->run(
      this, tr("Reading the record"),
      [id = m_id, mark = m_context.therapist.role() != v1::ROLE_AUDITOR](
          DeskClient* client) -> std::pair<std::string, absl::StatusOr<PersonFile>> {
        if (client == nullptr) return {id, absl::UnauthenticatedError("not signed in")};
        return {id, fetchPerson(*client, id, mark)};
      },
      [this](std::pair<std::string, absl::StatusOr<PersonFile>> answer) {
        m_reading = false;
        const bool again = m_read_again;
        m_read_again = false;
        // Another person was opened meanwhile: this answer must never show under that name.
        if (answer.first == m_id) got(std::move(answer.second));
        if (again || (answer.first != m_id && !m_id.empty())) reload();
      });
}

void PersonModel::got(absl::StatusOr<PersonFile> file) {
  if (!file.ok()) {
    m_problem = problemWords(file.status(), tr("read this record"));
    emit changed();
    if (file.status().code() == absl::StatusCode::kUnauthenticated) emit sessionEnded(file.status());
    if (absl::IsPermissionDenied(file.status()) && m_file != nullptr) emit closedToUs();
    return;
  }
  m_problem.clear();
  m_file = std::make_shared<const PersonFile>(*std::move(file));
  m_record = recordRows(m_file->person, m_file->identity);
  emit changed();
  emit fileChanged();
}

void PersonModel::nudge(const std::string& person_id) {
  if (!m_id.empty() && (person_id.empty() || person_id == m_id)) reload();
}

QString PersonModel::moment(absl::Time at) const { return print::momentWords(at, m_context.zone); }
QString PersonModel::moment(const std::optional<absl::Time>& at) const {
  return at ? moment(*at) : QString();
}

QString PersonModel::name() const { return m_file ? print::fullName(m_file->identity) : QString(); }
QString PersonModel::givenName() const {
  return m_file ? print::text(m_file->identity.given_name()) : QString();
}
QString PersonModel::limbs() const { return m_file ? print::limbsWords(m_file->person) : QString(); }
QString PersonModel::mobility() const { return m_file ? print::words(m_file->person.mobility()) : QString(); }
bool PersonModel::hasProgramme() const { return m_file && lastProgramme(*m_file) != nullptr; }

int PersonModel::missing() const {
  int count = 0;
  for (const QVariant& row : m_record) count += row.toMap().value(QStringLiteral("missing")).toBool() ? 1 : 0;
  return count;
}

QVariantList PersonModel::programmes() const {
  QVariantList list;
  if (!m_file) return list;
  for (auto programme = m_file->programmes.rbegin(); programme != m_file->programmes.rend(); ++programme) {
    const Reached reached = reachedBy(*m_file, v1::RECEIPT_OF_PROGRAMME, programme->id());
    list << QVariantMap{{QStringLiteral("number"), programme->number()},
                        {QStringLiteral("current"), programme == m_file->programmes.rbegin()},
                        {QStringLiteral("days"), tr("%1 to %2")
                                                     .arg(print::dayWords(programme->effective_day()),
                                                          print::dayWords(programme->end_day()))},
                        {QStringLiteral("signer"), print::text(programme->signer_name())},
                        {QStringLiteral("entries"), programme->entries_size()},
                        {QStringLiteral("sent"), moment(toTime(programme->issued_at()))},
                        {QStringLiteral("arrived"), moment(reached.arrived)},
                        {QStringLiteral("seen"), moment(reached.seen)}};
  }
  return list;
}

QVariantList PersonModel::holds() const {
  QVariantList list;
  if (!m_file) return list;
  for (const v1::HoldOrder* hold : activeHolds(*m_file)) {
    const Reached reached = reachedBy(*m_file, v1::RECEIPT_OF_HOLD_ORDER, hold->id());
    list << QVariantMap{{QStringLiteral("id"), print::text(hold->id())},
                        {QStringLiteral("what"), heldWords(*m_file, *hold, m_context)},
                        {QStringLiteral("reason"), print::text(hold->reason())},
                        {QStringLiteral("by"), print::text(hold->signer_name())},
                        {QStringLiteral("sent"), moment(toTime(hold->issued_at()))},
                        {QStringLiteral("arrived"), moment(reached.arrived)},
                        {QStringLiteral("seen"), moment(reached.seen)}};
  }
  return list;
}

QString PersonModel::mediaWordsOf(const v1::Message& message) {
  if (message.has_photo()) return tr("With a photo: %1").arg(print::text(message.photo().words()));
  if (message.has_clip()) return tr("With a clip: %1").arg(print::text(message.clip().words()));
  return {};
}

QVariantList PersonModel::messages() const {
  QVariantList list;
  if (!m_file) return list;
  for (const auto& message : m_file->messages) {
    const bool mine = message.sender() == v1::SENDER_CLINIC;
    QString state;
    if (mine) {
      const Reached reached = reachedBy(*m_file, v1::RECEIPT_OF_MESSAGE, message.id());
      state = reached.seen      ? tr("seen %1").arg(moment(*reached.seen))
              : reached.arrived ? tr("arrived %1, not seen yet").arg(moment(*reached.arrived))
                                : tr("sent, not arrived yet");
    }
    list << QVariantMap{{QStringLiteral("mine"), mine},
                        {QStringLiteral("from"), mine ? print::text(message.sender_name()) : givenName()},
                        {QStringLiteral("text"), print::text(message.text())},
                        {QStringLiteral("when"), moment(toTime(message.written_at()))},
                        {QStringLiteral("urgent"), message.urgent()},
                        {QStringLiteral("media"), mediaWordsOf(message)},
                        {QStringLiteral("state"), state}};
  }
  return list;
}

QVariantList PersonModel::devices() const {
  QVariantList list;
  if (!m_file) return list;
  for (const auto& device : m_file->devices) {
    list << QVariantMap{{QStringLiteral("id"), print::text(device.id())},
                        {QStringLiteral("name"), print::text(device.name())},
                        {QStringLiteral("paired"), moment(toTime(device.paired_at()))},
                        {QStringLiteral("contact"),
                         device.has_last_contact() ? moment(toTime(device.last_contact())) : QString()},
                        {QStringLiteral("revoked"), device.revoked()},
                        {QStringLiteral("version"), print::text(device.app_version())}};
  }
  return list;
}

QString PersonModel::contact() const {
  if (!m_file) return {};
  if (!isPaired(*m_file)) return tr("No phone paired");
  const auto last = lastContact(*m_file);
  if (!last) return tr("Paired, never heard from");
  return tr("Phone heard from %1 (%2)").arg(print::ageWords(m_context.now() - *last), moment(*last));
}

QString PersonModel::adherence() const {
  if (!m_file) return {};
  const auto recent = recentAdherence(*m_file, m_context.now(), kAdherenceWeeks);
  if (!recent.ok()) return problemWords(recent.status(), tr("count what was done"));
  const auto share = recent->all.capped();
  if (!share) return tr("Nothing due yet that anybody has data for, in %1 weeks").arg(kAdherenceWeeks);
  return tr("%1 of %2 due done in %3 weeks, %4")
      .arg(recent->all.counted)
      .arg(recent->all.due)
      .arg(kAdherenceWeeks)
      .arg(print::percentWords(share));
}

QVariantList PersonModel::weeks() const {
  QVariantList list;
  if (!m_file) return list;
  for (const auto& week : weekShares(*m_file, m_context.now(), kWeeks))
    list << (week ? QVariant(*week) : QVariant());
  return list;
}

QString PersonModel::weeksWords() const {
  QStringList words;
  for (const QVariant& week : weeks()) {
    words << (week.isValid() ? tr("%1 %").arg(std::lround(week.toDouble() * 100)) : tr("no data"));
  }
  return tr("Done of due, week by week, oldest first: %1").arg(words.join(QStringLiteral(", ")));
}

QStringList PersonModel::openings() const {
  QStringList list;
  if (!m_file) return list;
  for (const auto& opening : m_file->openings) {
    list << tr("%1 opened this record %2: \"%3\"")
                .arg(opening.display_name().empty() ? tr("An account that is gone")
                                                    : print::text(opening.display_name()),
                     moment(toTime(opening.at())), print::text(opening.reason()));
  }
  return list;
}

QVariantList PersonModel::attention() const {
  QVariantList list;
  if (!m_file) return list;
  const auto facts = attentionFactsOf(*m_file, *m_context.rules, m_context.now());
  if (!facts.ok()) return list;
  const AttentionRow row = attentionRow(*facts, m_context.now(), localDayAt(m_context.now(), m_context.zone),
                                        silentDays(m_context));
  for (const auto& reason : row.reasons) {
    list << QVariantMap{{QStringLiteral("urgency"), static_cast<int>(reason.urgency)},
                        {QStringLiteral("urgencyWords"), urgencyWords(reason.urgency)},
                        {QStringLiteral("words"), reasonWords(reason, *m_context.rules)}};
  }
  return list;
}

void PersonModel::send(const QString& text, bool urgent) {
  if (m_sending || !m_file || text.trimmed().isEmpty()) return;
  if (m_message_id.empty() || m_message_text != text)
    m_message_id = newRecordId(*m_context.clock, *m_context.random);
  m_message_text = text;
  v1::SendMessageRequest request;
  request.set_person_id(m_id);
  request.set_text(text.trimmed().toStdString());
  request.set_urgent(urgent);
  request.set_id(m_message_id);
  m_sending = true;
  m_send_problem.clear();
  emit sendingChanged();
  m_context.worker->run(
      this, tr("Sending the message"),
      [request](DeskClient* client) -> absl::Status {
        if (client == nullptr) return absl::UnauthenticatedError("not signed in");
        return client->sendMessage(request).status();
      },
      [this](const absl::Status& status) {
        m_sending = false;
        m_send_problem = problemWords(status, tr("send the message"));
        emit sendingChanged();
        if (!status.ok()) return;
        m_message_id.clear();
        emit sent();
        reload();
      });
}

}  // namespace newel::desk
