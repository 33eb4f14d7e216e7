// Where the key of the phone's store comes from, and that it is never silently a file nor silently another.
#include "qml/home/store_key.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

#include "platform/fake/memory_secret_store.h"
#include "sync/common/real_random.h"
#include "sync/home/seal.h"
#include "tests/sync/common/test_clinic.h"

namespace newel::home {
namespace {

namespace fs = std::filesystem;

class StoreKey : public testing::Test {
 protected:
  absl::StatusOr<std::string> key(bool says_yes = false) {
    return storeKey(m_folder.path("phone"), m_secrets, m_random, [this, says_yes] {
      ++m_asked;
      return says_yes;
    });
  }
  std::string file() const { return m_folder.path("phone/store.key"); }

  test::TempFolder m_folder;
  platform::MemorySecretStore m_secrets;
  RealRandom m_random;
  int m_asked = 0;
};

TEST_F(StoreKey, isMadeOnceAndKeptByTheSystem) {
  const auto first = key();
  ASSERT_TRUE(first.ok()) << first.status();
  EXPECT_EQ(first->size(), kStoreKeyBytes);
  EXPECT_EQ(*key(), *first);
  EXPECT_EQ(m_asked, 0);
  EXPECT_FALSE(fs::exists(file()));
}

TEST_F(StoreKey, withoutASafePlaceThePersonIsAskedAndMayRefuse) {
  m_secrets.there = false;
  EXPECT_TRUE(absl::IsCancelled(key(false).status()));
  EXPECT_EQ(m_asked, 1);
  EXPECT_FALSE(fs::exists(file()));
}

TEST_F(StoreKey, inAFileOnlyThePersonMayReadIt) {
  m_secrets.there = false;
  const auto first = key(true);
  ASSERT_TRUE(first.ok()) << first.status();
  EXPECT_EQ(fs::status(file()).permissions() & fs::perms::all,
            fs::perms::owner_read | fs::perms::owner_write);
  EXPECT_EQ(*key(false), *first);
  EXPECT_EQ(m_asked, 1) << "said once";
}

TEST_F(StoreKey, aPlaceThatIsAwayForAWhileIsWaitedFor) {
  const std::string first = *key();
  m_secrets.there = false;
  EXPECT_TRUE(absl::IsUnavailable(key(true).status()));
  EXPECT_EQ(m_asked, 0) << "another key would lock the person out";
  m_secrets.there = true;
  EXPECT_EQ(*key(), first);
}

TEST_F(StoreKey, whatIsNoKeyIsSaid) {
  m_secrets.there = false;
  ASSERT_TRUE(key(true).ok());
  { std::ofstream(file(), std::ios::trunc) << "not a key"; }
  EXPECT_TRUE(absl::IsDataLoss(key().status()));
}

TEST_F(StoreKey, twoFoldersHaveTwoKeys) {
  const std::string one = *key();
  const auto two = storeKey(m_folder.path("other"), m_secrets, m_random, [] { return false; });
  ASSERT_TRUE(two.ok());
  EXPECT_NE(*two, one);
}

}  // namespace
}  // namespace newel::home
