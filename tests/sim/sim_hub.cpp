#include "tests/sim/sim_hub.h"

#include <algorithm>
#include <utility>

#include "core/records/record_text.h"
#include "core/time/local_day.h"
#include "sync/common/content_hash.h"
#include "sync/common/pairing_ticket.h"
#include "sync/common/record_id.h"
#include "sync/hub/clinic_library.h"
#include "sync/hub/sqlite_hub_store.h"
#include "tests/core/people/sample_people.h"
#include "tests/sim/certificates.h"

namespace newel::sim {
namespace {

constexpr char kStore[] = "/hub.db";
constexpr std::size_t kBackupsKept = 4;

const DeskCaller& therapist() {
  static const DeskCaller kCaller = [] {
    DeskCaller caller;
    caller.therapist.set_id(test::idOf(2001));
    caller.therapist.set_user_name("t.sample");
    caller.therapist.set_display_name("Dr Sample (invented)");
    caller.therapist.set_role(v1::ROLE_LEAD);
    return caller;
  }();
  return kCaller;
}

v1::Programme draftFor(const v1::Person& person, const std::string& id) {
  const v1::Programme sample = test::programmeOf(person, {test::entryOf("sit-to-stand", person, 300)});
  v1::Programme draft;
  draft.set_id(id);
  draft.set_person_id(person.id());
  draft.set_effective_day(sample.effective_day());
  draft.set_end_day(sample.end_day());
  draft.set_zone(sample.zone());
  *draft.mutable_entries() = sample.entries();
  *draft.mutable_thresholds() = sample.thresholds();
  draft.set_advice(canaryOf(person.id()));
  return draft;
}

}  // namespace

SimHub::SimHub(Stage* stage, Ledger* ledger, std::vector<v1::Person> people)
    : m_stage(stage),
      m_ledger(ledger),
      m_people(std::move(people)),
      m_clock(&stage->clock),
      m_random(stage->seedFor(1)),
      m_disk("sim-hub", stage->seedFor(2)) {
  open();
}

SimHub::~SimHub() {
  m_hub.reset();
  m_store.reset();
}

std::string SimHub::newId() { return newRecordId(m_clock, m_random); }

void SimHub::makeClinic() {
  v1::ClinicCard card;
  card.set_name("Simulated clinic (invented)");
  card.set_phone("555 0101");
  card.set_emergency_number("112");
  const absl::Status made =
      initClinicWith(*m_store, card, {kCertificates[m_certificate], "no key"}, false, m_clock, m_random);
  if (!made.ok()) m_stage->violated("the clinic could not be made: " + made.ToString());
}

void SimHub::open() {
  m_coming_back = false;
  const bool first = m_epoch == 0;
  const std::uint64_t faults = m_disk.faults();
  auto store = openSqliteHubStore(kStore, m_disk.vfsName());
  absl::Status status = store.status();
  if (store.ok()) {
    m_store = *std::move(store);
    if (first) makeClinic();
    auto hub = Hub::open(m_store.get(), &m_clock, &m_random);
    status = hub.status();
    if (hub.ok()) m_hub = *std::move(hub);
  }
  if (!m_hub || m_disk.isDead()) {
    if (m_disk.faults() == faults) m_stage->violated("hub: does not open: " + status.ToString());
    stop("did not come up: " + std::string(status.message()), m_stage->chance(500));
    return;
  }
  ++m_epoch;
  m_hub->pairings().setPhoneAddress("hub.example", 7443);
  if (first) {
    for (const auto& person : m_people) {
      v1::PutPersonRequest request;
      *request.mutable_person() = person;
      request.mutable_identity()->set_person_id(person.id());
      request.mutable_identity()->set_given_name("Sample");
      request.mutable_identity()->set_family_name("Invented");
      if (!m_hub->files().put(therapist(), request).ok()) m_stage->violated("hub: no person could be put");
    }
  }
  m_stage->say("hub", "up, start " + std::to_string(m_epoch));
  checkKept();
  noteSent();
}

void SimHub::stop(const std::string& why, bool power_lost) {
  m_stage->say("hub", "down: " + why);
  m_hub.reset();
  m_store.reset();
  m_disk.reboot(power_lost);
  if (power_lost) m_clock.reboot();
  auto watchers = std::exchange(m_watchers, {});
  for (const auto& weak : watchers) {
    if (const auto watcher = weak.lock()) watcher->hubWentAway();
  }
  if (m_coming_back) return;
  m_coming_back = true;
  m_stage->in(m_stage->seconds(5, 4 * 3600), [this] {
    if (m_coming_back) open();
  });
}

void SimHub::afterwards() {
  if (m_hub && m_disk.isDead()) stop("its machine stopped", m_stage->chance(600));
}

void SimHub::settle() {
  m_disk.heal();
  if (m_hub && m_disk.isDead()) stop("its machine stopped", true);
  m_disk.heal();
  if (!m_hub) open();
}

void SimHub::planDay() {
  const std::uint32_t actions = m_stage->random.between(0, 3);
  for (std::uint32_t i = 0; i < actions; ++i) {
    m_stage->in(m_stage->seconds(0, 86399), [this] { deskAction(); });
  }
  m_stage->in(m_stage->seconds(0, 86399), [this] { hubFault(); });
  m_stage->in(m_stage->seconds(0, 86399), [this] { backUp(); });
  if (m_stage->fault(20)) m_stage->in(m_stage->seconds(0, 86399), [this] { goBack(); });
}

void SimHub::hubFault() {
  if (m_stage->calm || !isUp()) return;
  const std::uint32_t which = m_stage->random.between(1, 100);
  if (which <= 15) {
    const int writes = static_cast<int>(m_stage->random.between(0, 150));
    m_stage->say("hub", "will stop after " + std::to_string(writes) + " writes");
    m_disk.stopAfter(writes);
  } else if (which <= 22) {
    m_stage->say("hub", "disk full");
    m_disk.setFull(true);
    m_stage->in(m_stage->seconds(600, 36000), [this] { m_disk.setFull(false); });
  } else if (which <= 30) {
    m_stage->say("hub", "flushes will fail");
    m_disk.failFlushes(static_cast<int>(m_stage->random.between(1, 3)));
  } else if (which <= 35) {
    stop("restarted", false);
  } else if (which <= 39) {
    const int days = static_cast<int>(m_stage->random.between(0, 20 * 365)) - 10 * 365;
    m_stage->say("hub", "clock wrong by " + std::to_string(days) + " days");
    m_clock.setWrongBy(absl::Hours(24 * days));
  } else if (which <= 45) {
    m_clock.setWrongBy(absl::ZeroDuration());
  } else if (which == 46) {
    changeCertificate();
  }
}

// As newel-hub does it, but for SQLite's copying: a copy of the files between two transactions, which the
// mark makes a backup when it is brought back.
void SimHub::backUp() {
  if (!isUp()) return;
  m_backups.push_back({m_disk.image(), m_ledger->hub});
  if (m_backups.size() > kBackupsKept) m_backups.pop_front();
}

void SimHub::goBack() {
  if (m_stage->calm || m_backups.empty()) return;
  const auto which = m_stage->random.between(0, static_cast<std::uint32_t>(m_backups.size()) - 1);
  m_stage->say("hub", "goes back to backup " + std::to_string(which));
  stop("to be restored", false);
  m_disk.heal();
  m_disk.restore(m_backups[which].image);
  m_ledger->hub = m_backups[which].promises;
  auto store = openSqliteHubStore(kStore, m_disk.vfsName());
  const absl::Status marked = store.ok() ? (*store)->write([](HubTransaction& transaction) {
    transaction.putSetting(kBackupMark, "1");
    return absl::OkStatus();
  })
                                         : store.status();
  if (!marked.ok()) m_stage->violated("hub: a backup cannot be opened: " + marked.ToString());
}

// The administrator's way to a new certificate: the setting, and a restart.
void SimHub::changeCertificate() {
  m_certificate = 1 - m_certificate;
  const absl::Status put = m_store->write([&](HubTransaction& transaction) {
    transaction.putSetting("certificate", kCertificates[m_certificate]);
    return absl::OkStatus();
  });
  stop(put.ok() ? "shows another certificate" : "could not change its certificate", false);
}

absl::StatusOr<std::string> SimHub::invite(const std::string& person_id) {
  if (!isUp()) return absl::UnavailableError("the hub is down");
  auto reply = m_hub->pairings().invite(therapist(), person_id);
  afterwards();
  if (!reply.ok()) return reply.status();
  return reply->qr_text();
}

void SimHub::deskAction() {
  if (!isUp() || m_stage->calm) return;
  const auto& person = m_people[m_stage->random.between(0, static_cast<std::uint32_t>(m_people.size()) - 1)];
  const std::uint32_t which = m_stage->random.between(1, 100);
  if (which <= 25) {
    signProgramme(person);
  } else if (which <= 45) {
    issueHold(person);
  } else if (which <= 65) {
    liftHold(person);
  } else if (which <= 85) {
    sendMessage(person);
  } else if (which <= 92) {
    changePerson(person);
  } else if (which <= 95) {
    sendUnknown(person);
  } else {
    revokeOne(person);
  }
  afterwards();
}

void SimHub::signProgramme(const v1::Person& person) {
  v1::SignProgrammeRequest request;
  *request.mutable_draft() = draftFor(person, newId());
  request.set_base_number(latestProgrammeNumber(person.id()));
  m_ledger->sent.insert(request.draft().id());
  std::uint64_t told = 0;
  for (const auto& receipt : receipts(person.id())) {
    if (receipt.of() == v1::RECEIPT_OF_PROGRAMME) told = std::max(told, receipt.ref_number());
  }
  const std::uint64_t faults = m_disk.faults();
  const auto reply = m_hub->prescriptions().sign(therapist(), request);
  m_stage->say("desk", reply.ok() ? "signs programme " + std::to_string(reply->programme().number()) +
                                        " for " + person.id()
                                  : "cannot sign: " + reply.status().ToString());
  if (!reply.ok() && m_disk.faults() == faults)
    m_stage->violated("desk: cannot sign: " + reply.status().ToString());
  if (reply.ok() && reply->programme().number() <= told)
    m_stage->violated("desk: signs under a number that a phone said it has");
}

void SimHub::issueHold(const v1::Person& person) {
  v1::IssueHoldRequest request;
  request.set_person_id(person.id());
  request.set_reason("Please stop. " + canaryOf(person.id()));
  const auto reply = m_hub->prescriptions().issueHold(therapist(), request);
  m_stage->say("desk", reply.ok() ? "holds " + person.id() + " by " + std::to_string(reply->order().number())
                                  : "cannot hold: " + reply.status().ToString());
  if (reply.ok()) m_ledger->sent.insert(reply->order().id());
}

void SimHub::holdNow(const std::string& person_id) {
  if (!isUp() || m_stage->calm) return;
  for (const auto& person : m_people) {
    if (person.id() == person_id && isUp()) issueHold(person);
  }
  afterwards();
}

void SimHub::liftHold(const v1::Person& person) {
  std::set<std::string> lifted;
  const auto orders = holds(person.id());
  for (const auto& order : orders) lifted.insert(order.lifts_id());
  for (const auto& order : orders) {
    if (!order.lifts_id().empty() || lifted.contains(order.id())) continue;
    v1::IssueHoldRequest request;
    request.set_person_id(person.id());
    request.set_lifts_id(order.id());
    m_ledger->lifted.insert(order.id());
    request.set_reason("Go on. " + canaryOf(person.id()));
    const auto reply = m_hub->prescriptions().issueHold(therapist(), request);
    m_stage->say("desk", reply.ok() ? "lifts hold " + std::to_string(order.number()) + " of " + person.id()
                                    : "cannot lift: " + reply.status().ToString());
    if (reply.ok()) m_ledger->sent.insert(reply->order().id());
    if (!isUp()) return;
  }
}

void SimHub::sendMessage(const v1::Person& person) {
  v1::SendMessageRequest request;
  request.set_id(newId());
  request.set_person_id(person.id());
  request.set_text("How is it going? " + canaryOf(person.id()));
  request.set_urgent(m_stage->chance(300));
  m_ledger->sent.insert(request.id());
  const auto reply = m_hub->files().sendMessage(therapist(), request);
  m_stage->say("desk", "writes to " + person.id() + ": " + reply.status().ToString());
}

void SimHub::changePerson(const v1::Person& person) {
  const auto known = m_hub->files().get(person.id());
  if (!known.ok()) return;
  v1::PutPersonRequest request;
  *request.mutable_person() = known->person();
  *request.mutable_identity() = known->identity();
  request.set_base_revision(known->person().revision());
  request.mutable_person()->set_height_cm(known->person().height_cm() == 172 ? 173 : 172);
  m_stage->say(
      "desk", "changes " + person.id() + ": " + m_hub->files().put(therapist(), request).status().ToString());
}

// A kind of record that this program does not know, as a newer hub may have.
void SimHub::sendUnknown(const v1::Person& person) {
  const absl::Status sent = m_store->write([&](HubTransaction& transaction) {
    v1::Envelope envelope = makeEnvelope(v1::RECORD_KIND_MEASURE, newId(), 1, canaryOf(person.id()));
    envelope.set_sequence(transaction.takeSequence());
    *envelope.mutable_received_at() = toTimestamp(m_clock.wall());
    transaction.addToFeed(person.id(), envelope, false);
    return absl::OkStatus();
  });
  m_stage->say("desk", "sends what no phone knows: " + sent.ToString());
}

void SimHub::revokeOne(const v1::Person& person) {
  const auto devices = m_hub->files().devices(person.id());
  if (!devices.ok() || devices->devices_size() == 0) return;
  const auto which = m_stage->random.between(0, static_cast<std::uint32_t>(devices->devices_size()) - 1);
  const absl::Status done =
      m_hub->files().revokeDevice(therapist(), devices->devices(static_cast<int>(which)).id());
  m_stage->say("desk", "ends the access of " + devices->devices(static_cast<int>(which)).name() + ": " +
                           done.ToString());
}

// What was signed in the moment that the machine stopped is found here.
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
        if (transaction.practiceHash(id, revision) != hash) {
          m_stage->violated("hub: practice " + id + " revision " + std::to_string(revision) +
                            " was acknowledged and is not there");
        }
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
      std::map<std::string, std::set<int>> states;
      for (const auto& row : transaction.receipts(person.id())) states[row.ref_id].insert(row.state);
      for (const auto& [ref_id, reached] : states) {
        if (!m_ledger->sent.contains(ref_id))
          m_stage->violated("hub: " + ref_id + " arrived and was never sent");
        if (reached.contains(v1::RECEIPT_STATE_SEEN) && !reached.contains(v1::RECEIPT_STATE_ARRIVED)) {
          m_stage->violated("hub: " + ref_id + " was seen and has not arrived");
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
