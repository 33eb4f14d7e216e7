// One phone and the person who holds it: the real engine over its real store on a simulated disk. The person
// opens the app a few times a day, practises, writes, reads; the phone dies, fills up, is put back to an old
// backup, is given away.
#pragma once

#include <array>
#include <deque>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>

#include "sync/home/home_engine.h"
#include "tests/sim/ledger.h"
#include "tests/sim/memory_disk.h"
#include "tests/sim/sim_hub.h"
#include "tests/sim/sim_network.h"
#include "tests/sim/stage.h"

namespace newel::sim {

class SimPhone : public Caller, public HomeEngine::Listener {
 public:
  // `number` from 0; whose it is first.
  SimPhone(Stage* stage, SimHub* hub, Ledger* ledger, int number, const std::string& owner);
  ~SimPhone() override;

  // When the person takes it up today, and what goes wrong.
  void planDay();
  // The faults have stopped: opened, paired for its owner, in contact until nothing is left to send.
  void settle();
  // What must hold at the end.
  void checkSettled();

  const std::string& name() const override { return m_name; }
  const std::string& personId() const override { return m_person; }
  bool isReachable() const override { return m_awake && m_signal && m_engine != nullptr && !m_disk.isDead(); }
  void whileWaiting() override;
  void wasAnswered(const v1::OfferRequest& request, const v1::OfferReply& reply) override;
  void beforeNudge(const v1::Nudge& nudge) override;
  void afterNudge(const v1::Nudge& nudge) override;

  void stateChanged() override {}
  void programmeChanged() override {}
  void holdOrderArrived(const v1::HoldOrder& order) override;
  void messageArrived(const v1::Message&) override {}

 private:
  static constexpr std::array<const char*, 4> kZones = {"Europe/Berlin", "Asia/Tokyo", "Pacific/Apia",
                                                        "America/New_York"};
  struct Told {
    v1::HoldOrder order;
    bool durable = false;
  };
  // All that this phone has promised, and what it will be asked for.
  struct Memory {
    std::string person;
    Promises kept;
    std::map<std::string, Told> holds;  // by id
    std::uint32_t programme_number = 0;
    std::string journal_id;  // of the practice under way; empty: none
    std::uint32_t journal_lines = 0;
  };
  struct Backup {
    MemoryDisk::Image image;
    Memory memory;
  };

  void wakeUp(absl::Duration until);
  void tick(absl::Duration until);
  void sleep();
  void drawFault();
  void fillDisk();
  bool openEngine();
  void closeEngine();
  void putAwayWhenDead();
  void takeTurn();
  void act();
  void practise();
  void beginPractice();
  void nextBeat();
  void closePractice(v1::PracticeEnd end);
  void revise();
  void keep(const v1::Practice& practice, const absl::Status& status);
  void write();
  void wear();
  void look();
  void seeOne(v1::ReceiptOf of, const std::string& ref_id, std::uint64_t number);
  void pairWhenNeeded();
  bool pairFor(const std::string& person_id);
  void wipe();
  void forget();
  void restoreOld();
  void noteOwner();
  void checkOpened();
  void checkJournal();
  void checkHolds(const char* when);
  void checkProgramme();
  void checkPhotos();
  bool awaitsPhoto();
  void checkNothingLeftOf(const std::string& person_id);
  std::vector<v1::HoldOrder> heldBy() const;
  bool inForce(const std::string& order_id) const;
  v1::Practice practiceRecord(const std::string& id, std::uint32_t revision);
  void noteTried(const v1::Practice& practice);
  bool needsPairing(const HomeState& state) const;
  void say(const std::string& what) { m_stage->say(m_name, what); }
  void violated(const std::string& what) { m_stage->violated(m_name + ": " + what); }

  Stage* m_stage;
  SimHub* m_hub;
  Ledger* m_ledger;
  const std::string m_name;
  const std::string m_owner;
  std::string m_person;  // whose records are on it; empty: nobody's
  MachineClock m_clock;
  test::SampleRandom m_random;
  MemoryDisk m_disk;
  SimNetwork m_network;
  std::unique_ptr<HomeEngine> m_engine;
  bool m_awake = false;
  bool m_signal = true;
  bool m_damaged = false;
  bool m_new_program = false;
  bool m_in_call = false;
  int m_zone = 0;
  Memory m_memory;
  int m_beats = 0;
  bool m_in_nudge = false;
  std::uint64_t m_faults_before = 0;  // of the disk, before a nudge
  int m_gone_in_turn = 0;
  std::deque<Backup> m_backups;
};

}  // namespace newel::sim
