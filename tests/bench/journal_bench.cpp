// What durability costs: a journal line through the phone's engine, beside a bare SQLite commit of the same
// bytes (write-ahead log, synchronous FULL) and a bare write with fdatasync, all on the same disk in one run.
#include <SQLiteCpp/SQLiteCpp.h>
#include <benchmark/benchmark.h>
#include <fcntl.h>
#include <unistd.h>

#include "core/records/record_text.h"
#include "core/time/local_day.h"
#include "sync/common/real_random.h"
#include "sync/home/home_engine.h"
#include "sync/home/seal.h"
#include "tests/bench/bench_folder.h"
#include "tests/bench/bench_records.h"

namespace newel::bench {
namespace {

v1::JournalLine line(std::uint32_t sequence) {
  v1::JournalLine line;
  line.set_practice_id(benchId(77));
  line.set_sequence(sequence);
  line.set_kind(sequence == 1 ? v1::JOURNAL_KIND_PRACTICE_BEGUN : v1::JOURNAL_KIND_BEAT_BEGUN);
  line.set_elapsed_ms(sequence);
  *line.mutable_at() = toTimestamp(absl::FromUnixSeconds(1764000000));
  line.set_beat(sequence % 40);
  if (sequence == 1) {
    *line.mutable_header() = benchPractice(1);
    line.mutable_header()->clear_end();
    line.mutable_header()->clear_ended_at();
  }
  return line;
}

void journalAppend(benchmark::State& state) {
  const BenchFolder folder("journal");
  SimulatedClock clock(absl::FromUnixSeconds(1764000000));
  RealRandom random;
  HomeEngine::Options options;
  options.folder = folder.path();
  options.store_key = std::string(kStoreKeyBytes, 'k');
  options.clock = &clock;
  options.random = &random;
  options.app_version = "bench";
  options.device_name = "bench";
  auto engine = HomeEngine::open(options);
  if (!engine.ok()) return state.SkipWithError(std::string(engine.status().message()).c_str());
  std::uint32_t sequence = 0;
  for (auto _ : state) {
    const auto status = (*engine)->appendJournal({line(++sequence)});
    if (!status.ok()) return state.SkipWithError(std::string(status.message()).c_str());
  }
  state.SetItemsProcessed(state.iterations());
}
BENCHMARK(journalAppend)->Unit(benchmark::kMicrosecond)->UseRealTime();

void bareSqliteCommit(benchmark::State& state) {
  const BenchFolder folder("sqlite");
  SQLite::Database database(folder.path() + "/bare.db", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
  database.exec("PRAGMA journal_mode=WAL");
  database.exec("PRAGMA synchronous=FULL");
  database.exec("CREATE TABLE line (sequence INTEGER PRIMARY KEY, content BLOB NOT NULL)");
  SQLite::Statement insert(database, "INSERT INTO line VALUES (?, ?)");
  std::uint32_t sequence = 1;
  for (auto _ : state) {
    const std::string bytes = toBytes(line(++sequence));
    insert.bind(1, static_cast<std::int64_t>(sequence));
    insert.bind(2, bytes.data(), static_cast<int>(bytes.size()));
    insert.exec();
    insert.reset();
  }
  state.SetItemsProcessed(state.iterations());
}
BENCHMARK(bareSqliteCommit)->Unit(benchmark::kMicrosecond)->UseRealTime();

void bareWriteAndSync(benchmark::State& state) {
  const BenchFolder folder("fsync");
  const int file = open((folder.path() + "/bare").c_str(), O_CREAT | O_WRONLY, 0600);
  const std::string bytes = toBytes(line(2));
  for (auto _ : state) {
    if (write(file, bytes.data(), bytes.size()) < 0 || fdatasync(file) != 0) {
      state.SkipWithError("the disk refused");
      break;
    }
  }
  close(file);
  state.SetItemsProcessed(state.iterations());
}
BENCHMARK(bareWriteAndSync)->Unit(benchmark::kMicrosecond)->UseRealTime();

}  // namespace
}  // namespace newel::bench
