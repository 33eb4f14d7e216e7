// What the clinic and the person wrote to each other, and writing the next line. UI thread only.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <QtCore/QVariantList>

#include "qml/home/engine_bridge.h"
#include "qml/home/entry_media.h"
#include "qml/home/home_parts.h"

namespace newel::home {

class MessagesModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made in main")
  // Newest first, at most kMost; maps: "title" (who, when), "words", "mine" (bool), "arrived" (bool, of
  // mine), "media" (EntryMedia.qml).
  Q_PROPERTY(QVariantList rows READ rows NOTIFY changed)
  Q_PROPERTY(QString error READ error NOTIFY changed)

 public:
  static constexpr int kMost = 20;

  MessagesModel(EngineBridge& bridge, const HomeParts& parts, QObject* parent = nullptr);

  QVariantList rows() const;
  QString error() const { return m_error; }

  // True when it is kept on this phone, to be sent; else error() says why not and nothing is lost.
  Q_INVOKABLE bool write(const QString& words);

 signals:
  void changed();

 private:
  const HomeParts& m_parts;
  mutable MediaRows m_media;
  QString m_error;
};

}  // namespace newel::home
