#include "tests/sim/sim_phone.h"

#include <utility>

#include "sync/home/seal.h"

namespace newel::sim {
namespace {

constexpr char kFolder[] = "/phone";
constexpr char kStore[] = "/phone/home.db";
constexpr int kMostTurns = 6;  // to an empty outbox, once the faults have stopped
constexpr std::size_t kBackupsKept = 2;
constexpr std::uint32_t kPhotoPart = 300;

}  // namespace

SimPhone::SimPhone(Stage* stage, SimHub* hub, Ledger* ledger, int number, const std::string& owner)
    : m_stage(stage),
      m_hub(hub),
      m_ledger(ledger),
      m_name("phone" + std::to_string(number)),
      m_owner(owner),
      m_clock(&stage->clock),
      m_random(stage->seedFor(10 + static_cast<std::uint64_t>(number))),
      m_disk("sim-" + m_name, stage->seedFor(100 + static_cast<std::uint64_t>(number))),
      m_network(stage, hub, ledger, this),
      m_new_program(stage->chance(300)) {}

SimPhone::~SimPhone() { m_engine.reset(); }

void SimPhone::planDay() {
  const std::uint32_t times = m_stage->random.between(0, 3);
  for (std::uint32_t i = 0; i < times; ++i) {
    m_stage->in(m_stage->seconds(0, 86399), [this] {
      if (!m_awake && !m_stage->calm) wakeUp(m_stage->clock.elapsed() + m_stage->seconds(20, 240));
    });
  }
}

void SimPhone::wakeUp(absl::Duration until) {
  m_awake = true;
  m_signal = !m_stage->fault(250);
  say(m_signal ? "taken up" : "taken up, no signal");
  drawFault();
  tick(until);
}

void SimPhone::tick(absl::Duration until) {
  if (!m_awake) return;
  if (!m_engine && !openEngine()) {
    putAwayWhenDead();
    m_awake = false;
    return;
  }
  pairWhenNeeded();
  if (m_engine && !m_disk.isDead() && m_engine->untilTurn() <= absl::ZeroDuration()) takeTurn();
  if (m_engine && !m_disk.isDead()) act();
  if (m_disk.isDead()) {
    putAwayWhenDead();
    return;
  }
  if (m_stage->fault(40)) m_signal = !m_signal;
  if (m_stage->clock.elapsed() >= until || m_stage->calm) {
    sleep();
    return;
  }
  m_stage->in(m_stage->seconds(3, 60), [this, until] { tick(until); });
}

void SimPhone::sleep() {
  m_awake = false;
  if (!m_engine) return;
  m_network.breakOff(absl::UnavailableError("the phone sleeps"));
  if (m_stage->chance(500)) {
    say("program closed");
    closeEngine();
    if (m_backups.size() < kBackupsKept && m_stage->chance(150))
      m_backups.push_back({m_disk.image(), m_memory});
  }
  m_disk.heal();
}

void SimPhone::putAwayWhenDead() {
  if (!m_disk.isDead()) return;
  m_awake = false;
  closeEngine();
  m_disk.heal();
}

void SimPhone::closeEngine() {
  m_engine.reset();
  // Closing writes too, and may be what it stops at.
  if (!m_disk.isDead()) return;
  const bool power_lost = m_stage->chance(600);
  say(power_lost ? "battery flat" : "program killed");
  m_disk.reboot(power_lost);
  if (power_lost) m_clock.reboot();
}

void SimPhone::drawFault() {
  if (m_stage->calm) return;
  const std::uint32_t which = m_stage->random.between(1, 1000);
  if (which <= 90) {
    m_disk.stopAfter(static_cast<int>(m_stage->random.between(0, 120)));
  } else if (which <= 140) {
    // From the start, or once the stream is open: then what must get through comes just when nothing can be
    // kept.
    m_stage->in(m_stage->chance(300) ? absl::ZeroDuration() : m_stage->seconds(5, 60),
                [this] { fillDisk(); });
  } else if (which <= 180) {
    m_disk.failFlushes(static_cast<int>(m_stage->random.between(1, 3)));
  } else if (which <= 200) {
    m_clock.setWrongBy(absl::Hours(24) * (static_cast<int>(m_stage->random.between(0, 14600)) - 7300));
    say("clock set to " + absl::FormatTime("%Y-%m-%d", m_clock.wall(), absl::UTCTimeZone()));
  } else if (which <= 220) {
    m_clock.setWrongBy(absl::ZeroDuration());
  } else if (which <= 250) {
    m_zone = (m_zone + 1) % static_cast<int>(kZones.size());
  } else if (which <= 256) {
    restoreOld();
  } else if (which <= 261) {
    closeEngine();
    m_damaged = m_disk.damagePage(kStore);
    if (m_damaged) say("a page of its store is damaged");
  } else if (which <= 266) {
    if (m_engine) wipe();
  } else if (which <= 275) {
    m_new_program = !m_new_program;  // an update, or the way back
    closeEngine();
  }
}

void SimPhone::fillDisk() {
  if (!m_awake || m_stage->calm) return;
  say("disk full");
  m_disk.setFull(true);
  m_stage->in(m_stage->seconds(1, 15), [this] {
    if (m_awake && m_stage->chance(700)) m_hub->holdNow(m_person);
  });
}

void SimPhone::restoreOld() {
  if (m_backups.empty()) return;
  closeEngine();
  say("put back to an old backup");
  m_disk.restore(m_backups.front().image);
  m_memory = m_backups.front().memory;
  m_person = m_memory.person;
  m_backups.pop_front();
}

bool SimPhone::openEngine() {
  HomeEngine::Options options;
  options.folder = kFolder;
  options.store_key = std::string(kStoreKeyBytes, 'k');
  options.clock = &m_clock;
  options.random = &m_random;
  options.app_version = m_new_program ? "sim 2" : "sim 1";
  options.device_name = m_name;
  options.network = &m_network;
  options.sqlite_vfs = m_disk.vfsName();
  options.media_part_bytes = kPhotoPart;
  const std::uint64_t faults = m_disk.faults();
  auto engine = HomeEngine::open(options);
  if (engine.ok() && !m_damaged) {
    m_engine = *std::move(engine);
    m_engine->setListener(this);
    if (m_disk.isDead()) return false;
    checkOpened();
    return true;
  }
  say("does not open: " + engine.status().ToString());
  if (m_damaged) {
    // Set aside when it is found, and when it is not: what a page of rubbish says is nobody's promise.
    m_disk.moveAside(kStore);
    m_damaged = false;
    forget();
  } else if (m_disk.faults() == faults) {
    violated("its store does not open: " + engine.status().ToString());
  }
  return false;
}

// Nothing is on it any more, and nothing is asked of it.
void SimPhone::forget() {
  m_memory = Memory();
  m_person.clear();
}

void SimPhone::takeTurn() {
  const HomeState before = m_engine->state();
  m_gone_in_turn = 0;
  m_in_call = true;
  m_engine->takeTurn();
  m_in_call = false;
  if (m_disk.isDead()) return;
  const HomeState after = m_engine->state();
  if (after.revoked && !before.revoked) {
    say("its access was ended, " + std::to_string(after.queued) + " queued");
    if (after.queued + after.set_aside + static_cast<std::uint64_t>(m_gone_in_turn) < before.queued) {
      violated("what was queued went with its access");
    }
  }
  checkProgramme();
  checkPhotos();
  checkHolds("after a round");
}

void SimPhone::wasAnswered(const v1::OfferRequest& /*request*/, const v1::OfferReply& reply) {
  for (const auto& outcome : reply.outcomes()) {
    if (outcome.outcome() != v1::OUTCOME_LATER) ++m_gone_in_turn;
    if (outcome.outcome() == v1::OUTCOME_REFUSED) say("refused: " + outcome.reason());
  }
}

// The stream, and a person who goes on while the phone waits for an answer.
void SimPhone::whileWaiting() {
  if (!m_engine || m_disk.isDead()) return;
  m_network.deliver();
  if (m_in_call && m_stage->fault(60)) act();
}

void SimPhone::beforeNudge(const v1::Nudge& nudge) {
  m_faults_before = m_disk.faults();
  m_in_nudge = true;
  if (nudge.kind_case() == v1::Nudge::kHoldOrder) say("a hold order comes in by the stream");
}

void SimPhone::afterNudge(const v1::Nudge& nudge) {
  m_in_nudge = false;
  if (nudge.kind_case() != v1::Nudge::kHoldOrder || m_disk.isDead() || !m_engine) return;
  v1::HoldOrder order;
  order.ParseFromString(nudge.hold_order().content());
  const bool counts = order.lifts_id().empty() && !m_ledger->lifted.contains(order.id());
  if (counts && order.person_id() == m_person && !inForce(order.id())) {
    violated("a hold order came in and is not in force: " + order.id());
  }
  checkHolds("after a nudge");
}

void SimPhone::holdOrderArrived(const v1::HoldOrder& order) {
  say("hold order " + std::to_string(order.number()) +
      (order.lifts_id().empty() ? " arrives" : " lifts another"));
  if (m_disk.isDead()) return;
  if (order.person_id() != m_person) violated("another person's hold order");
  Told& told = m_memory.holds[order.id()];
  told.order = order;
  // From Fetch it is told when it is kept; from the stream also when it could not be.
  told.durable = told.durable || !m_in_nudge || m_disk.faults() == m_faults_before;
  if (!m_memory.journal_id.empty() && order.lifts_id().empty()) m_beats = 0;
}

void SimPhone::settle() {
  m_disk.heal();
  putAwayWhenDead();
  m_disk.heal();
  m_awake = m_signal = true;
  if (!m_engine && !openEngine() && !openEngine()) {
    violated("does not open when all is well");
    return;
  }
  for (int turn = 0; turn < kMostTurns; ++turn) {
    const absl::Duration wait = m_engine->untilTurn();
    if (wait > absl::ZeroDuration()) m_stage->pass(wait);
    takeTurn();
    const HomeState now = m_engine->state();
    // Under another certificate only for whose it is.
    const std::string who = now.paired && !now.revoked ? m_person : m_owner;
    if (needsPairing(now) && !pairFor(who)) violated("cannot be paired when all is well");
    const HomeState state = m_engine->state();
    const bool quiet = state.queued == 0 && state.last_problem != "sync.no-network";
    if (!needsPairing(state) && quiet && !awaitsPhoto()) return;
  }
  const HomeState state = m_engine->state();
  violated("does not come to rest: " + std::to_string(state.queued) + " queued, " + state.last_problem);
}

}  // namespace newel::sim
