#include "qml/parts/clip_player.h"

#include <QtCore/QCoreApplication>
#include <QtCore/QDir>
#include <QtMultimedia/QAudioDevice>
#include <QtMultimedia/QAudioOutput>
#include <QtMultimedia/QMediaDevices>
#include <QtMultimedia/QMediaPlayer>
#include <QtMultimedia/QVideoFrame>
#include <QtMultimedia/QVideoSink>

namespace newel::parts {

void chooseClipReader() {
  constexpr char kChoice[] = "QT_MEDIA_BACKEND";
  if (qEnvironmentVariableIsSet(kChoice)) return;
  for (const QString& folder : QCoreApplication::libraryPaths()) {
    const QDir plugins(folder + QStringLiteral("/multimedia"));
    if (!plugins.entryList({QStringLiteral("*ffmpeg*")}, QDir::Files).isEmpty()) {
      qputenv(kChoice, "ffmpeg");
      return;
    }
  }
}

ClipPlayer::ClipPlayer(QObject* parent) : QObject(parent) {}

ClipPlayer::~ClipPlayer() { m_player.reset(); }

void ClipPlayer::makePlayer() {
  if (m_player != nullptr) return;
  m_sink = std::make_unique<QVideoSink>();
  m_player = std::make_unique<QMediaPlayer>();
  m_player->setVideoSink(m_sink.get());
  // Qt 6.4 falls over a sound output that there is no device for.
  if (!QMediaDevices::defaultAudioOutput().isNull()) {
    m_sound = std::make_unique<QAudioOutput>();
    m_player->setAudioOutput(m_sound.get());
  }
  connect(m_sink.get(), &QVideoSink::videoFrameChanged, this, [this](const QVideoFrame& frame) {
    if (!m_playing || !frame.isValid()) return;
    m_picture = frame.toImage();
    emit pictureChanged();
  });
  connect(m_player.get(), &QMediaPlayer::mediaStatusChanged, this, [this](QMediaPlayer::MediaStatus status) {
    if (status == QMediaPlayer::EndOfMedia) endSoon(false);
    if (status == QMediaPlayer::InvalidMedia) endSoon(true);
  });
  connect(m_player.get(), &QMediaPlayer::errorOccurred, this, [this] { endSoon(true); });
}

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
  m_failed = m_bytes.isEmpty();
  if (!m_failed) {
    makePlayer();
    m_buffer.setBuffer(&m_bytes);
    m_buffer.open(QIODevice::ReadOnly);
    m_playing = true;
    ++m_turn;
    // The name tells the reader only that it is no address; the kind is told from the content.
    m_player->setSourceDevice(&m_buffer, QUrl(QStringLiteral("clip")));
    m_player->play();
  }
  emit changed();
  emit pictureChanged();
}

void ClipPlayer::stop() {
  if (m_playing) end(false);
}

// The player is in the middle of telling: it is not stopped from within.
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
  m_player->stop();
  m_player->setSource(QUrl());  // lets go of the buffer
  m_buffer.close();
  m_bytes.clear();
  emit changed();
}

}  // namespace newel::parts
