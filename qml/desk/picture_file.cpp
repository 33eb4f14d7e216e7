#include "qml/desk/picture_file.h"

#include <QtCore/QBuffer>
#include <QtCore/QCoreApplication>
#include <QtCore/QFile>
#include <QtCore/QUrl>
#include <QtGui/QImage>
#include <QtGui/QImageReader>

#include "core/records/media_type.h"

namespace newel::desk {
namespace {

constexpr int kQualities[] = {85, 70, 55, 40};

struct Bounds {
  int pixels;  // a side
  qint64 bytes;
};
constexpr Bounds kSmall = {640, 48LL * 1024};
// Ours, no source: twice a phone's width, so that a foot's place can be looked at closely.
constexpr Bounds kForEntry = {1280, static_cast<qint64>(kMostPhotoBytes)};

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

QString pathOf(const QString& file) {
  const QUrl address(file);
  return address.isLocalFile() ? address.toLocalFile() : file;
}

absl::StatusOr<std::string> drawnAnew(const QString& path, const Bounds& bounds) {
  QImageReader reader(path);
  reader.setAutoTransform(true);  // turned as it was taken; that note is not kept either
  const QImage read = reader.read();
  if (read.isNull()) return bad(QT_TRANSLATE_NOOP("Picture", "This file is no picture that can be read."));
  // Pixels alone go on: texts inside the file are left behind.
  QImage pixels = read.convertToFormat(QImage::Format_RGB888);
  pixels = pixels.copy();
  for (const QString& key : pixels.textKeys()) pixels.setText(key, QString());
  if (pixels.width() > bounds.pixels || pixels.height() > bounds.pixels)
    pixels = pixels.scaled(bounds.pixels, bounds.pixels, Qt::KeepAspectRatio, Qt::SmoothTransformation);
  for (const int quality : kQualities) {
    const QByteArray bytes = jpegOf(pixels, quality);
    if (!bytes.isEmpty() && bytes.size() <= bounds.bytes) return bytes.toStdString();
  }
  return bad(
      QT_TRANSLATE_NOOP("Picture", "This picture cannot be made small enough. Take one with less in it."));
}

// What the cleaning says, without the field's name in front.
absl::Status inWords(const absl::Status& status) {
  const std::string message(status.message());
  const std::size_t colon = message.find(": ");
  std::string words = colon == std::string::npos ? message : message.substr(colon + 2);
  if (!words.empty()) words[0] = static_cast<char>(QChar::fromLatin1(words[0]).toUpper().toLatin1());
  return absl::InvalidArgumentError(words + ".");
}

}  // namespace

absl::StatusOr<std::string> smallPicture(const QString& file) { return drawnAnew(pathOf(file), kSmall); }

absl::StatusOr<CleanMedia> mediaFrom(const QString& file) {
  const QString path = pathOf(file.trimmed());
  QFile from(path);
  if (!from.open(QIODevice::ReadOnly))
    return bad(QT_TRANSLATE_NOOP("Picture", "This file cannot be opened. Look at its name and place."));
  constexpr qint64 kHead = 16;
  const bool clip = isClip(sniffMedia(from.peek(kHead).toStdString()));
  if (clip && from.size() > static_cast<qint64>(kMostClipBytes))
    return bad(QT_TRANSLATE_NOOP("Picture",
                                 "This clip is larger than 16 MiB. Take a shorter one, or save it smaller."));
  auto content =
      clip ? absl::StatusOr<std::string>(from.readAll().toStdString()) : drawnAnew(path, kForEntry);
  if (!content.ok()) return content.status();
  auto clean = cleanMedia(*content);
  if (!clean.ok()) return inWords(clean.status());
  return clean;
}

}  // namespace newel::desk
