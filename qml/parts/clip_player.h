// Plays one clip at a time, from memory. While something leads that must not be talked into (a beat of
// practice), it is silent and stays so. Not here: showing it (clip_screen.h). UI thread.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QPointer>
#include <QtGui/QImage>
#include <memory>

#include "qml/parts/clip_content.h"
#include "qml/parts/clip_reader.h"

namespace newel::parts {

// To be called once, behind the application and before anything sounds. Qt 6.4 takes GStreamer first on
// Linux, which ends the program where its own plugins are missing; FFmpeg's reader, where it is there, has
// all in it. QT_MEDIA_BACKEND in the environment is left as it is.
void chooseClipReader();

class ClipPlayer : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made in main")
  Q_PROPERTY(newel::parts::ClipContent* clip READ clip NOTIFY changed)  // that plays or was played last
  Q_PROPERTY(bool playing READ playing NOTIFY changed)
  Q_PROPERTY(bool mayPlay READ mayPlay NOTIFY changed)
  Q_PROPERTY(bool failed READ failed NOTIFY changed)  // this device cannot play `clip`

 public:
  explicit ClipPlayer(ClipReaderMaker make, QObject* parent = nullptr);
  ~ClipPlayer() override;

  ClipContent* clip() const { return m_clip; }
  bool playing() const { return m_playing; }
  bool mayPlay() const { return m_may_play; }
  bool failed() const { return m_failed; }
  const QImage& picture() const { return m_picture; }  // of the moment; null: none
  // False ends what plays before it returns.
  void setMayPlay(bool may);

  // From its beginning. Nothing happens while it may not.
  Q_INVOKABLE void play(newel::parts::ClipContent* clip);
  Q_INVOKABLE void stop();

 signals:
  void changed();
  void pictureChanged();

 private:
  void end(bool failed);
  void endSoon(bool failed);

  QPointer<ClipContent> m_clip;
  QByteArray m_bytes;
  const ClipReaderMaker m_make;
  std::unique_ptr<ClipReader> m_reader;  // made when the first clip is played
  QImage m_picture;
  int m_turn = 0;  // of play()
  bool m_playing = false;
  bool m_may_play = true;
  bool m_failed = false;
};

}  // namespace newel::parts
