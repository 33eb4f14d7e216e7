#include "tests/sync/common/postgres_test_store.h"

#include <iostream>

#include "sync/hub/postgres_hub_store.h"
#include "sync/hub/postgres_session.h"
#include "tests/sync/common/test_postgres.h"

namespace newel::test {
namespace {

// Linked in means used.
const bool kUsed = [] {
  testStoreMaker() = [](const std::string&) -> std::unique_ptr<TestStore> {
    return std::make_unique<PostgresTestStore>();
  };
  return true;
}();

}  // namespace

PostgresTestStore::PostgresTestStore() : m_database(TestPostgres::server().newDatabase()) {
  static_cast<void>(kUsed);
}

PostgresTestStore::~PostgresTestStore() {
  try {
    TestPostgres::server().dropDatabase(m_database);
  } catch (const std::exception& error) {
    std::cerr << "the test's database was left behind: " << error.what() << "\n";
  }
}

std::string PostgresTestStore::address() const { return TestPostgres::server().address(m_database); }

absl::StatusOr<std::unique_ptr<HubStore>> PostgresTestStore::open() {
  return openPostgresHubStore(address());
}

void PostgresTestStore::tamper(const std::string& sql) {
  TestPostgres::server().sql(m_database, ("SET search_path TO newel; " + sql).c_str());
}

std::map<std::string, std::string> PostgresTestStore::dump() {
  std::map<std::string, std::string> all;
  const auto session = PgSession::open(address());
  if (!session.ok()) return all;
  auto tables = (*session)->query("SELECT tablename::text FROM pg_tables WHERE schemaname = 'newel'");
  while (tables.next()) {
    const std::string table = tables.text(0);
    // The statement is kept by its address, so the text has to stay where it is.
    const std::string sql = "SELECT * FROM " + table;
    const auto once = PgSession::open(address());
    auto rows = (*once)->query(sql.c_str());
    std::string& bytes = all[table];
    while (rows.next()) {
      for (int i = 0; i < rows.columns(); ++i) bytes += rows.text(i) + "\n";
    }
  }
  return all;
}

}  // namespace newel::test
