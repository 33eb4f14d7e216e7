// What a handout of eight exercises costs as a PDF, beside the floor: as many pages of plain text through the
// same writer.
#include <benchmark/benchmark.h>

#include <QtCore/QTemporaryDir>
#include <cstdlib>

#include "qml/print/handout.h"
#include "qml/print/paper.h"
#include "tests/bench/needs_application.h"
#include "tests/core/people/sample_people.h"

namespace newel::bench {
namespace {

print::HandoutInput eightExercises(const char* language) {
  print::HandoutInput input;
  input.person = test::transtibialRight();
  input.person.set_language(language);
  std::vector<v1::Entry> entries;
  for (const char* id : {"sit-to-stand", "weight-shift-side", "quad-set", "face-down-lying",
                         "stairs-one-at-a-time", "tandem-stance", "side-stepping", "walking-programme"})
    entries.push_back(test::entryOf(id, input.person, 300 + entries.size()));
  input.programme = test::programmeOf(input.person, entries);
  input.programme.set_end_day("2026-11-29");
  input.name = QStringLiteral("Sample (invented)");
  input.clinic.set_clinic_id(test::idOf(2000));
  input.clinic.set_name("Clinic (invented)");
  input.clinic.set_phone("555 0100");
  input.clinic.set_emergency_number("112");
  return input;
}

void handoutPdf(benchmark::State& state, const char* language, print::HandoutLayout layout, double body_pt) {
  needApplication();
  const QTemporaryDir folder;
  const print::HandoutInput input = eightExercises(language);
  print::HandoutOptions options;
  options.layout = layout;
  options.body_pt = body_pt;
  int pages = 0;
  for (auto _ : state) {
    const auto written = print::writeHandout(input, options, Catalogue::builtIn(), RuleBook::builtIn(),
                                             folder.filePath(QStringLiteral("handout.pdf")));
    if (!written.ok()) std::abort();
    pages = *written;
  }
  state.counters["pages"] = pages;
}
BENCHMARK_CAPTURE(handoutPdf, roomy, "en", print::HandoutLayout::Roomy, print::kBodyPt)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(handoutPdf, compact, "en", print::HandoutLayout::Compact, print::kBodyPt)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(handoutPdf, large_print, "es", print::HandoutLayout::Roomy, print::kLargePrintPt)
    ->Unit(benchmark::kMillisecond);

void handoutFloor(benchmark::State& state) {
  needApplication();
  const QTemporaryDir folder;
  const QString page =
      QStringLiteral("<p>Stand tall. Both feet stay flat. Come back to the middle.</p>").repeated(30);
  for (auto _ : state) {
    print::Paper paper({});
    for (int i = 0; i < 11; ++i) {
      paper.newPage();
      paper.add(page);
    }
    if (!paper.write(folder.filePath(QStringLiteral("plain.pdf"))).ok()) std::abort();
  }
}
BENCHMARK(handoutFloor)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace newel::bench
