// A database of TestPostgres as a test's store.
#pragma once

#include <string>

#include "tests/sync/common/test_store.h"

namespace newel::test {

// Made empty, dropped at the end.
class PostgresTestStore : public TestStore {
 public:
  PostgresTestStore();
  ~PostgresTestStore() override;
  PostgresTestStore(const PostgresTestStore&) = delete;
  PostgresTestStore& operator=(const PostgresTestStore&) = delete;

  absl::StatusOr<std::unique_ptr<HubStore>> open() override;
  void tamper(const std::string& sql) override;
  std::map<std::string, std::string> dump() override;
  const std::string& database() const { return m_database; }
  std::string address() const override;

 private:
  const std::string m_database;
};

}  // namespace newel::test
