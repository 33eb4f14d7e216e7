// Base of what we paint ourselves: knows the theme and repaints when it changes. UI thread only.
// Say its full name where you derive from it: the QML type registrar of Qt 6.4 looks for no other.
#pragma once

#include <QtQuick/QQuickPaintedItem>

#include "qml/parts/theme.h"

namespace newel::parts {

class ThemedItem : public QQuickPaintedItem {
  Q_OBJECT
  QML_ANONYMOUS

 public:
  explicit ThemedItem(QQuickItem* parent = nullptr);

 protected:
  void componentComplete() override;
  // Never null: before the engine has given its theme, a plain light one.
  const Theme& theme() const;

 private:
  Theme* m_theme = nullptr;
};

}  // namespace newel::parts
