// What the person does with the phone.
#include <algorithm>

#include "core/records/record_text.h"
#include "core/time/local_day.h"
#include "sync/common/content_hash.h"
#include "tests/sim/sim_phone.h"

namespace newel::sim {

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
  } else if (which <= 88) {
    wear();
  }
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
  const absl::Status kept = m_engine->appendJournal({line});
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
  const absl::Status kept = m_engine->appendJournal({line});
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

// Puts on, takes off, looks: each a revision of the block that was put on last.
void SimPhone::wear() {
  v1::WearBlock block;
  const std::vector<v1::WearBlock> told = m_engine->wearBlocks();
  if (m_disk.isDead()) return;
  const bool goes_on =
      !told.empty() && !told.back().has_check() && m_ledger->tried.blocks.contains(told.back().id());
  if (goes_on) {
    block = told.back();
    if (block.has_taken_off_at()) {
      block.mutable_check()->add_signs(v1::SKIN_SIGN_CLEAR);
    } else {
      *block.mutable_taken_off_at() = block.put_on_at();
    }
    block.set_revision(m_ledger->tried.blocks[block.id()].rbegin()->first + 1);
  } else {
    block.set_id(m_engine->newId());
    block.set_revision(1);
    block.set_person_id(m_person);
    block.set_local_day("2026-11-25");
    block.set_zone(kZones[static_cast<std::size_t>(m_zone)]);
    *block.mutable_put_on_at() = toTimestamp(m_clock.wall());
    block.set_origin(v1::ORIGIN_TIMED_HERE);
    block.set_note(canaryOf(m_person));
  }
  m_ledger->tried.blocks[block.id()][block.revision()] = sha256(toBytes(block));
  m_ledger->person[block.id()] = m_person;
  const std::uint64_t faults = m_disk.faults();
  const absl::Status kept = m_engine->keepWearBlock(block);
  say("wears " + block.id() + " revision " + std::to_string(block.revision()) + ": " + kept.ToString());
  if (m_disk.isDead()) return;
  if (kept.ok()) m_memory.kept.blocks[block.id()][block.revision()] = sha256(toBytes(block));
  if (!kept.ok() && m_disk.faults() == faults) violated("wearing time cannot be told: " + kept.ToString());
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

}  // namespace newel::sim
