// A clinic's morning over the network: two hundred phones at one hub at once, TLS, a token each, all of it in
// this process, so that what the phones cost is in the figures too.
#include <benchmark/benchmark.h>

#include <thread>

#include "sync/hub/hub_server.h"
#include "tests/bench/bench_hub.h"
#include "tests/bench/bench_times.h"
#include "tests/sync/common/many_phones.h"

namespace newel::bench {
namespace {

constexpr int kPhones = 200;
constexpr std::int64_t kBatch = 10;

// What the network answered.
struct Tally {
  Times offers;
  std::atomic<std::uint64_t> records{0};
  std::atomic<std::uint64_t> errors{0};
};

void offerOnce(const test::NetPhone& phone, std::atomic<std::uint64_t>& numbers, Tally& tally) {
  const auto request = offerOf(numbers, kBatch, phone.person_id);
  bool kept = false;
  tally.offers.add(secondsOf([&] { kept = allKept(phone.offer(request)); }));
  if (kept) {
    tally.records += kBatch;
  } else {
    ++tally.errors;
  }
}

template <typename Body>
void onEach(const std::vector<test::NetPhone>& phones, Body body) {
  std::vector<std::thread> threads;
  for (const auto& phone : phones) threads.emplace_back([&] { body(phone); });
  for (auto& thread : threads) thread.join();
}

// Each phone connects, offers ten times ten practices and fetches; connecting is timed apart.
template <typename Where>
void hubPhonesOverTls(benchmark::State& state) {
  constexpr int kCalls = 10;
  Where place;
  BenchHub hub(place, 0);
  const auto server = HubServer::start(&hub.hub(), {});
  if (!server.ok()) return state.SkipWithError("the hub does not serve");
  std::atomic<std::uint64_t> numbers{0};
  Tally tally;
  Times connects;
  double seconds = 0;
  for (auto _ : state) {
    const auto phones =
        test::manyPhones(hub.hub(), "127.0.0.1:" + std::to_string((*server)->port()), kPhones);
    onEach(phones, [&](const test::NetPhone& phone) {
      connects.add(secondsOf([&] {
        if (!phone.connect()) ++tally.errors;
      }));
    });
    const double taken = secondsOf([&] {
      onEach(phones, [&](const test::NetPhone& phone) {
        for (int i = 0; i < kCalls; ++i) offerOnce(phone, numbers, tally);
        v1::FetchRequest fetch;
        fetch.set_limit(100);
        if (!phone.fetch(fetch).ok()) ++tally.errors;
      });
    });
    seconds += taken;
    state.SetIterationTime(taken);
  }
  tally.offers.say(state);
  connects.say(state, "connect_");
  state.counters["hub_per_s"] = static_cast<double>(tally.records) / seconds;
  state.counters["errors"] = static_cast<double>(tally.errors);
  if (tally.errors > 0) state.SkipWithError("there were errors");
}
BENCHMARK(hubPhonesOverTls<SqlitePlace>)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(1);
BENCHMARK(hubPhonesOverTls<PostgresPlace>)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(1);

// The same phones without a pause, and hold orders to one of them that listens: from the therapist's word to
// the phone's ear.
template <typename Where>
void hubHoldOverTls(benchmark::State& state) {
  Where place;
  BenchHub hub(place, 1);
  const auto server = HubServer::start(&hub.hub(), {});
  if (!server.ok()) return state.SkipWithError("the hub does not serve");
  std::atomic<std::uint64_t> numbers{0};
  Tally tally;
  const auto phones = test::manyPhones(hub.hub(), "127.0.0.1:" + std::to_string((*server)->port()), kPhones);
  std::atomic<bool> stop{false};
  std::thread uploads([&] {
    onEach(phones, [&](const test::NetPhone& phone) {
      while (!stop) offerOnce(phone, numbers, tally);
    });
  });
  const test::NetPhone& one = phones.front();
  if (!one.connect()) ++tally.errors;
  grpc::ClientContext context;
  context.AddMetadata("authorization", "Bearer " + one.token);
  v1::ListenRequest listen;
  listen.set_app_version("bench");
  const auto stream = one.stub->Listen(&context, listen);
  v1::Nudge nudge;
  bool open = stream->Read(&nudge);  // the nudge that says it is open
  Times holds;
  for (auto _ : state) {
    std::this_thread::sleep_for(std::chrono::milliseconds(20));
    const double taken = secondsOf([&] {
      if (!hub.hold(one.person_id)) ++tally.errors;
      do {
        open = open && stream->Read(&nudge);
      } while (open && !nudge.has_hold_order());
    });
    if (!open) ++tally.errors;
    holds.add(taken);
    state.SetIterationTime(taken);
  }
  context.TryCancel();
  while (stream->Read(&nudge)) {
  }
  stream->Finish();
  stop = true;
  uploads.join();
  holds.say(state, "hold_");
  tally.offers.say(state, "offer_");
  state.counters["errors"] = static_cast<double>(tally.errors);
  if (tally.errors > 0) state.SkipWithError("there were errors");
}
BENCHMARK(hubHoldOverTls<SqlitePlace>)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(100);
BENCHMARK(hubHoldOverTls<PostgresPlace>)->UseManualTime()->Unit(benchmark::kMillisecond)->Iterations(100);

}  // namespace
}  // namespace newel::bench
