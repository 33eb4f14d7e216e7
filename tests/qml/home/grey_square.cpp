#include "tests/qml/home/grey_square.h"

#include <qrencode.h>

#include <QtGui/QImage>
#include <QtGui/QPainter>
#include <cstring>
#include <memory>
#include <random>
#include <stdexcept>

namespace newel::tests {
namespace {

constexpr int kSide = 720;
constexpr int kQuiet = 4;  // modules

struct QrFree {
  void operator()(QRcode* code) const { QRcode_free(code); }
};

QImage modulesOf(const std::string& text) {
  const std::unique_ptr<QRcode, QrFree> code(
      QRcode_encodeString(text.c_str(), 0, QR_ECLEVEL_M, QR_MODE_8, 1));
  if (code == nullptr) throw std::runtime_error("no square can be made of the text");
  QImage image(code->width + 2 * kQuiet, code->width + 2 * kQuiet, QImage::Format_Grayscale8);
  image.fill(255);
  for (int y = 0; y < code->width; ++y) {
    for (int x = 0; x < code->width; ++x) {
      if ((code->data[y * code->width + x] & 1) != 0) image.scanLine(y + kQuiet)[x + kQuiet] = 0;
    }
  }
  return image;
}

// Of a picture of the size of the whole, about its middle.
QTransform wayOf(const Seen& seen, const QSize& size) {
  const double half = size.width() * seen.module_px / 2;
  const double far = half * (1 - seen.tilt);
  QTransform tilted;
  QTransform::quadToQuad(QPolygonF(QRectF(0, 0, size.width(), size.height())).mid(0, 4),
                         QPolygonF({{-far, -half}, {far, -half}, {half, half}, {-half, half}}), tilted);
  QTransform way = QTransform::fromTranslate(kSide / 2.0, kSide / 2.0);
  way.rotate(seen.turned_deg);
  if (seen.mirrored) way.scale(-1, 1);
  return tilted * way;
}

}  // namespace

platform::GreyPicture greySquare(const std::string& text, const Seen& seen) {
  const QImage modules = modulesOf(text);
  QImage image(kSide, kSide, QImage::Format_Grayscale8);
  image.fill(150);
  QPainter painter(&image);
  painter.setTransform(wayOf(seen, modules.size()));
  painter.setRenderHint(QPainter::SmoothPixmapTransform, seen.module_px < 4);
  painter.drawImage(0, 0, modules);
  painter.end();
  std::mt19937 random(1);
  std::normal_distribution<double> noise(0, seen.noise);
  platform::GreyPicture picture{kSide, kSide, std::vector<std::uint8_t>(std::size_t{kSide} * kSide)};
  for (int y = 0; y < kSide; ++y) {
    for (int x = 0; x < kSide; ++x) {
      const double light =
          128 + (image.constScanLine(y)[x] - 128) * seen.contrast + (seen.noise > 0 ? noise(random) : 0);
      picture.pixels[static_cast<std::size_t>(y) * kSide + static_cast<std::size_t>(x)] =
          static_cast<std::uint8_t>(std::clamp(light, 0.0, 255.0));
    }
  }
  return picture;
}

}  // namespace newel::tests
