// One application for all benches that draw or write. Not here: windows.
#pragma once

#include <QtGui/QGuiApplication>

namespace newel::bench {

// Letters need fonts, and fonts need an application.
inline void needApplication() {
  static int argc = 1;
  static char name[] = "newel_bench";
  static char* argv[] = {name, nullptr};
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  static const QGuiApplication kApplication(argc, argv);
}

}  // namespace newel::bench
