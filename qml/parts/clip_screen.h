// Where a clip is seen: the picture of the moment, whole, in the middle. Painted like all else here, so that
// it needs no graphics of its own.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QPointer>
#include <QtQuick/QQuickPaintedItem>

#include "qml/parts/clip_player.h"

namespace newel::parts {

class ClipScreen : public QQuickPaintedItem {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(newel::parts::ClipPlayer* player READ player WRITE setPlayer NOTIFY playerChanged)
  Q_PROPERTY(newel::parts::ClipContent* clip READ clip WRITE setClip NOTIFY playerChanged)
  // Pictures of `clip` have been shown since it was begun.
  Q_PROPERTY(bool shows READ shows NOTIFY showsChanged)

 public:
  explicit ClipScreen(QQuickItem* parent = nullptr);

  ClipPlayer* player() const { return m_player; }
  void setPlayer(ClipPlayer* player);
  ClipContent* clip() const { return m_clip; }
  void setClip(ClipContent* clip);
  bool shows() const { return m_shows; }
  void paint(QPainter* painter) override;

 signals:
  void playerChanged();
  void showsChanged();

 private:
  void follow();

  QPointer<ClipPlayer> m_player;
  QPointer<ClipContent> m_clip;
  bool m_shows = false;
};

}  // namespace newel::parts
