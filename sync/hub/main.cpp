#include <sys/stat.h>

#include <CLI/CLI.hpp>
#include <cstdlib>
#include <iostream>
#include <string>

#include "platform/clock.h"
#include "platform/offset_clock.h"
#include "sync/common/end_signals.h"
#include "sync/common/real_random.h"
#include "sync/hub/hub_commands.h"

namespace {

std::string readPassword() {
  if (const char* given = std::getenv("NEWEL_PASSWORD"); given != nullptr) return given;
  std::cerr << "Password (8 characters or more, better 15): " << std::flush;
  std::string password;
  std::getline(std::cin, password);
  return password;
}

struct Options {
  std::string data;
  std::string store;
  newel::InitOptions init;
  newel::ServeOptions serve;
  newel::UserOptions user;
  std::string person;
  std::string reason;
  int days = 0;
  std::string backup_to;
  newel::ExportCommand leaving;
  std::string audit_head;
  std::string head_file;
  newel::Rotation rotation;
  bool with_backup = false;
};

CLI::App* command(CLI::App& parent, const std::string& name, const std::string& what, Options& options) {
  CLI::App* made = parent.add_subcommand(name, what);
  // From the environment too, because a command line can be seen by everybody on the machine.
  CLI::Option_group* place = made->add_option_group("place", "Where everything is kept");
  place->add_option("--data", options.data, "The hub's own folder, with SQLite in it");
  place->add_option("--store", options.store, "A PostgreSQL database instead: postgres://user@host/database")
      ->envname("NEWEL_STORE");
  place->require_option(1);
  return made;
}

CLI::App* exportSubcommand(CLI::App& app, Options& options) {
  newel::ExportCommand& leaving = options.leaving;
  CLI::App* made = command(
      app, "export", "One person's record in an open format, pseudonymous; Ctrl-C leaves nothing", options);
  made->add_option("--person", leaving.person_id, "The person's id")->required();
  made->add_option("--format", leaving.format,
                   "fhir: R4 bundle; ical: times of the programme; csv: a folder of tables")
      ->required();
  made->add_option("--out", leaving.out, "A new file, or for csv a new folder")->required();
  made->add_option("--from", leaving.from, "First local day, YYYY-MM-DD (default: all)");
  made->add_option("--to", leaving.to, "Last local day");
  made->add_flag("--with-words", leaving.options.with_words,
                 "Also messages, notes, reasons and therapists' names");
  made->add_option("--programme", leaving.options.programme_number, "ical: its number (default: the latest)");
  made->add_flag("--with-exercises", leaving.options.with_exercises, "ical: also say which exercises");
  made->add_option("--language", leaving.options.language, "ical: of its words (default: the person's)");
  made->add_flag("--us-profiles", leaving.options.us_profiles,
                 "fhir: claim profiles of US Core and HL7 Physical Activity where they are met");
  leaving.asked_to_stop = newel::endSignalCame;
  return made;
}

}  // namespace

int main(int argc, char** argv) {
  newel::holdEndSignals();
  // Whatever is written here is nobody else's, SQLite's log and our own too.
  umask(S_IRWXG | S_IRWXO);

  Options options;
  CLI::App app("The clinic's hub: keeps everything, signs programmes, passes them on.", "newel-hub");
  app.require_subcommand(1);
  CLI::App* init = command(app, "init", "Make a clinic: its keys, certificate and card", options);
  init->add_option("--clinic-name", options.init.clinic_name, "As people know it")->required();
  init->add_option("--phone", options.init.phone, "Whom people call")->required();
  init->add_option("--emergency", options.init.emergency, "The region's emergency number")->required();
  init->add_option("--hours", options.init.hours, "When somebody answers, in plain words");
  init->add_option("--hosts", options.init.hosts,
                   "Names of this machine, comma between, for its certificate");
  CLI::App* serve = command(app, "serve", "Serve phones and desks until Ctrl-C", options);
  serve->add_option("--listen", options.serve.listen, "host:port; this machine only unless told otherwise")
      ->capture_default_str();
  serve->add_option("--phone-host", options.serve.phone_host,
                    "How phones reach this machine, for pairing codes");
  serve->add_option("--port-file", options.serve.port_file, "Write the port here once it is served");
  serve->add_flag("--demo-on-network", options.serve.demo_on_network,
                  "Let other machines reach the demo clinic");
  serve
      ->add_option("--metrics-port", options.serve.metrics_port,
                   "OpenMetrics text for this machine only, on this port; 0: any free one")
      ->check(CLI::Range(0, 65535));
  serve->add_option("--log-file", options.serve.log_file,
                    "Write the log (JSON lines) there; standard error unless told otherwise");
  serve->add_option(
      "--audit-heads", options.serve.audit_heads,
      "Write a signed head of the audit trail into this folder each day, best on another machine");
  CLI::App* demo = command(app, "demo", "Fill an empty folder with an invented clinic", options);
  CLI::App* user = app.add_subcommand("user", "Accounts")->require_subcommand(1);
  CLI::App* add =
      command(*user, "add", "Add one; the password comes from NEWEL_PASSWORD or the next line", options);
  add->add_option("--name", options.user.name, "To sign in with")->required();
  add->add_option("--display-name", options.user.display_name, "As persons see it");
  add->add_option("--role", options.user.role, "therapist, lead, administrator or auditor")
      ->capture_default_str();
  CLI::App* set_password = command(*user, "set-password",
                                   "Give an account a new password, as add does; ends its sessions", options);
  set_password->add_option("--name", options.user.name, "Whose")->required();
  CLI::App* reset_factor = command(*user, "reset-second-factor",
                                   "Take an account's second factor away, when its device is lost", options);
  reset_factor->add_option("--name", options.user.name, "Whose")->required();
  CLI::App* erase = command(app, "erase", "Delete everything about one person, for good", options);
  erase->add_option("--person", options.person, "The person's id")->required();
  erase->add_option("--reason", options.reason, "wish, term or mistake")->required();
  CLI::App* due =
      command(app, "due", "List persons of whom nothing happened for long; erases nobody", options);
  due->add_option("--days", options.days, "How long")->required();
  CLI::App* backup =
      command(app, "backup", "Copy the store, also while it is served, and check the copy", options);
  backup->add_option("--to", options.backup_to, "A new file")->required();
  CLI::App* leaving = exportSubcommand(app, options);
  CLI::App* backed_up =
      command(app, "backed-up", "Say that a PostgreSQL database was copied with its own tools", options);
  CLI::App* restored =
      command(app, "restored", "Say that a database was put back from a copy, before it is served", options);
  CLI::App* fingerprint = command(app, "fingerprint", "The certificate's SHA-256, for desks", options);
  fingerprint->add_flag("--with-backup", options.with_backup, "And that of the one to be shown next");
  CLI::App* certificate = app.add_subcommand("certificate", "The certificate")->require_subcommand(1);
  CLI::App* rotate =
      command(*certificate, "rotate",
              "Show the backup certificate from the next start on, and make a new backup", options);
  rotate->add_flag("--at-once", options.rotation.at_once,
                   "Its key got into other hands: nobody is to believe the former one any more");
  rotate->add_flag("--anyway", options.rotation.anyway, "Even if some phones would need a new pairing code");
  CLI::App* audit = app.add_subcommand("audit", "The audit trail")->require_subcommand(1);
  CLI::App* head =
      command(*audit, "head", "Print the last line's number and hash, to be kept elsewhere", options);
  head->add_option("--out", options.head_file, "Also write it there, signed by the clinic's key");
  CLI::App* verify = command(*audit, "verify", "Check every line", options);
  verify->add_option("--head", options.audit_head,
                     "number:hash as `audit head` printed it, or a file that it wrote");
  CLI11_PARSE(app, argc, argv);

  const auto machine_clock = newel::platform::makeSystemClock();
  newel::platform::OffsetClock clock(*machine_clock, newel::platform::wallOffsetAskedFor());
  newel::RealRandom random;
  const std::string& place = options.data.empty() ? options.store : options.data;
  const newel::HubMachine machine{&clock, &random, &std::cout, &std::cerr};
  if (init->parsed()) return newel::initCommand(machine, place, options.init);
  if (serve->parsed()) return newel::serveCommand(machine, place, options.serve, newel::waitForEndSignal);
  if (demo->parsed()) return newel::demoCommand(machine, place);
  if (reset_factor->parsed()) return newel::resetFactorCommand(machine, place, options.user.name);
  if (erase->parsed()) return newel::eraseCommand(machine, place, options.person, options.reason);
  if (due->parsed()) return newel::dueCommand(machine, place, options.days);
  if (backup->parsed()) return newel::backupCommand(machine, place, options.backup_to);
  if (leaving->parsed()) return newel::exportCommand(machine, place, options.leaving);
  if (backed_up->parsed()) return newel::backedUpCommand(machine, place);
  if (restored->parsed()) return newel::restoredCommand(machine, place);
  if (fingerprint->parsed()) return newel::fingerprintCommand(machine, place, options.with_backup);
  if (head->parsed()) return newel::auditHeadCommand(machine, place, options.head_file);
  if (rotate->parsed()) return newel::rotateCertificateCommand(machine, place, options.rotation);
  if (verify->parsed()) return newel::verifyAuditCommand(machine, place, options.audit_head);
  options.user.password = readPassword();
  if (set_password->parsed()) return newel::setPasswordCommand(machine, place, options.user);
  return newel::addUserCommand(machine, place, options.user);
}
