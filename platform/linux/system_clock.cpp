#include <absl/time/clock.h>
#include <time.h>

#include "platform/clock.h"

namespace newel::platform {
namespace {

class SystemClock : public Clock {
 public:
  absl::Time wall() const override { return absl::Now(); }
  absl::Duration elapsed() const override {
    // The boot-time clock goes on in suspend; the monotonic one does not.
    timespec now{};
    clock_gettime(CLOCK_BOOTTIME, &now);
    return absl::DurationFromTimespec(now);
  }
};

}  // namespace

std::unique_ptr<Clock> makeSystemClock() { return std::make_unique<SystemClock>(); }

}  // namespace newel::platform
