#include <ostream>

#include "sync/export/fhir_import.h"
#include "sync/tool/export_commands.h"
#include "sync/tool/tool_io.h"
#include "sync/tool/trade_io.h"

namespace newel::tool {
namespace {

Json requestJson(const ImportedRequest& request) {
  return {{"path", request.path},
          {"title", request.title},
          {"instruction", request.instruction},
          {"reason", request.reason},
          {"body_site", request.body_site},
          {"requester", request.requester},
          {"authored_on", request.authored_on},
          {"notes", request.notes},
          {"entry", request.entry < 0 ? Json() : Json(request.entry)}};
}

void printAsJson(const FhirImport& import, std::ostream& out) {
  Json requests = Json::array();
  for (const auto& request : import.requests) requests.push_back(requestJson(request));
  printJson({{"identity", jsonOf(import.identity)},
             {"person", jsonOf(import.person)},
             {"draft", jsonOf(import.draft)},
             {"requests", std::move(requests)},
             {"warnings", import.warnings},
             {"not_taken", import.not_taken}},
            out);
}

void printWho(const FhirImport& import, std::ostream& out) {
  Table table({"what", "in the file"});
  const auto row = [&table](const char* what, const std::string& value) {
    table.row({what, value.empty() ? "-" : value});
  };
  row("given name", import.identity.given_name());
  row("family name", import.identity.family_name());
  row("birth date", import.identity.birth_date());
  row("phone", import.identity.phone());
  row("language", import.person.language());
  row("first day", import.draft.effective_day());
  row("last day", import.draft.end_day());
  row("zone", import.draft.zone());
  table.print(out);
}

void printRequests(const FhirImport& import, std::ostream& out) {
  if (import.requests.empty()) return;
  Table table({"asked for", "exercise", "instruction"});
  for (const auto& request : import.requests) {
    const bool known = request.entry >= 0;
    table.row({request.title.empty() ? "-" : request.title,
               known ? import.draft.entries(request.entry).exercise_id() : "for the therapist to choose",
               request.instruction});
  }
  out << '\n';
  table.print(out);
}

}  // namespace

int runImport(const std::string& file, Output output) {
  const auto text = readFile(file);
  if (!text.ok()) return complain(output.err, text.status());
  const auto import = importFhir(*text);
  if (!import.ok()) {
    complain(output.err, absl::InvalidArgumentError(file + ": " + std::string(import.status().message())));
    return kSaysNo;
  }
  if (output.json) {
    printAsJson(*import, output.out);
  } else {
    printWho(*import, output.out);
    printRequests(*import, output.out);
    for (const auto& warning : import->warnings) output.out << "\nread this first: " << warning << '\n';
    if (!import->not_taken.empty()) output.out << '\n';
    for (const auto& line : import->not_taken) output.out << line << '\n';
  }
  return import->warnings.empty() ? kFine : kSaysNo;
}

}  // namespace newel::tool
