// What must be so on a phone, after each step and at the end.
#include <algorithm>
#include <set>

#include "core/records/media_type.h"
#include "sync/common/content_hash.h"
#include "sync/home/inbox.h"
#include "tests/sim/sim_phone.h"

namespace newel::sim {

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

void SimPhone::checkNothingLeftOf(const std::string& person_id) {
  m_backups.clear();
  if (!m_engine->practices().empty() || !m_engine->messages().empty() || m_engine->programme().has_value()) {
    violated("records of the former person are still here");
  }
  if (m_disk.contains(canaryOf(person_id))) {
    violated("bytes of the former person are still on the disk");
  }
}

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
  std::map<std::string, std::uint32_t> blocks;
  for (const auto& block : m_engine->wearBlocks()) blocks[block.id()] = block.revision();
  for (const auto& [id, revisions] : m_memory.kept.blocks) {
    if (blocks[id] < revisions.rbegin()->first) violated("wear block " + id + " was kept and is not there");
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

// What is shown is what the therapist signed, to the last bit.
void SimPhone::checkPhotos() {
  const auto programme = m_engine->programme();
  if (!programme.has_value()) return;
  for (const v1::MediaRef* ref : mediaNamedBy(*programme)) {
    const auto photo = m_engine->media(*ref);
    if (photo.has_value() && !m_disk.isDead() && sha256(*photo) != ref->sha256())
      violated("a photo is shown that nobody signed");
  }
}

// Of the newest programme, and the hub would give it: one that went with the hub's backup stays away.
bool SimPhone::awaitsPhoto() {
  const auto programme = m_engine->programme();
  const auto named = programme.has_value() ? mediaNamedBy(*programme) : std::vector<const v1::MediaRef*>();
  return std::any_of(named.begin(), named.end(), [&](const v1::MediaRef* ref) {
    return !m_engine->hasMedia(*ref) && m_hub->hasMedia(m_person, ref->sha256());
  });
}

void SimPhone::checkSettled() {
  checkPhotos();
  if (awaitsPhoto()) violated("a photo of the newest programme never arrived");
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
  for (const auto& [id, revisions] : m_memory.kept.blocks) {
    const auto at_hub = m_ledger->hub.blocks.find(id);
    if (at_hub == m_ledger->hub.blocks.end() || at_hub->second.rbegin()->first < revisions.rbegin()->first)
      violated("wear block " + id + " is not at the hub with its last revision");
  }
  for (const auto& id : m_memory.kept.messages) {
    if (!m_ledger->hub.messages.contains(id)) violated("message " + id + " is not at the hub");
  }
  std::set<std::string> programmes;
  for (const auto& programme : m_engine->programmes()) programmes.insert(programme.id());
  const std::string latest = m_hub->latestProgrammeId(m_person);
  if (!latest.empty() && !programmes.contains(latest)) {
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
