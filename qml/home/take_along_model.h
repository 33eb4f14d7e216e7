// Saves everything about the person into files of their own, and says where each went. A file that is there
// is never written over.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QString>
#include <functional>

#include "qml/home/engine_bridge.h"
#include "qml/home/home_parts.h"

class QThread;

namespace newel::home {

class TakeAlongModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made in main")
  Q_PROPERTY(
      QString savedAs READ savedAs NOTIFY changed)  // the file's name and folder, in words; empty: none
  Q_PROPERTY(QString error READ error NOTIFY changed)
  Q_PROPERTY(bool busy READ busy NOTIFY changed)  // a file is being written; years of practices take seconds
  Q_PROPERTY(int waiting READ waiting NOTIFY changed)  // records that have not reached the clinic
  Q_PROPERTY(QString waitingWords READ waitingWords NOTIFY changed)

 public:
  TakeAlongModel(EngineBridge& bridge, const HomeParts& parts, QObject* parent = nullptr);

  ~TakeAlongModel() override;

  QString savedAs() const;
  bool busy() const { return m_thread != nullptr; }
  QString error() const { return m_error; }
  int waiting() const;
  QString waitingWords() const;
  const QString& file() const { return m_file; }  // the last one written

  Q_INVOKABLE void begin();  // the page is shown anew
  Q_INVOKABLE void savePdf();
  Q_INVOKABLE void saveJson();

 signals:
  void changed();

 private:
  // Writes on a thread of its own, then says how it went.
  void write(const QString& file, std::function<absl::Status()> body);
  // Where the next file of that kind goes; empty, with an error, where there is no folder for it.
  QString place(const QString& ending);
  void finish(const QString& file, const absl::Status& written);

  const HomeParts& m_parts;
  QThread* m_thread = nullptr;
  QString m_file;
  QString m_error;
};

}  // namespace newel::home
