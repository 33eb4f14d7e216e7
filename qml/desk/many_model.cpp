#include "qml/desk/many_model.h"

#include <QtCore/QFileInfo>
#include <QtCore/QUrl>
#include <algorithm>
#include <utility>

#include "core/records/media_type.h"
#include "core/time/local_day.h"
#include "qml/desk/person_file.h"
#include "qml/desk/picture_file.h"
#include "qml/desk/problem_words.h"
#include "qml/parts/picture_address.h"
#include "qml/print/record_words.h"
#include "sync/common/content_hash.h"
#include "sync/common/record_id.h"

namespace newel::desk {
namespace {

constexpr int kMostText = 4000;  // bytes: core/records/message.proto
constexpr int kNamesShown = 12;

}  // namespace

ManyModel::ManyModel(DeskContext& context, QObject* parent) : QObject(parent), m_context(context) {}

void ManyModel::begin(const std::vector<CaseloadModel::ChosenPerson>& people, bool hold) {
  forget();
  m_hold = hold;
  for (const auto& one : people) m_people.push_back({one.id, one.name, one.limbs, "", Waiting, QString()});
  emit changed();
}

void ManyModel::forget() {
  ++m_turn;
  m_people.clear();
  m_text.clear();
  m_urgent = m_hold = false;
  m_reviewing = m_begun = m_stop = false;
  m_at.reset();
  detach();
}

void ManyModel::setHold(bool hold) {
  if (m_begun || m_hold == hold) return;
  m_hold = hold;
  m_reviewing = false;
  emit changed();
}

void ManyModel::setText(const QString& text) {
  if (m_begun || m_text == text) return;
  m_text = text;
  emit changed();
}

void ManyModel::setUrgent(bool urgent) {
  if (m_begun) return;
  m_urgent = urgent;
  emit changed();
}

void ManyModel::attach(const QString& file) {
  if (m_begun) return;
  const auto media = mediaFrom(file);
  if (!media.ok()) {
    m_media_problem = QString::fromStdString(std::string(media.status().message()));
    emit changed();
    return;
  }
  detach();
  m_media = std::make_shared<const CleanMedia>(*media);
  m_media_sha256 = sha256(m_media->content);
  const QUrl address(file);
  m_media_name = QFileInfo(address.isLocalFile() ? address.toLocalFile() : file).fileName();
  if (isPhoto(m_media->type)) m_photo = parts::pictureAddress(m_media->content);
  emit changed();
}

void ManyModel::detach() {
  m_media.reset();
  m_media_sha256.clear();
  m_media_name.clear();
  m_photo.clear();
  m_media_words.clear();
  m_captions.clear();
  m_media_problem.clear();
  emit changed();
}

bool ManyModel::isClip() const { return m_media != nullptr && newel::isClip(m_media->type); }

void ManyModel::setMediaWords(const QString& words) {
  if (m_begun || m_media_words == words) return;
  m_media_words = words;
  emit changed();
}

void ManyModel::setCaptions(const QString& captions) {
  if (m_begun || m_captions == captions) return;
  m_captions = captions;
  emit changed();
}

QString ManyModel::names() const {
  QStringList list;
  for (const auto& one : m_people) {
    if (list.size() == kNamesShown) break;
    list << one.name;
  }
  const QString words = list.join(QStringLiteral(", "));
  const int more = count() - static_cast<int>(list.size());
  return more > 0 ? tr("%1 and %L2 more").arg(words).arg(more) : words;
}

QString ManyModel::whyNot() const {
  if (m_people.empty()) return tr("Nobody is chosen.");
  if (m_text.trimmed().isEmpty())
    return m_hold ? tr("Write to them why, in plain words.") : tr("Write something to them first.");
  if (m_text.toUtf8().size() > kMostText) return tr("This is too long to send.");
  if (!m_hold && m_media != nullptr && m_media_words.trimmed().isEmpty())
    return tr("Say in a sentence what the photo or the clip shows.");
  return {};
}

void ManyModel::review() {
  m_reviewing = !m_begun && whyNot().isEmpty();
  emit changed();
}

void ManyModel::change() {
  if (m_begun) return;
  m_reviewing = false;
  emit changed();
}

v1::MediaRef ManyModel::mediaRef() const {
  v1::MediaRef ref;
  ref.set_sha256(m_media_sha256);
  ref.set_type(m_media->type);
  ref.set_size_bytes(m_media->content.size());
  ref.set_words(m_media_words.trimmed().toStdString());
  if (isClip()) ref.set_captions(m_captions.trimmed().toStdString());
  return ref;
}

void ManyModel::send() {
  if (sending() || !whyNot().isEmpty() || (!m_begun && !m_reviewing)) return;
  m_begun = true;
  m_stop = false;
  for (auto& one : m_people) {
    if (one.record_id.empty()) one.record_id = newRecordId(*m_context.clock, *m_context.random);
    if (one.state == Failed) one.state = Waiting;
  }
  next();
}

void ManyModel::stop() {
  m_stop = true;
  emit changed();
}

// One after another, so that what somebody waits for at this desk meanwhile goes in between.
void ManyModel::next() {
  m_at.reset();
  const auto waiting = std::find_if(m_people.begin(), m_people.end(),
                                    [](const Recipient& one) { return one.state == Waiting; });
  if (!m_stop && waiting != m_people.end()) {
    m_at = static_cast<std::size_t>(waiting - m_people.begin());
    sendTo(*m_at);
  }
  emit changed();
}

void ManyModel::sendTo(std::size_t at) {
  if (!m_hold && m_media != nullptr) {
    sendPart(at, 0, true);
  } else {
    sendRecord(at);
  }
}

// Each person's in full: whoever knows a content's hash has nobody's content by it.
void ManyModel::sendPart(std::size_t at, std::uint64_t offset, bool only_ask) {
  m_context.worker->run(
      this, tr("Sending a photo or a clip"),
      [id = m_people[at].id, media = m_media, hash = m_media_sha256, offset,
       only_ask](DeskClient* client) -> absl::StatusOr<v1::PutMediaReply> {
        if (client == nullptr) return absl::UnauthenticatedError("not signed in");
        v1::PutMediaRequest request = mediaPartOf(id, media->content, hash, offset);
        if (only_ask) request.clear_content();
        return client->putMediaPart(request);
      },
      [this, at, offset, only_ask, turn = m_turn](const absl::StatusOr<v1::PutMediaReply>& reply) {
        if (turn != m_turn) return;
        if (!reply.ok()) return ended(at, reply.status());
        if (reply->whole()) return sendRecord(at);
        if (!only_ask && reply->offset() <= offset)
          return ended(at, absl::InternalError("the hub did not take it"));
        sendPart(at, reply->offset(), false);
      });
}

void ManyModel::sendRecord(std::size_t at) {
  const Recipient& one = m_people[at];
  v1::SendMessageRequest message;
  v1::IssueHoldRequest order;
  if (m_hold) {
    order.set_person_id(one.id);
    order.set_id(one.record_id);
    order.set_reason(m_text.trimmed().toStdString());
  } else {
    message.set_person_id(one.id);
    message.set_id(one.record_id);
    message.set_text(m_text.trimmed().toStdString());
    message.set_urgent(m_urgent);
    if (m_media != nullptr) *(isClip() ? message.mutable_clip() : message.mutable_photo()) = mediaRef();
  }
  m_context.worker->run(
      this, m_hold ? tr("Sending the hold order") : tr("Sending the message"),
      [hold = m_hold, message, order](DeskClient* client) -> absl::Status {
        if (client == nullptr) return absl::UnauthenticatedError("not signed in");
        return hold ? client->issueHold(order).status() : client->sendMessage(message).status();
      },
      [this, at, turn = m_turn](const absl::Status& status) {
        if (turn == m_turn) ended(at, status);
      });
}

void ManyModel::ended(std::size_t at, const absl::Status& status) {
  Recipient& one = m_people[at];
  one.state = status.ok() ? Sent : Failed;
  one.words =
      status.ok() ? QString() : problemWords(status, m_hold ? tr("send the hold order") : tr("send it"));
  // A hold that may not have gone out is a matter for the telephone.
  if (!status.ok() && m_hold) one.words += tr(" If it is urgent, phone them now.");
  // Without a hub or a session nobody else's would go out either.
  if (absl::IsUnavailable(status) || absl::IsUnauthenticated(status)) m_stop = true;
  if (status.ok()) lookAt(at);
  next();
}

QString ManyModel::progress() const {
  int counts[5] = {};
  for (const auto& one : m_people) ++counts[one.state];
  const int out = counts[Sent] + counts[Arrived] + counts[Seen];
  if (!m_begun) return {};
  QString words = sending() ? tr("Sending: %L1 of %L2 …").arg(out + counts[Failed]).arg(count())
                            : tr("Sent to %L1 of %L2.").arg(out).arg(count());
  words += QLatin1Char(' ') + tr("Not arrived yet: %L1. Arrived, not seen: %L2. Seen: %L3.")
                                  .arg(counts[Sent])
                                  .arg(counts[Arrived])
                                  .arg(counts[Seen]);
  if (counts[Failed] > 0) words += QLatin1Char(' ') + tr("Not sent: %L1.").arg(counts[Failed]);
  return words;
}

int ManyModel::failures() const {
  return static_cast<int>(std::count_if(m_people.begin(), m_people.end(), [this](const Recipient& one) {
    return one.state == Failed || (m_begun && !sending() && one.state == Waiting);
  }));
}

QVariantList ManyModel::people() const {
  std::vector<const Recipient*> sorted;
  for (const auto& one : m_people) sorted.push_back(&one);
  std::stable_sort(sorted.begin(), sorted.end(),
                   [](const Recipient* a, const Recipient* b) { return a->state < b->state; });
  QVariantList list;
  for (const Recipient* one : sorted) {
    QString words = one->words;
    if (one->state == Waiting) words = m_begun ? tr("not sent yet") : QString();
    if (one->state == Sent) words = tr("sent, not arrived yet");
    list << QVariantMap{{QStringLiteral("name"), one->name},
                        {QStringLiteral("limbs"), one->limbs},
                        {QStringLiteral("state"), static_cast<int>(one->state)},
                        {QStringLiteral("words"), words}};
  }
  return list;
}

void ManyModel::look() {
  for (std::size_t i = 0; i < m_people.size(); ++i) lookAt(i);
}

void ManyModel::nudge(const std::string& person_id) {
  for (std::size_t i = 0; i < m_people.size(); ++i) {
    if (person_id.empty() || m_people[i].id == person_id) lookAt(i);
  }
}

void ManyModel::lookAt(std::size_t at) {
  const Recipient& one = m_people[at];
  if (one.state != Sent && one.state != Arrived) return;
  m_context.worker->run(
      this, tr("Looking how far it got"),
      [id = one.id](DeskClient* client) -> absl::StatusOr<std::vector<v1::Receipt>> {
        if (client == nullptr) return absl::UnauthenticatedError("not signed in");
        return client->receipts(id);
      },
      [this, at, turn = m_turn](const absl::StatusOr<std::vector<v1::Receipt>>& receipts) {
        if (turn != m_turn || !receipts.ok()) return;
        reached(m_people[at], *receipts);
        emit changed();
      },
      HubWorker::Turn::Later);
}

void ManyModel::reached(Recipient& one, const std::vector<v1::Receipt>& receipts) const {
  PersonFile file;
  file.receipts = receipts;
  const Reached far =
      reachedBy(file, m_hold ? v1::RECEIPT_OF_HOLD_ORDER : v1::RECEIPT_OF_MESSAGE, one.record_id);
  const auto when = [this](absl::Time at) { return print::momentWords(at, m_context.zone); };
  if (far.seen) {
    one.state = Seen;
    one.words = tr("seen %1").arg(when(*far.seen));
  } else if (far.arrived) {
    one.state = Arrived;
    one.words = tr("arrived %1, not seen yet").arg(when(*far.arrived));
  }
}

}  // namespace newel::desk
