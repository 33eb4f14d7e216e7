// What it costs to write one person's year in an open format: six exercises three days a week, everything
// done. Wanted: the FHIR bundle at or under 100 ms.
#include <benchmark/benchmark.h>

#include <algorithm>
#include <vector>

#include "core/time/local_day.h"
#include "sync/export/calendar.h"
#include "sync/export/csv_tables.h"
#include "sync/export/fhir_bundle.h"
#include "sync/export/fhir_import.h"
#include "tests/bench/bench_records.h"
#include "tests/bench/bench_times.h"
#include "tests/sync/export/history_maker.h"

namespace newel::bench {
namespace {

constexpr int kEntries = 6;

// Beside what was practised: a wear plan with a block worn each day, a phone, and as many lines of the trail
// as a year of weekly looks and changes may leave.
PersonHistory fullYear(int entries) {
  PersonHistory history = test::yearOfHistory(entries);
  v1::Programme& programme = history.programmes[0].programme;
  v1::WearPlan& plan = *programme.mutable_wear_plan();
  plan.set_id(benchId(1));
  plan.set_number(1);
  plan.set_person_id(programme.person_id());
  plan.set_clinic_id(programme.clinic_id());
  plan.set_signer_id(programme.signer_id());
  plan.set_signer_name("Invented Therapist");
  *plan.mutable_issued_at() = programme.issued_at();
  plan.set_effective_day(programme.effective_day());
  plan.set_zone(programme.zone());
  plan.set_redness_min(10);
  plan.set_redness_action(v1::REDNESS_ACTION_STAY_OFF);
  for (std::uint32_t i = 0; i < 10; ++i) {
    v1::WearStep& step = *plan.add_steps();
    step.set_days(14);
    step.set_blocks(1);
    step.set_block_min(60 + 30 * i);
  }
  for (int i = 0; i < 364; ++i) {
    v1::WearBlock& block = history.wear_blocks.emplace_back();
    block.set_id(benchId(static_cast<std::uint64_t>(1000 + i)));
    block.set_revision(1);
    block.set_person_id(programme.person_id());
    const absl::Time on = history.as_of - absl::Hours(24) * (364 - i);
    block.set_local_day(localDayOf(history, on));
    block.set_zone(programme.zone());
    *block.mutable_put_on_at() = toTimestamp(on);
    *block.mutable_taken_off_at() = toTimestamp(on + absl::Minutes(60 + 30 * std::min(9, i / 14)));
    block.mutable_check()->add_signs(v1::SKIN_SIGN_CLEAR);
    block.set_origin(v1::ORIGIN_TIMED_HERE);
  }
  history.phones.push_back({benchId(2), "phone", "bench", history.as_of, history.as_of, false});
  for (std::uint64_t n = 1; n <= 400; ++n) {
    history.audit.push_back(
        {n, history.as_of - absl::Hours(20 * n), "person.see", AuditLine::Who::Account, benchId(3), "", ""});
  }
  return history;
}

// `of_linear` at more than three entries: the time for each byte over that at three in the same run; over 1
// is worse than linear.
void exportFhirOfAYear(benchmark::State& state) {
  static double at_three = 0;
  const PersonHistory history = fullYear(static_cast<int>(state.range(0)));
  std::size_t bytes = 0;
  std::vector<double> times;
  for (auto _ : state) {
    const double took = secondsOf([&] {
      const auto bundle = fhirBundle(history, {});
      if (bundle.ok()) bytes = bundle->size();
      benchmark::DoNotOptimize(bundle);
    });
    times.push_back(took);
    state.SetIterationTime(took);
  }
  if (bytes == 0) return state.SkipWithError("no bundle");
  std::sort(times.begin(), times.end());
  const double each = times[times.size() / 2] / static_cast<double>(bytes);
  if (state.range(0) == 3) at_three = each;
  if (at_three > 0) state.counters["of_linear"] = each / at_three;
  state.counters["p50_ms"] = times[times.size() / 2] * 1000;
  state.counters["practices"] = static_cast<double>(history.practices.size());
  state.counters["bytes"] = static_cast<double>(bytes);
}
BENCHMARK(exportFhirOfAYear)->Arg(3)->Arg(6)->Arg(12)->UseManualTime()->Unit(benchmark::kMillisecond);

void exportCalendarOfAYear(benchmark::State& state) {
  const PersonHistory history = test::yearOfHistory(kEntries);
  for (auto _ : state) {
    const auto text = calendarOf(history, {});
    if (!text.ok()) return state.SkipWithError("no calendar");
    benchmark::DoNotOptimize(text);
  }
}
BENCHMARK(exportCalendarOfAYear)->Unit(benchmark::kMillisecond);

void exportCsvOfAYear(benchmark::State& state) {
  const PersonHistory history = test::yearOfHistory(kEntries);
  for (auto _ : state) {
    const auto tables = csvTables(history, {});
    if (!tables.ok()) return state.SkipWithError("no tables");
    benchmark::DoNotOptimize(tables);
  }
}
BENCHMARK(exportCsvOfAYear)->Unit(benchmark::kMillisecond);

void importFhirOfAYear(benchmark::State& state) {
  const auto bundle = fhirBundle(test::yearOfHistory(kEntries), {});
  for (auto _ : state) {
    const auto import = importFhir(*bundle);
    if (!import.ok()) return state.SkipWithError("no import");
    benchmark::DoNotOptimize(import);
  }
}
BENCHMARK(importFhirOfAYear)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace newel::bench
