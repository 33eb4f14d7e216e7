// What the hub holds, and what must be so.
#include <map>
#include <set>

#include "sync/common/content_hash.h"
#include "tests/sim/sim_hub.h"

namespace newel::sim {

// What was signed in the moment that the machine stopped, or again under another number, is found here.
void SimHub::noteSent() {
  const std::uint64_t faults = m_disk.faults();
  const absl::Status read = m_store->read([&](HubTransaction& transaction) {
    for (const auto& person : m_people) {
      for (const auto& row : transaction.programmes(person.id())) m_ledger->sent.insert(row.id);
      for (const auto& row : transaction.holdOrders(person.id())) m_ledger->sent.insert(row.id);
    }
    return absl::OkStatus();
  });
  if (!read.ok() && m_disk.faults() == faults) m_stage->violated("hub: cannot be read: " + read.ToString());
}

void SimHub::checkKept() {
  if (!isUp()) return;
  const std::uint64_t faults = m_disk.faults();
  const absl::Status read = m_store->read([&](HubTransaction& transaction) {
    for (const auto& [id, revisions] : m_ledger->hub.practices) {
      for (const auto& [revision, hash] : revisions) {
        if (transaction.practicesKept({{id, revision}}).front().sha256 != hash) {
          m_stage->violated("hub: practice " + id + " revision " + std::to_string(revision) +
                            " was acknowledged and is not there");
        }
      }
    }
    for (const auto& [id, revisions] : m_ledger->hub.blocks) {
      for (const auto& [revision, hash] : revisions) {
        if (transaction.recordKept(v1::RECORD_KIND_WEAR_BLOCK, {id, revision}).sha256 != hash)
          m_stage->violated("hub: wear block " + id + " was acknowledged and is not there");
      }
    }
    for (const auto& id : m_ledger->hub.messages) {
      if (!transaction.message(id).has_value()) {
        m_stage->violated("hub: message " + id + " was acknowledged and is not there");
      }
    }
    return absl::OkStatus();
  });
  if (!read.ok() && m_disk.faults() == faults) m_stage->violated("hub: cannot be read: " + read.ToString());
}

void SimHub::checkRecords() {
  noteSent();
  const absl::Status read = m_store->read([&](HubTransaction& transaction) {
    for (const auto& person : m_people) {
      std::set<std::string> seen;
      for (const auto& envelope : transaction.practicesAfter(person.id(), 0, 100000)) {
        if (!seen.insert(envelope.id()).second)
          m_stage->violated("hub: practice " + envelope.id() + " twice");
        if (m_ledger->person[envelope.id()] != person.id()) {
          m_stage->violated("hub: practice " + envelope.id() + " is under another person");
        }
        const auto& tried = m_ledger->tried.practices[envelope.id()];
        const auto made = tried.find(envelope.revision());
        if (made == tried.end() || made->second != envelope.sha256()) {
          m_stage->violated("hub: practice " + envelope.id() + " is not what was made");
        }
      }
      for (const auto& envelope :
           transaction.recordsAfter(person.id(), v1::RECORD_KIND_WEAR_BLOCK, 0, 100000)) {
        if (!seen.insert(envelope.id()).second)
          m_stage->violated("hub: wear block " + envelope.id() + " twice");
        const auto& tried = m_ledger->tried.blocks[envelope.id()];
        const auto made = tried.find(envelope.revision());
        if (made == tried.end() || made->second != envelope.sha256() ||
            m_ledger->person[envelope.id()] != person.id())
          m_stage->violated("hub: wear block " + envelope.id() + " is not what was told");
      }
      std::map<std::string, std::set<int>> states;
      for (const auto& row : transaction.receipts(person.id())) states[row.ref_id].insert(row.state);
      for (const auto& [ref_id, reached] : states) {
        if (!m_ledger->sent.contains(ref_id))
          m_stage->violated("hub: " + ref_id + " arrived and was never sent");
        // Of what went with a backup only a part may be told before the phone itself is put back to an old
        // one.
        const bool here = transaction.programmeById(ref_id) || transaction.holdOrderById(ref_id) ||
                          transaction.message(ref_id);
        if (here && reached.contains(v1::RECEIPT_STATE_SEEN) &&
            !reached.contains(v1::RECEIPT_STATE_ARRIVED)) {
          m_stage->violated("hub: " + ref_id + " of " + person.id() + " was seen and has not arrived");
        }
      }
      const auto facts = transaction.caseFacts(person.id());
      if (facts.programme_seen && !facts.programme_arrived) m_stage->violated("hub: seen without arrived");
    }
    return absl::OkStatus();
  });
  if (!read.ok()) m_stage->violated("hub: cannot be read: " + read.ToString());
}

std::vector<v1::HoldOrder> SimHub::holds(const std::string& person_id) {
  const auto reply = m_hub->prescriptions().holds(person_id);
  if (!reply.ok()) return {};
  return {reply->orders().begin(), reply->orders().end()};
}

std::vector<v1::Receipt> SimHub::receipts(const std::string& person_id) {
  const auto reply = m_hub->files().receipts(person_id);
  if (!reply.ok()) return {};
  return {reply->receipts().begin(), reply->receipts().end()};
}

std::string SimHub::latestProgrammeId(const std::string& person_id) {
  std::string id;
  m_store
      ->read([&](HubTransaction& transaction) {
        if (const auto row = transaction.latestProgramme(person_id)) id = row->id;
        return absl::OkStatus();
      })
      .IgnoreError();
  return id;
}

std::uint32_t SimHub::latestProgrammeNumber(const std::string& person_id) {
  std::uint32_t number = 0;
  m_store
      ->read([&](HubTransaction& transaction) {
        if (const auto row = transaction.latestProgramme(person_id))
          number = static_cast<std::uint32_t>(row->number);
        return absl::OkStatus();
      })
      .IgnoreError();
  return number;
}

std::set<std::string> SimHub::messageIds(const std::string& person_id) {
  std::set<std::string> ids;
  m_store
      ->read([&](HubTransaction& transaction) {
        for (const auto& row : transaction.messages(person_id)) ids.insert(row.id);
        return absl::OkStatus();
      })
      .IgnoreError();
  return ids;
}

bool SimHub::isRevoked(const std::string& token) {
  bool revoked = false;
  m_store
      ->read([&](HubTransaction& transaction) {
        const auto device = transaction.deviceByToken(sha256(token));
        revoked = device.has_value() && device->revoked;
        return absl::OkStatus();
      })
      .IgnoreError();
  return revoked;
}

}  // namespace newel::sim
