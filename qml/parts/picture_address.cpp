#include "qml/parts/picture_address.h"

#include <QtCore/QByteArray>

namespace newel::parts {

QString pictureAddress(const std::string& bytes) {
  if (bytes.empty()) return {};
  const QByteArray data = QByteArray::fromStdString(bytes);
  const QString kind = data.startsWith("\x89PNG") ? QStringLiteral("png") : QStringLiteral("jpeg");
  return QStringLiteral("data:image/%1;base64,%2").arg(kind, QString::fromLatin1(data.toBase64()));
}

}  // namespace newel::parts
