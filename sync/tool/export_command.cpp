#include <absl/strings/str_cat.h>

#include <nlohmann/json.hpp>
#include <ostream>
#include <utility>

#include "core/library/catalogue.h"
#include "core/records/check.h"
#include "core/time/local_day.h"
#include "sync/export/export_files.h"
#include "sync/export/export_teller.h"
#include "sync/export/fhir_templates.h"
#include "sync/tool/export_commands.h"
#include "sync/tool/tool_io.h"
#include "sync/tool/trade_io.h"

namespace newel::tool {
namespace {

// Of the whole: reading the files, writing the format, writing it to the disk. Ours, no source.
constexpr int kRead = 40;
constexpr int kMade = 95;

template <typename Record>
absl::Status recordsOf(const nlohmann::json& all, const std::string& key, const std::string& file,
                       std::vector<Record>& records) {
  const auto list = all.find(key);
  if (list == all.end()) return absl::OkStatus();
  if (!list->is_array()) return absl::InvalidArgumentError(file + ": " + key + ": is no list");
  for (std::size_t i = 0; i < list->size(); ++i) {
    const std::string path = absl::StrCat(file, ": ", key, "[", i, "]");
    absl::Status read = parseTextOrJson((*list)[i].dump(), path, records.emplace_back());
    if (!read.ok()) return read;
  }
  return absl::OkStatus();
}

struct Records {
  v1::Person person;
  std::vector<v1::Programme> programmes;
  std::vector<v1::Practice> practices;
  std::vector<v1::HoldOrder> holds;
  std::vector<v1::Message> messages;
  std::vector<v1::Receipt> receipts;
  std::vector<v1::WearBlock> blocks;
  std::vector<v1::Measure> measures;
};

// What a phone writes for its owner to take along.
absl::Status readWhole(const std::string& file, Records& records) {
  const auto text = readFile(file);
  if (!text.ok()) return text.status();
  const auto all = nlohmann::json::parse(*text, nullptr, /*allow_exceptions=*/false);
  if (!all.is_object()) return absl::InvalidArgumentError(file + ": is no JSON object");
  const auto person = all.find("person");
  if (person == all.end()) return absl::InvalidArgumentError(file + ": person: is missing");
  absl::Status read = parseTextOrJson(person->dump(), file + ": person", records.person);
  if (read.ok()) read = recordsOf(all, "programmes", file, records.programmes);
  if (read.ok()) read = recordsOf(all, "practices", file, records.practices);
  if (read.ok()) read = recordsOf(all, "hold_orders", file, records.holds);
  if (read.ok()) read = recordsOf(all, "messages", file, records.messages);
  if (read.ok()) read = recordsOf(all, "wearing_time", file, records.blocks);
  if (read.ok()) read = recordsOf(all, "measures", file, records.measures);
  return read;
}

absl::Status readOneByOne(const ExportFilesOptions& options, Records& records) {
  auto person = readRecord<v1::Person>(options.person);
  if (!person.ok()) return person.status();
  records.person = *std::move(person);
  std::vector<v1::WearLog> logs;
  for (const absl::Status& read :
       {readRecords(options.programmes, records.programmes),
        readRecords(options.practices, records.practices), readRecords(options.holds, records.holds),
        readRecords(options.messages, records.messages), readRecords(options.receipts, records.receipts),
        readRecords(options.wear_logs, logs), readRecords(options.measures, records.measures)}) {
    if (!read.ok()) return read;
  }
  for (const auto& log : logs)
    records.blocks.insert(records.blocks.end(), log.blocks().begin(), log.blocks().end());
  return absl::OkStatus();
}

absl::Status setTimes(const ExportFilesOptions& options, PersonHistory& history) {
  std::string problem;
  if (!absl::ParseTime(absl::RFC3339_full, options.as_of, &history.as_of, &problem))
    return absl::InvalidArgumentError("--as-of: not like 2026-11-30T12:00:00Z");
  history.last_contact = history.as_of;
  if (!options.heard_until.empty()) {
    const auto day = dayOption("--heard-until", options.heard_until);
    if (!day.ok()) return day.status();
    const auto zone = loadZone(history.person.zone());
    if (!zone.ok()) return zone.status();
    history.last_contact = absl::FromCivil(absl::CivilHour(*day) + 12, *zone);
  }
  absl::Status days = setDays(options.from, options.to, history);
  return days.ok() ? days : absl::InvalidArgumentError("--" + std::string(days.message()));
}

absl::StatusOr<PersonHistory> historyFrom(const ExportFilesOptions& options) {
  if (options.record.empty() == options.person.empty())
    return absl::InvalidArgumentError("give either --record or --person");
  Records records;
  const absl::Status read =
      options.record.empty() ? readOneByOne(options, records) : readWhole(options.record, records);
  if (!read.ok()) return read;
  PersonHistory history;
  history.person = std::move(records.person);
  for (auto& programme : records.programmes) history.programmes.push_back({std::move(programme), "", "", {}});
  for (auto& order : records.holds) history.holds.push_back({std::move(order), "", "", {}});
  for (auto& message : records.messages) history.messages.push_back({std::move(message), {}});
  history.practices = std::move(records.practices);
  history.wear_blocks = std::move(records.blocks);
  history.measures = std::move(records.measures);
  addReceipts(records.receipts, history);
  putInOrder(history);
  absl::Status timed = setTimes(options, history);
  if (!timed.ok()) return timed;
  return history;
}

absl::StatusOr<std::vector<ExportFile>> templateFile(const ExportFilesOptions& options, ExportFormat format) {
  if (format != ExportFormat::Fhir) return absl::InvalidArgumentError("--templates: in fhir alone");
  if (!options.record.empty() || !options.person.empty())
    return absl::InvalidArgumentError("--templates: are about nobody; leave --record and --person out");
  absl::Time as_of;
  if (!absl::ParseTime(absl::RFC3339_full, options.as_of, &as_of, nullptr))
    return absl::InvalidArgumentError("--as-of: not like 2026-11-30T12:00:00Z");
  return std::vector<ExportFile>{{"", fhirTemplates(Catalogue::builtIn().templates(), as_of)}};
}

int exportTemplates(const ExportFilesOptions& options, ExportFormat format, Output output) {
  const auto files = templateFile(options, format);
  if (!files.ok()) return complain(output.err, files.status());
  const absl::Status written = writeExport(options.out, *files, {});
  if (!written.ok()) return complain(output.err, written);
  output.out << options.out << ": 1 file. It is about nobody.\n";
  return kFine;
}

}  // namespace

int runExport(const ExportFilesOptions& options, Output output) {
  const auto format = parseExportFormat(options.format);
  if (!format.ok())
    return complain(output.err, absl::InvalidArgumentError("--" + std::string(format.status().message())));
  if (options.templates) return exportTemplates(options, *format, output);
  const LongWork work = output.long_work != nullptr ? *output.long_work : LongWork{};
  ExportTeller teller(output.err, work.elapsed, work.asked_to_stop);
  const auto history = historyFrom(options);
  if (!history.ok()) return complain(output.err, history.status());
  const auto files = makeExport(*history, *format, options.options, teller.part(kRead, kMade));
  if (!files.ok()) return complain(output.err, files.status());
  const absl::Status written =
      writeExport(options.out, *files, [&] { return askProgress(teller.part(kMade, 100), 0); });
  if (!written.ok()) return complain(output.err, written);
  output.out << options.out << ": " << files->size() << (files->size() == 1 ? " file. " : " files. ")
             << exportCare(options.options) << '\n';
  return kFine;
}

}  // namespace newel::tool
