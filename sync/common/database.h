// One SQLite file, opened the one way we open them: write-ahead log, every commit on the disk before it
// returns (synchronous FULL), foreign keys on, migrations forward only. Transactions are scope objects.
// Inside sync only; SQL stays in the stores. SQLiteCpp's exceptions pass through here and stop in guarded().
#pragma once

#include <SQLiteCpp/SQLiteCpp.h>
#include <absl/status/status.h>
#include <absl/status/statusor.h>

#include <functional>
#include <memory>
#include <string>
#include <type_traits>
#include <unordered_map>
#include <utility>
#include <vector>

namespace newel {

struct Migration {
  int number = 0;   // 1, 2, 3 ... without a gap
  const char* sql;  // runs in one transaction together with its number
};

class Database;

struct DatabaseOptions {
  std::string path;
  std::string what;  // for messages, "this phone's store"
  std::string vfs;   // SQLite's file layer by name; empty: the system's
  // A store that cannot be read is moved to "<path>.set-aside-N", never deleted. With a `vfs` of its own the
  // caller moves it: only it knows where its files are.
  bool set_aside = false;
  bool check_pages = false;  // look at every page while opening
  // Called once on the open file, before its migrations: functions that SQL may use.
  std::function<void(SQLite::Database&)> prepare{};
  // Called last: may throw, as reading the store may, when what is in it cannot be used.
  std::function<void(Database&)> verify{};
};

// Bytes rather than text.
struct Blob {
  const std::string& bytes;
};

// SQLite's error in our codes: full disk kResourceExhausted, busy kUnavailable, damaged kDataLoss,
// constraint kAlreadyExists, read-only or forbidden kPermissionDenied, no such file kNotFound, else
// kInternal.
absl::Status statusOf(const SQLite::Exception& error);

// Runs `body` and turns an exception of SQLite into a status. `body` returns absl::Status, absl::StatusOr<T>,
// or nothing.
template <typename Body>
auto guarded(Body&& body) {
  using Result = std::invoke_result_t<Body>;
  using Returned = std::conditional_t<std::is_void_v<Result>, absl::Status, Result>;
  try {
    if constexpr (std::is_void_v<Result>) {
      body();
      return Returned(absl::OkStatus());
    } else {
      return Returned(body());
    }
  } catch (const SQLite::Exception& error) {
    return Returned(statusOf(error));
  }
}

// Rows of one query; the statement is free for the next use when this goes.
class Rows {
 public:
  explicit Rows(SQLite::Statement& statement) : m_statement(&statement) {}
  ~Rows() {
    if (m_statement != nullptr) m_statement->tryReset();
  }
  Rows(Rows&& other) noexcept : m_statement(std::exchange(other.m_statement, nullptr)) {}
  Rows(const Rows&) = delete;
  Rows& operator=(const Rows&) = delete;
  Rows& operator=(Rows&&) = delete;

  bool next() { return m_statement->executeStep(); }
  std::string text(int column) const { return m_statement->getColumn(column).getString(); }
  // Good until next().
  std::string_view view(int column) const {
    const SQLite::Column cell = m_statement->getColumn(column);
    return {static_cast<const char*>(cell.getBlob()), static_cast<std::size_t>(cell.getBytes())};
  }
  std::int64_t number(int column) const { return m_statement->getColumn(column).getInt64(); }
  bool isNull(int column) const { return m_statement->getColumn(column).isNull(); }

 private:
  SQLite::Statement* m_statement;
};

// Not thread-safe: its owner has a lock.
class Database {
 public:
  // Opens or makes the file (0600) and brings it up to the last migration. kFailedPrecondition when a newer
  // program wrote it; kDataLoss when it cannot be read (and, with set_aside, where it was moved to).
  static absl::StatusOr<std::unique_ptr<Database>> open(const DatabaseOptions& options,
                                                        const std::vector<Migration>& migrations);

  // These throw SQLite::Exception. Statements are prepared once and kept, by the address of `sql`: it must be
  // a literal.
  template <typename... Values>
  int run(const char* sql, const Values&... values) {
    SQLite::Statement& statement = prepared(sql);
    bindAll<Lives::ThroughTheRun>(statement, values...);
    const int changed = statement.exec();
    statement.reset();
    return changed;
  }
  template <typename... Values>
  Rows query(const char* sql, const Values&... values) {
    SQLite::Statement& statement = prepared(sql);
    bindAll<Lives::ForTheCallAlone>(statement, values...);
    return Rows(statement);
  }
  void exec(const std::string& sql) { m_database.exec(sql); }
  SQLite::Database& raw() { return m_database; }

 private:
  friend class Transaction;
  Database(const std::string& path, int flags, const std::string& vfs);
  SQLite::Statement& prepared(const char* sql);
  // Before each write: the log is as good as the disk says it is. Throws when it cannot be made so.
  SQLite::Database& settled();

  // How long a value stays where it is: what lives through the run is not copied for it.
  enum class Lives { ForTheCallAlone, ThroughTheRun };

  template <Lives kLives, typename... Values>
  static void bindAll(SQLite::Statement& statement, const Values&... values) {
    int index = 0;
    (bindOne<kLives>(statement, ++index, values), ...);
  }
  template <Lives kLives>
  static void bindOne(SQLite::Statement& s, int i, const std::string& text) {
    if constexpr (kLives == Lives::ThroughTheRun) {
      s.bindNoCopy(i, text);
    } else {
      s.bind(i, text);
    }
  }
  template <Lives kLives>
  static void bindOne(SQLite::Statement& s, int i, const char* text) {
    s.bind(i, text);
  }
  template <Lives kLives>
  static void bindOne(SQLite::Statement& s, int i, const Blob& blob) {
    const int size = static_cast<int>(blob.bytes.size());
    if constexpr (kLives == Lives::ThroughTheRun) {
      s.bindNoCopy(i, blob.bytes.data(), size);
    } else {
      s.bind(i, blob.bytes.data(), size);
    }
  }
  template <Lives kLives, typename Number>
  requires std::is_integral_v<Number>
  static void bindOne(SQLite::Statement& s, int i, Number number) {
    s.bind(i, static_cast<std::int64_t>(number));
  }

  SQLite::Database m_database;
  std::unordered_map<const char*, std::unique_ptr<SQLite::Statement>> m_statements;
  bool m_log_settled = false;
};

// Rolls back unless committed. Takes SQLite's write lock at once, so that two writers wait and never clash.
class Transaction {
 public:
  explicit Transaction(Database& database);
  ~Transaction() = default;
  Transaction(const Transaction&) = delete;
  Transaction& operator=(const Transaction&) = delete;
  void commit() { m_transaction.commit(); }

 private:
  SQLite::Transaction m_transaction;
};

// Makes `folder` (and those above it) when missing, and closes it to everybody else (0700).
absl::Status ensurePrivateFolder(const std::string& folder);
// Writes `content` to a new file that nobody else may read (0600). kAlreadyExists when there is one.
absl::Status writePrivateFile(const std::string& path, const std::string& content);

}  // namespace newel
