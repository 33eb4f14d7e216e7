#include "qml/parts/clip_screen.h"

#include <QtGui/QPainter>

namespace newel::parts {

ClipScreen::ClipScreen(QQuickItem* parent) : QQuickPaintedItem(parent) {}

void ClipScreen::setPlayer(ClipPlayer* player) {
  if (player == m_player) return;
  if (m_player != nullptr) m_player->disconnect(this);
  m_player = player;
  if (player != nullptr) {
    connect(player, &ClipPlayer::pictureChanged, this, &ClipScreen::follow);
    connect(player, &ClipPlayer::changed, this, &ClipScreen::follow);
  }
  emit playerChanged();
  follow();
}

void ClipScreen::setClip(ClipContent* clip) {
  if (clip == m_clip) return;
  m_clip = clip;
  emit playerChanged();
  follow();
}

void ClipScreen::follow() {
  const bool shows =
      m_player != nullptr && m_clip != nullptr && m_player->clip() == m_clip && !m_player->picture().isNull();
  if (shows != m_shows) {
    m_shows = shows;
    emit showsChanged();
  }
  update();
}

void ClipScreen::paint(QPainter* painter) {
  if (!m_shows || m_player == nullptr) return;
  const QImage& picture = m_player->picture();
  const QSizeF size = QSizeF(picture.size()).scaled(boundingRect().size(), Qt::KeepAspectRatio);
  QRectF place(QPointF(), size);
  place.moveCenter(boundingRect().center());
  painter->setRenderHint(QPainter::SmoothPixmapTransform);
  painter->drawImage(place, picture);
}

}  // namespace newel::parts
