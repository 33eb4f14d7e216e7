// The clinic's machine: the real hub over its real store on a simulated disk, the therapist at the desk, and
// the administrator who restarts it and brings backups back.
#pragma once

#include <deque>
#include <memory>
#include <set>
#include <string>
#include <vector>

#include "sync/hub/hub.h"
#include "tests/sim/ledger.h"
#include "tests/sim/memory_disk.h"
#include "tests/sim/stage.h"

namespace newel::sim {

// Somebody whose connection ends when the hub does.
class HubWatcher {
 public:
  virtual ~HubWatcher() = default;
  virtual void hubWentAway() = 0;
};

class SimHub {
 public:
  SimHub(Stage* stage, Ledger* ledger, std::vector<v1::Person> people);
  ~SimHub();

  bool isUp() const { return m_hub != nullptr && !m_disk.isDead(); }
  Hub& hub() { return *m_hub; }
  std::uint64_t epoch() const { return m_epoch; }  // of this start
  const std::vector<v1::Person>& people() const { return m_people; }
  MemoryDisk& disk() { return m_disk; }

  // After anything that may have met a fault: a machine that has stopped is put away and comes back later.
  void afterwards();
  // The faults and the therapist of one day.
  void planDay();
  // It loses what came after an old backup.
  void goBack();
  // The faults have stopped: healed and up.
  void settle();

  // A picture code for this person's phone. Not OK when the hub is down or cannot write.
  absl::StatusOr<std::string> invite(const std::string& person_id);

  void watch(const std::weak_ptr<HubWatcher>& watcher) { m_watchers.push_back(watcher); }

  // The therapist stops somebody just now, as after a call.
  void holdNow(const std::string& person_id);

  // Everything that was acknowledged is there, each revision with the content it came with.
  void checkKept();
  // Every record is its own person's and was made by somebody.
  void checkRecords();

  // Reading for checks; empty when the hub cannot answer.
  std::vector<v1::HoldOrder> holds(const std::string& person_id);
  std::vector<v1::Receipt> receipts(const std::string& person_id);
  std::string latestProgrammeId(const std::string& person_id);
  std::uint32_t latestProgrammeNumber(const std::string& person_id);
  std::set<std::string> messageIds(const std::string& person_id);
  bool hasMedia(const std::string& person_id, const std::string& hash);
  bool isRevoked(const std::string& token);

 private:
  struct Backup {
    MemoryDisk::Image image;
    Promises promises;
  };
  static const DeskCaller& therapist();
  void open();
  void stop(const std::string& why, bool power_lost);
  void makeClinic();
  void deskAction();
  void signProgramme(const v1::Person& person);
  void addPhoto(const v1::Person& person, v1::Entry& entry);
  void issueHold(const v1::Person& person);
  void liftHold(const v1::Person& person);
  void sendMessage(const v1::Person& person);
  void changePerson(const v1::Person& person);
  void sendUnknown(const v1::Person& person);
  void revokeOne(const v1::Person& person);
  void hubFault();
  void restartUnderAFailingDisk();
  void cut(const std::string& why, bool power_lost);
  void backUp();
  void changeCertificate();
  void noteSent();
  std::string newId();

  Stage* m_stage;
  Ledger* m_ledger;
  std::vector<v1::Person> m_people;
  MachineClock m_clock;
  test::SampleRandom m_random;
  MemoryDisk m_disk;
  std::unique_ptr<HubStore> m_store;
  std::unique_ptr<Hub> m_hub;
  std::uint64_t m_epoch = 0;
  bool m_coming_back = false;
  bool m_signs_when_up = false;  // the therapist writes anew what the backup lost, before any phone is heard
  std::deque<Backup> m_backups;
  std::vector<std::weak_ptr<HubWatcher>> m_watchers;
};

}  // namespace newel::sim
