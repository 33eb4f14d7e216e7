// A store of every past version opens, loses nothing and goes on being used. The stores are kept as files:
// what an earlier version wrote does not change when a migration is edited. NEWEL_WRITE_STORES=<folder>
// writes them anew, for the version that is added.
#include "tests/sync/hub/past_stores.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>

#include "sync/hub/hub.h"
#include "sync/hub/sqlite_hub_store.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

namespace fs = std::filesystem;

const std::string kKept = std::string(NEWEL_SOURCE_DIR) + "/tests/data/stores";

class PastStore : public testing::TestWithParam<int> {
 protected:
  PastStore() { fs::copy_file(test::pastStorePath(kKept, GetParam()), m_path); }

  test::TempFolder m_folder;
  const std::string m_path = m_folder.path("hub.db");
  test::TestClock m_clock;
  RealRandom m_random;
};

TEST_P(PastStore, opensLosesNothingAndIsUsedOn) {
  auto store = openSqliteHubStore(m_path);
  ASSERT_TRUE(store.ok()) << store.status();
  auto hub = Hub::open(store->get(), &m_clock, &m_random);
  ASSERT_TRUE(hub.ok()) << hub.status();
  const v1::Person person = test::transfemoralLeft();
  const auto programmes = (*hub)->prescriptions().programmes(person.id());
  ASSERT_TRUE(programmes.ok()) << programmes.status();
  EXPECT_EQ(programmes->programmes_size(), 2);
  EXPECT_EQ((*hub)->prescriptions().holds(person.id())->orders_size(), 2);
  EXPECT_EQ((*store)->read([&](HubTransaction& transaction) {
    EXPECT_EQ(transaction.practicesAfter(person.id(), 0, 100).size(), 3U);
    EXPECT_EQ(transaction.messages(person.id()).size(), 2U);
    EXPECT_TRUE(transaction.identity(person.id()).has_value());
    EXPECT_TRUE(transaction.accountByName(test::kUser).has_value());
    EXPECT_FALSE(transaction.auditAfter(0, 1000).empty());
    return absl::OkStatus();
  }),
            absl::OkStatus());
  DeskCaller caller;
  caller.therapist.set_id(test::idOf(2001));
  caller.therapist.set_display_name("Dr Sample (invented)");
  v1::IssueHoldRequest hold;
  hold.set_person_id(person.id());
  hold.set_reason("Please rest today.");
  const auto held = (*hub)->prescriptions().issueHold(caller, hold);
  ASSERT_TRUE(held.ok()) << held.status();
  EXPECT_EQ(held->order().number(), 3U);
}

INSTANTIATE_TEST_SUITE_P(OfEveryVersion, PastStore, testing::ValuesIn(test::storeVersions()),
                         [](const auto& version) { return "version" + std::to_string(version.param); });

TEST(PastStores, areThereForEveryVersionAndFullForTheLast) {
  if (const char* folder = std::getenv("NEWEL_WRITE_STORES")) {
    const test::TempFolder temporary;
    test::makeFullStore(temporary.path("full.db"));
    for (const int version : test::storeVersions())
      test::makePastStore(temporary.path("full.db"), test::pastStorePath(folder, version), version);
  }
  for (const int version : test::storeVersions())
    EXPECT_TRUE(fs::exists(test::pastStorePath(kKept, version))) << "write it: see the top of this file";
}

}  // namespace
}  // namespace newel
