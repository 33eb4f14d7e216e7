// The catalogues of the screens' words: whole, with the same marks as English, in the language's own plurals.
#include <gtest/gtest.h>

#include <QtCore/QCoreApplication>
#include <QtCore/QDir>
#include <QtCore/QLocale>
#include <QtGui/QGuiApplication>

#include "qml/home/screen_language.h"
#include "tests/qml/parts/word_catalogue.h"

namespace newel::home {
namespace {

QString catalogue(const char* language) {
  return QStringLiteral(NEWEL_SOURCE_DIR "/qml/home/i18n/newel_%1.ts").arg(language);
}

class ScreenWords : public testing::TestWithParam<std::pair<const char*, int>> {};

TEST_P(ScreenWords, areWholeWithTheMarksOfEnglish) {
  const auto words = test::wordsIn(catalogue(GetParam().first));
  EXPECT_GT(words.size(), 250U);
  test::expectWhole(words, GetParam().second);
}

TEST_P(ScreenWords, haveEveryWordThatTheSourcesMark) {
  const QString root = QStringLiteral(NEWEL_SOURCE_DIR "/qml/");
  QStringList files = {root + "print/paper.cpp"};
  for (const char* part : {"home", "parts"}) {
    const QDir dir(root + QLatin1String(part));
    const QStringList kinds =
        part == std::string("home") ? QStringList{"*.qml", "*.cpp", "*.h"} : QStringList{"*.qml"};
    for (const QString& name : dir.entryList(kinds, QDir::Files)) files << dir.filePath(name);
  }
  // What paper says of its own is marked by another name.
  if (!test::expectEveryWord(catalogue(GetParam().first), files,
                             {"-tr-function-alias", "translate+=sheetWords"}))
    GTEST_SKIP() << "lupdate is not where it is looked for";
}

// Plural forms as Qt has them for these languages (Qt 6 Linguist, rules for plural forms).
INSTANTIATE_TEST_SUITE_P(Languages, ScreenWords, testing::Values(std::pair("es", 2), std::pair("ar", 6)),
                         [](const auto& info) { return std::string(info.param.first); });

TEST(ScreenLanguageRule, theWordsTheDatesAndTheWayOfReadingFollow) {
  ScreenLanguage language;
  language.use("es");
  EXPECT_EQ(QCoreApplication::translate("StopButton", "Stop"), QStringLiteral("Parar"));
  EXPECT_EQ(QGuiApplication::layoutDirection(), Qt::LeftToRight);
  EXPECT_EQ(QLocale().language(), QLocale::Spanish);
  language.use("ar");
  EXPECT_EQ(QCoreApplication::translate("Phrasing", "%Ln minute(s)", nullptr, 3),
            QString::fromUtf8("٣ دقائق"));
  EXPECT_EQ(QGuiApplication::layoutDirection(), Qt::RightToLeft);
  language.use("xx");
  EXPECT_EQ(language.shown(), QStringLiteral("en"));
  EXPECT_EQ(QCoreApplication::translate("Phrasing", "%Ln minute(s)", nullptr, 1), QStringLiteral("1 minute"));
  EXPECT_EQ(QGuiApplication::layoutDirection(), Qt::LeftToRight);
}

}  // namespace
}  // namespace newel::home
