#include "qml/home/camera_view.h"

#include <QtGui/QPainter>

namespace newel::home {
namespace {

constexpr qreal kFrameShare = 0.7;  // of the shorter edge
constexpr qreal kFrameWidth = 4;    // dp

}  // namespace

CameraView::CameraView(QQuickItem* parent) : ThemedItem(parent) {}

void CameraView::setScan(ScanModel* scan) {
  if (scan == m_scan) return;
  if (m_scan != nullptr) m_scan->disconnect(this);
  m_scan = scan;
  if (scan != nullptr) connect(scan, &ScanModel::pictureChanged, this, [this] { update(); });
  emit scanChanged();
  update();
}

void CameraView::paint(QPainter* painter) {
  const QRectF all = boundingRect();
  painter->fillRect(all, QColor(0x1D, 0x2B, 0x2A));
  if (m_scan != nullptr && !m_scan->picture().isNull()) {
    const QImage& picture = m_scan->picture();
    // Filled rather than whole: the square is aimed at the middle.
    const QSizeF shown = all.size().scaled(QSizeF(picture.size()), Qt::KeepAspectRatio);
    QRectF from(QPointF(), shown);
    from.moveCenter(QRectF(picture.rect()).center());
    painter->setRenderHint(QPainter::SmoothPixmapTransform);
    painter->drawImage(all, picture, from);
  }
  const qreal side = std::min(all.width(), all.height()) * kFrameShare;
  QRectF frame(0, 0, side, side);
  frame.moveCenter(all.center());
  painter->setRenderHint(QPainter::Antialiasing);
  // Two lines, so that one of them stands out from whatever is behind.
  for (const auto& [colour, width] : {std::pair(QColor(0x1D, 0x2B, 0x2A), kFrameWidth * 2),
                                      std::pair(QColor(0xFA, 0xF6, 0xEE), kFrameWidth)}) {
    painter->setPen(QPen(colour, width, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    painter->drawRect(frame);
  }
}

}  // namespace newel::home
