// The system's secret store for real: with a Secret Service on a session bus, and without one.
#include "platform/secret_store.h"

#include <gtest/gtest.h>

#include <QtCore/QCoreApplication>

namespace newel::platform {
namespace {

TEST(SecretService, keepsWritesOverAndForgets) {
  const auto store = makeSecretStore();
  const auto nothing = store->read("a key");
  ASSERT_TRUE(nothing.ok()) << nothing.status();
  EXPECT_FALSE(nothing->has_value());
  const std::string bytes("00ff\x01 not text", 14);
  ASSERT_EQ(store->write("a key", bytes), absl::OkStatus());
  EXPECT_EQ(**store->read("a key"), bytes);
  EXPECT_EQ(**makeSecretStore()->read("a key"), bytes) << "it outlives the program's own object";
  ASSERT_EQ(store->write("a key", "another"), absl::OkStatus());
  EXPECT_EQ(**store->read("a key"), "another");
  ASSERT_EQ(store->erase("a key"), absl::OkStatus());
  EXPECT_FALSE(store->read("a key")->has_value());
  EXPECT_EQ(store->erase("a key"), absl::OkStatus()) << "twice is no error";
}

TEST(NoSecretService, isSaidAndNothingIsKeptPlainly) {
  const auto store = makeSecretStore();
  EXPECT_TRUE(absl::IsUnavailable(store->read("a key").status())) << store->read("a key").status();
  EXPECT_FALSE(store->write("a key", "secret").ok());
}

}  // namespace
}  // namespace newel::platform

int main(int argc, char** argv) {
  testing::InitGoogleTest(&argc, argv);
  if (testing::GTEST_FLAG(filter).find("NoSecretService") != std::string::npos)
    qputenv("DBUS_SESSION_BUS_ADDRESS", "unix:path=/nonexistent");
  const QCoreApplication app(argc, argv);
  return RUN_ALL_TESTS();
}
