#include "tests/sync/common/test_clinic.h"

#include <gtest/gtest.h>

#include <utility>

#include "core/records/record_text.h"
#include "core/time/local_day.h"
#include "sync/common/record_id.h"
#include "sync/common/text_codes.h"
#include "sync/home/device_store.h"
#include "sync/home/seal.h"
#include "tests/core/people/sample_people.h"

namespace newel::test {

namespace fs = std::filesystem;

TempFolder::TempFolder() {
  RealRandom random;
  m_path = fs::temp_directory_path() / ("newel-test-" + toHex(randomBytes(random, 8)));
  fs::create_directories(m_path);
}
TempFolder::~TempFolder() {
  std::error_code error;
  fs::remove_all(m_path, error);
}
std::string TempFolder::path(const std::string& name) const {
  return name.empty() ? m_path.string() : (m_path / name).string();
}

absl::Time TestClock::wall() const {
  const std::lock_guard lock(m_mutex);
  return m_wall;
}
absl::Duration TestClock::elapsed() const {
  const std::lock_guard lock(m_mutex);
  return m_elapsed;
}
void TestClock::advance(absl::Duration by) {
  const std::lock_guard lock(m_mutex);
  m_wall += by;
  m_elapsed += by;
}
void TestClock::setWall(absl::Time wall) {
  const std::lock_guard lock(m_mutex);
  m_wall = wall;
}

TestClinic::TestClinic() {
  auto store = m_place->open();
  EXPECT_TRUE(store.ok()) << store.status();
  m_store = *std::move(store);
  v1::ClinicCard card;
  card.set_name("Test clinic (invented)");
  card.set_phone("555 0101");
  card.set_emergency_number("112");
  EXPECT_EQ(initClinic(*m_store, card, {}, false, m_clock, m_random), absl::OkStatus());
  startHub();
  EXPECT_EQ(m_hub->accounts().add(kUser, "Terry Sample (invented)", v1::ROLE_THERAPIST, kPassword).status(),
            absl::OkStatus());
  m_desk = newDesk();
  EXPECT_EQ(m_desk->signIn(kUser, kPassword).status(), absl::OkStatus());
}

TestClinic::~TestClinic() { stopHub(); }

void TestClinic::startHub(int port) {
  if (!m_store) {
    auto store = m_place->open();
    ASSERT_TRUE(store.ok()) << store.status();
    m_store = *std::move(store);
  }
  auto hub = Hub::open(m_store.get(), &m_clock, &m_random);
  ASSERT_TRUE(hub.ok()) << hub.status();
  m_hub = *std::move(hub);
  HubServer::Options options{"127.0.0.1:" + std::to_string(port), "127.0.0.1"};
  options.keep_digests = false;  // tests say when
  auto server = HubServer::start(m_hub.get(), options);
  ASSERT_TRUE(server.ok()) << server.status();
  m_server = *std::move(server);
}

void TestClinic::stopServer() { m_server->stop(); }

void TestClinic::stopHub() {
  m_server.reset();
  m_hub.reset();
  m_store.reset();
}

std::string TestClinic::address() const { return "127.0.0.1:" + std::to_string(m_server->port()); }

std::unique_ptr<DeskClient> TestClinic::newDesk() {
  DeskClient::Options options;
  options.address = address();
  options.certificate_sha256 = m_hub->clinic().certificate_sha256;
  auto desk = DeskClient::connect(options);
  EXPECT_TRUE(desk.ok()) << desk.status();
  return *std::move(desk);
}

std::string TestClinic::addPerson(const v1::Person& person, const std::string& given_name) {
  v1::PutPersonRequest request;
  *request.mutable_person() = person;
  request.mutable_identity()->set_person_id(person.id());
  request.mutable_identity()->set_given_name(given_name);
  request.mutable_identity()->set_family_name("Invented");
  EXPECT_EQ(m_desk->putPerson(request).status(), absl::OkStatus());
  return person.id();
}

v1::Programme TestClinic::draft(const v1::Person& person) const {
  v1::Programme programme = programmeOf(person, {entryOf("sit-to-stand", person, 300)});
  v1::Programme bare;
  bare.set_person_id(person.id());
  bare.set_effective_day(programme.effective_day());
  bare.set_end_day(programme.end_day());
  bare.set_zone(programme.zone());
  *bare.mutable_entries() = programme.entries();
  *bare.mutable_thresholds() = programme.thresholds();
  return bare;
}

v1::Programme TestClinic::sign(const v1::Person& person, std::uint32_t base_number) {
  v1::SignProgrammeRequest request;
  *request.mutable_draft() = draft(person);
  request.mutable_draft()->set_id(newRecordId(m_clock, m_random));
  request.set_base_number(base_number);
  auto reply = m_desk->signProgramme(request);
  EXPECT_TRUE(reply.ok()) << reply.status();
  return reply.ok() ? reply->programme() : v1::Programme();
}

HomeEngine::Options TestClinic::phoneOptions(const std::string& name) {
  HomeEngine::Options options;
  options.folder = m_folder.path(name);
  options.clock = &m_clock;
  options.random = &m_random;
  options.app_version = "test 1";
  options.device_name = name;
  options.store_key = std::string(kStoreKeyBytes, 'k');
  return options;
}

std::string TestClinic::tokenOf(const std::string& phone_name) {
  const auto options = phoneOptions(phone_name);
  const auto store = DeviceStore::open(options.folder, "", options.store_key, m_random);
  EXPECT_TRUE(store.ok()) << store.status();
  const auto token = (*store)->read(
      [](Database& database) -> absl::StatusOr<std::string> { return loadSettings(database).hub.token; });
  return token.value_or("");
}

std::unique_ptr<HomeEngine> TestClinic::newPhone(const std::string& name) {
  auto engine = HomeEngine::open(phoneOptions(name));
  EXPECT_TRUE(engine.ok()) << engine.status();
  return *std::move(engine);
}

PairingTicket TestClinic::ticketFor(const std::string& person_id) {
  const auto reply = m_desk->createPairing(person_id);
  EXPECT_TRUE(reply.ok()) << reply.status();
  const auto ticket = parseTicket(reply->qr_text());
  EXPECT_TRUE(ticket.ok()) << ticket.status();
  return *ticket;
}

std::unique_ptr<HomeEngine> TestClinic::pairedPhone(const std::string& name, const std::string& person_id) {
  auto phone = newPhone(name);
  EXPECT_EQ(phone->pair(ticketFor(person_id)), absl::OkStatus());
  return phone;
}

std::vector<std::string> TestClinic::auditActions() {
  std::vector<std::string> entries;
  EXPECT_EQ(m_store->read([&](HubTransaction& transaction) {
    for (const auto& row : transaction.auditAfter(0, 100000)) entries.push_back(row.entry);
    return absl::OkStatus();
  }),
            absl::OkStatus());
  return entries;
}

v1::Remark sampleRemark(const std::string& id, const std::string& person_id) {
  v1::Remark remark;
  remark.set_id(id);
  remark.set_revision(1);
  remark.set_person_id(person_id);
  remark.set_local_day("2026-11-25");
  remark.set_text("The neighbour was away.");
  remark.mutable_written_at()->set_seconds(1795600000);
  return remark;
}

v1::Practice samplePractice(const std::string& id, const std::string& person_id, std::uint32_t revision) {
  v1::Practice practice;
  practice.set_id(id);
  practice.set_revision(revision);
  practice.set_person_id(person_id);
  practice.set_programme_number(1);
  practice.set_zone("Europe/Berlin");
  practice.set_local_day("2026-11-25");
  practice.mutable_started_at()->set_seconds(1795599000);
  practice.mutable_ended_at()->set_seconds(1795599600);
  practice.set_elapsed_ms(600000);
  practice.set_end(v1::PRACTICE_END_FINISHED);
  practice.set_origin(v1::ORIGIN_TIMED_HERE);
  practice.set_app_version("test 1");
  v1::EntryDone& entry = *practice.add_entries();
  entry.mutable_occasion()->set_entry_id(idOf(300));
  entry.mutable_occasion()->set_local_day("2026-11-25");
  entry.set_exercise_id("sit-to-stand");
  entry.set_exercise_revision(1);
  entry.mutable_asked()->set_repetitions(10);
  entry.mutable_done()->set_repetitions(9);
  entry.set_elapsed_ms(590000);
  return practice;
}

v1::WearBlock sampleWearBlock(const std::string& id, const std::string& person_id, std::uint32_t revision) {
  v1::WearBlock block;
  block.set_id(id);
  block.set_revision(revision);
  block.set_person_id(person_id);
  block.set_local_day("2026-11-25");
  block.set_zone("Europe/Berlin");
  block.mutable_put_on_at()->set_seconds(1795590000);
  block.mutable_taken_off_at()->set_seconds(1795597200);
  block.mutable_check()->add_signs(v1::SKIN_SIGN_CLEAR);
  block.set_origin(v1::ORIGIN_TIMED_HERE);
  return block;
}

v1::WearPlan sampleWearPlan(const std::string& person_id) {
  v1::WearPlan plan;
  plan.set_id(idOf(2100));
  plan.set_number(1);
  plan.set_person_id(person_id);
  plan.set_clinic_id(idOf(2000));
  plan.set_signer_id(idOf(2001));
  plan.set_signer_name("Dr Sample (invented)");
  plan.mutable_issued_at()->set_seconds(1795500000);
  plan.set_effective_day("2026-11-02");
  plan.set_zone("Europe/Berlin");
  v1::WearStep& first = *plan.add_steps();
  first.set_days(1);
  first.set_blocks(2);
  first.set_block_min(60);
  v1::WearStep& last = *plan.add_steps();
  last.set_days(1);
  last.set_all_day(true);
  plan.set_off_min(60);
  plan.set_grace_min(5);
  plan.set_redness_min(10);
  plan.set_redness_action(v1::REDNESS_ACTION_STAY_OFF);
  return plan;
}

v1::Measure timedWalk(const std::string& id, const std::string& person_id, double seconds) {
  v1::Measure measure;
  measure.set_id(id);
  measure.set_revision(1);
  measure.set_person_id(person_id);
  measure.set_kind("timed-up-and-go");
  measure.set_value(seconds);
  measure.set_unit("s");
  measure.mutable_taken_at()->set_seconds(1795599000);
  measure.set_local_day("2026-11-25");
  return measure;
}

v1::JournalLine sampleLine(const std::string& practice_id, const std::string& person_id,
                           std::uint32_t sequence) {
  v1::JournalLine line;
  line.set_practice_id(practice_id);
  line.set_sequence(sequence);
  line.mutable_at()->set_seconds(1795599000 + sequence);
  line.set_elapsed_ms(1000 * static_cast<std::int64_t>(sequence));
  if (sequence == 1) {
    line.set_kind(v1::JOURNAL_KIND_PRACTICE_BEGUN);
    *line.mutable_header() = samplePractice(practice_id, person_id);
  } else {
    line.set_kind(v1::JOURNAL_KIND_BEAT_BEGUN);
    line.set_beat(sequence - 2);
  }
  return line;
}

}  // namespace newel::test
