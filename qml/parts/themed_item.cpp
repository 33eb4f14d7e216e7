#include "qml/parts/themed_item.h"

#include <QtQml/QQmlEngine>

namespace newel::parts {

ThemedItem::ThemedItem(QQuickItem* parent) : QQuickPaintedItem(parent) { setAntialiasing(true); }

void ThemedItem::componentComplete() {
  QQuickPaintedItem::componentComplete();
  QQmlEngine* const engine = qmlEngine(this);
  if (engine == nullptr) return;
  const int id = qmlTypeId("Newel.Parts", 1, 0, "Theme");
  m_theme = id < 0 ? nullptr : engine->singletonInstance<Theme*>(id);
  if (m_theme != nullptr) connect(m_theme, &Theme::changed, this, [this] { update(); });
}

const Theme& ThemedItem::theme() const {
  static const Theme kPlain;
  return m_theme != nullptr ? *m_theme : kPlain;
}

}  // namespace newel::parts
