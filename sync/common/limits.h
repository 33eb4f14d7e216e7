// How much one call may carry; both ends keep to it, and what is larger is refused for good.
#pragma once

#include <absl/time/time.h>

#include <cstddef>

namespace newel {

// Sources: sync/protocol/wire.proto and home_service.proto, which promise these figures to both ends.
inline constexpr std::size_t kMostContentBytes = std::size_t{1} << 20U;    // of one record
inline constexpr int kMostRecordsACall = 100;                              // of one Offer
inline constexpr std::size_t kMostOfferBytes = (std::size_t{3} << 20U);    // of one Offer
inline constexpr std::size_t kMostMessageBytes = (std::size_t{4} << 20U);  // of any gRPC message
inline constexpr std::uint32_t kMostFetched = 200;                         // of one Fetch

// Ours, common practice, no source: long enough for a slow mobile network, short enough that a person is
// told within half a minute.
inline constexpr absl::Duration kCallDeadline = absl::Seconds(20);
// home_service.proto: the hub says it is still there every 30 s.
inline constexpr absl::Duration kStillHere = absl::Seconds(30);
// A phone whose date is further off than this is told so. Ours, no source: beyond any honest drift.
inline constexpr absl::Duration kWrongDate = absl::Hours(1);

}  // namespace newel
