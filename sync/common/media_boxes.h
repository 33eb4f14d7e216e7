// Boxes of ISO base media (ISO/IEC 14496-12 section 4.2) in a buffer. For sync/common alone.
#pragma once

#include <absl/status/status.h>

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>

namespace newel {

struct Box {
  std::string_view type;  // into the buffer: valid until it changes
  std::size_t at = 0;     // of its length
  std::size_t body = 0;   // behind length and type
  std::size_t end = 0;
};

// The box at `at`, within `end`; false when none fits there. A length of 0 reaches to `end`.
bool readBox(std::string_view bytes, std::size_t at, std::size_t end, Box& box);

// Calls `each` for every box from `at` to `end`, until it is not OK. kInvalidArgument when they do not fill
// the place; up to seven bytes that QuickTime leaves behind the last one are not an error.
absl::Status eachBox(std::string_view bytes, std::size_t at, std::size_t end,
                     const std::function<absl::Status(const Box&)>& each);

// The first child of `type`; false: none.
bool findBox(std::string_view bytes, const Box& parent, std::string_view type, Box& found);

// Becomes a "free" box of the same length with zeros in it: nothing behind it moves.
void blankBox(std::string& bytes, const Box& box);

// Zeroes the samples of the track in `trak`, wherever in the file they lie. kInvalidArgument when its tables
// do not say where that is.
absl::Status blankSamples(std::string& bytes, const Box& trak);

}  // namespace newel
