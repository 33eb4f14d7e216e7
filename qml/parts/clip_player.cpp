#include "qml/parts/clip_player.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QDir>
#include <utility>

namespace newel::parts {

void chooseClipReader() {
  constexpr char kChoice[] = "QT_MEDIA_BACKEND";
  if (qEnvironmentVariableIsSet(kChoice)) return;
  for (const QString& folder : QCoreApplication::libraryPaths()) {
    const QDir plugins(folder + QStringLiteral("/multimedia"));
    if (!plugins.entryList(QDir::Files).filter(QStringLiteral("ffmpeg")).isEmpty()) {
      qputenv(kChoice, "ffmpeg");
      return;
    }
  }
}

ClipPlayer::ClipPlayer(ClipReaderMaker make, QObject* parent) : QObject(parent), m_make(std::move(make)) {}

ClipPlayer::~ClipPlayer() { m_reader.reset(); }

void ClipPlayer::setMayPlay(bool may) {
  if (may == m_may_play) return;
  m_may_play = may;
  if (!may && m_playing) {
    stop();
  } else {
    emit changed();
  }
}

void ClipPlayer::play(ClipContent* clip) {
  if (!m_may_play || clip == nullptr) return;
  stop();
  m_clip = clip;
  m_picture = QImage();
  m_bytes = clip->bytes();
  if (m_reader == nullptr && m_make) m_reader = m_make();
  m_failed = m_bytes.isEmpty() || m_reader == nullptr;
  if (!m_failed) {
    m_playing = true;
    ++m_turn;
    m_reader->start(
        m_bytes,
        [this](const QImage& picture) {
          if (!m_playing) return;
          m_picture = picture;
          emit pictureChanged();
        },
        [this](bool failed) { endSoon(failed); });
  }
  emit changed();
  emit pictureChanged();
}

void ClipPlayer::stop() {
  if (m_playing) end(false);
}

// The reader is in the middle of telling: it is not stopped from within.
void ClipPlayer::endSoon(bool failed) {
  QMetaObject::invokeMethod(
      this,
      [this, failed, turn = m_turn] {
        if (turn == m_turn) end(failed);
      },
      Qt::QueuedConnection);
}

void ClipPlayer::end(bool failed) {
  if (!m_playing) return;
  m_playing = false;
  m_failed = failed;
  m_reader->stop();
  m_bytes.clear();
  emit changed();
}

}  // namespace newel::parts
