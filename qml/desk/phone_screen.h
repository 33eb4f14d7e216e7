// The phone's practice screen at the size of text that a person has on their own phone. The theme is one for
// a whole engine, and the desk's is not the person's: so this screen lives in an engine of its own, in the
// desk's window.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QVariantMap>
#include <QtQml/QQmlEngine>
#include <QtQuick/QQuickItem>
#include <memory>

#include "qml/parts/figure_source.h"

namespace newel::desk {

class PhoneScreen : public QQuickItem {
  Q_OBJECT
  QML_ELEMENT
  Q_PROPERTY(QVariantMap now MEMBER m_now NOTIFY changed)        // PreviewModel::facts
  Q_PROPERTY(QVariantMap labels MEMBER m_labels NOTIFY changed)  // PreviewModel::labels
  Q_PROPERTY(newel::parts::FigureSource* figure MEMBER m_figure NOTIFY changed)
  Q_PROPERTY(bool rightToLeft MEMBER m_right_to_left NOTIFY changed)
  Q_PROPERTY(
      int textPercent MEMBER m_text_percent NOTIFY changed)  // 100 to 200, the desk's own scale left out
  Q_PROPERTY(bool dark MEMBER m_dark NOTIFY changed)

 public:
  explicit PhoneScreen(QQuickItem* parent = nullptr);
  ~PhoneScreen() override;

 signals:
  void changed();

 protected:
  void componentComplete() override;
  void geometryChange(const QRectF& now, const QRectF& before) override;

 private:
  void show();

  QVariantMap m_now;
  QVariantMap m_labels;
  parts::FigureSource* m_figure = nullptr;
  bool m_right_to_left = false;
  int m_text_percent = 100;
  bool m_dark = false;
  std::unique_ptr<QQmlEngine> m_engine;
  std::unique_ptr<QQuickItem> m_view;  // goes before its engine
};

}  // namespace newel::desk
