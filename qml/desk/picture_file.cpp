#include "qml/desk/picture_file.h"

#include <QtCore/QBuffer>
#include <QtCore/QCoreApplication>
#include <QtCore/QUrl>
#include <QtGui/QImage>
#include <QtGui/QImageReader>

namespace newel::desk {
namespace {

constexpr int kMostPixels = 640;
constexpr qint64 kMostBytes = 48LL * 1024;
constexpr int kQualities[] = {85, 70, 55, 40};

QByteArray jpegOf(const QImage& image, int quality) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, "JPG", quality);
  return bytes;
}

absl::Status bad(const char* words) {
  return absl::InvalidArgumentError(QCoreApplication::translate("Picture", words).toStdString());
}

}  // namespace

absl::StatusOr<std::string> smallPicture(const QString& file) {
  const QUrl address(file);
  QImageReader reader(address.isLocalFile() ? address.toLocalFile() : file);
  reader.setAutoTransform(true);  // turned as it was taken; that note is not kept either
  const QImage read = reader.read();
  if (read.isNull()) return bad("This file is no picture that can be read.");
  // Pixels alone go on: texts inside the file are left behind.
  QImage pixels = read.convertToFormat(QImage::Format_RGB888);
  pixels = pixels.copy();
  for (const QString& key : pixels.textKeys()) pixels.setText(key, QString());
  if (pixels.width() > kMostPixels || pixels.height() > kMostPixels)
    pixels = pixels.scaled(kMostPixels, kMostPixels, Qt::KeepAspectRatio, Qt::SmoothTransformation);
  for (const int quality : kQualities) {
    const QByteArray bytes = jpegOf(pixels, quality);
    if (!bytes.isEmpty() && bytes.size() <= kMostBytes) return bytes.toStdString();
  }
  return bad("This picture cannot be made small enough. Take one with less in it.");
}

}  // namespace newel::desk
