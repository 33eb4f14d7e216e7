// How late a cue is given: the program's own practice session, Qt's timers and the real clock, the phone's
// store on the disk, while another thread keeps a second core busy. Ideal instants are counted from the one
// moment at which an exercise was started, so that what drifts shows. Three minutes; NEWEL_CUE_MINUTES=60 for
// the whole hour; NEWEL_CUE_IDLE=1 where the machine is kept busy from outside.
#include <benchmark/benchmark.h>

#include <QtCore/QCoreApplication>
#include <QtCore/QTimer>
#include <algorithm>
#include <atomic>
#include <memory>
#include <thread>

#include "platform/clock.h"
#include "platform/fake/recorded_reminders.h"
#include "platform/fake/recorded_resident.h"
#include "platform/fake/recorded_sound.h"
#include "qml/home/current_content.h"
#include "qml/home/facts_for_pages.h"
#include "qml/home/practice_session.h"
#include "tests/bench/bench_times.h"
#include "tests/bench/needs_application.h"
#include "tests/bench/phone_folder.h"
#include "tests/core/practice/steady_person.h"

namespace newel::bench {
namespace {

constexpr int kMinutes = 3;

// Keeps the instant at which each tone was asked for beside the instant at which it should have been.
class TimedTones : public platform::Tones {
 public:
  std::string whyNot() const override { return ""; }
  void warm(bool) override {}
  void play(platform::Tone) override {
    const Player* const player = session->run() == nullptr ? nullptr : session->run()->player();
    if (player == nullptr || player->state() != PlayerState::Running) return;
    const absl::Duration now = session->now();
    if (player->beat() != m_beat || !m_any) {
      m_any = true;
      m_beat = player->beat();
      m_due = dueIn(player->timeline(), m_beat);
    }
    if (m_due.empty()) return;
    late.push_back(now - begun - m_due.front());
    m_due.erase(m_due.begin());
  }
  void entryBegins() {
    begun = session->now();
    m_any = false;
  }

  const home::PracticeSession* session = nullptr;
  absl::Duration begun;
  std::vector<absl::Duration> late;

 private:
  // Since the start of the exercise, in order.
  static std::vector<absl::Duration> dueIn(const v1::Timeline& timeline, std::uint32_t index) {
    const v1::Beat& beat = timeline.beats(static_cast<int>(index));
    std::vector<absl::Duration> due;
    for (const home::Cue& cue : home::cuesOf(timeline, index, {})) {
      if (!cue.sounds) continue;
      const std::int64_t into = cue.from_end ? beat.length_ms() - cue.offset_ms : cue.offset_ms;
      due.push_back(absl::Milliseconds(beat.start_ms() + into));
    }
    std::sort(due.begin(), due.end());
    return due;
  }
  bool m_any = false;
  std::uint32_t m_beat = 0;
  std::vector<absl::Duration> m_due;
};

// Does at each step what a person who is well does; the exercises are led by the session alone.
void goOn(home::PracticeSession& session, TimedTones& tones, const std::vector<Occasion>& due) {
  if (!session.active()) return must(session.begin(due));
  const PracticeRun& at = *session.run();
  if (at.step() == RunStep::Closed) return session.leave();
  if (at.step() == RunStep::Playing && at.player()->state() != PlayerState::WaitingTap) return;
  if (at.step() == RunStep::Ready) tones.entryBegins();
  session.apply([](PracticeRun& run, absl::Time wall, absl::Duration now) {
    // What waits for a tap has no ideal instant from here on.
    if (run.step() == RunStep::Playing) return run.skipEntry(v1::STOP_REASON_INTERRUPTED, "", wall, now);
    return test::goOn(run, {}, wall, now);
  });
}

double milliseconds(absl::Duration length) { return absl::ToDoubleMilliseconds(length); }

double medianOf(std::vector<absl::Duration> lengths) {
  if (lengths.empty()) return 0;
  std::sort(lengths.begin(), lengths.end());
  return milliseconds(lengths[lengths.size() / 2]);
}

void homeCues(benchmark::State& state) {
  needApplication();
  const char* const asked = getenv("NEWEL_CUE_MINUTES");
  const int minutes = asked == nullptr ? kMinutes : std::max(1, atoi(asked));
  const PhoneFolder folder("cues", 7);
  const auto clock = platform::makeSystemClock();
  RealRandom random;
  platform::MemorySecretStore none;
  none.there = false;
  tests::PaperClinic clinic;
  HomeEngine::Options options;
  options.folder = folder.path();
  options.store_key = *home::storeKey(folder.path(), none, random, [] { return true; });
  options.clock = clock.get();
  options.random = &random;
  options.app_version = "bench";
  options.network = &clinic;
  auto engine = HomeEngine::open(options);
  must(engine.status());
  TimedTones tones;
  platform::RecordedSpeech speech;
  platform::RecordedVibration vibration;
  platform::RecordedStayAwake awake;
  platform::FixedWishes wishes;
  home::HomeParts parts;
  parts.engine = engine->get();
  parts.clock = clock.get();
  parts.speech = &speech;
  parts.tones = &tones;
  parts.vibration = &vibration;
  parts.stay_awake = &awake;
  parts.wishes = &wishes;
  parts.zone = [] { return std::string("Etc/UTC"); };
  home::CurrentContent content(parts);
  home::PracticeSession session(parts);
  tones.session = &session;
  const auto due = dueOn(*(*engine)->programme(), home::todayOf(parts), {});
  if (due.empty()) return state.SkipWithError("nothing is due");
  std::atomic<bool> stop = false;
  // Not where the machine is kept busy from outside.
  const bool idle = getenv("NEWEL_CUE_IDLE") != nullptr;
  std::thread busy([&stop, idle] {
    while (!stop && !idle) benchmark::DoNotOptimize(stop);
  });
  for (auto _ : state) {
    QTimer steps;
    QObject::connect(&steps, &QTimer::timeout, &steps, [&] { goOn(session, tones, due); });
    steps.start(50);
    QTimer::singleShot(std::chrono::minutes(minutes), QCoreApplication::instance(), &QCoreApplication::quit);
    QCoreApplication::exec();
  }
  stop = true;
  busy.join();
  Times times;
  double most = 0;
  for (const absl::Duration late : tones.late) {
    times.add(absl::ToDoubleSeconds(late));
    most = std::max(most, milliseconds(late));
  }
  times.say(state, "late_");
  state.counters["late_max_ms"] = most;
  state.counters["cues"] = static_cast<double>(tones.late.size());
  state.counters["minutes"] = minutes;
  const auto quarter = static_cast<std::ptrdiff_t>(tones.late.size() / 4);
  state.counters["drift_ms"] = medianOf({tones.late.end() - quarter, tones.late.end()}) -
                               medianOf({tones.late.begin(), tones.late.begin() + quarter});
}
BENCHMARK(homeCues)->Iterations(1)->UseRealTime()->Unit(benchmark::kSecond);

}  // namespace
}  // namespace newel::bench
