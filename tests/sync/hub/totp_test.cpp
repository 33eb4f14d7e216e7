#include "sync/hub/totp.h"

#include <gtest/gtest.h>

#include <utility>
#include <vector>

namespace newel {
namespace {

// RFC 6238 appendix B: SHA-1, eight digits; the secret is the ASCII text.
constexpr char kRfcSecret[] = "12345678901234567890";

TEST(Totp, givesTheVectorsOfRfc6238) {
  const std::vector<std::pair<std::int64_t, std::string>> vectors = {
      {59, "94287082"},         {1111111109, "07081804"}, {1111111111, "14050471"},
      {1234567890, "89005924"}, {2000000000, "69279037"}, {20000000000, "65353130"}};
  for (const auto& [seconds, code] : vectors) {
    EXPECT_EQ(hotpCode(kRfcSecret, totpStepAt(absl::FromUnixSeconds(seconds)), 8), code) << seconds;
  }
}

// RFC 4226 appendix D: the same secret, six digits, counters 0 to 9.
TEST(Totp, givesTheVectorsOfRfc4226) {
  const std::vector<std::string> codes = {"755224", "287082", "359152", "969429", "338314",
                                          "254676", "287922", "162583", "399871", "520489"};
  for (std::size_t i = 0; i < codes.size(); ++i) EXPECT_EQ(hotpCode(kRfcSecret, i, 6), codes[i]) << i;
}

TEST(Totp, stepsBeginAtRfcsTimes) {
  // RFC 6238 section 4.2: T is 1 at 59 s and 2 at 60 s.
  EXPECT_EQ(totpStepAt(absl::FromUnixSeconds(59)), 1U);
  EXPECT_EQ(totpStepAt(absl::FromUnixSeconds(60)), 2U);
  EXPECT_EQ(totpStepAt(absl::FromUnixSeconds(-5)), 0U);
}

TEST(Totp, oneStepEachWayIsTakenAndNoMore) {
  const absl::Time now = absl::FromUnixSeconds(1795600000);
  const std::uint64_t step = totpStepAt(now);
  for (std::int64_t off = -3; off <= 3; ++off) {
    const std::uint64_t other = step + static_cast<std::uint64_t>(off);
    const auto taken = totpStepOf(kRfcSecret, hotpCode(kRfcSecret, other, 6), now, 0);
    EXPECT_EQ(taken.has_value(), off >= -1 && off <= 1) << off;
    if (taken.has_value()) {
      EXPECT_EQ(*taken, other);
    }
  }
}

TEST(Totp, aStepCountsOnceAndNoEarlierOneAfterIt) {
  const absl::Time now = absl::FromUnixSeconds(1795600000);
  const std::uint64_t step = totpStepAt(now);
  const std::string code = hotpCode(kRfcSecret, step, 6);
  EXPECT_TRUE(totpStepOf(kRfcSecret, code, now, step - 1).has_value());
  EXPECT_FALSE(totpStepOf(kRfcSecret, code, now, step).has_value());
  EXPECT_FALSE(totpStepOf(kRfcSecret, hotpCode(kRfcSecret, step - 1, 6), now, step).has_value());
  EXPECT_TRUE(totpStepOf(kRfcSecret, hotpCode(kRfcSecret, step + 1, 6), now, step).has_value());
}

TEST(Totp, whatIsNoCodeIsRefused) {
  const absl::Time now = absl::FromUnixSeconds(1795600000);
  const std::string code = hotpCode(kRfcSecret, totpStepAt(now), 6);
  EXPECT_TRUE(totpStepOf(kRfcSecret, code.substr(0, 3) + " " + code.substr(3), now, 0).has_value());
  for (const std::string& bad : {std::string(), code.substr(1), code + "0", "x" + code.substr(1),
                                 std::string(6, '\0'), std::string(100000, ' ')}) {
    EXPECT_FALSE(totpStepOf(kRfcSecret, bad, now, 0).has_value());
  }
  EXPECT_FALSE(totpStepOf("another secret of 20", code, now, 0).has_value());
}

TEST(Totp, theUriSaysAllAndIsEncoded) {
  EXPECT_EQ(totpUri(kRfcSecret, "Clinic & Sons", "t.sample"),
            "otpauth://totp/Clinic%20%26%20Sons:t.sample?secret=GEZDGNBVGY3TQOJQGEZDGNBVGY3TQOJQ"
            "&issuer=Clinic%20%26%20Sons&algorithm=SHA1&digits=6&period=30");
}

}  // namespace
}  // namespace newel
