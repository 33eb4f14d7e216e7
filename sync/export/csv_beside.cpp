// The tables of what stands beside entries and practices: wear plans, rules of progression, measures asked
// for, phones, the audit trail.
#include <absl/strings/str_cat.h>

#include "core/progress/told_beside.h"
#include "core/time/local_day.h"
#include "sync/export/csv_rows.h"
#include "sync/export/record_words.h"

namespace newel {
namespace {

const char* whoWord(AuditLine::Who who) {
  switch (who) {
    case AuditLine::Who::Account:
      return "account";
    case AuditLine::Who::Phone:
      return "phone";
    case AuditLine::Who::Unknown:
      return "unknown";
    case AuditLine::Who::Nobody:
      break;
  }
  return "nobody";
}

}  // namespace

std::string csvWearPlans(const PersonHistory& history, bool words) {
  CsvTable table(words);
  table.head({"programme_number", "plan_number", "plan_id", "issued_at", "signer_id", "effective_day", "zone",
              "first_step", "off_min", "grace_min", "redness_min", "redness_action"},
             {"signer_name", "note"});
  for (const auto& kept : history.programmes) {
    if (!kept.programme.has_wear_plan()) continue;
    const v1::WearPlan& plan = kept.programme.wear_plan();
    table.row().number(kept.programme.number()).number(plan.number()).plain(plan.id());
    table.plain(isoInstant(toTime(plan.issued_at()))).plain(plan.signer_id()).plain(plan.effective_day());
    table.plain(plan.zone()).number(plan.first_step() + 1).number(plan.off_min()).number(plan.grace_min());
    table.number(plan.redness_min());
    table.plain(enumWord(v1::RednessAction_descriptor(), plan.redness_action()));
    table.words(plan.signer_name()).words(plan.note());
  }
  return table.text();
}

std::string csvProgressions(const PersonHistory& history) {
  CsvTable table(false);
  table.head({"programme_number", "entry_id", "practices", "goal_repetitions", "repetitions_over_goal",
              "effort_at_most_0_10", "pain_rise_at_most_0_10", "nothing_missed", "step_back_practices",
              "step_back_pain_rise_0_10", "step_back_done_percent"},
             {});
  for (const auto& kept : history.programmes) {
    for (const auto& entry : kept.programme.entries()) {
      if (!entry.has_progression()) continue;
      const v1::ProgressionRule& rule = entry.progression();
      table.row().number(kept.programme.number()).plain(entry.id()).number(rule.practices());
      table.numberOr(rule.goal_repetitions(), rule.goal_repetitions() > 0);
      table.number(rule.repetitions_over_goal()).number(rule.effort_at_most_0_10());
      table.number(rule.pain_rise_at_most_0_10()).yes(rule.nothing_missed());
      const bool back = rule.step_back_practices() > 0;
      table.numberOr(rule.step_back_practices(), back);
      table.numberOr(rule.step_back_pain_rise_0_10(), back && rule.step_back_pain_rise_0_10() > 0);
      table.numberOr(rule.step_back_done_percent(), back && rule.step_back_done_percent() > 0);
    }
  }
  return table.text();
}

std::string csvAskedMeasures(const PersonHistory& history) {
  CsvTable table(false);
  table.head({"programme_number", "kind", "by_day", "taken"}, {});
  for (const auto& kept : history.programmes) {
    const auto wanted = measuresWanted(kept.programme, history.measures);
    for (const auto& asked : kept.programme.measures()) {
      bool open = false;
      for (const auto& due : wanted) open = open || due.kind_id == asked.kind();
      table.row().number(kept.programme.number()).plain(asked.kind()).plain(asked.by_day()).yes(!open);
    }
  }
  return table.text();
}

std::string csvPhones(const PersonHistory& history, bool words) {
  CsvTable table(words);
  table.head({"phone_id", "app_version", "paired_at", "last_contact", "revoked"}, {"name"});
  for (const auto& phone : history.phones) {
    table.row().plain(phone.id).guarded(phone.app_version).plain(isoInstant(phone.paired_at));
    table.plain(phone.last_contact ? isoInstant(*phone.last_contact) : "").yes(phone.revoked);
    table.words(phone.name);
  }
  return table.text();
}

std::string csvAudit(const PersonHistory& history) {
  CsvTable table(false);
  table.head({"n", "at", "action", "who_is", "who_id", "record_id", "field"}, {});
  for (const auto& line : history.audit) {
    if (!tellsOf(history, localDayOf(history, line.at))) continue;
    table.row().number(line.n).plain(isoInstant(line.at)).guarded(line.action).plain(whoWord(line.who_is));
    table.guarded(line.who).guarded(line.record).guarded(line.field);
  }
  return table.text();
}

}  // namespace newel
