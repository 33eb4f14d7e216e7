// The rail: posts are entries, treads are beats, a hand climbs from the bottom as the practice goes.
// It shows how far along things are; what they are called stands beside it, in words.
#pragma once

#include <QtCore/QVariantList>

#include "qml/parts/themed_item.h"

namespace newel::parts {

class Rail : public newel::parts::ThemedItem {
  Q_OBJECT
  QML_ELEMENT
  // From the bottom up, one map a post: "treads" (beats above it, 0 draws none), "done" (of them), "leftOut".
  Q_PROPERTY(QVariantList posts READ posts WRITE setPosts NOTIFY postsChanged)
  // Where the posts stand, as distance from the item's top, from the bottom post up. Empty: evenly spread.
  Q_PROPERTY(QVariantList positions READ positions WRITE setPositions NOTIFY positionsChanged)
  // The post whose entry is under way or next, from 0; posts.length when all is done.
  Q_PROPERTY(int at READ at WRITE setAt NOTIFY atChanged)
  Q_PROPERTY(bool mirrored READ mirrored WRITE setMirrored NOTIFY mirroredChanged)  // right to left

 public:
  explicit Rail(QQuickItem* parent = nullptr);
  QVariantList posts() const { return m_posts; }
  void setPosts(const QVariantList& posts);
  QVariantList positions() const { return m_positions; }
  void setPositions(const QVariantList& positions);
  int at() const { return m_at; }
  void setAt(int at);
  bool mirrored() const { return m_mirrored; }
  void setMirrored(bool mirrored);
  // Where the hand is, as distance from the item's top.
  double handY() const;
  void paint(QPainter* painter) override;

 signals:
  void postsChanged();
  void positionsChanged();
  void atChanged();
  void mirroredChanged();

 private:
  double postY(int index) const;  // index == posts: the top end
  void paintPost(QPainter& painter, int index, double x) const;
  void paintTreads(QPainter& painter, int index, double x) const;
  void paintHand(QPainter& painter, double x) const;

  QVariantList m_posts;
  QVariantList m_positions;
  int m_at = 0;
  bool m_mirrored = false;
};

}  // namespace newel::parts
