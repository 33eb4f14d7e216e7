// How this phone shows and speaks, and what its owner has already seen. Kept in one small file beside the
// engine's store; nothing of it leaves the phone.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QSettings>

#include "qml/home/home_parts.h"

namespace newel::home {

class SettingsModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made in main")
  Q_PROPERTY(int textPercent READ textPercent WRITE setTextPercent NOTIFY changed)  // 100 to 200
  Q_PROPERTY(bool voice READ voice WRITE setVoice NOTIFY changed)
  Q_PROPERTY(Look look READ look WRITE setLook NOTIFY changed)
  Q_PROPERTY(QString voiceNote READ voiceNote NOTIFY changed)  // why no voice can be heard, or empty
  Q_PROPERTY(QString error READ error NOTIFY changed)

 public:
  enum class Look { AsSystem, Light, Dark };
  Q_ENUM(Look)

  // `folder`: where the engine keeps its store.
  SettingsModel(const std::string& folder, const HomeParts& parts, QObject* parent = nullptr);

  int textPercent() const;
  void setTextPercent(int percent);
  bool voice() const;
  void setVoice(bool on);
  Look look() const;
  void setLook(Look look);
  QString voiceNote() const;
  QString error() const { return m_error; }

  // Says one sentence, so that the person can hear whether they hear it.
  Q_INVOKABLE void tryVoice();
  // Every byte of this person, these settings too; afterwards the phone is unpaired.
  Q_INVOKABLE void erase();

  std::uint32_t seenProgramme() const;
  void setSeenProgramme(std::uint32_t number);
  bool seenMessage(const QString& id) const;
  void setSeenMessage(const QString& id);

 signals:
  void changed();
  void erased();

 private:
  void keep(const QString& key, const QVariant& value);

  const HomeParts& m_parts;
  QSettings m_file;
  QString m_error;
};

}  // namespace newel::home
