#include "sync/export/csv_tables.h"

#include <absl/strings/str_cat.h>
#include <absl/strings/str_join.h>

#include <utility>

#include "core/progress/measure_table.h"
#include "core/progress/occasion_facts.h"
#include "core/schedule/wear_plan.h"
#include "core/time/local_day.h"
#include "sync/export/csv_rows.h"
#include "sync/export/record_words.h"

namespace newel {
namespace {

std::string instantCell(const google::protobuf::Timestamp& at) { return isoInstant(toTime(at)); }
std::string instantCell(const std::optional<absl::Time>& at) { return at ? isoInstant(*at) : ""; }

std::string programmesTable(const PersonHistory& history, bool words) {
  CsvTable table(words);
  table.head({"number", "programme_id", "state", "issued_at", "signer_id", "effective_day", "end_day",
              "last_counting_day", "zone", "signed", "arrived_at", "seen_at"},
             {"signer_name", "advice", "changes"});
  for (std::size_t i = 0; i < history.programmes.size(); ++i) {
    const KeptProgramme& kept = history.programmes[i];
    const v1::Programme& programme = kept.programme;
    table.row().number(programme.number()).plain(programme.id());
    table.plain(programmeStateWord(programmeState(history, i))).plain(instantCell(programme.issued_at()));
    table.plain(programme.signer_id()).plain(programme.effective_day()).plain(programme.end_day());
    table.plain(formatLocalDay(lastCountingDay(history, i))).plain(programme.zone());
    table.yes(!kept.signature.empty());
    table.plain(instantCell(kept.receipts.arrived_at)).plain(instantCell(kept.receipts.seen_at));
    table.words(programme.signer_name()).words(programme.advice()).words(programme.changes());
  }
  return table.text();
}

std::string wearStepsTable(const PersonHistory& history, bool words) {
  CsvTable table(words);
  table.head({"programme_number", "plan_number", "step", "days", "blocks", "block_min", "all_day"},
             {"activity"});
  for (const auto& kept : history.programmes) {
    const v1::WearPlan& plan = kept.programme.wear_plan();
    for (int i = 0; i < plan.steps_size(); ++i) {
      const v1::WearStep& step = plan.steps(i);
      table.row().number(kept.programme.number()).number(plan.number()).number(i + 1).number(step.days());
      table.numberOr(step.blocks(), !step.all_day()).numberOr(step.block_min(), !step.all_day());
      table.yes(step.all_day()).words(step.activity());
    }
  }
  return table.text();
}

// Of each programme in turn, so that an entry's window is looked up where it counted.
absl::StatusOr<std::string> occasionsTable(const PersonHistory& history) {
  const auto adherence = adherenceIn(history);
  if (!adherence.ok()) return adherence.status();
  CsvTable table(false);
  table.head({"programme_number", "entry_id", "exercise_id", "local_day", "any_day_of_week", "window",
              "window_from", "window_to", "state", "dose_share", "practice_id", "told_later", "skipped"},
             {});
  for (const auto& occasion : adherence->occasions) {
    const v1::OccasionRef& ref = occasion.ref;
    const KeptProgramme* kept = programmeOn(history, ref.local_day());
    const std::uint32_t number = kept != nullptr ? kept->programme.number() : 0;
    const v1::Entry* entry = entryIn(history, number, ref.entry_id());
    if (entry == nullptr) continue;  // an occasion is made from an entry
    const v1::Window& window = entry->schedule().windows(static_cast<int>(ref.window()));
    table.row().number(number).plain(ref.entry_id()).plain(entry->exercise_id()).plain(ref.local_day());
    table.yes(occasion.any_day_of_week).number(ref.window());
    table.plain(clockMinute(window.from_min())).plain(clockMinute(window.to_min()));
    table.plain(occasionStateWord(occasion.state)).plain(plainNumber(occasion.dose));
    table.plain(occasion.practice_id).yes(occasion.told_later && !occasion.practice_id.empty());
    table.plain(enumWord(v1::StopReason_descriptor(), occasion.skipped));
  }
  return table.text();
}

std::string measuresTable(const PersonHistory& history, bool words) {
  CsvTable table(words);
  table.head({"measure_id", "revision", "kind", "name", "value", "unit", "taken_at", "local_day", "side",
              "walking_aid", "withdrawn", "taken_by"},
             {"note"});
  for (const auto& measure : history.measures) {
    if (!tellsOf(history, measure.local_day())) continue;
    const v1::MeasureKind* kind = MeasureTable::builtIn().find(measure.kind());
    table.row().plain(measure.id()).number(measure.revision()).plain(measure.kind());
    table.guarded(kind != nullptr ? measureWords(*kind, "en").name() : measure.kind());
    table.plain(plainNumber(measure.value())).guarded(measure.unit()).plain(instantCell(measure.taken_at()));
    table.plain(measure.local_day()).plain(enumWord(v1::Side_descriptor(), measure.side()));
    table.guarded(measure.walking_aid()).yes(measure.withdrawn()).guarded(measure.taken_by());
    table.words(measure.note());
  }
  return table.text();
}

std::string wearBlocksTable(const PersonHistory& history, bool words) {
  CsvTable table(words);
  table.head({"block_id", "revision", "local_day", "zone", "put_on_at", "taken_off_at", "worn_min", "socks",
              "skin_signs", "redness_watched_min", "redness_gone", "origin"},
             {"note"});
  for (const auto& block : history.wear_blocks) {
    if (!tellsOf(history, block.local_day())) continue;
    const bool off = block.has_taken_off_at();
    const bool redness = block.check().has_redness();
    table.row().plain(block.id()).number(block.revision()).plain(block.local_day()).plain(block.zone());
    table.plain(instantCell(block.put_on_at())).plain(off ? instantCell(block.taken_off_at()) : "");
    table.numberOr(off ? wornMinutes(block) : 0, off).guarded(block.socks());
    table.plain(absl::StrJoin(block.check().signs(), " ", [](std::string* out, int sign) {
      absl::StrAppend(out, enumWord(v1::SkinSign_descriptor(), sign));
    }));
    table.numberOr(block.check().redness().watched_min(), redness);
    table.plain(!redness ? "" : block.check().redness().gone() ? "true" : "false");
    table.plain(enumWord(v1::Origin_descriptor(), block.origin())).words(block.note());
  }
  return table.text();
}

std::string messagesTable(const PersonHistory& history, bool words) {
  CsvTable table(words);
  table.head({"message_id", "sender", "written_at", "urgent", "arrived_at", "seen_at"},
             {"sender_name", "text"});
  for (const auto& kept : history.messages) {
    const v1::Message& message = kept.message;
    if (!tellsOf(history, localDayOf(history, toTime(message.written_at())))) continue;
    table.row().plain(message.id()).plain(enumWord(v1::Sender_descriptor(), message.sender()));
    table.plain(instantCell(message.written_at())).yes(message.urgent());
    table.plain(instantCell(kept.receipts.arrived_at)).plain(instantCell(kept.receipts.seen_at));
    table.words(message.sender_name()).words(message.text());
  }
  return table.text();
}

std::string holdsTable(const PersonHistory& history, bool words) {
  CsvTable table(words);
  table.head({"number", "hold_id", "issued_at", "signer_id", "entry_ids", "lifts_id", "lifted_at", "stands",
              "signed", "arrived_at", "seen_at"},
             {"signer_name", "reason"});
  for (const auto& kept : history.holds) {
    const v1::HoldOrder& order = kept.order;
    table.row().number(order.number()).plain(order.id()).plain(instantCell(order.issued_at()));
    table.plain(order.signer_id()).plain(absl::StrJoin(order.entry_ids(), " ")).plain(order.lifts_id());
    table.plain(instantCell(liftedAt(history, kept))).yes(standsNow(history, kept));
    table.yes(!kept.signature.empty());
    table.plain(instantCell(kept.receipts.arrived_at)).plain(instantCell(kept.receipts.seen_at));
    table.words(order.signer_name()).words(order.reason());
  }
  return table.text();
}

}  // namespace

std::string occasionStateWord(OccasionResult::State state) {
  switch (state) {
    case OccasionResult::State::Done:
      return "done";
    case OccasionResult::State::Part:
      return "part";
    case OccasionResult::State::NotDone:
      return "not-done";
    case OccasionResult::State::Excused:
      return "excused";
    case OccasionResult::State::Coming:
      return "coming";
    case OccasionResult::State::NoData:
      break;
  }
  return "no-data";
}

std::string programmeStateWord(ProgrammeState state) {
  switch (state) {
    case ProgrammeState::NotBegun:
      return "not-begun";
    case ProgrammeState::Active:
      return "active";
    case ProgrammeState::Replaced:
      return "replaced";
    case ProgrammeState::Completed:
      break;
  }
  return "completed";
}

absl::StatusOr<std::vector<CsvFile>> csvTables(const PersonHistory& history, const ExportOptions& options,
                                               const ExportProgress& progress) {
  const bool words = options.with_words;
  const std::pair<const char*, std::function<absl::StatusOr<std::string>()>> tables[] = {
      {"programmes", [&] { return programmesTable(history, words); }},
      {"entries", [&] { return csvEntries(history, words); }},
      {"progressions", [&] { return csvProgressions(history); }},
      {"wear_plans", [&] { return csvWearPlans(history, words); }},
      {"wear_steps", [&] { return wearStepsTable(history, words); }},
      {"occasions", [&] { return occasionsTable(history); }},
      {"practices", [&] { return csvPractices(history, words); }},
      {"ready_answers", [&] { return csvReadyAnswers(history); }},
      {"doses", [&] { return csvDoses(history, words); }},
      {"sets", [&] { return csvSets(history); }},
      {"wear_blocks", [&] { return wearBlocksTable(history, words); }},
      {"measures", [&] { return measuresTable(history, words); }},
      {"asked_measures", [&] { return csvAskedMeasures(history); }},
      {"messages", [&] { return messagesTable(history, words); }},
      {"holds", [&] { return holdsTable(history, words); }},
      {"phones", [&] { return csvPhones(history, words); }},
      {"audit", [&] { return csvAudit(history); }},
  };
  std::vector<CsvFile> files;
  for (const auto& [name, write] : tables) {
    absl::Status going = askProgress(progress, static_cast<int>(files.size() * 100 / std::size(tables)));
    if (!going.ok()) return going;
    auto text = write();
    if (!text.ok()) return text.status();
    files.push_back({absl::StrCat(name, ".csv"), *std::move(text)});
  }
  return files;
}

}  // namespace newel
