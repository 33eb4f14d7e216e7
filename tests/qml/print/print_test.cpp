// Paper for real: written as PDF, read back with pdftotext, as a reader would get it.
#include <gtest/gtest.h>

#include <QtCore/QProcess>
#include <QtCore/QRegularExpression>
#include <QtCore/QTemporaryDir>
#include <QtCore/QXmlStreamReader>
#include <QtGui/QGuiApplication>
#include <QtGui/QImage>
#include <array>
#include <cmath>
#include <set>

#include "core/figure/palette.h"
#include "core/practice/compile.h"
#include "core/time/local_day.h"
#include "qml/print/card.h"
#include "qml/print/handout.h"
#include "qml/print/record_words.h"
#include "qml/print/report.h"
#include "qml/print/report_extras.h"
#include "qml/print/sheet_language.h"
#include "tests/core/people/sample_people.h"

namespace newel::print {
namespace {

// Words with single spaces and ligatures undone (NFKC), as PDF readers hand them out in lines.
QString textOf(const QString& pdf) {
  QProcess process;
  process.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), pdf, QStringLiteral("-")});
  EXPECT_TRUE(process.waitForFinished(20000));
  EXPECT_EQ(process.exitCode(), 0);
  return QString::fromUtf8(process.readAllStandardOutput())
      .normalized(QString::NormalizationForm_KC)
      .replace(QRegularExpression(QStringLiteral("\\s+")), QStringLiteral(" "));
}

int pagesOf(const QString& pdf) {
  QProcess process;
  process.start(QStringLiteral("pdfinfo"), {pdf});
  EXPECT_TRUE(process.waitForFinished(20000));
  const QString info = QString::fromUtf8(process.readAllStandardOutput());
  return QRegularExpression(QStringLiteral("Pages:\\s+(\\d+)")).match(info).captured(1).toInt();
}

v1::ClinicCard clinic() {
  v1::ClinicCard card;
  card.set_clinic_id(test::idOf(2000));
  card.set_name("Limb clinic at Harbour Street");
  card.set_phone("555 0100");
  card.set_hours("weekdays 8 to 17");
  card.set_emergency_number("112");
  return card;
}

v1::Programme programmeOf(const v1::Person& person) {
  auto programme = test::programmeOf(
      person,
      {test::entryOf("sit-to-stand", person, 100), test::entryOf("weight-shift-side", person, 101),
       test::entryOf("face-down-lying", person, 102), test::entryOf("stairs-one-at-a-time", person, 103)});
  programme.mutable_entries(0)->set_note("Use the kitchen chair.");
  programme.mutable_entries(1)->mutable_schedule()->set_times_per_week(4);
  programme.set_end_day("2026-11-29");
  programme.set_advice("Wear firm shoes.");
  return programme;
}

HandoutInput handoutFor(const v1::Person& person) {
  return {programmeOf(person), person, QStringLiteral("Lena Fisk"), clinic()};
}

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

// Through another program's eyes: the page of an exercise shows the body in the figure's own colours.
TEST_F(Handout, drawsTheExercise) {
  const QString pdf = write(handoutFor(test::transfemoralLeft()));
  const QString page = m_folder.filePath(QStringLiteral("page"));
  QProcess::execute(QStringLiteral("pdftoppm"),
                    {QStringLiteral("-png"), QStringLiteral("-r"), QStringLiteral("50"), QStringLiteral("-f"),
                     QStringLiteral("2"), QStringLiteral("-l"), QStringLiteral("2"),
                     QStringLiteral("-singlefile"), pdf, page});
  const QImage image(page + QStringLiteral(".png"));
  ASSERT_FALSE(image.isNull());
  const Colour shirt = lightPalette({}).shirt;
  // Of the three poses, each has its own stretch of the width.
  std::array<int, 3> found{};
  for (int y = 0; y < image.height() / 3; ++y) {
    for (int x = 0; x < image.width(); ++x) {
      const QColor pixel = image.pixelColor(x, y);
      const int off = std::abs(pixel.red() - shirt.r) + std::abs(pixel.green() - shirt.g) +
                      std::abs(pixel.blue() - shirt.b);
      if (off < 20) ++found[static_cast<std::size_t>(x * 3 / image.width())];
    }
  }
  for (const int pixels : found) EXPECT_GT(pixels, 20);
}

TEST_F(Handout, saysWhoWhatSideAndWhomToCall) {
  const QString words = textOf(write(handoutFor(test::transfemoralLeft())));
  for (const char* wanted : {"Lena Fisk",
                             "left, transfemoral",
                             "Sit to stand",
                             "2 sets, 8 times, hold 2 seconds",
                             "Mon, Wed, Fri",
                             "Use the kitchen chair.",
                             "Wear firm shoes.",
                             "prosthesis",
                             "555 0100",
                             "112",
                             "weekdays 8 to 17",
                             "Stop this exercise if",
                             "Pain passes 5 of 10, or rises by 2 or more.",
                             "What good looks like",
                             "Take care",
                             "Tick what you did",
                             "any 4 days",
                             "Week of",
                             "not an emergency service",
                             "Dr Sample"}) {
    EXPECT_TRUE(words.contains(QString::fromUtf8(wanted))) << wanted;
  }
}

TEST_F(Handout, cuesAreThoseOfTheTimelineInOrder) {
  const auto input = handoutFor(test::transfemoralLeft());
  const QString words = textOf(write(input));
  for (const auto& entry : input.programme.entries()) {
    const auto timeline = compileTimeline(entry, input.person, Catalogue::builtIn(), "en");
    ASSERT_TRUE(timeline.ok());
    // Some cues open other sentences too, so each is looked for after the one before it.
    qsizetype at = words.indexOf(QStringLiteral(". ") + text(timeline->title()));
    ASSERT_GE(at, 0);
    std::set<std::string> seen;
    for (const auto& beat : timeline->beats()) {
      if (beat.set() > 1 || !seen.insert(beat.screen()).second || beat.screen().empty()) continue;
      const qsizetype found = words.indexOf(text(beat.screen()), at);
      EXPECT_GE(found, at) << beat.screen();
      at = std::max(at, found);
    }
  }
}

TEST_F(Handout, nameMayBeLeftOut) {
  auto input = handoutFor(test::transtibialRight());
  input.name.clear();
  const QString words = textOf(write(input));
  EXPECT_FALSE(words.contains(QStringLiteral("Lena")));
  EXPECT_TRUE(words.contains(QStringLiteral("right, transtibial")));
}

// They are left out; the paper says where they are.
TEST_F(Handout, saysThatPhotoAndClipAreOnThePhone) {
  auto input = handoutFor(test::transtibialRight());
  const auto add = [](v1::MediaRef& media, v1::MediaType type) {
    media.set_sha256(std::string(32, 'h'));
    media.set_type(type);
    media.set_size_bytes(100);
    media.set_words("Feet flat");
  };
  EXPECT_FALSE(textOf(write(input)).contains(QStringLiteral("on your phone, with your programme")));
  add(*input.programme.mutable_entries(0)->mutable_photo(), v1::MEDIA_TYPE_JPEG);
  add(*input.programme.mutable_entries(1)->mutable_photo(), v1::MEDIA_TYPE_JPEG);
  add(*input.programme.mutable_entries(1)->mutable_clip(), v1::MEDIA_TYPE_MP4);
  const QString words = textOf(write(input));
  EXPECT_TRUE(words.contains(QStringLiteral("A photo from your therapist is on your phone")));
  EXPECT_TRUE(words.contains(QStringLiteral("A photo and a clip from your therapist are on your phone")));
}

TEST_F(Handout, everySamplePersonGetsASheetWithTheirOwnSides) {
  for (const auto& sample : test::samplePeople()) {
    HandoutInput input = handoutFor(sample.person);
    // What has no meaning for a person is refused while prescribing; the sheet is made of the rest.
    v1::Programme kept = input.programme;
    kept.clear_entries();
    for (const auto& entry : input.programme.entries()) {
      if (compileTimeline(entry, sample.person, Catalogue::builtIn(), "en").ok()) *kept.add_entries() = entry;
    }
    ASSERT_FALSE(kept.entries().empty()) << sample.name;
    input.programme = kept;
    const QString words = textOf(write(input));
    EXPECT_TRUE(words.contains(limbsWords(sample.person))) << sample.name;
    EXPECT_FALSE(words.contains(QLatin1Char('{'))) << sample.name << ": a placeholder was left";
  }
}

TEST_F(Handout, largePrintIsLargerAndTakesMorePages) {
  const int plain = pagesOf(write(handoutFor(test::transfemoralLeft())));
  HandoutOptions large;
  large.body_pt = kLargePrintPt;
  const int pages = pagesOf(write(handoutFor(test::transfemoralLeft()), large));
  EXPECT_GE(plain, 3);
  EXPECT_LE(plain, 6);
  EXPECT_GT(pages, plain);
  EXPECT_LE(pages, 14);
}

TEST_F(Handout, letterPaperIsLetterPaper) {
  HandoutOptions options;
  options.size = QPageSize::Letter;
  QProcess process;
  process.start(QStringLiteral("pdfinfo"), {write(handoutFor(test::transfemoralLeft()), options)});
  ASSERT_TRUE(process.waitForFinished(20000));
  EXPECT_TRUE(process.readAllStandardOutput().contains("612 x 792"));
}

TEST_F(Handout, embedsOurFontAndHoldsNoRaster) {
  const QString file = write(handoutFor(test::transfemoralLeft()));
  QProcess fonts;
  fonts.start(QStringLiteral("pdffonts"), {file});
  ASSERT_TRUE(fonts.waitForFinished(20000));
  EXPECT_TRUE(fonts.readAllStandardOutput().contains("NotoSans"));
  QProcess images;
  images.start(QStringLiteral("pdfimages"), {QStringLiteral("-list"), file});
  ASSERT_TRUE(images.waitForFinished(20000));
  EXPECT_LE(images.readAllStandardOutput().count('\n'), 2);
}

TEST_F(Handout, refusesABrokenProgrammeAndNamesTheField) {
  auto input = handoutFor(test::transfemoralLeft());
  input.programme.mutable_entries(1)->mutable_dose()->mutable_sets()->set_sets(11);
  const auto pages = writeHandout(input, {}, Catalogue::builtIn(), RuleBook::builtIn(),
                                  m_folder.filePath(QStringLiteral("never.pdf")));
  EXPECT_EQ(pages.status().code(), absl::StatusCode::kInvalidArgument);
  EXPECT_NE(std::string(pages.status().message()).find("entries[1].dose.sets.sets"), std::string::npos);
  EXPECT_FALSE(QFile::exists(m_folder.filePath(QStringLiteral("never.pdf"))));
}

TEST_F(Handout, anUnwritableFileIsAnError) {
  const auto pages = writeHandout(handoutFor(test::transfemoralLeft()), {}, Catalogue::builtIn(),
                                  RuleBook::builtIn(), QStringLiteral("/proc/no-such-folder/handout.pdf"));
  EXPECT_EQ(pages.status().code(), absl::StatusCode::kUnavailable);
}

// One page as another program draws it; 1 is the first.
QImage pageOf(const QString& pdf, int page, int dots_per_inch) {
  QTemporaryDir folder;
  const QString name = folder.filePath(QStringLiteral("page"));
  const QString number = QString::number(page);
  QProcess::execute(
      QStringLiteral("pdftoppm"),
      {QStringLiteral("-png"), QStringLiteral("-r"), QString::number(dots_per_inch), QStringLiteral("-f"),
       number, QStringLiteral("-l"), number, QStringLiteral("-singlefile"), pdf, name});
  return QImage(name + QStringLiteral(".png"));
}

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

class InLanguage : public Handout {
 protected:
  QString writeIn(const std::string& language, const HandoutInput& input) {
    HandoutOptions options;
    options.language = language;
    return write(input, options);
  }
};

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

// The sheets' catalogues: nothing unfinished, the marks of English in each, the language's own plurals.
TEST(SheetCatalogues, areWholeWithTheMarksOfEnglish) {
  static const QRegularExpression kMark(QStringLiteral("%[1-9]"));
  const auto marksOf = [](const QString& text) {
    std::set<QString> marks;
    for (auto it = kMark.globalMatch(text); it.hasNext();) marks.insert(it.next().captured());
    return marks;
  };
  for (const auto& [language, plurals] : {std::pair("es", 2), std::pair("ar", 6), std::pair("en", 2)}) {
    QFile file(QStringLiteral(NEWEL_SOURCE_DIR "/qml/print/i18n/newel_print_%1.ts").arg(language));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    QXmlStreamReader xml(&file);
    QString source;
    int forms = 0;
    bool counted = false;
    int messages = 0;
    const auto form = [&](const QString& said) {
      ++forms;
      EXPECT_FALSE(said.trimmed().isEmpty()) << language << ": " << source.toStdString();
      EXPECT_EQ(marksOf(said), marksOf(source)) << language << ": " << source.toStdString();
    };
    while (!xml.atEnd()) {
      const auto token = xml.readNext();
      if (token == QXmlStreamReader::EndElement && xml.name() == QLatin1String("message")) {
        EXPECT_EQ(forms, counted ? plurals : 1) << language << ": " << source.toStdString();
        ++messages;
      }
      if (token != QXmlStreamReader::StartElement) continue;
      if (xml.name() == QLatin1String("message")) {
        forms = 0;
        counted = xml.attributes().hasAttribute(QLatin1String("numerus"));
      } else if (xml.name() == QLatin1String("source")) {
        source = xml.readElementText();
      } else if (xml.name() == QLatin1String("numerusform")) {
        form(xml.readElementText());
      } else if (xml.name() == QLatin1String("translation")) {
        EXPECT_FALSE(xml.attributes().hasAttribute(QLatin1String("type"))) << source.toStdString();
        if (!counted) form(xml.readElementText());
      }
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    EXPECT_GT(messages, language == std::string("en") ? 2 : 200);
  }
}

// Words that were added since a catalogue was last brought up to date: lupdate finds them, on a copy.
TEST(SheetCatalogues, haveEveryWordThatTheSourcesMark) {
  QTemporaryDir folder;
  const QString root = QStringLiteral(NEWEL_SOURCE_DIR "/qml/print/");
  QStringList takes_home;
  for (const char* name :
       {"card", "handout", "paper", "record_words", "sheet_html", "tick_grid", "value_words"})
    takes_home << root + QLatin1String(name) + ".cpp";
  const QStringList for_the_record = {root + "report.cpp", root + "report_extras.cpp",
                                      root + "wear_lines.cpp"};
  for (const auto& [language, files] : {std::pair(QStringLiteral("es"), takes_home + for_the_record),
                                        std::pair(QStringLiteral("ar"), takes_home)}) {
    const QString copy = folder.filePath(language + ".ts");
    ASSERT_TRUE(QFile::copy(root + "i18n/newel_print_" + language + ".ts", copy));
    QProcess process;
    process.start(QStringLiteral("/usr/lib/qt6/bin/lupdate"),
                  files + QStringList{"-I", QStringLiteral(NEWEL_SOURCE_DIR), "-locations", "none",
                                      "-tr-function-alias", "translate+=sheetWords", "-ts", copy});
    if (!process.waitForStarted()) GTEST_SKIP() << "lupdate is not where it is looked for";
    ASSERT_TRUE(process.waitForFinished(60000));
    ASSERT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
    EXPECT_TRUE(process.readAllStandardOutput().contains("source text(s)")) << "it looked";
    QFile file(copy);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll().count("type=\"unfinished\""), 0) << language.toStdString();
  }
}

HandoutInput eightExercises() {
  const v1::Person person = test::transtibialRight();
  HandoutInput input = handoutFor(person);
  input.programme.clear_entries();
  std::uint64_t number = 300;
  for (const char* id : {"sit-to-stand", "weight-shift-side", "quad-set", "face-down-lying",
                         "stairs-one-at-a-time", "tandem-stance", "side-stepping", "walking-programme"})
    *input.programme.add_entries() = test::entryOf(id, person, ++number);
  return input;
}

TEST_F(Handout, compactTakesFewerPagesAndKeepsWhatCannotBeLeftOut) {
  const int roomy = pagesOf(write(eightExercises()));
  HandoutOptions options;
  options.layout = HandoutLayout::Compact;
  const QString pdf = write(eightExercises(), options);
  EXPECT_LE(pagesOf(pdf) * 3, roomy * 2);
  const QString words = textOf(pdf);
  const auto input = eightExercises();
  for (const auto& entry : input.programme.entries()) {
    EXPECT_TRUE(words.contains(titleOf(Catalogue::builtIn(), entry.exercise_id(), "en")))
        << entry.exercise_id();
  }
  EXPECT_EQ(words.count(QStringLiteral("How much")), 8);
  EXPECT_EQ(words.count(QStringLiteral("Hands")), 8);
  EXPECT_EQ(words.count(QStringLiteral("Take care")), 8);
  EXPECT_EQ(words.count(QStringLiteral("Stop this exercise if")), 8);
  EXPECT_TRUE(words.contains(QStringLiteral("Whom to call:")));
  EXPECT_TRUE(words.contains(QStringLiteral("Tick what you did")));
}

// One page's words, ligatures and Arabic forms undone.
QString wordsOfPage(const QString& pdf, int page) {
  QProcess process;
  process.start(QStringLiteral("pdftotext"),
                {QStringLiteral("-layout"), QStringLiteral("-f"), QString::number(page), QStringLiteral("-l"),
                 QString::number(page), pdf, QStringLiteral("-")});
  EXPECT_TRUE(process.waitForFinished(20000));
  return QString::fromUtf8(process.readAllStandardOutput()).normalized(QString::NormalizationForm_KC);
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

class WalletCard : public ::testing::Test {
 protected:
  QString write(const CardInput& input, const std::string& language) {
    const QString file =
        m_folder.filePath(QStringLiteral("card-") + QString::fromStdString(language) + ".pdf");
    const auto pages = writeCard(input, {QPageSize::A4, language}, file);
    EXPECT_TRUE(pages.ok()) << pages.status();
    EXPECT_EQ(pages.value_or(0), 1);
    return file;
  }
  static CardInput inputFor(const v1::Person& person) {
    CardInput input;
    input.person = person;
    input.name = QStringLiteral("Lena Fisk");
    input.clinic = clinic();
    input.thresholds.set_pain_stop_0_10(5);
    input.thresholds.set_pain_rise_0_10(2);
    return input;
  }
  SheetFolder m_folder;
};

TEST_F(WalletCard, saysWhoseLimbWhomToCallAndWhenToStop) {
  v1::Person person = test::transfemoralLeft();
  person.add_conditions(v1::CONDITION_BLOOD_THINNERS);
  person.add_conditions(v1::CONDITION_BACK_PAIN);
  const QString words = textOf(write(inputFor(person), "en"));
  for (const char* wanted : {"Lena Fisk", "left, transfemoral", "knee: yields under load", "blood thinners",
                             "112", "555 0100", "weekdays 8 to 17", "passes 5 of 10", "After a fall"}) {
    EXPECT_TRUE(words.contains(QString::fromUtf8(wanted))) << wanted;
  }
  EXPECT_FALSE(words.contains(QStringLiteral("back pain"))) << "of no use to whoever helps in the street";
}

TEST_F(WalletCard, holdsForEverybodyInEveryLanguage) {
  for (const auto& sample : test::samplePeople()) {
    CardInput input = inputFor(sample.person);
    for (const auto one : {v1::CONDITION_BLOOD_THINNERS, v1::CONDITION_INSULIN, v1::CONDITION_SEIZURES,
                           v1::CONDITION_HEART_DISEASE})
      input.person.add_conditions(one);
    input.clinic.set_name("Department of rehabilitation, general hospital of the invented valley");
    for (const char* language : {"en", "es", "ar"}) write(input, language);
  }
}

TEST_F(WalletCard, whatDoesNotFitIsRefusedAndNotCutOff) {
  CardInput input = inputFor(test::transfemoralLeft());
  input.clinic.set_name(std::string(190, 'W'));
  input.clinic.set_hours(std::string(190, 'W'));
  input.name = QString(180, QLatin1Char('W'));
  const QString file = m_folder.filePath(QStringLiteral("never.pdf"));
  const auto pages = writeCard(input, {}, file);
  EXPECT_EQ(pages.status().code(), absl::StatusCode::kInvalidArgument);
  EXPECT_FALSE(QFile::exists(file));
}

// Another program's ruler: the frame is as wide as a bank card and as high as two (ISO/IEC 7810, ID-1: 85.60
// mm by 53.98 mm).
TEST_F(WalletCard, isTheSizeOfABankCard) {
  constexpr int kDots = 300;
  const QImage page = pageOf(write(inputFor(test::transfemoralLeft()), "en"), 1, kDots);
  const auto darkInColumn = [&page](int x) {
    int dark = 0;
    for (int y = 0; y < page.height(); ++y) dark += qGray(page.pixel(x, y)) < 128;
    return dark;
  };
  const int high = static_cast<int>(2 * 53.98 / 25.4 * kDots);
  std::vector<int> edges;
  for (int x = 0; x < page.width(); ++x) {
    if (darkInColumn(x) > high * 9 / 10) edges.push_back(x);
  }
  ASSERT_GE(edges.size(), 2U);
  EXPECT_NEAR((edges.back() - edges.front()) * 25.4 / kDots, 85.6, 0.6);
}

v1::Practice practiceOf(const v1::Programme& programme, const std::string& day, std::uint64_t number) {
  v1::Practice practice;
  practice.set_id(test::idOf(number));
  practice.set_revision(1);
  practice.set_person_id(programme.person_id());
  practice.set_programme_number(programme.number());
  practice.set_zone(programme.zone());
  practice.set_local_day(day);
  const absl::Time began =
      instantOf(absl::CivilMinute(*parseLocalDay(day)) + 570, *loadZone(programme.zone()));
  *practice.mutable_started_at() = toTimestamp(began);
  *practice.mutable_ended_at() = toTimestamp(began + absl::Minutes(10));
  practice.set_elapsed_ms(600000);
  practice.set_end(v1::PRACTICE_END_FINISHED);
  practice.set_origin(v1::ORIGIN_TIMED_HERE);
  practice.set_app_version("test");
  auto& entry = *practice.add_entries();
  entry.mutable_occasion()->set_entry_id(programme.entries(0).id());
  entry.mutable_occasion()->set_local_day(day);
  entry.set_exercise_id(programme.entries(0).exercise_id());
  entry.set_exercise_revision(1);
  entry.mutable_asked()->set_repetitions(16);
  entry.mutable_asked()->set_hold_ms(32000);
  entry.mutable_asked()->set_active_ms(128000);
  *entry.mutable_done() = entry.asked();
  entry.set_pain_before_0_10(2);
  entry.set_pain_after_0_10(3);
  entry.set_effort_0_10(5);
  entry.set_elapsed_ms(300000);
  return practice;
}

ReportInput reportInput() {
  ReportInput input;
  input.person = test::transfemoralLeft();
  input.identity.set_person_id(input.person.id());
  input.identity.set_given_name("Lena");
  input.identity.set_family_name("Fisk");
  input.identity.set_birth_date("1961-05-04");
  input.clinic = clinic();
  input.made_by = QStringLiteral("Ruth Adler");
  const auto programme = test::programmeOf(input.person, {test::entryOf("sit-to-stand", input.person, 100)});
  input.programmes = {programme};
  // Mondays, Wednesdays and Fridays of two weeks: six due; four done, the last with a fall.
  input.practices = {practiceOf(programme, "2026-11-02", 1), practiceOf(programme, "2026-11-04", 2),
                     practiceOf(programme, "2026-11-09", 3), practiceOf(programme, "2026-11-11", 4)};
  auto& fall = input.practices.back();
  fall.set_end(v1::PRACTICE_END_RED_FLAG);
  fall.set_stop_reason(v1::STOP_REASON_FALL);
  fall.add_red_flag_rule_ids("stop-fall");
  fall.mutable_entries(0)->set_skipped(v1::STOP_REASON_FALL);
  fall.mutable_entries(0)->mutable_done()->set_repetitions(4);
  fall.mutable_entries(0)->set_pain_after_0_10(7);
  fall.set_note("Slipped on the mat");
  input.first = absl::CivilDay(2026, 11, 2);
  input.last = absl::CivilDay(2026, 11, 15);
  input.today = absl::CivilDay(2026, 11, 16);
  input.heard_until = absl::CivilDay(2026, 11, 15);
  input.zone = *loadZone("Europe/Berlin");
  return input;
}

class Report : public ::testing::Test {
 protected:
  QString write(const ReportInput& input) {
    const QString file = m_folder.filePath(QStringLiteral("report.pdf"));
    const auto pages = writeReport(input, {}, Catalogue::builtIn(), RuleBook::builtIn(), file);
    EXPECT_TRUE(pages.ok()) << pages.status();
    EXPECT_EQ(pages.value_or(0), pagesOf(file));
    return file;
  }
  SheetFolder m_folder;
};

TEST_F(Report, saysPersonPeriodAdherenceAndItsDefinition) {
  const QString words = textOf(write(reportInput()));
  for (const char* wanted :
       {"Lena Fisk", "left, transfemoral", "K2", "Mon 2 Nov 2026 to Sun 15 Nov 2026", "number 1", "4 of 6",
        "67 %", "Sit to stand", "Ruth Adler", "14 of 14 days have data; practice on 4 of them"}) {
    EXPECT_TRUE(words.contains(QString::fromUtf8(wanted))) << wanted;
  }
  EXPECT_TRUE(words.contains(adherenceDefinition()));
}

v1::Measure measured(const std::string& kind, const std::string& unit, double value, const std::string& day,
                     std::uint64_t number) {
  v1::Measure measure;
  measure.set_id(test::idOf(number));
  measure.set_revision(1);
  measure.set_kind(kind);
  measure.set_unit(unit);
  measure.set_value(value);
  measure.set_local_day(day);
  *measure.mutable_taken_at() =
      toTimestamp(instantOf(absl::CivilMinute(*parseLocalDay(day)) + 600, absl::UTCTimeZone()));
  return measure;
}

// Vectors: Resnik and Borgia 2011 as the table has it, smallest detectable change of the timed up and go 3.6
// s at 90 % (from memory, says the table).
TEST_F(Report, setsMeasuresBesideTheirError) {
  ReportInput input = reportInput();
  input.measures = {measured("timed-up-and-go", "s", 24.5, "2026-10-01", 800),
                    measured("timed-up-and-go", "s", 16.0, "2026-11-10", 801),
                    measured("two-minute-walk", "m", 90, "2026-11-03", 802),
                    measured("timed-up-and-go", "s", 9.0, "2026-12-24", 803)};
  input.measures.push_back(measured("timed-up-and-go", "s", 99, "2026-11-11", 804));
  input.measures.back().set_withdrawn(true);
  const QString words = textOf(write(input));
  EXPECT_TRUE(words.contains(QStringLiteral("Outcome measures")));
  EXPECT_TRUE(words.contains(QStringLiteral("-8.5 s: better, beyond error"))) << words.toStdString();
  EXPECT_TRUE(words.contains(QStringLiteral("smallest detectable change (90 %)")));
  EXPECT_TRUE(words.contains(QStringLiteral("taken once: nothing to compare")));
  EXPECT_FALSE(words.contains(QStringLiteral("9.0 s"))) << "after the period";
  EXPECT_FALSE(words.contains(QStringLiteral("99"))) << "entered by mistake";
  input.measures[1].set_value(24.3);
  EXPECT_TRUE(textOf(write(input)).contains(QStringLiteral("within error: no change can be told")));
}

TEST_F(Report, tellsWearingTimeAndWhereTheSkinWasNotClear) {
  ReportInput input = reportInput();
  EXPECT_TRUE(textOf(write(input)).contains(QStringLiteral("No wearing time was told")));
  input.redness_min = 15;
  const auto worn = [&](const std::string& day, int minutes, v1::SkinSign sign, std::uint64_t number) {
    v1::WearBlock block;
    block.set_id(test::idOf(number));
    block.set_revision(1);
    block.set_local_day(day);
    const absl::Time on = instantOf(absl::CivilMinute(*parseLocalDay(day)) + 540, input.zone);
    *block.mutable_put_on_at() = toTimestamp(on);
    *block.mutable_taken_off_at() = toTimestamp(on + absl::Minutes(minutes));
    block.mutable_check()->add_signs(sign);
    return block;
  };
  input.wear_blocks = {worn("2026-11-03", 60, v1::SKIN_SIGN_CLEAR, 810),
                       worn("2026-11-04", 90, v1::SKIN_SIGN_BLISTER, 811),
                       worn("2026-12-24", 500, v1::SKIN_SIGN_OPEN_SKIN, 812)};
  const QString words = textOf(write(input));
  EXPECT_TRUE(words.contains(QStringLiteral("Mon 2 Nov 2026 2 75 min"))) << words.toStdString();
  EXPECT_TRUE(
      words.contains(QStringLiteral("Wed 4 Nov 2026: 09:00 to 10:30, 90 min. blister: a sign of harm")));
  EXPECT_FALSE(words.contains(QStringLiteral("Tue 3 Nov 2026: 09:00"))) << "clear";
  EXPECT_FALSE(words.contains(QStringLiteral("open skin"))) << "after the period";
}

// The record is in the clinic's language, whatever the person's.
TEST_F(Report, isWrittenInTheLanguageOfTheRecord) {
  ReportInput input = reportInput();
  input.person.set_language("ar");
  input.language = "es";
  const QString words = textOf(write(input));
  for (const char* wanted :
       {"Informe de progreso", "Adherencia", "días tienen datos", "Órdenes de suspensión",
        "Medidas de resultado", "Tiempo de uso y piel", "El dolor en el periodo"}) {
    EXPECT_TRUE(words.contains(QString::fromUtf8(wanted))) << wanted;
  }
  for (const char* english : {"Progress report", "Adherence", "Hold orders", "Week of", "Pain after"}) {
    EXPECT_FALSE(words.contains(QString::fromUtf8(english))) << english;
  }
  EXPECT_TRUE(words.contains(QString::fromUtf8("De la silla a estar de pie")))
      << "the exercise's title in Spanish";
}

TEST_F(Report, tellsStopsWithReasonAndTheRuleThatSpoke) {
  const QString words = textOf(write(reportInput()));
  EXPECT_TRUE(words.contains(QStringLiteral("a fall")));
  EXPECT_TRUE(words.contains(QStringLiteral("Slipped on the mat")));
  EXPECT_TRUE(words.contains(text(RuleBook::builtIn().rule("stop-fall")->words().at("en").therapist())));
  EXPECT_TRUE(words.contains(QStringLiteral("3 to 7"))) << "pain after over the period";
}

TEST_F(Report, noDataIsNeverNotDone) {
  ReportInput input = reportInput();
  input.practices.clear();
  input.heard_until.reset();
  const QString words = textOf(write(input));
  EXPECT_TRUE(words.contains(QStringLiteral("never heard from: 0 of 14 days have data")));
  EXPECT_TRUE(words.contains(QStringLiteral("6 no data")));
  EXPECT_FALSE(words.contains(QStringLiteral("not done")));
  EXPECT_TRUE(words.contains(QStringLiteral("nothing due")));
  EXPECT_FALSE(words.contains(QStringLiteral(" 0 %")));
}

TEST_F(Report, listsHoldsAndChangesOfProgramme) {
  ReportInput input = reportInput();
  v1::Programme second = input.programmes[0];
  second.set_number(2);
  second.set_effective_day("2026-11-13");
  second.mutable_issued_at()->set_seconds(1794528000);  // 2026-11-13 00:00 UTC
  second.mutable_entries(0)->mutable_dose()->mutable_sets()->set_repetitions(6);
  auto& answered = *second.mutable_entries(0)->add_overrides();
  answered.set_rule_id("mobility-under-usual");
  answered.set_reason("Seen in clinic, steady with the rail");
  input.programmes.push_back(second);
  v1::HoldOrder hold;
  hold.set_id(test::idOf(50));
  hold.set_number(1);
  hold.set_person_id(input.person.id());
  hold.set_clinic_id(test::idOf(2000));
  hold.set_signer_id(test::idOf(2001));
  hold.set_signer_name("Ruth Adler");
  hold.mutable_issued_at()->set_seconds(1794441600);
  hold.set_reason("Rest until I have seen the skin");
  input.holds = {hold};
  const QString words = textOf(write(input));
  for (const char* wanted :
       {"Rest until I have seen the skin", "6 times instead of 8", "Programme 2, signed on",
        "Seen in clinic, steady with the rail", "number 2 from Fri 13 Nov 2026"}) {
    EXPECT_TRUE(words.contains(QString::fromUtf8(wanted))) << wanted;
  }
}

TEST_F(Report, wordsFromOutsideCannotBecomeMarkup) {
  ReportInput input = reportInput();
  input.practices.back().set_note("<b>5 < 6 & \"so\"</b>");
  EXPECT_TRUE(textOf(write(input)).contains(QStringLiteral("<b>5 < 6 & \"so\"</b>")));
}

// common practice, no source: an age is read at a glance, so it is one number with its unit.
TEST(RecordWords, agesAreOneNumberWithItsUnit) {
  EXPECT_EQ(ageWords(absl::Seconds(59)), QStringLiteral("just now"));
  EXPECT_EQ(ageWords(absl::Minutes(20)), QStringLiteral("20 min"));
  EXPECT_EQ(ageWords(absl::Hours(25)), QStringLiteral("1 day"));
  EXPECT_EQ(ageWords(absl::Hours(49)), QStringLiteral("2 days"));
}

TEST(RecordWords, bothLimbsAreSaidWithTheirSides) {
  EXPECT_EQ(limbsWords(test::bothTranstibial()), QStringLiteral("left transtibial and right transtibial"));
  EXPECT_EQ(limbsWords(test::transfemoralLeft()), QStringLiteral("left, transfemoral"));
}

template <typename Value>
void everyValueHasWords(const google::protobuf::EnumDescriptor& type) {
  for (int i = 0; i < type.value_count(); ++i) {
    const auto value = static_cast<Value>(type.value(i)->number());
    if (type.value(i)->number() == 0) continue;
    EXPECT_NE(words(value), QStringLiteral("not given")) << type.value(i)->name();
  }
}

TEST(RecordWords, everyValueOfARecordHasWords) {
  everyValueHasWords<v1::Side>(*v1::Side_descriptor());
  everyValueHasWords<v1::LimbLossLevel>(*v1::LimbLossLevel_descriptor());
  everyValueHasWords<v1::KneeKind>(*v1::KneeKind_descriptor());
  everyValueHasWords<v1::FootKind>(*v1::FootKind_descriptor());
  everyValueHasWords<v1::MobilityLevel>(*v1::MobilityLevel_descriptor());
  everyValueHasWords<v1::Condition>(*v1::Condition_descriptor());
  everyValueHasWords<v1::WalkingAid>(*v1::WalkingAid_descriptor());
  everyValueHasWords<v1::Answer>(*v1::Answer_descriptor());
  everyValueHasWords<v1::Rails>(*v1::Rails_descriptor());
  everyValueHasWords<v1::Support>(*v1::Support_descriptor());
  everyValueHasWords<v1::SidePolicy>(*v1::SidePolicy_descriptor());
  everyValueHasWords<v1::Weekday>(*v1::Weekday_descriptor());
  everyValueHasWords<v1::StopReason>(*v1::StopReason_descriptor());
  everyValueHasWords<v1::PracticeEnd>(*v1::PracticeEnd_descriptor());
  everyValueHasWords<v1::ClockDoubt>(*v1::ClockDoubt_descriptor());
  everyValueHasWords<v1::Effect>(*v1::Effect_descriptor());
}

}  // namespace
}  // namespace newel::print

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
  const QGuiApplication application(argc, argv);
  ::testing::InitGoogleTest(&argc, argv);
  return RUN_ALL_TESTS();
}
