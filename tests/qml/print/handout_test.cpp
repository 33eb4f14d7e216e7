// Paper for real: written as PDF, read back with pdftotext, as a reader would get it.
#include <QtCore/QProcess>
#include <QtCore/QRegularExpression>
#include <array>
#include <set>

#include "core/figure/palette.h"
#include "core/practice/compile.h"
#include "qml/print/record_words.h"
#include "tests/core/people/sample_people.h"
#include "tests/qml/print/sheets.h"

namespace newel::print {
namespace {

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

}  // namespace
}  // namespace newel::print
