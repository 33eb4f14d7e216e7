#include "tests/sync/common/test_store.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <filesystem>

#include "sync/hub/sqlite_hub_store.h"

namespace newel::test {
namespace {

class SqliteTestStore : public TestStore {
 public:
  explicit SqliteTestStore(std::string path) : m_path(std::move(path)) {}

  absl::StatusOr<std::unique_ptr<HubStore>> open() override { return openSqliteHubStore(m_path); }

  std::string address() const override { return std::filesystem::path(m_path).parent_path().string(); }

  void tamper(const std::string& sql) override {
    SQLite::Database(m_path, SQLite::OPEN_READWRITE, 5000).exec(sql);
  }

  std::map<std::string, std::string> dump() override {
    std::map<std::string, std::string> all;
    SQLite::Database raw(m_path, SQLite::OPEN_READONLY);
    SQLite::Statement tables(raw, "SELECT name FROM sqlite_master WHERE type = 'table'");
    while (tables.executeStep()) {
      const std::string table = tables.getColumn(0).getString();
      std::string& bytes = all[table];
      SQLite::Statement rows(raw, "SELECT * FROM " + table);
      while (rows.executeStep()) {
        for (int i = 0; i < rows.getColumnCount(); ++i) bytes += rows.getColumn(i).getString() + "\n";
      }
    }
    return all;
  }

 private:
  const std::string m_path;
};

}  // namespace

TestStoreMaker& testStoreMaker() {
  static TestStoreMaker maker = [](const std::string& folder) -> std::unique_ptr<TestStore> {
    return std::make_unique<SqliteTestStore>(folder + "/hub.db");
  };
  return maker;
}

}  // namespace newel::test
