// Reading the clinic's square with the camera: what it sees, and the first square with a ticket in it, which
// is handed on. The camera is on only between begin() and end().
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtGui/QImage>
#include <functional>
#include <optional>
#include <string>

#include "platform/camera.h"

namespace newel::home {

class ScanModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made in main")
  Q_PROPERTY(bool on READ on NOTIFY changed)
  // Why there is nothing to see and what to do instead; empty while the camera works.
  Q_PROPERTY(QString whyNot READ whyNot NOTIFY changed)
  // A square was seen that is none of a clinic's.
  Q_PROPERTY(bool otherSquare READ otherSquare NOTIFY changed)

 public:
  using SquareReader = std::function<std::optional<std::string>(const platform::GreyPicture&)>;
  // `camera` outlives this; null: a machine without one. `reader`: readSquare() of square_reader.h, or what
  // stands for it.
  ScanModel(platform::Camera* camera, SquareReader reader, QObject* parent = nullptr);
  ~ScanModel() override;

  bool on() const { return m_on; }
  QString whyNot() const;
  bool otherSquare() const { return m_other; }
  const QImage& picture() const { return m_picture; }

  Q_INVOKABLE void begin();
  Q_INVOKABLE void end();

 signals:
  void changed();
  void pictureChanged();
  // The text of a clinic's square; the camera is off already.
  void found(const QString& text);

 private:
  void see(const platform::GreyPicture& picture);

  platform::Camera* m_camera;
  SquareReader m_reader;
  QImage m_picture;
  bool m_on = false;
  bool m_other = false;
};

}  // namespace newel::home
