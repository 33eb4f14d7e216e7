#include "sync/hub/throttle.h"

#include <gtest/gtest.h>

namespace newel {
namespace {

class ThrottleRule : public testing::Test {
 protected:
  SimulatedClock m_clock{absl::FromUnixSeconds(1795600000)};
  Throttle m_throttle{&m_clock};
};

TEST_F(ThrottleRule, waitsGrowAfterFiveFailuresUpToFiveMinutes) {
  for (int i = 0; i < 4; ++i) m_throttle.failed("a");
  EXPECT_EQ(m_throttle.waitFor("a"), absl::ZeroDuration());
  m_throttle.failed("a");
  EXPECT_EQ(m_throttle.waitFor("a"), absl::Seconds(2));
  m_throttle.failed("a");
  EXPECT_EQ(m_throttle.waitFor("a"), absl::Seconds(4));
  for (int i = 0; i < 20; ++i) m_throttle.failed("a");
  EXPECT_EQ(m_throttle.waitFor("a"), absl::Minutes(5));
  m_clock.advance(absl::Minutes(5));
  EXPECT_EQ(m_throttle.waitFor("a"), absl::ZeroDuration());
}

// ASVS 6.1.1: no malicious lock-out.
TEST_F(ThrottleRule, hundredFailuresOfOneDoNotSlowAnother) {
  for (int i = 0; i < 100; ++i) m_throttle.failed("owner\nfrom a stranger");
  EXPECT_GT(m_throttle.waitFor("owner\nfrom a stranger"), absl::ZeroDuration());
  EXPECT_EQ(m_throttle.waitFor("owner\nfrom her desk"), absl::ZeroDuration());
}

TEST_F(ThrottleRule, successAndTimeForgive) {
  for (int i = 0; i < 10; ++i) m_throttle.failed("a");
  m_throttle.succeeded("a");
  EXPECT_EQ(m_throttle.waitFor("a"), absl::ZeroDuration());
  for (int i = 0; i < 4; ++i) m_throttle.failed("a");
  m_clock.advance(absl::Minutes(16));
  EXPECT_EQ(m_throttle.waitFor("a"), absl::ZeroDuration());
  m_throttle.failed("a");
  EXPECT_EQ(m_throttle.waitFor("a"), absl::ZeroDuration()) << "what was forgotten must not come back";
}

TEST_F(ThrottleRule, settingTheDateForgivesNothing) {
  for (int i = 0; i < 6; ++i) m_throttle.failed("a");
  m_clock.setWall(m_clock.wall() + absl::Hours(24 * 400));
  EXPECT_EQ(m_throttle.waitFor("a"), absl::Seconds(4));
}

}  // namespace
}  // namespace newel
