#include "qml/home/scan_model.h"

#include <utility>

#include "sync/common/pairing_ticket.h"

namespace newel::home {
namespace {

// A copy: the picture's own bytes go with it.
QImage imageOf(const platform::GreyPicture& picture) {
  return QImage(picture.pixels.data(), picture.width, picture.height, picture.width,
                QImage::Format_Grayscale8)
      .copy();
}

}  // namespace

ScanModel::ScanModel(platform::Camera* camera, SquareReader reader, QObject* parent)
    : QObject(parent), m_camera(camera), m_reader(std::move(reader)) {}

ScanModel::~ScanModel() {
  if (m_on) m_camera->stop();
}

QString ScanModel::whyNot() const {
  const std::string why = m_camera == nullptr ? "camera.none" : m_camera->whyNot();
  if (why.empty()) return QString();
  if (why == "camera.refused") {
    return tr(
        "Newel may not use the camera. Allow it in the settings of this phone, or go back and type the "
        "code.");
  }
  if (why == "camera.none")
    return tr("This phone has no camera that Newel can use. Go back and type the code.");
  return tr("The camera does not work just now. Go back and type the code.");
}

void ScanModel::begin() {
  if (m_on || m_camera == nullptr) return;
  m_other = false;
  m_picture = QImage();
  m_camera->watch([this](const platform::GreyPicture& picture) { see(picture); }, [this] { emit changed(); });
  m_on = m_camera->whyNot().empty();
  emit changed();
  emit pictureChanged();
}

void ScanModel::end() {
  if (!m_on) return;
  m_on = false;
  m_camera->stop();
  m_picture = QImage();
  emit changed();
  emit pictureChanged();
}

void ScanModel::see(const platform::GreyPicture& picture) {
  m_picture = imageOf(picture);
  emit pictureChanged();
  const auto text = m_reader(picture);
  if (!text.has_value()) return;
  if (!parseTicket(*text).ok()) {
    if (!m_other) {
      m_other = true;
      emit changed();
    }
    return;
  }
  end();
  emit found(QString::fromStdString(*text));
}

}  // namespace newel::home
