#include "qml/home/entry_media.h"

#include <QtQml/QQmlEngine>

#include "qml/parts/picture_address.h"

namespace newel::home {
namespace {

// Ours, no source: more photos than one page has.
constexpr std::size_t kMostPhotos = 40;

QString textOf(const std::string& words) { return QString::fromStdString(words); }

}  // namespace

template <typename Record>
QVariantMap MediaRows::row(const Record& record) {
  QVariantMap row;
  if (record.has_photo()) {
    const QString photo = photoOf(record.photo());
    row[QStringLiteral("photo")] = photo;
    row[QStringLiteral("photoWords")] = textOf(record.photo().words());
    row[QStringLiteral("photoComing")] = photo.isEmpty();
  }
  if (record.has_clip()) {
    const bool here = m_engine.hasMedia(record.clip());
    if (here) row[QStringLiteral("clip")] = QVariant::fromValue(clipOf(record.clip()));
    row[QStringLiteral("clipWords")] = textOf(record.clip().words());
    row[QStringLiteral("captions")] = textOf(record.clip().captions());
    row[QStringLiteral("clipComing")] = !here;
  }
  return row;
}

template QVariantMap MediaRows::row(const v1::Entry&);
template QVariantMap MediaRows::row(const v1::Message&);

QString MediaRows::photoOf(const v1::MediaRef& photo) {
  const auto known = m_photos.find(photo.sha256());
  if (known != m_photos.end()) return known->second;
  const auto content = m_engine.media(photo);
  if (!content.has_value()) return {};
  if (m_photos.size() >= kMostPhotos) m_photos.clear();
  return m_photos[photo.sha256()] = parts::pictureAddress(*content);
}

parts::ClipContent* MediaRows::clipOf(const v1::MediaRef& clip) {
  std::unique_ptr<parts::ClipContent>& content = m_clips[clip.sha256()];
  if (content == nullptr) {
    content = std::make_unique<parts::ClipContent>([this, clip] {
      const auto bytes = m_engine.media(clip);
      return bytes.has_value() ? QByteArray::fromStdString(*bytes) : QByteArray();
    });
    QQmlEngine::setObjectOwnership(content.get(), QQmlEngine::CppOwnership);
  }
  return content.get();
}

}  // namespace newel::home
