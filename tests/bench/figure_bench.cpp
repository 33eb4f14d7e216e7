// What one picture costs: posing and drawing (core/figure), and painting it on a screen of 720x1280 in
// software beside clearing that screen (the floor of anything that paints).
#include <benchmark/benchmark.h>

#include <QtGui/QGuiApplication>
#include <QtGui/QImage>
#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <vector>

#include "core/figure/figure.h"
#include "qml/paint/drawing_painter.h"
#include "tests/bench/needs_application.h"

namespace newel::bench {
namespace {

constexpr int kWidth = 720;
constexpr int kHeight = 1280;
// The figure's pane on the practice screen of a phone of 360x640 at two pixels a dp, without buttons.
constexpr int kPaneWidth = 576;
constexpr int kPaneHeight = 440;
// The exercise with the most to draw: stairs without end and two rails.
constexpr char kHeaviest[] = "stairs-one-at-a-time";

Figure figureOf(const char* exercise) {
  FigureBody body;
  body.left.level = v1::LIMB_LOSS_LEVEL_TRANSFEMORAL;
  body.left.knee = v1::KNEE_KIND_YIELDING;
  body.left.prosthesis_on = true;
  auto figure = Figure::make(exercise, body);
  if (!figure.ok()) std::abort();
  return *std::move(figure);
}

QImage screen(int width = kWidth, int height = kHeight) {
  QImage image(width, height, QImage::Format_RGB32);
  image.fill(Qt::white);
  return image;
}

void figureMake(benchmark::State& state) {
  for (auto _ : state) {
    Figure figure = figureOf(kHeaviest);
    benchmark::DoNotOptimize(figure);
  }
}
BENCHMARK(figureMake)->Unit(benchmark::kMillisecond);

void figurePoseAndDraw(benchmark::State& state) {
  Figure figure = figureOf(kHeaviest);
  double at = 0;
  for (auto _ : state) {
    at = at + 0.0037 < 1 ? at + 0.0037 : 0;
    benchmark::DoNotOptimize(figure.draw(figure.momentOfRun(at)));
  }
}
BENCHMARK(figurePoseAndDraw)->Unit(benchmark::kMicrosecond);

void screenClear(benchmark::State& state) {
  QImage image = screen();
  for (auto _ : state) {
    image.fill(Qt::white);
    benchmark::DoNotOptimize(image.bits());
  }
}
BENCHMARK(screenClear)->Unit(benchmark::kMicrosecond);

// Pose, drawing and painting of one frame; the slowest of a hundred is a counter of its own.
void figureFrame(benchmark::State& state, const char* exercise, int width, int height) {
  needApplication();
  Figure figure = figureOf(exercise);
  paint::DrawingPainter painter;
  QImage image = screen(width, height);
  std::vector<double> times;
  double at = 0;
  for (auto _ : state) {
    const auto begin = std::chrono::steady_clock::now();
    at = at + 0.0037 < 1 ? at + 0.0037 : 0;
    QPainter to(&image);
    to.fillRect(image.rect(), Qt::white);
    painter.paint(to, figure.draw(figure.momentOfRun(at)), image.rect());
    to.end();
    times.push_back(
        std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count());
  }
  std::sort(times.begin(), times.end());
  state.counters["p99_ms"] = times[times.size() * 99 / 100];
}
BENCHMARK_CAPTURE(figureFrame, pane_stairs, kHeaviest, kPaneWidth, kPaneHeight)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(figureFrame, pane_sit_to_stand, "sit-to-stand", kPaneWidth, kPaneHeight)
    ->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(figureFrame, screen_stairs, kHeaviest, kWidth, kHeight)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(figureFrame, screen_sit_to_stand, "sit-to-stand", kWidth, kHeight)
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace newel::bench
