#include <QtCore/QObject>
#include <QtGui/QImage>
#include <QtMultimedia/QCamera>
#include <QtMultimedia/QCameraDevice>
#include <QtMultimedia/QMediaCaptureSession>
#include <QtMultimedia/QMediaDevices>
#include <QtMultimedia/QVideoFrame>
#include <QtMultimedia/QVideoSink>
#include <chrono>
#include <cstring>

#include "platform/camera.h"

namespace newel::platform {
namespace {

// Looking costs some milliseconds; more often only warms the phone. Ours, no source.
constexpr std::chrono::milliseconds kBetween(100);

QCameraDevice bestCamera() {
  for (const QCameraDevice& device : QMediaDevices::videoInputs()) {
    if (device.position() == QCameraDevice::BackFace) return device;
  }
  return QMediaDevices::defaultVideoInput();
}

GreyPicture greyOf(const QImage& image) {
  const QImage grey = image.convertToFormat(QImage::Format_Grayscale8);
  GreyPicture picture{grey.width(), grey.height(), {}};
  const auto width = static_cast<std::size_t>(grey.width());
  picture.pixels.resize(width * static_cast<std::size_t>(grey.height()));
  for (int y = 0; y < grey.height(); ++y) {
    std::memcpy(&picture.pixels[width * static_cast<std::size_t>(y)], grey.constScanLine(y), width);
  }
  return picture;
}

class QtCamera : public Camera {
 public:
  ~QtCamera() override { QtCamera::stop(); }

  std::string whyNot() const override {
    if (m_broken) return "camera.broken";
    return bestCamera().isNull() ? "camera.none" : "";
  }

  void watch(std::function<void(const GreyPicture&)> seen, std::function<void()> changed) override {
    stop();
    m_broken = false;
    if (!whyNot().empty()) return;
    m_open.reset(new Open(bestCamera()));
    Open& open = *m_open;
    open.session.setCamera(&open.camera);
    open.session.setVideoSink(&open.sink);
    QObject::connect(&open.sink, &QVideoSink::videoFrameChanged, &open.sink,
                     [this, seen = std::move(seen)](const QVideoFrame& frame) { look(frame, seen); });
    QObject::connect(&open.camera, &QCamera::errorOccurred, &open.sink,
                     [this, changed = std::move(changed)](QCamera::Error error) {
                       if (error == QCamera::NoError) return;
                       m_broken = true;
                       changed();
                     });
    open.camera.start();
  }

  // Whoever is told of a picture may call this from there: what is open goes once the telling is over.
  void stop() override {
    if (m_open == nullptr) return;
    m_open->sink.disconnect();
    m_open->camera.disconnect();
    m_open->camera.stop();
    m_open.reset();
  }

 private:
  struct Open : QObject {
    explicit Open(const QCameraDevice& device) : camera(device) {}
    QCamera camera;
    QVideoSink sink;
    QMediaCaptureSession session;
  };

  struct Later {
    void operator()(Open* open) const { open->deleteLater(); }
  };

  void look(const QVideoFrame& frame, const std::function<void(const GreyPicture&)>& seen) {
    const auto now = std::chrono::steady_clock::now();
    if (!frame.isValid() || now - m_last < kBetween) return;
    m_last = now;
    // A copy: stop() may take away what is being called.
    const auto tell = seen;
    tell(greyOf(frame.toImage()));
  }

  std::unique_ptr<Open, Later> m_open;
  std::chrono::steady_clock::time_point m_last;
  bool m_broken = false;
};

}  // namespace

std::unique_ptr<Camera> makeCamera() { return std::make_unique<QtCamera>(); }

}  // namespace newel::platform
