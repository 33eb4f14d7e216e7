#include <QtMultimedia/QAudioDevice>
#include <QtMultimedia/QMediaDevices>

#include "platform/sound.h"

namespace newel::platform {
namespace {

class QtSoundRoute : public SoundRoute {
 public:
  // The devices are looked at from here on, so that a program in which nobody listens does not reach for the
  // sound server.
  void whenLost(std::function<void()> lost) override {
    m_lost = std::move(lost);
    if (!m_lost || m_devices != nullptr) return;
    m_devices = std::make_unique<QMediaDevices>();
    look();
    QObject::connect(m_devices.get(), &QMediaDevices::audioOutputsChanged, m_devices.get(), [this] {
      if (look() && m_lost) m_lost();
    });
  }

 private:
  bool look() {
    std::vector<std::string> there;
    for (const QAudioDevice& device : QMediaDevices::audioOutputs())
      there.push_back(device.id().toStdString());
    return m_watch.changed(there, QMediaDevices::defaultAudioOutput().id().toStdString());
  }

  std::unique_ptr<QMediaDevices> m_devices;
  RouteWatch m_watch;
  std::function<void()> m_lost;
};

}  // namespace

std::unique_ptr<SoundRoute> makeSoundRoute() { return std::make_unique<QtSoundRoute>(); }

}  // namespace newel::platform
