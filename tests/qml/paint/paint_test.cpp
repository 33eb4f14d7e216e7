// The adapter that paints figures with QPainter: the same picture as the SVG text gives through another
// library's renderer, and what a picture must never do.
#include <gtest/gtest.h>

#include <QtCore/QFile>
#include <QtCore/QProcess>
#include <QtCore/QTemporaryDir>
#include <QtGui/QGuiApplication>
#include <QtGui/QImage>
#include <algorithm>
#include <cmath>
#include <map>

#include "core/figure/svg.h"
#include "qml/paint/contact_sheet.h"
#include "qml/paint/drawing_painter.h"
#include "tests/core/figure/count_allocations.h"

namespace newel::paint {
namespace {

constexpr int kWidth = 480;

FigureBody bodyLeft(v1::LimbLossLevel level) {
  FigureBody body;
  body.left.level = level;
  body.left.prosthesis_on = true;
  return body;
}

QImage painted(const Drawing& drawing) {
  const double aspect = static_cast<double>(drawing.frame.width()) / drawing.frame.height();
  QImage image(kWidth, static_cast<int>(std::ceil(kWidth / aspect)), QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  DrawingPainter().paint(painter, drawing, QRectF(0, 0, kWidth, kWidth / aspect));
  return image;
}

// The same drawing through our SVG text and librsvg.
QImage throughSvg(const Drawing& drawing, const QTemporaryDir& folder) {
  const QString svg = folder.filePath(QStringLiteral("f.svg"));
  const QString png = folder.filePath(QStringLiteral("f.png"));
  QFile file(svg);
  if (!file.open(QIODevice::WriteOnly)) return {};
  file.write(QByteArray::fromStdString(toSvg(drawing, kWidth, "t", "d")));
  file.close();
  QProcess::execute(QStringLiteral("rsvg-convert"),
                    {QStringLiteral("-b"), QStringLiteral("white"), QStringLiteral("-w"),
                     QString::number(kWidth), svg, QStringLiteral("-o"), png});
  return QImage(png).convertToFormat(QImage::Format_RGB32);
}

// Share of pixels that differ by more than the softness of an edge.
double difference(const QImage& a, const QImage& b) {
  const int height = std::min(a.height(), b.height());
  int other = 0;
  for (int y = 0; y < height; ++y) {
    for (int x = 0; x < a.width(); ++x) {
      const QRgb p = a.pixel(x, y);
      const QRgb q = b.pixel(x, y);
      const int off =
          std::abs(qRed(p) - qRed(q)) + std::abs(qGreen(p) - qGreen(q)) + std::abs(qBlue(p) - qBlue(q));
      if (off > 120) ++other;
    }
  }
  return static_cast<double>(other) / (a.width() * height);
}

class PaintedClip : public testing::TestWithParam<std::string> {};

// librsvg is the reference: an independent renderer of a published format.
TEST_P(PaintedClip, isThePictureThatTheSvgGives) {
  const QTemporaryDir folder;
  auto figure = Figure::make(GetParam(), bodyLeft(v1::LIMB_LOSS_LEVEL_TRANSFEMORAL));
  ASSERT_TRUE(figure.ok()) << figure.status();
  for (const Moment& moment : figure->keyMoments(2)) {
    const Drawing& drawing = figure->draw(moment);
    const QImage ours = painted(drawing);
    const QImage theirs = throughSvg(drawing, folder);
    ASSERT_FALSE(theirs.isNull()) << "rsvg-convert (librsvg2-bin) is needed";
    EXPECT_LT(difference(ours, theirs), 0.01);
  }
}

std::vector<std::string> clipIds() {
  std::vector<std::string> ids;
  for (const auto& clip : ClipBook::builtIn().clips()) ids.push_back(clip.exercise_id());
  return ids;
}

std::string clipName(const testing::TestParamInfo<std::string>& info) {
  std::string name = info.param;
  std::replace(name.begin(), name.end(), '-', '_');
  return name;
}

INSTANTIATE_TEST_SUITE_P(Clips, PaintedClip, testing::ValuesIn(clipIds()), clipName);

// QPainter itself makes one small object for each path it fills (qtVectorPathForPath, Qt 6.4); we add
// nothing.
TEST(DrawingPainter, makesNothingNewAfterTheFirstPictures) {
  if (newel::allocationsSoFar() < 0) GTEST_SKIP() << "the sanitizer keeps the heap for itself";
  auto figure = Figure::make("stairs-one-at-a-time", bodyLeft(v1::LIMB_LOSS_LEVEL_TRANSFEMORAL));
  ASSERT_TRUE(figure.ok());
  QImage image(kWidth, kWidth, QImage::Format_RGB32);
  QPainter to(&image);
  DrawingPainter painter;
  painter.paint(to, figure->draw(figure->momentOfRun(0.1)), image.rect());
  for (int i = 0; i < 20; ++i) {
    const Drawing& drawing = figure->draw(figure->momentOfRun(0.1 + 0.002 * i));
    const long before = newel::allocationsSoFar();
    painter.paint(to, drawing, image.rect());
    EXPECT_LE(newel::allocationsSoFar() - before, static_cast<long>(drawing.ops.size()) + 8) << i;
  }
}

TEST(DrawingPainter, tellsAnotherPictureApart) {
  auto one = Figure::make("sit-to-stand", bodyLeft(v1::LIMB_LOSS_LEVEL_TRANSFEMORAL));
  ASSERT_TRUE(one.ok());
  const QImage start = painted(one->draw(one->momentOfRun(0)));
  const QImage later = painted(one->draw(one->momentOfRun(0.3)));
  EXPECT_GT(difference(start, later), 0.02);
}

TEST(DrawingPainter, staysInItsPlace) {
  auto figure = Figure::make("stairs-one-at-a-time", bodyLeft(v1::LIMB_LOSS_LEVEL_TRANSTIBIAL));
  ASSERT_TRUE(figure.ok());
  QImage image(300, 300, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  DrawingPainter().paint(painter, figure->draw(figure->momentOfRun(0.2)), QRectF(100, 100, 100, 100));
  painter.end();
  for (int y = 0; y < 300; ++y) {
    for (int x = 0; x < 300; ++x) {
      const bool inside = x >= 100 && x < 200 && y >= 100 && y < 200;
      if (inside) continue;
      ASSERT_EQ(image.pixel(x, y), qRgb(255, 255, 255)) << x << "," << y;
    }
  }
}

// Letters come in any script, as outlines that turn with nothing.
TEST(DrawingPainter, lettersTheSidesInThePersonsLanguage) {
  std::map<std::string, QImage> pictures;
  for (const char* language : {"en", "es", "ar"}) {
    auto figure =
        Figure::make("weight-shift-side", bodyLeft(v1::LIMB_LOSS_LEVEL_TRANSTIBIAL), lettered({}, language));
    ASSERT_TRUE(figure.ok());
    pictures[language] = painted(figure->draw(figure->momentOfRun(0)));
  }
  EXPECT_NE(pictures["en"], pictures["es"]);
  EXPECT_NE(pictures["en"], pictures["ar"]);
  EXPECT_LT(difference(pictures["en"], pictures["ar"]), 0.02) << "only the letters are others";
}

TEST(ContactSheet, hasAllExercises) {
  const auto sheet = contactSheet(bodyLeft(v1::LIMB_LOSS_LEVEL_TRANSFEMORAL), "es");
  ASSERT_TRUE(sheet.ok()) << sheet.status();
  EXPECT_GT(sheet->height(), static_cast<int>(Catalogue::builtIn().exercises().size()) / 3 * 200);
  const QString keep = qEnvironmentVariable("NEWEL_SHOTS");
  EXPECT_TRUE(keep.isEmpty() || sheet->save(keep + QStringLiteral("/contact-sheet.png")));
}

}  // namespace
}  // namespace newel::paint

int main(int argc, char** argv) {
  if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
  testing::InitGoogleTest(&argc, argv);
  const QGuiApplication app(argc, argv);
  return RUN_ALL_TESTS();
}
