#include <ostream>
#include <utility>

#include "core/library/catalogue.h"
#include "core/library/settings.h"
#include "core/records/check.h"
#include "core/review/review.h"
#include "core/safety/rule_book.h"
#include "sync/tool/commands.h"
#include "sync/tool/everyone.h"
#include "sync/tool/tool_io.h"

namespace newel::tool {
namespace {

void addRow(Table& table, const std::string& where, const v1::Finding& finding) {
  table.row({where, shortName(v1::Effect_descriptor(), finding.effect()), finding.rule_id(),
             finding.overridden_reason().empty()
                 ? finding.therapist()
                 : finding.therapist() + " [reason: " + finding.overridden_reason() + "]"});
}

void printJson(const std::vector<v1::Finding>& findings, bool may_sign, std::ostream& out) {
  out << "{\"may_sign\": " << (may_sign ? "true" : "false") << ", \"findings\": [";
  for (std::size_t i = 0; i < findings.size(); ++i) out << (i == 0 ? "\n" : ",\n") << toJson(findings[i]);
  out << "]}\n";
}

int checkEntry(const v1::Person& person, const v1::Entry& entry, const RuleBook& rules, Output output) {
  const auto findings = rules.check(entry, person, Catalogue::builtIn());
  if (!findings.ok()) return complain(output.err, findings.status());
  const bool may_sign = maySign(*findings);
  if (output.json) {
    printJson(*findings, may_sign, output.out);
  } else {
    Table table({"where", "effect", "rule", "words"});
    for (const auto& finding : *findings) addRow(table, entry.exercise_id(), finding);
    table.print(output.out);
    output.out << (may_sign ? "may be signed\n" : "may not be signed\n");
  }
  return may_sign ? kFine : kSaysNo;
}

int checkProgramme(const v1::Person& person, const v1::Programme& programme, const v1::Programme* last,
                   const RuleBook& rules, Output output) {
  const auto review =
      reviewProgramme(programme, person, last, Catalogue::builtIn(), rules, person.language());
  if (!review.ok()) return complain(output.err, review.status());
  std::vector<v1::Finding> all;
  Table table({"where", "effect", "rule", "words"});
  for (int i = 0; i < programme.entries_size(); ++i) {
    const auto& entry = review->entries[static_cast<std::size_t>(i)];
    const std::string where = "entries[" + std::to_string(i) + "] " + programme.entries(i).exercise_id();
    for (const auto& finding : entry.findings) {
      all.push_back(finding);
      addRow(table, where, finding);
    }
    if (!entry.problem.empty()) table.row({where, "cannot run", "-", entry.problem});
  }
  for (const auto& finding : review->programme_findings) {
    all.push_back(finding);
    addRow(table, "programme", finding);
  }
  if (output.json) {
    printJson(all, review->may_sign, output.out);
    return review->may_sign ? kFine : kSaysNo;
  }
  table.print(output.out);
  Table minutes({"day", "minutes"});
  for (int day = 0; day < 7; ++day) {
    char text[16];
    std::snprintf(text, sizeof text, "%.1f", review->minutes_by_weekday[static_cast<std::size_t>(day)]);
    minutes.row({shortName(v1::Weekday_descriptor(), day + 1), text});
  }
  minutes.print(output.out);
  for (const auto& change : review->changes) output.out << "change: " << change << '\n';
  output.out << (review->may_sign ? "may be signed\n" : "may not be signed\n");
  return review->may_sign ? kFine : kSaysNo;
}

absl::StatusOr<RuleBook> rulesFrom(const CheckOptions& options) {
  const Catalogue& catalogue = Catalogue::builtIn();
  v1::ClinicSettings settings;
  if (!options.settings.empty()) {
    auto read = readRecord<v1::ClinicSettings>(options.settings);
    if (!read.ok()) return read.status();
    const absl::Status fits = fitsSettings(*read, catalogue);
    if (!fits.ok()) return fits;
    settings = *std::move(read);
  }
  return RuleBook::builtIn().with(settingValues(settings, catalogue), options.language);
}

}  // namespace

int runCheck(const CheckOptions& options, Output output) {
  const auto person = readRecord<v1::Person>(options.person);
  if (!person.ok()) return complain(output.err, person.status());
  const auto rules = rulesFrom(options);
  if (!rules.ok()) return complain(output.err, rules.status());
  const auto text = readFile(options.file);
  if (!text.ok()) return complain(output.err, text.status());
  // An entry names its exercise at the top; a programme has entries.
  v1::Entry entry;
  if (parseTextOrJson(*text, options.file, entry).ok()) {
    const auto checked = readRecord<v1::Entry>(options.file);
    return checked.ok() ? checkEntry(*person, *checked, *rules, output)
                        : complain(output.err, checked.status());
  }
  const auto programme = readRecord<v1::Programme>(options.file);
  if (!programme.ok()) return complain(output.err, programme.status());
  if (options.last.empty()) return checkProgramme(*person, *programme, nullptr, *rules, output);
  const auto last = readRecord<v1::Programme>(options.last);
  if (!last.ok()) return complain(output.err, last.status());
  return checkProgramme(*person, *programme, &*last, *rules, output);
}

int runCheckEveryone(Output output) {
  const EveryoneReport report = checkEveryone(Catalogue::builtIn(), RuleBook::builtIn());
  for (const auto& problem : report.problems) output.out << problem << '\n';
  output.out << report.pairs << " cases in which every two circumstances meet, " << report.products
             << " of exercise, level, knee, sides, mobility and rails, " << report.led << " timelines: "
             << (report.problems.empty() ? "nothing wrong\n"
                                         : std::to_string(report.problems.size()) + " problems\n");
  return report.problems.empty() ? kFine : kSaysNo;
}

}  // namespace newel::tool
