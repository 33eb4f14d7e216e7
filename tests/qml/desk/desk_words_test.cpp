// The desk's catalogue in Spanish: whole, with the marks of English, covering every word that the sources
// mark; and the language that is shown.
#include <gtest/gtest.h>

#include <QtCore/QCoreApplication>
#include <QtCore/QDir>
#include <QtCore/QFile>
#include <QtCore/QLocale>
#include <QtCore/QProcess>
#include <QtCore/QRegularExpression>
#include <QtCore/QTemporaryDir>
#include <QtCore/QXmlStreamReader>
#include <set>

#include "core/library/settings.h"
#include "qml/desk/desk_content.h"
#include "qml/desk/desk_language.h"
#include "qml/desk/desk_settings.h"
#include "qml/print/record_words.h"

namespace newel::desk {
namespace {

struct Word {
  QString context;
  QString source;
  QStringList forms;
  bool counted = false;
  bool finished = true;
};

std::vector<Word> wordsOf(const QString& name) {
  QFile file(name);
  EXPECT_TRUE(file.open(QIODevice::ReadOnly));
  QXmlStreamReader xml(&file);
  std::vector<Word> words;
  QString context;
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement) continue;
    if (xml.name() == QLatin1String("name")) {
      context = xml.readElementText();
    } else if (xml.name() == QLatin1String("message")) {
      words.push_back({context, "", {}, xml.attributes().hasAttribute(QLatin1String("numerus"))});
    } else if (xml.name() == QLatin1String("source")) {
      words.back().source = xml.readElementText();
    } else if (xml.name() == QLatin1String("numerusform")) {
      words.back().forms << xml.readElementText();
    } else if (xml.name() == QLatin1String("translation")) {
      words.back().finished = !xml.attributes().hasAttribute(QLatin1String("type"));
      if (!words.back().counted) words.back().forms << xml.readElementText();
    }
  }
  EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
  return words;
}

QString catalogue() { return QStringLiteral(NEWEL_SOURCE_DIR "/qml/desk/i18n/newel_desk_es.ts"); }

std::set<QString> marksOf(const QString& text) {
  static const QRegularExpression kMark(QStringLiteral("%L?[1-9]"));
  std::set<QString> marks;
  for (auto it = kMark.globalMatch(text); it.hasNext();) marks.insert(it.next().captured());
  return marks;
}

TEST(DeskWords, areWholeWithTheMarksOfEnglish) {
  const auto words = wordsOf(catalogue());
  EXPECT_GT(words.size(), 1000U);
  for (const Word& word : words) {
    const std::string source = word.source.toStdString();
    EXPECT_TRUE(word.finished) << source;
    EXPECT_EQ(word.forms.size(), word.counted ? 2 : 1) << source;
    for (const QString& form : word.forms) {
      EXPECT_FALSE(form.trimmed().isEmpty()) << source;
      EXPECT_EQ(marksOf(form), marksOf(word.source)) << source;
      // A space or a line at either end joins it to what stands beside it.
      EXPECT_EQ(form.startsWith(QLatin1Char(' ')), word.source.startsWith(QLatin1Char(' '))) << source;
      EXPECT_EQ(form.endsWith(QLatin1Char(' ')), word.source.endsWith(QLatin1Char(' '))) << source;
    }
  }
}

// Words that were added since the catalogue was last brought up to date: lupdate finds them, on a copy.
TEST(DeskWords, haveEveryWordThatTheSourcesMark) {
  QTemporaryDir folder;
  const QString copy = folder.filePath(QStringLiteral("desk.ts"));
  ASSERT_TRUE(QFile::copy(catalogue(), copy));
  const QString root = QStringLiteral(NEWEL_SOURCE_DIR "/qml/");
  QStringList files;
  for (const char* part : {"desk", "parts"}) {
    const QDir dir(root + QLatin1String(part));
    const QStringList kinds =
        part == std::string("desk") ? QStringList{"*.qml", "*.cpp", "*.h"} : QStringList{"*.qml"};
    for (const QString& name : dir.entryList(kinds, QDir::Files)) files << dir.filePath(name);
  }
  QProcess process;
  process.start(
      QStringLiteral("/usr/lib/qt6/bin/lupdate"),
      files + QStringList{"-I", QStringLiteral(NEWEL_SOURCE_DIR), "-locations", "none", "-ts", copy});
  if (!process.waitForStarted()) GTEST_SKIP() << "lupdate is not where it is looked for";
  ASSERT_TRUE(process.waitForFinished(60000));
  ASSERT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
  EXPECT_TRUE(process.readAllStandardOutput().contains("source text(s)")) << "it looked";
  for (const Word& word : wordsOf(copy))
    EXPECT_TRUE(word.finished) << word.context.toStdString() << ": " << word.source.toStdString();
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
