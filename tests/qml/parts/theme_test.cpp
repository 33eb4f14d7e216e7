// The theme's scale and its settings.
#include "qml/parts/theme.h"

#include <gtest/gtest.h>

#include <QtGui/QFontDatabase>
#include <QtGui/QFontMetricsF>
#include <QtGui/QGuiApplication>

namespace newel::parts {
namespace {

TEST(Theme, bodyIsEighteenAtLeastAtHundredPercent) {
  Theme theme;
  EXPECT_GE(theme.body(), 18);  // low vision: body text of 18 px or more at 100 % (the project's own rule)
}

TEST(Theme, textGrowsToTwoHundredPercentAndNoFurther) {
  Theme theme;
  const int at_100 = theme.body();
  theme.setTextPercent(200);
  EXPECT_NEAR(theme.scale(), 2.0, 1e-9);
  EXPECT_GE(theme.body(), at_100);
  EXPECT_EQ(theme.body(), 36);
  theme.setTextPercent(900);
  EXPECT_EQ(theme.textPercent(), 200);
  theme.setTextPercent(10);
  EXPECT_EQ(theme.textPercent(), 100);
}

TEST(Theme, changingAnythingIsTold) {
  Theme theme;
  int told = 0;
  QObject::connect(&theme, &Theme::changed, [&told] { ++told; });
  theme.setTextPercent(150);
  theme.setTextPercent(150);
  theme.setDark(!theme.dark());
  EXPECT_EQ(told, 2);
}

TEST(Theme, darkTakesTheDarkPalette) {
  Theme theme;
  theme.setDark(true);
  EXPECT_EQ(theme.paper(), QColor(0x12, 0x19, 0x1A));
  theme.setDark(false);
  EXPECT_EQ(theme.paper(), QColor(0xFA, 0xF6, 0xEE));
}

TEST(Theme, moreContrastHasPalettesOfItsOwnLightAndDark) {
  Theme theme;
  theme.setDark(false);
  theme.setStrong(true);
  EXPECT_EQ(theme.paper(), QColor(0xFF, 0xFF, 0xFF));
  theme.setDark(true);
  EXPECT_EQ(theme.paper(), QColor(0x00, 0x00, 0x00));
  theme.setStrong(false);
  EXPECT_EQ(theme.paper(), QColor(0x12, 0x19, 0x1A));
}

TEST(Theme, theFontIsNotoSansAndItsFiguresAreOfEqualWidth) {
  ASSERT_TRUE(QFontDatabase::hasFamily(QStringLiteral("Noto Sans"))) << "package fonts-noto-core is missing";
  QFont font = QGuiApplication::font();
  font.setPixelSize(96);
  font.setBold(true);
  const QFontMetricsF metrics(font);
  for (const QChar digit : QStringLiteral("123456789")) {
    EXPECT_DOUBLE_EQ(metrics.horizontalAdvance(digit), metrics.horizontalAdvance(QChar(u'0')));
  }
}

// 10 mm on a 6-inch screen of 412x915 dp: the diagonal is 152.4 mm for 1003 dp, so 10 mm is 66 dp.
TEST(Theme, theNumeralIsTenMillimetresHigh) {
  Theme theme;
  QFont font = QGuiApplication::font();
  font.setPixelSize(theme.numeral());
  font.setBold(true);
  EXPECT_GE(QFontMetricsF(font).tightBoundingRect(QStringLiteral("0")).height(), 66);
}

}  // namespace
}  // namespace newel::parts
