#include "sync/hub/hub_commands.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <gtest/gtest.h>

#include <atomic>
#include <chrono>
#include <filesystem>
#include <fstream>
#include <future>
#include <sstream>
#include <thread>

#include "sync/common/pairing_ticket.h"
#include "sync/hub/backup.h"
#include "sync/hub/demo_clinic.h"
#include "sync/hub/sqlite_hub_store.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

namespace fs = std::filesystem;

class HubCommand : public testing::Test {
 protected:
  std::string data() const { return m_folder.path("data"); }
  std::string said() {
    const std::string text = m_out.str();
    m_out.str("");
    return text;
  }
  std::string complained() {
    const std::string text = m_err.str();
    m_err.str("");
    return text;
  }
  static std::optional<absl::Time> lastBackupIn(const std::string& folder) {
    auto store = openSqliteHubStore(folder + "/hub.db");
    EXPECT_TRUE(store.ok()) << store.status();
    std::optional<absl::Time> last;
    EXPECT_EQ((*store)->read([&](HubTransaction& transaction) {
      last = lastBackup(transaction);
      return absl::OkStatus();
    }),
              absl::OkStatus());
    return last;
  }
  int init() { return initCommand(m_machine, data(), {"Clinic (invented)", "555 0101", "", "112", ""}); }

  test::TempFolder m_folder;
  test::TestClock m_clock;
  RealRandom m_random;
  std::ostringstream m_out;
  std::ostringstream m_err;
  HubMachine m_machine{&m_clock, &m_random, &m_out, &m_err};
};

TEST_F(HubCommand, aFreshClinicIsClosedByDefault) {
  EXPECT_EQ(init(), 0) << complained();
  EXPECT_EQ(fs::status(data()).permissions() & fs::perms::mask, fs::perms::owner_all);
  for (const auto& file : fs::directory_iterator(data())) {
    EXPECT_EQ(file.status().permissions() & fs::perms::mask, fs::perms::owner_read | fs::perms::owner_write)
        << file.path();
  }
  EXPECT_EQ(ServeOptions().listen, "127.0.0.1:0");
  EXPECT_EQ(init(), 1) << "a second init changes nothing";
  EXPECT_NE(complained().find("already"), std::string::npos);
}

TEST_F(HubCommand, aClinicNeedsSomebodyToCall) {
  EXPECT_EQ(initCommand(m_machine, data(), {"Clinic (invented)", "", "", "112", ""}), 1);
  EXPECT_NE(complained().find("phone"), std::string::npos);
  EXPECT_EQ(initCommand(m_machine, data(), {"Clinic (invented)", "555 0101", "", "", ""}), 1);
  EXPECT_NE(complained().find("emergency_number"), std::string::npos);
}

TEST_F(HubCommand, withoutAClinicItSaysWhatToDo) {
  EXPECT_EQ(fingerprintCommand(m_machine, data()), 1);
  EXPECT_NE(complained().find("newel-hub init"), std::string::npos);
  EXPECT_EQ(serveCommand(m_machine, data(), {}, [] {}), 1);
  EXPECT_EQ(addUserCommand(m_machine, data(), {"a.name", "", "therapist", test::kPassword}), 1);
}

TEST_F(HubCommand, usersAreAddedWithTheirRole) {
  ASSERT_EQ(init(), 0);
  EXPECT_EQ(addUserCommand(m_machine, data(), {"a.name", "", "therapist", test::kPassword}), 0)
      << complained();
  EXPECT_EQ(addUserCommand(m_machine, data(), {"a.name", "", "therapist", test::kPassword}), 1);
  EXPECT_EQ(addUserCommand(m_machine, data(), {"b.name", "", "wizard", test::kPassword}), 1);
  EXPECT_EQ(addUserCommand(m_machine, data(), {"b.name", "", "auditor", "short"}), 1);
  EXPECT_EQ(said().find(test::kPassword), std::string::npos);
}

TEST_F(HubCommand, aSecondDemoChangesNothing) {
  EXPECT_EQ(demoCommand(m_machine, data()), 0) << complained();
  EXPECT_EQ(auditHeadCommand(m_machine, data()), 0);
  const std::string first = said();
  EXPECT_EQ(demoCommand(m_machine, data()), 0) << complained();
  EXPECT_EQ(auditHeadCommand(m_machine, data()), 0);
  EXPECT_EQ(said(), first) << "not even a line in the audit trail";
  EXPECT_EQ(verifyAuditCommand(m_machine, data(), ""), 0) << complained();
}

TEST_F(HubCommand, theDemoNeverGoesIntoARealClinic) {
  ASSERT_EQ(init(), 0);
  EXPECT_EQ(demoCommand(m_machine, data()), 1);
  EXPECT_NE(complained().find("real clinic"), std::string::npos);
}

TEST_F(HubCommand, theDemoStaysOnThisMachine) {
  ASSERT_EQ(demoCommand(m_machine, data()), 0);
  ServeOptions options;
  options.listen = "0.0.0.0:0";
  EXPECT_EQ(serveCommand(m_machine, data(), options, [] {}), 1);
  EXPECT_NE(complained().find("this machine only"), std::string::npos);
}

TEST_F(HubCommand, servesTheDemoUntilToldToEndAndEndsPromptly) {
  ASSERT_EQ(demoCommand(m_machine, data()), 0) << complained();
  EXPECT_EQ(fingerprintCommand(m_machine, data()), 0);
  const std::string text = said();
  const std::string pin = *parseFingerprint(text.substr(text.rfind('\n', text.size() - 2) + 1));
  ServeOptions options;
  options.port_file = m_folder.path("port");
  std::promise<void> end;
  auto served = std::async(std::launch::async, [&] {
    return serveCommand(m_machine, data(), options, [&] { end.get_future().wait(); });
  });
  for (int i = 0; i < 1000 && !fs::exists(options.port_file); ++i) {
    std::this_thread::sleep_for(std::chrono::milliseconds(10));
  }
  int port = 0;
  std::ifstream(options.port_file) >> port;
  DeskClient::Options address;
  address.address = "127.0.0.1:" + std::to_string(port);
  address.certificate_sha256 = pin;
  auto desk = DeskClient::connect(address);
  ASSERT_TRUE(desk.ok()) << desk.status();
  ASSERT_TRUE((*desk)->signIn(kDemoUserName, kDemoPassword).ok());
  const auto rows = (*desk)->caseload();
  ASSERT_TRUE(rows.ok()) << rows.status();
  EXPECT_EQ(rows->size(), 5U);
  int with_programme = 0;
  for (const auto& row : *rows) {
    with_programme += row.programme_number() > 0 ? 1 : 0;
    EXPECT_NE(row.identity().family_name().find("(demo)"), std::string::npos);
    EXPECT_FALSE(row.has_last_practice()) << "nobody practised, so nothing may say so";
    const auto programmes = (*desk)->programmes(row.person().id());
    ASSERT_TRUE(programmes.ok()) << programmes.status();
    for (const auto& programme : *programmes) EXPECT_GT(programme.entries_size(), 2);
  }
  EXPECT_GE(with_programme, 1);
  std::atomic<int> words{0};
  (*desk)->watch([&](const std::string&) { ++words; });
  for (int i = 0; i < 500 && words == 0; ++i) std::this_thread::sleep_for(std::chrono::milliseconds(10));
  EXPECT_GT(words, 0);
  const auto begun = std::chrono::steady_clock::now();
  end.set_value();
  EXPECT_EQ(served.get(), 0) << complained();
  EXPECT_LT(std::chrono::steady_clock::now() - begun, std::chrono::seconds(2)) << "an open stream held it up";
}

TEST_F(HubCommand, aBackupLeavesALineInTheTrailOfTheClinicAndNotOfTheCopy) {
  ASSERT_EQ(init(), 0);
  EXPECT_EQ(lastBackupIn(data()), std::nullopt) << "never";
  ASSERT_EQ(backupCommand(m_machine, data(), m_folder.path("copy.db")), 0) << complained();
  EXPECT_EQ(complained(), "");
  EXPECT_EQ(verifyAuditCommand(m_machine, data(), ""), 0) << complained();
  EXPECT_EQ(lastBackupIn(data()), m_clock.wall()) << "for the desk's page of the clinic";
  EXPECT_NE(backedUpCommand(m_machine, data()), 0) << "a store in a folder is copied by the hub itself";
  EXPECT_NE(complained(), "");
  said();
  ASSERT_EQ(auditHeadCommand(m_machine, data()), 0);
  const std::string after = said();
  fs::create_directories(m_folder.path("restored"));
  fs::rename(m_folder.path("copy.db"), m_folder.path("restored") + "/hub.db");
  ASSERT_EQ(verifyAuditCommand(m_machine, m_folder.path("restored"), ""), 0) << complained();
  EXPECT_EQ(lastBackupIn(m_folder.path("restored")), std::nullopt) << "a copy does not know of itself";
  SQLite::Database store(data() + "/hub.db");
  EXPECT_NE(
      store.execAndGet("SELECT entry FROM audit ORDER BY n DESC LIMIT 1").getString().find("store.backup"),
      std::string::npos)
      << after;
}

TEST_F(HubCommand, aCutTrailIsFoundWithTheHead) {
  ASSERT_EQ(init(), 0);
  ASSERT_EQ(addUserCommand(m_machine, data(), {"a.name", "", "therapist", test::kPassword}), 0);
  said();
  ASSERT_EQ(auditHeadCommand(m_machine, data()), 0);
  std::string head = said();
  head.pop_back();
  EXPECT_EQ(verifyAuditCommand(m_machine, data(), head), 0) << complained();
  {
    SQLite::Database raw(data() + "/hub.db", SQLite::OPEN_READWRITE);
    raw.exec("DELETE FROM audit WHERE n = (SELECT MAX(n) FROM audit)");
  }
  EXPECT_EQ(verifyAuditCommand(m_machine, data(), ""), 0);
  EXPECT_EQ(verifyAuditCommand(m_machine, data(), head), 1);
  EXPECT_NE(complained().find("cut"), std::string::npos);
  EXPECT_EQ(verifyAuditCommand(m_machine, data(), "nonsense"), 1);
}

}  // namespace
}  // namespace newel
