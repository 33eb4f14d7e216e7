// A clip that can be played: where its bytes come from, asked for when somebody wants to see it, so that
// nothing large lies in memory before, and nothing of it in a file of its own ever.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QByteArray>
#include <QtCore/QObject>
#include <functional>
#include <utility>

namespace newel::parts {

class ClipContent : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the models")

 public:
  // Empty: it is not there (any more).
  using Read = std::function<QByteArray()>;
  explicit ClipContent(Read read, QObject* parent = nullptr) : QObject(parent), m_read(std::move(read)) {}
  QByteArray bytes() const { return m_read ? m_read() : QByteArray(); }

 private:
  Read m_read;
};

}  // namespace newel::parts
