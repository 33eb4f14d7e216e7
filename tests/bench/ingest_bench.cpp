// What it costs the hub to take practices: through its intake (checked, hashed, compared, durable), beside
// the bare engine's durable commit of the same bytes in the same batches on the same disk. The two take
// turns, so that a busy machine slows both. `of_bare` is the hub's rate over the bare one's.
#include <SQLiteCpp/SQLiteCpp.h>
#include <benchmark/benchmark.h>

#include <algorithm>
#include <array>
#include <atomic>
#include <chrono>
#include <cstdio>
#include <fstream>
#include <memory>
#include <mutex>
#include <thread>

#include "core/records/record_text.h"
#include "sync/common/content_hash.h"
#include "sync/common/real_random.h"
#include "sync/hub/intake.h"
#include "sync/hub/postgres_hub_store.h"
#include "sync/hub/postgres_session.h"
#include "sync/hub/sqlite_hub_store.h"
#include "tests/bench/bench_folder.h"
#include "tests/bench/bench_records.h"
#include "tests/sync/common/test_postgres.h"

namespace newel::bench {
namespace {

using Seconds = std::chrono::duration<double>;
using Stopwatch = std::chrono::steady_clock;

constexpr int kPhones = 200;

v1::OfferRequest offerOf(std::atomic<std::uint64_t>& numbers, std::int64_t batch, const std::string& person) {
  v1::OfferRequest request;
  request.set_app_version("bench");
  for (std::int64_t i = 0; i < batch; ++i) {
    const std::uint64_t n = ++numbers;
    v1::Practice practice = benchPractice(n);
    practice.set_person_id(person);
    auto* envelope = request.add_records();
    envelope->set_kind(v1::RECORD_KIND_PRACTICE);
    envelope->set_id(practice.id());
    envelope->set_revision(1);
    envelope->set_content(toBytes(practice));
    envelope->set_sha256(sha256(envelope->content()));
    envelope->set_sequence(n);
  }
  return request;
}

// The engine with one table of ids and bytes and nothing of ours around it.
class Bare {
 public:
  virtual ~Bare() = default;
  virtual void keep(const v1::OfferRequest& request) = 0;
};

class BareSqlite : public Bare {
 public:
  explicit BareSqlite(const std::string& path)
      : m_database(path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE) {
    m_database.exec("PRAGMA journal_mode=WAL");
    m_database.exec("PRAGMA synchronous=FULL");
    m_database.exec("CREATE TABLE practice (id TEXT PRIMARY KEY, content BLOB NOT NULL) WITHOUT ROWID");
    m_insert = std::make_unique<SQLite::Statement>(m_database, "INSERT INTO practice VALUES (?, ?)");
  }
  void keep(const v1::OfferRequest& request) override {
    SQLite::Transaction transaction(m_database);
    for (const auto& record : request.records()) {
      m_insert->bind(1, record.id());
      m_insert->bind(2, record.content().data(), static_cast<int>(record.content().size()));
      m_insert->exec();
      m_insert->reset();
    }
    transaction.commit();
  }

 private:
  SQLite::Database m_database;
  std::unique_ptr<SQLite::Statement> m_insert;
};

class BarePostgres : public Bare {
 public:
  explicit BarePostgres(const std::string& address) : m_session(*PgSession::open(address)) {
    m_session->exec("CREATE TABLE public.practice (id TEXT PRIMARY KEY, content BYTEA NOT NULL)");
  }
  void keep(const v1::OfferRequest& request) override {
    m_session->exec("BEGIN");
    for (const auto& record : request.records()) {
      m_session->run("INSERT INTO public.practice VALUES (?, ?)", record.id(), Blob{record.content()});
    }
    m_session->commit();
  }

 private:
  std::unique_ptr<PgSession> m_session;
};

// Where hub and bare engine keep theirs, gone at the end.
class Place {
 public:
  virtual ~Place() = default;
  virtual absl::StatusOr<std::unique_ptr<HubStore>> store() = 0;
  virtual std::unique_ptr<Bare> bare() = 0;
};

class SqlitePlace : public Place {
 public:
  absl::StatusOr<std::unique_ptr<HubStore>> store() override {
    return openSqliteHubStore(m_folder.path() + "/hub.db");
  }
  std::unique_ptr<Bare> bare() override { return std::make_unique<BareSqlite>(m_folder.path() + "/bare.db"); }

 private:
  BenchFolder m_folder{"ingest"};
};

class PostgresPlace : public Place {
 public:
  PostgresPlace() : m_database(test::TestPostgres::server().newDatabase()) {}
  ~PostgresPlace() override { test::TestPostgres::server().dropDatabase(m_database); }
  PostgresPlace(const PostgresPlace&) = delete;
  PostgresPlace& operator=(const PostgresPlace&) = delete;
  absl::StatusOr<std::unique_ptr<HubStore>> store() override { return openPostgresHubStore(address()); }
  std::unique_ptr<Bare> bare() override { return std::make_unique<BarePostgres>(address()); }

 private:
  std::string address() const { return test::TestPostgres::server().address(m_database); }
  const std::string m_database;
};

// A clinic with `kPhones` persons, and the intake of its hub.
class BenchHub {
 public:
  explicit BenchHub(Place& place) {
    auto store = place.store();
    if (!store.ok()) throw std::runtime_error(std::string(store.status().message()));
    m_store = *std::move(store);
    v1::ClinicCard card;
    card.set_name("Bench clinic");
    card.set_phone("555 0100");
    card.set_emergency_number("112");
    const absl::Status made = initClinic(*m_store, card, {}, true, m_clock, m_random);
    const auto clinic = loadClinic(*m_store, m_clock, m_random);
    const absl::Status people = m_store->write([](HubTransaction& transaction) {
      for (int i = 0; i < kPhones; ++i) transaction.putPerson(personOf(i), {1, "bench"});
      return absl::OkStatus();
    });
    if (!made.ok() || !clinic.ok() || !people.ok()) throw std::runtime_error("no clinic");
    m_clinic = *clinic;
    m_context.store = m_store.get();
  }
  static std::string personOf(int phone) { return benchId(static_cast<std::uint64_t>(phone) + 1); }
  // False when anything was not kept.
  bool take(int phone, const v1::OfferRequest& request) {
    const auto reply = m_intake.offer({benchId(9), personOf(phone)}, request);
    if (!reply.ok()) return false;
    return std::all_of(reply->outcomes().begin(), reply->outcomes().end(),
                       [](const auto& outcome) { return outcome.outcome() == v1::OUTCOME_KEPT; });
  }

 private:
  SimulatedClock m_clock{absl::FromUnixSeconds(1764000000)};
  RealRandom m_random;
  NudgeBoard m_board;
  AuditTrail m_audit{&m_clock};
  std::unique_ptr<HubStore> m_store;
  Clinic m_clinic;
  HubContext m_context{nullptr,
                       &m_clock,
                       &m_random,
                       &m_board,
                       &m_audit,
                       &m_clinic,
                       &Catalogue::builtIn(),
                       &RuleBook::builtIn()};
  Intake m_intake{&m_context};
};

template <typename Body>
double secondsOf(Body body) {
  const auto begun = Stopwatch::now();
  body();
  return Seconds(Stopwatch::now() - begun).count();
}

// One phone, batches of range(0).
template <typename Where>
void ingest(benchmark::State& state) {
  Where place;
  BenchHub hub(place);
  const auto bare = place.bare();
  std::atomic<std::uint64_t> numbers{0};
  double bare_seconds = 0;
  double hub_seconds = 0;
  for (auto _ : state) {
    const auto request = offerOf(numbers, state.range(0), BenchHub::personOf(0));
    bool kept = false;
    const double taken = secondsOf([&] { kept = hub.take(0, request); });
    if (!kept) return state.SkipWithError("not kept");
    bare_seconds += secondsOf([&] { bare->keep(request); });
    hub_seconds += taken;
    state.SetIterationTime(taken);
  }
  const double records = static_cast<double>(state.iterations() * state.range(0));
  state.counters["hub_per_s"] = records / hub_seconds;
  state.counters["bare_per_s"] = records / bare_seconds;
  state.counters["of_bare"] = bare_seconds / hub_seconds;
}
BENCHMARK(ingest<SqlitePlace>)->Arg(1)->Arg(10)->Arg(100)->UseManualTime()->Unit(benchmark::kMicrosecond);
BENCHMARK(ingest<PostgresPlace>)->Arg(1)->Arg(10)->Arg(100)->UseManualTime()->Unit(benchmark::kMicrosecond);

// Two hundred phones at once, ten practices a call; each call's time from asking to its durable answer.
// Beside it the bare engine with one writer and the same batches.
template <typename Where>
void phonesAtOnce(benchmark::State& state) {
  constexpr int kCalls = 5;
  Where place;
  BenchHub hub(place);
  const auto bare = place.bare();
  std::atomic<std::uint64_t> numbers{0};
  std::mutex mutex;
  std::vector<double> waits;
  double hub_seconds = 0;
  double bare_seconds = 0;
  std::atomic<bool> kept{true};
  for (auto _ : state) {
    std::vector<std::vector<v1::OfferRequest>> calls(kPhones);
    for (int p = 0; p < kPhones; ++p) {
      for (int c = 0; c < kCalls; ++c) {
        calls[static_cast<std::size_t>(p)].push_back(offerOf(numbers, 10, BenchHub::personOf(p)));
      }
    }
    const double taken = secondsOf([&] {
      std::vector<std::thread> phones;
      for (int p = 0; p < kPhones; ++p) {
        phones.emplace_back([&, p] {
          for (const auto& call : calls[static_cast<std::size_t>(p)]) {
            const double wait = secondsOf([&] { kept = hub.take(p, call) && kept; });
            const std::lock_guard lock(mutex);
            waits.push_back(wait);
          }
        });
      }
      for (auto& phone : phones) phone.join();
    });
    bare_seconds += secondsOf([&] {
      for (const auto& phone : calls) {
        for (const auto& call : phone) bare->keep(call);
      }
    });
    hub_seconds += taken;
    state.SetIterationTime(taken);
  }
  if (!kept) return state.SkipWithError("not kept");
  std::sort(waits.begin(), waits.end());
  const double records = static_cast<double>(waits.size()) * 10;
  state.counters["hub_per_s"] = records / hub_seconds;
  state.counters["bare_per_s"] = records / bare_seconds;
  state.counters["of_bare"] = bare_seconds / hub_seconds;
  state.counters["p50_ms"] = waits[waits.size() / 2] * 1000;
  state.counters["p99_ms"] = waits[waits.size() * 99 / 100] * 1000;
}
BENCHMARK(phonesAtOnce<SqlitePlace>)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(3);
BENCHMARK(phonesAtOnce<PostgresPlace>)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(3);

double residentMb() {
  std::ifstream status("/proc/self/statm");
  double all = 0;
  double resident = 0;
  status >> all >> resident;
  return resident * 4096 / 1e6;
}

// The hub's memory after a tenth and after all of a hundred thousand practices.
void memoryOverAHundredThousand(benchmark::State& state) {
  constexpr int kBatches = 1000;
  SqlitePlace place;
  BenchHub hub(place);
  std::atomic<std::uint64_t> numbers{0};
  for (auto _ : state) {
    for (int i = 0; i < kBatches; ++i) {
      if (!hub.take(i % kPhones, offerOf(numbers, 100, BenchHub::personOf(i % kPhones)))) {
        return state.SkipWithError("not kept");
      }
      if (i == kBatches / 10) state.counters["mb_at_10000"] = residentMb();
    }
    state.counters["mb_at_100000"] = residentMb();
  }
}
BENCHMARK(memoryOverAHundredThousand)->Iterations(1)->Unit(benchmark::kSecond)->UseRealTime();

// PostgreSQL's own measure on this disk: one row of 1500 bytes a commit.
void pgbench(benchmark::State& state) {
  const auto& server = test::TestPostgres::server();
  const std::string database = test::TestPostgres::server().newDatabase();
  server.sql(database, "CREATE TABLE public.row (id BIGSERIAL PRIMARY KEY, content BYTEA NOT NULL)");
  const BenchFolder folder("pgbench");
  const std::string script = folder.path() + "/insert.sql";
  std::ofstream(script) << "INSERT INTO public.row (content) VALUES (decode(repeat('5a', 1500), 'hex'));\n";
  const std::string clients = std::to_string(state.range(0));
  const std::string command = server.programs() + "/pgbench -n -M prepared -T 3 -c " + clients + " -j " +
                              clients + " -f " + script + " '" + server.address(database) + "' 2>/dev/null";
  for (auto _ : state) {
    FILE* pipe = popen(command.c_str(), "r");
    std::array<char, 256> line{};
    while (pipe != nullptr && std::fgets(line.data(), line.size(), pipe) != nullptr) {
      double tps = 0;
      if (std::sscanf(line.data(), "tps = %lf", &tps) == 1) state.counters["tps"] = tps;
    }
    if (pipe == nullptr || pclose(pipe) != 0) state.SkipWithError("pgbench did not run");
  }
  test::TestPostgres::server().dropDatabase(database);
}
BENCHMARK(pgbench)->Arg(1)->Arg(8)->Iterations(1)->Unit(benchmark::kSecond)->UseRealTime();

}  // namespace
}  // namespace newel::bench
