// A page of the caseload is read as a stretch of each table; here against every person looked up alone, table
// by table, whatever is there and whatever is not; on either store.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <map>
#include <set>
#include <stdexcept>

#include "sync/common/content_hash.h"
#include "tests/core/people/sample_people.h"
#include "tests/core/people/sample_random.h"
#include "tests/sync/common/test_clinic.h"
#include "tests/sync/common/test_store.h"

namespace newel {
namespace {

const absl::Time kNow = absl::FromUnixSeconds(1790000000);

// What was put, as one row would say it.
struct Expected {
  std::string person, identity, digest, snooze;
  int digest_version = 0;
  bool paired = false;
  std::optional<absl::Time> last_contact;
  bool due = true;  // who is new has no digest yet
  std::set<std::string> assigned;
  std::set<std::string> opened_by;
  bool opened = false;
};

class CaseloadPages : public testing::Test {
 protected:
  CaseloadPages() {
    std::filesystem::create_directories(m_folder.path("hub"));
    auto store = m_place->open();
    if (!store.ok()) throw std::runtime_error(std::string(store.status().message()));
    m_store = *std::move(store);
  }

  void add(HubTransaction& t, test::SampleRandom& random, const std::string& id) {
    Expected& expected = m_expected[id];
    expected.person = "person " + id;
    t.putPerson(id, {1, expected.person});
    if (random.chance(70)) {
      expected.identity = "identity " + id;
      t.putIdentity(id, {1, expected.identity});
    }
    for (std::uint32_t phones = random.between(0, 3); phones > 0; --phones) {
      const std::string device = test::idOf(500000 + m_number++);
      // Pairing is a contact too.
      const absl::Time paired = kNow - absl::Hours(600 + random.between(0, 50));
      std::optional<absl::Time> contact;
      if (random.chance(70)) contact = kNow - absl::Hours(random.between(1, 500));
      const bool revoked = random.chance(40);
      t.addDevice({device, id, "phone", "test", sha256(device), paired, contact, false});
      if (revoked) t.revokeDevice(device);
      if (revoked) continue;
      expected.paired = true;
      const absl::Time heard = contact.value_or(paired);
      if (!expected.last_contact || heard > *expected.last_contact) expected.last_contact = heard;
    }
    for (const auto& account : m_accounts) {
      if (random.chance(30)) {
        t.setAssigned(account, id, true);
        expected.assigned.insert(account);
      }
      if (!random.chance(20)) continue;
      // Some are over for long, some lately, some still open.
      const absl::Time until = kNow + absl::Hours(24) * (static_cast<int>(random.between(0, 20)) - 12);
      t.addOpening({test::idOf(600000 + m_number++), id, account, "reason", until - absl::Hours(1), until});
      if (until > kNow) expected.opened_by.insert(account);
      expected.opened = expected.opened || until > kNow - absl::Hours(24 * 7);
    }
    if (random.chance(30)) {
      expected.snooze = "snooze " + id;
      t.putSnooze(id, expected.snooze);
    }
  }

  void makeDigests(test::SampleRandom& random) {
    ASSERT_EQ(m_store->write([&](HubTransaction& t) {
      for (const auto& due : t.dueDigests(1000)) {
        if (random.chance(30)) continue;
        Expected& expected = m_expected.at(due.person_id);
        expected.digest = "digest " + due.person_id;
        expected.digest_version = 7;
        expected.due = false;
        t.putDigest({due.person_id, {7, 20000}, expected.digest}, due.mark);
      }
      return absl::OkStatus();
    }),
              absl::OkStatus());
  }

  static CaseloadQuery asked(const std::string& account, std::uint32_t limit, bool only_own = false,
                             const std::string& person_id = "") {
    CaseloadQuery query;
    query.account_id = account;
    query.only_own = only_own;
    query.now = kNow;
    query.person_id = person_id;
    query.limit = limit;
    return query;
  }

  // All pages of `limit`; the ids in order.
  std::vector<std::string> walk(CaseloadQuery query) {
    std::vector<std::string> ids;
    const absl::Status read = m_store->read([&](HubTransaction& t) {
      ids.clear();
      query.after_id.clear();
      while (true) {
        const CaseloadPage page = t.caseload(query);
        EXPECT_LE(page.rows.size(), query.limit);
        for (const auto& row : page.rows) {
          ids.emplace_back(row.person_id);
          compare(row, query.account_id);
        }
        if (page.rows.size() < query.limit || !query.person_id.empty()) return absl::OkStatus();
        query.after_id = ids.back();
      }
    });
    EXPECT_EQ(read, absl::OkStatus());
    return ids;
  }

  void compare(const CaseloadRow& row, const std::string& account) {
    const std::string id(row.person_id);
    const Expected& expected = m_expected.at(id);
    EXPECT_EQ(row.person, expected.person);
    EXPECT_EQ(row.identity, expected.identity) << id;
    EXPECT_EQ(row.has_digest, !expected.digest.empty()) << id;
    EXPECT_EQ(row.digest, expected.digest) << id;
    EXPECT_EQ(row.digest_age.version, expected.digest_version) << id;
    EXPECT_EQ(row.due, expected.due) << id;
    EXPECT_EQ(row.snooze, expected.snooze) << id;
    EXPECT_EQ(row.paired, expected.paired) << id;
    EXPECT_EQ(row.last_contact, expected.last_contact) << id;
    EXPECT_EQ(row.mine, expected.assigned.contains(account)) << id;
    EXPECT_EQ(row.opened, expected.opened) << id;
  }

  test::TempFolder m_folder;
  std::unique_ptr<test::TestStore> m_place = test::testStoreMaker()(m_folder.path("hub"));
  std::unique_ptr<HubStore> m_store;
  const std::vector<std::string> m_accounts = {test::idOf(1), test::idOf(2)};
  std::map<std::string, Expected> m_expected;
  std::uint64_t m_number = 0;
};

TEST_F(CaseloadPages, sayOfEachPersonWhatIsKept) {
  test::SampleRandom random(20261130);
  // Not in the order of their ids.
  std::vector<std::uint64_t> numbers;
  for (std::uint64_t n = 0; n < 60; ++n) numbers.push_back(100 + (n * 37) % 60);
  ASSERT_EQ(m_store->write([&](HubTransaction& t) {
    for (const auto n : numbers) add(t, random, test::idOf(n));
    return absl::OkStatus();
  }),
            absl::OkStatus());
  makeDigests(random);
  std::vector<std::string> all;
  for (const auto& [id, expected] : m_expected) all.push_back(id);
  for (const auto& account : m_accounts) {
    std::vector<std::string> own;
    for (const auto& [id, expected] : m_expected) {
      if (expected.assigned.contains(account) || expected.opened_by.contains(account)) own.push_back(id);
    }
    ASSERT_GT(own.size(), 10U);
    // Pages that end with the last person, before it and behind it.
    for (const std::uint32_t limit : {1U, 7U, 20U, 59U, 60U, 61U, 500U}) {
      EXPECT_EQ(walk(asked(account, limit)), all) << limit;
      EXPECT_EQ(walk(asked(account, limit, true)), own) << limit;
    }
    for (const auto& id : all) {
      EXPECT_EQ(walk(asked(account, 501, false, id)), std::vector<std::string>{id});
      const bool mine = std::find(own.begin(), own.end(), id) != own.end();
      EXPECT_EQ(walk(asked(account, 501, true, id)).size(), mine ? 1U : 0U);
    }
  }
  // Nobody has it, though there is one before it and one behind it.
  EXPECT_TRUE(walk(asked(m_accounts[0], 501, false, test::idOf(99))).empty());
  EXPECT_TRUE(walk(asked(m_accounts[0], 501, false, test::idOf(100) + "0")).empty());
}

TEST_F(CaseloadPages, ofNobodyAreEmpty) { EXPECT_TRUE(walk(asked(m_accounts[0], 10)).empty()); }

}  // namespace
}  // namespace newel
