// A QR code as crisp modules: whole device pixels, black on white whatever the theme, with its quiet zone.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtGui/QImage>
#include <QtQuick/QQuickPaintedItem>

namespace newel::desk {

class QrCode : public QQuickPaintedItem {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(QString text READ text WRITE setText NOTIFY textChanged)
  Q_PROPERTY(bool valid READ valid NOTIFY textChanged)

 public:
  explicit QrCode(QQuickItem* parent = nullptr);
  QString text() const { return m_text; }
  void setText(const QString& text);
  bool valid() const { return !m_modules.isNull(); }
  void paint(QPainter* painter) override;

 signals:
  void textChanged();

 private:
  QString m_text;
  QImage m_modules;
};

// One pixel a module, 8-bit grey, with a quiet zone of four modules (ISO/IEC 18004 section 6.3.8, from
// memory); null when the text is too long or empty. Error correction M: a screen is clean.
QImage qrModules(const QString& text);

}  // namespace newel::desk
