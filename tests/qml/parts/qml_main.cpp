// main() of every test that opens a window: always offscreen, with the program's own font.
#include <gtest/gtest.h>

#include <QtGui/QAccessible>
#include <QtGui/QGuiApplication>
#include <QtQml/QQmlExtensionPlugin>

#include "qml/parts/theme.h"

Q_IMPORT_QML_PLUGIN(Newel_PartsPlugin)

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  qputenv("QT_QUICK_BACKEND", "software");
  testing::InitGoogleTest(&argc, argv);
  QGuiApplication app(argc, argv);
  newel::parts::useOurFont();
  QAccessible::setActive(true);
  return RUN_ALL_TESTS();
}
