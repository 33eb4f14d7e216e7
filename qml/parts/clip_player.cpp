#include "qml/parts/clip_player.h"

#include <QtMultimedia/QAudioOutput>
#include <QtMultimedia/QMediaPlayer>
#include <QtMultimedia/QVideoFrame>
#include <QtMultimedia/QVideoSink>

namespace newel::parts {

ClipPlayer::ClipPlayer(QObject* parent) : QObject(parent) {}

ClipPlayer::~ClipPlayer() { m_player.reset(); }

void ClipPlayer::makePlayer() {
  if (m_player != nullptr) return;
  m_sink = std::make_unique<QVideoSink>();
  m_sound = std::make_unique<QAudioOutput>();
  m_player = std::make_unique<QMediaPlayer>();
  m_player->setVideoSink(m_sink.get());
  m_player->setAudioOutput(m_sound.get());
  connect(m_sink.get(), &QVideoSink::videoFrameChanged, this, [this](const QVideoFrame& frame) {
    if (!m_playing || !frame.isValid()) return;
    m_picture = frame.toImage();
    emit pictureChanged();
  });
  connect(m_player.get(), &QMediaPlayer::mediaStatusChanged, this, [this](QMediaPlayer::MediaStatus status) {
    if (status == QMediaPlayer::EndOfMedia) end(false);
    if (status == QMediaPlayer::InvalidMedia) end(true);
  });
  connect(m_player.get(), &QMediaPlayer::errorOccurred, this, [this] { end(true); });
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
