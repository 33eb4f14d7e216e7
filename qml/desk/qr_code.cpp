#include "qml/desk/qr_code.h"

#include <qrencode.h>

#include <QtGui/QPainter>
#include <QtQuick/QQuickWindow>
#include <algorithm>
#include <memory>

namespace newel::desk {
namespace {

constexpr int kQuiet = 4;

}  // namespace

QImage qrModules(const QString& text) {
  if (text.isEmpty()) return {};
  const QByteArray bytes = text.toUtf8();
  const std::unique_ptr<QRcode, decltype(&QRcode_free)> code(
      QRcode_encodeData(static_cast<int>(bytes.size()),
                        reinterpret_cast<const unsigned char*>(bytes.constData()), 0, QR_ECLEVEL_M),
      &QRcode_free);
  if (code == nullptr) return {};
  QImage image(code->width + 2 * kQuiet, code->width + 2 * kQuiet, QImage::Format_Grayscale8);
  image.fill(255);
  for (int y = 0; y < code->width; ++y) {
    for (int x = 0; x < code->width; ++x) {
      const bool dark = (code->data[y * code->width + x] & 1U) != 0;
      image.scanLine(y + kQuiet)[x + kQuiet] = dark ? 0 : 255;
    }
  }
  return image;
}

QrCode::QrCode(QQuickItem* parent) : QQuickPaintedItem(parent) { setAntialiasing(false); }

void QrCode::setText(const QString& text) {
  if (m_text == text) return;
  m_text = text;
  m_modules = qrModules(text);
  emit textChanged();
  update();
}

void QrCode::paint(QPainter* painter) {
  painter->fillRect(boundingRect(), Qt::white);
  if (m_modules.isNull()) return;
  const double ratio = window() == nullptr ? 1 : window()->effectiveDevicePixelRatio();
  // Whole device pixels a module, so that no camera sees a grey edge.
  const double side = std::floor(std::min(width(), height()) * ratio / m_modules.width()) / ratio;
  if (side <= 0) return;
  const double left = std::floor((width() - side * m_modules.width()) / 2 * ratio) / ratio;
  const double top = std::floor((height() - side * m_modules.height()) / 2 * ratio) / ratio;
  for (int y = 0; y < m_modules.height(); ++y) {
    for (int x = 0; x < m_modules.width(); ++x) {
      if (m_modules.constScanLine(y)[x] != 0) continue;
      painter->fillRect(QRectF(left + x * side, top + y * side, side, side), Qt::black);
    }
  }
}

}  // namespace newel::desk
