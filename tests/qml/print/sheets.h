// Sheets for tests: made-up people's programmes, written as PDF and read back through other programs' eyes.
#pragma once

#include <gtest/gtest.h>

#include <QtCore/QString>
#include <QtCore/QTemporaryDir>
#include <QtGui/QImage>
#include <string>

#include "core/records/person.pb.h"
#include "core/records/programme.pb.h"
#include "qml/print/handout.h"

namespace newel::print {

// Words with single spaces and ligatures undone (NFKC), as PDF readers hand them out in lines.
QString textOf(const QString& pdf);
// One page's words, ligatures and Arabic forms undone; 1 is the first.
QString wordsOfPage(const QString& pdf, int page);
int pagesOf(const QString& pdf);
// One page as another program draws it; 1 is the first.
QImage pageOf(const QString& pdf, int page, int dots_per_inch);

v1::ClinicCard clinic();
HandoutInput handoutFor(const v1::Person& person);
HandoutInput eightExercises();

// Sheets go to a folder that vanishes, or, to be looked at, to the one that NEWEL_SHEETS names.
class SheetFolder {
 public:
  QString filePath(const QString& name) const {
    const QString kept = qEnvironmentVariable("NEWEL_SHEETS");
    if (kept.isEmpty()) return m_passing.filePath(name);
    const auto* test = ::testing::UnitTest::GetInstance()->current_test_info();
    return kept + QLatin1Char('/') + QString::fromUtf8(test->name()) + QLatin1Char('-') + name;
  }

 private:
  QTemporaryDir m_passing;
};

class Handout : public ::testing::Test {
 protected:
  QString write(const HandoutInput& input, const HandoutOptions& options = {}) {
    const QString file = m_folder.filePath(QStringLiteral("handout.pdf"));
    const auto pages = writeHandout(input, options, Catalogue::builtIn(), RuleBook::builtIn(), file);
    EXPECT_TRUE(pages.ok()) << pages.status();
    EXPECT_EQ(pages.value_or(0), pagesOf(file));
    return file;
  }
  SheetFolder m_folder;
};

class InLanguage : public Handout {
 protected:
  QString writeIn(const std::string& language, const HandoutInput& input) {
    HandoutOptions options;
    options.language = language;
    return write(input, options);
  }
};

}  // namespace newel::print
