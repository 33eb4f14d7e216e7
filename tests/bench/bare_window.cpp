// The least that a Qt Quick Controls program can be: one window with a title, a text and a button. What
// newel-home costs is measured beside it. Says "frame" once it has shown itself, and ends with its input.
#include <QtCore/QCoreApplication>
#include <QtCore/QTimer>
#include <QtGui/QGuiApplication>
#include <QtQml/QQmlApplicationEngine>
#include <QtQuick/QQuickWindow>
#include <iostream>
#include <string>
#include <thread>

namespace {

constexpr char kWindow[] = R"(
import QtQuick
import QtQuick.Controls.Basic

ApplicationWindow {
    width: 412
    height: 800
    visible: true
    title: "Bare"

    Column {
        anchors.centerIn: parent
        spacing: 16
        Label { text: "A bare window" }
        Button { text: "A button" }
    }
}
)";

}  // namespace

int main(int argc, char** argv) {
  QGuiApplication app(argc, argv);
  QQmlApplicationEngine engine;
  engine.loadData(kWindow);
  if (engine.rootObjects().isEmpty()) return 1;
  auto* const window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
  bool said = false;
  QObject::connect(window, &QQuickWindow::frameSwapped, window, [&said] {
    if (!std::exchange(said, true)) std::cout << "frame" << std::endl;
  });
  std::thread([] {
    for (std::string line; std::getline(std::cin, line);) {
    }
    QMetaObject::invokeMethod(
        QCoreApplication::instance(), [] { QCoreApplication::quit(); }, Qt::QueuedConnection);
  }).detach();
  return QGuiApplication::exec();
}
