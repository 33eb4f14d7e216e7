#include "sync/export/csv_rows.h"

#include <absl/strings/str_cat.h>
#include <absl/strings/str_join.h>

#include <utility>

#include "core/progress/occasion_facts.h"
#include "core/time/local_day.h"
#include "sync/export/record_words.h"

namespace newel {
namespace {

constexpr std::size_t kDoseColumns = 14;  // dose_kind to rest_s

// dose_kind, sets, repetitions, hold_s, move_s, return_s, repetition_rest_s, minutes, bouts, passes,
// distance_m, step_count, step_s, rest_s
std::vector<std::string> doseCells(const v1::Dose& dose) {
  std::vector<std::string> cells(kDoseColumns);
  const auto set = [&cells](std::size_t at, std::uint32_t value) { cells[at] = std::to_string(value); };
  switch (dose.kind_case()) {
    case v1::Dose::kSets:
      cells[0] = "sets";
      set(1, dose.sets().sets());
      set(2, dose.sets().repetitions());
      set(3, dose.sets().hold_s());
      set(4, dose.sets().move_s());
      set(5, dose.sets().return_s());
      set(6, dose.sets().repetition_rest_s());
      set(13, dose.sets().rest_s());
      break;
    case v1::Dose::kMinutes:
      cells[0] = "minutes";
      set(7, dose.minutes().minutes());
      set(8, dose.minutes().bouts());
      set(13, dose.minutes().rest_s());
      break;
    case v1::Dose::kPasses:
      cells[0] = "passes";
      set(9, dose.passes().passes());
      if (dose.passes().has_distance_m()) set(10, dose.passes().distance_m());
      if (dose.passes().has_step_count()) set(11, dose.passes().step_count());
      set(12, dose.passes().step_s());
      set(13, dose.passes().rest_s());
      break;
    case v1::Dose::KIND_NOT_SET:
      break;
  }
  return cells;
}

std::string weekdaysCell(const v1::Schedule& schedule) {
  return absl::StrJoin(schedule.weekdays().days(), " ", [](std::string* out, int day) {
    absl::StrAppend(out, enumWord(v1::Weekday_descriptor(), day));
  });
}

std::string windowsCell(const v1::Schedule& schedule) {
  return absl::StrJoin(schedule.windows(), " ", [](std::string* out, const v1::Window& window) {
    absl::StrAppend(out, clockMinute(window.from_min()), "-", clockMinute(window.to_min()));
  });
}

std::string pausesCell(const v1::Schedule& schedule) {
  return absl::StrJoin(schedule.pauses(), " ", [](std::string* out, const v1::Pause& pause) {
    absl::StrAppend(out, pause.first_day(), "/", pause.last_day());
  });
}

void entryRow(const v1::Programme& programme, const v1::Entry& entry, CsvTable& table) {
  const v1::Schedule& schedule = entry.schedule();
  const bool a_week = schedule.rhythm_case() == v1::Schedule::kTimesPerWeek;
  const v1::StopThresholds& stop = entry.has_thresholds() ? entry.thresholds() : programme.thresholds();
  table.row().number(programme.number()).plain(entry.id()).plain(entry.exercise_id());
  table.number(entry.exercise_revision());
  table.guarded(exerciseTitle(entry.exercise_id(), entry.exercise_revision(), &programme, "en"));
  table.plain(enumWord(v1::SidePolicy_descriptor(), entry.side_policy()));
  table.plain(enumWord(v1::Support_descriptor(), entry.support()));
  table.plain(enumWord(v1::ProsthesisUse_descriptor(), entry.prosthesis()));
  table.plain(enumWord(v1::Pacing_descriptor(), entry.pacing())).plain(entry.rung_id());
  for (const auto& cell : doseCells(entry.dose())) table.plain(cell);
  table.plain(weekdaysCell(schedule)).numberOr(schedule.times_per_week(), a_week);
  table.plain(windowsCell(schedule)).plain(pausesCell(schedule));
  table.numberOr(stop.pain_stop_0_10(), stop.pain_stop_0_10() > 0);
  table.numberOr(stop.pain_rise_0_10(), stop.pain_rise_0_10() > 0).words(entry.note());
}

void doseRow(const v1::Practice& practice, const v1::EntryDone& done, CsvTable& table) {
  const v1::OccasionRef& ref = done.occasion();
  table.row().plain(practice.id()).plain(ref.entry_id()).plain(done.exercise_id());
  table.number(done.exercise_revision()).plain(ref.local_day()).number(ref.window());
  table.number(done.asked().repetitions()).number(done.done().repetitions());
  table.plain(secondsText(done.asked().hold_ms())).plain(secondsText(done.done().hold_ms()));
  table.plain(secondsText(done.asked().active_ms())).plain(secondsText(done.done().active_ms()));
  table.plain(plainNumber(doseShareOf(done)));
  table.numberOr(done.pain_before_0_10(), done.has_pain_before_0_10());
  table.numberOr(done.pain_after_0_10(), done.has_pain_after_0_10());
  table.numberOr(done.effort_0_10(), done.has_effort_0_10());
  table.plain(enumWord(v1::StopReason_descriptor(), done.skipped())).plain(secondsText(done.elapsed_ms()));
  table.number(done.voided_holds()).words(done.skipped_words());
}

}  // namespace

void CsvTable::head(const std::vector<std::string>& columns, const std::vector<std::string>& words_columns) {
  row();
  for (const auto& column : columns) plain(column);
  for (const auto& column : words_columns) words(column);
}

CsvTable& CsvTable::row() {
  if (!m_row.empty()) m_text += csvRow(m_row);
  m_row.clear();
  return *this;
}

CsvTable& CsvTable::plain(const std::string& value) {
  m_row.push_back(csvPlain(value));
  return *this;
}

CsvTable& CsvTable::guarded(const std::string& words) {
  m_row.push_back(csvWords(words));
  return *this;
}

CsvTable& CsvTable::words(const std::string& words) {
  if (m_with_words) m_row.push_back(csvWords(words));
  return *this;
}

std::string CsvTable::text() {
  row();
  return std::move(m_text);
}

absl::StatusOr<std::string> csvEntries(const PersonHistory& history, bool words) {
  CsvTable table(words);
  table.head({"programme_number",
              "entry_id",
              "exercise_id",
              "exercise_revision",
              "title",
              "side_policy",
              "support",
              "prosthesis",
              "pacing",
              "rung_id",
              "dose_kind",
              "sets",
              "repetitions",
              "hold_s",
              "move_s",
              "return_s",
              "repetition_rest_s",
              "minutes",
              "bouts",
              "passes",
              "distance_m",
              "step_count",
              "step_s",
              "rest_s",
              "weekdays",
              "times_per_week",
              "windows",
              "pauses",
              "pain_stop_0_10",
              "pain_rise_0_10"},
             {"note"});
  for (const auto& kept : history.programmes) {
    for (const auto& entry : kept.programme.entries()) entryRow(kept.programme, entry, table);
  }
  return table.text();
}

absl::StatusOr<std::string> csvPractices(const PersonHistory& history, bool words) {
  CsvTable table(words);
  table.head(
      {"practice_id", "revision", "programme_number", "local_day", "zone", "started_at", "ended_at",
       "elapsed_s", "end", "stop_reason", "origin", "red_flag_rule_ids", "doubts", "resumed", "app_version"},
      {"note"});
  for (const auto& practice : history.practices) {
    if (!tellsOf(history, practice.local_day())) continue;
    table.row().plain(practice.id()).number(practice.revision()).number(practice.programme_number());
    table.plain(practice.local_day()).plain(practice.zone());
    table.plain(isoInstant(toTime(practice.started_at()))).plain(isoInstant(toTime(practice.ended_at())));
    table.plain(secondsText(practice.elapsed_ms()));
    table.plain(enumWord(v1::PracticeEnd_descriptor(), practice.end()));
    table.plain(enumWord(v1::StopReason_descriptor(), practice.stop_reason()));
    table.plain(enumWord(v1::Origin_descriptor(), practice.origin()));
    table.plain(absl::StrJoin(practice.red_flag_rule_ids(), " "));
    table.plain(absl::StrJoin(practice.doubts(), " ", [](std::string* out, int doubt) {
      absl::StrAppend(out, enumWord(v1::ClockDoubt_descriptor(), doubt));
    }));
    table.number(practice.resumed()).guarded(practice.app_version()).words(practice.note());
  }
  return table.text();
}

absl::StatusOr<std::string> csvReadyAnswers(const PersonHistory& history) {
  CsvTable table(false);
  table.head({"practice_id", "question_id", "answer_id"}, {});
  for (const auto& practice : history.practices) {
    if (!tellsOf(history, practice.local_day())) continue;
    for (const auto& answer : practice.ready_answers()) {
      table.row().plain(practice.id()).plain(answer.question_id()).plain(answer.answer_id());
    }
  }
  return table.text();
}

absl::StatusOr<std::string> csvDoses(const PersonHistory& history, bool words) {
  CsvTable table(words);
  table.head({"practice_id", "entry_id", "exercise_id", "exercise_revision", "local_day", "window",
              "asked_repetitions", "done_repetitions", "asked_hold_s", "done_hold_s", "asked_active_s",
              "done_active_s", "dose_share", "pain_before_0_10", "pain_after_0_10", "effort_0_10", "skipped",
              "elapsed_s", "voided_holds"},
             {"skipped_words"});
  for (const auto& practice : history.practices) {
    if (!tellsOf(history, practice.local_day())) continue;
    for (const auto& done : practice.entries()) doseRow(practice, done, table);
  }
  return table.text();
}

absl::StatusOr<std::string> csvSets(const PersonHistory& history) {
  CsvTable table(false);
  table.head(
      {"practice_id", "entry_id", "local_day", "window", "set", "side", "repetitions", "hold_s", "active_s"},
      {});
  for (const auto& practice : history.practices) {
    if (!tellsOf(history, practice.local_day())) continue;
    for (const auto& done : practice.entries()) {
      for (const auto& set : done.sets()) {
        table.row().plain(practice.id()).plain(done.occasion().entry_id()).plain(done.occasion().local_day());
        table.number(done.occasion().window()).number(set.set());
        table.plain(enumWord(v1::Side_descriptor(), set.side())).number(set.done().repetitions());
        table.plain(secondsText(set.done().hold_ms())).plain(secondsText(set.done().active_ms()));
      }
    }
  }
  return table.text();
}

}  // namespace newel
