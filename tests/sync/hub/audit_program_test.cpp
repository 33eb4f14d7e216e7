// The audit trail as newel-hub itself writes and verifies it, tampered with behind its back. Every test runs
// on either store.
#include <filesystem>
#include <fstream>

#include "sync/hub/audit_head.h"
#include "tests/sync/hub/program_fixture.h"

namespace newel {
namespace {

namespace fs = std::filesystem;

class AuditProgram : public test::ProgramClinic {
 protected:
  AuditProgram() {
    init();
    for (const char* name : {"one", "two", "three", "four"}) addUser(name);
    const auto made = test::runHub(place(), {"audit", "head"}, {"--out", m_head});
    EXPECT_EQ(made.code, 0) << made.err;
    m_place->tamper("CREATE TABLE audit_before AS SELECT * FROM audit");
  }
  void putBack() {
    m_place->tamper("DELETE FROM audit; INSERT INTO audit SELECT * FROM audit_before");
    EXPECT_EQ(verify(m_head).code, 0);
  }
  test::Ended verify(const std::string& head = "") {
    return test::runHub(place(), {"audit", "verify"},
                        head.empty() ? std::vector<std::string>() : std::vector<std::string>{"--head", head});
  }
  const std::string m_head = m_folder.path("head.json");
};

struct Tampering {
  const char* what;
  const char* sql;
  bool shows_alone;  // without a head that is kept elsewhere
};

// standards: flip, drop, swap, insert, truncate.
const Tampering kTamperings[] = {
    {"flip", "UPDATE audit SET entry = replace(entry, 'account.add', 'account.sdd') WHERE n = 3", true},
    {"drop", "DELETE FROM audit WHERE n = 2", true},
    {"drop the first", "DELETE FROM audit WHERE n = 1", true},
    {"swap",
     "UPDATE audit SET entry = (SELECT entry FROM audit_before WHERE n = 5 - audit.n) WHERE n IN (2, 3)",
     true},
    {"swap whole lines",
     "UPDATE audit SET entry = (SELECT entry FROM audit_before WHERE n = 5 - audit.n), "
     "hash = (SELECT hash FROM audit_before WHERE n = 5 - audit.n) WHERE n IN (2, 3)",
     true},
    {"insert in the middle",
     "DELETE FROM audit; INSERT INTO audit SELECT CASE WHEN n >= 3 THEN n + 1 ELSE n END, entry, hash FROM "
     "audit_before; INSERT INTO audit SELECT 3, entry, hash FROM audit_before WHERE n = 2",
     true},
    {"insert at the end", "INSERT INTO audit SELECT 6, entry, hash FROM audit_before WHERE n = 5", true},
    {"truncate", "DELETE FROM audit WHERE n > 3", false},
    {"truncate all", "DELETE FROM audit", false},
};

TEST_F(AuditProgram, findsWhatWasFlippedDroppedSwappedInsertedOrCutOff) {
  EXPECT_EQ(verify().code, 0);
  EXPECT_EQ(verify(m_head).out, "5 lines, unbroken.\n");
  for (const auto& tampering : kTamperings) {
    m_place->tamper(tampering.sql);
    EXPECT_EQ(verify().code, tampering.shows_alone ? 1 : 0) << tampering.what;
    const auto found = verify(m_head);
    EXPECT_EQ(found.code, 1) << tampering.what;
    EXPECT_NE(found.err.find("audit: "), std::string::npos) << tampering.what << ": " << found.err;
    putBack();
  }
}

TEST_F(AuditProgram, aTrailThatGrewSinceTheHeadIsFine) {
  addUser("five");
  EXPECT_EQ(verify(m_head).out, "6 lines, unbroken.\n");
}

TEST_F(AuditProgram, aHeadThatWasChangedIsNoHead) {
  const std::string text = test::fileText(m_head);
  const std::string changed = m_folder.path("changed.json");
  for (std::size_t i = 0; i + 1 < text.size(); i += 7) {
    std::string other = text;
    other[i] = static_cast<char>(other[i] ^ 1);
    EXPECT_FALSE(parseAuditHead(other).ok()) << other;
  }
  std::ofstream(changed) << text.substr(0, text.find("\"n\":5")) << "\"n\":4"
                         << text.substr(text.find("\"n\":5") + 5);
  EXPECT_EQ(verify(changed).code, 1);
  EXPECT_NE(verify(changed).err.find("signature"), std::string::npos);
  EXPECT_EQ(verify("nonsense").code, 1);
}

// Whoever puts a key of their own into the store can sign heads of their own, but not the one kept elsewhere.
TEST_F(AuditProgram, aHeadOfAnotherKeyIsRefused) {
  ClinicKey other = makeClinicKey(m_random);
  const auto head = parseAuditHead(test::fileText(m_head));
  ASSERT_TRUE(head.ok()) << head.status();
  const std::string forged = m_folder.path("forged.json");
  std::ofstream(forged) << formatAuditHead(head->head, head->clinic_id, other, head->at);
  EXPECT_EQ(verify(forged).code, 1);
  EXPECT_NE(verify(forged).err.find("another key"), std::string::npos) << verify(forged).err;
}

TEST_F(AuditProgram, theHeadIsNobodyElsesAndSaysWhatItIs) {
  EXPECT_EQ(fs::status(m_head).permissions() & fs::perms::mask,
            fs::perms::owner_read | fs::perms::owner_write);
  const auto head = parseAuditHead(test::fileText(m_head));
  ASSERT_TRUE(head.ok()) << head.status();
  EXPECT_EQ(head->head.n, 5U);
  EXPECT_LT(absl::AbsDuration(absl::Now() - head->at), absl::Minutes(10));
  EXPECT_EQ(test::runHub(place(), {"audit", "head"}).out.substr(0, 2), "5:");
}

TEST_F(AuditProgram, servingWritesOneHeadADay) {
  const std::string heads = m_folder.path("heads");
  const auto files = [&] {
    std::vector<std::string> all;
    for (const auto& entry : fs::directory_iterator(heads)) all.push_back(entry.path());
    return all;
  };
  for (const int days : {0, 0, 1}) {
    test::ServedHub hub(place(), m_folder.path(), {"--audit-heads", heads},
                        {{"NEWEL_WALL_OFFSET_S", std::to_string(days * 86400)}});
    EXPECT_EQ(hub.stop(), 0);
    EXPECT_EQ(files().size(), days == 0 ? 1U : 2U);
  }
  for (const auto& file : files()) {
    EXPECT_EQ(verify(file).code, 0) << verify(file).err;
    EXPECT_EQ(fs::status(file).permissions() & fs::perms::mask,
              fs::perms::owner_read | fs::perms::owner_write);
  }
  EXPECT_EQ(fs::status(heads).permissions() & fs::perms::mask, fs::perms::owner_all);
  const test::Ended nowhere = test::runHub(place(), {"serve"}, {"--audit-heads", "/proc/nowhere"});
  EXPECT_EQ(nowhere.code, 1) << "a hub that cannot keep its heads says so at once";
}

}  // namespace
}  // namespace newel
