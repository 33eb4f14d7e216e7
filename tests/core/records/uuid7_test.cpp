#include "core/records/uuid7.h"

#include <gtest/gtest.h>

#include <set>

namespace newel {
namespace {

// RFC 9562 appendix A.6: unix_ts_ms 0x017F22E279B0, rand_a 0xCC3, rand_b 0x18C4DC0C0C07398F.
TEST(Uuid7, matchesTheExampleOfRfc9562) {
  const std::array<std::uint8_t, 10> random = {0x0C, 0xC3, 0x18, 0xC4, 0xDC, 0x0C, 0x0C, 0x07, 0x39, 0x8F};
  EXPECT_EQ(makeUuid7(0x017F22E279B0, random), "017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
}

TEST(Uuid7, setsVersionAndVariantWhateverTheRandomBytes) {
  std::array<std::uint8_t, 10> random{};
  random.fill(0xFF);
  EXPECT_TRUE(isUuid7(makeUuid7(1, random)));
  random.fill(0);
  EXPECT_TRUE(isUuid7(makeUuid7(1, random)));
}

TEST(Uuid7, sortsByTime) {
  std::array<std::uint8_t, 10> random{};
  random.fill(0xFF);
  const std::string early = makeUuid7(1000, random);
  random.fill(0);
  EXPECT_LT(early, makeUuid7(1001, random));
}

TEST(Uuid7, refusesOtherFormsAndVersions) {
  for (const char* bad : {"", "017f22e2-79b0-4cc3-98c4-dc0c0c07398f", "017F22E2-79B0-7CC3-98C4-DC0C0C07398F",
                          "017f22e279b07cc398c4dc0c0c07398f", "017f22e2-79b0-7cc3-18c4-dc0c0c07398f",
                          "017f22e2-79b0-7cc3-98c4-dc0c0c07398g", "017f22e2-79b0-7cc3-98c4-dc0c0c07398f0"}) {
    EXPECT_FALSE(isUuid7(bad)) << bad;
  }
}

}  // namespace
}  // namespace newel
