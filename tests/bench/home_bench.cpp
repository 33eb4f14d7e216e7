// What the phone's program costs beside the least that a Qt Quick Controls program can be (bare_window.cpp),
// as processes of their own, taking turns, offscreen with the software renderer. `ratio` is ours over the
// bare one's. With history: a store with a week's practices beside one with five years'.
#include <benchmark/benchmark.h>
#include <stdlib.h>

#include <algorithm>
#include <functional>
#include <limits>
#include <memory>
#include <thread>

#include "tests/bench/bench_program.h"
#include "tests/bench/bench_times.h"
#include "tests/bench/listening_phone.h"
#include "tests/bench/phone_folder.h"

namespace newel::bench {
namespace {

constexpr int kWeekOfPractices = 7;
constexpr int kFiveYearsOfPractices = 5 * 365;
constexpr std::chrono::seconds kIdle(10);
constexpr int kIdleSpans = 6;

// The environment of a phone with nobody around: no window system, no bus, no sound.
void prepareEnvironment() {
  setenv("QT_QPA_PLATFORM", "offscreen", 1);
  setenv("QT_QUICK_BACKEND", "software", 1);
  setenv("DBUS_SESSION_BUS_ADDRESS", "disabled:", 1);
}

std::unique_ptr<BenchProgram> phone(const PhoneFolder& folder) {
  return std::make_unique<BenchProgram>(std::vector<std::string>{
      NEWEL_BINARY_DIR "/bin/newel-home", "--data", folder.path(), "--key-in-file", "--drive", "-"});
}
std::unique_ptr<BenchProgram> bare() {
  return std::make_unique<BenchProgram>(std::vector<std::string>{NEWEL_BINARY_DIR "/bin/newel_bare_window"});
}

// Seconds from the start of the process until its first picture.
double shownAfter(std::unique_ptr<BenchProgram>& program,
                  const std::function<std::unique_ptr<BenchProgram>()>& start, const std::string& word) {
  return secondsOf([&] {
    program = start();
    if (!word.empty()) program->write(word);
    program->read();
  });
}

double medianOf(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  return values[values.size() / 2];
}

struct Starts {
  std::vector<double> seconds;
  std::vector<double> megabytes;

  void add(const std::function<std::unique_ptr<BenchProgram>()>& start, const std::string& word) {
    std::unique_ptr<BenchProgram> program;
    seconds.push_back(shownAfter(program, start, word));
    megabytes.push_back(program->memoryMb());
  }
};

// `one` and `other` take turns; `ratio` and `mb_ratio` are those of `one` over `other`.
void say(benchmark::State& state, const std::string& one_name, const Starts& one,
         const std::string& other_name, const Starts& other) {
  state.counters[one_name + "_ms"] = medianOf(one.seconds) * 1000;
  state.counters[other_name + "_ms"] = medianOf(other.seconds) * 1000;
  state.counters["ratio"] = medianOf(one.seconds) / medianOf(other.seconds);
  state.counters[one_name + "_mb"] = medianOf(one.megabytes);
  state.counters[other_name + "_mb"] = medianOf(other.megabytes);
  state.counters["mb_ratio"] = medianOf(one.megabytes) / medianOf(other.megabytes);
}

void homeStart(benchmark::State& state) {
  prepareEnvironment();
  const PhoneFolder week("week", kWeekOfPractices);
  Starts ours;
  Starts least;
  for (auto _ : state) {
    ours.add([&] { return phone(week); }, "frame");
    least.add(bare, "");
    state.SetIterationTime(ours.seconds.back());
  }
  say(state, "ours", ours, "bare", least);
}
BENCHMARK(homeStart)->UseManualTime()->Iterations(11)->Unit(benchmark::kMillisecond);

void homeStartWithFiveYears(benchmark::State& state) {
  prepareEnvironment();
  const PhoneFolder week("week", kWeekOfPractices);
  const PhoneFolder years("years", kFiveYearsOfPractices);
  Starts with_years;
  Starts with_week;
  for (auto _ : state) {
    with_years.add([&] { return phone(years); }, "frame");
    with_week.add([&] { return phone(week); }, "frame");
    state.SetIterationTime(with_years.seconds.back());
  }
  say(state, "years", with_years, "week", with_week);
}
BENCHMARK(homeStartWithFiveYears)->UseManualTime()->Iterations(11)->Unit(benchmark::kMillisecond);

// Nobody touches it and the clinic cannot be reached: how often it is woken up, and what the processor does
// for it, in ten seconds. Tries come a second apart at first and a minute apart later; the bench waits for
// the later ones (argument: seconds), and counts the quietest and the mean of six times ten seconds, so that
// a try is in it.
void countWakeUps(benchmark::State& state, const BenchProgram& ours, const BenchProgram& least) {
  std::this_thread::sleep_for(std::chrono::seconds(state.range(0)));
  for (auto _ : state) {
    const long bare_before = least.wakeUps();
    const double cpu_before = ours.processorSeconds();
    long fewest = std::numeric_limits<long>::max();
    long all = 0;
    for (int i = 0; i < kIdleSpans; ++i) {
      const long before = ours.wakeUps();
      std::this_thread::sleep_for(kIdle);
      // Threads that ended meanwhile take their counts with them: never less than none.
      const long count = std::max(0L, ours.wakeUps() - before);
      fewest = std::min(fewest, count);
      all += count;
    }
    state.counters["ours_between_tries"] = static_cast<double>(fewest);
    state.counters["ours_mean"] = static_cast<double>(all) / kIdleSpans;
    state.counters["bare_mean"] = static_cast<double>(least.wakeUps() - bare_before) / kIdleSpans;
    state.counters["ours_cpu_ms"] = (ours.processorSeconds() - cpu_before) * 1000 / kIdleSpans;
  }
}

void homeIdle(benchmark::State& state) {
  prepareEnvironment();
  const PhoneFolder week("week", kWeekOfPractices);
  const auto ours = phone(week);
  ours->ask("frame");
  const auto least = bare();
  least->read();
  countWakeUps(state, *ours, *least);
}
BENCHMARK(homeIdle)->Arg(3)->Arg(90)->Iterations(1)->UseRealTime()->Unit(benchmark::kSecond);

// The same with the clinic reached: a real hub over TLS, to which the phone holds its stream open.
void homeIdleListening(benchmark::State& state) {
  prepareEnvironment();
  const ListeningPhone listening;
  const auto ours = std::make_unique<BenchProgram>(std::vector<std::string>{
      NEWEL_BINARY_DIR "/bin/newel-home", "--data", listening.path(), "--key-in-file", "--drive", "-"});
  ours->ask("frame");
  const std::string reached = ours->ask("until problem \"\" 20000");
  if (reached != "ok") return state.SkipWithError(reached.c_str());
  const auto least = bare();
  least->read();
  countWakeUps(state, *ours, *least);
}
BENCHMARK(homeIdleListening)->Arg(3)->Arg(90)->Iterations(1)->UseRealTime()->Unit(benchmark::kSecond);

// From the finger's release to the picture that shows what it did.
void homeTap(benchmark::State& state) {
  prepareEnvironment();
  const PhoneFolder years("years", kFiveYearsOfPractices);
  const auto program = phone(years);
  program->ask("frame");
  Times times;
  const std::array<const char*, 4> taps = {"Help", "Back", "Settings", "Back"};
  std::size_t next = 0;
  for (auto _ : state) {
    const std::string answer = program->ask(std::string("time ") + taps[next++ % taps.size()]);
    if (answer.rfind("ok ", 0) != 0) return state.SkipWithError(answer.c_str());
    const double seconds = std::stod(answer.substr(3)) / 1000;
    times.add(seconds);
    state.SetIterationTime(seconds);
  }
  times.say(state, "tap_");
}
BENCHMARK(homeTap)->UseManualTime()->Iterations(200)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace newel::bench
