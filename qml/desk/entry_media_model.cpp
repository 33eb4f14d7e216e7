#include "qml/desk/entry_media_model.h"

#include <QtQml/QQmlEngine>

#include "core/records/media_type.h"
#include "qml/desk/picture_file.h"
#include "qml/desk/problem_words.h"
#include "qml/parts/picture_address.h"
#include "qml/print/record_words.h"
#include "sync/common/content_hash.h"

namespace newel::desk {

EntryMediaModel::EntryMediaModel(DraftModel& draft, const DeskContext& context, QObject* parent)
    : QObject(parent), m_draft(draft), m_context(context) {
  connect(&draft, &DraftModel::changed, this, &EntryMediaModel::follow);
  connect(&draft, &DraftModel::selectedChanged, this, &EntryMediaModel::follow);
}

std::string EntryMediaModel::personId() const { return m_draft.programme().person_id(); }

const v1::MediaRef* EntryMediaModel::photoRef() const {
  const v1::Entry* entry = m_draft.selectedEntry();
  return entry != nullptr && entry->has_photo() ? &entry->photo() : nullptr;
}

const v1::MediaRef* EntryMediaModel::clipRef() const {
  const v1::Entry* entry = m_draft.selectedEntry();
  return entry != nullptr && entry->has_clip() ? &entry->clip() : nullptr;
}

std::shared_ptr<const std::string> EntryMediaModel::contentOf(const v1::MediaRef* ref) const {
  const auto found = ref == nullptr ? m_contents.end() : m_contents.find(ref->sha256());
  return found == m_contents.end() ? nullptr : found->second;
}

QString EntryMediaModel::photo() const {
  const auto content = contentOf(photoRef());
  return content == nullptr ? QString() : parts::pictureAddress(*content);
}

QString EntryMediaModel::photoWords() const {
  return photoRef() == nullptr ? QString() : print::text(photoRef()->words());
}

parts::ClipContent* EntryMediaModel::clip() const {
  const auto content = contentOf(clipRef());
  if (content == nullptr) return nullptr;
  std::unique_ptr<parts::ClipContent>& clip = m_clips[clipRef()->sha256()];
  if (clip == nullptr) {
    clip = std::make_unique<parts::ClipContent>([content] { return QByteArray::fromStdString(*content); });
    QQmlEngine::setObjectOwnership(clip.get(), QQmlEngine::CppOwnership);
  }
  return clip.get();
}

QString EntryMediaModel::clipWords() const {
  return clipRef() == nullptr ? QString() : print::text(clipRef()->words());
}

QString EntryMediaModel::captions() const {
  return clipRef() == nullptr ? QString() : print::text(clipRef()->captions());
}

// Another person's photos are not kept a moment longer; another entry's problem is not this one's.
void EntryMediaModel::follow() {
  const std::string entry = m_draft.selectedEntry() == nullptr ? "" : m_draft.selectedEntry()->id();
  if (m_person != personId()) {
    m_player.stop();
    m_contents.clear();
    m_clips.clear();
    m_fetching.clear();
    m_sending.clear();
  }
  if (m_person != personId() || m_entry != entry) m_problem.clear();
  m_person = personId();
  m_entry = entry;
  for (const v1::MediaRef* ref : {photoRef(), clipRef()}) {
    if (ref != nullptr && contentOf(ref) == nullptr) fetch(*ref);
  }
  emit changed();
}

void EntryMediaModel::fetch(const v1::MediaRef& ref) {
  if (!m_fetching.insert(ref.sha256()).second) return;
  m_context.worker->run(
      this, tr("Fetching the photo …"),
      [person = m_person, ref](DeskClient* client) -> absl::StatusOr<std::string> {
        if (client == nullptr) return absl::UnavailableError("not connected");
        return client->media(person, ref);
      },
      [this, person = m_person, hash = ref.sha256()](const absl::StatusOr<std::string>& content) {
        if (person != m_person) return;
        if (content.ok()) {
          m_contents[hash] = std::make_shared<const std::string>(*content);
        } else {
          m_problem = problemWords(content.status(), tr("fetch the photo or the clip"));
        }
        emit changed();
      },
      HubWorker::Turn::Later);
}

void EntryMediaModel::attach(const QString& file) {
  if (m_draft.selectedEntry() == nullptr || !m_sending.isEmpty()) return;
  m_problem.clear();
  const auto media = mediaFrom(file);
  if (!media.ok()) return stopSending(QString::fromStdString(std::string(media.status().message())));
  Upload upload;
  upload.person_id = personId();
  upload.entry_id = m_draft.selectedEntry()->id();
  upload.content = std::make_shared<const std::string>(media->content);
  upload.ref.set_sha256(sha256(media->content));
  upload.ref.set_type(media->type);
  upload.ref.set_size_bytes(media->content.size());
  m_sending = tr("Sending to the hub …");
  emit changed();
  send(upload, 0, true);
}

// Part by part, so that what somebody waits for meanwhile goes in between.
void EntryMediaModel::send(const Upload& upload, std::uint64_t offset, bool only_ask) {
  m_context.worker->run(
      this, tr("Sending a photo or a clip …"),
      [upload, offset, only_ask](DeskClient* client) -> absl::StatusOr<v1::PutMediaReply> {
        if (client == nullptr) return absl::UnavailableError("not connected");
        v1::PutMediaRequest request =
            mediaPartOf(upload.person_id, *upload.content, upload.ref.sha256(), offset);
        if (only_ask) request.clear_content();
        return client->putMediaPart(request);
      },
      [this, upload, offset, only_ask](const absl::StatusOr<v1::PutMediaReply>& reply) {
        if (upload.person_id != m_person) return;
        if (!reply.ok()) return stopSending(problemWords(reply.status(), tr("send it to the hub")));
        if (reply->whole()) return sent(upload);
        if ((!only_ask && reply->offset() <= offset) || reply->offset() > upload.content->size())
          return stopSending(tr("The hub did not take it. Choose it again."));
        m_sending = tr("Sending to the hub: %1 %").arg(100 * reply->offset() / upload.content->size());
        emit changed();
        send(upload, reply->offset(), false);
      });
}

void EntryMediaModel::sent(const Upload& upload) {
  m_contents[upload.ref.sha256()] = upload.content;
  m_sending.clear();
  m_draft.editEntry(upload.entry_id, "", [&upload](v1::Entry& entry) {
    v1::MediaRef& place = isPhoto(upload.ref.type()) ? *entry.mutable_photo() : *entry.mutable_clip();
    v1::MediaRef ref = upload.ref;
    ref.set_words(place.sha256() == ref.sha256() ? place.words() : "");
    place = std::move(ref);
  });
  emit changed();
}

void EntryMediaModel::stopSending(const QString& problem) {
  m_sending.clear();
  m_problem = problem;
  emit changed();
}

void EntryMediaModel::removePhoto() {
  m_draft.editSelected("", [](v1::Entry& entry) { entry.clear_photo(); });
}

void EntryMediaModel::removeClip() {
  m_player.stop();
  m_draft.editSelected("", [](v1::Entry& entry) { entry.clear_clip(); });
}

void EntryMediaModel::setPhotoWords(const QString& words) {
  if (photoRef() == nullptr || words == photoWords()) return;
  m_draft.editSelected("photo",
                       [&](v1::Entry& entry) { entry.mutable_photo()->set_words(words.toStdString()); });
}

void EntryMediaModel::setClipWords(const QString& words) {
  if (clipRef() == nullptr || words == clipWords()) return;
  m_draft.editSelected("clip",
                       [&](v1::Entry& entry) { entry.mutable_clip()->set_words(words.toStdString()); });
}

void EntryMediaModel::setCaptions(const QString& words) {
  if (clipRef() == nullptr || words == captions()) return;
  m_draft.editSelected("captions",
                       [&](v1::Entry& entry) { entry.mutable_clip()->set_captions(words.toStdString()); });
}

}  // namespace newel::desk
