// A new key for the phone's store: whenever the program is ended, one of the two keys opens it and nothing is
// lost.
#include <fcntl.h>
#include <gtest/gtest.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <csignal>
#include <thread>

#include "platform/fake/memory_secret_store.h"
#include "qml/home/store_key.h"
#include "tests/core/people/sample_people.h"
#include "tests/core/people/sample_random.h"
#include "tests/qml/home/folder_secret_store.h"
#include "tests/sync/common/test_clinic.h"

extern char** environ;

namespace newel::home {
namespace {

namespace fs = std::filesystem;

class KeyChange : public testing::Test {
 protected:
  HomeEngine::Options options() {
    HomeEngine::Options options = m_clinic.phoneOptions("phone");
    options.store_key.clear();
    return options;
  }
  std::unique_ptr<HomeEngine> open(platform::SecretStore& secrets) {
    auto engine = openWithKey(options(), secrets, [] { return true; });
    EXPECT_TRUE(engine.ok()) << engine.status();
    return engine.ok() ? *std::move(engine) : nullptr;
  }
  // A phone of this person with three practices, two of them still to be sent.
  void fill(platform::SecretStore& secrets) {
    const auto phone = open(secrets);
    ASSERT_EQ(phone->pair(m_clinic.ticketFor(m_person)), absl::OkStatus());
    for (int i = 0; i < 3; ++i) {
      ASSERT_EQ(phone->closePractice(test::samplePractice(phone->newId(), m_person)), absl::OkStatus());
      if (i == 0) {
        ASSERT_EQ(phone->syncOnce(), absl::OkStatus());
      }
    }
  }
  void expectWhole(platform::SecretStore& secrets) {
    const auto phone = open(secrets);
    ASSERT_TRUE(phone);
    EXPECT_EQ(phone->practices().size(), 3U);
    EXPECT_EQ(phone->state().queued, 2U);
    EXPECT_EQ(phone->person()->id(), m_person);
  }
  // How many changes it finished before it ended or was ended.
  int runUntilEnd(const std::string& die_at, const std::string& place, std::chrono::microseconds wait) {
    int ends[2] = {};
    EXPECT_EQ(pipe(ends), 0);
    std::string words[] = {std::string(NEWEL_BINARY_DIR) + "/tests/newel_test_rekey",
                           m_clinic.folder().path("phone"), m_secrets, die_at, place};
    char* arguments[] = {words[0].data(), words[1].data(), words[2].data(),
                         words[3].data(), words[4].data(), nullptr};
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_adddup2(&actions, ends[1], STDOUT_FILENO);
    posix_spawn_file_actions_addclose(&actions, ends[0]);
    pid_t child = 0;
    EXPECT_EQ(posix_spawn(&child, words[0].c_str(), &actions, nullptr, arguments, environ), 0);
    posix_spawn_file_actions_destroy(&actions);
    close(ends[1]);
    std::string said;
    char buffer[4096];
    const auto take = [&] {
      const ssize_t size = read(ends[0], buffer, sizeof(buffer));
      if (size > 0) said.append(buffer, static_cast<std::size_t>(size));
      return size > 0;
    };
    if (die_at == "0") {
      while (said.find("changing") == std::string::npos && take()) {
      }
      std::this_thread::sleep_for(wait);
      kill(child, SIGKILL);
    }
    while (take()) {
    }
    close(ends[0]);
    int status = 0;
    waitpid(child, &status, 0);
    EXPECT_TRUE(WIFSIGNALED(status)) << said;
    int changes = 0;
    for (std::size_t at = 0; (at = said.find("changed", at)) != std::string::npos; ++at) ++changes;
    return changes;
  }

  test::TestClinic m_clinic;
  const std::string m_person = m_clinic.addPerson(test::transfemoralLeft());
  const std::string m_secrets = m_clinic.folder().path("secrets");
  test::SampleRandom m_random{20261129};
};

TEST_F(KeyChange, endedAtEveryStepOfTheSecretsTheStoreOpensWhole) {
  tests::FolderSecretStore secrets(m_secrets);
  fill(secrets);
  // Write beside, write in place, erase: before and after each, and the first of the next change.
  for (int step = 1; step <= 8; ++step) {
    runUntilEnd(std::to_string(step), "system", {});
    expectWhole(secrets);
  }
}

TEST_F(KeyChange, endedAtAnyMomentTheStoreOpensWhole) {
  tests::FolderSecretStore secrets(m_secrets);
  fill(secrets);
  int changes = 0;
  for (int round = 0; round < 15; ++round) {
    changes += runUntilEnd("0", "system", std::chrono::microseconds(m_random.between(0, 60000)));
    expectWhole(secrets);
  }
  EXPECT_GT(changes, 0);
}

TEST_F(KeyChange, withTheKeyInAFileToo) {
  tests::FolderSecretStore secrets(m_secrets);
  secrets.there = false;
  fill(secrets);
  for (int round = 0; round < 10; ++round) {
    runUntilEnd("0", "file", std::chrono::microseconds(m_random.between(0, 60000)));
    expectWhole(secrets);
  }
  EXPECT_FALSE(fs::exists(m_clinic.folder().path("phone/store.key.next")));
  EXPECT_EQ(fs::status(m_clinic.folder().path("phone/store.key")).permissions() & fs::perms::all,
            fs::perms::owner_read | fs::perms::owner_write);
}

TEST_F(KeyChange, takesTheFormerKeyAway) {
  platform::MemorySecretStore secrets;
  fill(secrets);
  const std::string before = secrets.secrets.begin()->second;
  {
    const auto phone = open(secrets);
    EXPECT_FALSE(keyIsOld(*phone, m_clinic.clock().wall()));
    m_clinic.clock().advance(kStoreKeyLife + absl::Hours(24));
    EXPECT_TRUE(keyIsOld(*phone, m_clinic.clock().wall()));
    ASSERT_EQ(changeKey(*phone, m_clinic.folder().path("phone"), secrets, m_clinic.random()),
              absl::OkStatus());
    EXPECT_FALSE(keyIsOld(*phone, m_clinic.clock().wall()));
  }
  ASSERT_EQ(secrets.secrets.size(), 1U) << "nothing is left beside";
  EXPECT_NE(secrets.secrets.begin()->second, before);
  expectWhole(secrets);
  secrets.secrets.begin()->second = before;
  EXPECT_TRUE(absl::IsPermissionDenied(openWithKey(options(), secrets, [] { return true; }).status()));
}

// The copy beside may be the one that fits: another change must not write over it.
TEST_F(KeyChange, anUnfinishedChangeIsFinishedFirst) {
  platform::MemorySecretStore secrets;
  fill(secrets);
  const auto phone = open(secrets);
  const std::string name = secrets.secrets.begin()->first;
  secrets.secrets[name + " next"] = secrets.secrets.begin()->second;
  EXPECT_TRUE(absl::IsFailedPrecondition(
      changeKey(*phone, m_clinic.folder().path("phone"), secrets, m_clinic.random())));
}

// The secret store takes nothing just now: the key in use stays.
TEST_F(KeyChange, withoutAPlaceForTheNewKeyNothingChanges) {
  platform::MemorySecretStore secrets;
  fill(secrets);
  {
    const auto phone = open(secrets);
    secrets.writable = false;
    EXPECT_TRUE(
        absl::IsUnavailable(changeKey(*phone, m_clinic.folder().path("phone"), secrets, m_clinic.random())));
  }
  secrets.writable = true;
  expectWhole(secrets);
}

}  // namespace
}  // namespace newel::home
