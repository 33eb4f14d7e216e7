#include "qml/desk/phone_screen.h"

#include <QtCore/QDebug>
#include <QtQml/QQmlComponent>

#include "qml/parts/theme.h"

namespace newel::desk {

PhoneScreen::PhoneScreen(QQuickItem* parent) : QQuickItem(parent) {
  connect(this, &PhoneScreen::changed, this, &PhoneScreen::show);
}

PhoneScreen::~PhoneScreen() = default;

void PhoneScreen::componentComplete() {
  QQuickItem::componentComplete();
  const QQmlEngine* const desk = qmlEngine(this);
  if (desk == nullptr) return;
  m_engine = std::make_unique<QQmlEngine>();
  m_engine->setImportPathList(desk->importPathList());
  QQmlComponent component(m_engine.get(), QUrl(QStringLiteral("qrc:/qt/qml/Newel/Desk/PhoneView.qml")));
  m_view.reset(qobject_cast<QQuickItem*>(component.create()));
  if (!m_view) {
    qWarning() << component.errors();
    return;
  }
  m_view->setParentItem(this);
  show();
}

void PhoneScreen::geometryChange(const QRectF& now, const QRectF& before) {
  QQuickItem::geometryChange(now, before);
  if (m_view) m_view->setSize(now.size());
}

void PhoneScreen::show() {
  if (!m_view) return;
  const int id = qmlTypeId("Newel.Parts", 1, 0, "Theme");
  if (auto* const theme = m_engine->singletonInstance<parts::Theme*>(id); theme != nullptr) {
    theme->showAt(m_text_percent);
    theme->setDark(m_dark);
  }
  m_view->setSize(size());
  m_view->setProperty("now", m_now);
  m_view->setProperty("words", m_labels);
  m_view->setProperty("rightToLeft", m_right_to_left);
  m_view->setProperty("figure", QVariant::fromValue(m_figure));
}

}  // namespace newel::desk
