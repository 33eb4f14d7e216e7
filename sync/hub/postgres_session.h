// One connection to PostgreSQL, opened the one way we open them: our own schema, UTF-8, every commit on the
// disk before it returns, and time limits, so that a process that hangs never holds up another clinic's desk
// for long. Errors carry PostgreSQL's short message only, never a row, a value or a word of the address.
#pragma once

#include <absl/status/status.h>
#include <absl/status/statusor.h>

#include <concepts>
#include <cstdint>
#include <exception>
#include <map>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "sync/common/database.h"  // Blob, Migration
#include "sync/hub/postgres_array.h"

struct pg_conn;
struct pg_result;

namespace newel {

// "postgres://..." or "postgresql://...".
bool isPostgresAddress(const std::string& text);

class PgError : public std::exception {
 public:
  PgError(std::string state, std::string text) : m_state(std::move(state)), m_text(std::move(text)) {}
  const char* what() const noexcept override { return m_text.c_str(); }
  // SQLSTATE; empty: the connection is gone.
  const std::string& state() const { return m_state; }

 private:
  std::string m_state;
  std::string m_text;
};

// In our codes, as statusOf() does for SQLite: full disk kResourceExhausted, lost, locked, clashed or
// shutting down kUnavailable, damaged kDataLoss, constraint kAlreadyExists, forbidden kPermissionDenied, text
// that is no UTF-8 kInvalidArgument, else kInternal.
absl::Status statusOf(const PgError& error);

// True for a transaction that may simply be run again: 40001 and 40P01.
bool mayRunAgain(const PgError& error);

struct PgResultFree {
  void operator()(pg_result* result) const;
};
using PgResult = std::unique_ptr<pg_result, PgResultFree>;

// Rows of one query, all of them here already.
class PgRows {
 public:
  explicit PgRows(PgResult result);
  bool next() { return ++m_row < m_count; }
  std::string text(int column) const;
  std::string_view view(int column) const;  // good as long as this is
  std::int64_t number(int column) const;
  bool isNull(int column) const;
  int columns() const;

 private:
  PgResult m_result;
  int m_row = -1;
  int m_count = 0;
};

struct PgNotice {
  std::string payload;
};

// Not thread-safe: its owner has a lock, or lends it to one thread at a time.
class PgSession {
 public:
  // `address` is a URI; what it leaves out comes from the usual PG environment. kInvalidArgument: the address
  // cannot be read (it is not repeated: it may hold a password). kUnavailable: nobody answers.
  // kFailedPrecondition: the server would lose acknowledged commits in a power cut (fsync = off).
  static absl::StatusOr<std::unique_ptr<PgSession>> open(const std::string& address);
  ~PgSession();
  PgSession(const PgSession&) = delete;
  PgSession& operator=(const PgSession&) = delete;

  // These throw PgError. `sql` must be a literal with ? or ?1, ?2 ... for its values, as for SQLite; it is
  // prepared once and kept.
  template <typename... Values>
  int run(const char* sql, const Values&... values) {
    return changedBy(execute(sql, {Value(values)...}));
  }
  template <typename... Values>
  PgRows query(const char* sql, const Values&... values) {
    return PgRows(execute(sql, {Value(values)...}));
  }
  // Without waiting: it goes to the server together with whatever is asked for next, in this order, and its
  // error is thrown there. Each answer that nobody waits for is one way to the server and back less.
  template <typename... Values>
  void later(const char* sql, const Values&... values) {
    m_waiting.push_back({sql, {Value(values)...}});
  }
  // Several statements, no values. Goes at once, behind what waits.
  void exec(const char* sql);
  // The same; the last one's rows, all of them text.
  PgRows ask(const char* sql);
  // With what waits.
  void commit();
  // Ends the transaction and forgets what waits. Nobody waits for the answer: it is taken by whatever comes
  // next.
  void rollBackUnheard();
  // Sends what waits; throws the first error of it.
  void settle();
  void forgetWaiting() { m_waiting.clear(); }

  // Connects again when the connection is gone, as far as this side has heard; throws when that fails too.
  void ensure();
  bool isOpen() const;
  // How many questions the server has answered well on this session so far.
  std::uint64_t answered() const { return m_answered; }
  // Waits up to `ms` for what others announced; empty: nothing came.
  std::vector<PgNotice> notices(int ms);

 private:
  struct Value {
    template <std::integral Number>
    explicit Value(Number number) : bytes(std::to_string(static_cast<std::int64_t>(number))), binary(0) {}
    explicit Value(const std::string& text) : bytes(text) {}
    explicit Value(const char* text) : bytes(text) {}
    explicit Value(const Blob& blob) : bytes(blob.bytes) {}
    explicit Value(const PgArray& array) : bytes(array.bytes()) {}
    std::string bytes;
    int binary = 1;  // text and bytes go as they are, with their length; numbers as digits
  };
  struct Statement {
    const char* sql;
    std::vector<Value> values;
  };
  // What libpq wants of values; lives no longer than they do.
  struct Parameters {
    explicit Parameters(const std::vector<Value>& values);
    int count() const { return static_cast<int>(bytes.size()); }
    std::vector<const char*> bytes;
    std::vector<int> lengths;
    std::vector<int> formats;
  };

  explicit PgSession(std::string address) : m_address(std::move(address)) {}
  void connect();
  void close();
  void setUp();
  const std::string& prepared(const char* sql);
  PgResult execute(const char* sql, std::vector<Value> values);
  PgResult sendAll(std::vector<Statement> statements);
  void send(const Statement& statement);
  PgResult answers(std::size_t count);
  void hearOwed();
  void noticeEnd();
  static int changedBy(const PgResult& result);
  PgResult checked(pg_result* result);

  const std::string m_address;
  pg_conn* m_connection = nullptr;
  std::map<const char*, std::string> m_prepared;  // literal to its name
  std::vector<Statement> m_waiting;
  std::uint64_t m_answered = 0;
  bool m_owed = false;  // the answer to rollBackUnheard()
};

// Brings the schema up to the last migration, each in one transaction with its number, one process at a time.
// kFailedPrecondition when a newer program wrote it: nothing is changed then.
absl::Status migrate(PgSession& session, const std::vector<Migration>& migrations);

}  // namespace newel
