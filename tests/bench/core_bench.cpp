// What the core costs: a timeline, a year of occasions (beside libical for the same rule in the same run), a
// programme's review.
#include <benchmark/benchmark.h>
#include <libical/ical.h>

#include "core/library/catalogue.h"
#include "core/practice/compile.h"
#include "core/review/review.h"
#include "core/schedule/occasions.h"
#include "tests/bench/bench_records.h"

namespace newel::bench {
namespace {

void compileStairs(benchmark::State& state) {
  const auto person = benchPerson();
  const auto entry = benchEntry("stairs-one-at-a-time", 0);
  for (auto _ : state) {
    auto timeline = compileTimeline(entry, person, Catalogue::builtIn(), "en");
    if (!timeline.ok()) return state.SkipWithError("does not compile");
    benchmark::DoNotOptimize(timeline);
  }
}
BENCHMARK(compileStairs)->Unit(benchmark::kMicrosecond);

void occasionsOfAYearTenEntries(benchmark::State& state) {
  const auto programme = benchProgramme(10);
  std::size_t count = 0;
  for (auto _ : state) {
    const auto occasions = occasionsOf(programme, absl::CivilDay(2026, 1, 1), absl::CivilDay(2026, 12, 31));
    if (!occasions.ok()) return state.SkipWithError("no occasions");
    count = occasions->size();
    benchmark::DoNotOptimize(occasions);
  }
  state.counters["occasions"] = static_cast<double>(count);
}
BENCHMARK(occasionsOfAYearTenEntries)->Unit(benchmark::kMicrosecond);

// The floor's rival: the same Monday, Wednesday, Friday rule ten times through libical's iterator.
void libicalSameRuleTenTimes(benchmark::State& state) {
  std::size_t count = 0;
  for (auto _ : state) {
    count = 0;
    for (int entry = 0; entry < 10; ++entry) {
      const auto rule = icalrecurrencetype_from_string("FREQ=WEEKLY;BYDAY=MO,WE,FR;UNTIL=20261231T235959");
      icalrecur_iterator* iterator = icalrecur_iterator_new(rule, icaltime_from_string("20260102T090000"));
      for (auto next = icalrecur_iterator_next(iterator); !icaltime_is_null_time(next);
           next = icalrecur_iterator_next(iterator)) {
        ++count;
      }
      icalrecur_iterator_free(iterator);
    }
    benchmark::DoNotOptimize(count);
  }
  state.counters["occasions"] = static_cast<double>(count);
}
BENCHMARK(libicalSameRuleTenTimes)->Unit(benchmark::kMicrosecond);

void reviewOfAProgramme(benchmark::State& state) {
  const auto person = benchPerson();
  const auto programme = benchProgramme(6);
  for (auto _ : state) {
    auto review =
        reviewProgramme(programme, person, nullptr, Catalogue::builtIn(), RuleBook::builtIn(), "en");
    if (!review.ok()) return state.SkipWithError("no review");
    benchmark::DoNotOptimize(review);
  }
}
BENCHMARK(reviewOfAProgramme)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace newel::bench
