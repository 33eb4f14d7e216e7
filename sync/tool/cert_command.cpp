#include <ostream>

#include "core/library/catalogue.h"
#include "core/progress/adherence.h"
#include "core/records/check.h"
#include "core/review/cert.h"
#include "sync/tool/evidence_words.h"
#include "sync/tool/trade_commands.h"
#include "sync/tool/trade_io.h"

namespace newel::tool {
namespace {

std::string stateText(CertState state) {
  if (state == CertState::Stated) return "stated";
  return state == CertState::Missing ? "missing" : "not yet";
}

absl::StatusOr<CertInput> inputFrom(const CertOptions& options) {
  CertInput input;
  auto person = readRecord<v1::Person>(options.person);
  if (!person.ok()) return person.status();
  input.person = *std::move(person);
  auto programme = readRecord<v1::Programme>(options.programme);
  if (!programme.ok()) return programme.status();
  input.programme = *std::move(programme);
  if (!options.statements.empty()) {
    auto statements = readRecord<v1::CertStatements>(options.statements);
    if (!statements.ok()) return statements.status();
    input.statements = *std::move(statements);
  }
  if (options.practices.empty()) return input;
  std::vector<v1::Practice> practices;
  if (auto status = readRecords(options.practices, practices); !status.ok()) return status;
  input.counts = countEvents(practices);
  if (options.from.empty() && options.to.empty()) return input;
  const auto from = dayOption("--from", options.from);
  if (!from.ok()) return from.status();
  const auto to = dayOption("--to", options.to);
  if (!to.ok()) return to.status();
  const auto adherence = adherenceOf({input.programme}, practices, *from, *to, *to, *to, {});
  if (!adherence.ok()) return adherence.status();
  input.counts->due = adherence->all.due;
  input.counts->done = adherence->all.done;
  return input;
}

void printTable(const std::vector<CertResult>& results, std::ostream& out) {
  Table table({"line", "asks", "", "says"});
  for (const auto& result : results) {
    std::string says = result.statement;
    for (const auto& line : result.found) {
      if (!result.statement.empty() && line.good) continue;
      says += (says.empty() ? "" : "; ") + evidenceText(line);
    }
    table.row({result.line.id(), result.line.asks(), stateText(result.state), says.empty() ? "-" : says});
  }
  table.print(out);
}

}  // namespace

int runCert(const CertOptions& options, Output output) {
  const auto input = inputFrom(options);
  if (!input.ok()) return complain(output.err, input.status());
  const auto results = certOf(*input, Catalogue::builtIn(), certTable());
  const CertSummary summary = summaryOf(results);
  if (output.json) {
    Json json = {{"stated", summary.stated},
                 {"missing", summary.missing},
                 {"not_yet", summary.not_yet},
                 {"lines", Json::array()}};
    for (const auto& result : results) {
      Json one = {{"line", result.line.id()},      {"item", result.line.item()},
                  {"asks", result.line.asks()},    {"state", stateText(result.state)},
                  {"statement", result.statement}, {"found", Json::array()}};
      for (const auto& line : result.found) one["found"].push_back(jsonOf(line));
      json["lines"].push_back(std::move(one));
    }
    printJson(json, output.out);
  } else {
    printTable(results, output.out);
    output.out << summary.stated << " stated, " << summary.missing << " missing, " << summary.not_yet
               << " not yet\n";
  }
  return summary.missing == 0 ? kFine : kSaysNo;
}

}  // namespace newel::tool
