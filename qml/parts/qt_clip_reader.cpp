#include <QtCore/QBuffer>
#include <QtCore/QObject>
#include <QtCore/QUrl>
#include <QtMultimedia/QAudioDevice>
#include <QtMultimedia/QAudioOutput>
#include <QtMultimedia/QMediaDevices>
#include <QtMultimedia/QMediaPlayer>
#include <QtMultimedia/QVideoFrame>
#include <QtMultimedia/QVideoSink>
#include <utility>

#include "qml/parts/clip_reader.h"

namespace newel::parts {
namespace {

class QtClipReader : public ClipReader {
 public:
  QtClipReader() {
    m_player.setVideoSink(&m_sink);
    // Qt 6.4 falls over a sound output that there is no device for.
    if (!QMediaDevices::defaultAudioOutput().isNull()) {
      m_sound = std::make_unique<QAudioOutput>();
      m_player.setAudioOutput(m_sound.get());
    }
    QObject::connect(&m_sink, &QVideoSink::videoFrameChanged, &m_sink, [this](const QVideoFrame& frame) {
      if (m_picture && frame.isValid()) m_picture(frame.toImage());
    });
    QObject::connect(&m_player, &QMediaPlayer::mediaStatusChanged, &m_sink,
                     [this](QMediaPlayer::MediaStatus status) {
                       if (status == QMediaPlayer::EndOfMedia) over(false);
                       if (status == QMediaPlayer::InvalidMedia) over(true);
                     });
    QObject::connect(&m_player, &QMediaPlayer::errorOccurred, &m_sink, [this] { over(true); });
  }

  void start(const QByteArray& bytes, std::function<void(const QImage&)> picture,
             std::function<void(bool failed)> over) override {
    stop();
    m_picture = std::move(picture);
    m_over = std::move(over);
    m_buffer.setData(bytes);
    m_buffer.open(QIODevice::ReadOnly);
    // The name tells the reader only that it is no address; the kind is told from the content.
    m_player.setSourceDevice(&m_buffer, QUrl(QStringLiteral("clip")));
    m_player.play();
  }

  void stop() override {
    m_picture = nullptr;
    m_over = nullptr;
    m_player.stop();
    m_player.setSource(QUrl());  // lets go of the buffer
    m_buffer.close();
    m_buffer.setData(QByteArray());
  }

 private:
  void over(bool failed) const {
    if (m_over) m_over(failed);
  }

  QBuffer m_buffer;
  QVideoSink m_sink;
  std::unique_ptr<QAudioOutput> m_sound;
  std::function<void(const QImage&)> m_picture;
  std::function<void(bool)> m_over;
  QMediaPlayer m_player;  // goes before what it uses
};

}  // namespace

std::unique_ptr<ClipReader> makeQtClipReader() { return std::make_unique<QtClipReader>(); }

}  // namespace newel::parts
