#include "sync/common/database.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

namespace fs = std::filesystem;

const std::vector<Migration> kOne = {{1, "CREATE TABLE a (x INTEGER PRIMARY KEY, y TEXT)"}};
const std::vector<Migration> kTwo = {{1, "CREATE TABLE a (x INTEGER PRIMARY KEY, y TEXT)"},
                                     {2, "ALTER TABLE a ADD COLUMN z TEXT DEFAULT 'new'"}};
const std::vector<Migration> kBroken = {{1, "CREATE TABLE a (x INTEGER PRIMARY KEY, y TEXT)"},
                                        {2, "ALTER TABLE a ADD COLUMN z TEXT; CREATE TABLE a (x INTEGER)"}};

class DatabaseFile : public testing::Test {
 protected:
  test::TempFolder m_folder;
  DatabaseOptions options() const {
    return {m_folder.path("store.db"), "the test's store", "", false, false};
  }
  DatabaseOptions settingAside() const {
    return {m_folder.path("store.db"), "the test's store", "", true, true};
  }
};

TEST_F(DatabaseFile, commitsAreOnTheDiskBeforeTheyReturnAndOnlyTheOwnerReadsThem) {
  const auto database = Database::open(options(), kOne);
  ASSERT_TRUE(database.ok()) << database.status();
  EXPECT_EQ((*database)->raw().execAndGet("PRAGMA synchronous").getInt(), 2) << "FULL";
  EXPECT_EQ((*database)->raw().execAndGet("PRAGMA journal_mode").getString(), "wal");
  EXPECT_EQ((*database)->raw().execAndGet("PRAGMA foreign_keys").getInt(), 1);
  (*database)->run("INSERT INTO a (y) VALUES ('one')");
  for (const char* suffix : {"", "-wal", "-shm"}) {
    const auto perms = fs::status(options().path + suffix).permissions();
    EXPECT_EQ(perms & fs::perms::mask, fs::perms::owner_read | fs::perms::owner_write) << suffix;
  }
}

TEST_F(DatabaseFile, transactionsRollBackUnlessCommitted) {
  const auto database = Database::open(options(), kOne);
  const auto count = [&] { return (*database)->raw().execAndGet("SELECT COUNT(*) FROM a").getInt(); };
  {
    const Transaction transaction(**database);
    (*database)->run("INSERT INTO a (y) VALUES (?)", "gone");
  }
  EXPECT_EQ(count(), 0);
  {
    Transaction transaction(**database);
    (*database)->run("INSERT INTO a (y) VALUES (?)", "stays");
    transaction.commit();
  }
  EXPECT_EQ(count(), 1);
}

TEST_F(DatabaseFile, migrationsGoForwardOnceAndKeepWhatIsThere) {
  {
    const auto database = Database::open(options(), kOne);
    (*database)->run("INSERT INTO a (y) VALUES ('old')");
  }
  for (int i = 0; i < 2; ++i) {
    const auto database = Database::open(options(), kTwo);
    ASSERT_TRUE(database.ok()) << database.status();
    EXPECT_EQ((*database)->raw().execAndGet("SELECT y || z FROM a").getString(), "oldnew");
    EXPECT_EQ((*database)->raw().execAndGet("PRAGMA user_version").getInt(), 2);
  }
}

TEST_F(DatabaseFile, aFailingMigrationLeavesTheStoreAsItWas) {
  { ASSERT_TRUE(Database::open(options(), kOne).ok()); }
  EXPECT_FALSE(Database::open(options(), kBroken).ok());
  const auto database = Database::open(options(), kOne);
  ASSERT_TRUE(database.ok()) << database.status();
  EXPECT_EQ((*database)->raw().execAndGet("SELECT COUNT(*) FROM pragma_table_info('a')").getInt(), 2);
}

TEST_F(DatabaseFile, aNewerStoreIsRefusedInPlainWordsAndLeftAlone) {
  {
    const auto database = Database::open(options(), kTwo);
    (*database)->run("INSERT INTO a (y) VALUES ('kept')");
  }
  const auto older = Database::open(settingAside(), kOne);
  EXPECT_TRUE(absl::IsFailedPrecondition(older.status()));
  EXPECT_NE(std::string(older.status().message()).find("written by a newer version"), std::string::npos);
  const auto newer = Database::open(options(), kTwo);
  ASSERT_TRUE(newer.ok()) << newer.status();
  EXPECT_EQ((*newer)->raw().execAndGet("SELECT y FROM a").getString(), "kept");
}

TEST_F(DatabaseFile, aDamagedStoreIsSetAsideAndNeverDeleted) {
  for (int damaged = 1; damaged <= 2; ++damaged) {
    { std::ofstream(options().path, std::ios::binary) << "this is no database, number " << damaged; }
    const auto opened = Database::open(settingAside(), kOne);
    EXPECT_TRUE(absl::IsDataLoss(opened.status())) << opened.status();
    const std::string aside = options().path + ".set-aside-" + std::to_string(damaged);
    EXPECT_NE(std::string(opened.status().message()).find(aside), std::string::npos);
    std::ifstream stream(aside, std::ios::binary);
    const std::string content((std::istreambuf_iterator<char>(stream)), std::istreambuf_iterator<char>());
    EXPECT_EQ(content, "this is no database, number " + std::to_string(damaged));
  }
  EXPECT_TRUE(Database::open(settingAside(), kOne).ok());
}

TEST_F(DatabaseFile, aFlippedPageIsFoundWhenPagesAreChecked) {
  {
    const auto database = Database::open(options(), kOne);
    for (int i = 0; i < 500; ++i) (*database)->run("INSERT INTO a (y) VALUES (?)", std::string(200, 'y'));
    (*database)->exec("PRAGMA wal_checkpoint(TRUNCATE)");
  }
  {
    std::fstream stream(options().path, std::ios::binary | std::ios::in | std::ios::out);
    stream.seekp(4096 * 5);
    stream << std::string(64, '\xff');
  }
  EXPECT_TRUE(absl::IsDataLoss(Database::open(settingAside(), kOne).status()));
  EXPECT_TRUE(fs::exists(options().path + ".set-aside-1"));
}

TEST_F(DatabaseFile, withoutSettingAsideADamagedStoreStaysWhereItIs) {
  {
    std::ofstream(options().path, std::ios::binary)
        << "no database at all, and long enough to be seen as such";
  }
  EXPECT_TRUE(absl::IsDataLoss(Database::open(options(), kOne).status()));
  EXPECT_TRUE(fs::exists(options().path));
  EXPECT_FALSE(fs::exists(options().path + ".set-aside-1"));
}

TEST_F(DatabaseFile, sqlitesErrorsWearOurCodes) {
  const auto database = Database::open(options(), kOne);
  (*database)->run("INSERT INTO a (x, y) VALUES (1, 'a')");
  EXPECT_TRUE(
      absl::IsAlreadyExists(guarded([&] { (*database)->run("INSERT INTO a (x, y) VALUES (1, 'b')"); })));
  (*database)->exec("PRAGMA max_page_count = 3");
  const absl::Status full =
      guarded([&] { (*database)->run("INSERT INTO a (y) VALUES (?)", std::string(100000, 'y')); });
  EXPECT_TRUE(absl::IsResourceExhausted(full)) << full;
}

TEST_F(DatabaseFile, privateFilesAreNeverOverwritten) {
  const std::string path = m_folder.path("secret");
  EXPECT_EQ(writePrivateFile(path, "one"), absl::OkStatus());
  EXPECT_TRUE(absl::IsAlreadyExists(writePrivateFile(path, "two")));
  EXPECT_EQ(fs::status(path).permissions() & fs::perms::mask, fs::perms::owner_read | fs::perms::owner_write);
  EXPECT_EQ(ensurePrivateFolder(m_folder.path("a/b")), absl::OkStatus());
  EXPECT_EQ(fs::status(m_folder.path("a/b")).permissions() & fs::perms::mask, fs::perms::owner_all);
}

}  // namespace
}  // namespace newel
