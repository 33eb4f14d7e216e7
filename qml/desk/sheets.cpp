#include "qml/desk/sheets.h"

#include "qml/print/card.h"
#include "qml/print/handout.h"
#include "qml/print/record_words.h"
#include "qml/print/report.h"

namespace newel::desk {
namespace {

// With what the programmes themselves carry: a sheet needs nothing that was not signed.
Catalogue catalogueOf(const PersonFile& file, const DeskContext& context) {
  std::vector<v1::OwnExercise> own;
  for (const auto& programme : file.programmes)
    own.insert(own.end(), programme.own_exercises().begin(), programme.own_exercises().end());
  return context.catalogue->with(own);
}

}  // namespace

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
  if (choice.compact) options.layout = print::HandoutLayout::Compact;
  options.language = choice.language;
  return print::writeHandout(input, options, catalogueOf(file, context), *context.rules, name);
}

absl::StatusOr<int> saveCardSheet(const PersonFile& file, const DeskContext& context,
                                  const SheetChoice& choice, const QString& name) {
  print::CardInput input;
  input.person = file.person;
  if (choice.with_name) input.name = print::fullName(file.identity);
  input.clinic = context.clinic;
  if (const v1::Programme* last = lastProgramme(file)) input.thresholds = last->thresholds();
  return print::writeCard(input, {choice.size, choice.language}, name);
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
  input.measures = file.measures;
  input.wear_blocks = file.wear_blocks;
  input.language = choice.language.empty() ? context.language : choice.language;
  input.redness_min = context.settings.at("redness-minutes");
  input.first = first;
  input.last = last;
  input.today = todayOf(file, context.now());
  input.heard_from = heardFrom(file);
  input.heard_until = heardUntil(file);
  input.zone = zoneOf(file);
  print::ReportOptions options;
  options.size = choice.size;
  if (choice.body_pt > 0) options.body_pt = choice.body_pt;
  return print::writeReport(input, options, catalogueOf(file, context), *context.rules, name);
}

}  // namespace newel::desk
