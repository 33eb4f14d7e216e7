// main() of every test that opens a window: always offscreen, with the program's own font.
#include <gtest/gtest.h>

#include <QtCore/QLocale>
#include <QtCore/QTranslator>
#include <QtGui/QAccessible>
#include <QtGui/QGuiApplication>
#include <QtQml/QQmlExtensionPlugin>

#include "qml/parts/clip_player.h"
#include "qml/parts/theme.h"

Q_IMPORT_QML_PLUGIN(Newel_PartsPlugin)

// Read by the leak sanitizer, where it runs. Not ours to give back, and nothing of ours calls them: what
// FFmpeg's reader (Qt's plugin over libav*) keeps of each clip, and the texture of an Image that Qt 6.4's
// software renderer forgets when its window goes.
extern "C" const char* __lsan_default_suppressions();   // NOLINT(bugprone-reserved-identifier)
extern "C" const char* __lsan_default_suppressions() {  // NOLINT(bugprone-reserved-identifier)
  return "leak:libavutil\nleak:libavcodec\nleak:libavformat\nleak:QSGTexture::QSGTexture\n";
}

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  qputenv("QT_QUICK_BACKEND", "software");
  testing::InitGoogleTest(&argc, argv);
  QGuiApplication app(argc, argv);
  newel::parts::chooseClipReader();
  newel::parts::useOurFont();
  QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
  QAccessible::setActive(true);
  // The phone's words, where the test links them.
  QTranslator translator;
  if (translator.load(QStringLiteral(":/i18n/newel_en.qm"))) QGuiApplication::installTranslator(&translator);
  return RUN_ALL_TESTS();
}
