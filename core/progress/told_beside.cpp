#include "core/progress/told_beside.h"

#include <algorithm>

#include "core/schedule/wear_plan.h"
#include "core/time/local_day.h"

namespace newel {

std::vector<ToldSign> skinSignsWhenWorn(const std::vector<v1::Programme>& programmes,
                                        const std::vector<v1::WearBlock>& blocks) {
  const auto last = std::find_if(programmes.rbegin(), programmes.rend(),
                                 [](const v1::Programme& programme) { return programme.has_wear_plan(); });
  std::vector<ToldSign> signs;
  if (last == programmes.rend()) return signs;
  for (const v1::WearBlock& block : blocks) {
    const SkinVerdict verdict = skinVerdict(block, last->wear_plan());
    if (verdict == SkinVerdict::Harm) signs.push_back({toTime(block.taken_off_at()), "wear-harm"});
    if (verdict == SkinVerdict::TooRed) signs.push_back({toTime(block.taken_off_at()), "wear-too-red"});
  }
  return signs;
}

std::vector<MeasureDue> measuresWanted(const v1::Programme& programme,
                                       const std::vector<v1::Measure>& measures) {
  std::vector<MeasureDue> wanted;
  for (const v1::AskedMeasure& asked : programme.measures()) {
    const auto by = parseLocalDay(asked.by_day());
    if (!by.ok()) continue;
    const bool taken = std::any_of(measures.begin(), measures.end(), [&](const v1::Measure& measure) {
      const auto day = parseLocalDay(measure.local_day());
      return measure.kind() == asked.kind() && !measure.withdrawn() && day.ok() &&
             *day >= *by - kTakenEarlyDays;
    });
    if (!taken) wanted.push_back({asked.kind(), *by});
  }
  return wanted;
}

}  // namespace newel
