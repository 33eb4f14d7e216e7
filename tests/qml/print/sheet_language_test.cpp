// Sheets in the reader's language, and the catalogues that they take their words from.
#include "qml/print/sheet_language.h"

#include "core/practice/compile.h"
#include "qml/print/record_words.h"
#include "qml/print/sheet_html.h"
#include "tests/core/people/sample_people.h"
#include "tests/qml/parts/word_catalogue.h"
#include "tests/qml/print/sheets.h"

namespace newel::print {
namespace {

// Ink in the left and in the right third of a page.
std::pair<int, int> inkOf(const QImage& page) {
  int left = 0;
  int right = 0;
  for (int y = 0; y < page.height(); ++y) {
    for (int x = 0; x < page.width(); ++x) {
      if (qGray(page.pixel(x, y)) > 128) continue;
      left += x < page.width() / 3;
      right += x > page.width() * 2 / 3;
    }
  }
  return {left, right};
}

TEST_F(InLanguage, spanishIsSpanishThroughout) {
  const QString pdf = writeIn("es", handoutFor(test::transfemoralLeft()));
  const QString words = textOf(pdf);
  for (const char* wanted : {"Programa para casa de Lena Fisk", "izquierda, transfemoral", "A quién llamar:",
                             "Cuánto", "2 series", "todo", "Pare este ejercicio si", "Tenga cuidado",
                             "Marque lo que hizo", "4 días cualesquiera", "Página 1 de", "lun, mié, vie"}) {
    EXPECT_TRUE(words.contains(QString::fromUtf8(wanted))) << wanted;
  }
  for (const char* english : {"How to do it", "Stop this exercise", "Whom to call", "Take care", "Week of",
                              "about ", "Mon,", "Page 1"}) {
    EXPECT_FALSE(words.contains(QString::fromUtf8(english))) << english;
  }
}

// What reads from the right lies on the right: the ink of the first page, and the boxes' names in the grid.
TEST(SheetHtml, whatIsInAnotherLanguageKeepsItsOwnOrder) {
  const QString arabic_words = QString::fromUtf8("قف بجانب Newel.");
  const QString isolated = QChar(0x2066) + QStringLiteral("Stand tall.") + QChar(0x2069);
  {
    const SheetLanguage arabic("ar");
    EXPECT_EQ(safe(QStringLiteral("Stand tall.")), isolated) << "its full stop is at its own end";
    EXPECT_EQ(safe(arabic_words), arabic_words);
    EXPECT_EQ(safe(arabic_words + QStringLiteral("\nStand tall.")),
              arabic_words + QStringLiteral("<br>") + isolated);
  }
  const SheetLanguage spanish("es");
  EXPECT_EQ(safe(QStringLiteral("Stand tall.")), "Stand tall.");
}

// Rows of a page with ink from one side to the other.
std::vector<int> rulesOf(const QImage& page) {
  std::vector<int> rules;
  for (int y = 0; y < page.height(); ++y) {
    int ink = 0;
    for (int x = 0; x < page.width(); ++x) ink += qGray(page.pixel(x, y)) < 128;
    if (ink > page.width() * 7 / 10) rules.push_back(y);
  }
  return rules;
}

// The days' names stand above the line of their grid, in a font with higher lines too.
TEST_F(InLanguage, theDaysOfTheGridStandClearOfItsLines) {
  for (const char* language : {"en", "ar"}) {
    const QString pdf = writeIn(language, handoutFor(test::transfemoralLeft()));
    const QImage page = pageOf(pdf, pagesOf(pdf), 144);
    const std::vector<int> rules = rulesOf(page);
    ASSERT_GE(rules.size(), 3U) << language;
    const int above = rules.front() - 3;
    int ink = 0;
    for (int x = 0; x < page.width(); ++x) ink += qGray(page.pixel(x, above)) < 128;
    EXPECT_EQ(ink, 0) << language << ", row " << above;
  }
}

TEST_F(InLanguage, arabicReadsFromTheRightWithDigitsThatCanBeDialled) {
  const QString pdf = writeIn("ar", handoutFor(test::transfemoralLeft()));
  const QString words = textOf(pdf);
  EXPECT_TRUE(words.contains(QString::fromUtf8("برنامج المنزل"))) << words.toStdString();
  EXPECT_TRUE(words.contains(QStringLiteral("555 0100")));
  EXPECT_FALSE(words.contains(QStringLiteral("0100 555"))) << "as it is seen, not only as it is stored";
  EXPECT_FALSE(words.contains(QStringLiteral("How to do it")));
  for (const QChar c : words) {
    ASSERT_FALSE(c.isDigit() && c.unicode() > 127)
        << "digits of one kind on a sheet: " << words.toStdString();
  }
  const auto [left, right] = inkOf(pageOf(pdf, 1, 50));
  EXPECT_GT(right, left * 2);
  const auto [grid_left, grid_right] = inkOf(pageOf(pdf, pagesOf(pdf), 50));
  EXPECT_GT(grid_right, grid_left) << "the titles of the grid stand on the right";
}

TEST_F(InLanguage, anExerciseWithoutWordsInItSaysSo) {
  const auto& catalogue = Catalogue::builtIn();
  v1::Person person = test::transtibialRight();
  HandoutInput input = handoutFor(person);
  input.programme.clear_entries();
  for (const auto& exercise : catalogue.exercises()) {
    if (catalogue.words(exercise.id(), "ar") != nullptr) continue;
    v1::Entry entry = test::entryOf(exercise.id(), person, 400);
    if (!compileTimeline(entry, person, catalogue, "en").ok()) continue;
    *input.programme.add_entries() = entry;
    break;
  }
  ASSERT_EQ(input.programme.entries_size(), 1);
  EXPECT_TRUE(textOf(writeIn("ar", input)).contains(QString::fromUtf8("هذا التمرين ليس بلغتك بعد")));
  EXPECT_FALSE(textOf(writeIn("en", input)).contains(QStringLiteral("not in your language")));
}

// What is said on the sheet follows the sheet, and the desk's own words stay as they were.
TEST(SheetLanguageRule, isTheInnermostOnesAndEndsWithIt) {
  EXPECT_EQ(words(v1::SIDE_LEFT), "left");
  {
    const SheetLanguage spanish("es-MX");
    EXPECT_EQ(words(v1::SIDE_LEFT), "izquierda");
    {
      const SheetLanguage english("en");
      EXPECT_EQ(words(v1::SIDE_LEFT), "left");
      v1::Schedule schedule;
      schedule.set_times_per_week(1);
      schedule.add_windows()->set_to_min(1440);
      EXPECT_EQ(scheduleWords(schedule), "once a week");
    }
    EXPECT_EQ(words(v1::SIDE_LEFT), "izquierda");
    EXPECT_EQ(dayWords(absl::CivilDay(2026, 11, 25)), QStringLiteral("mié 25 nov 2026"));
  }
  EXPECT_EQ(words(v1::SIDE_LEFT), "left");
  EXPECT_EQ(SheetLanguage::languages(), (QStringList{"ar", "en", "es"}));
}

TEST(SheetCatalogues, areWholeWithTheMarksOfEnglish) {
  for (const auto& [language, plurals, least] :
       {std::tuple("es", 2, 200), std::tuple("ar", 6, 200), std::tuple("en", 2, 2)}) {
    const auto words =
        test::wordsIn(QStringLiteral(NEWEL_SOURCE_DIR "/qml/print/i18n/newel_print_%1.ts").arg(language));
    EXPECT_GT(words.size(), static_cast<std::size_t>(least)) << language;
    test::expectWhole(words, plurals);
  }
}

TEST(SheetCatalogues, haveEveryWordThatTheSourcesMark) {
  const QString root = QStringLiteral(NEWEL_SOURCE_DIR "/qml/print/");
  QStringList takes_home;
  for (const char* name :
       {"card", "handout", "paper", "record_words", "sheet_html", "tick_grid", "value_words"})
    takes_home << root + QLatin1String(name) + ".cpp";
  const QStringList for_the_record = {root + "report.cpp", root + "report_extras.cpp",
                                      root + "wear_lines.cpp"};
  for (const auto& [language, files] : {std::pair(QStringLiteral("es"), takes_home + for_the_record),
                                        std::pair(QStringLiteral("ar"), takes_home)}) {
    if (!test::expectEveryWord(root + "i18n/newel_print_" + language + ".ts", files,
                               {"-tr-function-alias", "translate+=sheetWords"}))
      GTEST_SKIP() << "lupdate is not where it is looked for";
  }
}

// An exercise is never torn where a page would hold it: each begins and ends on one page, two to a page at
// most.
TEST_F(InLanguage, roomyHasOneOrTwoExercisesToAPageAndTearsNone) {
  for (const char* language : {"en", "es", "ar"}) {
    const HandoutInput input =
        language == std::string("ar") ? handoutFor(test::transfemoralLeft()) : eightExercises();
    const QString pdf = writeIn(language, input);
    const SheetLanguage sheet(language);
    const QString how = sheetWords("Handout", "How to do it");
    const QString stop = sheetWords("Handout", "Stop this exercise if");
    int begun = 0;
    const int pages = pagesOf(pdf);
    for (int page = 1; page <= pages; ++page) {
      const QString words = wordsOfPage(pdf, page);
      const auto starts = words.count(how);
      EXPECT_LE(starts, 2) << language << ", page " << page;
      EXPECT_EQ(starts, words.count(stop)) << language << ", page " << page;
      begun += static_cast<int>(starts);
    }
    EXPECT_EQ(begun, input.programme.entries_size()) << language;
  }
}

}  // namespace
}  // namespace newel::print
