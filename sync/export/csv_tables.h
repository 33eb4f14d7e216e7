// One person's history as CSV files, one table a kind: RFC 4180, UTF-8, a head row, CRLF. Instants are ISO
// 8601 in UTC ("2026-11-30T08:00:00Z"), days YYYY-MM-DD, minutes of a day hh:mm, numbers with a point,
// lengths in the unit that the column's name ends in, yes and no as true and false. An empty cell: not told,
// or does not apply. Words of people are guarded against spreadsheets (csv_text.h). Phones and the audit
// trail are the hub's, and empty in what `newel export` makes of files. Columns in brackets are there with
// ExportOptions::with_words alone.
//
// programmes     number, programme_id, state (not-begun active replaced completed), issued_at,
//                signer_id, effective_day, end_day, last_counting_day, zone, signed, arrived_at,
//                seen_at [, signer_name, advice, changes]
// entries        programme_number, entry_id, exercise_id, exercise_revision, title, side_policy,
//                support, prosthesis, pacing, rung_id, dose_kind, sets, repetitions, hold_s, move_s,
//                return_s, repetition_rest_s, minutes, bouts, passes, distance_m, step_count, step_s,
//                rest_s, weekdays ("monday friday"), times_per_week, windows ("08:00-12:00
//                18:00-20:00"), pauses ("2026-12-24/2026-12-26"), pain_stop_0_10, pain_rise_0_10 [,
//                note]
// progressions   programme_number, entry_id, practices, goal_repetitions (empty: the dose's),
//                repetitions_over_goal, effort_at_most_0_10, pain_rise_at_most_0_10, nothing_missed,
//                step_back_practices, step_back_pain_rise_0_10, step_back_done_percent (empty: never)
// wear_plans     programme_number, plan_number, plan_id, issued_at, signer_id, effective_day, zone,
//                first_step (as in wear_steps), off_min, grace_min, redness_min, redness_action [,
//                signer_name, note]
// wear_steps     programme_number, plan_number, step, days, blocks, block_min, all_day [, activity]
// occasions      programme_number, entry_id, exercise_id, local_day, any_day_of_week, window,
//                window_from, window_to, state (done part not-done excused coming no-data),
//                dose_share, practice_id, told_later, skipped. "no-data": nobody knows yet, which is
//                not "not-done".
// practices      practice_id, revision, programme_number, local_day, zone, started_at, ended_at,
//                elapsed_s, end, stop_reason, origin, red_flag_rule_ids, doubts, resumed, app_version
//                [, note]
// ready_answers  practice_id, question_id, answer_id
// doses          practice_id, entry_id, exercise_id, exercise_revision, local_day, window,
//                asked_repetitions, done_repetitions, asked_hold_s, done_hold_s, asked_active_s,
//                done_active_s, dose_share, pain_before_0_10, pain_after_0_10, effort_0_10, skipped,
//                elapsed_s, voided_holds [, skipped_words]
// sets           practice_id, entry_id, local_day, window, set, side, repetitions, hold_s, active_s
// wear_blocks    block_id, revision, local_day, zone, put_on_at, taken_off_at, worn_min, socks,
//                skin_signs, redness_watched_min, redness_gone, origin [, note]
// measures       measure_id, revision, kind, name, value, unit (UCUM), taken_at, local_day, side,
//                walking_aid, withdrawn, taken_by [, note]
// asked_measures programme_number, kind, by_day, taken
// messages       message_id, sender, written_at, urgent, arrived_at, seen_at [, sender_name, text]
// holds          number, hold_id, issued_at, signer_id, entry_ids (empty: everything, or it lifts),
//                lifts_id, lifted_at, stands, signed, arrived_at, seen_at [, signer_name, reason]
// phones         phone_id, app_version, paired_at, last_contact, revoked [, name]
// audit          n (of the hub's trail), at, action, who_is (account phone unknown nobody), who_id,
//                record_id, field
#pragma once

#include <absl/status/statusor.h>

#include <string>
#include <vector>

#include "sync/export/export_options.h"
#include "sync/export/person_history.h"

namespace newel {

struct CsvFile {
  std::string name;  // "programmes.csv"
  std::string text;
};

// Every table, in the order above, each with its head row also where it has no other. `history` passes
// checkHistory(). kCancelled when `progress` ends it.
absl::StatusOr<std::vector<CsvFile>> csvTables(const PersonHistory& history, const ExportOptions& options,
                                               const ExportProgress& progress = {});

// "not-done" and so on.
std::string occasionStateWord(OccasionResult::State state);
std::string programmeStateWord(ProgrammeState state);

}  // namespace newel
