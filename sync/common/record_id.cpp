#include "sync/common/record_id.h"

#include <array>

#include "core/records/uuid7.h"

namespace newel {

std::string newRecordId(const Clock& clock, Random& random) {
  std::array<std::uint8_t, 10> bytes{};
  random.fill(bytes.data(), bytes.size());
  return makeUuid7(absl::ToUnixMillis(clock.wall()), bytes);
}

}  // namespace newel
