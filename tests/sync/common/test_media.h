// Photos and clips for tests: made here, or kept in tests/data/media.
#pragma once

#include <cstdint>
#include <string>

#include "core/records/media.pb.h"
#include "core/records/programme.pb.h"

namespace newel::test {

// A PNG as a reader takes it, clean already: some pixels of one colour and about `more` bytes that no
// compression takes away.
std::string photoOfColour(std::uint32_t colour, std::size_t more = 0);
// What a programme says of `content`.
v1::MediaRef refTo(const std::string& content, const std::string& words);
// tests/data/media.
std::string mediaFile(const std::string& name);

}  // namespace newel::test
