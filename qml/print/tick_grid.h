// The tick-off grid of a handout: one table a week, a row an exercise, a box for each time it is due.
#pragma once

#include <absl/status/statusor.h>

#include <memory>
#include <vector>

#include "core/library/catalogue.h"
#include "core/records/programme.pb.h"
#include "qml/print/paper.h"

namespace newel::print {

struct TickRow {
  QString title;
  // Monday first: how many boxes; 0: nothing due. Negative: that many boxes, and any days of the week count.
  int boxes[7] = {0, 0, 0, 0, 0, 0, 0};
  QString note;  // "any 3 days", may be empty
};
struct TickWeek {
  QString title;
  QString days[7];
  std::vector<TickRow> rows;
};

// The weeks of `programme` from its first to its last day, at most `most`, by core/schedule. kInvalidArgument
// when the programme does not pass check().
absl::StatusOr<std::vector<TickWeek>> tickWeeks(const v1::Programme& programme, const Catalogue& catalogue,
                                                const std::string& language, int most);

std::unique_ptr<PaperBlock> tickBlock(TickWeek week, double points);

}  // namespace newel::print
