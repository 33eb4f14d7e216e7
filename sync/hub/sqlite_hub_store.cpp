#include "sync/hub/sqlite_hub_store.h"

#include <condition_variable>
#include <mutex>
#include <utility>
#include <vector>

#include "sync/common/database.h"
#include "sync/hub/hub_schema.h"
#include "sync/hub/sqlite_hub_transaction.h"

namespace newel {
namespace {

// Readers beside the writer; more would only queue on the two cores of a small clinic's machine. Ours, no
// source.
constexpr int kReaders = 4;

class SqliteHubStore : public HubStore {
 public:
  SqliteHubStore(std::unique_ptr<Database> writer, std::vector<std::unique_ptr<Database>> readers)
      : m_writer(std::move(writer)), m_readers(std::move(readers)) {}

  absl::Status write(const std::function<absl::Status(HubTransaction&)>& body) override {
    const std::lock_guard lock(m_write_mutex);
    return guarded([&]() -> absl::Status {
      Transaction transaction(*m_writer);
      SqliteHubTransaction tables(*m_writer);
      absl::Status status = body(tables);
      if (status.ok()) transaction.commit();
      return status;
    });
  }

  absl::Status read(const std::function<absl::Status(HubTransaction&)>& body) override {
    std::unique_ptr<Database> reader = takeReader();
    absl::Status status = guarded([&]() -> absl::Status {
      SQLite::Transaction view(reader->raw());  // deferred: a view, no lock; rolled back at the end
      SqliteHubTransaction tables(*reader);
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

  std::mutex m_write_mutex;
  std::unique_ptr<Database> m_writer;
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
