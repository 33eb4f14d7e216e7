// The simulation itself: the same seed does the same, and its disk loses what it should and nothing else.
#include <SQLiteCpp/SQLiteCpp.h>
#include <gtest/gtest.h>

#include <sstream>

#include "sync/common/database.h"
#include "tests/sim/memory_disk.h"
#include "tests/sim/world.h"

namespace newel::sim {
namespace {

TEST(Simulation, theSameSeedDoesTheSameStepByStep) {
  const auto once = [](std::uint64_t seed) {
    std::ostringstream trace;
    RunOptions options;
    options.seed = seed;
    options.days = 10;
    options.trace = &trace;
    const auto result = run(options);
    EXPECT_EQ(result.violation, "");
    return std::make_pair(trace.str(), result.digest);
  };
  const auto first = once(7);
  const auto other = once(8);
  const auto again = once(7);
  EXPECT_EQ(first.first, again.first);
  EXPECT_EQ(first.second, again.second);
  EXPECT_NE(first.second, other.second);
  EXPECT_GT(first.first.size(), 1000U) << "there must be something to compare";
}

class SimulatedDisk : public testing::Test {
 protected:
  std::unique_ptr<SQLite::Database> open() {
    const std::string path = "/store.db";
    auto database = std::make_unique<SQLite::Database>(path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE, 0,
                                                       m_disk.vfsName());
    database->exec("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL");
    database->exec("CREATE TABLE IF NOT EXISTS number (value INTEGER)");
    return database;
  }
  static int count(SQLite::Database& database) {
    return database.execAndGet("SELECT COUNT(*) FROM number").getInt();
  }
  static void add(SQLite::Database& database, int times = 1) {
    for (int i = 0; i < times; ++i) database.exec("INSERT INTO number VALUES (1)");
  }

  MemoryDisk m_disk{"sim-test-disk", 3};
};

TEST_F(SimulatedDisk, whatIsCommittedOutlivesThePower) {
  for (int cut = 0; cut < 200; ++cut) {
    auto database = open();
    const int before = count(*database);
    m_disk.stopAfter(cut % 40);
    int said = before;
    try {
      for (int i = 0; i < 20; ++i, ++said) add(*database);
    } catch (const SQLite::Exception&) {
    }
    database.reset();
    m_disk.reboot(/*power_lost=*/true);
    database = open();
    EXPECT_GE(count(*database), said) << "cut " << cut;
    EXPECT_LE(count(*database), said + 1) << "cut " << cut;
    EXPECT_EQ(database->execAndGet("PRAGMA integrity_check").getString(), "ok");
  }
}

TEST_F(SimulatedDisk, whatWasNeverFlushedCanBeLost) {
  int lost = 0;
  for (int cut = 0; cut < 20; ++cut) {
    auto database = open();
    database->exec("PRAGMA synchronous = OFF");
    const int before = count(*database);
    add(*database, 5);
    m_disk.stopAfter(0);
    database.reset();
    m_disk.reboot(/*power_lost=*/true);
    try {
      database = open();
      if (count(*database) < before + 5) ++lost;
    } catch (const SQLite::Exception&) {
      ++lost;
      m_disk.restore({});
    }
  }
  EXPECT_GT(lost, 0) << "a disk that never loses anything tests nothing";
}

TEST_F(SimulatedDisk, aProgramThatDiesLosesNothingItWrote) {
  auto database = open();
  database->exec("PRAGMA synchronous = OFF");
  add(*database, 5);
  m_disk.stopAfter(0);
  database.reset();
  m_disk.reboot(/*power_lost=*/false);
  database = open();
  EXPECT_EQ(count(*database), 5);
}

TEST_F(SimulatedDisk, aFullDiskAndAFailedFlushAreSaid) {
  auto database = open();
  add(*database);
  m_disk.setFull(true);
  EXPECT_THROW(add(*database, 2000), SQLite::Exception);
  m_disk.setFull(false);
  const int before = count(*database);
  m_disk.failFlushes(1);
  EXPECT_THROW(add(*database), SQLite::Exception);
  EXPECT_EQ(count(*database), before);
  EXPECT_NO_THROW(add(*database));
  EXPECT_GE(m_disk.faults(), 2U);
}

// As a store of ours meets it: the flush fails, the program dies and starts again while the machine goes on,
// and only later does the power fail. What was said to be kept in between is there.
TEST_F(SimulatedDisk, whatFollowsAFailedFlushAndARestartOutlivesThePower) {
  DatabaseOptions options;
  options.path = "/store.db";
  options.what = "the test's store";
  options.vfs = m_disk.vfsName();
  const std::vector<Migration> migrations = {{1, "CREATE TABLE number (value INTEGER)"}};
  const auto kept = [](Database& database) {
    return guarded([&] {
             Transaction transaction(database);
             database.exec("INSERT INTO number VALUES (1)");
             transaction.commit();
           })
        .ok();
  };
  int failed = 0;
  int said = 0;
  for (int round = 0; round < 100; ++round) {
    auto database = Database::open(options, migrations);
    ASSERT_TRUE(database.ok()) << database.status();
    const int before = (*database)->raw().execAndGet("SELECT COUNT(*) FROM number").getInt();
    ASSERT_GE(before, said) << "round " << round;
    said = before;
    m_disk.failFlushes(1);
    if (kept(**database)) {
      ++said;
    } else {
      ++failed;
    }
    m_disk.stopAfter(0);
    database->reset();
    m_disk.reboot(/*power_lost=*/false);
    database = Database::open(options, migrations);
    if (database.ok() && kept(**database)) ++said;
    m_disk.stopAfter(0);
    if (database.ok()) database->reset();
    m_disk.heal();
    m_disk.reboot(/*power_lost=*/true);
  }
  EXPECT_GT(failed, 50) << "there must have been something to lose";
}

TEST_F(SimulatedDisk, anOldImageComesBackWhole) {
  auto database = open();
  add(*database, 3);
  const auto image = m_disk.image();
  add(*database, 4);
  database.reset();
  m_disk.restore(image);
  database = open();
  EXPECT_EQ(count(*database), 3);
}

TEST_F(SimulatedDisk, aDamagedPageIsFound) {
  auto database = open();
  add(*database, 2000);
  database.reset();
  ASSERT_TRUE(m_disk.damagePage("/store.db"));
  bool found = false;
  try {
    const std::string path = "/store.db";
    SQLite::Database damaged(path, SQLite::OPEN_READWRITE, 0, m_disk.vfsName());
    found = damaged.execAndGet("PRAGMA quick_check(1)").getString() != "ok";
  } catch (const SQLite::Exception&) {
    found = true;
  }
  EXPECT_TRUE(found);
}

}  // namespace
}  // namespace newel::sim
