// A contact sheet: every exercise that has a clip, key poses side by side, as one SVG text. For looking at
// the figures, for handouts' proofs. Not here: a single picture (svg.h).
#pragma once

#include <absl/status/statusor.h>

#include <string>
#include <vector>

#include "core/figure/figure.h"

namespace newel {

// One row for each exercise, `poses` (1 to 6) pictures each. An empty `exercise_ids` means all clips. The
// body wears its prosthesis where the exercise says so, has none on where it says OFF, and wears `either`
// where both will do. kNotFound when an id has no clip.
absl::StatusOr<std::string> figureSheet(const FigureBody& body, int poses, const std::string& language,
                                        const std::vector<std::string>& exercise_ids = {},
                                        v1::ProsthesisUse either = v1::PROSTHESIS_USE_ON,
                                        const FigureOptions& options = {},
                                        const Catalogue& catalogue = Catalogue::builtIn(),
                                        const ClipBook& clips = ClipBook::builtIn());

}  // namespace newel
