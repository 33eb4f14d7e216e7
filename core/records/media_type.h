// What a photo or a clip is, told from its first bytes, and how large it may be. Not here: whether the rest
// of it is what it should be, and cleaning it (sync/common/media_clean.h).
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include "core/records/programme.pb.h"

namespace newel {

// Ours, common practice, no source: a photo for a phone's screen needs less than half of its bound; a clip of
// half a minute at 720 lines fits; a programme's media stay a fraction of a cheap phone's storage and of a
// month's mobile data.
inline constexpr std::uint64_t kMostPhotoBytes = std::uint64_t{1} << 20U;
inline constexpr std::uint64_t kMostClipBytes = std::uint64_t{16} << 20U;
inline constexpr std::uint64_t kMostProgrammeMediaBytes = std::uint64_t{64} << 20U;

// UNSPECIFIED for everything else. 16 bytes are enough to tell by.
// Sources: JPEG ITU-T T.81 B.1.1.3; PNG (W3C) 5.2; ISO/IEC 14496-12 4.3; EBML RFC 8794 11.2.1.
v1::MediaType sniffMedia(std::string_view content);

bool isPhoto(v1::MediaType type);
bool isClip(v1::MediaType type);
// 0 for UNSPECIFIED.
std::uint64_t mostBytesOf(v1::MediaType type);

// Every photo and clip that the entries name, in their order; pointers into `programme`.
std::vector<const v1::MediaRef*> mediaNamedBy(const v1::Programme& programme);

}  // namespace newel
