#include "qml/desk/sheets.h"

#include "qml/print/handout.h"
#include "qml/print/record_words.h"
#include "qml/print/report.h"

namespace newel::desk {

absl::StatusOr<int> saveHandoutSheet(const PersonFile& file, const DeskContext& context,
                                     const SheetChoice& choice, const QString& name) {
  const v1::Programme* last = lastProgramme(file);
  if (last == nullptr) return absl::FailedPreconditionError("there is no programme yet");
  print::HandoutInput input;
  input.programme = *last;
  input.person = file.person;
  if (choice.with_name) input.name = print::fullName(file.identity);
  input.clinic = context.clinic;
  print::HandoutOptions options;
  options.size = choice.size;
  if (choice.body_pt > 0) options.body_pt = choice.body_pt;
  return print::writeHandout(input, options, *context.catalogue, *context.rules, name);
}

absl::StatusOr<int> saveHandoutSheet(const PersonFile& file, const DeskContext& context, bool large_print,
                                     const QString& name) {
  SheetChoice choice;
  choice.body_pt = large_print ? print::kLargePrintPt : print::kBodyPt;
  return saveHandoutSheet(file, context, choice, name);
}

absl::StatusOr<int> saveReportSheet(const PersonFile& file, const DeskContext& context, absl::CivilDay first,
                                    absl::CivilDay last, const QString& name, const SheetChoice& choice) {
  print::ReportInput input;
  input.person = file.person;
  input.identity = file.identity;
  input.clinic = context.clinic;
  input.made_by = print::text(context.therapist.display_name());
  input.programmes = file.programmes;
  input.practices = file.practices;
  input.holds = file.holds;
  input.first = first;
  input.last = last;
  input.today = todayOf(file, context.now());
  input.heard_until = heardUntil(file);
  input.zone = zoneOf(file);
  print::ReportOptions options;
  options.size = choice.size;
  if (choice.body_pt > 0) options.body_pt = choice.body_pt;
  return print::writeReport(input, options, *context.catalogue, *context.rules, name);
}

}  // namespace newel::desk
