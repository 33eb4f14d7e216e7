// A real hub for tests: TLS on loopback, a store of its own (SQLite, or what test_store.h was told), a
// therapist who is signed in, and a clock that the test moves.
#pragma once

#include <filesystem>
#include <memory>
#include <mutex>
#include <string>

#include "core/time/clock.h"
#include "sync/common/real_random.h"
#include "sync/desk/desk_client.h"
#include "sync/home/home_engine.h"
#include "sync/hub/hub.h"
#include "sync/hub/hub_server.h"
#include "tests/sync/common/test_store.h"

namespace newel::test {

// A folder that is gone at the end.
class TempFolder {
 public:
  TempFolder();
  ~TempFolder();
  TempFolder(const TempFolder&) = delete;
  TempFolder& operator=(const TempFolder&) = delete;
  std::string path(const std::string& name = "") const;

 private:
  std::filesystem::path m_path;
};

// Thread-safe; moves when told.
class TestClock : public Clock {
 public:
  absl::Time wall() const override;
  absl::Duration elapsed() const override;
  void advance(absl::Duration by);
  void setWall(absl::Time wall);

 private:
  mutable std::mutex m_mutex;
  absl::Time m_wall = absl::FromUnixSeconds(1795600000);  // 2026-11-25
  absl::Duration m_elapsed = absl::Hours(1);
};

inline constexpr char kUser[] = "t.sample";
inline constexpr char kPassword[] = "a long enough phrase";

class TestClinic {
 public:
  TestClinic();
  ~TestClinic();

  // From the store on: what a restart of the program does. `port` 0: any.
  void startHub(int port = 0);
  void stopServer();  // the network alone: hub and store stay
  void stopHub();

  std::unique_ptr<DeskClient> newDesk();  // connected, not signed in
  // Puts `person` with an invented name; its id.
  std::string addPerson(const v1::Person& person, const std::string& given_name = "Sample");
  // A programme of one harmless entry that the rules allow for this person.
  v1::Programme draft(const v1::Person& person) const;
  v1::Programme sign(const v1::Person& person, std::uint32_t base_number = 0);

  HomeEngine::Options phoneOptions(const std::string& name);
  // The secret that the phone of that name shows the hub, from its store.
  std::string tokenOf(const std::string& phone_name);
  std::unique_ptr<HomeEngine> newPhone(const std::string& name);  // opened, not paired
  PairingTicket ticketFor(const std::string& person_id);          // as from the QR
  std::unique_ptr<HomeEngine> pairedPhone(const std::string& name, const std::string& person_id);

  std::string address() const;
  std::string storePath() const { return m_folder.path("hub.db"); }  // with SQLite
  std::vector<std::string> auditActions();

  TempFolder& folder() { return m_folder; }
  TestClock& clock() { return m_clock; }
  RealRandom& random() { return m_random; }
  DeskClient& desk() { return *m_desk; }
  Hub& hub() { return *m_hub; }
  HubStore& store() { return *m_store; }
  TestStore& place() { return *m_place; }

 private:
  TempFolder m_folder;
  TestClock m_clock;
  RealRandom m_random;
  std::unique_ptr<TestStore> m_place = testStoreMaker()(m_folder.path());
  std::unique_ptr<HubStore> m_store;
  std::unique_ptr<Hub> m_hub;
  std::unique_ptr<HubServer> m_server;
  std::unique_ptr<DeskClient> m_desk;
};

// A finished practice of `person_id` under programme 1, with one entry done.
// Worn from eight to ten on 2026-11-25, looked at, nothing seen.
v1::WearBlock sampleWearBlock(const std::string& id, const std::string& person_id,
                              std::uint32_t revision = 1);
// Two steps: a day of two blocks of an hour, then all day.
v1::WearPlan sampleWearPlan(const std::string& person_id);
// A Timed Up and Go on 2026-11-25.
v1::Measure timedWalk(const std::string& id, const std::string& person_id, double seconds);
v1::Remark sampleRemark(const std::string& id, const std::string& person_id);  // about 2026-11-25
v1::Practice samplePractice(const std::string& id, const std::string& person_id, std::uint32_t revision = 1);
v1::JournalLine sampleLine(const std::string& practice_id, const std::string& person_id,
                           std::uint32_t sequence);

}  // namespace newel::test
