// What the phone's program costs beside the least that a Qt Quick Controls program can be (bare_window.cpp),
// as processes of their own, taking turns, offscreen with the software renderer. `ratio` is ours over the
// bare one's. With history: a store with a week's practices beside one with five years'.
#include <benchmark/benchmark.h>
#include <stdlib.h>

#include <functional>
#include <memory>
#include <stdexcept>
#include <thread>

#include "core/records/uuid7.h"
#include "core/time/local_day.h"
#include "platform/fake/memory_secret_store.h"
#include "qml/home/store_key.h"
#include "sync/common/real_random.h"
#include "tests/bench/bench_folder.h"
#include "tests/bench/bench_program.h"
#include "tests/bench/bench_records.h"
#include "tests/bench/bench_times.h"
#include "tests/qml/home/paper_clinic.h"

namespace newel::bench {
namespace {

constexpr int kWeekOfPractices = 7;
constexpr int kFiveYearsOfPractices = 5 * 365;
constexpr std::chrono::seconds kIdle(10);

void must(const absl::Status& status) {
  if (!status.ok()) throw std::runtime_error(std::string(status.message()));
}

// The environment of a phone with nobody around: no window system, no bus, no sound.
void prepareEnvironment() {
  setenv("QT_QPA_PLATFORM", "offscreen", 1);
  setenv("QT_QUICK_BACKEND", "software", 1);
  setenv("DBUS_SESSION_BUS_ADDRESS", "disabled:", 1);
}

// A phone's folder: paired with an invented clinic, a programme of three, and `practices` behind it, one a
// day up to yesterday, all of them with the clinic already.
class PhoneFolder {
 public:
  explicit PhoneFolder(const std::string& name, int practices) : m_folder("home-" + name) {
    tests::PaperClinic clinic;
    RealRandom random;
    platform::MemorySecretStore none;
    none.there = false;
    const absl::Time now = absl::Now();
    SimulatedClock clock(now);
    const auto key = home::storeKey(m_folder.path(), none, random, [] { return true; });
    must(key.status());
    HomeEngine::Options options;
    options.folder = m_folder.path();
    options.store_key = *key;
    options.clock = &clock;
    options.random = &random;
    options.app_version = "bench";
    options.device_name = "bench";
    options.network = &clinic;
    auto engine = HomeEngine::open(options);
    must(engine.status());
    clinic.put(tests::inventedProgramme(1, {"sit-to-stand", "stairs-one-at-a-time", "face-down-lying"}));
    must((*engine)->pair({"clinic.example", 7443, std::string(32, '\x5a'), tests::PaperClinic::kCode}));
    must((*engine)->syncOnce());
    const std::string person = (*engine)->person()->id();
    for (int i = practices; i > 0; --i) {
      v1::Practice practice = benchPractice(static_cast<std::uint64_t>(i));
      const absl::Time begun = now - absl::Hours(24) * i;
      const std::string day = formatLocalDay(absl::ToCivilDay(begun, absl::UTCTimeZone()));
      practice.set_id(makeUuid7(absl::ToUnixMillis(begun), {}));
      practice.set_person_id(person);
      practice.set_local_day(day);
      for (auto& done : *practice.mutable_entries()) done.mutable_occasion()->set_local_day(day);
      *practice.mutable_started_at() = toTimestamp(begun);
      *practice.mutable_ended_at() = toTimestamp(begun + absl::Minutes(20));
      must((*engine)->closePractice(practice));
    }
    while ((*engine)->state().queued > 0) must((*engine)->syncOnce());
  }
  std::string path() const { return m_folder.path(); }

 private:
  BenchFolder m_folder;
};

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

// Nobody touches it: how often it is woken up, and what the processor does for it, in ten seconds.
void homeIdle(benchmark::State& state) {
  prepareEnvironment();
  const PhoneFolder week("week", kWeekOfPractices);
  const auto ours = phone(week);
  ours->ask("frame");
  const auto least = bare();
  least->read();
  std::this_thread::sleep_for(std::chrono::seconds(3));  // what begins with a start is over
  for (auto _ : state) {
    const long ours_before = ours->wakeUps();
    const long bare_before = least->wakeUps();
    const double cpu_before = ours->processorSeconds();
    std::this_thread::sleep_for(kIdle);
    state.counters["ours_wakeups"] = static_cast<double>(ours->wakeUps() - ours_before);
    state.counters["bare_wakeups"] = static_cast<double>(least->wakeUps() - bare_before);
    state.counters["ours_cpu_ms"] = (ours->processorSeconds() - cpu_before) * 1000;
  }
}
BENCHMARK(homeIdle)->Iterations(1)->UseRealTime()->Unit(benchmark::kSecond);

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
