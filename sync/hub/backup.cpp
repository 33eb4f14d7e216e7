#include "sync/hub/backup.h"

#include <SQLiteCpp/Backup.h>
#include <absl/strings/numbers.h>

#include <cstdint>
#include <filesystem>
#include <system_error>

#include "sync/common/database.h"
#include "sync/hub/audit_trail.h"
#include "sync/hub/clinic.h"
#include "sync/hub/hub_schema.h"
#include "sync/hub/sql_hub_transaction.h"

namespace newel {
namespace {

namespace fs = std::filesystem;

constexpr int kPagesAStep = 256;
constexpr int kBusyMs = 5000;
constexpr char kLastBackup[] = "last_backup";  // seconds since 1970, in digits

void copyPages(const std::string& from, const std::string& to) {
  SQLite::Database source(from, SQLite::OPEN_READONLY, kBusyMs);
  SQLite::Database copy(to, SQLite::OPEN_READWRITE, kBusyMs);
  SQLite::Backup backup(copy, source);
  while (backup.getRemainingPageCount() >= 0) {
    backup.executeStep(kPagesAStep);
    if (backup.getRemainingPageCount() == 0) break;
  }
}

absl::Status checkCopy(Database& copy) {
  const std::string pages = copy.raw().execAndGet("PRAGMA integrity_check(1)").getString();
  if (pages != "ok") return absl::DataLossError("backup: " + pages);
  SqlHubTransaction<Database> tables(copy);
  return verifyAudit(tables.auditAfter(0, UINT32_MAX), std::nullopt);
}

absl::Status markCopy(const std::string& path) {
  DatabaseOptions options;
  options.path = path;
  options.what = "the backup";
  auto copy = Database::open(options, hubMigrations());
  if (!copy.ok()) return copy.status();
  return guarded([&]() -> absl::Status {
    absl::Status good = checkCopy(**copy);
    if (!good.ok()) return good;
    Transaction transaction(**copy);
    SqlHubTransaction<Database>(**copy).putSetting(kBackupMark, "1");
    transaction.commit();
    // One file and no log beside it.
    (*copy)->exec("PRAGMA journal_mode = DELETE");
    return absl::OkStatus();
  });
}

}  // namespace

absl::Status backupStore(const std::string& store_path, const std::string& to) {
  if (fs::exists(to)) return absl::AlreadyExistsError(to + " is there already");
  if (!fs::exists(store_path)) return absl::NotFoundError(store_path + " is not there");
  // 1. The copy is made under another name. 2. It is checked and marked. 3. It gets its name. A crash before
  //    3 leaves a ".part" that nobody takes for a backup.
  const std::string part = to + ".part";
  std::error_code error;
  for (const char* suffix : {"", "-wal", "-shm", "-journal"}) fs::remove(part + suffix, error);
  absl::Status made = writePrivateFile(part, "");
  if (!made.ok()) return made;
  absl::Status copied = guarded([&] { copyPages(store_path, part); });
  if (!copied.ok()) return copied;
  absl::Status marked = markCopy(part);
  if (!marked.ok()) return marked;
  fs::rename(part, to, error);
  return error ? absl::InternalError(to + ": " + error.message()) : absl::OkStatus();
}

void noteBackup(HubTransaction& transaction, absl::Time at) {
  transaction.putSetting(kLastBackup, std::to_string(absl::ToUnixSeconds(at)));
}

std::optional<absl::Time> lastBackup(HubTransaction& transaction) {
  std::int64_t seconds = 0;
  if (!absl::SimpleAtoi(transaction.setting(kLastBackup), &seconds)) return std::nullopt;
  return absl::FromUnixSeconds(seconds);
}

}  // namespace newel
