#include <set>

#include "core/records/check.h"
#include "core/records/check_parts.h"

namespace newel {

void checkSchedule(const FieldCheck& check, const v1::Schedule& schedule) {
  switch (schedule.rhythm_case()) {
    case v1::Schedule::kWeekdays: {
      check.that(!schedule.weekdays().days().empty(), "weekdays.days", "is missing");
      std::set<int> days;
      for (int i = 0; i < schedule.weekdays().days_size(); ++i) {
        check.that(days.insert(schedule.weekdays().days(i)).second,
                   "weekdays.days[" + std::to_string(i) + "]", "is given twice");
      }
      break;
    }
    case v1::Schedule::kTimesPerWeek:
      check.range("times_per_week", schedule.times_per_week(), 1, 7);
      break;
    case v1::Schedule::RHYTHM_NOT_SET:
      check.that(false, "rhythm", "is missing: weekdays or times_per_week");
  }
  check.that(!schedule.windows().empty(), "windows", "is missing");
  check.that(schedule.windows_size() <= 6, "windows", "more than six a day");
  for (int i = 0; i < schedule.windows_size(); ++i) {
    FieldCheck window = check.at("windows", i);
    window.range("from_min", schedule.windows(i).from_min(), 0, 1439);
    window.range("to_min", schedule.windows(i).to_min(), 1, 1440);
    window.that(schedule.windows(i).from_min() < schedule.windows(i).to_min(), "to_min",
                "is not after from_min");
    // Windows in order and apart, so that one moment belongs to one occasion at most.
    window.that(i == 0 || schedule.windows(i - 1).to_min() <= schedule.windows(i).from_min(), "from_min",
                "lies in the window before");
  }
  for (int i = 0; i < schedule.pauses_size(); ++i) {
    FieldCheck pause = check.at("pauses", i);
    pause.day("first_day", schedule.pauses(i).first_day());
    pause.day("last_day", schedule.pauses(i).last_day());
    pause.that(schedule.pauses(i).first_day() <= schedule.pauses(i).last_day(), "last_day",
               "is before first_day");
    pause.text("reason", schedule.pauses(i).reason(), 0, 400);
  }
}

void checkThresholds(const FieldCheck& check, const v1::StopThresholds& thresholds) {
  check.range("pain_stop_0_10", thresholds.pain_stop_0_10(), 1, 10);
  check.range("pain_rise_0_10", thresholds.pain_rise_0_10(), 1, 10);
}

void checkProgression(const FieldCheck& check, const v1::ProgressionRule& rule) {
  check.range("practices", rule.practices(), 1, 10);
  check.range("goal_repetitions", rule.goal_repetitions(), 0, 60);
  check.range("repetitions_over_goal", rule.repetitions_over_goal(), 0, 20);
  check.range("effort_at_most_0_10", rule.effort_at_most_0_10(), 1, 10);
  check.range("pain_rise_at_most_0_10", rule.pain_rise_at_most_0_10(), 0, 9);
  check.range("step_back_practices", rule.step_back_practices(), 0, 10);
  check.range("step_back_pain_rise_0_10", rule.step_back_pain_rise_0_10(), 0, 10);
  check.range("step_back_done_percent", rule.step_back_done_percent(), 0, 100);
  // One practice must never be good and too hard.
  check.that(
      rule.step_back_pain_rise_0_10() == 0 || rule.step_back_pain_rise_0_10() > rule.pain_rise_at_most_0_10(),
      "step_back_pain_rise_0_10", "is not over pain_rise_at_most_0_10");
}

void checkEntryProgression(const FieldCheck& check, const v1::Entry& entry) {
  FieldCheck progression = check.at("progression");
  checkProgression(progression, entry.progression());
  const bool counts =
      entry.progression().goal_repetitions() > 0 || entry.progression().repetitions_over_goal() > 0;
  progression.that(!counts || entry.dose().has_sets(), "repetitions_over_goal",
                   "a goal of repetitions needs a dose in sets");
}

void checkEntry(const FieldCheck& check, const v1::Entry& entry) {
  check.uuid("id", entry.id());
  check.key("exercise_id", entry.exercise_id());
  check.range("exercise_revision", entry.exercise_revision(), 1, 1000000);
  check.enums(entry);
  checkDose(check.at("dose"), entry.dose());
  check.that(entry.prosthesis() != v1::PROSTHESIS_USE_EITHER, "prosthesis", "an entry says on or off");
  checkSchedule(check.at("schedule"), entry.schedule());
  check.text("note", entry.note(), 0, 2000);
  if (entry.has_thresholds()) checkThresholds(check.at("thresholds"), entry.thresholds());
  for (int i = 0; i < entry.overrides_size(); ++i) {
    FieldCheck override_at = check.at("overrides", i);
    override_at.key("rule_id", entry.overrides(i).rule_id());
    override_at.text("reason", entry.overrides(i).reason(), 3, 1000);
  }
  if (entry.has_progression()) checkEntryProgression(check, entry);
  if (entry.has_photo()) checkPhoto(check.at("photo"), entry.photo());
  if (entry.has_clip()) checkClip(check.at("clip"), entry.clip());
}

absl::Status check(const v1::Schedule& schedule) {
  FieldCheck check;
  check.enums(schedule);
  checkSchedule(check, schedule);
  return check.status();
}

absl::Status check(const v1::Entry& entry) {
  FieldCheck check;
  checkEntry(check, entry);
  return check.status();
}

namespace {

constexpr int kMostCards = 10;
constexpr int kMostMeasures = 10;

void checkCards(const FieldCheck& check, const v1::Programme& programme) {
  check.that(programme.cards_size() <= kMostCards, "cards", "more than 10");
  std::set<std::string> ids;
  for (int i = 0; i < programme.cards_size(); ++i) {
    checkAdviceEntry(check.at("cards", i), programme.cards(i));
    check.at("cards", i).that(ids.insert(programme.cards(i).card_id()).second, "card_id", "is given twice");
  }
}

void checkMeasures(const FieldCheck& check, const v1::Programme& programme) {
  check.that(programme.measures_size() <= kMostMeasures, "measures", "more than 10");
  std::set<std::string> kinds;
  for (int i = 0; i < programme.measures_size(); ++i) {
    FieldCheck at = check.at("measures", i);
    at.key("kind", programme.measures(i).kind());
    at.day("by_day", programme.measures(i).by_day());
    at.that(kinds.insert(programme.measures(i).kind()).second, "kind", "is given twice");
  }
}

// The plan is part of this very programme: for its person, by its days.
void checkWear(const FieldCheck& check, const v1::Programme& programme) {
  if (!programme.has_wear_plan()) return;
  FieldCheck at = check.at("wear_plan");
  const v1::WearPlan& plan = programme.wear_plan();
  checkWearPlan(at, plan);
  at.that(plan.person_id() == programme.person_id(), "person_id", "is another person than the programme's");
  at.that(plan.clinic_id() == programme.clinic_id(), "clinic_id", "is another clinic than the programme's");
  at.that(plan.zone() == programme.zone(), "zone", "is another zone than the programme's");
}

// Every own exercise that an entry names is carried, and none that no entry names.
void checkOwn(const FieldCheck& check, const v1::Programme& programme) {
  using Named = std::set<std::pair<std::string, std::uint32_t>>;
  Named carried;
  for (int i = 0; i < programme.own_exercises_size(); ++i) {
    const auto& own = programme.own_exercises(i);
    checkOwnExercise(check.at("own_exercises", i), own);
    check.at("own_exercises", i)
        .that(carried.insert({own.exercise().id(), own.exercise().revision()}).second, "exercise.id",
              "is given twice");
  }
  Named named;
  for (int i = 0; i < programme.entries_size(); ++i) {
    const auto& entry = programme.entries(i);
    if (!isOwnExerciseId(entry.exercise_id())) continue;
    named.insert({entry.exercise_id(), entry.exercise_revision()});
    check.at("entries", i)
        .that(carried.count({entry.exercise_id(), entry.exercise_revision()}) > 0, "exercise_id",
              "is the clinic's own and is not carried in own_exercises");
  }
  check.that(named.size() >= carried.size(), "own_exercises", "one of them is in no entry");
}

}  // namespace

absl::Status check(const v1::Programme& programme) {
  FieldCheck check;
  check.uuid("id", programme.id());
  check.range("number", programme.number(), 1, 1000000);
  check.uuid("person_id", programme.person_id());
  check.uuid("clinic_id", programme.clinic_id());
  check.uuid("signer_id", programme.signer_id());
  check.text("signer_name", programme.signer_name(), 1, 200);
  check.that(programme.has_issued_at(), "issued_at", "is missing");
  check.day("effective_day", programme.effective_day());
  check.day("end_day", programme.end_day());
  check.that(programme.effective_day() <= programme.end_day(), "end_day", "is before effective_day");
  check.zone("zone", programme.zone());
  check.that(!programme.entries().empty(), "entries", "is missing");
  check.that(programme.entries_size() <= 20, "entries", "more than 20");
  std::set<std::string> ids;
  for (int i = 0; i < programme.entries_size(); ++i) {
    checkEntry(check.at("entries", i), programme.entries(i));
    check.at("entries", i).that(ids.insert(programme.entries(i).id()).second, "id", "is given twice");
  }
  checkMediaTogether(check, programme);
  checkCards(check, programme);
  checkOwn(check, programme);
  checkWear(check, programme);
  checkMeasures(check, programme);
  check.text("advice", programme.advice(), 0, 4000);
  check.text("changes", programme.changes(), 0, 4000);
  check.that(programme.has_thresholds(), "thresholds", "is missing");
  checkThresholds(check.at("thresholds"), programme.thresholds());
  return check.status();
}

absl::Status check(const v1::HoldOrder& order) {
  FieldCheck check;
  check.uuid("id", order.id());
  check.range("number", order.number(), 1, 1000000000);
  check.uuid("person_id", order.person_id());
  check.uuid("clinic_id", order.clinic_id());
  check.uuid("signer_id", order.signer_id());
  check.text("signer_name", order.signer_name(), 1, 200);
  check.that(order.has_issued_at(), "issued_at", "is missing");
  for (int i = 0; i < order.entry_ids_size(); ++i) {
    check.uuid("entry_ids[" + std::to_string(i) + "]", order.entry_ids(i));
  }
  check.text("reason", order.reason(), 1, 1000);
  if (!order.lifts_id().empty()) {
    check.uuid("lifts_id", order.lifts_id());
    check.that(order.entry_ids().empty(), "entry_ids", "an order that lifts holds nothing itself");
  }
  return check.status();
}

}  // namespace newel
