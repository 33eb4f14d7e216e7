#include "sync/hub/hub_schema.h"

#include <gtest/gtest.h>

#include "sync/common/database.h"
#include "sync/hub/sqlite_hub_store.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"

namespace newel {
namespace {

constexpr int kBeforePracticesCameInOrder = 5;

// A store as the program before that step left it: practices by id, not as they came.
TEST(HubSchema, practicesOfAnOlderStoreAreKeptWithTheirNumbers) {
  const test::TempFolder folder;
  DatabaseOptions options;
  options.path = folder.path("hub.db");
  options.what = "the clinic's store";
  const auto& all = hubMigrations();
  const std::vector<Migration> older(all.begin(), all.begin() + kBeforePracticesCameInOrder);
  const std::string bytes("\0\x01\xff", 3);
  {
    auto database = Database::open(options, older);
    ASSERT_TRUE(database.ok()) << database.status();
    (*database)->exec("INSERT INTO person VALUES ('" + test::idOf(1) + "', 1, x'00')");
    for (int i = 0; i < 9; ++i) {
      // The first id came last; the first practice has two revisions.
      (*database)->run(
          "INSERT INTO practice (id, revision, person_id, device_id, content, sha256, sequence, at, "
          "red_flag) "
          "VALUES (?, ?, ?, 'd', ?, ?, ?, 5, ?)",
          test::idOf(static_cast<std::uint64_t>(i == 8 ? 100 : 100 - i)), i == 8 ? 2 : 1, test::idOf(1),
          Blob{bytes}, Blob{bytes}, 10 + i, i == 8 ? 1 : 0);
    }
  }
  auto store = openSqliteHubStore(options.path);
  ASSERT_TRUE(store.ok()) << store.status();
  EXPECT_EQ((*store)->read([&](HubTransaction& t) {
    const auto list = t.practicesAfter(test::idOf(1), 0, 100);
    EXPECT_EQ(list.size(), 8U);
    for (std::size_t i = 0; i < list.size(); ++i) {
      EXPECT_EQ(list[i].sequence(), 11 + i);
      EXPECT_EQ(list[i].content(), bytes);
    }
    EXPECT_EQ(t.practicesKept({{test::idOf(100), 1}}).front().revision, 2U);
    EXPECT_EQ(t.practicesKept({{test::idOf(100), 1}}).front().sha256, bytes);
    EXPECT_TRUE(t.caseFacts(test::idOf(1)).red_flag_open);
    return absl::OkStatus();
  }),
            absl::OkStatus());
}

}  // namespace
}  // namespace newel
