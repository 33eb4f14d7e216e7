// The real clock of this machine; made once in a program's main and passed on.
#pragma once

#include <memory>

#include "core/time/clock.h"

namespace newel::platform {

// elapsed() counts suspend (CLOCK_BOOTTIME on Linux). Thread-safe.
std::unique_ptr<Clock> makeSystemClock();

}  // namespace newel::platform
