// How much one call may carry; both ends keep to it, and what is larger is refused for good.
#pragma once

#include <absl/time/time.h>

#include <cstddef>
#include <cstdint>

namespace newel {

// Sources: sync/protocol/wire.proto and home_service.proto, which promise these figures to both ends.
inline constexpr std::size_t kMostContentBytes = std::size_t{1} << 20U;    // of one record
inline constexpr int kMostRecordsACall = 100;                              // of one Offer
inline constexpr std::size_t kMostOfferBytes = (std::size_t{3} << 20U);    // of one Offer
inline constexpr std::size_t kMostMessageBytes = (std::size_t{4} << 20U);  // of any gRPC message
inline constexpr std::uint32_t kMostFetched = 200;                         // of one Fetch

// Of one part of a photo or clip; how large the whole may be: core/records/media_type.h. Ours, no source: a
// few seconds on a slow mobile network, so that little is lost when it is cut.
inline constexpr std::uint32_t kMostMediaPartBytes = std::uint32_t{256} << 10U;
// What a desk may leave with the hub for one person without a signature: unfinished uploads, all bytes.
inline constexpr std::uint32_t kMostMediaUploads = 8;
inline constexpr std::uint64_t kMostMediaWaiting = std::uint64_t{256} << 20U;

// Ours, common practice, no source: long enough for a slow mobile network, short enough that a person is
// told within half a minute.
inline constexpr absl::Duration kCallDeadline = absl::Seconds(20);
// home_service.proto: the hub says it is still there every 30 s.
inline constexpr absl::Duration kStillHere = absl::Seconds(30);
// A phone whose date is further off than this is told so. Ours, no source: beyond any honest drift.
inline constexpr absl::Duration kWrongDate = absl::Hours(1);

}  // namespace newel
