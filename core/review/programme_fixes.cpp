#include "core/review/programme_fixes.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <set>
#include <utility>

#include "core/practice/compile.h"
#include "core/review/fixes.h"
#include "core/review/standing.h"
#include "core/review/week.h"
#include "core/time/local_day.h"

namespace newel {
namespace {

using Kind = ProgrammeFix::Kind;
using Days = std::vector<v1::Weekday>;

// A change and the lengths of its entries; the lengths are those of the draft but for the one that it
// touches.
struct Change {
  ProgrammeFix fix;
  std::vector<std::int64_t> total_ms;
};

// What the rules say of a programme whose entries' lengths are known, without compiling what did not change.
class Trial {
 public:
  Trial(const v1::Person& person, const v1::Programme* last, const Catalogue& catalogue,
        const RuleBook& rules)
      : m_person(person), m_catalogue(catalogue), m_rules(rules), m_person_facts(factsOf(person)) {
    if (last != nullptr) m_last = weekOf(*last, person, catalogue);
  }

  std::vector<v1::Finding> findings(const v1::Programme& programme,
                                    const std::vector<std::int64_t>& total_ms) const {
    const Week week = weekOf(programme, total_ms, m_catalogue);
    return m_rules.checkProgramme(merged({m_person_facts, programmeFacts(programme, week, m_last)}));
  }
  // nullopt: it cannot be compiled.
  std::optional<std::int64_t> length(const v1::Entry& entry) const {
    const auto timeline = compileTimeline(entry, m_person, m_catalogue, "en");
    if (!timeline.ok()) return std::nullopt;
    return timeline->total_ms();
  }

 private:
  const v1::Person& m_person;
  const Catalogue& m_catalogue;
  const RuleBook& m_rules;
  RuleFacts m_person_facts;
  std::optional<Week> m_last;
};

// Week patterns in use everywhere: common practice, no source. Only one with no more days than before is
// offered.
const std::vector<Days>& patterns() {
  using namespace v1;
  static const std::vector<Days> all = {
      {WEEKDAY_MONDAY, WEEKDAY_TUESDAY, WEEKDAY_THURSDAY, WEEKDAY_FRIDAY},
      {WEEKDAY_MONDAY, WEEKDAY_WEDNESDAY, WEEKDAY_FRIDAY},
      {WEEKDAY_TUESDAY, WEEKDAY_THURSDAY, WEEKDAY_SATURDAY},
      {WEEKDAY_MONDAY, WEEKDAY_THURSDAY},
      {WEEKDAY_TUESDAY, WEEKDAY_FRIDAY},
      {WEEKDAY_WEDNESDAY, WEEKDAY_SATURDAY},
  };
  return all;
}

std::vector<v1::Schedule> lighterSchedules(const v1::Schedule& schedule) {
  std::vector<v1::Schedule> lighter;
  if (schedule.rhythm_case() == v1::Schedule::kTimesPerWeek) {
    for (std::uint32_t times = schedule.times_per_week() - 1; times >= 2 && times < 7; --times) {
      lighter.push_back(schedule);
      lighter.back().set_times_per_week(times);
    }
    return lighter;
  }
  const std::vector<std::size_t> now = weekdaysOf(schedule);
  for (const Days& days : patterns()) {
    v1::Schedule other = schedule;
    other.mutable_weekdays()->clear_days();
    for (const v1::Weekday day : days) other.mutable_weekdays()->add_days(day);
    if (days.size() <= now.size() && weekdaysOf(other) != now) lighter.push_back(std::move(other));
  }
  return lighter;
}

// One set, bout or pass fewer; nullopt when there is but one.
std::optional<v1::Dose> lighterDose(v1::Dose dose) {
  const auto one_fewer = [](auto now, const auto& set) {
    if (now <= 1) return false;
    set(now - 1);
    return true;
  };
  bool lighter = false;
  switch (dose.kind_case()) {
    case v1::Dose::kSets:
      lighter = one_fewer(dose.sets().sets(), [&](auto n) { dose.mutable_sets()->set_sets(n); });
      break;
    case v1::Dose::kMinutes:
      lighter =
          dose.minutes().bouts() > 1
              ? one_fewer(dose.minutes().bouts(), [&](auto n) { dose.mutable_minutes()->set_bouts(n); })
              : one_fewer(dose.minutes().minutes(), [&](auto n) { dose.mutable_minutes()->set_minutes(n); });
      break;
    case v1::Dose::kPasses:
      lighter = one_fewer(dose.passes().passes(), [&](auto n) { dose.mutable_passes()->set_passes(n); });
      break;
    case v1::Dose::KIND_NOT_SET:
      break;
  }
  return lighter ? std::optional(std::move(dose)) : std::nullopt;
}

// Gives every change in the order in which they are offered, until `take` wants no more.
class Changes {
 public:
  using Take = std::function<bool(Change&&)>;  // false: enough

  Changes(const v1::Programme& draft, const std::vector<std::int64_t>& total_ms, const Trial& trial)
      : m_draft(draft), m_total_ms(total_ms), m_trial(trial) {}

  void each(const Take& take) const {
    if (!painStops(take) || !endDays(take)) return;
    for (const auto& of_entry : {&Changes::days, &Changes::dose, &Changes::without}) {
      for (int i = m_draft.entries_size() - 1; i >= 0; --i) {
        if (!(this->*of_entry)(i, take)) return;
      }
    }
  }

 private:
  Change begin(Kind kind, const std::string& entry_id = {}) const {
    return {{kind, entry_id, m_draft}, m_total_ms};
  }

  bool painStops(const Take& take) const {
    if (!m_draft.has_thresholds()) return true;
    for (std::uint32_t stop = m_draft.thresholds().pain_stop_0_10(); stop > 1; --stop) {
      Change change = begin(Kind::PainStop);
      change.fix.programme.mutable_thresholds()->set_pain_stop_0_10(stop - 1);
      if (!take(std::move(change))) return false;
    }
    return true;
  }

  // Whole weeks from the first day: four weeks are what a look again usually takes. Common practice, no
  // source.
  bool endDays(const Take& take) const {
    const auto first = *parseLocalDay(m_draft.effective_day());
    const auto end = *parseLocalDay(m_draft.end_day());
    for (const int weeks : {12, 8, 4}) {
      const auto earlier = first + absl::civil_diff_t{7} * weeks - 1;
      if (earlier >= end) continue;
      Change change = begin(Kind::EndDay);
      change.fix.programme.set_end_day(formatLocalDay(earlier));
      if (!take(std::move(change))) return false;
    }
    return true;
  }

  bool days(int row, const Take& take) const {
    const v1::Entry& entry = m_draft.entries(row);
    for (const v1::Schedule& schedule : lighterSchedules(entry.schedule())) {
      Change change = begin(Kind::Days, entry.id());
      *change.fix.programme.mutable_entries(row)->mutable_schedule() = schedule;
      if (!take(std::move(change))) return false;
    }
    return true;
  }

  bool dose(int row, const Take& take) const {
    const v1::Entry& entry = m_draft.entries(row);
    auto lighter = lighterDose(entry.dose());
    if (!lighter) return true;
    Change change = begin(Kind::Dose, entry.id());
    v1::Entry& changed = *change.fix.programme.mutable_entries(row);
    *changed.mutable_dose() = *std::move(lighter);
    changed.clear_rung_id();  // no step of the ladder has this dose
    const auto length = m_trial.length(changed);
    if (!length) return true;
    change.total_ms[static_cast<std::size_t>(row)] = *length;
    return take(std::move(change));
  }

  bool without(int row, const Take& take) const {
    if (m_draft.entries_size() == 1) return true;
    Change change = begin(Kind::Without, m_draft.entries(row).id());
    change.fix.programme.mutable_entries()->DeleteSubrange(row, 1);
    change.total_ms.erase(change.total_ms.begin() + row);
    return take(std::move(change));
  }

  const v1::Programme& m_draft;
  const std::vector<std::int64_t>& m_total_ms;
  const Trial& m_trial;
};

}  // namespace

std::vector<ProgrammeFix> programmeFixesFor(const v1::Programme& draft, const Review& review,
                                            const std::string& rule_id, const v1::Person& person,
                                            const v1::Programme* last, const Catalogue& catalogue,
                                            const RuleBook& rules) {
  if (!speaks(review.programme_findings, rule_id)) return {};
  std::vector<std::int64_t> total_ms;
  for (const EntryReview& entry : review.entries) total_ms.push_back(entry.total_ms);
  const Trial trial(person, last, catalogue, rules);
  std::vector<ProgrammeFix> fixes;
  // One of a kind: three entries' days would hide that a set fewer does it too.
  std::set<Kind> kinds;
  Changes(draft, total_ms, trial).each([&](Change&& change) {
    if (kinds.contains(change.fix.kind)) return true;
    const auto after = trial.findings(change.fix.programme, change.total_ms);
    if (!answers(rule_id, review.programme_findings, after)) return true;
    kinds.insert(change.fix.kind);
    fixes.push_back(std::move(change.fix));
    return fixes.size() < kMostFixes;
  });
  return fixes;
}

}  // namespace newel
