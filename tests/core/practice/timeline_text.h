// A timeline as text that a therapist can read, for golden files. For tests alone.
#pragma once

#include <string>

#include "core/records/timeline.pb.h"

namespace newel::test {

// One line a beat: start and length in seconds, kind, set and repetition, side and role, what is said, what
// is shown (when it is not the same), marks.
std::string timelineText(const v1::Timeline& timeline);

}  // namespace newel::test
