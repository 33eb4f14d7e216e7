// Symmetry formulas on a published table.
#include "core/progress/symmetry.h"

#include <gtest/gtest.h>

#include <limits>

namespace newel {
namespace {

struct Row {
  double a, b, difference, ratio, of_first, index, half_index, share, angle;
};

// Published fictive step lengths in metres: Omics International 2329-9096-2-201, table 1, two decimals. The
// ratio of the second row is 1.475, printed as 1.48.
constexpr Row kTable[] = {
    {0.39, 0.25, 0.14, 1.56, 35.90, 43.75, 21.88, 60.94, -13.71},
    {0.59, 0.40, 0.19, 1.475, 32.20, 38.38, 19.19, 59.60, -12.07},
    {0.47, 0.37, 0.10, 1.27, 21.28, 23.81, 11.90, 55.95, -7.54},
};

TEST(Symmetry, everyFormulaMatchesThePublishedTable) {
  for (const Row& row : kTable) {
    const auto symmetry = symmetryOf(row.a, row.b);
    ASSERT_TRUE(symmetry.ok());
    constexpr double kHalfADigit = 0.0051;
    EXPECT_NEAR(symmetry->difference, row.difference, kHalfADigit);
    EXPECT_NEAR(symmetry->ratio, row.ratio, kHalfADigit);
    EXPECT_NEAR(symmetry->of_first_percent, row.of_first, kHalfADigit);
    EXPECT_NEAR(symmetry->index_percent, row.index, kHalfADigit);
    EXPECT_NEAR(symmetry->half_index_percent, row.half_index, kHalfADigit);
    EXPECT_NEAR(symmetry->share_percent, row.share, kHalfADigit);
    EXPECT_NEAR(symmetry->angle_percent, row.angle, kHalfADigit);
  }
}

TEST(Symmetry, evenSidesAreZero) {
  const auto symmetry = symmetryOf(0.5, 0.5);
  EXPECT_EQ(symmetry->index_percent, 0);
  EXPECT_EQ(symmetry->ratio, 1);
  EXPECT_NEAR(symmetry->angle_percent, 0, 1e-12);
}

TEST(Symmetry, mirroredStepsDoNotAverageToEven) {
  // The same table's mean column: index values of opposite sign average to 0; their sizes do not.
  const double one = symmetryOf(0.39, 0.25)->index_percent;
  const double other = symmetryOf(0.25, 0.39)->index_percent;
  EXPECT_NEAR(one + other, 0, 1e-9);
  EXPECT_NEAR(meanIndexSize({{0.39, 0.25}, {0.25, 0.39}}).value(), 43.75, 0.005);
}

TEST(Symmetry, meanOfThePublishedRows) {
  // (43.75 + 38.38 + 23.81) / 3, from the same table.
  EXPECT_NEAR(meanIndexSize({{0.39, 0.25}, {0.40, 0.59}, {0.47, 0.37}}).value(), 35.31, 0.01);
}

TEST(Symmetry, hasNoMeaningUnlessBothSidesAreOverZero) {
  EXPECT_FALSE(symmetryOf(0, 0.4).ok());
  EXPECT_FALSE(symmetryOf(0.4, 0).ok());
  EXPECT_FALSE(symmetryOf(-0.4, 0.4).ok());
  EXPECT_FALSE(symmetryOf(std::numeric_limits<double>::quiet_NaN(), 0.4).ok());
  EXPECT_FALSE(symmetryOf(std::numeric_limits<double>::infinity(), 0.4).ok());
  EXPECT_FALSE(meanIndexSize({}).ok());
  const auto bad = meanIndexSize({{0.4, 0.4}, {0.4, 0}});
  EXPECT_EQ(std::string(bad.status().message()).rfind("pair 2: ", 0), 0U);
}

}  // namespace
}  // namespace newel
