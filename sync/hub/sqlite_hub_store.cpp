#include "sync/hub/sqlite_hub_store.h"

#include <sqlite3.h>

#include <condition_variable>
#include <mutex>
#include <optional>
#include <utility>
#include <vector>

#include "sync/common/database.h"
#include "sync/hub/group_commit.h"
#include "sync/hub/hub_schema.h"
#include "sync/hub/sql_hub_transaction.h"

namespace newel {
namespace {

// Readers beside the writer; more would only queue on the two cores of a small clinic's machine. Ours, no
// source.
constexpr int kReaders = 4;

class SqliteWriter : public CommitEngine {
 public:
  explicit SqliteWriter(std::unique_ptr<Database> database) : m_database(std::move(database)) {}

  absl::Status begin() override {
    return guarded([&] { m_transaction.emplace(*m_database); });
  }

  absl::Status run(const WriteBody& body, bool alone) override {
    absl::Status verdict;
    try {
      verdict = guarded([&]() -> absl::Status {
        if (!alone) m_database->run("SAVEPOINT body");
        SqlHubTransaction<Database> tables(*m_database);
        absl::Status status = body(tables);
        if (status.ok()) tables.finish();
        if (status.ok() && !alone) m_database->run("RELEASE body");
        return status;
      });
    } catch (...) {
      if (!alone) takeBack();
      throw;
    }
    if (!verdict.ok() && !alone) takeBack();
    return verdict;
  }

  // SQLite ends the transaction by itself after some errors, a full disk for one.
  bool isLost() override { return m_lost || sqlite3_get_autocommit(m_database->raw().getHandle()) != 0; }

  absl::Status commit() override {
    return guarded([&] {
      m_transaction->commit();
      m_transaction.reset();
    });
  }

  void rollBack() override {
    m_transaction.reset();
    m_lost = false;
  }

 private:
  void takeBack() {
    if (isLost()) return;
    const absl::Status taken = guarded([&] {
      m_database->run("ROLLBACK TO body");
      m_database->run("RELEASE body");
    });
    m_lost = !taken.ok();
  }

  std::unique_ptr<Database> m_database;
  std::optional<Transaction> m_transaction;
  bool m_lost = false;
};

class SqliteHubStore : public HubStore {
 public:
  SqliteHubStore(std::unique_ptr<Database> writer, std::vector<std::unique_ptr<Database>> readers)
      : m_writer(std::move(writer)), m_group(&m_writer), m_readers(std::move(readers)) {}

  absl::Status write(const std::function<absl::Status(HubTransaction&)>& body) override {
    return m_group.write(body);
  }

  absl::Status writeFirst(const std::function<absl::Status(HubTransaction&)>& body) override {
    return m_group.writeFirst(body);
  }

  std::size_t writersWaiting() override { return m_group.waiting(); }

  absl::Status read(const std::function<absl::Status(HubTransaction&)>& body) override {
    std::unique_ptr<Database> reader = takeReader();
    absl::Status status = guarded([&]() -> absl::Status {
      SQLite::Transaction view(reader->raw());  // deferred: a view, no lock; rolled back at the end
      SqlHubTransaction<Database> tables(*reader);
      return body(tables);
    });
    giveBack(std::move(reader));
    return status;
  }

 private:
  std::unique_ptr<Database> takeReader() {
    std::unique_lock lock(m_read_mutex);
    m_reader_free.wait(lock, [this] { return !m_readers.empty(); });
    auto reader = std::move(m_readers.back());
    m_readers.pop_back();
    return reader;
  }
  void giveBack(std::unique_ptr<Database> reader) {
    {
      const std::lock_guard lock(m_read_mutex);
      m_readers.push_back(std::move(reader));
    }
    m_reader_free.notify_one();
  }

  SqliteWriter m_writer;
  GroupCommit m_group;
  std::mutex m_read_mutex;
  std::condition_variable m_reader_free;
  std::vector<std::unique_ptr<Database>> m_readers;
};

}  // namespace

absl::StatusOr<std::unique_ptr<HubStore>> openSqliteHubStore(const std::string& path,
                                                             const std::string& vfs) {
  DatabaseOptions options;
  options.path = path;
  options.what = "the clinic's store";
  options.vfs = vfs;
  auto writer = Database::open(options, hubMigrations());
  if (!writer.ok()) return writer.status();
  std::vector<std::unique_ptr<Database>> readers;
  for (int i = 0; i < kReaders; ++i) {
    auto reader = Database::open(options, hubMigrations());
    if (!reader.ok()) return reader.status();
    readers.push_back(*std::move(reader));
  }
  return std::unique_ptr<HubStore>(std::make_unique<SqliteHubStore>(*std::move(writer), std::move(readers)));
}

absl::Status scrubSqliteHubStore(const std::string& path) {
  DatabaseOptions options;
  options.path = path;
  options.what = "the clinic's store";
  auto database = Database::open(options, hubMigrations());
  if (!database.ok()) return database.status();
  return guarded([&]() -> absl::Status {
    (*database)->exec("VACUUM");
    // The first column is 1 when somebody was still reading the log.
    const int busy = (*database)->raw().execAndGet("PRAGMA wal_checkpoint(TRUNCATE)").getInt();
    if (busy != 0) return absl::UnavailableError("the store is in use");
    return absl::OkStatus();
  });
}

}  // namespace newel
