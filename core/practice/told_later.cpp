#include "core/practice/told_later.h"

#include <algorithm>

#include "core/practice/compile.h"
#include "core/records/check.h"
#include "core/safety/facts.h"
#include "core/time/local_day.h"

namespace newel {
namespace {

absl::StatusOr<v1::Entry> entryOf(const ToldInput& input) {
  for (const v1::Entry& entry : input.programme.entries()) {
    if (entry.id() == input.occasion.entry_id()) return entry;
  }
  return absl::InvalidArgumentError("occasion.entry_id: not in the programme");
}

absl::Status checkInput(const ToldInput& input) {
  const auto day = parseLocalDay(input.occasion.local_day());
  if (!day.ok()) return absl::InvalidArgumentError("occasion.local_day: is no day");
  if (*day > input.today) return absl::InvalidArgumentError("occasion.local_day: is to come");
  if (input.done_percent < 1 || input.done_percent > 100) {
    return absl::InvalidArgumentError("done_percent: is not within 1 and 100");
  }
  if (input.happened == v1::STOP_REASON_HOLD_ORDER) {
    return absl::InvalidArgumentError("happened: not a person's");
  }
  return absl::OkStatus();
}

v1::DoseCount shareOf(const v1::DoseCount& asked, std::uint32_t percent) {
  v1::DoseCount done;
  done.set_repetitions(asked.repetitions() * percent / 100);
  if (asked.repetitions() > 0) done.set_repetitions(std::max(done.repetitions(), 1U));
  done.set_hold_ms(asked.hold_ms() * percent / 100);
  done.set_active_ms(asked.active_ms() * percent / 100);
  return done;
}

std::vector<v1::Finding> judged(const ToldInput& input, const v1::Entry& entry, const Catalogue& catalogue,
                                const RuleBook& rules) {
  // Pain before is not known any more, so nothing is said about a rise.
  return rules.practiceFindings(
      merged({factsOf(input.person), todayFacts({entry}, catalogue), input.history, stopFacts(input.happened),
              ratingFacts(std::nullopt, input.pain_after_0_10, input.effort_0_10,
                          thresholdsOf(input.programme, entry))}),
      input.language);
}

v1::Practice record(const ToldInput& input, const v1::Entry& entry, const v1::Timeline& timeline) {
  v1::Practice practice;
  practice.set_id(input.practice_id);
  practice.set_revision(1);
  practice.set_person_id(input.person.id());
  practice.set_programme_number(input.programme.number());
  practice.set_zone(input.zone);
  practice.set_local_day(input.occasion.local_day());
  *practice.mutable_started_at() = toTimestamp(input.told_at);
  *practice.mutable_ended_at() = toTimestamp(input.told_at);
  practice.set_origin(v1::ORIGIN_TOLD_LATER);
  practice.set_app_version(input.app_version);
  v1::EntryDone& done = *practice.add_entries();
  *done.mutable_occasion() = input.occasion;
  done.set_exercise_id(entry.exercise_id());
  done.set_exercise_revision(entry.exercise_revision());
  *done.mutable_asked() = timeline.asked();
  *done.mutable_done() = shareOf(timeline.asked(), input.done_percent);
  done.set_pain_after_0_10(input.pain_after_0_10);
  done.set_effort_0_10(input.effort_0_10);
  done.set_skipped(input.happened);
  return practice;
}

}  // namespace

absl::StatusOr<ToldResult> tellLater(const ToldInput& input, const Catalogue& catalogue,
                                     const RuleBook& rules) {
  absl::Status good = checkInput(input);
  if (!good.ok()) return good;
  const auto entry = entryOf(input);
  if (!entry.ok()) return entry.status();
  const auto timeline = compileTimeline(*entry, input.person, catalogue, input.language);
  if (!timeline.ok()) return timeline.status();

  ToldResult told;
  told.practice = record(input, *entry, *timeline);
  const bool past = input.occasion.local_day() != formatLocalDay(input.today);
  bool ended = false;
  for (v1::Finding& finding : judged(input, *entry, catalogue, rules)) {
    if (endsPractice(finding)) {
      ended = true;
      told.practice.add_red_flag_rule_ids(finding.rule_id());
    }
    const bool stands = endsPractice(finding) && finding.until() == v1::UNTIL_CLINIC_SAYS;
    if (past && !stands) continue;
    told.ends_practice = told.ends_practice || endsPractice(finding);
    told.findings.push_back(std::move(finding));
  }
  const bool stopped = input.happened != v1::STOP_REASON_UNSPECIFIED;
  told.practice.set_end(ended     ? v1::PRACTICE_END_RED_FLAG
                        : stopped ? v1::PRACTICE_END_STOPPED
                                  : v1::PRACTICE_END_FINISHED);
  if (stopped) told.practice.set_stop_reason(input.happened);
  good = check(told.practice);
  if (!good.ok()) return good;
  return told;
}

}  // namespace newel
