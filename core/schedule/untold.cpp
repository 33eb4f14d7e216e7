#include "core/schedule/untold.h"

#include "core/time/local_day.h"

namespace newel {
namespace {

const v1::Programme* inForceOn(const std::vector<v1::Programme>& programmes, absl::CivilDay day) {
  const v1::Programme* found = nullptr;
  for (const v1::Programme& programme : programmes) {
    const auto first = parseLocalDay(programme.effective_day());
    if (!first.ok() || *first > day) continue;
    if (found == nullptr || programme.number() > found->number()) found = &programme;
  }
  return found;
}

}  // namespace

std::vector<UntoldOccasion> untoldOccasions(const std::vector<v1::Programme>& programmes,
                                            absl::CivilDay today, int minute_now,
                                            const std::vector<v1::OccasionRef>& done) {
  std::vector<UntoldOccasion> untold;
  for (int back = 0; back < kUntoldDays; ++back) {
    const v1::Programme* const programme = inForceOn(programmes, today - back);
    if (programme == nullptr) continue;
    for (Occasion& occasion : dueOn(*programme, today - back, done)) {
      const bool to_come = back == 0 && static_cast<int>(occasion.window.from_min()) > minute_now;
      if (!to_come) untold.push_back({programme->number(), std::move(occasion)});
    }
  }
  return untold;
}

}  // namespace newel
