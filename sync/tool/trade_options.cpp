#include "sync/tool/trade_options.h"

#include <memory>

#include "sync/tool/export_commands.h"
#include "sync/tool/trade_commands.h"

namespace newel::tool {
namespace {

// Options live as long as the callback that reads them.
template <typename Options>
std::shared_ptr<Options> optionsOf() {
  return std::make_shared<Options>();
}

struct MeasureOptions {
  std::string folder, language = "en", kind;
  double before = 0, after = 0, sem = 0, sd = 0, icc = -1;
  int sure = 90;
  std::vector<double> values;
  std::vector<std::string> files;
};

void addMeasure(CLI::App& app, Chosen& chosen) {
  auto o = optionsOf<MeasureOptions>();
  auto* measure =
      app.add_subcommand("measure", "Outcome measures: what they are, and what a change of one means");
  measure->require_subcommand(1);
  measure->add_option("--folder", o->folder, "A clinic's own measures beside the program's");
  measure->add_option("--language", o->language, "Language of the words")->capture_default_str();

  auto* list = measure->add_subcommand("list", "Every measure, its unit, direction and error");
  list->callback([o, &chosen] {
    chosen = [o](Output output) { return runMeasureList(o->folder, o->language, output); };
  });
  auto* show = measure->add_subcommand("show", "One measure: how it is taken, errors, cutoffs, sources");
  show->add_option("measure", o->kind, "Its id")->required();
  show->callback([o, &chosen] {
    chosen = [o](Output output) { return runMeasureShow(o->folder, o->kind, o->language, output); };
  });
  auto* change = measure->add_subcommand("change", "Is a change beyond measurement error?");
  change->add_option("measure", o->kind, "Its id")->required();
  change->add_option("before", o->before, "Earlier value")->required();
  change->add_option("after", o->after, "Later value")->required();
  change->add_option("--sure", o->sure, "90 or 95 percent")->capture_default_str();
  change->callback([o, &chosen] {
    chosen = [o](Output output) {
      return runMeasureChange(o->folder, o->kind, o->before, o->after, o->sure, output);
    };
  });
  auto* read = measure->add_subcommand("read", "Measure records of one person, the last against the first");
  read->add_option("files", o->files, "Measure records")->required();
  read->callback(
      [o, &chosen] { chosen = [o](Output output) { return runMeasureRead(o->folder, o->files, output); }; });
  auto* symmetry = measure->add_subcommand("symmetry", "How alike two sides are, by every formula in use");
  symmetry->add_option("values", o->values, "Pairs: first side, second side")->required();
  symmetry->callback(
      [o, &chosen] { chosen = [o](Output output) { return runMeasureSymmetry(o->values, output); }; });
  auto* error = measure->add_subcommand("error", "Smallest detectable change from a standard error");
  error->add_option("--sem", o->sem, "Standard error of measurement");
  error->add_option("--sd", o->sd, "Standard deviation between people, with --icc");
  error->add_option("--icc", o->icc, "Reliability, 0 to 1, with --sd");
  error->callback([o, &chosen] {
    chosen = [o](Output output) { return runMeasureError(o->sem, o->sd, o->icc, output); };
  });
}

void addLoad(CLI::App& app, Chosen& chosen) {
  auto o = optionsOf<LoadOptions>();
  auto* load = app.add_subcommand("load", "Effort x minutes: weekly load, monotony and strain");
  load->add_option("--loads", o->loads, "Loads of the days, rest days as 0");
  load->add_option("--file", o->file, "Lines of day, effort 0 to 10, minutes");
  load->add_option("--practices", o->practices, "Practice records");
  load->add_option("--from", o->from, "First local day (default: the first there is)");
  load->add_option("--to", o->to, "Last local day (default: the last there is)");
  load->callback([o, &chosen] { chosen = [o](Output output) { return runLoad(*o, output); }; });
}

struct WearOptions {
  std::string folder, language = "en", name, from, to;
  std::vector<std::string> logs;
};

void addWear(CLI::App& app, Chosen& chosen) {
  auto o = optionsOf<WearOptions>();
  auto* wear = app.add_subcommand("wear", "How wearing time builds up");
  wear->require_subcommand(1);
  wear->add_option("--folder", o->folder, "A clinic's own schedules instead of the program's");
  auto* examples =
      wear->add_subcommand("examples", "Schedules to start from, and what is published on redness");
  examples->add_option("--language", o->language, "Language of the words")->capture_default_str();
  examples->callback([o, &chosen] {
    chosen = [o](Output output) { return runWearExamples(o->folder, o->language, output); };
  });
  auto* draft = wear->add_subcommand("draft", "An example's steps as the beginning of a plan");
  draft->add_option("example", o->name, "Its id")->required();
  draft->callback(
      [o, &chosen] { chosen = [o](Output output) { return runWearDraft(o->folder, o->name, output); }; });
  auto* days = wear->add_subcommand("days", "What each day allows, by a plan and what was worn");
  days->add_option("plan", o->name, "Wear plan")->required();
  days->add_option("--log", o->logs, "Wear logs");
  days->add_option("--from", o->from, "First local day, YYYY-MM-DD")->required();
  days->add_option("--to", o->to, "Last local day (default: --from)");
  days->callback([o, &chosen] {
    chosen = [o](Output output) {
      return runWearDays(o->name, o->logs, o->from, o->to.empty() ? o->from : o->to, output);
    };
  });
}

struct ProgressCommandOptions : ProgressOptions {
  bool rules = false;
  std::string language = "en";
};

void addProgress(CLI::App& app, Chosen& chosen) {
  auto o = optionsOf<ProgressCommandOptions>();
  auto* progress =
      app.add_subcommand("progress", "Ready, hold or step back, entry by entry, with the evidence");
  progress->add_option("--programmes", o->programmes, "Every programme of one person");
  progress->add_option("--practices", o->practices, "Every practice of that person");
  progress->add_option("--holds", o->holds, "Every hold order, lifts included");
  progress->add_option("--zone", o->zone, "The person's zone, for the days of hold orders")
      ->capture_default_str();
  progress->add_option("--from", o->from, "First local day on which missing counts");
  progress->add_option("--to", o->to, "Last local day on which missing counts");
  progress->add_option("--today", o->today, "Later days are still to come (default: --to)");
  progress->add_option("--heard-until", o->heard_until,
                       "Last day the phone was heard from (default: --today)");
  progress->add_flag("--rules", o->rules, "List the progression rules to start from instead");
  progress->add_option("--language", o->language, "Language of the rules' words")->capture_default_str();
  progress->callback([o, &chosen] {
    chosen = [o](Output output) {
      return o->rules ? runProgressRules(o->language, output) : runProgress(*o, output);
    };
  });
}

void addCert(CLI::App& app, Chosen& chosen) {
  auto o = optionsOf<CertOptions>();
  auto* cert = app.add_subcommand("cert", "Which lines of the reporting template (CERT) a programme states");
  cert->add_option("person", o->person, "Person record")->required();
  cert->add_option("programme", o->programme, "Programme")->required();
  cert->add_option("--statements", o->statements, "What the clinic states for all of its programmes");
  cert->add_option("--practices", o->practices, "Practice records, for events and adherence");
  cert->add_option("--from", o->from, "First local day for adherence");
  cert->add_option("--to", o->to, "Last local day for adherence");
  cert->callback([o, &chosen] { chosen = [o](Output output) { return runCert(*o, output); }; });
}

void addLibrary(CLI::App& app, Chosen& chosen) {
  auto o = optionsOf<LibraryOptions>();
  auto* library =
      app.add_subcommand("library", "The catalogue: list and filter it, or print one exercise or card");
  library->add_option("exercise", o->exercise, "Print this exercise or card of advice");
  library->add_flag("--cards", o->cards, "List the cards of advice");
  addPersonOptions(*library, *o);
  library->add_option("--folder", o->folder, "A catalogue instead of the program's own");
  library->add_option("--purpose", o->purpose, "Only this group");
  library->add_option("--position", o->position, "Only in this position");
  library->add_option("--equipment", o->equipment, "Only what uses this");
  library->add_option("--support", o->support, "Only what can be done with this support");
  library->add_option("--tag", o->tag, "Only with this tag");
  library->add_option("--usual-for", o->usual_for, "Only what is usual for this limb-loss level");
  library->add_option("--mobility", o->mobility, "Only what asks for this mobility level or less");
  library->add_option("--words", o->words, "Only with these words in title or purpose");
  library->add_flag("--findings", o->findings, "Show what the safety rules say for the person");
  library->add_flag("--allowed", o->allowed, "Leave out what the safety rules block for the person");
  library->callback([o, &chosen] { chosen = [o](Output output) { return runLibrary(*o, output); }; });
}

struct SourcesOptions {
  std::string kind, of;
};

void addSources(CLI::App& app, Chosen& chosen) {
  auto o = optionsOf<SourcesOptions>();
  auto* sources = app.add_subcommand("sources", "Every source of exercises, rules, measures and schedules");
  sources->add_option("--kind", o->kind, "published, common-practice or from-memory");
  sources->add_option("--of", o->of,
                      "exercises, cards, rules, questions, settings, measures, progression, wear or report");
  sources->callback(
      [o, &chosen] { chosen = [o](Output output) { return runSources(o->kind, o->of, output); }; });
}

void addExport(CLI::App& app, Chosen& chosen) {
  auto o = optionsOf<ExportFilesOptions>();
  auto* command = app.add_subcommand("export", "One person's record in an open format, pseudonymous");
  command
      ->add_option("--format", o->format,
                   "fhir: R4 bundle; ical: times of the programme; csv: a folder of tables")
      ->required();
  command->add_option("--out", o->out, "A new file, or for csv a new folder")->required();
  command->add_option("--as-of", o->as_of, "When, like 2026-11-30T12:00:00Z; what is due later is to come")
      ->required();
  command->add_flag("--templates", o->templates,
                    "fhir: the templates that programmes begin from, instead of anybody's record");
  command->add_option("--record", o->record, "What a phone gave its owner to take along; or:");
  command->add_option("--person", o->person, "Person record");
  command->add_option("--programmes", o->programmes, "Every programme");
  command->add_option("--practices", o->practices, "Every practice");
  command->add_option("--holds", o->holds, "Every hold order, lifts included");
  command->add_option("--messages", o->messages, "Messages");
  command->add_option("--receipts", o->receipts, "Receipts");
  command->add_option("--wear-logs", o->wear_logs, "Wear logs");
  command->add_option("--measures", o->measures, "Measures");
  command->add_option("--heard-until", o->heard_until,
                      "Last day the phone was heard from (default: --as-of)");
  command->add_option("--from", o->from, "First local day, YYYY-MM-DD (default: all)");
  command->add_option("--to", o->to, "Last local day");
  command->add_flag("--with-words", o->options.with_words,
                    "Also messages, notes, reasons and therapists' names");
  command->add_option("--programme", o->options.programme_number, "ical: its number (default: the latest)");
  command->add_flag("--with-exercises", o->options.with_exercises, "ical: also say which exercises");
  command->add_option("--language", o->options.language, "ical: of its words (default: the person's)");
  command->add_flag("--us-profiles", o->options.us_profiles,
                    "fhir: claim profiles of US Core and HL7 Physical Activity where they are met");
  command->callback([o, &chosen] { chosen = [o](Output output) { return runExport(*o, output); }; });
}

void addImport(CLI::App& app, Chosen& chosen) {
  auto file = optionsOf<std::string>();
  auto* command = app.add_subcommand(
      "import", "What a FHIR file (Patient, ServiceRequests) gives a therapist to begin with, and what not");
  command->add_option("file", *file, "FHIR R4 as JSON; - for standard input")->required();
  command->callback([file, &chosen] { chosen = [file](Output output) { return runImport(*file, output); }; });
}

}  // namespace

void addPersonOptions(CLI::App& command, PersonOptions& person) {
  command.add_option("--person", person.person_file, "Person record instead of side and level");
  command.add_option("--side", person.side, "left or right; with --both the strong side")
      ->capture_default_str();
  command.add_option("--level", person.level, "Limb-loss level")->capture_default_str();
  command.add_option("--knee", person.knee, "Knee kind");
  command.add_flag("--both", person.both, "Both limbs lost");
  command.add_option("--language", person.language, "Language of the words")->capture_default_str();
}

void addTradeCommands(CLI::App& app, Chosen& chosen) {
  addMeasure(app, chosen);
  addLoad(app, chosen);
  addWear(app, chosen);
  addProgress(app, chosen);
  addCert(app, chosen);
  addLibrary(app, chosen);
  addSources(app, chosen);
  addExport(app, chosen);
  addImport(app, chosen);
}

}  // namespace newel::tool
