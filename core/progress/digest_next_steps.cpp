#include "core/progress/digest_next_steps.h"

#include <set>

#include "core/progress/digest_weeks.h"
#include "core/progress/progression.h"

namespace newel {
namespace {

// Missed and not heard of are the same to a rule of progression, so it is taken that all was heard.
std::vector<OccasionResult> resultsOn(const OccasionFacts& facts, const std::string& entry_id,
                                      absl::CivilDay today) {
  std::vector<OccasionResult> results;
  for (const auto& fact : facts.occasions) {
    if (fact.result.ref.entry_id() != entry_id) continue;
    results.push_back(fact.result);
    results.back().state = stateOn(fact, today, absl::CivilDay::max());
  }
  return results;
}

// The days on which occasions of the entry are over without a word, from `today` on.
std::set<absl::CivilDay> openDays(const OccasionFacts& facts, const std::string& entry_id,
                                  absl::CivilDay today) {
  std::set<absl::CivilDay> days;
  for (const auto& fact : facts.occasions) {
    const bool open = fact.told == OccasionFact::Told::Nothing && !fact.held;
    if (open && fact.over >= today && fact.result.ref.entry_id() == entry_id) days.insert(fact.over);
  }
  return days;
}

}  // namespace

absl::Status addNextSteps(const std::vector<v1::Programme>& programmes,
                          const std::vector<v1::Practice>& practices, const OccasionFacts& facts,
                          absl::CivilDay today, v1::AttentionDigest& digest) {
  if (programmes.empty()) return absl::OkStatus();
  for (const auto& entry : programmes.back().entries()) {
    if (!entry.has_progression()) continue;
    const auto adviceOn = [&](absl::CivilDay day) {
      return adviseProgression(programmes, entry.id(), practices, resultsOn(facts, entry.id(), day));
    };
    const auto advice = adviceOn(today);
    if (!advice.ok()) return advice.status();
    if (advice->advice == Advice::StepBack) digest.add_too_hard(entry.exercise_id());
    if (advice->advice != Advice::Ready) continue;
    v1::ReadyEntry& ready = *digest.add_ready();
    ready.set_exercise_id(entry.exercise_id());
    if (!entry.progression().nothing_missed()) continue;
    for (const absl::CivilDay day : openDays(facts, entry.id(), today)) {
      const auto then = adviceOn(day + 1);
      if (!then.ok()) return then.status();
      if (then->advice == Advice::Ready) continue;
      ready.set_last_day(dayNumber(day));
      break;
    }
  }
  return absl::OkStatus();
}

}  // namespace newel
