#include "qml/desk/print_command.h"

#include <iostream>

#include "core/time/local_day.h"
#include "qml/desk/desk_content.h"
#include "qml/print/sheet_language.h"
#include "sync/common/pairing_ticket.h"
#include "sync/desk/desk_client.h"

namespace newel::desk {
namespace {

constexpr int kReportDays = 28;

int wrong(const std::string& words) {
  std::cerr << "newel-desk: " << words << std::endl;
  return 2;
}

int failed(const absl::Status& status) {
  std::cerr << "newel-desk: " << absl::StatusCodeToString(status.code()) << ": " << status.message()
            << std::endl;
  return 1;
}

std::string missingOption(const PrintCommand& command) {
  if (command.person_id.isEmpty()) return "--person";
  if (command.address.isEmpty()) return "--hub";
  if (command.fingerprint.isEmpty()) return "--fingerprint";
  if (command.user_name.isEmpty()) return "--user";
  if (command.out.isEmpty()) return "--out";
  return command.password.isEmpty() ? "the environment's NEWEL_PASSWORD" : "";
}

// With the line in the audit trail without which no document is made.
absl::StatusOr<PersonFile> fetched(const PrintCommand& command, DeskContext& context, DeskContent& content) {
  const auto pin = parseFingerprint(command.fingerprint.toStdString());
  if (!pin.ok()) return pin.status();
  auto client = DeskClient::connect({command.address.toStdString(), *pin, context.random});
  if (!client.ok()) return client.status();
  const auto reply = (*client)->signIn(command.user_name.toStdString(), command.password.toStdString(),
                                       command.code.toStdString());
  if (!reply.ok()) return reply.status();
  context.therapist = reply->therapist();
  context.clinic = reply->clinic();
  content.takeSettings(reply->clinic().settings());
  auto file = fetchPerson(**client, command.person_id.toStdString(), false);
  if (file.ok()) {
    absl::Status noted = (*client)->noteExport(command.person_id.toStdString(), command.kind.toStdString());
    if (!noted.ok()) file = std::move(noted);
  }
  const absl::Status out = (*client)->signOut();
  if (!out.ok()) std::cerr << "newel-desk: not signed out: " << out.message() << std::endl;
  return file;
}

absl::StatusOr<int> saved(const PrintCommand& command, const DeskContext& context, const PersonFile& file) {
  if (command.kind == QLatin1String("handout"))
    return saveHandoutSheet(file, context, command.choice, command.out);
  if (command.kind == QLatin1String("card")) return saveCardSheet(file, context, command.choice, command.out);
  absl::CivilDay last = todayOf(file, context.now());
  if (!command.last_day.isEmpty()) {
    const auto day = parseLocalDay(command.last_day.toStdString());
    if (!day.ok()) return day.status();
    last = *day;
  }
  absl::CivilDay first = last - (kReportDays - 1);
  if (!command.first_day.isEmpty()) {
    const auto day = parseLocalDay(command.first_day.toStdString());
    if (!day.ok()) return day.status();
    first = *day;
  }
  if (last < first) return absl::InvalidArgumentError("to: is before from");
  return saveReportSheet(file, context, first, last, command.out, command.choice);
}

}  // namespace

int runPrint(const PrintCommand& command, DeskContext& context) {
  if (!QStringList{QStringLiteral("handout"), QStringLiteral("report"), QStringLiteral("card")}.contains(
          command.kind)) {
    return wrong("--print: handout, report or card");
  }
  const QStringList languages = print::SheetLanguage::languages();
  const QString language = QString::fromStdString(command.choice.language);
  if (!language.isEmpty() && !languages.contains(language))
    return wrong("--language: " + languages.join(QStringLiteral(", ")).toStdString());
  const std::string missing = missingOption(command);
  if (!missing.empty()) return wrong("--print needs " + missing);
  DeskContent content(context);
  const auto file = fetched(command, context, content);
  if (!file.ok()) return failed(file.status());
  const auto pages = saved(command, context, *file);
  if (!pages.ok()) return failed(pages.status());
  std::cout << command.out.toStdString() << ": " << *pages << (*pages == 1 ? " page" : " pages") << std::endl;
  return 0;
}

}  // namespace newel::desk
