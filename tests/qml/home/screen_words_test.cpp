// The catalogues of the screens' words: whole, with the same marks as English, in the language's own plurals.
#include <gtest/gtest.h>

#include <QtCore/QCoreApplication>
#include <QtCore/QFile>
#include <QtCore/QLocale>
#include <QtCore/QRegularExpression>
#include <QtCore/QXmlStreamReader>
#include <QtGui/QGuiApplication>
#include <map>
#include <set>

#include "qml/home/screen_language.h"

namespace newel::home {
namespace {

struct Word {
  QString source;
  QStringList forms;
  bool finished = true;
  bool counted = false;
};

std::vector<Word> catalogue(const std::string& language) {
  QFile file(
      QString::fromStdString(std::string(NEWEL_SOURCE_DIR) + "/qml/home/i18n/newel_" + language + ".ts"));
  EXPECT_TRUE(file.open(QIODevice::ReadOnly));
  QXmlStreamReader xml(&file);
  std::vector<Word> words;
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement) continue;
    if (xml.name() == QLatin1String("message")) {
      words.emplace_back();
      words.back().counted = xml.attributes().hasAttribute(QLatin1String("numerus"));
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

// "%1", "%L2"; "%Ln" may be left out of a form that says the number in words.
std::set<QString> marksOf(const QString& text) {
  static const QRegularExpression kMark(QStringLiteral("%L?[1-9]"));
  std::set<QString> marks;
  for (auto it = kMark.globalMatch(text); it.hasNext();) marks.insert(it.next().captured());
  return marks;
}

class ScreenWords : public testing::TestWithParam<std::pair<const char*, int>> {};

TEST_P(ScreenWords, areWholeWithTheMarksOfEnglish) {
  const auto words = catalogue(GetParam().first);
  EXPECT_GT(words.size(), 250U);
  for (const Word& word : words) {
    const std::string source = word.source.toStdString();
    EXPECT_TRUE(word.finished) << source;
    EXPECT_EQ(word.forms.size(), word.counted ? GetParam().second : 1) << source;
    for (const QString& form : word.forms) {
      EXPECT_FALSE(form.trimmed().isEmpty()) << source;
      EXPECT_EQ(marksOf(form), marksOf(word.source)) << source;
    }
  }
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
