#include <QtMultimedia/QAudioDevice>
#include <QtMultimedia/QMediaDevices>

#include "platform/sound.h"

namespace newel::platform {
namespace {

class QtSoundRoute : public SoundRoute {
 public:
  QtSoundRoute() {
    look();
    QObject::connect(&m_devices, &QMediaDevices::audioOutputsChanged, &m_devices, [this] {
      if (look() && m_lost) m_lost();
    });
  }
  void whenLost(std::function<void()> lost) override { m_lost = std::move(lost); }

 private:
  bool look() {
    std::vector<std::string> there;
    for (const QAudioDevice& device : QMediaDevices::audioOutputs())
      there.push_back(device.id().toStdString());
    return m_watch.changed(there, QMediaDevices::defaultAudioOutput().id().toStdString());
  }

  QMediaDevices m_devices;
  RouteWatch m_watch;
  std::function<void()> m_lost;
};

}  // namespace

std::unique_ptr<SoundRoute> makeSoundRoute() { return std::make_unique<QtSoundRoute>(); }

}  // namespace newel::platform
