#include "sync/hub/backup.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <gtest/gtest.h>

#include <atomic>
#include <filesystem>
#include <fstream>
#include <thread>

#include "core/records/record_text.h"
#include "sync/common/content_hash.h"
#include "sync/hub/sqlite_hub_store.h"
#include "tests/core/people/sample_people.h"
#include "tests/sync/common/test_clinic.h"
#include "tests/sync/common/test_media.h"

namespace newel {
namespace {

namespace fs = std::filesystem;

v1::OfferRequest offerOf(const std::string& person, std::uint64_t id) {
  const auto practice = test::samplePractice(test::idOf(id), person);
  v1::OfferRequest request;
  *request.add_records() = makeEnvelope(v1::RECORD_KIND_PRACTICE, practice.id(), 1, toBytes(practice));
  request.mutable_records(0)->set_sequence(id);
  return request;
}

TEST(Backup, carriesPhotosAndClips) {
  test::TestClinic clinic;
  const std::string person = clinic.addPerson(test::transfemoralLeft());
  const std::string photo = test::photoOfColour(3, 600'000);
  ASSERT_EQ(clinic.desk().putMedia(person, photo), absl::OkStatus());
  fs::create_directories(clinic.folder().path("restored"));
  const std::string to = clinic.folder().path("restored/hub.db");
  ASSERT_EQ(backupStore(clinic.storePath(), to), absl::OkStatus());
  auto store = openSqliteHubStore(to);
  ASSERT_TRUE(store.ok()) << store.status();
  const auto restored = Hub::open(store->get(), &clinic.clock(), &clinic.random());
  ASSERT_TRUE(restored.ok()) << restored.status();
  v1::GetMediaRequest request;
  request.set_person_id(person);
  request.set_sha256(sha256(photo));
  request.set_most_bytes(100'000);
  std::string content;
  while (content.size() < photo.size()) {
    request.set_offset(content.size());
    const auto part = (*restored)->media().get(request);
    ASSERT_TRUE(part.ok()) << part.status();
    ASSERT_FALSE(part->content().empty());
    content += part->content();
  }
  EXPECT_EQ(content, photo);
}

TEST(Backup, takenWhileServingItOpensVerifiesAndIsANewGeneration) {
  test::TestClinic clinic;
  const std::string person = clinic.addPerson(test::transfemoralLeft());
  const PhoneCaller phone{test::idOf(900), person};
  for (std::uint64_t i = 0; i < 50; ++i) {
    ASSERT_TRUE(clinic.hub().phones().offer(phone, offerOf(person, 1000 + i)).ok());
  }
  std::atomic<bool> stop{false};
  std::atomic<std::uint64_t> kept{0};
  std::thread writer([&] {
    while (!stop) {
      if (clinic.hub().phones().offer(phone, offerOf(person, 2000 + kept)).ok()) ++kept;
    }
  });
  while (kept < 3) std::this_thread::yield();
  const std::string to = clinic.folder().path("backup.db");
  const absl::Status done = backupStore(clinic.storePath(), to);
  stop = true;
  writer.join();
  ASSERT_EQ(done, absl::OkStatus());
  EXPECT_EQ(fs::status(to).permissions() & fs::perms::mask, fs::perms::owner_read | fs::perms::owner_write);
  EXPECT_FALSE(fs::exists(to + ".part"));
  EXPECT_FALSE(fs::exists(to + "-wal"));
  EXPECT_TRUE(absl::IsAlreadyExists(backupStore(clinic.storePath(), to)));

  // An empty machine.
  fs::create_directories(clinic.folder().path("restored"));
  fs::copy_file(to, clinic.folder().path("restored/hub.db"));
  auto store = openSqliteHubStore(clinic.folder().path("restored/hub.db"));
  ASSERT_TRUE(store.ok()) << store.status();
  const auto restored = Hub::open(store->get(), &clinic.clock(), &clinic.random());
  ASSERT_TRUE(restored.ok()) << restored.status();
  EXPECT_NE((*restored)->clinic().generation, clinic.hub().clinic().generation);
  EXPECT_EQ((*restored)->clinic().certificate_sha256, clinic.hub().clinic().certificate_sha256);
  EXPECT_EQ((*restored)->clinic().key.public_key, clinic.hub().clinic().key.public_key);
  // Every record in it has its own hash, and the fifty from before are all there.
  v1::ListPracticesRequest request;
  request.set_person_id(person);
  request.set_limit(500);
  const auto practices = (*restored)->files().practices(request);
  ASSERT_TRUE(practices.ok());
  EXPECT_GE(practices->practices_size(), 50);
  for (const auto& envelope : practices->practices()) {
    EXPECT_EQ(sha256(envelope.content()), envelope.sha256());
  }
  // Only once: a hub that was restored and restarted is the same generation still.
  const std::string generation = (*restored)->clinic().generation;
  const auto again = Hub::open(store->get(), &clinic.clock(), &clinic.random());
  EXPECT_EQ((*again)->clinic().generation, generation);
}

TEST(Backup, aTamperedTrailMakesNoBackup) {
  test::TestClinic clinic;
  clinic.stopHub();
  {
    SQLite::Database raw(clinic.storePath(), SQLite::OPEN_READWRITE);
    raw.exec("UPDATE audit SET entry = replace(entry, 'clinic.init', 'clinic.InIt') WHERE n = 1");
  }
  const std::string to = clinic.folder().path("backup.db");
  EXPECT_TRUE(absl::IsDataLoss(backupStore(clinic.storePath(), to)));
  EXPECT_FALSE(fs::exists(to));
}

TEST(HubStoreFile, aDamagedStoreIsRefusedAndLeftInPlace) {
  test::TempFolder folder;
  const std::string path = folder.path("hub.db");
  { std::ofstream(path, std::ios::binary) << std::string(4096, 'x'); }
  EXPECT_TRUE(absl::IsDataLoss(openSqliteHubStore(path).status()));
  EXPECT_EQ(fs::file_size(path), 4096U);
}

TEST(HubStoreFile, aNewerStoreIsRefusedInPlainWords) {
  test::TempFolder folder;
  const std::string path = folder.path("hub.db");
  {
    SQLite::Database raw(path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    raw.exec("PRAGMA user_version = 999");
  }
  const auto status = openSqliteHubStore(path).status();
  EXPECT_TRUE(absl::IsFailedPrecondition(status));
  EXPECT_NE(std::string(status.message()).find("newer version"), std::string::npos);
}

}  // namespace
}  // namespace newel
