// How a rest between sets divides. For the compiler of timelines and the catalogue's checks, which must
// agree.
#pragma once

#include <cstdint>

namespace newel {

// A rest long enough ends with getting ready again: whoever sat down must be back in place when the set
// begins. Seconds of plain rest out of `rest_s`; the remainder, if any, is get-ready. At least five seconds
// of rest are left, else all of it is rest and the person stays in place (common practice, no source).
inline std::uint32_t plainRestSeconds(std::uint32_t rest_s, std::uint32_t get_ready_s) {
  constexpr std::uint32_t kLeastRest = 5;
  return rest_s >= get_ready_s + kLeastRest ? rest_s - get_ready_s : rest_s;
}

}  // namespace newel
