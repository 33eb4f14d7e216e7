// Holds the sound device as a practice does, until its input ends or it is killed (other_sound.py). A line
// "play" plays a tone, a line "busy" keeps the thread busy for a while (tones_heard.py).
#include <QtCore/QCoreApplication>
#include <QtCore/QTimer>
#include <chrono>
#include <iostream>
#include <string>
#include <thread>

#include "platform/sound.h"

int main(int argc, char** argv) {
  QCoreApplication app(argc, argv);
  newel::platform::nameOurSound();
  const auto tones = newel::platform::makeTones();
  QTimer::singleShot(0, &app, [&tones] {
    tones->warm(true);
    tones->play(newel::platform::Tone::Go);
    std::cout << (tones->whyNot().empty() ? "warm" : tones->whyNot()) << std::endl;
  });
  std::thread([&app, &tones] {
    for (std::string line; std::getline(std::cin, line);) {
      if (line == "play")
        QMetaObject::invokeMethod(
            &app, [&tones] { tones->play(newel::platform::Tone::Go); }, Qt::QueuedConnection);
      if (line == "busy")  // as a program is that makes a new page
        QMetaObject::invokeMethod(
            &app, [] { std::this_thread::sleep_for(std::chrono::milliseconds(400)); }, Qt::QueuedConnection);
    }
    QMetaObject::invokeMethod(
        &app, [] { QCoreApplication::quit(); }, Qt::QueuedConnection);
  }).detach();
  return QCoreApplication::exec();
}
