// What the camera sees, filling its place, with the frame that the square goes into. Grey: that is all there
// is to look for, and all that is handed on.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QPointer>

#include "qml/home/scan_model.h"
#include "qml/parts/themed_item.h"

namespace newel::home {

class CameraView : public newel::parts::ThemedItem {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(newel::home::ScanModel* scan READ scan WRITE setScan NOTIFY scanChanged)

 public:
  explicit CameraView(QQuickItem* parent = nullptr);

  ScanModel* scan() const { return m_scan; }
  void setScan(ScanModel* scan);
  void paint(QPainter* painter) override;

 signals:
  void scanChanged();

 private:
  QPointer<ScanModel> m_scan;
};

}  // namespace newel::home
