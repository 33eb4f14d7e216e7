#include "sync/hub/hub_commands.h"

#include <filesystem>
#include <fstream>
#include <memory>
#include <ostream>
#include <sstream>
#include <vector>

#include "sync/common/database.h"
#include "sync/common/pairing_ticket.h"
#include "sync/hub/audit_head.h"
#include "sync/hub/backup.h"
#include "sync/hub/daily_round.h"
#include "sync/hub/demo_clinic.h"
#include "sync/hub/erasure.h"
#include "sync/hub/hub.h"
#include "sync/hub/hub_place.h"
#include "sync/hub/hub_server.h"
#include "sync/hub/postgres_session.h"
#include "sync/hub/sqlite_hub_store.h"

namespace newel {
namespace {

namespace fs = std::filesystem;

std::vector<std::string> splitHosts(const std::string& text) {
  std::vector<std::string> hosts;
  std::istringstream stream(text);
  for (std::string host; std::getline(stream, host, ',');) hosts.push_back(host);
  return hosts;
}

absl::StatusOr<v1::Role> roleOf(const std::string& word) {
  if (word == "therapist") return v1::ROLE_THERAPIST;
  if (word == "lead") return v1::ROLE_LEAD;
  if (word == "administrator") return v1::ROLE_ADMINISTRATOR;
  if (word == "auditor") return v1::ROLE_AUDITOR;
  return absl::InvalidArgumentError("role: therapist, lead, administrator or auditor");
}

bool isLoopback(const std::string& listen) {
  const std::string host = listen.substr(0, listen.rfind(':'));
  return host == "localhost" || host == "[::1]" || host.rfind("127.", 0) == 0;
}

// Write-new and rename, so that whoever waits for it never reads half a number.
absl::Status writePortFile(const std::string& path, int port) {
  const std::string part = path + ".part";
  {
    std::ofstream stream(part, std::ios::trunc);
    stream << port << "\n";
    if (!stream.flush()) return absl::PermissionDeniedError("cannot write " + path);
  }
  std::error_code error;
  fs::rename(part, path, error);
  return error ? absl::InternalError(path + ": " + error.message()) : absl::OkStatus();
}

absl::Status dailyWork(const HubMachine& machine, Hub& hub, const std::string& head_folder, HubLog& log) {
  absl::Status kept = keepClinicCertificates(hub.store(), hub.clinic(), *machine.clock);
  if (!kept.ok()) {
    log.write({.level = LogLevel::Error,
               .event = "certificate.failed",
               .outcome = absl::StatusCodeToString(kept.code())});
    return kept;
  }
  if (head_folder.empty()) return absl::OkStatus();
  const auto head = writeDailyHead(head_folder, hub.store(), hub.clinic(), machine.clock->wall());
  if (!head.ok()) {
    log.write({.level = LogLevel::Error,
               .event = "audit.head_failed",
               .outcome = absl::StatusCodeToString(head.status().code())});
    return head.status();
  }
  if (!head->empty()) log.write({.event = "audit.head_written", .detail = *head});
  return absl::OkStatus();
}

void say(const HubMachine& machine, Hub& hub, const HubServer& server, HubLog& log) {
  const std::string fingerprint = shortFingerprint(hub.clinic().certificate_sha256);
  *machine.out << "Serving " << hub.clinic().card.name() << " on port " << server.port() << ", certificate "
               << fingerprint << "\n"
               << std::flush;
  if (server.metricsPort() > 0) {
    *machine.out << "Metrics: http://127.0.0.1:" << server.metricsPort() << "/metrics\n" << std::flush;
  }
  log.write({.event = "hub.started",
             .detail = "port " + std::to_string(server.port()) + ", certificate " + fingerprint});
}

}  // namespace

int initCommand(const HubMachine& machine, const std::string& place, const InitOptions& options) {
  auto store = openStore(place, /*make=*/true);
  if (!store.ok()) return failed(machine, store.status());
  v1::ClinicCard card;
  card.set_name(options.clinic_name);
  card.set_phone(options.phone);
  card.set_hours(options.hours);
  card.set_emergency_number(options.emergency);
  const absl::Status made = initClinic(**store, std::move(card), splitHosts(options.hosts), /*demo=*/false,
                                       *machine.clock, *machine.random);
  if (!made.ok()) return failed(machine, made);
  *machine.out << "The clinic is ready. Add a therapist: newel-hub user add "
               << (isPostgresAddress(place) ? std::string("--store ADDRESS") : "--data " + place)
               << " --name NAME\n";
  return 0;
}

int demoCommand(const HubMachine& machine, const std::string& place) {
  auto store = openStore(place, /*make=*/true);
  if (!store.ok()) return failed(machine, store.status());
  const absl::Status filled = fillDemoClinic(**store, *machine.clock, *machine.random);
  if (!filled.ok()) return failed(machine, filled);
  *machine.out << "Demo clinic, everybody in it invented. Sign in at the desk as " << kDemoUserName
               << " with the password " << kDemoPassword << " (demo only).\n";
  return 0;
}

int serveCommand(const HubMachine& machine, const std::string& place, const ServeOptions& options,
                 const std::function<void()>& wait_for_end) {
  auto store = openStore(place, /*make=*/false);
  if (!store.ok()) return failed(machine, store.status());
  const auto hub = Hub::open(store->get(), machine.clock, machine.random);
  if (!hub.ok()) return failed(machine, hub.status());
  if ((*hub)->clinic().demo && !isLoopback(options.listen) && !options.demo_on_network) {
    return failed(machine, absl::FailedPreconditionError(
                               "the demo clinic's password is known to everybody, so it is served on this "
                               "machine only; --demo-on-network if you mean it"));
  }
  const auto log = HubLog::open(machine.clock, options.log_file);
  if (!log.ok()) return failed(machine, log.status());
  const GrpcComplaints complaints(log->get());
  absl::Status headed = dailyWork(machine, **hub, options.audit_heads, **log);
  if (!headed.ok()) return failed(machine, headed);
  const auto server =
      HubServer::start(hub->get(), {options.listen, options.phone_host, options.metrics_port, log->get()});
  if (!server.ok()) return failed(machine, server.status());
  if (!options.port_file.empty()) {
    const absl::Status written = writePortFile(options.port_file, (*server)->port());
    if (!written.ok()) return failed(machine, written);
  }
  say(machine, **hub, **server, **log);
  {
    const DailyRound daily(machine.clock, [&, raw = hub->get()] {
      dailyWork(machine, *raw, options.audit_heads, **log).IgnoreError();  // it stands in the log
    });
    wait_for_end();
  }
  (*log)->write({LogLevel::Info, "hub.stopping"});
  (*server)->stop();
  (*log)->write({LogLevel::Info, "hub.stopped"});
  *machine.out << "Stopped.\n" << std::flush;
  return 0;
}

int addUserCommand(const HubMachine& machine, const std::string& place, const UserOptions& options) {
  auto store = openStore(place, /*make=*/false);
  if (!store.ok()) return failed(machine, store.status());
  const auto role = roleOf(options.role);
  if (!role.ok()) return failed(machine, role.status());
  const auto hub = Hub::open(store->get(), machine.clock, machine.random);
  if (!hub.ok()) return failed(machine, hub.status());
  const std::string shown = options.display_name.empty() ? options.name : options.display_name;
  const auto added = (*hub)->accounts().add(options.name, shown, *role, options.password);
  if (!added.ok()) return failed(machine, added.status());
  *machine.out << "Added " << added->user_name() << ".\n";
  return 0;
}

int setPasswordCommand(const HubMachine& machine, const std::string& place, const UserOptions& options) {
  auto store = openStore(place, /*make=*/false);
  if (!store.ok()) return failed(machine, store.status());
  const auto hub = Hub::open(store->get(), machine.clock, machine.random);
  if (!hub.ok()) return failed(machine, hub.status());
  const absl::Status set = (*hub)->accounts().setPassword(options.name, options.password);
  if (!set.ok()) return failed(machine, set);
  *machine.out << options.name << " has a new password, and is signed out everywhere.\n";
  return 0;
}

int resetFactorCommand(const HubMachine& machine, const std::string& place, const std::string& user_name) {
  auto store = openStore(place, /*make=*/false);
  if (!store.ok()) return failed(machine, store.status());
  const auto hub = Hub::open(store->get(), machine.clock, machine.random);
  if (!hub.ok()) return failed(machine, hub.status());
  const absl::Status reset = (*hub)->accounts().resetFactor(user_name);
  if (!reset.ok()) return failed(machine, reset);
  *machine.out << "The second factor of " << user_name
               << " is gone. Make sure that it was the owner who asked.\n";
  return 0;
}

int eraseCommand(const HubMachine& machine, const std::string& place, const std::string& person_id,
                 const std::string& reason) {
  auto store = openStore(place, /*make=*/false);
  if (!store.ok()) return failed(machine, store.status());
  auto hub = Hub::open(store->get(), machine.clock, machine.random);
  if (!hub.ok()) return failed(machine, hub.status());
  const absl::Status erased = erasePerson((*hub)->context(), person_id, reason);
  if (!erased.ok()) return failed(machine, erased);
  hub->reset();
  store->reset();
  *machine.out << "Erased. Backups made before still hold this person: replace them.\n";
  // PostgreSQL frees the rows' room by itself (autovacuum); its own files are the operator's.
  if (isPostgresAddress(place)) return 0;
  const absl::Status scrubbed = scrubSqliteHubStore(storePath(place));
  if (scrubbed.ok()) return 0;
  return failed(machine, absl::Status(scrubbed.code(),
                                      "the records are gone from the store; their bytes may stay on the disk "
                                      "until the hub is stopped and started: " +
                                          std::string(scrubbed.message())));
}

int dueCommand(const HubMachine& machine, const std::string& place, int days) {
  if (days < 1) return failed(machine, absl::InvalidArgumentError("days: 1 or more"));
  auto store = openStore(place, /*make=*/false);
  if (!store.ok()) return failed(machine, store.status());
  const auto due = personsDue(**store, machine.clock->wall(), absl::Hours(24) * days);
  if (!due.ok()) return failed(machine, due.status());
  for (const auto& id : *due) *machine.out << id << "\n";
  return 0;
}

namespace {

absl::Status tellOfBackup(const HubMachine& machine, const std::string& place) {
  const auto store = openStore(place, /*make=*/false);
  if (!store.ok()) return store.status();
  return (*store)->write([&](HubTransaction& transaction) -> absl::Status {
    if (transaction.setting("card").empty()) return absl::NotFoundError("there is no clinic here");
    noteBackup(transaction, machine.clock->wall());
    AuditTrail(machine.clock).add(transaction, {.action = "store.backup"});
    return absl::OkStatus();
  });
}

}  // namespace

int backupCommand(const HubMachine& machine, const std::string& place, const std::string& to) {
  if (isPostgresAddress(place)) {
    return failed(machine,
                  absl::FailedPreconditionError(
                      "a PostgreSQL database is backed up with pg_dump and restored with pg_restore, "
                      "also while it is served; say so with newel-hub backed-up; after it was restored run "
                      "newel-hub restored on the copy"));
  }
  const absl::Status done = backupStore(storePath(place), to);
  if (!done.ok()) return failed(machine, done);
  // So that who looks at the trail sees when the last copy was made; the copy itself is good without the
  // line.
  const absl::Status noted = tellOfBackup(machine, place);
  if (!noted.ok()) *machine.err << "newel-hub: not written into the audit trail: " << noted.message() << "\n";
  *machine.out << "Backed up and checked: " << to << "\nTo restore, put it into an empty folder as "
               << kHubStoreName << " and serve that folder.\n";
  return 0;
}

int backedUpCommand(const HubMachine& machine, const std::string& place) {
  if (!isPostgresAddress(place)) {
    return failed(machine,
                  absl::FailedPreconditionError(
                      "a store in a folder is copied and checked with newel-hub backup, which notes it"));
  }
  const absl::Status noted = tellOfBackup(machine, place);
  if (!noted.ok()) return failed(machine, noted);
  *machine.out << "Noted: the database was backed up now. Whether the copy is good only a restore shows.\n";
  return 0;
}

int restoredCommand(const HubMachine& machine, const std::string& place) {
  auto store = openStore(place, /*make=*/false);
  if (!store.ok()) return failed(machine, store.status());
  const absl::Status marked = (*store)->write([&](HubTransaction& transaction) -> absl::Status {
    if (transaction.setting("card").empty()) return absl::NotFoundError("there is no clinic here");
    transaction.putSetting(kBackupMark, "1");
    return absl::OkStatus();
  });
  if (!marked.ok()) return failed(machine, marked);
  *machine.out << "Marked as restored. Start the hubs anew: phones then offer everything again.\n";
  return 0;
}

}  // namespace newel
