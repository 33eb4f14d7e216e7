#include "qml/home/trouble.h"

#include <QtGui/QGuiApplication>
#include <QtQml/QQmlApplicationEngine>

namespace newel::home {

void TroubleAnswer::accept() {
  m_accepted = true;
  m_loop.quit();
}

void TroubleAnswer::refuse() { m_loop.quit(); }

bool askInWindow(const Trouble& trouble) {
  QQmlApplicationEngine engine;
  engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
  engine.setInitialProperties({{QStringLiteral("heading"), trouble.heading},
                               {QStringLiteral("words"), trouble.words},
                               {QStringLiteral("accept"), trouble.accept},
                               {QStringLiteral("refuse"), trouble.refuse},
                               {QStringLiteral("rightToLeft"), QGuiApplication::isRightToLeft()}});
  engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Newel/Home/TroubleWindow.qml")));
  if (engine.rootObjects().isEmpty()) return false;
  QEventLoop loop;
  TroubleAnswer answer(loop);
  QObject* const window = engine.rootObjects().constFirst();
  // The window's signals are known by name alone.
  QObject::connect(window, SIGNAL(accepted()), &answer, SLOT(accept()));
  QObject::connect(window, SIGNAL(refused()), &answer, SLOT(refuse()));
  loop.exec();
  return answer.accepted();
}

}  // namespace newel::home
