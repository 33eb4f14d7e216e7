#include "tests/qml/parts/word_catalogue.h"

#include <gtest/gtest.h>

#include <QtCore/QFile>
#include <QtCore/QProcess>
#include <QtCore/QRegularExpression>
#include <QtCore/QTemporaryDir>
#include <QtCore/QXmlStreamReader>
#include <set>

namespace newel::test {
namespace {

std::set<QString> marksOf(const QString& text) {
  static const QRegularExpression kMark(QStringLiteral("%L?[1-9]"));
  std::set<QString> marks;
  for (auto it = kMark.globalMatch(text); it.hasNext();) marks.insert(it.next().captured());
  return marks;
}

}  // namespace

std::vector<CatalogueWord> wordsIn(const QString& ts_file) {
  QFile file(ts_file);
  EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << ts_file.toStdString();
  QXmlStreamReader xml(&file);
  std::vector<CatalogueWord> words;
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

void expectWhole(const std::vector<CatalogueWord>& words, int plurals) {
  const QLatin1Char space(' ');
  for (const CatalogueWord& word : words) {
    const std::string source = word.context.toStdString() + ": " + word.source.toStdString();
    EXPECT_TRUE(word.finished) << source;
    EXPECT_EQ(word.forms.size(), word.counted ? plurals : 1) << source;
    for (const QString& form : word.forms) {
      EXPECT_FALSE(form.trimmed().isEmpty()) << source;
      EXPECT_EQ(marksOf(form), marksOf(word.source)) << source;
      EXPECT_EQ(form.startsWith(space), word.source.startsWith(space)) << source;
      EXPECT_EQ(form.endsWith(space), word.source.endsWith(space)) << source;
    }
  }
}

bool expectEveryWord(const QString& ts_file, const QStringList& sources, const QStringList& options) {
  const QTemporaryDir folder;
  const QString copy = folder.filePath(QStringLiteral("copy.ts"));
  EXPECT_TRUE(QFile::copy(ts_file, copy));
  QProcess process;
  process.start(QStringLiteral("/usr/lib/qt6/bin/lupdate"),
                sources + QStringList{"-I", QStringLiteral(NEWEL_SOURCE_DIR), "-locations", "none"} +
                    options + QStringList{"-ts", copy});
  if (!process.waitForStarted()) return false;
  EXPECT_TRUE(process.waitForFinished(60000));
  EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
  EXPECT_TRUE(process.readAllStandardOutput().contains("source text(s)")) << "it looked";
  for (const CatalogueWord& word : wordsIn(copy))
    EXPECT_TRUE(word.finished) << word.context.toStdString() << ": " << word.source.toStdString();
  return true;
}

}  // namespace newel::test
