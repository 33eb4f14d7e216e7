#include "tests/bench/bench_hub.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <algorithm>
#include <array>
#include <stdexcept>
#include <utility>

#include "core/records/record_text.h"
#include "sync/common/content_hash.h"
#include "sync/common/record_id.h"
#include "sync/common/text_codes.h"
#include "sync/hub/postgres_hub_store.h"
#include "sync/hub/sqlite_hub_store.h"
#include "tests/bench/bench_records.h"

namespace newel::bench {
namespace {

constexpr std::size_t kTokenBytes = 32;

void need(const absl::Status& status) {
  if (!status.ok()) throw std::runtime_error(status.ToString());
}

class BareSqlite : public Bare {
 public:
  explicit BareSqlite(const std::string& path)
      : m_database(path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE) {
    m_database.exec("PRAGMA journal_mode=WAL");
    m_database.exec("PRAGMA synchronous=FULL");
    m_database.exec(
        "CREATE TABLE practice (sequence INTEGER PRIMARY KEY, id TEXT NOT NULL, revision INTEGER NOT NULL, "
        "person_id TEXT NOT NULL, device_id TEXT NOT NULL, content BLOB NOT NULL, sha256 BLOB NOT NULL, "
        "at INTEGER NOT NULL, red_flag INTEGER NOT NULL, UNIQUE (id, revision));"
        "CREATE INDEX practice_person ON practice (person_id)");
    m_insert = std::make_unique<SQLite::Statement>(m_database,
                                                   "INSERT INTO practice VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)");
  }
  void keep(const v1::OfferRequest& request) override {
    SQLite::Transaction transaction(m_database);
    for (const auto& record : request.records()) {
      m_insert->bind(1, ++m_sequence);
      m_insert->bindNoCopy(2, record.id());
      m_insert->bind(3, static_cast<std::int64_t>(record.revision()));
      m_insert->bindNoCopy(4, m_person);
      m_insert->bindNoCopy(5, m_person);
      m_insert->bindNoCopy(6, record.content().data(), static_cast<int>(record.content().size()));
      m_insert->bindNoCopy(7, record.sha256().data(), static_cast<int>(record.sha256().size()));
      m_insert->bind(8, m_sequence);
      m_insert->bind(9, 0);
      m_insert->exec();
      m_insert->reset();
    }
    transaction.commit();
  }

 private:
  SQLite::Database m_database;
  std::unique_ptr<SQLite::Statement> m_insert;
  std::int64_t m_sequence = 0;
  const std::string m_person = benchId(1);
};

class BarePostgres : public Bare {
 public:
  explicit BarePostgres(const std::string& address) : m_session(*PgSession::open(address)) {
    m_session->exec(
        "CREATE TABLE public.bare (id TEXT COLLATE \"C\" NOT NULL, revision BIGINT NOT NULL, person_id TEXT "
        "COLLATE \"C\" NOT NULL, device_id TEXT COLLATE \"C\" NOT NULL, content BYTEA NOT NULL, sha256 BYTEA "
        "NOT NULL, sequence BIGINT NOT NULL, at BIGINT NOT NULL, red_flag BIGINT NOT NULL, PRIMARY KEY (id, "
        "revision)); CREATE INDEX bare_person ON public.bare (person_id, sequence)");
  }
  void keep(const v1::OfferRequest& request) override {
    m_session->exec("BEGIN");
    for (const auto& record : request.records()) {
      ++m_sequence;
      m_session->run("INSERT INTO public.bare VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)", record.id(),
                     record.revision(), m_person, m_person, Blob{record.content()}, Blob{record.sha256()},
                     m_sequence, m_sequence, 0);
    }
    m_session->commit();
  }
  void keepAtOnce(const v1::OfferRequest& request) override {
    std::array<PgArray, 3> texts = {PgArray::ofText(), PgArray::ofText(), PgArray::ofText()};
    std::array<PgArray, 2> bytes = {PgArray::ofBytes(), PgArray::ofBytes()};
    std::array<PgArray, 4> numbers = {PgArray::ofNumbers(), PgArray::ofNumbers(), PgArray::ofNumbers(),
                                      PgArray::ofNumbers()};
    for (const auto& record : request.records()) {
      ++m_sequence;
      texts[0].add(record.id());
      texts[1].add(m_person);
      texts[2].add(m_person);
      bytes[0].add(record.content());
      bytes[1].add(record.sha256());
      numbers[0].add(std::int64_t{record.revision()});
      numbers[1].add(m_sequence);
      numbers[2].add(m_sequence);
      numbers[3].add(std::int64_t{0});
    }
    m_session->exec("BEGIN");
    m_session->run(
        "INSERT INTO public.bare SELECT * FROM unnest(?::text[], ?::bigint[], ?::text[], ?::text[], "
        "?::bytea[], ?::bytea[], ?::bigint[], ?::bigint[], ?::bigint[])",
        texts[0], numbers[0], texts[1], texts[2], bytes[0], bytes[1], numbers[1], numbers[2], numbers[3]);
    m_session->commit();
  }

 private:
  std::unique_ptr<PgSession> m_session;
  std::int64_t m_sequence = 0;
  const std::string m_person = benchId(1);
};

}  // namespace

absl::StatusOr<std::unique_ptr<HubStore>> SqlitePlace::store() {
  return openSqliteHubStore(m_folder.path() + "/hub.db");
}
std::unique_ptr<Bare> SqlitePlace::bare() {
  return std::make_unique<BareSqlite>(m_folder.path() + "/bare.db");
}
absl::StatusOr<std::unique_ptr<HubStore>> PostgresPlace::store() { return openPostgresHubStore(address()); }
std::unique_ptr<Bare> PostgresPlace::bare() { return std::make_unique<BarePostgres>(address()); }

BenchHub::BenchHub(Place& place, int phones) {
  auto store = place.store();
  need(store.status());
  m_store = *std::move(store);
  v1::ClinicCard card;
  card.set_name("Bench clinic (invented)");
  card.set_phone("555 0100");
  card.set_emergency_number("112");
  need(initClinic(*m_store, card, {}, true, *m_clock, m_random));
  auto hub = Hub::open(m_store.get(), m_clock.get(), &m_random);
  need(hub.status());
  m_hub = *std::move(hub);
  for (int i = 0; i < phones; ++i) {
    m_phones.push_back({newRecordId(*m_clock, m_random), toBase64Url(randomBytes(m_random, kTokenBytes))});
  }
  need(m_store->write([&](HubTransaction& transaction) {
    for (const Phone& phone : m_phones) {
      transaction.putPerson(phone.person_id, {1, "bench"});
      transaction.addDevice({newRecordId(*m_clock, m_random), phone.person_id, "phone", "bench",
                             sha256(phone.token), m_clock->wall(), std::nullopt, false});
    }
    return absl::OkStatus();
  }));
}

bool BenchHub::take(std::size_t phone, const v1::OfferRequest& request) {
  const auto caller = m_hub->phones().recognise(m_phones[phone].token, saysOf(request));
  return caller.ok() && allKept(m_hub->phones().offer(*caller, request));
}

v1::OfferRequest BenchHub::offerOf(std::size_t phone, std::int64_t batch) {
  return bench::offerOf(m_numbers, batch, m_phones[phone].person_id);
}

bool BenchHub::hold(const std::string& person_id) {
  DeskCaller caller;
  caller.therapist.set_id(benchId(4));
  caller.therapist.set_display_name("Bench Therapist");
  v1::IssueHoldRequest request;
  request.set_person_id(person_id);
  request.set_reason("bench");
  return m_hub->prescriptions().issueHold(caller, request).ok();
}

v1::OfferRequest offerOf(std::atomic<std::uint64_t>& numbers, std::int64_t batch,
                         const std::string& person_id) {
  v1::OfferRequest request;
  request.set_app_version("bench");
  for (std::int64_t i = 0; i < batch; ++i) {
    const std::uint64_t n = ++numbers;
    v1::Practice practice = benchPractice(n);
    practice.set_person_id(person_id);
    auto& envelope = *request.add_records();
    envelope = makeEnvelope(v1::RECORD_KIND_PRACTICE, practice.id(), 1, toBytes(practice));
    envelope.set_sequence(n);
  }
  return request;
}

bool allKept(const absl::StatusOr<v1::OfferReply>& reply) {
  return reply.ok() && std::all_of(reply->outcomes().begin(), reply->outcomes().end(),
                                   [](const auto& one) { return one.outcome() == v1::OUTCOME_KEPT; });
}

}  // namespace newel::bench
