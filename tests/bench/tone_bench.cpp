// A cue's tone beside its picture: both asked for at one instant, as the practice session does; when the
// picture has been shown (offscreen, software renderer) and when the tone's first loud sample leaves a real
// sound server. What a screen and a loudspeaker add after that is theirs. `apart`: how far one is from the
// other, whichever is first.
#include <benchmark/benchmark.h>

#include <QtCore/QEventLoop>
#include <QtCore/QTimer>
#include <QtGui/QGuiApplication>
#include <QtQml/QQmlApplicationEngine>
#include <QtQuick/QQuickWindow>
#include <cmath>
#include <optional>

#include "platform/sound.h"
#include "tests/bench/bench_times.h"
#include "tests/bench/needs_application.h"
#include "tests/bench/sound_server.h"

namespace newel::bench {
namespace {

using Instant = std::chrono::steady_clock::time_point;
constexpr int kCues = 100;
constexpr std::chrono::seconds kPatience(3);

constexpr char kScreen[] = R"(
import QtQuick

Window {
    property bool flipped: false

    width: 412
    height: 800
    visible: true
    color: flipped ? "white" : "black"
}
)";

bool until(const std::function<bool()>& done) {
  const Instant end = std::chrono::steady_clock::now() + kPatience;
  while (!done()) {
    if (std::chrono::steady_clock::now() > end) return false;
    QEventLoop loop;
    QTimer::singleShot(1, Qt::PreciseTimer, &loop, &QEventLoop::quit);
    loop.exec();
  }
  return true;
}

void homeToneBesidePicture(benchmark::State& state) {
  qputenv("QT_QUICK_BACKEND", "software");
  needApplication();
  SoundServer server;
  if (!server.problem().empty()) return state.SkipWithError(server.problem().c_str());
  QQmlApplicationEngine engine;
  engine.loadData(kScreen);
  auto* const window = qobject_cast<QQuickWindow*>(engine.rootObjects().value(0));
  if (window == nullptr) return state.SkipWithError("no window");
  std::optional<Instant> shown;
  QObject::connect(window, &QQuickWindow::frameSwapped, window,
                   [&shown] { shown = std::chrono::steady_clock::now(); });
  const auto tones = platform::makeTones();
  tones->warm(true);
  if (!tones->whyNot().empty()) return state.SkipWithError("no sound device");
  until([&] { return server.silent() && shown.has_value(); });
  Times picture, tone, apart;
  for (auto _ : state) {
    for (int i = 0; i < kCues; ++i) {
      if (!until([&] { return server.silent(); }))
        return state.SkipWithError("the sink does not fall silent");
      shown.reset();
      server.listen();
      const Instant asked = std::chrono::steady_clock::now();
      window->setProperty("flipped", i % 2 == 0);
      tones->play(platform::Tone::Go);
      until([&] { return shown.has_value() && server.heard() > asked; });
      if (!shown.has_value()) return state.SkipWithError("no picture was shown");
      if (server.heard() <= asked) return state.SkipWithError("no tone was heard");
      picture.add(std::chrono::duration<double>(*shown - asked).count());
      tone.add(std::chrono::duration<double>(server.heard() - asked).count());
      apart.add(std::abs(std::chrono::duration<double>(server.heard() - *shown).count()));
    }
  }
  picture.say(state, "picture_");
  tone.say(state, "tone_");
  apart.say(state, "apart_");
}
BENCHMARK(homeToneBesidePicture)->Iterations(1)->UseRealTime()->Unit(benchmark::kSecond);

}  // namespace
}  // namespace newel::bench
