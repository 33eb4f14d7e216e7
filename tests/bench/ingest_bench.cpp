// What it costs the hub to take practices, behind its network: who calls, the checks, the hash, the
// comparison, the durable commit. Beside it the bare engine's durable commit of the same bytes in the same
// batches on the same disk (bench_hub.h says what that is). The two take turns, so that a busy machine slows
// both. `of_bare` is the hub's rate over the bare one's; `of_bulk` over that of the engine's own way to take
// a batch at once.
#include <benchmark/benchmark.h>
#include <unistd.h>

#include <array>
#include <cstdio>
#include <fstream>
#include <thread>

#include "core/records/record_text.h"
#include "tests/bench/bench_hub.h"
#include "tests/bench/bench_records.h"
#include "tests/bench/bench_times.h"

namespace newel::bench {
namespace {

// Records a second: the hub's and the bare engine's.
struct Rates {
  double records = 0;
  double hub_seconds = 0;
  double bare_seconds = 0;
  double bulk_seconds = 0;

  void say(benchmark::State& state) const {
    state.counters["hub_per_s"] = records / hub_seconds;
    state.counters["bare_per_s"] = records / bare_seconds;
    state.counters["of_bare"] = bare_seconds / hub_seconds;
    state.counters["of_bulk"] = bulk_seconds / hub_seconds;
  }
};

// One phone, batches of range(0).
template <typename Where>
void hubOneCaller(benchmark::State& state) {
  Where place;
  BenchHub hub(place, 1);
  const auto bare = place.bare();
  const auto bulk_place = std::make_unique<Where>();
  const auto bulk = bulk_place->bare();
  Rates rates;
  Times times;
  double hub_cpu = 0;
  double bare_cpu = 0;
  for (auto _ : state) {
    const auto request = hub.offerOf(0, state.range(0));
    bool kept = false;
    const double taken = secondsOf([&] { hub_cpu += cpuSecondsOf([&] { kept = hub.take(0, request); }); });
    if (!kept) return state.SkipWithError("not kept");
    times.add(taken);
    rates.hub_seconds += taken;
    rates.bare_seconds += secondsOf([&] { bare_cpu += cpuSecondsOf([&] { bare->keep(request); }); });
    rates.bulk_seconds += secondsOf([&] { bulk->keepAtOnce(request); });
    state.SetIterationTime(taken);
  }
  rates.records = static_cast<double>(state.iterations() * state.range(0));
  rates.say(state);
  // This process's; a database server's own is not in it.
  state.counters["hub_cpu_us"] = hub_cpu / rates.records * 1e6;
  state.counters["bare_cpu_us"] = bare_cpu / rates.records * 1e6;
  times.say(state);
}
BENCHMARK(hubOneCaller<SqlitePlace>)->Arg(1)->Arg(10)->Arg(100)->UseManualTime()->Iterations(200);
BENCHMARK(hubOneCaller<PostgresPlace>)->Arg(1)->Arg(10)->Arg(100)->UseManualTime()->Iterations(200);

// range(0) phones at once, ten practices a call. Beside it the bare engine with one writer and the same
// batches, one durable commit each.
template <typename Where>
void hubManyCallers(benchmark::State& state) {
  constexpr std::int64_t kBatch = 10;
  constexpr std::int64_t kCalls = 1600;
  const auto phones = static_cast<std::size_t>(state.range(0));
  const std::size_t calls_each = kCalls / phones;
  Where place;
  BenchHub hub(place, static_cast<int>(phones));
  const auto bare = place.bare();
  const auto bulk_place = std::make_unique<Where>();
  const auto bulk = bulk_place->bare();
  Rates rates;
  Times times;
  std::atomic<bool> kept{true};
  for (auto _ : state) {
    std::vector<std::vector<v1::OfferRequest>> calls(phones);
    for (std::size_t p = 0; p < phones; ++p) {
      for (std::size_t c = 0; c < calls_each; ++c) calls[p].push_back(hub.offerOf(p, kBatch));
    }
    const double taken = secondsOf([&] {
      std::vector<std::thread> threads;
      for (std::size_t p = 0; p < phones; ++p) {
        threads.emplace_back([&, p] {
          for (const auto& call : calls[p]) times.add(secondsOf([&] { kept = hub.take(p, call) && kept; }));
        });
      }
      for (auto& thread : threads) thread.join();
    });
    for (const auto& phone : calls) {
      for (const auto& call : phone) {
        rates.bare_seconds += secondsOf([&] { bare->keep(call); });
        rates.bulk_seconds += secondsOf([&] { bulk->keepAtOnce(call); });
      }
    }
    rates.hub_seconds += taken;
    rates.records += static_cast<double>(phones * calls_each) * kBatch;
    state.SetIterationTime(taken);
  }
  if (!kept) return state.SkipWithError("not kept");
  rates.say(state);
  times.say(state);
}
BENCHMARK(hubManyCallers<SqlitePlace>)
    ->Arg(8)
    ->Arg(32)
    ->Arg(200)
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond)
    ->Iterations(1);
BENCHMARK(hubManyCallers<PostgresPlace>)
    ->Arg(8)
    ->Arg(32)
    ->Arg(200)
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond)
    ->Iterations(1);

// A hold order while two hundred phones upload without a pause, ten practices a call.
template <typename Where>
void hubHoldWhileUploading(benchmark::State& state) {
  constexpr std::size_t kPhones = 200;
  Where place;
  BenchHub hub(place, kPhones);
  Times uploads;
  Times holds;
  std::atomic<bool> stop{false};
  std::atomic<bool> kept{true};
  std::vector<std::thread> phones;
  for (std::size_t p = 0; p < kPhones; ++p) {
    phones.emplace_back([&, p] {
      while (!stop) {
        const auto request = hub.offerOf(p, 10);
        uploads.add(secondsOf([&] { kept = hub.take(p, request) && kept; }));
      }
    });
  }
  std::size_t person = 0;
  for (auto _ : state) {
    std::this_thread::sleep_for(std::chrono::milliseconds(20));
    const double taken = secondsOf([&] { kept = hub.hold(hub.personOf(person++ % kPhones)) && kept; });
    holds.add(taken);
    state.SetIterationTime(taken);
  }
  stop = true;
  for (auto& phone : phones) phone.join();
  if (!kept) return state.SkipWithError("not kept");
  holds.say(state, "hold_");
  uploads.say(state, "offer_");
}
BENCHMARK(hubHoldWhileUploading<SqlitePlace>)
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond)
    ->Iterations(200);
BENCHMARK(hubHoldWhileUploading<PostgresPlace>)
    ->UseManualTime()
    ->Unit(benchmark::kMillisecond)
    ->Iterations(200);

double residentMb() {
  std::ifstream status("/proc/self/statm");
  double all = 0;
  double resident = 0;
  status >> all >> resident;
  return resident * static_cast<double>(sysconf(_SC_PAGESIZE)) / 1e6;
}

// The hub's memory after twenty thousand and after a hundred thousand practices. That it stays flat is a
// test: FlatMemory, in sync_hub_test and sync_hub_postgres_test.
template <typename Where>
void hubMemory(benchmark::State& state) {
  constexpr std::size_t kPhones = 200;
  constexpr std::size_t kBatches = 1000;
  Where place;
  BenchHub hub(place, kPhones);
  for (auto _ : state) {
    for (std::size_t i = 0; i < kBatches; ++i) {
      if (!hub.take(i % kPhones, hub.offerOf(i % kPhones, 100))) return state.SkipWithError("not kept");
      if (i == kBatches / 5) state.counters["mb_at_20000"] = residentMb();
    }
    state.counters["mb_at_100000"] = residentMb();
  }
}
BENCHMARK(hubMemory<SqlitePlace>)->Iterations(1)->Unit(benchmark::kSecond)->UseRealTime();
BENCHMARK(hubMemory<PostgresPlace>)->Iterations(1)->Unit(benchmark::kSecond)->UseRealTime();

// PostgreSQL's own measure on this disk, from outside our program: the same columns, key and index, rows of
// the same size, range(0) clients, range(1) rows a commit.
void hubPgbench(benchmark::State& state) {
  auto& server = test::TestPostgres::server();
  const std::string database = server.newDatabase();
  server.sql(
      database,
      "CREATE SEQUENCE public.numbers; CREATE TABLE public.bare (id TEXT COLLATE \"C\" NOT NULL, revision "
      "BIGINT NOT NULL, person_id TEXT COLLATE \"C\" NOT NULL, device_id TEXT COLLATE \"C\" NOT NULL, "
      "content BYTEA NOT NULL, sha256 BYTEA NOT NULL, sequence BIGINT NOT NULL, at BIGINT NOT NULL, "
      "red_flag BIGINT NOT NULL, PRIMARY KEY (id, revision)); CREATE INDEX bare_person ON public.bare "
      "(person_id, sequence)");
  const BenchFolder folder("pgbench");
  const std::string script = folder.path() + "/insert.sql";
  const std::string bytes = std::to_string(toBytes(benchPractice(1)).size());
  std::ofstream(script) << "INSERT INTO public.bare SELECT lpad(nextval('public.numbers')::text, 36, '0'), "
                           "1, repeat('p', 36), repeat('d', 36), decode(repeat('5a', "
                        << bytes << "), 'hex'), decode(repeat('5a', 32), 'hex'), n, n, 0 FROM "
                        << "generate_series(1, " << state.range(1) << ") AS n;\n";
  const std::string clients = std::to_string(state.range(0));
  const std::string command = server.programs() + "/pgbench -n -M prepared -T 3 -c " + clients + " -j 2 -f " +
                              script + " '" + server.address(database) + "' 2>/dev/null";
  for (auto _ : state) {
    FILE* pipe = popen(command.c_str(), "r");
    std::array<char, 256> line{};
    while (pipe != nullptr && std::fgets(line.data(), line.size(), pipe) != nullptr) {
      double tps = 0;
      if (std::sscanf(line.data(), "tps = %lf", &tps) != 1) continue;
      state.counters["pgbench_tps"] = tps;
      state.counters["pgbench_per_s"] = tps * static_cast<double>(state.range(1));
    }
    if (pipe == nullptr || pclose(pipe) != 0) state.SkipWithError("pgbench did not run");
  }
  server.dropDatabase(database);
}
BENCHMARK(hubPgbench)
    ->Args({1, 1})
    ->Args({1, 10})
    ->Args({1, 100})
    ->Args({8, 1})
    ->Args({8, 10})
    ->Iterations(1)
    ->Unit(benchmark::kSecond)
    ->UseRealTime();

}  // namespace
}  // namespace newel::bench
