// What it costs to write one person's year in an open format: six exercises three days a week, everything
// done. Wanted: the FHIR bundle at or under 100 ms.
#include <benchmark/benchmark.h>

#include "sync/export/calendar.h"
#include "sync/export/csv_tables.h"
#include "sync/export/fhir_bundle.h"
#include "sync/export/fhir_import.h"
#include "tests/sync/export/history_maker.h"

namespace newel::bench {
namespace {

constexpr int kEntries = 6;

void exportFhirOfAYear(benchmark::State& state) {
  const PersonHistory history = test::yearOfHistory(kEntries);
  std::size_t bytes = 0;
  for (auto _ : state) {
    const auto bundle = fhirBundle(history, {});
    if (!bundle.ok()) return state.SkipWithError("no bundle");
    bytes = bundle->size();
    benchmark::DoNotOptimize(bundle);
  }
  state.counters["practices"] = static_cast<double>(history.practices.size());
  state.counters["bytes"] = static_cast<double>(bytes);
}
BENCHMARK(exportFhirOfAYear)->Unit(benchmark::kMillisecond);

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
