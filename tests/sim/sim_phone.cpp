#include "tests/sim/sim_phone.h"

#include <algorithm>
#include <array>
#include <utility>

#include "core/records/record_text.h"
#include "core/time/local_day.h"
#include "sync/common/content_hash.h"
#include "sync/home/inbox.h"
#include "sync/home/seal.h"
#include "tests/core/people/sample_people.h"

namespace newel::sim {
namespace {

constexpr char kFolder[] = "/phone";
constexpr char kStore[] = "/phone/home.db";
constexpr int kMostTurns = 6;  // to an empty outbox, once the faults have stopped
constexpr std::size_t kBackupsKept = 2;

constexpr std::array<const char*, 4> kZones = {"Europe/Berlin", "Asia/Tokyo", "Pacific/Apia",
                                               "America/New_York"};

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

// ---- The day
// -------------------------------------------------------------------------------------------------

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

// ---- The engine
// ----------------------------------------------------------------------------------------------

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

// ---- What the person does
// ------------------------------------------------------------------------------------

void SimPhone::act() {
  if (m_person.empty()) return;
  const std::uint32_t which = m_stage->random.between(1, 100);
  if (which <= 55) {
    practise();
  } else if (which <= 62) {
    write();
  } else if (which <= 75) {
    look();
  } else if (which <= 80) {
    revise();
  }
}

// What has arrived and nobody has tried to lift: in force whatever happens.
std::vector<v1::HoldOrder> SimPhone::heldBy() const {
  std::vector<v1::HoldOrder> orders;
  for (const auto& [id, told] : m_memory.holds) {
    if (told.order.lifts_id().empty() && !m_ledger->lifted.contains(id)) orders.push_back(told.order);
  }
  return orders;
}

bool SimPhone::inForce(const std::string& order_id) const {
  for (const auto& order : m_engine->activeHolds()) {
    if (order.id() == order_id) return true;
  }
  return m_disk.isDead();
}

void SimPhone::practise() {
  if (m_memory.journal_id.empty()) {
    beginPractice();
  } else if (m_beats > 0) {
    nextBeat();
  } else {
    closePractice(m_engine->activeHolds().empty() ? v1::PRACTICE_END_FINISHED : v1::PRACTICE_END_HELD);
  }
}

v1::Practice SimPhone::practiceRecord(const std::string& id, std::uint32_t revision) {
  v1::Practice practice;
  practice.set_id(id);
  practice.set_revision(revision);
  practice.set_person_id(m_person);
  practice.set_programme_number(std::max(1U, m_memory.programme_number));
  practice.set_zone(kZones[static_cast<std::size_t>(m_zone)]);
  practice.set_local_day("2026-11-25");
  *practice.mutable_started_at() = toTimestamp(m_clock.wall());
  *practice.mutable_ended_at() = toTimestamp(m_clock.wall());
  practice.set_elapsed_ms(1000);
  practice.set_end(v1::PRACTICE_END_FINISHED);
  practice.set_origin(v1::ORIGIN_TIMED_HERE);
  practice.set_app_version(m_new_program ? "sim 2" : "sim 1");
  practice.set_note(canaryOf(m_person));
  if (m_new_program) {
    // A field that only the newer program has must come through whole.
    v1::Practice::GetReflection()->MutableUnknownFields(&practice)->AddLengthDelimited(4242, "newer");
  }
  return practice;
}

void SimPhone::beginPractice() {
  if (!heldBy().empty() || !m_engine->activeHolds().empty()) return;
  const std::string id = m_engine->newId();
  v1::JournalLine line;
  line.set_practice_id(id);
  line.set_sequence(1);
  line.set_kind(v1::JOURNAL_KIND_PRACTICE_BEGUN);
  *line.mutable_at() = toTimestamp(m_clock.wall());
  *line.mutable_header() = practiceRecord(id, 1);
  const absl::Status kept = m_engine->appendJournal(line);
  if (m_disk.isDead() || !kept.ok()) return;
  m_memory.journal_id = id;
  m_memory.journal_lines = 1;
  m_beats = static_cast<int>(m_stage->random.between(1, 4));
}

// The engine is asked before each beat, as the practice screen does; what must not be is judged by what came
// in.
void SimPhone::nextBeat() {
  if (!m_engine->activeHolds().empty()) {
    m_beats = 0;
    return;
  }
  if (!heldBy().empty()) violated("a beat begins after a hold order has arrived");
  v1::JournalLine line;
  line.set_practice_id(m_memory.journal_id);
  line.set_sequence(m_memory.journal_lines + 1);
  line.set_kind(v1::JOURNAL_KIND_BEAT_BEGUN);
  *line.mutable_at() = toTimestamp(m_clock.wall());
  line.set_beat(m_memory.journal_lines);
  const std::uint64_t faults = m_disk.faults();
  const absl::Status kept = m_engine->appendJournal(line);
  if (m_disk.isDead()) return;
  if (!kept.ok() && m_disk.faults() == faults) violated("a line cannot be written: " + kept.ToString());
  if (!kept.ok()) return;
  ++m_memory.journal_lines;
  --m_beats;
}

void SimPhone::noteTried(const v1::Practice& practice) {
  m_ledger->tried.practices[practice.id()][practice.revision()] = sha256(toBytes(practice));
  m_ledger->person[practice.id()] = m_person;
}

void SimPhone::keep(const v1::Practice& practice, const absl::Status& status) {
  if (!status.ok() || m_disk.isDead()) return;
  m_memory.kept.practices[practice.id()][practice.revision()] = sha256(toBytes(practice));
}

void SimPhone::closePractice(v1::PracticeEnd end) {
  v1::Practice practice = practiceRecord(m_memory.journal_id, 1);
  practice.set_end(end);
  const bool tried_before = m_ledger->tried.practices.contains(practice.id());
  if (tried_before) {
    // Said again with the same words, as a program does whose first try met an error.
    practice.set_revision(m_ledger->tried.practices[practice.id()].rbegin()->first + 1);
  }
  noteTried(practice);
  const std::uint64_t faults = m_disk.faults();
  const absl::Status closed = m_engine->closePractice(practice);
  say("closes " + practice.id() + " revision " + std::to_string(practice.revision()) + ": " +
      closed.ToString());
  keep(practice, closed);
  if (m_disk.isDead()) return;
  if (!closed.ok() && m_disk.faults() == faults)
    violated("a practice cannot be closed: " + closed.ToString());
  if (!closed.ok()) return;
  m_memory.journal_id.clear();
  m_memory.journal_lines = 0;
}

void SimPhone::revise() {
  if (m_memory.kept.practices.empty()) return;
  const auto last = std::prev(m_memory.kept.practices.end());
  // A revision has one content for good: one that was tried on a store that is gone is not used again.
  const std::uint32_t next = m_ledger->tried.practices[last->first].rbegin()->first + 1;
  const v1::Practice practice = practiceRecord(last->first, next);
  noteTried(practice);
  const absl::Status closed = m_engine->closePractice(practice);
  say("corrects " + practice.id() + " to revision " + std::to_string(next) + ": " + closed.ToString());
  keep(practice, closed);
}

void SimPhone::write() {
  const std::string text = canaryOf(m_person) + " words " + std::to_string(m_stage->random.next());
  const std::uint64_t faults = m_disk.faults();
  const absl::Status written = m_engine->writeMessage(text);
  if (m_disk.isDead()) return;
  if (!written.ok() && m_disk.faults() == faults) violated("words cannot be written: " + written.ToString());
  for (const auto& message : m_engine->messages()) {
    if (message.text() != text) continue;
    m_ledger->person[message.id()] = m_person;
    m_ledger->tried.messages.insert(message.id());
    if (written.ok()) m_memory.kept.messages.insert(message.id());
  }
}

void SimPhone::look() {
  for (const auto& order : m_engine->activeHolds())
    seeOne(v1::RECEIPT_OF_HOLD_ORDER, order.id(), order.number());
  if (const auto programme = m_engine->programme()) {
    seeOne(v1::RECEIPT_OF_PROGRAMME, programme->id(), programme->number());
  }
  for (const auto& id : m_engine->unseenUrgentMessageIds()) seeOne(v1::RECEIPT_OF_MESSAGE, id, 0);
}

void SimPhone::seeOne(v1::ReceiptOf of, const std::string& ref_id, std::uint64_t number) {
  if (m_disk.isDead()) return;
  const std::uint64_t faults = m_disk.faults();
  const absl::Status seen = m_engine->markSeen(of, ref_id, number);
  // Not written yet, for lack of room: it has not arrived by the clinic's measure.
  if (!seen.ok() && m_disk.faults() == faults && !absl::IsNotFound(seen))
    violated("cannot be seen: " + seen.ToString());
}

// ---- Pairing
// -------------------------------------------------------------------------------------------------

bool SimPhone::needsPairing(const HomeState& state) const {
  // What "sync.hub-refused" means here is another certificate: the clinic gives a new picture code.
  return !state.paired || state.revoked || state.last_problem == "sync.hub-refused";
}

void SimPhone::pairWhenNeeded() {
  if (!m_engine || m_disk.isDead() || !isReachable()) return;
  const HomeState state = m_engine->state();
  if (m_disk.isDead() || !needsPairing(state)) return;
  if (!m_stage->chance(400)) return;
  std::string who = m_owner;
  // Given to somebody else, now and then.
  if (m_stage->fault(60)) {
    const auto& people = m_hub->people();
    who = people[m_stage->random.between(0, static_cast<std::uint32_t>(people.size()) - 1)].id();
  }
  pairFor(who);
}

bool SimPhone::pairFor(const std::string& person_id) {
  const auto text = m_hub->invite(person_id);
  if (!text.ok()) return false;
  const auto ticket = parseTicket(*text);
  const std::string former = m_person;
  const absl::Status paired = m_engine->pair(*ticket);
  say("pairs for " + person_id + ": " + paired.ToString());
  if (!paired.ok()) noteOwner();
  if (m_disk.isDead() || !paired.ok()) return false;
  if (former != person_id) {
    forget();
    m_person = m_memory.person = person_id;
    if (!former.empty()) checkNothingLeftOf(former);
  }
  return true;
}

void SimPhone::wipe() {
  const std::string former = m_person;
  const absl::Status wiped = m_engine->wipe();
  say("wiped: " + wiped.ToString());
  if (!wiped.ok()) noteOwner();
  if (m_disk.isDead() || !wiped.ok()) return;
  forget();
  if (!former.empty()) checkNothingLeftOf(former);
}

void SimPhone::checkNothingLeftOf(const std::string& person_id) {
  m_backups.clear();
  if (!m_engine->practices().empty() || !m_engine->messages().empty() || m_engine->programme().has_value()) {
    violated("records of the former person are still here");
  }
  if (m_disk.contains(canaryOf(person_id))) {
    violated("bytes of the former person are still on the disk");
  }
}

// ---- Checks
// --------------------------------------------------------------------------------------------------

// A pairing or a wipe that met a fault was done, or was not: the store says which.
void SimPhone::noteOwner() {
  const auto person = m_engine->person();
  const std::string now = person.has_value() ? person->id() : "";
  if (m_disk.isDead() || now == m_person) return;
  say("belongs to " + (now.empty() ? "nobody" : now) + " now");
  forget();
  m_person = m_memory.person = now;
  m_backups.clear();
}

void SimPhone::checkOpened() {
  noteOwner();
  if (m_disk.isDead()) return;
  std::map<std::string, std::uint32_t> last;
  for (const auto& practice : m_engine->practices()) last[practice.id()] = practice.revision();
  for (const auto& [id, revisions] : m_memory.kept.practices) {
    if (last[id] < revisions.rbegin()->first) {
      violated("practice " + id + " revision " + std::to_string(revisions.rbegin()->first) +
               " was kept and is not there");
    }
  }
  std::set<std::string> words;
  for (const auto& message : m_engine->messages()) words.insert(message.id());
  for (const auto& id : m_memory.kept.messages) {
    if (!words.contains(id)) violated("message " + id + " was kept and is not there");
  }
  checkJournal();
  // What could not be written died with the program; it comes again.
  std::erase_if(m_memory.holds, [](const auto& entry) { return !entry.second.durable; });
  checkHolds("after opening");
  checkProgramme();
}

void SimPhone::checkJournal() {
  const auto unfinished = m_engine->unfinished();
  if (m_disk.isDead()) return;
  const std::string id = unfinished.has_value() ? unfinished->practice_id : "";
  const std::uint32_t lines =
      unfinished.has_value() ? static_cast<std::uint32_t>(unfinished->lines.size()) : 0;
  if (!m_memory.journal_id.empty() && id == m_memory.journal_id && lines < m_memory.journal_lines) {
    violated("lines of the journal are gone");
  }
  // Gone altogether: only when its close was written though an error was said.
  if (!m_memory.journal_id.empty() && id.empty() &&
      !m_ledger->tried.practices.contains(m_memory.journal_id)) {
    violated("a journal is gone");
  }
  m_memory.journal_id = id;
  m_memory.journal_lines = lines;
  m_beats = id.empty() ? 0 : 1;
}

void SimPhone::checkHolds(const char* when) {
  std::set<std::string> active;
  for (const auto& order : m_engine->activeHolds()) active.insert(order.id());
  if (m_disk.isDead()) return;
  for (const auto& order : heldBy()) {
    if (!active.contains(order.id())) violated("hold order " + order.id() + " is not in force " + when);
  }
}

void SimPhone::checkProgramme() {
  const auto programme = m_engine->programme();
  if (m_disk.isDead()) return;
  const std::uint32_t number = programme.has_value() ? programme->number() : 0;
  if (number < m_memory.programme_number) {
    violated("programme " + std::to_string(m_memory.programme_number) + " went back to " +
             std::to_string(number));
  }
  if (programme.has_value() && programme->person_id() != m_person) violated("another person's programme");
  m_memory.programme_number = number;
}

// ---- The end
// -------------------------------------------------------------------------------------------------

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
    if (!needsPairing(state) && state.queued == 0 && state.last_problem != "sync.no-network") return;
  }
  const HomeState state = m_engine->state();
  violated("does not come to rest: " + std::to_string(state.queued) + " queued, " + state.last_problem);
}

void SimPhone::checkSettled() {
  const HomeState state = m_engine->state();
  if (state.queued != 0) violated(std::to_string(state.queued) + " still queued");
  if (state.set_aside != 0) violated(std::to_string(state.set_aside) + " refused by the hub");
  for (const auto& [id, revisions] : m_memory.kept.practices) {
    const auto at_hub = m_ledger->hub.practices.find(id);
    if (at_hub == m_ledger->hub.practices.end() ||
        at_hub->second.rbegin()->first < revisions.rbegin()->first) {
      violated("practice " + id + " is not at the hub with its last revision");
    }
  }
  for (const auto& id : m_memory.kept.messages) {
    if (!m_ledger->hub.messages.contains(id)) violated("message " + id + " is not at the hub");
  }
  std::set<std::string> programmes;
  for (const auto& programme : m_engine->programmes()) programmes.insert(programme.id());
  const std::string latest = m_hub->latestProgrammeId(m_person);
  // Known and not mended: a hub that went back to a backup may sign under a number that this phone has,
  // before the phone has said so. The phone keeps what it has, the desk shows "not arrived", and the next
  // number arrives.
  const bool has_that_number = m_memory.programme_number >= m_hub->latestProgrammeNumber(m_person);
  if (!latest.empty() && !programmes.contains(latest) && !has_that_number) {
    violated("the latest programme never arrived: " + latest);
  }
  std::set<std::string> messages;
  for (const auto& message : m_engine->messages()) messages.insert(message.id());
  for (const auto& id : m_hub->messageIds(m_person)) {
    if (!messages.contains(id)) violated("message " + id + " never arrived");
  }
  std::set<std::string> active;
  for (const auto& order : m_engine->activeHolds()) active.insert(order.id());
  const auto orders = m_hub->holds(m_person);
  for (const auto& order : activeAmong(orders)) {
    // A lift that went with the hub's backup has reached the phone, and stands there.
    if (m_ledger->lifted.contains(order.id())) continue;
    if (!active.contains(order.id())) violated("hold order " + order.id() + " is not in force at the end");
  }
  for (const auto& order : orders) {
    if (!order.lifts_id().empty() && active.contains(order.lifts_id()))
      violated("a lifted hold is still in force");
  }
  std::set<std::string> arrived;
  for (const auto& receipt : m_hub->receipts(m_person)) arrived.insert(receipt.ref_id());
  for (const auto& id : programmes) {
    if (!arrived.contains(id)) violated("programme " + id + " is here and the desk does not know");
  }
}

}  // namespace newel::sim
