#include "tests/sim/sim_hub.h"

#include <utility>

#include "sync/common/record_id.h"
#include "sync/hub/clinic_library.h"
#include "sync/hub/sqlite_hub_store.h"
#include "tests/core/people/sample_people.h"
#include "tests/sim/certificates.h"

namespace newel::sim {
namespace {

constexpr char kStore[] = "/hub.db";
constexpr std::size_t kBackupsKept = 4;

}  // namespace

const DeskCaller& SimHub::therapist() {
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
  const absl::Status made = initClinicWith(
      *m_store, card, {{kCertificates[0], "no key"}, {kCertificates[1], "no key"}}, false, m_clock, m_random);
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
  if (std::exchange(m_signs_when_up, false)) {
    for (const auto& person : m_people) {
      if (isUp()) signProgramme(person);
    }
    afterwards();
  }
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
    if (m_stage->chance(500)) restartUnderAFailingDisk();
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

// Somebody writes and is told that it failed, the program is killed and started anew, and some hours later
// the power goes: what was kept in between must not hang on what the failed flush left.
void SimHub::restartUnderAFailingDisk() {
  for (int i = 0; i < 3 && isUp(); ++i) deskAction();
  cut("killed, for its disk complains", false);
  m_stage->in(m_stage->seconds(5 * 3600, 12 * 3600), [this] {
    if (!m_stage->calm) cut("the power fails", true);
  });
}

// Nothing is tidied up on the way out.
void SimHub::cut(const std::string& why, bool power_lost) {
  if (!isUp()) return;
  m_disk.stopAfter(0);
  stop(why, power_lost);
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
  // What is lost now was sent all the same.
  if (auto before = openSqliteHubStore(kStore, m_disk.vfsName()); before.ok()) {
    m_store = *std::move(before);
    noteSent();
    m_store.reset();
  }
  m_disk.restore(m_backups[which].image);
  m_ledger->hub = m_backups[which].promises;
  m_signs_when_up = m_stage->chance(500);
  auto store = openSqliteHubStore(kStore, m_disk.vfsName());
  const absl::Status marked = store.ok() ? (*store)->write([](HubTransaction& transaction) {
    transaction.putSetting(kBackupMark, "1");
    return absl::OkStatus();
  })
                                         : store.status();
  if (!marked.ok()) m_stage->violated("hub: a backup cannot be opened: " + marked.ToString());
}

// The administrator's ways to another certificate, each with a restart: to the backup, which phones may know
// of, or to one that nobody was told of.
void SimHub::changeCertificate() {
  const bool announced = m_stage->chance(500);
  const absl::Status put = m_store->write([&](HubTransaction& transaction) {
    std::string unused;
    for (const char* one : kCertificates) {
      if (one != transaction.setting("certificate") && one != transaction.setting("backup_certificate"))
        unused = one;
    }
    if (announced) {
      const Clinic& clinic = m_hub->clinic();
      return rotateCertificates(transaction, {unused, "no key"}, {.anyway = true}, clinic.key,
                                clinic.card.clinic_id(), m_clock.wall());
    }
    transaction.putSetting("certificate", unused);
    return absl::OkStatus();
  });
  stop(!put.ok()   ? "could not change its certificate"
       : announced ? "shows its backup certificate"
                   : "shows another certificate",
       false);
}

absl::StatusOr<std::string> SimHub::invite(const std::string& person_id) {
  if (!isUp()) return absl::UnavailableError("the hub is down");
  auto reply = m_hub->pairings().invite(therapist(), person_id);
  afterwards();
  if (!reply.ok()) return reply.status();
  return reply->qr_text();
}

}  // namespace newel::sim
