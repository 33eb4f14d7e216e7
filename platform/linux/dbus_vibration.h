// Vibration by feedbackd. Newer ones take a rhythm (interface org.sigxcpu.Feedback.Haptic, there only where
// the device has a motor); the one of Debian 12 takes the name of an event, and a rhythm is one such event
// after another.
#pragma once

#include <QtCore/QObject>
#include <QtCore/QTimer>
#include <QtCore/QVariant>
#include <QtDBus/QDBusMessage>
#include <QtDBus/QDBusPendingCall>
#include <cstddef>
#include <vector>

#include "platform/vibration.h"

namespace newel::platform {

class DbusVibration : public QObject, public Vibration {
  Q_OBJECT

 public:
  explicit DbusVibration(const std::string& app);

  void ask(std::function<void()> known) override;
  bool works() const override { return m_way != Way::None; }
  void play(Tone tone) override;
  void stop() override;

 private:
  enum class Way { None, Rhythm, Events };
  void askForRhythm();
  void askForEvents();
  void answered(Way way);
  void nextEvent();
  QDBusMessage rhythm(const std::vector<Pulse>& pulses) const;

  const QString m_app;
  Way m_way = Way::None;
  bool m_asked = false;
  std::vector<std::function<void()>> m_wait;
  std::vector<Pulse> m_pulses;  // what is under way, one event each
  std::size_t m_next = 0;
  QTimer m_timer;
};

}  // namespace newel::platform
