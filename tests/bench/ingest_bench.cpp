// What it costs the hub to take practices: through its intake (checked, hashed, compared, audited, durable),
// beside the bare SQLite commit of the same bytes in the same batches on the same disk.
#include <SQLiteCpp/SQLiteCpp.h>
#include <benchmark/benchmark.h>

#include "core/records/record_text.h"
#include "sync/common/content_hash.h"
#include "sync/common/real_random.h"
#include "sync/hub/intake.h"
#include "sync/hub/sqlite_hub_store.h"
#include "tests/bench/bench_folder.h"
#include "tests/bench/bench_records.h"

namespace newel::bench {
namespace {

v1::OfferRequest offerOf(std::uint64_t& n, std::int64_t batch) {
  v1::OfferRequest request;
  request.set_app_version("bench");
  for (std::int64_t i = 0; i < batch; ++i) {
    const v1::Practice practice = benchPractice(++n);
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

void hubIngest(benchmark::State& state) {
  const BenchFolder folder("ingest");
  auto store = openSqliteHubStore(folder.path() + "/hub.db");
  if (!store.ok()) return state.SkipWithError(std::string(store.status().message()).c_str());
  SimulatedClock clock(absl::FromUnixSeconds(1764000000));
  RealRandom random;
  NudgeBoard board;
  v1::ClinicCard card;
  card.set_name("Bench clinic");
  card.set_phone("555 0100");
  card.set_emergency_number("112");
  if (!initClinic(**store, card, {}, true, clock, random).ok()) return state.SkipWithError("no clinic");
  const auto clinic = loadClinic(**store, clock, random);
  if (!clinic.ok()) return state.SkipWithError("no clinic");
  const auto somebody = [](HubTransaction& transaction) {
    transaction.putPerson(benchId(1), {1, "bench"});
    return absl::OkStatus();
  };
  if (!(*store)->write(somebody).ok()) return state.SkipWithError("no person");
  AuditTrail audit(&clock);
  const HubContext hub{store->get(),        &clock, &random, &board, &audit, &*clinic, &Catalogue::builtIn(),
                       &RuleBook::builtIn()};
  Intake intake(&hub);
  const PhoneCaller caller{benchId(9), benchId(1)};
  std::uint64_t n = 0;
  for (auto _ : state) {
    state.PauseTiming();
    const auto request = offerOf(n, state.range(0));
    state.ResumeTiming();
    const auto reply = intake.offer(caller, request);
    if (!reply.ok() || reply->outcomes(0).outcome() != v1::OUTCOME_KEPT)
      return state.SkipWithError("not kept");
  }
  state.SetItemsProcessed(state.iterations() * state.range(0));
}
BENCHMARK(hubIngest)->Arg(1)->Arg(10)->Arg(100)->UseRealTime()->Unit(benchmark::kMicrosecond);

void bareSqliteIngest(benchmark::State& state) {
  const BenchFolder folder("bare-ingest");
  SQLite::Database database(folder.path() + "/bare.db", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
  database.exec("PRAGMA journal_mode=WAL");
  database.exec("PRAGMA synchronous=FULL");
  database.exec("CREATE TABLE practice (id TEXT PRIMARY KEY, content BLOB NOT NULL) WITHOUT ROWID");
  SQLite::Statement insert(database, "INSERT INTO practice VALUES (?, ?)");
  std::uint64_t n = 0;
  for (auto _ : state) {
    state.PauseTiming();
    const auto request = offerOf(n, state.range(0));
    state.ResumeTiming();
    SQLite::Transaction transaction(database);
    for (const auto& record : request.records()) {
      insert.bind(1, record.id());
      insert.bind(2, record.content().data(), static_cast<int>(record.content().size()));
      insert.exec();
      insert.reset();
    }
    transaction.commit();
  }
  state.SetItemsProcessed(state.iterations() * state.range(0));
}
BENCHMARK(bareSqliteIngest)->Arg(1)->Arg(10)->Arg(100)->UseRealTime()->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace newel::bench
