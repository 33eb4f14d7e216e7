#include "sync/common/retry_rule.h"

#include <gtest/gtest.h>

#include <set>

#include "tests/core/people/sample_random.h"

namespace newel {
namespace {

TEST(RetryRule, overloadIsRetriedAndNonsenseIsNot) {
  EXPECT_EQ(retryRule(absl::UnavailableError("")), RetryRule::SameCall);
  EXPECT_EQ(retryRule(absl::DeadlineExceededError("")), RetryRule::SameCall);
  EXPECT_EQ(retryRule(absl::ResourceExhaustedError("")), RetryRule::SameCall);
  EXPECT_EQ(retryRule(absl::AbortedError("")), RetryRule::FromRead);
  EXPECT_EQ(retryRule(absl::InvalidArgumentError("")), RetryRule::Never);
  EXPECT_EQ(retryRule(absl::PermissionDeniedError("")), RetryRule::AskPerson);
  EXPECT_EQ(retryRule(absl::FailedPreconditionError("")), RetryRule::AskPerson);
}

TEST(RetryRule, backOffDoublesUpToItsMostAndNeverLeavesItsBounds) {
  test::SampleRandom random(7);
  const absl::Duration base = absl::Seconds(1);
  const absl::Duration most = absl::Seconds(60);
  for (int failures = 1; failures < 80; ++failures) {
    absl::Duration whole = base;
    for (int i = 1; i < failures && whole < most; ++i) whole *= 2;
    whole = std::min(whole, most);
    for (int i = 0; i < 50; ++i) {
      const absl::Duration wait = backOff(failures, base, most, random);
      EXPECT_GE(wait, whole / 2);
      EXPECT_LE(wait, whole);
    }
  }
}

TEST(RetryRule, backOffSpreadsPhonesThatFailedTogether) {
  test::SampleRandom random(8);
  std::set<std::int64_t> waits;
  for (int i = 0; i < 100; ++i) {
    waits.insert(absl::ToInt64Milliseconds(backOff(6, absl::Seconds(1), absl::Minutes(5), random)));
  }
  EXPECT_GT(waits.size(), 90U);
}

}  // namespace
}  // namespace newel
