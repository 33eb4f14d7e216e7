#include "sync/hub/postgres_session.h"

#include <libpq-fe.h>
#include <poll.h>

#include <array>
#include <cctype>
#include <cstdlib>
#include <cstring>
#include <string_view>

namespace newel {
namespace {

// Ours, no source. A writer of another process that has not moved for so long is ended by the server.
constexpr char kSetUp[] =
    "SET search_path = newel; SET lock_timeout = '5s'; SET statement_timeout = '60s'; "
    "SET idle_in_transaction_session_timeout = '10s'; SET client_min_messages = warning";
// One lock for all hubs that come up at once; the number is ours ("newel" in ASCII).
constexpr char kMigrationLock[] = "SELECT pg_advisory_xact_lock(474148726124)";

struct ConnectionInfoFree {
  void operator()(PQconninfoOption* options) const { PQconninfoFree(options); }
};
using ConnectionInfo = std::unique_ptr<PQconninfoOption, ConnectionInfoFree>;

// Null: not to be read. libpq's own message would repeat the part that it did not like, perhaps a password.
ConnectionInfo parsed(const std::string& address) {
  char* why = nullptr;
  ConnectionInfo info(PQconninfoParse(address.c_str(), &why));
  PQfreemem(why);
  return info;
}

std::string optionOf(const ConnectionInfo& info, std::string_view keyword, const char* environment) {
  for (const PQconninfoOption* option = info.get(); option->keyword != nullptr; ++option) {
    if (keyword == option->keyword && option->val != nullptr && *option->val != '\0') return option->val;
  }
  const char* set = std::getenv(environment);
  return set == nullptr ? "" : set;
}

bool isThisMachine(const std::string& host) {
  return host.empty() || host[0] == '/' || host[0] == '@' || host == "localhost" || host == "::1" ||
         host.rfind("127.", 0) == 0;
}

// Over a network the server has to prove who it is, unless the operator decided otherwise.
const char* defaultSslMode(const ConnectionInfo& info) {
  if (!optionOf(info, "sslmode", "PGSSLMODE").empty()) return nullptr;
  const bool near = isThisMachine(optionOf(info, "host", "PGHOST")) &&
                    isThisMachine(optionOf(info, "hostaddr", "PGHOSTADDR"));
  return near ? nullptr : "verify-full";
}

// "?" and "?2" to "$1" and "$2". Our literals have no question mark of their own.
std::string dollars(const char* sql) {
  std::string out;
  int next = 0;
  for (const char* c = sql; *c != '\0'; ++c) {
    if (*c != '?') {
      out += *c;
      continue;
    }
    out += '$';
    if (std::isdigit(static_cast<unsigned char>(c[1])) == 0) out += std::to_string(++next);
  }
  return out;
}

std::string primaryOf(const PGresult* result) {
  const char* text = PQresultErrorField(result, PG_DIAG_MESSAGE_PRIMARY);
  return text == nullptr ? "no word from the server" : text;
}

bool startsWith(const std::string& text, std::string_view start) { return text.rfind(start, 0) == 0; }

}  // namespace

bool isPostgresAddress(const std::string& text) {
  return startsWith(text, "postgres://") || startsWith(text, "postgresql://");
}

// PostgreSQL 15, appendix A: the classes of SQLSTATE.
absl::Status statusOf(const PgError& error) {
  const std::string& state = error.state();
  const std::string text = "store: " + std::string(error.what()) + (state.empty() ? "" : " (" + state + ")");
  if (state == "53100") return absl::ResourceExhaustedError("disk full: " + text);
  if (state.empty() || mayRunAgain(error) || state == "55P03" || startsWith(state, "08") ||
      startsWith(state, "53") || startsWith(state, "57") || startsWith(state, "25")) {
    return absl::UnavailableError(text);
  }
  if (startsWith(state, "XX") && state != "XX000") return absl::DataLossError(text);
  if (startsWith(state, "23")) return absl::AlreadyExistsError(text);
  if (startsWith(state, "28") || state == "42501") return absl::PermissionDeniedError(text);
  if (startsWith(state, "22")) return absl::InvalidArgumentError(text);
  return absl::InternalError(text);
}

bool mayRunAgain(const PgError& error) { return error.state() == "40001" || error.state() == "40P01"; }

void PgResultFree::operator()(pg_result* result) const { PQclear(result); }

PgRows::PgRows(PgResult result) : m_result(std::move(result)), m_count(PQntuples(m_result.get())) {}

std::string PgRows::text(int column) const { return std::string(view(column)); }

std::string_view PgRows::view(int column) const {
  return {PQgetvalue(m_result.get(), m_row, column),
          static_cast<std::size_t>(PQgetlength(m_result.get(), m_row, column))};
}

// Binary, most significant byte first, in as many bytes as the type has.
std::int64_t PgRows::number(int column) const {
  const int size = PQgetlength(m_result.get(), m_row, column);
  if (size == 0 || size > 8) return 0;
  const char* bytes = PQgetvalue(m_result.get(), m_row, column);
  std::uint64_t value = (bytes[0] & 0x80) != 0 ? ~std::uint64_t{0} : 0;
  for (int i = 0; i < size; ++i) value = value << 8 | static_cast<unsigned char>(bytes[i]);
  return static_cast<std::int64_t>(value);
}

bool PgRows::isNull(int column) const { return PQgetisnull(m_result.get(), m_row, column) != 0; }

int PgRows::columns() const { return PQnfields(m_result.get()); }

absl::StatusOr<std::unique_ptr<PgSession>> PgSession::open(const std::string& address) {
  if (!isPostgresAddress(address) || parsed(address) == nullptr) {
    return absl::InvalidArgumentError(
        "store: the PostgreSQL address cannot be read; it looks like postgres://user@host:5432/database");
  }
  std::unique_ptr<PgSession> session(new PgSession(address));
  try {
    session->connect();
    auto safe = session->query("SELECT current_setting('fsync')");
    if (!safe.next() || safe.text(0) != "on") {
      return absl::FailedPreconditionError(
          "store: this PostgreSQL runs with fsync = off, so a power cut would lose what was acknowledged");
    }
  } catch (const PgError& error) {
    return statusOf(error);
  }
  return session;
}

PgSession::~PgSession() { close(); }

void PgSession::close() {
  m_prepared.clear();
  m_waiting.clear();
  m_owed = false;
  PQfinish(m_connection);
  m_connection = nullptr;
}

void PgSession::connect() {
  close();
  const ConnectionInfo info = parsed(m_address);
  // What stands before the address may be changed by it, what stands after may not.
  const std::array<const char*, 10> keys = {"connect_timeout",
                                            "keepalives_idle",
                                            "keepalives_interval",
                                            "keepalives_count",
                                            "tcp_user_timeout",
                                            "fallback_application_name",
                                            "sslmode",
                                            "dbname",
                                            "client_encoding",
                                            nullptr};
  const std::array<const char*, 10> values = {
      "5", "10", "5", "3", "15000", "newel-hub", defaultSslMode(info), m_address.c_str(), "UTF8", nullptr};
  m_connection = PQconnectdbParams(keys.data(), values.data(), /*expand_dbname=*/1);
  if (PQstatus(m_connection) != CONNECTION_OK) {
    const bool needs_password = PQconnectionNeedsPassword(m_connection) != 0;
    close();
    throw PgError("", needs_password
                          ? "the PostgreSQL server wants a password (PGPASSWORD, or a password file)"
                          : "the PostgreSQL server cannot be reached or did not let us in");
  }
  setUp();
}

void PgSession::setUp() {
  // What the server says beside its answers would go to the program's error output, values and all.
  PQsetNoticeProcessor(
      m_connection, [](void*, const char*) {}, nullptr);
  exec(kSetUp);
  // Never weaker than we promise, and never weaker than the operator asked for.
  exec(
      "SELECT set_config('synchronous_commit', 'on', false) WHERE current_setting('synchronous_commit') = "
      "'off'");
}

void PgSession::ensure() {
  if (isOpen()) noticeEnd();
  if (!isOpen()) connect();
}

// A server that ended this connection said so while nobody listened: the socket has something to read, and
// then its end. Nothing is sent, so a connection that is well costs no time.
void PgSession::noticeEnd() {
  hearOwed();
  pollfd socket{PQsocket(m_connection), POLLIN, 0};
  while (isOpen() && poll(&socket, 1, 0) > 0) {
    if (PQconsumeInput(m_connection) == 0) return close();
  }
}

void PgSession::hearOwed() {
  if (!std::exchange(m_owed, false)) return;
  while (pg_result* result = PQgetResult(m_connection)) PQclear(result);
}

bool PgSession::isOpen() const { return m_connection != nullptr && PQstatus(m_connection) == CONNECTION_OK; }

PgResult PgSession::checked(pg_result* raw) {
  PgResult result(raw);
  const ExecStatusType status = PQresultStatus(raw);
  if (status == PGRES_COMMAND_OK || status == PGRES_TUPLES_OK) {
    ++m_answered;
    return result;
  }
  const char* known = PQresultErrorField(raw, PG_DIAG_SQLSTATE);
  const std::string state = known == nullptr ? "" : known;
  // 57P01 to 57P03: the server's last words on this connection.
  if (startsWith(state, "57P0")) close();
  if (!isOpen()) throw PgError("", "the connection to PostgreSQL was lost");
  throw PgError(state, primaryOf(raw));
}

void PgSession::exec(const char* sql) { ask(sql); }

PgRows PgSession::ask(const char* sql) {
  settle();
  if (m_connection == nullptr) throw PgError("", "there is no connection to PostgreSQL");
  hearOwed();
  return PgRows(checked(PQexec(m_connection, sql)));
}

void PgSession::commit() {
  const PgResult result = execute("COMMIT", {});
  // A transaction that failed before is rolled back by COMMIT, and PostgreSQL calls that a success.
  if (std::string_view(PQcmdStatus(result.get())) != "COMMIT") throw PgError("25P02", "it was rolled back");
}

void PgSession::rollBackUnheard() {
  forgetWaiting();
  if (!isOpen()) return;
  hearOwed();
  m_owed = PQsendQuery(m_connection, "ROLLBACK") == 1;
}

void PgSession::settle() {
  if (!m_waiting.empty()) sendAll(std::exchange(m_waiting, {}));
}

const std::string& PgSession::prepared(const char* sql) {
  const auto known = m_prepared.find(sql);
  if (known != m_prepared.end()) return known->second;
  const std::string name = "s" + std::to_string(m_prepared.size());
  checked(PQprepare(m_connection, name.c_str(), dollars(sql).c_str(), 0, nullptr));
  return m_prepared.emplace(sql, name).first->second;
}

PgSession::Parameters::Parameters(const std::vector<Value>& values) {
  for (const Value& value : values) {
    bytes.push_back(value.bytes.c_str());
    lengths.push_back(static_cast<int>(value.bytes.size()));
    formats.push_back(value.binary);
  }
}

PgResult PgSession::execute(const char* sql, std::vector<Value> values) {
  std::vector<Statement> statements = std::exchange(m_waiting, {});
  statements.push_back({sql, std::move(values)});
  return sendAll(std::move(statements));
}

// All of them in one message, as far as the network lets it (PostgreSQL 15, 34.5 "Pipeline Mode"); the answer
// to the last. Behind one that fails, the server does none of the others.
PgResult PgSession::sendAll(std::vector<Statement> statements) {
  if (m_connection == nullptr) throw PgError("", "there is no connection to PostgreSQL");
  hearOwed();
  // First of all: a statement is made ready by a question of its own.
  for (const Statement& statement : statements) prepared(statement.sql);
  if (statements.size() == 1) {
    const Parameters with(statements[0].values);
    return checked(PQexecPrepared(m_connection, prepared(statements[0].sql).c_str(), with.count(),
                                  with.bytes.data(), with.lengths.data(), with.formats.data(),
                                  /*resultFormat=*/1));
  }
  if (PQenterPipelineMode(m_connection) != 1) throw PgError("", "the connection to PostgreSQL was lost");
  for (const Statement& statement : statements) send(statement);
  if (PQpipelineSync(m_connection) != 1) {
    close();
    throw PgError("", "the connection to PostgreSQL was lost");
  }
  return answers(statements.size());
}

void PgSession::send(const Statement& statement) {
  const Parameters with(statement.values);
  if (PQsendQueryPrepared(m_connection, prepared(statement.sql).c_str(), with.count(), with.bytes.data(),
                          with.lengths.data(), with.formats.data(), /*resultFormat=*/1) == 1) {
    return;
  }
  close();
  throw PgError("", "the connection to PostgreSQL was lost");
}

// One answer each, then the server's word that it has done them all. Every one is taken before anything is
// thrown, so that the next question gets its own answer.
PgResult PgSession::answers(std::size_t count) {
  PgResult last;
  PgResult wrong;
  for (std::size_t i = 0; i < count && isOpen(); ++i) {
    last.reset(PQgetResult(m_connection));
    const ExecStatusType status = PQresultStatus(last.get());
    const bool good = status == PGRES_COMMAND_OK || status == PGRES_TUPLES_OK;
    if (!good && wrong == nullptr) wrong.reset(last.release());
    while (pg_result* more = PQgetResult(m_connection)) PQclear(more);
  }
  PQclear(PQgetResult(m_connection));  // PGRES_PIPELINE_SYNC
  if (PQexitPipelineMode(m_connection) != 1) close();
  return checked(wrong != nullptr ? wrong.release() : last.release());
}

int PgSession::changedBy(const PgResult& result) { return std::atoi(PQcmdTuples(result.get())); }

std::vector<PgNotice> PgSession::notices(int ms) {
  if (!isOpen()) throw PgError("", "there is no connection to PostgreSQL");
  std::vector<PgNotice> list;
  const auto drain = [&] {
    while (PGnotify* notify = PQnotifies(m_connection)) {
      list.push_back({notify->extra});
      PQfreemem(notify);
    }
  };
  drain();
  if (!list.empty()) return list;
  pollfd socket{PQsocket(m_connection), POLLIN, 0};
  if (poll(&socket, 1, ms) <= 0) return list;
  if (PQconsumeInput(m_connection) == 0) throw PgError("", "the connection to PostgreSQL was lost");
  drain();
  return list;
}

namespace {

// 0: nothing was made yet.
int versionOf(PgSession& session) {
  auto there = session.query("SELECT to_regclass('newel.store_version') IS NOT NULL");
  if (!there.next() || there.number(0) == 0) return 0;
  auto rows = session.query("SELECT number FROM newel.store_version");
  return rows.next() ? static_cast<int>(rows.number(0)) : 0;
}

absl::Status migrateOne(PgSession& session, const std::vector<Migration>& migrations, bool& done) {
  const int newest = migrations.empty() ? 0 : migrations.back().number;
  session.exec("SET LOCAL lock_timeout = '60s'");
  session.query(kMigrationLock);
  const int version = versionOf(session);
  if (version > newest) {
    return absl::FailedPreconditionError(
        "the clinic's database was written by a newer version of this program (" + std::to_string(version) +
        "; this one reads up to " + std::to_string(newest) + "). Nothing was changed.");
  }
  done = version == newest;
  if (done) return absl::OkStatus();
  if (version == 0) {
    session.exec(
        "CREATE SCHEMA IF NOT EXISTS newel; CREATE TABLE newel.store_version (number BIGINT NOT NULL); "
        "INSERT INTO newel.store_version VALUES (0)");
  }
  for (const Migration& migration : migrations) {
    if (migration.number != version + 1) continue;
    session.exec(migration.sql);
    session.run("UPDATE newel.store_version SET number = ?", migration.number);
  }
  return absl::OkStatus();
}

}  // namespace

absl::Status migrate(PgSession& session, const std::vector<Migration>& migrations) {
  try {
    for (bool done = false; !done;) {
      session.exec("BEGIN ISOLATION LEVEL READ COMMITTED");
      absl::Status stepped = migrateOne(session, migrations, done);
      if (!stepped.ok()) {
        session.exec("ROLLBACK");
        return stepped;
      }
      session.commit();
    }
  } catch (const PgError& error) {
    return statusOf(error);
  }
  return absl::OkStatus();
}

}  // namespace newel
