#include "qml/parts/rail.h"

#include <QtGui/QPainter>
#include <algorithm>

namespace newel::parts {
namespace {

constexpr double kPost = 20;     // side of a post
constexpr double kBar = 6;       // width of the rail
constexpr double kTread = 12;    // length of a tread
constexpr double kHand = 14;     // radius of the hand
constexpr double kLeastGap = 5;  // treads closer than this are drawn as fewer

double fractionDone(const QVariantMap& post) {
  const double treads = post.value(QStringLiteral("treads")).toDouble();
  return treads <= 0 ? 0 : std::clamp(post.value(QStringLiteral("done")).toDouble() / treads, 0.0, 1.0);
}

}  // namespace

Rail::Rail(QQuickItem* parent) : ThemedItem(parent) { setImplicitWidth(2 * kHand + 4); }

void Rail::setPosts(const QVariantList& posts) {
  if (m_posts == posts) return;
  m_posts = posts;
  emit postsChanged();
  update();
}

void Rail::setPositions(const QVariantList& positions) {
  if (m_positions == positions) return;
  m_positions = positions;
  emit positionsChanged();
  update();
}

void Rail::setAt(int at) {
  if (m_at == at) return;
  m_at = at;
  emit atChanged();
  update();
}

void Rail::setMirrored(bool mirrored) {
  if (m_mirrored == mirrored) return;
  m_mirrored = mirrored;
  emit mirroredChanged();
  update();
}

double Rail::postY(int index) const {
  const int count = static_cast<int>(m_posts.size());
  if (index >= count) return kHand + 1;
  if (index < m_positions.size()) return m_positions.at(index).toDouble();
  const double bottom = height() - kHand - 1;
  return bottom - (bottom - kHand - 1) * index / std::max(count, 1);
}

double Rail::handY() const {
  const int count = static_cast<int>(m_posts.size());
  if (m_at >= count) return postY(count);
  const double from = postY(m_at);
  return from + (postY(m_at + 1) - from) * fractionDone(m_posts.at(m_at).toMap());
}

void Rail::paintPost(QPainter& painter, int index, double x) const {
  const bool left_out = m_posts.at(index).toMap().value(QStringLiteral("leftOut")).toBool();
  const bool done = index < m_at && !left_out;
  const QRectF box(x - kPost / 2 + 1.5, postY(index) - kPost / 2 + 1.5, kPost - 3, kPost - 3);
  painter.setPen(QPen(done ? theme().rail() : theme().soft(), 3));
  painter.setBrush(done ? theme().rail() : theme().paper());
  painter.drawRoundedRect(box, 4, 4);
  if (left_out)
    painter.drawLine(QPointF(box.left() + 4, box.center().y()), QPointF(box.right() - 4, box.center().y()));
}

void Rail::paintTreads(QPainter& painter, int index, double x) const {
  const int treads = m_posts.at(index).toMap().value(QStringLiteral("treads")).toInt();
  if (treads < 2) return;
  const double from = postY(index);
  const double length = from - postY(index + 1);
  const int drawn = std::min(treads, static_cast<int>(length / kLeastGap));
  const double hand = handY();
  for (int i = 1; i < drawn; ++i) {
    const double y = from - length * i / drawn;
    const bool done = index < m_at || (index == m_at && y >= hand);
    painter.setPen(QPen(done ? theme().rail() : theme().soft(), 2, Qt::SolidLine, Qt::RoundCap));
    const double out = m_mirrored ? -kTread : kTread;
    painter.drawLine(QPointF(x, y), QPointF(x + out, y));
  }
}

void Rail::paintHand(QPainter& painter, double x) const {
  const double y = handY();
  painter.setPen(QPen(theme().paper(), 2));
  painter.setBrush(theme().brass());
  painter.drawEllipse(QPointF(x, y), kHand, kHand);
  // Fingers round the rail, seen from above.
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(theme().paper(), 3.5, Qt::SolidLine, Qt::RoundCap));
  painter.drawArc(QRectF(x - 6, y - 5, 12, 12), 0, 180 * 16);
}

void Rail::paint(QPainter* painter) {
  if (m_posts.isEmpty()) return;
  const double x = m_mirrored ? width() - kHand - 1 : kHand + 1;
  const int count = static_cast<int>(m_posts.size());
  const double bottom = postY(0);
  const double hand = handY();
  painter->setPen(QPen(theme().groove(), kBar, Qt::SolidLine, Qt::RoundCap));
  painter->drawLine(QPointF(x, bottom), QPointF(x, postY(count)));
  for (int i = 0; i < count; ++i) paintTreads(*painter, i, x);
  if (hand < bottom) {
    painter->setPen(QPen(theme().rail(), kBar, Qt::SolidLine, Qt::RoundCap));
    painter->drawLine(QPointF(x, bottom), QPointF(x, hand));
  }
  for (int i = 0; i < count; ++i) paintPost(*painter, i, x);
  paintHand(*painter, x);
}

}  // namespace newel::parts
