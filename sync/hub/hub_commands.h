// What `newel-hub` does, one function a command: text in, text out, exit code back. main.cpp reads the
// command line and brings the machine's clock and randomness.
#pragma once

#include <atomic>
#include <functional>
#include <iosfwd>
#include <string>

#include "core/records/random.h"
#include "core/time/clock.h"
#include "sync/export/export_options.h"
#include "sync/hub/hub_certificates.h"

namespace newel {

struct HubMachine {
  const Clock* clock = nullptr;
  Random* random = nullptr;
  std::ostream* out = nullptr;
  std::ostream* err = nullptr;
};

struct InitOptions {
  std::string clinic_name;
  std::string phone;
  std::string hours;
  std::string emergency;
  std::string hosts;  // names of this machine for the certificate, comma between
};
struct ServeOptions {
  std::string listen = "127.0.0.1:0";
  std::string phone_host;  // what pairing codes say; empty: the listening host
  std::string port_file;   // the port, once it is served
  bool demo_on_network = false;
  int metrics_port = -1;    // on this machine only; 0: any free one; -1: none
  std::string log_file;     // JSON lines (hub_log.h); empty: standard error
  std::string audit_heads;  // a folder for a signed head of the audit trail each day; empty: none
};
struct ExportCommand {
  std::string person_id{};
  std::string format{};  // export_files.h
  std::string out{};     // a new file, or for csv a new folder
  std::string from{};    // YYYY-MM-DD, both ends included; empty: all days
  std::string to{};
  ExportOptions options{};
  std::function<bool()> asked_to_stop{};  // empty: nobody can
};
struct UserOptions {
  std::string name;
  std::string display_name;
  std::string role = "therapist";
  std::string password;
};

// `place` is the hub's folder, made (0700) when missing, or a PostgreSQL address (postgres://...), which no
// message repeats. Each returns 0, or 1 with one line on `err`.
int initCommand(const HubMachine& machine, const std::string& place, const InitOptions& options);
int demoCommand(const HubMachine& machine, const std::string& place);
// Serves until `wait_for_end` returns.
int serveCommand(const HubMachine& machine, const std::string& place, const ServeOptions& options,
                 const std::function<void()>& wait_for_end);
int addUserCommand(const HubMachine& machine, const std::string& place, const UserOptions& options);
// For a forgotten one; ends the account's sessions. The second factor stays.
int setPasswordCommand(const HubMachine& machine, const std::string& place, const UserOptions& options);
// For a lost code device: the account signs in by its password alone again.
int resetFactorCommand(const HubMachine& machine, const std::string& place, const std::string& user_name);
// Everything about one person; `reason` is one of erasure.h's words.
int eraseCommand(const HubMachine& machine, const std::string& place, const std::string& person_id,
                 const std::string& reason);
// The ids of persons of whom nothing happened in `days` days, one a line. Erases nobody.
int dueCommand(const HubMachine& machine, const std::string& place, int days);
// One person's record in an open format, pseudonymous (person_export.h). It stands in the audit trail
// before the file exists; left in the middle nothing exists.
int exportCommand(const HubMachine& machine, const std::string& place, const ExportCommand& command);
int backupCommand(const HubMachine& machine, const std::string& place, const std::string& to);
// A PostgreSQL database was copied with its own tools just now: kept for the desk and in the audit trail.
int backedUpCommand(const HubMachine& machine, const std::string& place);
// After a PostgreSQL copy was put back: the next start is a new generation (clinic.h).
int restoredCommand(const HubMachine& machine, const std::string& place);
// The certificate's SHA-256 in hex; `with_backup`: on a second line the one that is shown after a rotation.
int fingerprintCommand(const HubMachine& machine, const std::string& place, bool with_backup = false);
int rotateCertificateCommand(const HubMachine& machine, const std::string& place, const Rotation& rotation);
// `head`: number:hash as auditHeadCommand printed it, a file that it wrote, or empty.
int verifyAuditCommand(const HubMachine& machine, const std::string& place, const std::string& head);
// Prints number:hash; with `out` also writes that file, signed (audit_head.h).
int auditHeadCommand(const HubMachine& machine, const std::string& place, const std::string& out = "");

}  // namespace newel
