#include "sync/common/retry_rule.h"

#include <algorithm>
#include <array>

namespace newel {

RetryRule retryRule(const absl::Status& status) {
  switch (status.code()) {
    case absl::StatusCode::kUnavailable:
    case absl::StatusCode::kDeadlineExceeded:
    case absl::StatusCode::kResourceExhausted:
    case absl::StatusCode::kCancelled:
      return RetryRule::SameCall;
    case absl::StatusCode::kAborted:
    case absl::StatusCode::kAlreadyExists:
      return RetryRule::FromRead;
    case absl::StatusCode::kUnauthenticated:
    case absl::StatusCode::kPermissionDenied:
    case absl::StatusCode::kFailedPrecondition:
      return RetryRule::AskPerson;
    default:
      return RetryRule::Never;
  }
}

absl::Duration backOff(int failures, absl::Duration base, absl::Duration most, Random& random) {
  absl::Duration whole = base;
  for (int i = 1; i < failures && whole < most; ++i) whole *= 2;
  whole = std::min(whole, most);
  std::array<std::uint8_t, 4> bytes{};
  random.fill(bytes.data(), bytes.size());
  const std::uint32_t drawn = (std::uint32_t{bytes[0]} << 24U) | (std::uint32_t{bytes[1]} << 16U) |
                              (std::uint32_t{bytes[2]} << 8U) | bytes[3];
  const double part = static_cast<double>(drawn) / 4294967295.0;
  return whole / 2 + whole / 2 * part;
}

}  // namespace newel
