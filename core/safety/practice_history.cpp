#include "core/safety/practice_history.h"

#include <algorithm>

#include "core/time/local_day.h"

namespace newel {
namespace {

std::vector<OpenStop> stopsOf(const RuleBook& rules, const v1::Practice& practice) {
  std::vector<OpenStop> stops;
  for (const auto& id : practice.red_flag_rule_ids()) {
    const v1::Rule* rule = rules.rule(id);
    const bool known = rule != nullptr && rule->until() != v1::UNTIL_UNSPECIFIED;
    stops.push_back({practice.id(), id, known ? rule->until() : v1::UNTIL_CLINIC_SAYS});
  }
  if (stops.empty() && practice.end() == v1::PRACTICE_END_RED_FLAG) {
    stops.push_back({practice.id(), "", v1::UNTIL_CLINIC_SAYS});
  }
  return stops;
}

}  // namespace

std::vector<StandingStop> standingStops(const RuleBook& rules, const std::vector<v1::Practice>& practices,
                                        std::optional<absl::Time> clinic_spoke_at) {
  std::vector<StandingStop> standing;
  for (const auto& practice : practices) {
    const absl::Time at = toTime(practice.ended_at());
    for (auto& stop : stopsOf(rules, practice)) {
      if (stop.until == v1::UNTIL_ANSWER_CHANGES) continue;
      StandingStop stands{stop.practice_id, std::move(stop.rule_id), stop.until, at, std::nullopt};
      if (stop.until == v1::UNTIL_NEXT_DAY) {
        const auto day = parseLocalDay(practice.local_day());
        // A day that cannot be read is no reason to let a stop lapse.
        if (day.ok()) stands.last_day = *day;
      } else if (clinic_spoke_at.has_value() && *clinic_spoke_at > at) {
        continue;
      }
      standing.push_back(std::move(stands));
    }
  }
  return standing;
}

std::optional<OpenStop> openStop(const RuleBook& rules, const std::vector<v1::Practice>& practices,
                                 absl::CivilDay today, std::optional<absl::Time> clinic_spoke_at) {
  std::optional<OpenStop> strictest;
  for (auto& stop : standingStops(rules, practices, clinic_spoke_at)) {
    if (stop.last_day && today > *stop.last_day) continue;
    if (!strictest || (strictest->until == v1::UNTIL_NEXT_DAY && stop.until == v1::UNTIL_CLINIC_SAYS)) {
      strictest = OpenStop{std::move(stop.practice_id), std::move(stop.rule_id), stop.until};
    }
  }
  return strictest;
}

PracticeHistory historyOf(const RuleBook& rules, const std::vector<v1::Practice>& practices,
                          absl::CivilDay today, std::optional<absl::Time> clinic_spoke_at) {
  PracticeHistory history;
  history.red_flag_open = openStop(rules, practices, today, clinic_spoke_at).has_value();
  const v1::Practice* last = nullptr;
  for (const auto& practice : practices) {
    if (practice.end() == v1::PRACTICE_END_REFUSED) continue;
    if (last == nullptr || toTime(practice.started_at()) > toTime(last->started_at())) last = &practice;
    const auto day = parseLocalDay(practice.local_day());
    if (!day.ok()) continue;
    const int ago = std::max(0, static_cast<int>(today - *day));
    history.days_since_last_practice = std::min(history.days_since_last_practice.value_or(ago), ago);
  }
  if (last == nullptr) return history;
  for (const auto& entry : last->entries()) {
    if (!entry.has_pain_after_0_10()) continue;
    history.last_pain = std::max(history.last_pain.value_or(0), entry.pain_after_0_10());
  }
  return history;
}

}  // namespace newel
