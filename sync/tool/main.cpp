// newel: every computation of the core, on files.
#include <CLI/CLI.hpp>
#include <iostream>

#include "platform/clock.h"
#include "sync/common/end_signals.h"
#include "sync/tool/commands.h"
#include "sync/tool/tool_io.h"
#include "sync/tool/trade_options.h"

namespace {

using newel::tool::Output;
using newel::tool::TimelineOptions;

struct Options {
  bool json = false;
  bool everyone = false;
  newel::tool::CheckOptions check;
  std::string file, from, to, kind;
  newel::tool::DoneOptions done;
  TimelineOptions timeline;
  newel::tool::FigureOptions figure;
  newel::tool::Chosen chosen;
};

void addCheck(CLI::App& app, Options& o) {
  auto* check =
      app.add_subcommand("check", "What the safety rules say about an entry or a programme for a person");
  auto* person = check->add_option("person", o.check.person, "Person record (text or JSON)");
  auto* file = check->add_option("file", o.check.file, "Entry or programme");
  check->add_option("--last", o.check.last, "The programme before it, for the list of changes");
  check->add_option("--settings", o.check.settings, "The clinic's settings (default: the usual ones)");
  check->add_option("--language", o.check.language, "Language of the therapist's words")
      ->capture_default_str();
  check->add_flag("--everyone", o.everyone, "Every exercise against every kind of person instead")
      ->excludes(person)
      ->excludes(file);
}

void addOccasions(CLI::App& app, Options& o) {
  auto* occasions = app.add_subcommand("occasions", "When the entries of a programme are due");
  occasions->add_option("programme", o.file, "Programme")->required();
  occasions->add_option("--from", o.from, "First local day, YYYY-MM-DD")->required();
  occasions->add_option("--to", o.to, "Last local day")->required();
}

void addFigure(CLI::App& app, Options& o) {
  auto& f = o.figure;
  auto* figure = app.add_subcommand("figure", "The drawn body as SVG");
  figure->add_option("exercise", f.exercise, "Exercise of the catalogue");
  newel::tool::addPersonOptions(*figure, f);
  figure->add_option("--prosthesis", f.prosthesis, "on or off")->capture_default_str();
  figure->add_option("--at", f.at, "Where in one run of the exercise, 0 to 1")->check(CLI::Range(0.0, 1.0));
  figure->add_option("--support", f.support, "What the hands hold");
  figure->add_flag("--sheet", f.sheet, "Three poses of the exercise, or of every one that has a drawing");
  figure->add_flag("--audit", f.audit, "No picture: where a drawn body could not be a body");
  figure->add_option("--folder", f.folder, "Clips and words instead of the program's own");
  figure->add_flag("--dark", f.dark, "On dark ground");
  figure->add_option("--out", f.out, "File to write (default: standard output)");
}

void addTimeline(CLI::App& app, Options& o) {
  auto& t = o.timeline;
  auto* timeline = app.add_subcommand("timeline", "Exactly what the phone will do, beat by beat");
  timeline->add_option("exercise", t.exercise, "Exercise of the catalogue");
  timeline->add_option("--entry", t.entry_file, "Entry record instead of an exercise and a dose");
  newel::tool::addPersonOptions(*timeline, t);
  timeline->add_option("--support", t.support, "What the hands hold");
  timeline->add_option("--sides", t.policy, "Side policy");
  timeline->add_option("--prosthesis", t.prosthesis, "on or off");
  timeline->add_option("--rung", t.rung, "Rung of the exercise's ladder");
  const auto number = [&](const char* name, std::int64_t& value, const char* words) {
    timeline->add_option(name, value, words)->check(CLI::Range(std::int64_t{0}, std::int64_t{100000}));
  };
  number("--sets", t.sets, "Sets");
  number("--repetitions", t.repetitions, "Repetitions in a set");
  number("--hold", t.hold_s, "Hold, seconds");
  number("--move", t.move_s, "Tempo out, seconds");
  number("--return", t.return_s, "Tempo back, seconds");
  number("--rest", t.rest_s, "Rest between sets, bouts or passes, seconds");
  number("--repetition-rest", t.repetition_rest_s, "Rest between repetitions, seconds");
  number("--minutes", t.minutes, "Minutes of a bout");
  number("--bouts", t.bouts, "Bouts");
  number("--passes", t.passes, "Passes");
  number("--distance", t.distance_m, "One way, metres");
  number("--steps", t.step_count, "Stair steps one way");
  number("--step-seconds", t.step_s, "Time for one step");
}

void addAdherence(CLI::App& app, Options& o) {
  auto* adherence = app.add_subcommand("adherence", "How much of what was asked was done");
  adherence->add_option("--programmes", o.done.programmes, "Every programme of one person")->required();
  adherence->add_option("--practices", o.done.practices, "Every practice of that person");
  adherence->add_option("--holds", o.done.holds, "Every hold order, lifts included");
  adherence->add_option("--from", o.done.from, "First local day, YYYY-MM-DD")->required();
  adherence->add_option("--to", o.done.to, "Last local day")->required();
  adherence->add_option("--today", o.done.today, "Later days are still to come (default: --to)");
  adherence->add_option("--heard-until", o.done.heard_until,
                        "Last day the phone was heard from (default: --today)");
  adherence->add_option("--zone", o.done.zone, "The person's zone, for the days of hold orders")
      ->capture_default_str();
}

void addRecord(CLI::App& app, Options& o) {
  auto* record = app.add_subcommand("record", "Records as files");
  record->require_subcommand(1);
  auto* validate = record->add_subcommand("validate", "Is this file a good record?");
  validate->add_option("kind", o.kind, "person, entry, programme, practice, ...")->required();
  validate->add_option("file", o.file, "Protobuf text or JSON; - for standard input")->required();
}

int run(CLI::App& app, Options& o) {
  namespace tool = newel::tool;
  Output output{std::cout, std::cerr, o.json};
  // What writes a record and takes long: Ctrl-C waits until it is asked for, so that no half of it stays.
  const auto clock = newel::platform::makeSystemClock();
  const newel::tool::LongWork work{newel::endSignalCame, [&clock] { return clock->elapsed(); }};
  if (app.got_subcommand("export")) {
    newel::holdEndSignals();
    output.long_work = &work;
  }
  if (o.chosen) return o.chosen(output);
  if (app.got_subcommand("check"))
    return o.everyone ? tool::runCheckEveryone(output) : tool::runCheck(o.check, output);
  if (app.got_subcommand("occasions")) return tool::runOccasions(o.file, o.from, o.to, output);
  if (app.got_subcommand("timeline")) return tool::runTimeline(o.timeline, output);
  if (app.got_subcommand("figure")) return tool::runFigure(o.figure, output);
  if (app.got_subcommand("record")) return tool::runValidate(o.kind, o.file, output);
  return tool::runAdherence(o.done, output);
}

}  // namespace

int main(int argc, char** argv) {
  CLI::App app("Newel on files: what is safe, when it is due, what the phone will do, how much was done.",
               "newel");
  app.require_subcommand(1);
  app.fallthrough();
  app.set_version_flag("--version", NEWEL_VERSION);
  Options options;
  app.add_flag("--json", options.json, "JSON instead of a table");
  addCheck(app, options);
  addOccasions(app, options);
  addTimeline(app, options);
  addFigure(app, options);
  addAdherence(app, options);
  addRecord(app, options);
  newel::tool::addTradeCommands(app, options.chosen);
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    const int code = app.exit(error);
    return code == 0 ? newel::tool::kFine : newel::tool::kBadInput;
  }
  return run(app, options);
}
