// The desk's catalogue in Spanish: whole, with the marks of English, covering every word that the sources
// mark; and the language that is shown.
#include <gtest/gtest.h>

#include <QtCore/QCoreApplication>
#include <QtCore/QDir>
#include <QtCore/QLocale>
#include <QtCore/QTemporaryDir>

#include "core/library/settings.h"
#include "qml/desk/desk_content.h"
#include "qml/desk/desk_language.h"
#include "qml/desk/desk_settings.h"
#include "qml/print/record_words.h"
#include "tests/qml/parts/word_catalogue.h"

namespace newel::desk {
namespace {

QString catalogue() { return QStringLiteral(NEWEL_SOURCE_DIR "/qml/desk/i18n/newel_desk_es.ts"); }

TEST(DeskWords, areWholeWithTheMarksOfEnglish) {
  const auto words = test::wordsIn(catalogue());
  EXPECT_GT(words.size(), 1000U);
  test::expectWhole(words, 2);
}

TEST(DeskWords, haveEveryWordThatTheSourcesMark) {
  const QString root = QStringLiteral(NEWEL_SOURCE_DIR "/qml/");
  QStringList files;
  for (const char* part : {"desk", "parts"}) {
    const QDir dir(root + QLatin1String(part));
    const QStringList kinds =
        part == std::string("desk") ? QStringList{"*.qml", "*.cpp", "*.h"} : QStringList{"*.qml"};
    for (const QString& name : dir.entryList(kinds, QDir::Files)) files << dir.filePath(name);
  }
  if (!test::expectEveryWord(catalogue(), files)) GTEST_SKIP() << "lupdate is not where it is looked for";
}

TEST(DeskLanguageRule, isTheChosenOneElseEnglish) {
  EXPECT_EQ(DeskLanguage::resolved(QStringLiteral("es")), "es");
  EXPECT_EQ(DeskLanguage::resolved(QStringLiteral("es_MX")), "es");
  EXPECT_EQ(DeskLanguage::resolved(QStringLiteral("ar")), "en") << "no catalogue of the desk";
  DeskLanguage language;
  language.use(QStringLiteral("es"));
  EXPECT_EQ(QCoreApplication::translate("SignInPage", "Sign in"), QStringLiteral("Entrar"));
  EXPECT_EQ(print::words(v1::SIDE_LEFT), "izquierda") << "words that screens share with paper";
  EXPECT_EQ(QLocale().language(), QLocale::Spanish);
  language.use(QStringLiteral("en"));
  EXPECT_EQ(QCoreApplication::translate("SignInPage", "Sign in"), QStringLiteral("Sign in"));
  EXPECT_EQ(print::words(v1::SIDE_LEFT), "left");
}

TEST(DeskLanguageRule, isRememberedAndReachesTheRules) {
  QTemporaryDir folder;
  EXPECT_EQ(loadSettings(folder.path()).language, "") << "the system's";
  DeskSettings settings;
  settings.language = QStringLiteral("es");
  ASSERT_TRUE(saveSettings(folder.path(), settings));
  EXPECT_EQ(loadSettings(folder.path()).language, "es");
  DeskContext context;
  context.catalogue = &Catalogue::builtIn();
  context.language = "es";
  DeskContent content(context);
  content.forget();
  EXPECT_NE(context.rules->therapistWords("face-down-cannot"),
            RuleBook::builtIn().therapistWords("face-down-cannot"));
  EXPECT_NE(context.rules->therapistWords("face-down-cannot"), "");
  EXPECT_EQ(context.rules->therapistWords("no-such-rule"), "");
}

}  // namespace
}  // namespace newel::desk
