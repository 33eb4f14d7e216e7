// How smoothly the attention list of the desk's program scrolls: the longest time between two pictures of
// each turn of the wheel, with few persons and with ten thousand, offscreen with the software renderer. A
// picture is due every 16.7 ms; `persons_ratio` is ten thousand's p99 over that of a hundred, in the same
// run.
#include <benchmark/benchmark.h>
#include <stdlib.h>

#include <memory>

#include "sync/common/text_codes.h"
#include "tests/bench/bench_folder.h"
#include "tests/bench/bench_program.h"
#include "tests/bench/bench_times.h"
#include "tests/bench/phone_folder.h"
#include "tests/sync/common/many_persons.h"
#include "tests/sync/common/test_clinic.h"

namespace newel::bench {
namespace {

constexpr int kFew = 100;
constexpr int kMany = 10000;
constexpr int kTurnsBeforeBack = 4;  // the shorter list has no more

// The desk's program, signed in, with its list read to the end.
class OpenList {
 public:
  explicit OpenList(int persons) : m_folder("desk-" + std::to_string(persons)) {
    must(m_clinic.hub()
             .accounts()
             .add("l.lead", "Lee Lead (invented)", v1::ROLE_LEAD, test::kPassword)
             .status());
    must(test::addPersons(m_clinic.store(), persons));
    m_desk = std::make_unique<BenchProgram>(std::vector<std::string>{
        NEWEL_BINARY_DIR "/bin/newel-desk", "--data", m_folder.path(), "--hub", m_clinic.address(),
        "--fingerprint", toHex(m_clinic.hub().clinic().certificate_sha256), "--drive", "-"});
    for (const std::string& command :
         {std::string("wait \"User name\""), std::string("type \"User name\" l.lead"),
          std::string("type Password \"") + test::kPassword + "\"", std::string("click \"Sign in\""),
          std::string("until page CaseloadPage 30000"), std::string("until idle true 60000"),
          std::string("sleep 1000")}) {
      if (const std::string answer = m_desk->ask(command); answer != "ok")
        m_problem = command + ": " + answer;
    }
  }
  const std::string& problem() const { return m_problem; }

  // Milliseconds; less than none when it did not move.
  double turn(int notches) {
    const std::string answer = m_desk->ask("turn \"People, most urgent first\" " + std::to_string(notches));
    return answer.rfind("ok ", 0) == 0 ? std::stod(answer.substr(3)) : -1;
  }

 private:
  BenchFolder m_folder;
  test::TestClinic m_clinic;
  std::unique_ptr<BenchProgram> m_desk;
  std::string m_problem;
};

// Seconds, all together.
double turn(OpenList& list, int count, Times& times) {
  double all = 0;
  for (int i = 0; i < count; ++i) {
    const double seconds = list.turn(i / kTurnsBeforeBack % 2 == 0 ? 3 : -3) / 1000;
    if (seconds < 0) continue;  // at an end already
    times.add(seconds);
    all += seconds;
  }
  return all;
}

void deskScroll(benchmark::State& state) {
  setenv("QT_QPA_PLATFORM", "offscreen", 1);
  setenv("QT_QUICK_BACKEND", "software", 1);
  setenv("DBUS_SESSION_BUS_ADDRESS", "disabled:", 1);
  setenv("NEWEL_WINDOW_SIZE", "1280x720", 1);
  OpenList few(kFew);
  OpenList many(kMany);
  for (const OpenList* list : {&few, &many}) {
    if (!list->problem().empty()) return state.SkipWithError(list->problem().c_str());
  }
  for (auto _ : state) {
    Times with_few;
    turn(few, 60, with_few);
    Times with_many;
    state.SetIterationTime(turn(many, 120, with_many));
    with_many.say(state, "gap_");
    state.counters["persons_ratio"] = with_many.p99() / with_few.p99();
  }
}
BENCHMARK(deskScroll)->UseManualTime()->Iterations(1)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace newel::bench
