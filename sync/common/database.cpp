#include "sync/common/database.h"

#include <sqlite3.h>

#include <filesystem>
#include <fstream>
#include <system_error>
#include <utility>

#include "sync/common/broken_variant.h"

namespace newel {
namespace {

namespace fs = std::filesystem;

constexpr int kBusyMs = 5000;

absl::Status fileStatus(const std::error_code& error, const std::string& path) {
  if (error == std::errc::no_space_on_device) return absl::ResourceExhaustedError("disk full: " + path);
  if (error == std::errc::permission_denied || error == std::errc::operation_not_permitted) {
    return absl::PermissionDeniedError("not allowed: " + path);
  }
  return absl::InternalError(path + ": " + error.message());
}

absl::Status makePrivate(const std::string& path, fs::perms perms) {
  std::error_code error;
  fs::permissions(path, perms, error);
  return error ? fileStatus(error, path) : absl::OkStatus();
}

// SQLite gives its log and index files the permissions of the store itself.
absl::Status ensurePrivateStore(const std::string& path) {
  if (!fs::exists(path)) {
    absl::Status made = writePrivateFile(path, "");
    if (!made.ok()) return made;
  }
  return makePrivate(path, fs::perms::owner_read | fs::perms::owner_write);
}

int versionOf(Database& database) { return database.raw().execAndGet("PRAGMA user_version").getInt(); }

absl::Status refuseNewer(Database& database, const DatabaseOptions& options,
                         const std::vector<Migration>& migrations) {
  const int version = versionOf(database);
  const int newest = migrations.empty() ? 0 : migrations.back().number;
  if (version <= newest) return absl::OkStatus();
  return absl::FailedPreconditionError(options.what + " was written by a newer version of this program (" +
                                       std::to_string(version) + "; this one reads up to " +
                                       std::to_string(newest) + "). Nothing was changed: " + options.path);
}

void migrate(Database& database, const std::vector<Migration>& migrations) {
  const int version = versionOf(database);
  for (const Migration& migration : migrations) {
    if (migration.number <= version) continue;
    Transaction transaction(database);
    database.exec(migration.sql);
    database.exec("PRAGMA user_version = " + std::to_string(migration.number));
    transaction.commit();
  }
}

absl::Status checkPages(Database& database) {
  const std::string found = database.raw().execAndGet("PRAGMA quick_check(1)").getString();
  return found == "ok" ? absl::OkStatus() : absl::DataLossError("store: " + found);
}

// The log goes along: it may hold the last commits.
absl::StatusOr<std::string> setAside(const std::string& path) {
  for (int number = 1;; ++number) {
    const std::string name = path + ".set-aside-" + std::to_string(number);
    if (fs::exists(name)) continue;
    std::error_code error;
    fs::rename(path, name, error);
    if (error) return fileStatus(error, path);
    for (const char* suffix : {"-wal", "-shm"}) {
      if (fs::exists(path + suffix)) fs::rename(path + suffix, name + suffix, error);
    }
    return name;
  }
}

}  // namespace

absl::Status statusOf(const SQLite::Exception& error) {
  const std::string text = std::string("store: ") + error.what();
  switch (error.getErrorCode()) {
    case SQLITE_FULL:
      return absl::ResourceExhaustedError("disk full: " + text);
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
      return absl::UnavailableError(text);
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
      return absl::DataLossError(text);
    case SQLITE_CONSTRAINT:
      return absl::AlreadyExistsError(text);
    case SQLITE_READONLY:
    case SQLITE_PERM:
    case SQLITE_AUTH:
      return absl::PermissionDeniedError(text);
    case SQLITE_CANTOPEN:
      return absl::NotFoundError(text);
    default:
      return absl::InternalError(text);
  }
}

Database::Database(const std::string& path, int flags, const std::string& vfs)
    : m_database(path, flags, kBusyMs, vfs) {}

SQLite::Statement& Database::prepared(const char* sql) {
  auto& slot = m_statements[sql];
  if (!slot) slot = std::make_unique<SQLite::Statement>(m_database, sql);
  slot->tryReset();
  return *slot;
}

// After a flush that failed, the system goes on showing what never reached the disk, and takes it for
// written. A program that dies then and starts again would read such a commit in the log and add more behind
// it; the next power cut would tear all of that away. So the log is carried into the store, where it is
// flushed anew, before anything is added. While somebody else is reading that waits: they have opened it, and
// done so then.
SQLite::Database& Database::settled() {
  if (m_log_settled || isBroken(Broken::TrustTheLog)) return m_database;
  sqlite3* const handle = m_database.getHandle();
  sqlite3_busy_timeout(handle, 0);
  const int code = sqlite3_wal_checkpoint_v2(handle, nullptr, SQLITE_CHECKPOINT_TRUNCATE, nullptr, nullptr);
  sqlite3_busy_timeout(handle, kBusyMs);
  if (code != SQLITE_OK && code != SQLITE_BUSY) throw SQLite::Exception(handle, code);
  m_log_settled = code == SQLITE_OK;
  return m_database;
}

Transaction::Transaction(Database& database)
    : m_transaction(database.settled(), SQLite::TransactionBehavior::IMMEDIATE) {}

absl::StatusOr<std::unique_ptr<Database>> Database::open(const DatabaseOptions& options,
                                                         const std::vector<Migration>& migrations) {
  if (options.vfs.empty()) {
    const absl::Status made = ensurePrivateStore(options.path);
    if (!made.ok()) return made;
  }
  std::unique_ptr<Database> database;
  const absl::Status opened = guarded([&]() -> absl::Status {
    database.reset(new Database(options.path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, options.vfs));
    database->exec("PRAGMA journal_mode = WAL");
    database->exec(isBroken(Broken::NoFlush) ? "PRAGMA synchronous = OFF" : "PRAGMA synchronous = FULL");
    database->exec("PRAGMA foreign_keys = ON");
    // What is deleted leaves no bytes behind in free pages.
    database->exec("PRAGMA secure_delete = ON");
    if (options.check_pages) {
      absl::Status pages = checkPages(*database);
      if (!pages.ok()) return pages;
    }
    if (options.prepare) options.prepare(database->raw());
    absl::Status readable = refuseNewer(*database, options, migrations);
    if (!readable.ok()) return readable;
    // A full disk may still be read from; the first write tries again.
    absl::Status settled = guarded([&] { database->settled(); });
    if (!settled.ok() && !absl::IsResourceExhausted(settled)) return settled;
    migrate(*database, migrations);
    if (options.verify) options.verify(*database);
    return absl::OkStatus();
  });
  if (opened.ok()) return database;
  database.reset();
  if (!absl::IsDataLoss(opened)) return opened;
  if (!options.set_aside || !options.vfs.empty()) {
    return absl::DataLossError(options.what + " cannot be read; it was left as it is: " + options.path +
                               " (" + std::string(opened.message()) + ")");
  }
  const auto name = setAside(options.path);
  if (!name.ok()) return name.status();
  return absl::DataLossError(options.what + " could not be read; it was set aside as " + *name);
}

absl::Status ensurePrivateFolder(const std::string& folder) {
  std::error_code error;
  fs::create_directories(folder, error);
  if (error) return fileStatus(error, folder);
  return makePrivate(folder, fs::perms::owner_all);
}

absl::Status writePrivateFile(const std::string& path, const std::string& content) {
  if (fs::exists(path)) return absl::AlreadyExistsError(path + " is there already");
  {
    const std::ofstream made(path, std::ios::binary);
    if (!made) return absl::PermissionDeniedError("cannot write " + path);
  }
  absl::Status closed = makePrivate(path, fs::perms::owner_read | fs::perms::owner_write);
  if (!closed.ok()) return closed;
  std::ofstream stream(path, std::ios::binary | std::ios::trunc);
  stream << content;
  stream.flush();
  return stream ? absl::OkStatus() : absl::ResourceExhaustedError("could not write all of " + path);
}

}  // namespace newel
