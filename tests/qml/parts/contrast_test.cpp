// WCAG's contrast formula against outside values, and every pair that the theme allows.
#include <gtest/gtest.h>

#include "qml/parts/palette.h"

namespace newel::parts {
namespace {

// Source of the vectors: W3C WCAG 2.2, definitions "relative luminance" and "contrast ratio"; values worked
// out outside this program with the same formula (standards.md, section 4).
TEST(Contrast, formulaGivesThePublishedRatios) {
  EXPECT_NEAR(contrast(0x000000, 0xFFFFFF), 21.0, 0.001);
  EXPECT_NEAR(contrast(0x767676, 0xFFFFFF), 4.542, 0.001);
  EXPECT_NEAR(contrast(0x777777, 0xFFFFFF), 4.478, 0.001);
  EXPECT_NEAR(contrast(0x949494, 0xFFFFFF), 3.033, 0.001);
  EXPECT_NEAR(contrast(0x959595, 0xFFFFFF), 2.995, 0.001);
  EXPECT_NEAR(contrast(0x595959, 0xFFFFFF), 7.005, 0.001);
  EXPECT_NEAR(contrast(0x0000FF, 0xFFFFFF), 8.592, 0.001);
  EXPECT_NEAR(contrast(0xFF0000, 0xFFFFFF), 3.998, 0.001);
  EXPECT_NEAR(contrast(0x0072B2, 0xFFFFFF), 5.185, 0.001);
  EXPECT_NEAR(contrast(0xD55E00, 0xFFFFFF), 3.867, 0.001);
  EXPECT_NEAR(contrast(0x009E73, 0xFFFFFF), 3.421, 0.001);
  EXPECT_NEAR(contrast(0xE69F00, 0xFFFFFF), 2.252, 0.001);
  EXPECT_NEAR(contrast(0xE69F00, 0x000000), 9.324, 0.001);
  EXPECT_NEAR(contrast(0x0072B2, 0xD55E00), 1.341, 0.001);
}

TEST(Contrast, orderOfTheColoursDoesNotMatter) {
  EXPECT_DOUBLE_EQ(contrast(0x0B5A5E, 0xFAF6EE), contrast(0xFAF6EE, 0x0B5A5E));
}

// The ratios that the design states for light, to the digit it gives.
TEST(Contrast, lightRatiosAreThoseOfTheDesign) {
  EXPECT_NEAR(contrast(kLight.ink, kLight.paper), 13.6, 0.05);
  EXPECT_NEAR(contrast(kLight.soft, kLight.paper), 5.8, 0.05);
  EXPECT_NEAR(contrast(kLight.rail, kLight.paper), 7.4, 0.05);
  EXPECT_NEAR(contrast(kLight.brass, kLight.paper), 5.5, 0.05);
  EXPECT_NEAR(contrast(kLight.stop, kLight.paper), 7.0, 0.05);
  EXPECT_NEAR(contrast(kLight.good, kLight.paper), 6.6, 0.05);
}

TEST(Contrast, everyTextPairReachesAA) {
  for (const Palette& palette : {kLight, kDark}) {
    for (const Pair& pair : textPairs(palette)) {
      EXPECT_GE(contrast(pair.text, pair.ground), 4.5)
          << (palette.paper == kLight.paper ? "light: " : "dark: ") << pair.name;
    }
  }
}

// WCAG 2.2 SC 1.4.6, for who asked for it.
TEST(Contrast, everyTextPairOfTheStrongPalettesReachesAAA) {
  for (const Palette& palette : {kLightStrong, kDarkStrong}) {
    for (const Pair& pair : textPairs(palette)) {
      EXPECT_GE(contrast(pair.text, pair.ground), 7.0)
          << (palette.paper == kLightStrong.paper ? "light: " : "dark: ") << pair.name;
    }
    EXPECT_GE(contrast(palette.groove, palette.paper), 3.0);
    EXPECT_GE(contrast(palette.groove, palette.sheet), 3.0);
  }
}

// WCAG 2.2 SC 1.4.11: edges of controls, the focus ring, posts and treads against what they lie on.
TEST(Contrast, everyEdgeAndStrokeReachesThreeToOne) {
  for (const Palette& p : {kLight, kDark, kLightStrong, kDarkStrong}) {
    for (const std::uint32_t ground : {p.paper, p.sheet}) {
      for (const std::uint32_t stroke : {p.ink, p.soft, p.rail, p.brass, p.stop, p.good}) {
        EXPECT_GE(contrast(stroke, ground), 3.0);
      }
    }
  }
}

}  // namespace
}  // namespace newel::parts
