// Making this phone the person's: a typed code with an address, or the text that the clinic's QR holds.
#pragma once

#include <QtQml/qqmlregistration.h>

#include <QtCore/QObject>
#include <memory>

#include "qml/home/engine_bridge.h"
#include "qml/home/home_parts.h"

class QThread;

namespace newel::home {

class PairModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made in main")
  Q_PROPERTY(bool busy READ busy NOTIFY changed)
  // Paired by typing: nothing but the person's eyes says yet that the right computer answered.
  Q_PROPERTY(bool mustCompare READ mustCompare NOTIFY changed)
  Q_PROPERTY(QString error READ error NOTIFY changed)          // what went wrong and what to do
  Q_PROPERTY(QString codeError READ codeError NOTIFY changed)  // at the field
  Q_PROPERTY(QString addressError READ addressError NOTIFY changed)
  // What has been typed so far, so that a look at Help loses nothing.
  Q_PROPERTY(QString typedAddress MEMBER m_typed_address NOTIFY typed)
  Q_PROPERTY(QString typedCode MEMBER m_typed_code NOTIFY typed)

 public:
  PairModel(EngineBridge& bridge, const HomeParts& parts, QObject* parent = nullptr);
  ~PairModel() override;  // waits for a pairing under way, at most 20 s

  bool mustCompare() const { return m_must_compare; }
  bool busy() const { return m_thread != nullptr; }
  QString error() const { return m_error; }
  QString codeError() const { return m_code_error; }
  QString addressError() const { return m_address_error; }

  Q_INVOKABLE void pairTyped(const QString& address, const QString& code);
  Q_INVOKABLE void pairText(const QString& text);
  // Leaves no error behind when the page comes again.
  Q_INVOKABLE void clear();

 signals:
  void changed();
  void typed();
  void paired();

 private:
  void pair(const PairingTicket& ticket);
  void finish(const absl::Status& status);

  EngineBridge& m_bridge;
  const HomeParts& m_parts;
  QThread* m_thread = nullptr;
  bool m_must_compare = false;
  QString m_typed_address;
  QString m_typed_code;
  QString m_error;
  QString m_code_error;
  QString m_address_error;
};

}  // namespace newel::home
